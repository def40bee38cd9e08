using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>Evaluates runs over a measured course: pulses per distance, how sure they are, and what to do now.</summary>
public static class DistanceSensorEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">At least one run; every form asked for can be told from the counts
    /// (<see cref="SensorCounts.CanTell"/>).</param>
    /// <returns>
    /// The result, or a refusal with code <see cref="SharedCodes.SettingsAtOdds"/> when tolerance and wanted precision cannot both be met.
    /// </returns>
    /// <remarks>
    /// <para>Formula: pooled counts per metre (<see cref="RunsEstimate"/>), agreement (<see cref="RunAgreement"/>), change
    /// (<see cref="SensorChange"/>), verdict (<see cref="DistanceSensorVerdict"/>), effect on the rate (<see cref="DistanceEffect"/>), in
    /// that order. Skid is 1 - K_work / K_reference, without the tape.</para>
    /// <para>Range: counts and distances above 0; one run rests on the prior of its scatter.</para>
    /// <para>Source: JCGM 100:2008, 4.3.7 and F.2.2.1 (SOURCES.md, key GUM); skid by that of key GATE-SLIP; the limits of the verdict are
    /// judgement.</para>
    /// <para>Accuracy: simulated runs: the interval of 95 % holds the truth in 94 to 96.5 of 100 (RunsEstimateTests); decisions and slips
    /// by hand (DistanceSensorVerdictTests, DistanceSensorFindingsTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No run, or a form that cannot be told.</exception>
    public static Outcome<DistanceSensorResult> Evaluate(DistanceSensorQuestion question)
    {
        var tolerance = question.Tolerance ?? DistanceSensorDefaults.Tolerance.Value.Canonical;
        var wanted = question.WantedPrecision ?? DistanceSensorDefaults.WantedPrecision.Value.Canonical;
        if (question.ValueInForce is not null && AtOdds(tolerance, wanted) is { } refusal)
            return refusal;

        var counts = SensorCounts.Of(question.Counted, question.PulsesPerTurn);
        var prior = RepeatabilityPrior.From(question.Repeatability, question.RepeatabilityDegreesOfFreedom, () =>
            new(
                DistanceSensorDefaults.Repeatability.Value.Canonical,
                DistanceSensorDefaults.RepeatabilityDegreesOfFreedom,
                DistanceSensorDefaults.Repeatability.Origin
            )
        );
        var estimate = Pool(question, question.Runs, prior);
        var agreement = RunAgreement.Of(question.Runs, estimate, prior);
        var inForce = question.ValueInForce is { } value ? counts.Convert(value.Form, value.Canonical) : (double?)null;
        var change = inForce is { } known ? SensorChange.Of(estimate, known, tolerance, DistanceSensorDefaults.Coverage) : null;
        var needed = CatchCount.Needed(
            wanted,
            1,
            estimate.Pooled.BetweenVariance,
            prior.DegreesOfFreedom,
            estimate.Variances.Average(),
            estimate.Tape,
            DistanceSensorDefaults.Coverage
        );
        var decision = DistanceSensorVerdict.Decide(
            estimate,
            agreement,
            change,
            needed,
            tolerance,
            wanted,
            question.SecondRunChange ?? DistanceSensorDefaults.SecondRunChange.Value.Canonical
        );
        var result = new DistanceSensorResult
        {
            Headline = $"",
            Decision = decision,
            Reasons = [],
            Counts = counts,
            Estimate = estimate,
            RollingCircumference = counts.CountsPerTurn is { } perTurn ? Inverse(estimate, perTurn) : null,
            Runs =
            [
                .. question.Runs.Select(
                    (run, i) =>
                        new EvaluatedRun(
                            run.Distance,
                            estimate.Values[i],
                            estimate.Values[i] / estimate.CountsPerMetre.Value - 1,
                            run.Time is { } time ? MeasuredCourse.GroundSpeed(run.Distance, time) : null
                        )
                ),
            ],
            Agreement = agreement,
            RunsForWantedPrecision = needed,
            Skid = question.ReferenceRuns.Count > 0 ? Skid(estimate, Pool(question, question.ReferenceRuns, prior)) : null,
            Width = question.Width,
            Change = change,
            Enter =
                decision.Verdict == Verdict.Adopt
                && question.ControllerEntry?.For(estimate.CountsPerMetre.Value, counts) is { Typed: > 0 } number
                    ? number
                    : null,
            Effect = Effect(question, estimate, inForce),
            Tolerance = tolerance,
            WantedPrecision = wanted,
            Assumptions = Assumptions(question, prior),
            Findings = [],
        };
        return result with
        {
            Headline = DistanceSensorSentences.Headline(question, result),
            Reasons = [DistanceSensorSentences.Reason(result)],
            Findings = DistanceSensorFindings.Of(question, result),
        };
    }

    private static RunsEstimate Pool(DistanceSensorQuestion question, IReadOnlyList<MeasuredRun> runs, RepeatabilityPrior prior)
    {
        var turns = question.Counted == CountedThing.Turns;
        return RunsEstimate.From(
            runs,
            turns ? question.PulsesPerTurn?.Count ?? 1 : 1,
            turns ? question.TurnResolution?.Count ?? DistanceSensorDefaults.TurnResolution.Value.Canonical : 1,
            question.DistanceResolution?.Metres ?? DistanceSensorDefaults.DistanceResolution.Value.Canonical,
            question.TapeLimit ?? DistanceSensorDefaults.TapeLimit.Value.Canonical,
            prior,
            DistanceSensorDefaults.Coverage
        );
    }

    // Runs that just reach the wanted precision and find no change at all would still not show that the number is good enough.
    private static Refusal? AtOdds(double tolerance, double wanted)
    {
        var needed =
            wanted
            * StudentT.CoverageFactor(CatchTestVerdict.KeepProbability, double.PositiveInfinity)
            / StudentT.CoverageFactor(DistanceSensorDefaults.Coverage, double.PositiveInfinity);
        return !Threshold.IsAbove(needed, tolerance)
            ? null
            : new Refusal(
                SharedCodes.SettingsAtOdds,
                "wantedPrecision",
                $"A tolerance of {new Ratio(tolerance)} cannot be shown by runs that are only wanted to {new Ratio(wanted)}. Widen the tolerance or ask for a smaller wantedPrecision."
            );
    }

    // p / K has the relative uncertainty of K, to first order.
    private static MeasuredValue Inverse(RunsEstimate estimate, double perTurn)
    {
        var value = perTurn / estimate.CountsPerMetre.Value;
        return MeasuredValue.Create(value, estimate.Relative.Times(value), DistanceSensorDefaults.Coverage);
    }

    // The same tape measured both courses, so that its error cancels in the ratio. Source: SOURCES.md, key GATE-SLIP.
    private static MeasuredValue Skid(RunsEstimate work, RunsEstimate reference)
    {
        var ratio = work.CountsPerMetre.Value / reference.CountsPerMetre.Value;
        var (ofWork, ofReference) = (work.RelativeWithoutTape, reference.RelativeWithoutTape);
        var uncertainty = new TwoPartUncertainty(
            ofWork.Estimated + ofReference.Estimated,
            EffectiveDegreesOfFreedom.Combine(
                (ofWork.Estimated, ofWork.DegreesOfFreedom),
                (ofReference.Estimated, ofReference.DegreesOfFreedom)
            ),
            ofWork.Known + ofReference.Known
        );
        return MeasuredValue.Create(1 - ratio, uncertainty.Times(ratio), DistanceSensorDefaults.Coverage);
    }

    private static DistanceEffect? Effect(DistanceSensorQuestion question, RunsEstimate estimate, double? inForce)
    {
        if (inForce is null && question.Width is null)
            return null;
        var counted = estimate.CountsPerMetre.Value;
        var drive = question.MeterDrive ?? MeterDrive.RateControlled;
        var factor = DistanceEffect.RateFactor(counted, inForce ?? counted, question.Width, drive);
        // Without a number in force the distance counts as right, and nothing of its uncertainty enters; nor where a wheel turns the
        // meters.
        var uncertainty =
            inForce is null || drive == MeterDrive.GroundDriven
                ? TwoPartUncertainty.Of(0, double.PositiveInfinity)
                : estimate.Relative.Times(factor);
        return new DistanceEffect(
            MeasuredValue.Create(factor - 1, uncertainty, DistanceSensorDefaults.Coverage),
            inForce is { } known ? counted / known : null,
            question.Width?.RateFactor,
            DistanceEffect.AreaCounted(counted, inForce ?? counted, question.Width),
            question.TargetRate is { } rate ? EffectOnApplication.Of(rate, factor - 1, question.Area, question.PricePerKilogram) : null
        );
    }

    private static List<Assumption> Assumptions(DistanceSensorQuestion question, RepeatabilityPrior prior)
    {
        var assumptions = new List<Assumption>();
        if (prior.Assumed(question.Repeatability, question.RepeatabilityDegreesOfFreedom, "scatter") is { } assumed)
            assumptions.Add(assumed);
        if (question.DistanceResolution is null && question.Runs.Concat(question.ReferenceRuns).Any(run => run.DistanceUncertainty is null))
            assumptions.Add(DistanceSensorDefaults.DistanceResolution.Assumed("distanceResolution"));
        if (question.TapeLimit is null)
            assumptions.Add(DistanceSensorDefaults.TapeLimit.Assumed("tapeLimit"));
        if (question.TurnResolution is null && question.Counted == CountedThing.Turns)
            assumptions.Add(DistanceSensorDefaults.TurnResolution.Assumed("turnResolution"));
        if (question.Tolerance is null)
            assumptions.Add(DistanceSensorDefaults.Tolerance.Assumed("tolerance"));
        if (question.WantedPrecision is null)
            assumptions.Add(DistanceSensorDefaults.WantedPrecision.Assumed("wantedPrecision"));
        if (question.SecondRunChange is null && question.ValueInForce is not null)
            assumptions.Add(DistanceSensorDefaults.SecondRunChange.Assumed("secondRunChange"));
        if (question.MeterDrive is null && (question.ValueInForce is not null || question.Width is not null))
            assumptions.Add(
                new(
                    "meterDrive",
                    null,
                    "rate-controlled: the meters follow this sensor; common practice. Where a wheel turns them, a wrong value only spoils the count of distance and area"
                )
                {
                    Word = "rate-controlled",
                }
            );
        if (question.ControllerEntry is { DistanceIsAssumed: true })
            assumptions.Add(DistanceSensorDefaults.EntryDistance.Assumed("controllerEntry/distance"));
        if (question.Width is { PassToPass: null })
            assumptions.Add(
                new(
                    "width/passToPass",
                    question.Width.Nominal,
                    "not measured: taken as openers times spacing, without overlap or gap between passes"
                )
            );
        if (question.Width is { InForce: null })
            assumptions.Add(new("width/inForce", question.Width.Nominal, "not stated: taken as openers times spacing"));
        return assumptions;
    }
}
