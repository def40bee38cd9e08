using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>Whether the catches of a test agree with each other, and what pattern they show if not.</summary>
/// <remarks>
/// All tests that apply share a family-wise error of 5 %: the stray-catch test takes 1 %, the others an equal part of the
/// rest each. Nothing is dropped: a finding says what was seen, and only the caller excludes a catch.
/// </remarks>
public sealed record CatchAgreement
{
    /// <summary>Family-wise error of all tests together.</summary>
    public const double FamilyError = 0.05;

    /// <summary>The part of it that the stray-catch test takes.</summary>
    public const double StrayError = 0.01;

    /// <summary>Ratio of the largest to the smallest number of revolutions from which an offset can be told from a slope.</summary>
    public const double UnequalRevolutions = 1.5;

    /// <summary>Fewest catches that can show a trend.</summary>
    public const int FewestForTrend = 5;

    /// <summary>Fewest catches among which one can be called stray or the first one low.</summary>
    public const int FewestForStray = 3;

    /// <summary>
    /// Fewest catches for which Grubbs' statistic is reported: at three, two equal readings alone condemn an honest third.
    /// </summary>
    public const int FewestForGrubbs = 6;

    /// <summary>Standard deviation of the mass per revolution of the catches, relative; 0 for one catch.</summary>
    public required double Spread { get; init; }

    /// <summary>Sum of squared deviations over the variances believed of them, s0_i^2 + v_i.</summary>
    public required double Q { get; init; }

    /// <summary>
    /// How often honest catches give at least this Q, averaged over what is believed of their scatter (<see cref="ScatterPrior"/>); 1 for
    /// one catch.
    /// </summary>
    public required double QProbability { get; init; }

    /// <summary>Error allowed for each of the tests other than the stray-catch test.</summary>
    public required double ErrorEach { get; init; }

    /// <summary>The catch that stands farthest from the others, as a position among all catches; null under three catches.</summary>
    public int? FarthestCatch { get; init; }

    /// <summary>Its deviation from the value of the others, relative.</summary>
    public double FarthestDeviation { get; init; }

    /// <summary>Bonferroni-corrected probability of a deviation that large among honest catches.</summary>
    public double FarthestProbability { get; init; } = 1;

    /// <summary>One-sided probability of a first catch that low; 1 where the test does not apply.</summary>
    public double FirstLowProbability { get; init; } = 1;

    /// <summary>Deviation of the first catch from the others, relative.</summary>
    public double FirstDeviation { get; init; }

    /// <summary>Two-sided probability of a trend that steep; 1 under five catches.</summary>
    public double TrendProbability { get; init; } = 1;

    /// <summary>Slope over the catches, relative change from one catch to the next.</summary>
    public double TrendPerCatch { get; init; }

    /// <summary>Two-sided probability of an offset that large; 1 where the catches are too equal to tell.</summary>
    public double OffsetProbability { get; init; } = 1;

    /// <summary>The additive offset a in m = a + k N, kg.</summary>
    public double Offset { get; init; }

    /// <summary>Grubbs' statistic, for information from six catches on.</summary>
    public double? Grubbs { get; init; }

    /// <summary>A catch stands apart from the others.</summary>
    public bool HasStray => FarthestProbability < StrayError;

    /// <summary>The catches scatter more than the repeatability and the known parts explain.</summary>
    public bool ScatterTooMuch => QProbability < ErrorEach;

    /// <summary>The first catch is low, as it is when the meter was not primed.</summary>
    public bool FirstIsLow => FirstLowProbability < ErrorEach;

    /// <summary>The catches rise or fall one after the other.</summary>
    public bool HasTrend => TrendProbability < ErrorEach;

    /// <summary>Something was added to every catch, whatever its size.</summary>
    public bool HasOffset => OffsetProbability < ErrorEach;

    /// <summary>No test speaks against the catches.</summary>
    public bool Agree => !(HasStray || ScatterTooMuch || FirstIsLow || HasTrend || HasOffset);

    /// <summary>
    /// A catch stands apart beyond a tolerance, and honest catches do so in fewer than 5 of 100 tests: not sure enough to stop the test,
    /// too much to adopt its number. Of two catches nobody can say which.
    /// </summary>
    /// <param name="tolerance">Largest deviation that does no harm, relative.</param>
    /// <remarks>
    /// <para>Formula: the farthest catch has a probability below 5 % and |deviation| above the tolerance; of two catches, Q below 5 % and
    /// sqrt(2) spread above it.</para>
    /// <para>Range: tolerance at least 0, relative; one catch never stands apart.</para>
    /// <para>Source: our own derivation; 5 % is common practice, no published source.</para>
    /// <para>Accuracy: the limits from both sides (CatchAgreementTests).</para>
    /// </remarks>
    public bool HasCatchApart(double tolerance) =>
        FarthestCatch is null
            ? QProbability < FamilyError && Spread * Math.Sqrt(2) > tolerance
            : FarthestProbability < FamilyError && Math.Abs(FarthestDeviation) > tolerance;

