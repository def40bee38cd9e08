using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Statistics;
using MathNet.Numerics;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>
/// How probable the observed masses per revolution are, as logarithms of densities of y_i = ln(k_i / k_expected), if nothing
/// but an ordinary change happened, and if a mistake changed them on top of it.
/// </summary>
/// <remarks>
/// <para>
/// Ordinary: y_i = level + e_i. The level is the ordinary change (Student t, three degrees of freedom) plus normal parts:
/// the mean of the test, what is common to its catches, the value compared with, the day. The e_i scatter with variances
/// proportional to a_i = s0_i^2 + v_i; their common factor is known with nu0 degrees of freedom, so that the scatter about the weighted
/// mean has a multivariate t density. Without a value to compare with, the level is unknown (flat), and catches are judged
/// against each other.
/// </para>
/// <para>
/// A mistake does not keep a meter from changing: under it the numbers as they would be without the mistake have the
/// ordinary density, times the derivative of one by the other. A range of ratios is integrated in closed form.
/// </para>
/// <para>Accuracy: checked by brute-force integration and against the library's densities (TestLikelihoodReferenceTests).</para>
/// </remarks>
internal sealed class TestLikelihood
{
    private readonly CatchReadings readings;
    private readonly double priorDegreesOfFreedom;
    private readonly double[] known;
    private readonly double[] observed;
    private readonly double[] corrected;
    private readonly BlurredStudentT? level;
    private readonly double scale;
    private readonly double logReference;
    private readonly double heightOfAll;
    private readonly double sumOfWeights;
    private BlurredStudentT? vagueLevel;
    private LevelOfOthers? others;
    private WiderScatter? wider;

    public TestLikelihood(CatchReadings readings, double? reference, double ordinaryChange, double commonVariance)
    {
        this.readings = readings;
        priorDegreesOfFreedom = readings.Prior.DegreesOfFreedom;
        scale = ordinaryChange;
        logReference = Math.Log(reference ?? readings.Values[0]);
        known = new double[readings.Count];
        observed = new double[readings.Count];
        corrected = new double[readings.Count];
        for (var i = 0; i < known.Length; i++)
        {
            known[i] = readings.Believed[i] + readings.Variances[i];
            observed[i] = Math.Log(readings.Values[i]) - logReference;
            sumOfWeights += 1 / known[i];
        }

        NormalDeviation = Math.Sqrt(1 / sumOfWeights + commonVariance);
        level = reference is null ? null : new BlurredStudentT(ordinaryChange, NormalDeviation);
        heightOfAll = known.Length > 1 ? LogScatterHeight(known, -1) : 0;
        (Mean, Scatter) = MeanAndScatter(observed, known, -1);
        var ofMean = level?.LogDensity(Mean) ?? 0;
        Ordinary = LogScatter(Scatter, known.Length - 1, heightOfAll) + ofMean;
        LargestGainOfScatter = (priorDegreesOfFreedom + known.Length - 1) / 2 * Math.Log(1 + Scatter / priorDegreesOfFreedom);
        LargestGainOfLevel = (level?.LogDensity(0) ?? 0) - ofMean;
    }

    /// <summary>Of the whole test, without the ordinary change.</summary>
    public double NormalDeviation { get; }

    /// <summary>ln of the whole test over what was expected.</summary>
    public double Mean { get; }

    /// <summary>The whole test differs from what was expected by more than all that is uncertain about both.</summary>
    public bool IsVisible => level is not null && !IsWithin(Mean, 0);

    /// <summary>Sum of the squared deviations over a_i.</summary>
    public double Scatter { get; }

    /// <summary>Log density of an ordinary change and nothing else.</summary>
    public double Ordinary { get; }

    private BlurredStudentT VagueLevel =>
        vagueLevel ??= new BlurredStudentT(
            scale,
            Math.Sqrt(
                NormalDeviation * NormalDeviation + MistakeJudgement.OtherDeliveryUncertainty * MistakeJudgement.OtherDeliveryUncertainty
            )
        );

