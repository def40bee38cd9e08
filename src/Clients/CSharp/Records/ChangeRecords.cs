using CalibrationApi.Client.Http;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>Every stored change of every record, in the order of storing: late records and corrections stand where they arrived.</summary>
public sealed class ChangeRecords
{
    private readonly Exchange exchange;
    private readonly V1RequestBuilder v1;
    private readonly CalibrationClientOptions options;

    internal ChangeRecords(Exchange exchange, V1RequestBuilder v1, CalibrationClientOptions options)
    {
        this.exchange = exchange;
        this.v1 = v1;
        this.options = options;
    }

    /// <summary>Lists what is there, and ends with the last change; pages are fetched as you go.</summary>
    /// <param name="filter">Which changes; all when null.</param>
    /// <param name="after">Goes on behind this cursor; from the first change when null.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public ChangeFeed ListAsync(ChangeFilter? filter = null, string? after = null, CancellationToken cancellationToken = default) =>
        Feed(filter, after, isEndless: false, cancellationToken);

    /// <summary>
    /// Hands out every change, each once, and waits for the next ones until it is cancelled. A service that is away for a while, or a
    /// connection that breaks, is asked again from the same place.
    /// </summary>
    /// <param name="filter">Which changes; all when null.</param>
    /// <param name="after">Goes on behind this cursor, <see cref="ChangeFeed.After"/> of an earlier feed; from the first change when null.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public ChangeFeed FollowAsync(ChangeFilter? filter = null, string? after = null, CancellationToken cancellationToken = default) =>
        Feed(filter, after, isEndless: true, cancellationToken);

    private ChangeFeed Feed(ChangeFilter? filter, string? after, bool isEndless, CancellationToken cancellationToken) =>
        new(exchange, () => (filter ?? new()).Apply(v1.Changes.ToGetRequestInformation()), options, after, isEndless, cancellationToken);
}
