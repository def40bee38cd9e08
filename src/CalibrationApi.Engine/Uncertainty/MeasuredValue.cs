using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Uncertainty;

/// <summary>An estimate with its standard uncertainty and the interval made from it.</summary>
/// <param name="Value">The estimate, in the SI unit of its quantity.</param>
/// <param name="StandardUncertainty">Standard uncertainty, same unit, &gt;= 0.</param>
/// <param name="DegreesOfFreedom">Effective degrees of freedom; infinity when known without doubt.</param>
/// <param name="CoverageProbability">Probability of the interval, for example 0.95.</param>
/// <param name="CoverageFactor">The factor by which the standard uncertainty is expanded.</param>
/// <remarks>Names as in JCGM 100:2008, 2.3 (SOURCES.md, key GUM).</remarks>
public sealed record MeasuredValue(
    double Value,
    double StandardUncertainty,
    double DegreesOfFreedom,
    double CoverageProbability,
    double CoverageFactor)
{
    /// <summary>Half width of the coverage interval, same unit as the value.</summary>
    public double ExpandedUncertainty => CoverageFactor * StandardUncertainty;

    /// <summary>Expands with the quantile of Student's t at these degrees of freedom.</summary>
    public static MeasuredValue Create(double value, double standardUncertainty, double degreesOfFreedom, double coverageProbability) =>
        new(value, standardUncertainty, degreesOfFreedom, coverageProbability, StudentT.CoverageFactor(coverageProbability, degreesOfFreedom));
}
