using CalibrationApi.Client.Http;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client;

/// <summary>What to list of the history, and how. What is not set does not narrow.</summary>
public sealed record HistoryFilter
{
    /// <summary>Id of the machine.</summary>
    public string? Machine { get; init; }

    /// <summary>Position of the meter.</summary>
    public string? Meter { get; init; }

    /// <summary>Metering element.</summary>
    public string? Element { get; init; }

    /// <summary>Id of the product.</summary>
    public string? Product { get; init; }

    /// <summary>Id of the lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Id of the scale.</summary>
    public string? Scale { get; init; }

    /// <summary>Id of the plan.</summary>
    public string? Plan { get; init; }

    /// <summary>One of <see cref="Verdicts"/>.</summary>
    public string? Verdict { get; init; }

    /// <summary>The earliest time.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>The time before which it happened.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>The oldest first. Default the newest first.</summary>
    public bool OldestFirst { get; init; }

    /// <summary>Units of the answers.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>How many to fetch at once, 1 to 1000. Default 100.</summary>
    public int? PageSize { get; init; }

    internal RequestInformation Apply(RequestInformation request) =>
        request
            .Where("machine", Machine)
            .Where("meter", Meter)
            .Where("element", Element)
            .Where("product", Product)
            .Where("lot", Lot)
            .Where("scale", Scale)
            .Where("plan", Plan)
            .Where("verdict", Verdict)
            .Where("from", From)
            .Where("until", Until)
            .OldestFirst(OldestFirst)
            .Paged(PageSize)
            .In(Units);
}
