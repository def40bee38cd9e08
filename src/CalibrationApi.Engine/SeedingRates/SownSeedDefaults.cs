using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>Defaults of what is known of seed that was or will be sown, with their origins.</summary>
public static class SownSeedDefaults
{
    /// <summary>Share of the mass sown that is pure seed.</summary>
    public static DefaultValue Purity { get; } =
        new(new Ratio(1), "not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it");

    /// <summary>Relative standard uncertainty of the seed that a meter puts down.</summary>
    public static DefaultValue MeteringUncertainty { get; } =
        new(
            new Ratio(CatchTestLimits.DefaultTolerance / Math.Sqrt(3)),
            "published acceptance limit of 5 % of the rate (Field and Solie 2007), taken as rectangular"
        );
}
