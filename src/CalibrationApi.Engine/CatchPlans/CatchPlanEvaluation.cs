using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>Plans a catch test of one or several meters in a common run.</summary>
public static class CatchPlanEvaluation
{
    /// <summary>Evaluates <paramref name="plan"/>.</summary>
    /// <param name="plan">At least one meter; rates, widths, speeds and values above 0.</param>
    /// <returns>
    /// The plan, or a refusal for every meter whose bounds do not allow a single revolution (code
    /// <see cref="SharedCodes.SettingsAtOdds"/>).
    /// </returns>
    /// <remarks>
    /// <para>Formula: each catch is the largest that container, scale capacity less tare, lift limit and longest run allow, in whole
    /// revolutions. N = m / k revolutions, t = N / n with n = R W v / k, so t = m / (R W v): k (kg/rev) cancels, a good cross-check. On a
    /// shared shaft all meters stop with the one that is full first. Where the planned speed takes a meter beyond its limits, or leaves too
    /// short a run or too small a catch, another speed is simulated (<see cref="RunSpeed"/>).</para>
    /// <para>Range: everything stated above 0; a bound under one revolution is a refusal.</para>
    /// <para>Source: our own derivation; the number of catches as in <see cref="CatchCount"/>; default bounds are judgement.</para>
    /// <para>Accuracy: bounds, revolutions, times and areas within 1e-12 of the formulas (CatchMassTests, CatchRunTests, CommonRunTests),
    /// for random machines and units (CatchPlanPropertyTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No meter.</exception>
    public static Outcome<CatchPlanResult> Evaluate(CatchPlanQuestion plan)
    {
        if (plan.Meters.Count == 0)
            throw new ArgumentException("At least one meter is needed.", nameof(plan));
        MeterPlanning[] asked = [.. plan.Meters.Select(meter => new MeterPlanning(plan, meter))];
        // No speed mends a container that is too heavy or too small for one revolution.
        if (Refusals(plan, asked, meter => meter.LargestRevolutions, meter => meter.LargestBound) is { Count: > 0 } hopeless)
            return hopeless;
        var common = RunSpeed.For(plan.GroundSpeed, asked, plan.ShortestRunSeconds, plan.LongestRunSeconds);
        MeterPlanning[] planned =
        [
            .. asked.Select(meter =>
                meter.At(
                    common ?? RunSpeed.For(plan.GroundSpeed, [meter], plan.ShortestRunSeconds, plan.LongestRunSeconds) ?? plan.GroundSpeed
                )
            ),
        ];
        if (Refusals(plan, planned, meter => meter.Revolutions, meter => meter.LimitedBy) is { Count: > 0 } refusals)
            return refusals;
        if (plan.Drive == MeterDrive.SharedShaft && common is not null)
        {
            var first = planned.Min(meter => meter.RunTime);
            foreach (var meter in planned)
                meter.StopAt(first);
        }

        MeterPlan[] meters = [.. planned.Select(meter => meter.Result())];
        var stops = StopOrder(plan, meters, common is null);
        return new CatchPlanResult
        {
            Headline = Headline(plan, meters, common),
            Meters = meters,
            OneAfterTheOther = common is null,
            ContainersNeeded = meters.Length,
            StopOrder = stops,
            Steps = PlanSteps.Of(plan, meters, common),
            Cautions = [.. Caution.AtTheMachine, HeavyContainer(planned)],
            Assumptions = [.. Assumptions(plan), .. planned.SelectMany((meter, place) => meter.Assumptions(place))],
            Findings = [.. planned.SelectMany(meter => meter.Findings()), .. RunFindings.Of(plan, asked, planned, common, stops)],
        };
    }

    private static List<Refusal> Refusals(
        CatchPlanQuestion plan,
        MeterPlanning[] meters,
        Func<MeterPlanning, double> revolutions,
        Func<MeterPlanning, CatchBound> limitedBy
    )
    {
        var refusals = new List<Refusal>();
        for (var i = 0; i < meters.Length; i++)
        {
            var bound = limitedBy(meters[i]);
            if (revolutions(meters[i]) < 1)
                refusals.Add(
                    new Refusal(
                        SharedCodes.SettingsAtOdds,
                        $"meters/{i}",
                        bound.Mass.Kilograms <= 0
                            ? $"The empty container already weighs as much as {MeterPlanning.BoundWords(bound.Kind)} allows. Use a lighter container, or state what really limits it."
                            : (Sentence)
                                $"One revolution delivers {plan.Meters[i].Value.Value}, but {MeterPlanning.BoundWords(bound.Kind)} allows only {bound.Mass}. Check the units of the value and of the {BoundMember(bound.Kind)}."
                    )
                );
        }

        return refusals;
    }

    private static string BoundMember(CatchBoundKind kind) =>
        kind switch
        {
            CatchBoundKind.Container => "container volume and bulk density",
            CatchBoundKind.ScaleCapacity => "scale capacity and container tare",
            CatchBoundKind.LiftLimit => "lift limit and container tare",
            _ => "target rate, covered width and longest run",
        };

