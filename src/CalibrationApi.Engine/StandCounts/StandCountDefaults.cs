using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>Defaults of stand counts with their origins.</summary>
public static class StandCountDefaults
{
    /// <summary>Coverage probability of the intervals.</summary>
    public const double CoverageProbability = 0.95;

    /// <summary>Half width of the interval over the estimate that counts are planned for.</summary>
    public static DefaultValue WantedPrecision { get; } =
        new(new Ratio(0.15), "judgement, no published source: about what ten counts of 20 plants give");
}
