using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>What is worth saying about a run of several meters as a whole.</summary>
internal static class RunFindings
{
    /// <summary>The findings.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="asked">Its meters at the planned ground speed.</param>
    /// <param name="planned">Its meters as they will be run.</param>
    /// <param name="common">The speed simulated for all of them; null when they run one after the other.</param>
    /// <param name="stops">Their stops.</param>
    public static IEnumerable<Finding> Of(
        CatchPlanQuestion plan,
        MeterPlanning[] asked,
        MeterPlanning[] planned,
        Speed? common,
        List<Stop> stops
    )
    {
        for (var i = 0; i < planned.Length; i++)
        {
            if (planned[i].Simulated != plan.GroundSpeed && WhyNotAsPlanned(plan, asked[i]) is { } why)
                yield return Finding.Note(
                    CatchPlanCodes.SimulatedSpeedMoved,
                    $"{plan.Meters[i].Called}: at {plan.GroundSpeed} {why}, so {planned[i].Simulated} are simulated. A meter can deliver differently at another speed.{CheckCatch(plan, asked[i])}",
                    plan.Meters[i].Name
                );
        }

        if (common is null)
            yield return Finding.Warning(
                CatchPlanCodes.MetersRunApart,
                $"No simulated ground speed keeps all these meters within their limits, so they run one after the other. In the field they would have to turn together: look for elements that do."
            );
        var sharing = plan.Meters.Count(meter => meter.Container is null);
        if (plan.ContainersAtHand is { } atHand && sharing > atHand)
            yield return Finding.Warning(
                CatchPlanCodes.TooFewContainers,
                $"{new CountInWords(sharing)} containers are needed at the same time, one under each meter, and {new CountInWords(atHand)} {(atHand == 1 ? "is" : "are")} at hand. Get more, or plan the meters in several runs."
            );
        if (plan.Drive == MeterDrive.Separate && common is not null)
        {
            foreach (var stop in stops.Where(stop => stop.Meters.Count > 1))
                yield return Finding.Note(
                    CatchPlanCodes.StopsCloseTogether,
                    $"{string.Join(", ", stop.Meters)} stop within {new Duration(CatchPlanDefaults.CloseStopsSeconds):F0} of each other: have somebody at each, or run them one after the other."
                );
        }

        if (
            plan is { LowestWorkingSpeed: { } lowest, HighestWorkingSpeed: { } highest }
            && highest.MetresPerSecond >= CatchPlanDefaults.WideSpeedRange * lowest.MetresPerSecond
        )
            yield return Finding.Note(
                CatchPlanCodes.WideSpeedRange,
                $"Between {lowest} and {highest} the meters may deliver differently per revolution: make a check catch at both ends as well."
            );
    }

    private static Sentence? WhyNotAsPlanned(CatchPlanQuestion plan, MeterPlanning asked)
    {
        var speed = new RotationalSpeed(asked.MeterSpeed);
        if (asked.Limits.Maximum is { } maximum && Threshold.IsAbove(asked.MeterSpeed, maximum.RevolutionsPerSecond))
            return $"it would have to turn {speed:F1}, above its highest {maximum:F1}";
        if (asked.Limits.Minimum is { } minimum && Threshold.IsBelow(asked.MeterSpeed, minimum.RevolutionsPerSecond))
            return $"it would turn {speed:F1}, under its least {minimum:F1}";
        if (Threshold.IsBelow(asked.RunTime, plan.ShortestRunSeconds))
            return $"its catch would be full after {new Duration(asked.RunTime):F0}, before its drive has settled";
        return Threshold.IsBelow(asked.Mass, asked.WorthwhileMass)
            ? (Sentence)$"{new Duration(plan.LongestRunSeconds):F0} would bring only {new Mass(asked.Mass)}"
            : null;
    }

    // Only where the meter can turn at the planned speed at all.
    private static Sentence CheckCatch(CatchPlanQuestion plan, MeterPlanning asked) =>
        asked.Limits.Allow(asked.MeterSpeed) ? (Sentence)$" Make a short check catch at {plan.GroundSpeed} as well." : $"";
}