    // Stops that follow each other more closely than a person can be at two meters share an entry.
    private static List<Stop> StopOrder(CatchPlanQuestion plan, MeterPlan[] meters, bool oneAfterTheOther)
    {
        if (oneAfterTheOther)
            return [.. meters.Select(meter => new Stop([meter.Meter.Name], [meter.RunTime]))];
        var ordered = meters.OrderBy(meter => meter.RunTime.Seconds).ToArray();
        if (plan.Drive == MeterDrive.SharedShaft)
            return [new Stop([.. ordered.Select(meter => meter.Meter.Name)], [.. ordered.Select(meter => meter.RunTime)])];
        var stops = new List<Stop>();
        for (var i = 0; i < ordered.Length; )
        {
            var group = new List<MeterPlan> { ordered[i] };
            while (++i < ordered.Length && ordered[i].RunTime.Seconds - group[^1].RunTime.Seconds < CatchPlanDefaults.CloseStopsSeconds)
                group.Add(ordered[i]);
            stops.Add(new Stop([.. group.Select(meter => meter.Meter.Name)], [.. group.Select(meter => meter.RunTime)]));
        }

        return stops;
    }

    private static Sentence Headline(CatchPlanQuestion plan, MeterPlan[] meters, Speed? common)
    {
        if (common is not { } speed)
            return $"No simulated speed suits all these meters, so run them one after the other. Catch {Those(meters, meter => $"{Each(meter)} at a simulated {meter.SimulatedSpeed}")}.";
        Sentence lead = speed == plan.GroundSpeed ? (Sentence)$"At {speed}" : (Sentence)$"Simulate {speed} in place of {plan.GroundSpeed}:";
        if (meters.Length == 1)
            return $"{lead} catch {Each(meters[0])}.";
        return $"{lead} {(plan.Drive == MeterDrive.Separate ? "start all together" : "all stop together")} and catch {Those(meters, Each)}.";
    }

    // The headline is read in the yard: beyond three meters the list below it is.
    private static Sentence Those(MeterPlan[] meters, Func<MeterPlan, Sentence> each) =>
        meters.Length switch
        {
            1 => each(meters[0]),
            2 => $"{each(meters[0])}; {each(meters[1])}",
            3 => $"{each(meters[0])}; {each(meters[1])}; {each(meters[2])}",
            _ => $"{each(meters[0])}; {each(meters[1])}; {each(meters[2])}; and {new CountInWords(meters.Length - 3)} more",
        };

    private static Sentence Each(MeterPlan meter)
    {
        var times = meter.Catches is { } catches and > 1 ? (Sentence)$", {new CountInWords(catches)} times" : $"";
        return $"{meter.CatchMass} at {meter.Meter.Called} in {meter.Revolutions:0.#} ({meter.RunTime:F0}){times}";
    }

    private static Caution HeavyContainer(MeterPlanning[] planned)
    {
        var heaviest = new Mass(planned.Max(meter => meter.Mass + (meter.Container?.Tare.Kilograms ?? 0)));
        return new(
            CatchPlanCodes.HeavyContainer,
            $"The heaviest container weighs about {heaviest} with its catch: lift it with two persons or a hoist where one person should not."
        );
    }

    private static IEnumerable<Assumption> Assumptions(CatchPlanQuestion plan)
    {
        if (plan.WantedPrecision is null)
            yield return CatchTestDefaults.WantedPrecision.Assumed("wantedPrecision");
        if (plan.PrecisionProbability is null)
            yield return CatchTestDefaults.PrecisionProbability.Assumed("precisionProbability");
        if (plan.LongestRun is null)
            yield return CatchPlanDefaults.LongestRun.Assumed("maximumRunTime");
        if (plan.ShortestRun is null)
            yield return CatchPlanDefaults.ShortestRun.Assumed("minimumRunTime") with
            {
                Value = new Duration(plan.ShortestRunSeconds),
            };
        if (plan.LiftLimit is null)
            yield return CatchPlanDefaults.LiftLimit.Assumed("liftLimit");
        if (plan.CounterResolution is null)
            yield return CatchTestDefaults.CounterResolution.Assumed("counterResolution");
        var containers = plan.Meters.Select(meter => meter.Container ?? plan.Container).ToArray();
        if (plan.Container is { Volume: not null, Fill: null })
            yield return CatchPlanDefaults.Fill.Assumed("container/fill");
        if (containers.Any(container => container is null))
            yield return new("container", new Mass(0), "no container stated: its own mass is taken as zero and its volume bounds nothing")
            {
                Member = "container/tare",
            };
        if (plan.Meters.Any(meter => meter.Material != ProductMaterial.SmallSeed))
            yield return new(
                "leastCatch",
                CatchSize.Least(plan.Scale.Division, plan.WantedPrecision ?? CatchTestLimits.DefaultWantedPrecision),
                CatchSize.Origin
            );
    }
}