    internal static CatchAgreement Of(CatchReadings readings, MassPerRevolutionEstimate estimate)
    {
        var count = readings.Count;
        if (count == 1)
            return new CatchAgreement
            {
                Spread = 0,
                Q = 0,
                QProbability = 1,
                ErrorEach = FamilyError,
            };

        var canOffset = !Threshold.IsBelow(readings.Revolutions.Max(), UnequalRevolutions * readings.Revolutions.Min());
        var canStray = count >= FewestForStray;
        var canTrend = count >= FewestForTrend;
        var others = 1 + (canStray ? 1 : 0) + (canTrend ? 1 : 0) + (canOffset ? 1 : 0);
        var (q, spread) = readings.Ratios.Scatter();
        var agreement = new CatchAgreement
        {
            Spread = spread,
            Q = q,
            QProbability = ScatterPrior
                .Of(readings.Prior.DegreesOfFreedom)
                .UpperTail(q, ScatterShares.Of(readings.Believed, readings.Variances)),
            ErrorEach = (FamilyError - (canStray ? StrayError : 0)) / others,
            Grubbs = count >= FewestForGrubbs ? GrubbsStatistic(readings.Values) : null,
        };
        if (canStray)
            agreement = WithStray(agreement, readings, estimate.Pooled.Scatter);
        if (canTrend)
            agreement = WithTrend(agreement, readings, estimate);
        if (canOffset)
            agreement = WithOffset(agreement, readings);
        return agreement;
    }

    // Deleted residual: each catch against the value of the others, whose scatter it has not helped to widen.
    private static CatchAgreement WithStray(CatchAgreement agreement, CatchReadings readings, double scatterOfAll)
    {
        var count = readings.Count;
        var degreesOfFreedom = readings.Prior.DegreesOfFreedom + count - 2;
        double farthest = -1,
            farthestDeviation = 0,
            first = 0,
            firstDeviation = 0;
        var which = 0;
        for (var i = 0; i < count; i++)
        {
            var rest = readings.Ratios.Pool(leftOut: i, near: scatterOfAll);
            var deviation = readings.Values[i] / rest.Value - 1;
            var t = deviation / Math.Sqrt(rest.Scatter * readings.Believed[i] + readings.Variances[i] + rest.RelativeVariance);
            if (i == 0)
                (first, firstDeviation) = (t, deviation);
            if (Math.Abs(t) > farthest)
                (farthest, which, farthestDeviation) = (Math.Abs(t), i, deviation);
        }

        return agreement with
        {
            FarthestCatch = readings.Positions[which],
            FarthestDeviation = farthestDeviation,
            FarthestProbability = Math.Min(1, count * StudentT.TwoSided(farthest, degreesOfFreedom)),
            FirstLowProbability = first < 0 ? StudentT.Cdf(first, degreesOfFreedom) : 1,
            FirstDeviation = firstDeviation,
        };
    }

    private static CatchAgreement WithTrend(CatchAgreement agreement, CatchReadings readings, MassPerRevolutionEstimate estimate)
    {
        Span<double> order = stackalloc double[readings.Count];
        for (var i = 0; i < order.Length; i++)
            order[i] = i;
        var line = CatchLine.Fit(readings, order);
        return agreement with
        {
            TrendPerCatch = line.Slope / estimate.Value.Value,
            TrendProbability = StudentT.TwoSided(line.Slope / line.StandardUncertainty, line.DegreesOfFreedom),
        };
    }

    private static CatchAgreement WithOffset(CatchAgreement agreement, CatchReadings readings)
    {
        Span<double> inverse = stackalloc double[readings.Count];
        for (var i = 0; i < inverse.Length; i++)
            inverse[i] = 1 / readings.Revolutions[i];
        var line = CatchLine.Fit(readings, inverse);
        // A shared tare that was read wrong is itself an offset, so its rounding widens the interval of the offset.
        var uncertainty = Math.Sqrt(line.StandardUncertainty * line.StandardUncertainty + readings.SharedTare * readings.SharedTare);
        return agreement with
        {
            Offset = line.Slope,
            OffsetProbability = StudentT.TwoSided(line.Slope / uncertainty, line.DegreesOfFreedom),
        };
    }

    private static double GrubbsStatistic(double[] values)
    {
        var mean = values.Average();
        double squares = 0,
            farthest = 0;
        foreach (var value in values)
        {
            squares += (value - mean) * (value - mean);
            farthest = Math.Max(farthest, Math.Abs(value - mean));
        }

        var deviation = Math.Sqrt(squares / (values.Length - 1));
        // Equal readings differ from their own mean by a rounding, which is no deviation.
        return deviation > 1e-12 * mean ? farthest / deviation : 0;
    }
}