    /// <summary>How much the level could gain at most if a mistake were taken back.</summary>
    public double LargestGainOfLevel { get; }

    /// <summary>How much the scatter could gain at most if every catch were changed.</summary>
    public double LargestGainOfScatter { get; }

    /// <summary>ln of one catch over the level of the others.</summary>
    public double AgainstOthers(int at) => observed[at] - MeanAndScatter(observed, known, at).Mean;

    /// <summary>ln of one catch over what was expected.</summary>
    public double Observed(int at) => observed[at];

    /// <summary>How much the scatter could gain at most if one catch were changed, to rounding: enough for a first look.</summary>
    public double LargestGainOf(int at)
    {
        // Mean and scatter without one catch follow from those of all.
        var weight = 1 / known[at];
        var rest = sumOfWeights - weight;
        var deviation = (observed[at] - Mean) * sumOfWeights / rest;
        var scatter = Math.Max(0, Scatter - deviation * deviation * weight * rest / sumOfWeights);
        var degreesOfFreedom = priorDegreesOfFreedom + known.Length - 2;
        var variance = (priorDegreesOfFreedom + scatter) / degreesOfFreedom * (known[at] + 1 / rest);
        return (degreesOfFreedom + 1) / 2 * Math.Log(1 + deviation * deviation / (variance * degreesOfFreedom));
    }

    public double WithRatio(int? at, double shift, bool isUncertain)
    {
        var used = isUncertain && level is not null ? VagueLevel : level;
        if (at is not { } one)
            return LogScatter(Scatter, known.Length - 1, heightOfAll) + (used?.LogDensity(Mean - shift) ?? 0);
        // Mean and scatter follow from those of the test as it is.
        var weight = 1 / known[one];
        var mean = Mean - shift * weight / sumOfWeights;
        var change = shift * weight * (shift * (1 - weight / sumOfWeights) - 2 * (observed[one] - Mean));
        return LogScatter(Math.Max(0, Scatter + change), known.Length - 1, heightOfAll) + (used?.LogDensity(mean) ?? 0);
    }

    /// <summary>So near what was expected that nothing is left to explain.</summary>
    /// <param name="mean">ln of the whole test over what was expected, a mistake taken back.</param>
    /// <param name="uncertainty">Standard uncertainty on ln of what the mistake does.</param>
    public bool IsWithin(double mean, double uncertainty) =>
        Math.Abs(mean) <= MistakeJudgement.VisibleDeviations * Math.Sqrt(NormalDeviation * NormalDeviation + uncertainty * uncertainty);

    /// <summary>ln of the whole test over what was expected, with other masses; not a number where one is not above 0.</summary>
    public double MeanOfMasses(Func<int, double> trueMass) =>
        double.IsNegativeInfinity(Correct(null, trueMass, 1)) ? double.NaN : MeanAndScatter(corrected, known, -1).Mean;

    /// <summary>The same with other counts of turns.</summary>
    public double MeanOfTurns(Func<int, double> trueTurns) =>
        CanCorrectTurns(null, trueTurns) ? MeanAndScatter(corrected, known, -1).Mean : double.NaN;

    public double WithCorrectedMasses(int? at, Func<int, double> trueMass, double slope)
    {
        var derivatives = Correct(at, trueMass, slope);
        return double.IsNegativeInfinity(derivatives) ? derivatives : OfCorrected(derivatives, level);
    }

    public double WithCorrectedTurns(int? at, Func<int, double> trueTurns) =>
        CanCorrectTurns(at, trueTurns) ? OfCorrected(0, level) : double.NegativeInfinity;

