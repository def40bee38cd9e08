using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Which elements of a meter can put down these rates at these ground speeds?</summary>
public sealed record MeterSpeedQuestion
{
    /// <summary>Width the meter covers W, above 0.</summary>
    public required Length CoveredWidth { get; init; }

    /// <summary>Rates to be put down, at least one above 0; a zero rate means off and is no corner.</summary>
    public required IReadOnlyList<MassPerArea> Rates { get; init; }

    /// <summary>Ground speeds, all above 0.</summary>
    public required IReadOnlyList<Speed> GroundSpeeds { get; init; }

    /// <summary>Elements the machine has for this meter.</summary>
    public required IReadOnlyList<MeteringElement> Elements { get; init; }

    /// <summary>Share of the time spent working; null takes the default.</summary>
    public double? FieldEfficiency { get; init; }

    /// <summary>Turns and refills that make the field efficiency, in place of stating it.</summary>
    public FieldStops? Stops { get; init; }

    /// <summary>Area to be worked.</summary>
    public Area? Area { get; init; }

    /// <summary>Time in the field on one day.</summary>
    public Duration? TimePerDay { get; init; }

    /// <summary>The air stream that the products go into.</summary>
    public FanQuestion? Fan { get; init; }

    /// <summary>Width the machine works; the covered width when absent.</summary>
    public Length? WorkingWidth { get; init; }
}
