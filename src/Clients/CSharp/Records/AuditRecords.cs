using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client;

/// <summary>What was done with which key, and which requests were turned away.</summary>
public sealed class AuditRecords
{
    private readonly Exchange exchange;
    private readonly V1RequestBuilder v1;

    internal AuditRecords(Exchange exchange, V1RequestBuilder v1)
    {
        this.exchange = exchange;
        this.v1 = v1;
    }

    /// <summary>
    /// Lists what was stored, changed or exported in the workspace; pages are fetched as you go. It needs the scope <c>admin</c>.
    /// </summary>
    /// <param name="filter">Which part of it; all when null.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<AuditItem> ListAsync(AuditFilter? filter = null, CancellationToken cancellationToken = default) =>
        exchange.FollowAsync<AuditItemPage, AuditItem>(
            (filter ?? new()).Apply(v1.Audit.ToGetRequestInformation()),
            AuditItemPage.CreateFromDiscriminatorValue,
            cancellationToken
        );

    /// <summary>
    /// Counts the requests with keys of the workspace that were turned away, by day; pages are fetched as you go. It needs the scope
    /// <c>admin</c>.
    /// </summary>
    /// <param name="pageSize">How many to fetch at once, 1 to 1000. Default 100.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<RefusalItem> ListRefusalsAsync(int? pageSize = null, CancellationToken cancellationToken = default) =>
        FollowRefusalsAsync(v1.Audit.Refusals.ToGetRequestInformation(), pageSize, cancellationToken);

    /// <summary>
    /// Counts the requests without a known key that were turned away, of the whole installation. It needs a key of whoever runs that.
    /// </summary>
    /// <param name="pageSize">How many to fetch at once, 1 to 1000. Default 100.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<RefusalItem> ListRefusalsWithoutKeyAsync(int? pageSize = null, CancellationToken cancellationToken = default) =>
        FollowRefusalsAsync(v1.Audit.Refusals.WithoutKey.ToGetRequestInformation(), pageSize, cancellationToken);

    private IAsyncEnumerable<RefusalItem> FollowRefusalsAsync(
        RequestInformation request,
        int? pageSize,
        CancellationToken cancellationToken
    ) =>
        exchange.FollowAsync<RefusalItemPage, RefusalItem>(
            request.Paged(pageSize),
            RefusalItemPage.CreateFromDiscriminatorValue,
            cancellationToken
        );
}
