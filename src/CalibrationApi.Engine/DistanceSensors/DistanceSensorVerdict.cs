using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>The decision table of a distance sensor, after that of a catch test: the first row that applies wins.</summary>
public static class DistanceSensorVerdict
{
    /// <summary>The rows of the table.</summary>
    public enum Rule
    {
        /// <summary>The runs scatter improbably and by more than the tolerance.</summary>
        WildScatter,

        /// <summary>The interval is wider than wanted; more runs will narrow it.</summary>
        PrecisionNotReached,

        /// <summary>No number of such runs reaches what is wanted.</summary>
        PrecisionOutOfReach,

        /// <summary>A large change that no second, agreeing run confirms.</summary>
        LargeChangeUnconfirmed,

        /// <summary>The controller holds no number to compare with.</summary>
        NothingInForce,

        /// <summary>The number in force is within tolerance of the truth, probably enough.</summary>
        WithinTolerance,

        /// <summary>A change was detected and the number in force is not good enough.</summary>
        Changed,

        /// <summary>No change was detected, but neither was it shown that the number in force is good enough.</summary>
        NotShownWithinTolerance,
    }

    /// <summary>What the table decides.</summary>
    /// <param name="Verdict">What to do.</param>
    /// <param name="Rule">Which row applied.</param>
    /// <param name="MoreRuns">How many more runs a repeat takes; null when no number helps or the verdict is another.</param>
    public readonly record struct Decision(Verdict Verdict, Rule Rule, int? MoreRuns = null);

    /// <summary>Decides.</summary>
    /// <param name="estimate">The value of the runs.</param>
    /// <param name="agreement">How they agree.</param>
    /// <param name="change">The comparison with the value in force; null without one.</param>
    /// <param name="runsNeeded">Runs that the wanted precision takes in all; null when no number reaches it.</param>
    /// <param name="tolerance">Largest acceptable deviation of the value in force.</param>
    /// <param name="wanted">Wanted precision.</param>
    /// <param name="secondRunChange">Change from which a second run has to confirm.</param>
    public static Decision Decide(
        RunsEstimate estimate,
        RunAgreement agreement,
        SensorChange? change,
        int? runsNeeded,
        double tolerance,
        double wanted,
        double secondRunChange
    )
    {
        var runs = estimate.Values.Count;
        if (agreement.QProbability < CatchTestVerdict.InvestigateProbability && agreement.Spread > tolerance)
            return new(Verdict.Investigate, Rule.WildScatter);
        if (estimate.RelativeExpanded > wanted)
            return runsNeeded is { } needed
                ? new(Verdict.Repeat, Rule.PrecisionNotReached, Math.Max(1, needed - runs))
                : new(Verdict.Repeat, Rule.PrecisionOutOfReach);
        if (change is null)
            return new(Verdict.Adopt, Rule.NothingInForce);
        if (Math.Abs(change.Delta.Value) >= secondRunChange && !(runs > 1 && agreement.Agree))
            return new(Verdict.Repeat, Rule.LargeChangeUnconfirmed, 1);
        if (change.ProbabilityWithinTolerance >= CatchTestVerdict.KeepProbability)
            return new(Verdict.Keep, Rule.WithinTolerance);
        return new(Verdict.Adopt, change.IsDetected ? Rule.Changed : Rule.NotShownWithinTolerance);
    }
}