    // The logarithm of the derivatives; minus infinity where a mass is not above 0.
    private double Correct(int? at, Func<int, double> trueMass, double slope)
    {
        observed.CopyTo(corrected, 0);
        var derivatives = 0.0;
        for (var i = at ?? 0; i <= (at ?? known.Length - 1); i++)
        {
            var mass = trueMass(i);
            if (!(mass > 0))
                return double.NegativeInfinity;
            corrected[i] = Math.Log(mass / readings.Revolutions[i]) - logReference;
            derivatives += observed[i] - corrected[i];
        }

        return derivatives + (at is null ? known.Length : 1) * Math.Log(slope);
    }

    private bool CanCorrectTurns(int? at, Func<int, double> trueTurns)
    {
        observed.CopyTo(corrected, 0);
        for (var i = at ?? 0; i <= (at ?? known.Length - 1); i++)
        {
            var turns = trueTurns(i);
            if (!(turns > 0))
                return false;
            corrected[i] += Math.Log(readings.Revolutions[i] / turns);
        }

        return true;
    }

    // The scatter that the mistake adds is known as little as that of honest catches; the level is blurred so little beside the
    // range that it is taken as it is.
    public double WithUnevenRange(double low, double high, double addedScatter)
    {
        if (level is null)
            return double.NegativeInfinity;
        if (known.Length == 1)
            return WithRange(null, low, high);
        var (_, mean, density) = WithAddedScatter(addedScatter);
        return density + level.LogProbabilityBetween(mean - high, mean - low) - Math.Log(high - low);
    }

    /// <summary>How much better the scatter of the catches is explained if a mistake adds to it; below 0 where they agree.</summary>
    public double GainOfAddedScatter(double addedScatter) =>
        WithAddedScatter(addedScatter).LogDensity - LogScatter(Scatter, known.Length - 1, heightOfAll);

    // Kept, because every mistake that adds as much asks for it.
    private WiderScatter WithAddedScatter(double added)
    {
        if (wider is { } before && before.Added == added)
            return before;
        Span<double> variances = known.Length <= 64 ? stackalloc double[known.Length] : new double[known.Length];
        for (var i = 0; i < variances.Length; i++)
            variances[i] = known[i] + added * added;
        var (mean, scatter) = MeanAndScatter(observed, variances, -1);
        var found = new WiderScatter(added, mean, LogScatter(scatter, variances.Length - 1, LogScatterHeight(variances, -1)));
        wider = found;
        return found;
    }

    public double WithRange(int? at, double low, double high)
    {
        if (at is not { } one)
        {
            return level is null
                ? double.NegativeInfinity
                : LogScatter(Scatter, known.Length - 1, heightOfAll)
                    + level.LogProbabilityBetween(Mean - high, Mean - low)
                    - Math.Log(high - low);
        }

        var rest = Others(one);
        var deviation = observed[one] - rest.Mean;
        return rest.LogDensity
            + LogBetween((deviation - high) / rest.Spread, (deviation - low) / rest.Spread, rest.DegreesOfFreedom)
            - Math.Log(high - low);
    }

    public double WithAnyRatio(int? at, double halfWidth)
    {
        if (at is not { } one)
            return level is null
                ? double.NegativeInfinity
                : LogScatter(Scatter, known.Length - 1, heightOfAll) + LogCauchy(Mean, halfWidth);
        var rest = Others(one);
        return rest.LogDensity + LogCauchy(observed[one] - rest.Mean, halfWidth);
    }

    private static double LogCauchy(double x, double halfWidth) => -Math.Log(Math.PI * halfWidth * (1 + x * x / (halfWidth * halfWidth)));

    private static double LogBetween(double lower, double upper, double degreesOfFreedom)
    {
        if (lower > 0)
            (lower, upper) = (-upper, -lower);
        var between = StudentT.Cdf(upper, degreesOfFreedom) - StudentT.Cdf(lower, degreesOfFreedom);
        if (between > 0)
            return Math.Log(between);
        // So far out that both tails vanish: the density at the nearer end, over the width, is close enough.
        var nearer = Math.Min(Math.Abs(lower), Math.Abs(upper));
        return -(degreesOfFreedom + 1) / 2 * Math.Log(1 + nearer * nearer / degreesOfFreedom) + Math.Log(upper - lower);
    }

