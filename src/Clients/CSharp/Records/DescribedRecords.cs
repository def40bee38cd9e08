using CalibrationApi.Client.Http;
using Microsoft.Kiota.Abstractions.Serialization;

namespace CalibrationApi.Client;

/// <summary>Records of one kind that describe things. They can be changed and retired, never deleted.</summary>
/// <typeparam name="TDraft">What can be sent.</typeparam>
/// <typeparam name="TAnswer">What is stored.</typeparam>
public class DescribedRecords<TDraft, TAnswer> : ChangeableRecords<TDraft, TAnswer>
    where TDraft : IParsable
    where TAnswer : IParsable
{
    internal DescribedRecords(Exchange exchange, DescribedRoutes<TDraft, TAnswer> routes)
        : base(exchange, routes) { }

    /// <summary>Lists the records in the order of their ids; pages are fetched as you go.</summary>
    /// <param name="includeRetired">Also those no longer in use.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="pageSize">How many to fetch at once, 1 to 1000. Default 100.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<TAnswer> ListAsync(
        bool includeRetired = false,
        UnitSystem units = UnitSystem.AsAsked,
        int? pageSize = null,
        CancellationToken cancellationToken = default
    ) => Routes.Follow(Exchange, Routes.List().WithRetired(includeRetired).Paged(pageSize).In(units), cancellationToken);
}
