using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>One run over a measured course.</summary>
/// <param name="Distance">Distance driven, above 0.</param>
/// <param name="Count">Pulses or wheel turns over it, above 0; see <see cref="DistanceSensorQuestion.Counted"/>.</param>
public sealed record MeasuredRun(Length Distance, double Count)
{
    /// <summary>Standard uncertainty of this distance beyond what all runs have in common; null takes it from the resolution.</summary>
    public Length? DistanceUncertainty { get; init; }

    /// <summary>Which way it was driven; null when not stated.</summary>
    public RunDirection? Direction { get; init; }

    /// <summary>Time taken; gives the ground speed.</summary>
    public Duration? Time { get; init; }
}

/// <summary>Which way a run was driven: slope and wind differ.</summary>
public enum RunDirection
{
    /// <summary>One way.</summary>
    There,

    /// <summary>The other way.</summary>
    Back,
}

/// <summary>What was counted on runs.</summary>
public enum CountedThing
{
    /// <summary>Pulses of the sensor.</summary>
    Pulses,

    /// <summary>Turns of the wheel.</summary>
    Turns,
}
