using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>Pools ratios of which the same is believed.</summary>
internal static class Pooled
{
    public static PooledRatio Of(double[] values, double[] variances, RepeatabilityPrior prior, int leftOut = -1) =>
        PooledRatio.Pool(values, variances, [.. values.Select(_ => prior.Relative * prior.Relative)], prior.DegreesOfFreedom, leftOut);
}
