namespace CalibrationApi.Engine.Catches;

/// <summary>What a caller may set about a judgement on catches; null takes the default.</summary>
public sealed record CatchTestLimits
{
    /// <summary>
    /// Published acceptance limit: within 5 % of the target rate and of the outlet mean (SOURCES.md, keys FIELD-2007, UGA-FA).
    /// </summary>
    public const double DefaultTolerance = 0.05;

    /// <summary>Judgement; no published source.</summary>
    public const double DefaultWantedPrecision = 0.03;

    /// <summary>
    /// Change that asks for a second test, in tolerances: 10 % with the default one, twice the published limit. Less than two tolerances
    /// can be one each for the old value and the new; judgement.
    /// </summary>
    public const double SecondTestTolerances = 2;

    /// <summary>Judgement until a series has five tests; no published source.</summary>
    public const double DefaultDayToDay = 0.01;

    /// <summary>The usual coverage of an expanded uncertainty.</summary>
    public const double DefaultCoverage = 0.95;

    /// <summary>Probability with which the number of catches asked for has to be enough; judgement, no published source.</summary>
    public const double DefaultPrecisionProbability = 0.80;

    /// <summary>Largest acceptable deviation of the number in force from the truth, relative (T).</summary>
    public double? Tolerance { get; init; }

    /// <summary>Largest acceptable expanded uncertainty of the result, relative, at the coverage probability.</summary>
    public double? WantedPrecision { get; init; }

    /// <summary>Probability with which the number of further catches asked for reaches the wanted precision.</summary>
    public double? PrecisionProbability { get; init; }

    /// <summary>Change from what was expected, from which a second test, set up anew, has to agree; relative.</summary>
    public double? SecondTestChange { get; init; }

    /// <summary>Standard deviation between days beyond the scatter of catches, relative (sigma_d).</summary>
    public double? DayToDay { get; init; }

    /// <summary>Repeatability of one catch, relative (s0).</summary>
    public double? Repeatability { get; init; }

    /// <summary>Degrees of freedom of that repeatability (nu0).</summary>
    public double? RepeatabilityDegreesOfFreedom { get; init; }

    /// <summary>Coverage probability of expanded uncertainties, 0.5 to 0.9999.</summary>
    public double? CoverageProbability { get; init; }
}
