namespace CalibrationApi.Engine.Uncertainty;

/// <summary>An estimate with its standard uncertainty and the interval made from it.</summary>
/// <param name="Value">The estimate, in the SI unit of its quantity.</param>
/// <param name="StandardUncertainty">Standard uncertainty, same unit, &gt;= 0.</param>
/// <param name="DegreesOfFreedom">Effective degrees of freedom of the standard uncertainty; infinity when known without doubt.</param>
/// <param name="CoverageProbability">Probability of the interval, for example 0.95.</param>
/// <param name="CoverageFactor">The factor by which the standard uncertainty is expanded.</param>
/// <remarks>Names as in JCGM 100:2008, 2.3 (SOURCES.md, key GUM).</remarks>
public sealed record MeasuredValue(
    double Value,
    double StandardUncertainty,
    double DegreesOfFreedom,
    double CoverageProbability,
    double CoverageFactor
)
{
    /// <summary>Half width of the coverage interval, same unit as the value.</summary>
    /// <remarks>
    /// <para>Formula: U = k u, in the unit of the value.</para>
    /// <para>Range: at least 0; 0 where nothing is uncertain.</para>
    /// <para>Source: JCGM 100:2008, 6.2.1 (SOURCES.md, key GUM).</para>
    /// <para>Accuracy: the product of two doubles, rounded once (MeasuredValueTests).</para>
    /// </remarks>
    public double ExpandedUncertainty => CoverageFactor * StandardUncertainty;

    /// <summary>Expands an uncertainty, in the unit of the value, to a coverage probability.</summary>
    public static MeasuredValue Create(double value, TwoPartUncertainty uncertainty, double coverageProbability) =>
        new(
            value,
            uncertainty.StandardUncertainty,
            uncertainty.EffectiveDegreesOfFreedom,
            coverageProbability,
            uncertainty.CoverageFactor(coverageProbability)
        );
}
