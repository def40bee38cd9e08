using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>
/// Workspaces: what one farm, dealer or customer keeps, and what only its keys open. They need a key of whoever runs the installation.
/// </summary>
public sealed class WorkspaceRecords : ChangeableRecords<WorkspaceRequest, WorkspaceAnswer>
{
    private readonly V1RequestBuilder v1;

    internal WorkspaceRecords(Exchange exchange, V1RequestBuilder v1)
        : base(exchange, DescribedRoutes.Workspaces(v1)) => this.v1 = v1;

    /// <summary>Lists the workspaces in the order of their ids; pages are fetched as you go.</summary>
    /// <param name="includeRetired">Also those no longer in use.</param>
    /// <param name="pageSize">How many to fetch at once, 1 to 1000. Default 100.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<WorkspaceAnswer> ListAsync(
        bool includeRetired = false,
        int? pageSize = null,
        CancellationToken cancellationToken = default
    ) => Routes.Follow(Exchange, Routes.List().WithRetired(includeRetired).Paged(pageSize), cancellationToken);

    /// <summary>Makes a key for a workspace, as its first one. From then on its administrators make their own.</summary>
    /// <param name="workspace">Id of the workspace.</param>
    /// <param name="request">Whose key, and what it may do.</param>
    /// <param name="idempotencyKey">A text of your own, up to 200 ASCII characters: the same text with the same request makes one key
    /// within 24 hours. Default a new one for each call.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The new key with its text, which is shown this once. Keep it.</returns>
    public Task<NewKeyAnswer> CreateKeyAsync(
        string workspace,
        KeyRequest request,
        string? idempotencyKey = null,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(workspace);
        return Exchange.SendAsync(
            v1.Workspaces[workspace].Keys.ToPostRequestInformation(request).WithKey(idempotencyKey),
            NewKeyAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }
}
