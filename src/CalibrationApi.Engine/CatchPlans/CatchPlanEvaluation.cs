using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>Plans a catch test of one or several meters in a common run.</summary>
public static class CatchPlanEvaluation
{
    /// <summary>Evaluates <paramref name="plan"/>.</summary>
    /// <returns>
    /// The plan, or a refusal for every meter whose bounds do not allow a single revolution
    /// (code <see cref="RefusalCode.SettingsAtOdds"/>).
    /// </returns>
    /// <remarks>
    /// Each catch is the largest that container, scale capacity less tare, lift limit and longest run allow, in whole
    /// revolutions. N = m / k, t = N / n with n = R W v / k, so t = m / (R W v): k cancels, a good cross-check.
    /// On a shared shaft all meters stop with the one that is full first.
    /// </remarks>
    /// <exception cref="ArgumentException">No meter.</exception>
    public static Outcome<CatchPlanResult> Evaluate(CatchPlan plan)
    {
        if (plan.Meters.Count == 0)
            throw new ArgumentException("At least one meter is needed.", nameof(plan));
        MeterPlanning[] planned = [.. plan.Meters.Select(meter => new MeterPlanning(plan, meter))];
        var refusals = new List<Refusal>();
        for (var i = 0; i < planned.Length; i++)
        {
            if (planned[i].Revolutions < 1)
                refusals.Add(new Refusal(RefusalCode.SettingsAtOdds, $"meters/{i}", planned[i].LimitedBy.Mass.Kilograms <= 0
                    ? $"The empty container already weighs as much as {MeterPlanning.BoundWords(planned[i].LimitedBy.Kind)} allows. Use a lighter container, or state what really limits it."
                    : (FormattableString)$"One revolution delivers {plan.Meters[i].Value.Value}, but {MeterPlanning.BoundWords(planned[i].LimitedBy.Kind)} allows only {planned[i].LimitedBy.Mass}. Check the units of the value and of the {BoundMember(planned[i].LimitedBy.Kind)}."));
        }

        if (refusals.Count > 0)
            return refusals;
        if (plan.Drive == MeterDrive.SharedShaft)
        {
            var first = planned.Min(meter => meter.RunTime);
            foreach (var meter in planned)
                meter.StopAt(first);
        }

        MeterPlan[] meters = [.. planned.Select(meter => meter.Result())];
        var stops = StopOrder(plan, meters);
        return new CatchPlanResult
        {
            Headline = Headline(plan, meters),
            Meters = meters,
            StopOrder = stops,
            Steps = PlanSteps.Of(plan, meters),
            Cautions = [.. Caution.AtTheMachine, HeavyContainer(planned)],
            Assumptions = [.. Assumptions(plan), .. planned.SelectMany(meter => meter.Assumptions())],
            Findings = [.. planned.SelectMany(meter => meter.Findings()), .. RunFindings(plan, stops)],
        };
    }

    private static string BoundMember(CatchBoundKind kind) => kind switch
    {
        CatchBoundKind.Container => "container volume and bulk density",
        CatchBoundKind.ScaleCapacity => "scale capacity and container tare",
        CatchBoundKind.LiftLimit => "lift limit and container tare",
        _ => "target rate, covered width and longest run",
    };

    // Stops that follow each other more closely than a person can be at two meters share an entry.
    private static List<Stop> StopOrder(CatchPlan plan, MeterPlan[] meters)
    {
        var ordered = meters.OrderBy(meter => meter.RunTime.Seconds).ToArray();
        if (plan.Drive == MeterDrive.SharedShaft)
            return [new Stop([.. ordered.Select(meter => meter.Meter.Name)], [.. ordered.Select(meter => meter.RunTime)])];
        var stops = new List<Stop>();
        for (var i = 0; i < ordered.Length;)
        {
            var group = new List<MeterPlan> { ordered[i] };
            while (++i < ordered.Length && ordered[i].RunTime.Seconds - group[^1].RunTime.Seconds < CatchPlanDefaults.CloseStopsSeconds)
                group.Add(ordered[i]);
            stops.Add(new Stop([.. group.Select(meter => meter.Meter.Name)], [.. group.Select(meter => meter.RunTime)]));
        }

        return stops;
    }

