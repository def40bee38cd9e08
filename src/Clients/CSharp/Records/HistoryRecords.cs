using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>Everything that happened: catch tests, adoptions, scale checks.</summary>
public sealed class HistoryRecords
{
    private readonly Exchange exchange;
    private readonly V1RequestBuilder v1;

    internal HistoryRecords(Exchange exchange, V1RequestBuilder v1)
    {
        this.exchange = exchange;
        this.v1 = v1;
    }

    /// <summary>Lists what happened; pages are fetched as you go.</summary>
    /// <param name="filter">Which part of it; all when null.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<HistoryItem> ListAsync(HistoryFilter? filter = null, CancellationToken cancellationToken = default) =>
        exchange.FollowAsync<HistoryItemPage, HistoryItem>(
            (filter ?? new()).Apply(v1.History.ToGetRequestInformation()),
            HistoryItemPage.CreateFromDiscriminatorValue,
            cancellationToken
        );
}
