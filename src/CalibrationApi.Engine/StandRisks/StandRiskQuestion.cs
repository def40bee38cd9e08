using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>What rate reaches a minimum stand with a wanted probability, and how probable is it at a given one?</summary>
public sealed record StandRiskQuestion
{
    /// <summary>The stand that has to be reached, above 0.</summary>
    public required CountPerArea MinimumStand { get; init; }

    /// <summary>Probability with which it has to be reached, at least 0.5 and below 1; null takes the default.</summary>
    public double? Probability { get; init; }

    /// <summary>Share of the seeds that become plants.</summary>
    public required ExpectedShare Share { get; init; }

    /// <summary>
    /// Germination, above 0, at most 1, where <see cref="Share"/> is of viable seeds; null where germination is part of it.
    /// </summary>
    public double? Germination { get; init; }

    /// <summary>Seeds that the germination test counted; null takes the default.</summary>
    public int? SeedsTested { get; init; }

    /// <summary>Mass of a kernel as sown; null where only seeds per area are wanted.</summary>
    public MassPerThousand? KernelMass { get; init; }

    /// <summary>Relative standard uncertainty of the kernel mass; null takes the default where a kernel mass is given.</summary>
    public double? KernelMassUncertainty { get; init; }

    /// <summary>Share of the mass that is pure seed, above 0, at most 1; null takes all of it.</summary>
    public double? Purity { get; init; }

    /// <summary>Relative standard uncertainty of what the meter puts down; null takes the default.</summary>
    public double? MeteringUncertainty { get; init; }

    /// <summary>A rate that is thought of, in pure seeds per area.</summary>
    public CountPerArea? SeedsSown { get; init; }

    /// <summary>The highest rate that may be sown, in pure seeds per area.</summary>
    public CountPerArea? MaximumSeeds { get; init; }

    /// <summary>Money for a kilogram of seed; needs <see cref="KernelMass"/>.</summary>
    public double? PricePerKilogram { get; init; }

    /// <summary>Area to be sown, for the cost of all of it.</summary>
    public Area? Area { get; init; }
}

/// <summary>A share of seeds and how much it can differ from the mean in the season to come.</summary>
/// <param name="Mean">Mean, above 0, at most 1.</param>
/// <param name="Spread">Standard deviation from one stand and season to the next, at least 0.</param>
/// <param name="FromOneStand">The spread only says how well one stand was counted, not how seasons differ.</param>
public sealed record ExpectedShare(double Mean, double Spread, bool FromOneStand = false)
{
    /// <summary>A share counted in one stand, for the next one.</summary>
    /// <param name="share">The share counted or learned.</param>
    /// <param name="lower">Lower end of its interval, at least 0 and below <paramref name="upper"/>.</param>
    /// <param name="upper">Upper end of its interval.</param>
    /// <param name="coverage">Coverage probability of the interval.</param>
    /// <param name="seasonSpread">Standard deviation from season to season; null when unknown.</param>
    /// <remarks>
    /// <para>Formula: s^2 = ((upper - lower) / (2 z))^2 + s_season^2, fractions. The interval's half width over z is the standard
    /// uncertainty of the mean; it adds in quadrature to the spread of seasons.</para>
    /// <para>Range: ends in order, coverage strictly between 0 and 1; without a spread of seasons that of the counts alone, and a finding
    /// says so.</para>
    /// <para>Source: JCGM 100:2008, 5.1.2 (SOURCES.md, key GUM), for the sum of independent parts.</para>
    /// <para>Accuracy: 1e-7 (StandRiskTests).</para>
    /// </remarks>
    public static ExpectedShare FromCounts(double share, double lower, double upper, double coverage, double? seasonSpread)
    {
        var uncertainty = (upper - lower) / 2 / Statistics.StudentT.CoverageFactor(coverage, double.PositiveInfinity);
        var season = seasonSpread ?? 0;
        return new ExpectedShare(share, Math.Sqrt(uncertainty * uncertainty + season * season), seasonSpread is null);
    }
}
