using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>Plants over the seeds sown, with its interval.</summary>
/// <param name="Value">The share, as a fraction; above 1 when more plants were counted than seeds sown.</param>
/// <param name="Lower">Lower end of the interval.</param>
/// <param name="Upper">Upper end of the interval.</param>
public sealed record ShareOfSeeds(double Value, double Lower, double Upper)
{
    /// <summary>The share of seeds that a density of plants makes.</summary>
    /// <param name="density">The plants counted.</param>
    /// <param name="seedsPerSquareMetre">Seeds sown (pure seeds for survival, viable ones for emergence), above 0.</param>
    /// <param name="sowingUncertainty">Relative standard uncertainty of the seeds sown, &gt;= 0.</param>
    /// <param name="coverage">Coverage probability of the interval.</param>
    /// <remarks>
    /// <para>Formula: share = D / seeds, and ln of each end lies sqrt(d^2 + (z u)^2) from it, d the distance in the interval of D and u the
    /// uncertainty of the seeds. On a logarithmic scale the distance of each end grows in quadrature by z times the uncertainty of the
    /// seeds. A lower end of 0 stays 0.</para>
    /// <para>Range: seeds above 0, uncertainty at least 0; a share above 1 where more plants came than seeds were sown.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-10 relative for the ends, 1e-12 for the share (ShareOfSeedsTests).</para>
    /// </remarks>
    public static ShareOfSeeds Of(PlantDensity density, double seedsPerSquareMetre, double sowingUncertainty, double coverage)
    {
        var (lower, upper) = density.Interval(coverage);
        var added = StudentT.CoverageFactor(coverage, double.PositiveInfinity) * sowingUncertainty;
        // Without a plant there is no estimate to measure a distance from; the upper limit is moved as a whole.
        return density.Plants == 0
            ? new ShareOfSeeds(0, 0, upper / seedsPerSquareMetre * Math.Exp(added))
            : new ShareOfSeeds(
                density.PerSquareMetre / seedsPerSquareMetre,
                density.PerSquareMetre / seedsPerSquareMetre * Math.Exp(-Widened(Math.Log(density.PerSquareMetre / lower), added)),
                density.PerSquareMetre / seedsPerSquareMetre * Math.Exp(Widened(Math.Log(upper / density.PerSquareMetre), added))
            );
    }

    private static double Widened(double distance, double added) => Math.Sqrt(distance * distance + added * added);
}
