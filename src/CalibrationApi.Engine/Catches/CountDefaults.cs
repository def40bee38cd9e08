using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>Resolutions of a count that states none; judgement, no published source.</summary>
public static class CountDefaults
{
    /// <summary>What an answer says about them.</summary>
    public const string Origin = "default; judgement, no published source";

    /// <summary>Smallest step of a revolution counter.</summary>
    public static Revolutions CounterResolution { get; } = new(0.1);

    /// <summary>Smallest step of a count of turns.</summary>
    public static Revolutions TurnResolution { get; } = new(0.1);

    /// <summary>Smallest step of a run time taken by hand.</summary>
    public static Duration TimeResolution { get; } = new(0.5);

    /// <summary>Smallest step of a mass that the machine indicates.</summary>
    public static Mass IndicatedMassResolution { get; } = new(0.1);
}
