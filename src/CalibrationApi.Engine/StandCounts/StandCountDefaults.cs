using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>Defaults of stand counts with their origins.</summary>
public static class StandCountDefaults
{
    /// <summary>Coverage probability of the intervals.</summary>
    public const double CoverageProbability = 0.95;

    /// <summary>Half width of the interval over the estimate that counts are planned for.</summary>
    public static DefaultValue WantedPrecision { get; } = new(new Ratio(0.15), "judgement, no published source: about what ten counts of 20 plants give");

    /// <summary>Relative standard uncertainty of the seeds that the meter put down.</summary>
    public static DefaultValue SowingUncertainty { get; } = new(new Ratio(0.05 / Math.Sqrt(3)),
        "published acceptance limit of 5 % of the rate (Field and Solie 2007), taken as rectangular");

    /// <summary>Share of the mass sown that is pure seed.</summary>
    public static DefaultValue Purity { get; } = new(new Ratio(1), "not stated, so all of the mass is taken as pure seed; judgement");
}
