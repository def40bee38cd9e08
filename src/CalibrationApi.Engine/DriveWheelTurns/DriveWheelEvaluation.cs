using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>Turns of a drive wheel for areas, expected catches, and the rate that turn tests give.</summary>
public static class DriveWheelEvaluation
{
    /// <summary>Probability of being within tolerance below which the setting is corrected rather than tested again.</summary>
    public const double CorrectProbability = 0.5;

    // Rounding of a scale that nobody stated is left out, so that its division only has to be above 0.
    private static readonly Scale UnstatedScale = new() { Division = new Mass(1e-9) };

    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">A wheel and a width; areas, a target rate and tests as far as they are known.</param>
    /// <remarks>
    /// <para>Formula: masses over turns of the wheel are pooled as those over revolutions of a meter are
    /// (<see cref="MassPerRevolutionEstimate"/>), and the rate is that mass per turn over the ground of a turn (<see cref="DriveWheel"/>),
    /// with the uncertainty of the circumference added. Verdict: investigate when the rate is implausible or an outlet gave nothing; keep
    /// from a probability of 0.95 of being within tolerance of the target; correct the setting below 0.5 if the deviation is larger
    /// than its expanded uncertainty, because a correction by less would follow chance; otherwise repeat.</para>
    /// <para>Range: circumference and width above 0, skid below 1; without a test there is no rate, without a target nothing to judge it
    /// by.</para>
    /// <para>Source: turns and rates as <see cref="DriveWheel"/> (SOURCES.md, keys FIELD-2007 and NIRALA-2011); conformance as JCGM
    /// 106:2012, 7.2 to 7.4 (key JCGM-106); the limits of the verdict are judgement.</para>
    /// <para>Accuracy: 1e-6 relative against the formulas by hand (DriveWheelEvaluationTests); the published turn tests as printed, or the
    /// table of cases says why not (DriveWheelTradeTests, CatchDistanceTradeTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Circumference or width not above 0, or a skid of 1 or more.</exception>
    public static DriveWheelResult Evaluate(DriveWheelQuestion question)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.Wheel.Circumference.Metres, nameof(question));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.Width.Metres, nameof(question));
        var skid = question.Skid ?? DriveWheelDefaults.Skid.Value.Canonical;
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(skid, 1, nameof(question));

        var wheel = new DriveWheel(question.Wheel.Circumference, question.Width, skid);
        var tolerance = question.Tolerance ?? DriveWheelDefaults.Tolerance.Value.Canonical;
        var outlets = Outlets(question, tolerance);
        var points = Points(question, outlets);
        var readings = question.Tests.Count > 0 ? Readings(question, points) : null;
        var measured = readings is null ? null : MassPerRevolutionEstimate.From(readings, points, DriveWheelDefaults.Coverage);
        var found = measured is { } estimate ? wheel.Rate(new MassPerRevolution(estimate.Value.Value)) : (MassPerArea?)null;
        var uncertainty = measured is { } known ? Relative(question, known) : default;
        var acceptance = found is { } rate && question.TargetRate is { } target ? Accept(rate, target, uncertainty, tolerance) : null;
        var needed = question.TargetRate is { } wanted ? wheel.MassPerTurn(wanted) : (MassPerRevolution?)null;
        var result = new DriveWheelResult
        {
            Headline = $"",
            Verdict =
                found is not { } caught ? DriveWheelVerdict.Untested
                : acceptance is null ? DriveWheelVerdict.NoTarget
                : Decide(caught, acceptance, outlets),
            Reasons = [],
            Wheel = wheel,
            Origin = question.Wheel.Origin,
            Turns = [.. question.Areas.Select(area => TurnsFor(area, wheel, question))],
            NeededPerTurn = needed,
            NeededPerMeterRevolution =
                needed is { } perTurn && question.MeterRevolutionsPerTurn is { } gearing
                    ? new MassPerRevolution(perTurn.KilogramsPerRevolution / gearing)
                    : null,
            NeededMeterRevolutionsPerTurn = question is { TargetRate: { } goal, MassPerRevolution: { } delivered }
                ? wheel.MeterRevolutionsPerTurn(goal, delivered)
                : null,
            RateOfStatedMeter = question is { MassPerRevolution: { } stated, MeterRevolutionsPerTurn: { } geared }
                ? wheel.Rate(stated, geared)
                : null,
            Rate = found is { } value
                ? MeasuredValue.Create(
                    value.KilogramsPerSquareMetre,
                    uncertainty.Times(value.KilogramsPerSquareMetre),
                    DriveWheelDefaults.Coverage
                )
                : null,
            Tests = [.. question.Tests.Select(test => Evaluated(test, wheel, question))],
            Acceptance = acceptance,
            Obstacle = measured is null ? null : ObstacleOf(question, measured, tolerance),
            Correction =
                found is { } measuredRate && question.TargetRate is { } aim
                    ? SettingCorrection.Of(aim, measuredRate, question.Setting, question.MeterRevolutionsPerTurn)
                    : null,
            Outlets = outlets,
            Tolerance = tolerance,
            Assumptions = DriveWheelAssumptions.Of(question, measured is not null),
            Findings = [],
        };
        return result with
        {
            Headline = DriveWheelSentences.Headline(question, result),
            Reasons = DriveWheelSentences.Reasons(result),
            Findings = DriveWheelSentences.Findings(question, result, measured is null || CatchAgreement.Of(readings!, measured).Agree),
        };
    }

    /// <summary>A rate that seeding machines put down.</summary>
    internal static bool IsPlausible(MassPerArea rate) =>
        rate.KilogramsPerSquareMetre is >= DriveWheelDefaults.LeastRate and <= DriveWheelDefaults.MostRate;

    /// <summary>The repeatability in use: the root of the mean variance by the size of each catch, or what was stated.</summary>
    internal static RepeatabilityPrior Prior(DriveWheelQuestion question) =>
        RepeatabilityPrior.From(question.Repeatability, question.RepeatabilityDegreesOfFreedom, () =>
            RepeatabilityPrior.Default(null, 1, 1) with
            {
                Relative = Math.Sqrt(
                    question.Tests.Average(test =>
                        Math.Pow(RepeatabilityPrior.Default(null, test.Caught.Kilograms, test.Turns).Relative, 2)
                    )
                ),
            }
        );

    private static DriveWheelVerdict Decide(MassPerArea rate, RateAcceptance acceptance, IReadOnlyList<OutletCatch> outlets)
    {
        if (!IsPlausible(rate) || outlets.Any(outlet => outlet.GaveNothing))
            return DriveWheelVerdict.Investigate;
        if (acceptance.Probability >= CatchTestVerdict.KeepProbability)
            return DriveWheelVerdict.Keep;
        var isShown = Math.Abs(acceptance.Deviation.Value) > acceptance.Deviation.ExpandedUncertainty;
        return acceptance.Probability < CorrectProbability && isShown ? DriveWheelVerdict.Correct : DriveWheelVerdict.Repeat;
    }

    // Even a rate found right on its target could not be kept: what all tests have in common alone leaves too much doubt.
    private static TestObstacle? ObstacleOf(DriveWheelQuestion question, MassPerRevolutionEstimate estimate, double tolerance)
    {
        var wheel = CircumferenceUncertainty(question);
        var scale = Math.Sqrt(estimate.Span * estimate.Span + estimate.SharedTare * estimate.SharedTare);
        (TestObstacle Obstacle, double Relative)[] common =
        [
            (TestObstacle.Outlets, estimate.Points),
            (TestObstacle.Wheel, wheel),
            (TestObstacle.Scale, scale),
        ];
        var least =
            StudentT.CoverageFactor(CatchTestVerdict.KeepProbability, double.PositiveInfinity)
            * Math.Sqrt(common.Sum(part => part.Relative * part.Relative));
        return least > tolerance ? common.MaxBy(part => part.Relative).Obstacle : null;
    }

    private static TurnsForArea TurnsFor(Area area, DriveWheel wheel, DriveWheelQuestion question)
    {
        var turns = wheel.TurnsFor(area);
        var whole = Math.Max(1, (long)Math.Round(turns, MidpointRounding.AwayFromZero));
        double? total = question.TargetRate?.KilogramsPerSquareMetre * area.SquareMetres;
        var ofWhole = total * whole / turns;
        return new TurnsForArea(
            area,
            MeasuredCourse.For(area, wheel.Width),
            turns,
            whole,
            turns * question.MeterRevolutionsPerTurn,
            MassOf(total),
            MassOf(total / question.Outlets),
            MassOf(ofWhole),
            MassOf(ofWhole / question.Outlets)
        );
    }

    private static Mass? MassOf(double? kilograms) => kilograms is { } known ? new Mass(known) : null;

    private static EvaluatedTurnTest Evaluated(TurnTest test, DriveWheel wheel, DriveWheelQuestion question)
    {
        var metered = test.Caught.Kilograms * (Points(question, [])?.Scale ?? 1);
        return new(
            test.Turns,
            new Area(wheel.AreaPerTurn.SquareMetres * test.Turns),
            new Mass(metered),
            wheel.Rate(new MassPerRevolution(metered / test.Turns))
        );
    }

    // Net masses do not show whether the container was the same; where it was, its rounding is common to all tests.
    private static CatchReadings Readings(DriveWheelQuestion question, CaughtPoints? points)
    {
        var step = question.TurnResolution?.Count ?? DriveWheelDefaults.TurnResolution.Value.Canonical;
        var uncertaintyOfTurns = CatchVariance.OfCount(step, CountStart.Free, null);
        return CatchReadings.Of(
            [.. question.Tests.Select(test => new WeighedTurns(test.Caught, test.Turns, uncertaintyOfTurns))],
            WeighedApart(question.Scale ?? UnstatedScale, question.Tests),
            question.Tests.Count > 1 ? TareReading.Shared : TareReading.Each,
            points,
            new BelievedRepeatability(question.Repeatability, question.RepeatabilityDegreesOfFreedom, null)
        );
    }

    // Outlets weighed one by one are so many readings: their roundings add at random, the error of the scale at the load of one
    // outlet adds in full.
    private static Scale WeighedApart(Scale scale, IReadOnlyList<TurnTest> tests)
    {
        var readings = tests.Min(test => test.PerOutlet.Count);
        if (readings < 2)
            return scale;
        var atRandom = Math.Sqrt(readings);
        return scale with
        {
            Division = new Mass(atRandom * scale.Division.Kilograms),
            ReadingScatter = scale.ReadingScatter is { } scatter ? new Mass(atRandom * scatter.Kilograms) : null,
            StatedAccuracy = new Mass(
                readings * scale.LimitAt(new Mass(tests.Average(test => test.Caught.Kilograms) / readings)).Limit.Kilograms
            ),
        };
    }

    // Three outlets or more tell their own spread.
    private static CaughtPoints? Points(DriveWheelQuestion question, IReadOnlyList<OutletCatch> outlets)
    {
        if (question is not { Outlets: { } all, OutletsCaught: { } caught } || caught == all)
            return null;
        var spread = question.OutletSpread
            ?? (
                outlets.Count >= 3
                    ? Math.Sqrt(outlets.Sum(outlet => outlet.Deviation * outlet.Deviation) / (outlets.Count - 1))
                    : DriveWheelDefaults.Spread.Value.Canonical
            );
        return new CaughtPoints(caught, all, spread);
    }

    private static TwoPartUncertainty Relative(DriveWheelQuestion question, MassPerRevolutionEstimate estimate)
    {
        var circumference = CircumferenceUncertainty(question);
        return estimate.UncertaintyOf(estimate.RelativeVariance + circumference * circumference);
    }

    private static double CircumferenceUncertainty(DriveWheelQuestion question) =>
        question.Wheel.RelativeUncertainty
        ?? (
            question.Wheel.Origin == WheelOrigin.Diameter
                ? DriveWheelDefaults.UncertaintyFromDiameter
                : DriveWheelDefaults.CircumferenceUncertainty.Value.Canonical
        );

    private static RateAcceptance Accept(MassPerArea rate, MassPerArea target, TwoPartUncertainty relative, double tolerance)
    {
        var ratio = rate.KilogramsPerSquareMetre / target.KilogramsPerSquareMetre;
        var uncertainty = relative.Times(ratio);
        return new(
            MeasuredValue.Create(ratio - 1, uncertainty, DriveWheelDefaults.Coverage),
            !Threshold.IsAbove(Math.Abs(ratio - 1), tolerance),
            Conformance.Probability(ratio, uncertainty, 1 - tolerance, 1 + tolerance)
        );
    }

    private static IReadOnlyList<OutletCatch> Outlets(DriveWheelQuestion question, double tolerance)
    {
        if (question.Tests.Count == 0 || question.Tests.Any(test => test.PerOutlet.Count == 0))
            return [];
        var count = question.Tests.Min(test => test.PerOutlet.Count);
        return OutletCatch.Compare(
            [.. Enumerable.Range(0, count).Select(i => new Mass(question.Tests.Sum(test => test.PerOutlet[i].Kilograms)))],
            tolerance
        );
    }
}
