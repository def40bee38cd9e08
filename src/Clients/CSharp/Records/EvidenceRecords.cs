using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Abstractions.Serialization;

namespace CalibrationApi.Client;

/// <summary>Records of one kind that are evidence. They are never changed; a wrong one is superseded by another, with a reason.</summary>
/// <typeparam name="TRequest">What is recorded.</typeparam>
/// <typeparam name="TAnswer">What is stored.</typeparam>
public class EvidenceRecords<TRequest, TAnswer>
    where TAnswer : IParsable
{
    private readonly Exchange exchange;
    private readonly EvidenceRoutes<TRequest, TAnswer> routes;

    internal EvidenceRecords(Exchange exchange, EvidenceRoutes<TRequest, TAnswer> routes)
    {
        this.exchange = exchange;
        this.routes = routes;
    }

    /// <summary>Records it, once, however often it has to be sent.</summary>
    /// <param name="request">What happened. An id of your own, a UUID of version 7, makes it safe to send again at any time.</param>
    /// <param name="idempotencyKey">A key of your own, up to 200 ASCII characters: the same key with the same request records once within
    /// 24 hours. Default a new one for each call.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<TAnswer> RecordAsync(TRequest request, string? idempotencyKey = null, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.Record(request).WithKey(idempotencyKey), routes.ReadAnswer, cancellationToken);

    /// <summary>Reads one.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <exception cref="RecordNotFoundException">There is none with this id.</exception>
    public Task<TAnswer> GetAsync(string id, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return exchange.SendAsync(routes.Get(id).In(units), routes.ReadAnswer, cancellationToken);
    }

    /// <summary>Lists them in brief; pages are fetched as you go.</summary>
    /// <param name="filter">Which ones; all when null.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<HistoryItem> ListAsync(HistoryFilter? filter = null, CancellationToken cancellationToken = default) =>
        exchange.FollowAsync<HistoryItemPage, HistoryItem>(
            (filter ?? new()).Apply(routes.List()),
            HistoryItemPage.CreateFromDiscriminatorValue,
            cancellationToken
        );
}