    private double OfCorrected(double derivatives, BlurredStudentT? used)
    {
        var (mean, scatter) = MeanAndScatter(corrected, known, -1);
        return LogScatter(scatter, known.Length - 1, heightOfAll) + (used?.LogDensity(mean) ?? 0) + derivatives;
    }

    // The level that the others leave for one catch; kept, because every mistake in that catch asks for it.
    private LevelOfOthers Others(int at)
    {
        if (others is { } before && before.At == at)
            return before;
        var (mean, scatter) = MeanAndScatter(observed, known, at);
        var rest = 0.0;
        for (var i = 0; i < known.Length; i++)
            rest += i == at ? 0 : 1 / known[i];
        var degreesOfFreedom = priorDegreesOfFreedom + known.Length - 2;
        var factor = (priorDegreesOfFreedom + scatter) / degreesOfFreedom;
        var density =
            LogScatter(scatter, known.Length - 2, known.Length > 2 ? LogScatterHeight(known, at) : 0) + (level?.LogDensity(mean) ?? 0);
        var found = new LevelOfOthers(at, mean, Math.Sqrt(factor * (known[at] + 1 / rest)), degreesOfFreedom, density);
        others = found;
        return found;
    }

    private static (double Mean, double Scatter) MeanAndScatter(double[] values, ReadOnlySpan<double> variances, int leftOut)
    {
        double weights = 0,
            sum = 0,
            squares = 0;
        for (var i = 0; i < values.Length; i++)
        {
            if (i == leftOut)
                continue;
            var weight = 1 / variances[i];
            weights += weight;
            sum += values[i] * weight;
        }

        var mean = sum / weights;
        for (var i = 0; i < values.Length; i++)
            squares += i == leftOut ? 0 : (values[i] - mean) * (values[i] - mean) / variances[i];
        return (mean, squares);
    }

    private double LogScatter(double scatter, int others, double height) =>
        others == 0 ? 0 : height - (priorDegreesOfFreedom + others) / 2 * Math.Log(1 + scatter / priorDegreesOfFreedom);

    // ln of Gamma((nu0 + c - 1) / 2) / (Gamma(nu0 / 2) (nu0 pi)^((c - 1) / 2) sqrt(prod(a_i) sum(1 / a_i))).
    private double LogScatterHeight(ReadOnlySpan<double> variances, int leftOut)
    {
        double weights = 0,
            logs = 0;
        for (var i = 0; i < variances.Length; i++)
        {
            weights += i == leftOut ? 0 : 1 / variances[i];
            logs += i == leftOut ? 0 : Math.Log(variances[i]);
        }

        var others = variances.Length - (leftOut < 0 ? 1 : 2);
        return SpecialFunctions.GammaLn((priorDegreesOfFreedom + others) / 2)
            - SpecialFunctions.GammaLn(priorDegreesOfFreedom / 2)
            - (others * Math.Log(priorDegreesOfFreedom * Math.PI) + logs + Math.Log(weights)) / 2;
    }

    /// <summary>What all catches but one say.</summary>
    /// <param name="At">The one.</param>
    /// <param name="Mean">ln of their level over what was expected.</param>
    /// <param name="Spread">Scale of the t distribution that they predict for the one.</param>
    /// <param name="DegreesOfFreedom">Its degrees of freedom.</param>
    /// <param name="LogDensity">Natural logarithm of their own density.</param>
    private readonly record struct LevelOfOthers(int At, double Mean, double Spread, double DegreesOfFreedom, double LogDensity);

    /// <summary>The test as it is explained by a mistake that adds to its scatter.</summary>
    /// <param name="Added">Standard deviation on ln that it adds.</param>
    /// <param name="Mean">ln of the whole test over what was expected.</param>
    /// <param name="LogDensity">Natural logarithm of the density of the scatter.</param>
    private readonly record struct WiderScatter(double Added, double Mean, double LogDensity);
}
