using CalibrationApi.Client.Http;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client;

/// <summary>Which values in force to read. What is not set does not narrow.</summary>
public sealed record ValueInForceFilter
{
    /// <summary>Position of the meter.</summary>
    public string? Meter { get; init; }

    /// <summary>Metering element.</summary>
    public string? Element { get; init; }

    /// <summary>Setting of the meter.</summary>
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    public string? Product { get; init; }

    /// <summary>The time to look at. Default now.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>How many to fetch at once, 1 to 1000. Default 100.</summary>
    public int? PageSize { get; init; }

    internal RequestInformation Apply(RequestInformation request) =>
        request
            .Where("meter", Meter)
            .Where("element", Element)
            .Where("setting", Setting)
            .Where("product", Product)
            .Where("at", At)
            .Paged(PageSize);
}
