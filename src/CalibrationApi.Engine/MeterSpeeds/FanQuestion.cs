using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>One air stream with the products that it carries.</summary>
public sealed record FanQuestion
{
    /// <summary>Planned fan speed, above 0.</summary>
    public RotationalSpeed? FanSpeed { get; init; }

    /// <summary>Planned air flow, above 0.</summary>
    public VolumeFlow? AirFlow { get; init; }

    /// <summary>The products, at least one.</summary>
    public required IReadOnlyList<CarriedProduct> Products { get; init; }
}

/// <summary>A product in an air stream.</summary>
/// <param name="Name">What the owner calls it.</param>
/// <param name="CoveredWidth">Width that its meter covers, above 0.</param>
/// <param name="Rates">Its rates, at least one above 0.</param>
/// <param name="FanSpeed">Fan speeds that it may have, as its caller states them.</param>
/// <param name="AirFlow">Air flows that it may have, as its caller states them.</param>
public sealed record CarriedProduct(
    string Name,
    Length CoveredWidth,
    IReadOnlyList<MassPerArea> Rates,
    StatedLimits<RotationalSpeed> FanSpeed,
    StatedLimits<VolumeFlow> AirFlow
);

/// <summary>Limits that a caller states; nothing here knows a fan.</summary>
/// <param name="Minimum">Lowest; null for none.</param>
/// <param name="Maximum">Highest; null for none.</param>
public readonly record struct StatedLimits<T>(T? Minimum, T? Maximum)
    where T : struct, IQuantity<T>;
