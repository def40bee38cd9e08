namespace CalibrationApi.Engine.SeedingRates;

/// <summary>What becomes of pure seeds: germination and field emergence, or one figure for both. Never both readings at once.</summary>
/// <remarks>
/// <para>Formula: survival S = G E: G the share of the pure seeds that germinate in the laboratory, E plants per seed that can germinate.
/// Many published formulas have one figure for both and call it survival, establishment or emergence; it comes in by
/// <see cref="Folded"/>.</para>
/// <para>Uncertainties are relative and standard. Germination: binomial, sqrt(G (1 - G) / n) / G with n seeds tested, never less than for
/// one seed of n that did otherwise, so that 100 of 100 is not taken for certain. A range of E or S is taken as rectangular, (high - low) /
/// sqrt(12).</para>
/// <para>Range: shares above 0, at most 1; a range that holds its value; at least one seed tested.</para>
/// <para>Source: the binomial rule SOURCES.md, key PIEPHO-2018, and key USDA-TOLERANCE; a rectangle JCGM 100:2008, 4.3.7 (key GUM); one
/// seed at least is judgement.</para>
/// <para>Accuracy: 1e-12 against the formulas by hand (SeedingRateEvaluationTests).</para>
/// </remarks>
public sealed record Establishment
{
    private Establishment() { }

    /// <summary>Nothing is known; seeds and masses can still be computed, plants cannot.</summary>
    public static Establishment Unknown { get; } = new();

    /// <summary>Germination G, above 0, at most 1; null when unknown or folded into survival.</summary>
    public double? Germination { get; private init; }

    /// <summary>Field emergence E, above 0, at most 1; null when unknown or folded.</summary>
    public double? Emergence { get; private init; }

    /// <summary>Plants per pure seed; null when unknown.</summary>
    public double? Survival { get; private init; }

    /// <summary>Relative standard uncertainty of germination; null when the number of seeds tested is unknown.</summary>
    public double? GerminationUncertainty { get; private init; }

    /// <summary>Relative standard uncertainty of field emergence or of survival; null when no range was stated.</summary>
    public double? EmergenceUncertainty { get; private init; }

    /// <summary>Germination and, where known, field emergence.</summary>
    /// <param name="germination">G, above 0, at most 1.</param>
    /// <param name="seedsTested">Seeds in the germination test, above 0.</param>
    /// <param name="emergence">E, above 0, at most 1.</param>
    /// <param name="range">Lowest and highest emergence thought possible, around E.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is not above 0 and at most 1, the count is not positive, or the range does not
    /// hold the emergence.</exception>
    public static Establishment Tested(
        double germination,
        int? seedsTested = null,
        double? emergence = null,
        (double Low, double High)? range = null
    )
    {
        Check(germination);
        if (seedsTested is { } count)
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count, nameof(seedsTested));
        return new()
        {
            Germination = germination,
            Emergence = emergence,
            Survival = emergence is { } share ? germination * Check(share) : null,
            GerminationUncertainty = seedsTested is { } n ? UncertaintyOfTest(germination, n) : null,
            EmergenceUncertainty = emergence is { } e ? Rectangular(e, range) : null,
        };
    }

    /// <summary>One figure for germination and field emergence together.</summary>
    /// <param name="survival">Plants per pure seed, above 0, at most 1.</param>
    /// <param name="range">Lowest and highest survival thought possible, around it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1, or the range does not hold it.</exception>
    public static Establishment Folded(double survival, (double Low, double High)? range = null) =>
        new() { Survival = Check(survival), EmergenceUncertainty = Rectangular(survival, range) };

    /// <summary>
    /// Relative standard uncertainty of a germination that a test of so many seeds found; above 0 also where all of them germinated.
    /// </summary>
    internal static double UncertaintyOfTest(double germination, int tested)
    {
        var leastVariance = (tested - 1.0) / tested / tested;
        return Math.Sqrt(Math.Max(germination * (1 - germination), leastVariance) / tested) / germination;
    }

    private static double? Rectangular(double value, (double Low, double High)? range)
    {
        if (range is not var (low, high))
            return null;
        if (!(low <= value && value <= high))
            throw new ArgumentOutOfRangeException(nameof(range), range, "The range does not hold the value.");
        return (high - low) / Math.Sqrt(12) / value;
    }

    private static double Check(double share) =>
        share > 0 && share <= 1 ? share : throw new ArgumentOutOfRangeException(nameof(share), share, "A share is above 0 and at most 1.");
}
