using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>The keys of a workspace. They need a key with the scope <c>admin</c>.</summary>
public sealed class KeyRecords
{
    private readonly Exchange exchange;
    private readonly V1RequestBuilder v1;

    internal KeyRecords(Exchange exchange, V1RequestBuilder v1)
    {
        this.exchange = exchange;
        this.v1 = v1;
    }

    /// <summary>Makes a key.</summary>
    /// <param name="request">Whose key, and what it may do. An id of your own, a UUID of version 7, makes it safe to send again at any
    /// time.</param>
    /// <param name="idempotencyKey">A text of your own, up to 200 ASCII characters: the same text with the same request makes one key
    /// within 24 hours. Default a new one for each call.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The new key with its text, which is shown this once. Keep it.</returns>
    public Task<NewKeyAnswer> CreateAsync(
        KeyRequest request,
        string? idempotencyKey = null,
        CancellationToken cancellationToken = default
    ) =>
        exchange.SendAsync(
            v1.Keys.ToPostRequestInformation(request).WithKey(idempotencyKey),
            NewKeyAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );

    /// <summary>Reads a key: everything but its text.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <exception cref="RecordNotFoundException">The workspace has none with this id.</exception>
    public Task<KeyAnswer> GetAsync(string id, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return exchange.SendAsync(v1.Keys[id].ToGetRequestInformation(), KeyAnswer.CreateFromDiscriminatorValue, cancellationToken);
    }

    /// <summary>Lists the keys in the order of their ids, also those that have ended; pages are fetched as you go.</summary>
    /// <param name="pageSize">How many to fetch at once, 1 to 1000. Default 100.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<KeyAnswer> ListAsync(int? pageSize = null, CancellationToken cancellationToken = default) =>
        exchange.FollowAsync<KeyAnswerPage, KeyAnswer>(
            v1.Keys.ToGetRequestInformation().Paged(pageSize),
            KeyAnswerPage.CreateFromDiscriminatorValue,
            cancellationToken
        );

    /// <summary>Makes a key that takes the place of another, with the same name and scopes.</summary>
    /// <param name="id">Id of the old key.</param>
    /// <param name="request">Until when the old key goes on.</param>
    /// <param name="idempotencyKey">A text of your own, up to 200 ASCII characters: the same text with the same request makes one key
    /// within 24 hours. Default a new one for each call.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The new key with its text, which is shown this once. Keep it.</returns>
    public Task<NewKeyAnswer> RotateAsync(
        string id,
        RotationRequest request,
        string? idempotencyKey = null,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return exchange.SendAsync(
            v1.Keys[id].Rotations.ToPostRequestInformation(request).WithKey(idempotencyKey),
            NewKeyAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }

    /// <summary>Revokes a key: it opens nothing from the next request on, for good.</summary>
    /// <param name="id">Id of the key.</param>
    /// <param name="request">Why.</param>
    /// <param name="idempotencyKey">A text of your own, up to 200 ASCII characters. Default a new one for each call.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The key as it is now.</returns>
    public Task<KeyAnswer> RevokeAsync(
        string id,
        RevocationRequest request,
        string? idempotencyKey = null,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return exchange.SendAsync(
            v1.Keys[id].Revocations.ToPostRequestInformation(request).WithKey(idempotencyKey),
            KeyAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }
}