    private static FormattableString Headline(CatchPlan plan, MeterPlan[] meters)
    {
        if (meters.Length == 1)
            return $"At {plan.GroundSpeed} catch {Each(meters[0])}.";
        var together = plan.Drive == MeterDrive.Separate ? "start all together" : "all stop together";
        return meters.Length switch
        {
            2 => $"At {plan.GroundSpeed} {together} and catch {Each(meters[0])}; {Each(meters[1])}.",
            3 => $"At {plan.GroundSpeed} {together} and catch {Each(meters[0])}; {Each(meters[1])}; {Each(meters[2])}.",
            _ => $"At {plan.GroundSpeed} {together} and catch {Each(meters[0])}; {Each(meters[1])}; {Each(meters[2])}; and {CountWords.Of(meters.Length - 3)} more.",
        };
    }

    private static FormattableString Each(MeterPlan meter)
    {
        var times = meter.Catches is { } catches and > 1 ? $", {CountWords.Of(catches)} times" : "";
        return $"{meter.CatchMass} at {meter.Meter.Name} in {meter.Revolutions:0.#} ({meter.RunTime:F0}){times}";
    }

    private static Caution HeavyContainer(MeterPlanning[] planned)
    {
        var heaviest = new Mass(planned.Max(meter => meter.Mass + (meter.Container?.Tare.Kilograms ?? 0)));
        return new(CautionCode.HeavyContainer, $"The heaviest container weighs about {heaviest} with its catch: lift it with two persons or a hoist where one person should not.");
    }

    private static IEnumerable<Assumption> Assumptions(CatchPlan plan)
    {
        if (plan.WantedPrecision is null)
            yield return CatchTestDefaults.WantedPrecision.Assumed("wantedPrecision");
        if (plan.LongestRun is null)
            yield return CatchPlanDefaults.LongestRun.Assumed("longestRun");
        if (plan.LiftLimit is null)
            yield return CatchPlanDefaults.LiftLimit.Assumed("liftLimit");
        if (plan.CounterResolution is null)
            yield return CatchTestDefaults.CounterResolution.Assumed("counterResolution");
        var containers = plan.Meters.Select(meter => meter.Container ?? plan.Container).ToArray();
        if (containers.Any(container => container is { Volume: not null, Fill: null }))
            yield return CatchPlanDefaults.Fill.Assumed("container/fill");
        if (containers.Any(container => container is null))
            yield return new("container", new Mass(0), "no container stated: its own mass is taken as zero and its volume bounds nothing");
        if (plan.Meters.Any(meter => meter.Material != ProductMaterial.SmallSeed))
            yield return new("leastCatch", new Mass(CatchSize.LeastBulkCatch), "common practice for a bulk product, 15 lb; no published source");
    }

    private static IEnumerable<Finding> RunFindings(CatchPlan plan, List<Stop> stops)
    {
        if (plan.Drive == MeterDrive.Separate)
        {
            foreach (var stop in stops.Where(stop => stop.Meters.Count > 1))
                yield return Finding.Note(FindingCode.StopsCloseTogether,
                    $"{string.Join(", ", stop.Meters)} stop within {new Duration(CatchPlanDefaults.CloseStopsSeconds):F0} of each other: have somebody at each, or run them one after the other.");
        }

        if (plan is { LowestWorkingSpeed: { } lowest, HighestWorkingSpeed: { } highest }
            && highest.MetresPerSecond >= CatchPlanDefaults.WideSpeedRange * lowest.MetresPerSecond)
            yield return Finding.Note(FindingCode.WideSpeedRange,
                $"Between {lowest} and {highest} the meters may deliver differently per revolution: make a check catch at both ends as well.");
    }
}
