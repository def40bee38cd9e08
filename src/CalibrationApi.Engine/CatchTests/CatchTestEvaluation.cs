using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>Evaluates a catch test: mass per revolution, how sure it is, and what to do now.</summary>
public static class CatchTestEvaluation
{
    // Far below the step of any controller, far above the last digits that conversions of units disturb.
    private const double SameNumber = 1e-9;

    /// <summary>Evaluates <paramref name="test"/>.</summary>
    /// <param name="test">The test; at least one catch counts.</param>
    /// <returns>
    /// The result, or a refusal with code <see cref="SharedCodes.SettingsAtOdds"/> when tolerance and wanted precision cannot both be met.
    /// </returns>
    /// <remarks>
    /// <para>Formula: net masses, pooled mass per revolution (<see cref="PooledRatio"/>), uncertainty
    /// (<see cref="MassPerRevolutionEstimate"/>), agreement (<see cref="CatchAgreement"/>), change (<see cref="ChangeAgainstReference"/>),
    /// a second test (<see cref="SecondTest"/>), likely mistakes (<see cref="LikelyMistakesResult"/>), verdict
    /// (<see cref="CatchTestVerdict"/>), in that order.</para>
    /// <para>Range: masses, revolutions and values above 0; one catch rests on the prior of its scatter; without anything in force or
    /// expected there is no change.</para>
    /// <para>Source: each part names its own; weighing and pooling SOURCES.md, keys OIML-R76, GUM and DERSIMONIAN-KACKER-2007, conformance
    /// key JCGM-106; the limits of the verdict are judgement.</para>
    /// <para>Accuracy: decisions case by case (CatchTestDecisionTests); a change of units changes nothing beyond 1e-12 relative
    /// (CatchTestPropertyTests); a whole example of our own to every digit (WorkedCatchTestTests); published pooling, weighing and
    /// conformance to every printed digit (PoolingReferenceTests, RoundingReferenceTests, ConformanceReferenceTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No catch counts.</exception>
    public static Outcome<CatchTestResult> Evaluate(CatchTestQuestion test)
    {
        var startsFromVolume = test is { Reference: null, Element: not null };
        if (startsFromVolume)
            test = test with { Reference = test.Element!.StartValue };
        var readings = CatchReadings.From(test);
        var prior = readings.Prior;
        var settings = CatchTestSettings.From(test.Limits, prior, test.Reference is not null);
        if (test.Reference is { Kind: ReferenceKind.ValueInForce } && settings.AtOdds() is { } refusal)
            return refusal;

        var estimate = MassPerRevolutionEstimate.From(readings, test.CaughtPoints, settings.CoverageProbability);
        var agreement = CatchAgreement.Of(readings, estimate);
        var change = test.Reference is { } reference
            ? ChangeAgainstReference.Of(estimate, reference, settings.DayToDay, settings.Tolerance, settings.CoverageProbability)
            : null;
        var expected = test.Reference is null
            ? null
            : ExpectedChange.Of(estimate.Value.Value, test.Reference, test.Predicted, settings.SecondTestChange);
        var secondTest =
            expected is not null && test.Earlier is { } earlier
                ? SecondTest.Of(
                    estimate,
                    earlier,
                    expected,
                    test.Reference!.FromAnotherScale is true,
                    prior,
                    settings.DayToDay,
                    settings.CoverageProbability
                )
                : null;
        var mistakes = MistakeSearch.Of(
            test,
            readings,
            estimate,
            settings.DayToDay,
            expected is { IsLarge: true },
            secondTest is { Confirms: true }
        );
        var limits = PhysicalLimits.Of(test, estimate);
        var excluded = ExcludedCatches.Of(test, readings, estimate, expected, settings.Tolerance);
        var decision = CatchTestVerdict.Decide(
            new CatchTestFacts
            {
                Estimate = estimate,
                Agreement = agreement,
                Change = change,
                Expected = expected,
                SecondTest = secondTest,
                Mistakes = mistakes,
                IsImpossible = limits.Impossible.Count > 0,
                ScaleFailed = test.Scale.KnownError is { CheckFailed: true },
                Excluded = excluded,
                Counted = readings.Count,
                MeanVariance = readings.Variances.Average(),
                Limits = settings,
            }
        );

        var toUse = decision.Verdict == Verdict.Adopt ? ValueToUse.Of(test, estimate, secondTest, settings.DayToDay) : null;
        var result = new CatchTestResult
        {
            Headline = $"",
            Decision = decision,
            Reasons = [],
            Estimate = estimate,
            TotalMassOverTotalRevolutions = new MassPerRevolution(readings.Masses.Sum() / readings.Revolutions.Sum()),
            MeanOfRatios = new MassPerRevolution(readings.Values.Average()),
            Catches = [.. test.Catches.Select(one => Reading(test, one))],
            Agreement = agreement,
            Change = change,
            FromExpected = expected,
            SecondTest = secondTest,
            LikelyMistakes = mistakes,
            ToUse = toUse,
            Excluded = excluded,
            Enter = toUse is { } used ? Enter(test, used.Value.KilogramsPerRevolution) : null,
            InForce = InForce(test),
            MeasuredEntry = ForController(test, decision, estimate.Value.Value),
            InForceEntry = test.Reference is { Kind: ReferenceKind.ValueInForce } inForce
                ? ForController(test, decision, inForce.Value.KilogramsPerRevolution)
                : null,
            EffectIfValueInForceStays = Effect(test, change),
            Settings = settings,
            Impossible = limits.Impossible,
            Assumptions =
            [
                .. Assumptions(test, readings, settings, mistakes, decision),
                .. PhysicalLimits.Assumptions(test, startsFromVolume),
            ],
            Findings = [],
        };
        var headline = CatchTestSentences.Headline(result);
        if (OldScale(result) is { } oldScale)
            headline = $"{oldScale.Detail} {headline}";
        return result with
        {
            Headline = HeadlineQualification.Of(test, result) is { } qualification ? $"{headline} {qualification}" : headline,
            Reasons = OldScale(result) is { } first ? [first, CatchTestSentences.Reason(result)] : [CatchTestSentences.Reason(result)],
            Findings = [.. limits.Impossible, .. CatchTestFindings.Of(test, readings, result), .. limits.Unusual],
        };
    }

    // An old error of the scale goes before every sentence about a change that it explains; not before a mistake that stops the test.
    private static Finding? OldScale(CatchTestResult result) =>
        result.LikelyMistakes.Named is null
        && result.Impossible.Count == 0
        && result.Change is { Reference.ScaleErrorFoundLater: { } error } change
        && error.Explains(change)
            ? error.AsFinding(change)
            : null;

    // A controller with too few decimals would be told zero; then there is nothing to type in, and a finding says why.
    private static ControllerNumber? Enter(CatchTestQuestion test, double massPerRevolution) =>
        test.ControllerEntry?.For(massPerRevolution) is { Typed: > 0 } number ? number : null;

    // To be looked up on the controller beside a verdict that lets its number stand or takes a new one.
    private static ControllerNumber? ForController(CatchTestQuestion test, CatchTestVerdict.Decision decision, double massPerRevolution) =>
        decision.Verdict is Verdict.Keep or Verdict.Adopt ? Enter(test, massPerRevolution) : null;

    // A value that was stated more finely than the controller takes it is not what the controller shows.
    private static ControllerNumber? InForce(CatchTestQuestion test) =>
        test.Reference is { Kind: ReferenceKind.ValueInForce } reference
        && test.ControllerEntry?.For(reference.Value.KilogramsPerRevolution) is { } number
        && Math.Abs(number.RoundingError) < SameNumber
            ? number
            : null;

    private static CatchReading Reading(CatchTestQuestion test, Catch one)
    {
        var metered = CatchReadings.MeteredMass(test, one);
        return new CatchReading(
            one.IndicatedNet,
            new Mass(metered),
            new Revolutions(one.Revolutions.Count),
            new MassPerRevolution(metered / one.Revolutions.Count),
            one.ExcludedBecause
        );
    }

    private static EffectOnApplication? Effect(CatchTestQuestion test, ChangeAgainstReference? change) =>
        change is { Reference.Kind: ReferenceKind.ValueInForce } && test.TargetRate is { } rate
            ? EffectOnApplication.Of(rate, change.Delta.Value, test.Area, test.PricePerKilogram)
            : null;

    private static List<Assumption> Assumptions(
        CatchTestQuestion test,
        CatchReadings readings,
        CatchTestSettings settings,
        LikelyMistakesResult mistakes,
        CatchTestVerdict.Decision decision
    )
    {
        var assumptions = new List<Assumption>(settings.Assumptions);
        var heaviest = readings.Masses.Max() / (test.CaughtPoints?.Scale ?? 1);
        assumptions.Insert(Math.Min(1, assumptions.Count), test.Scale.SpanAssumption(new Mass(heaviest)));
        if (test.Reference is { FromAnotherScale: null } reference)
            assumptions.Add(
                new(
                    reference.Kind == ReferenceKind.ValueInForce ? "valueInForce/fromAnotherScale" : "startValue/fromAnotherScale",
                    null,
                    "not stated: taken as the same scale with the same check, so that its span error cancels in the change"
                )
                {
                    Flag = false,
                }
            );
        if (decision.Rule == CatchTestVerdict.Rule.PrecisionNotReached && test.Limits.PrecisionProbability is null)
            assumptions.Add(CatchTestDefaults.PrecisionProbability.Assumed("precisionProbability"));
        if (test.Reference is { RelativeUncertainty: null } unstated)
            assumptions.Add(
                ReferenceValue
                    .UncertaintyOf(unstated.Kind)
                    .Assumed(
                        unstated.Kind == ReferenceKind.ValueInForce ? "valueInForce/relativeUncertainty" : "startValue/relativeUncertainty"
                    )
            );
        if (test.Earlier is { FromAnotherScale: null })
            assumptions.Add(
                new(
                    "earlierTest/fromAnotherScale",
                    null,
                    "not stated: taken as the same scale with the same check, so that its span error cancels between the two tests"
                )
                {
                    Flag = false,
                }
            );
        if (test.Predicted is { RelativeUncertainty: null })
            assumptions.Add(
                new(
                    "predictedValue/relativeUncertainty",
                    new Ratio(PredictedValue.DefaultUncertainty),
                    "default for a value predicted for another lot; judgement, no published source"
                )
            );
        if (test.TareRounding != test.TareReading)
            assumptions.Add(TareAssumption.EqualTares("sharedTare"));
        assumptions.AddRange(test.ReadingAssumptions);
        if (mistakes.Shown.Count + mistakes.AlsoPossible.Count > 0)
        {
            assumptions.Add(new("likelyMistakes/prior", new Ratio(MistakeJudgement.PriorOfAnyMistake), MistakeJudgement.Origin));
            if (test is { Reference: not null, Predicted: null, Context.NewLot: null })
                assumptions.Add(
                    new(
                        "newLot",
                        null,
                        $"not stated: taken as the same lot, whose ordinary change is {MistakeJudgement.OrdinaryChange * 100:0.#} %; {MistakeJudgement.Origin}"
                    )
                    {
                        Flag = false,
                    }
                );
        }

        return assumptions;
    }
}
