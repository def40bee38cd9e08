
namespace CalibrationApi.Engine.CatchPlans;

/// <summary>Derives the steps of a plan from the machine's own points and from what depends on what.</summary>
internal static class PlanSteps
{
    private const string MakeSafe = "make-safe";
    private const string Simulate = "set-simulated-speed";
    private const string Run = "run";
    private const string StopAll = "stop-all";
    private const string Evaluate = "evaluate";
    private const string CheckReady = "check-ready";

    public static List<PlanStep> Of(CatchPlan plan, IReadOnlyList<MeterPlan> meters)
    {
        var steps = new List<PlanStep>
        {
            new(MakeSafe, [], $"Stop the machine, release stored pressure, take the key. Agree on signals with everybody present."),
        };
        var points = plan.DisturbedPoints;
        for (var i = 0; i < points.Count; i++)
            steps.Add(new(Open(i), [MakeSafe], $"{points[i].Name}: {points[i].ToOpen ?? "open or isolate it for the test, and note that you did."}"));
        string[] opened = points.Count == 0 ? [MakeSafe] : [.. Enumerable.Range(0, points.Count).Select(Open)];

        for (var i = 0; i < meters.Count; i++)
            AddPreparation(steps, plan, meters[i], i, opened);
        steps.Add(new(Simulate, [MakeSafe], $"Set the controller to a simulated ground speed of {plan.GroundSpeed} and to the target rates."));
        steps.Add(new(Run, [Simulate, .. Each(meters, Tare)], Start(plan, meters.Count)));
        if (plan.Drive == MeterDrive.SharedShaft)
            steps.Add(new(StopAll, [Run], $"Stop the shaft after {meters[0].RunTime:F1}; all meters stop together."));
        for (var i = 0; i < meters.Count; i++)
            AddStopAndWeighing(steps, plan, meters[i], i);

        steps.Add(new(Evaluate, Each(meters, Weigh), $"Enter masses and revolutions, judge the test, and catch again from the containers on if more catches are wanted."));
        for (var i = 0; i < points.Count; i++)
            steps.Add(new(Restore(i), [Evaluate], $"{points[i].Name}: {points[i].ToRestore ?? "put it back as it was before the test."}"));
        string[] restored = points.Count == 0 ? [Evaluate] : [.. Enumerable.Range(0, points.Count).Select(Restore)];
        steps.Add(new(CheckReady, restored, $"Before seeding, check that everything the test disturbed is put back: material path, covers and guards, drives and their isolators, fan drive, controller mode."));
        return steps;
    }

    private static string[] Each(IReadOnlyList<MeterPlan> meters, Func<int, string> id) => [.. Enumerable.Range(0, meters.Count).Select(id)];

    private static FormattableString Start(CatchPlan plan, int meters) => meters == 1
        ? (FormattableString)$"Start the meter and the count of revolutions."
        : plan.Drive == MeterDrive.Separate
            ? (FormattableString)$"Start all meters together, which only holds if every one of them is primed. Count the revolutions of each."
            : $"Start the shaft. Count the revolutions.";

    private static void AddPreparation(List<PlanStep> steps, CatchPlan plan, MeterPlan meter, int i, string[] opened)
    {
        var name = meter.Meter.Name;
        steps.Add(new(Place(i), opened, $"Place the container under {name} ({meter.Meter.Product}), so that nothing falls beside it.", name));
        steps.Add(new(Prime(i), [Place(i)], $"Turn {name} until the flow is steady, then put that product back into the tank.", name));
        steps.Add(new(Tare(i), [Prime(i)], plan.TareReading == Weighing.TareReading.Zeroed
            ? (FormattableString)$"Set the scale to zero with the empty container of {name} on it."
            : $"Weigh the empty container of {name}; without it the scale must show zero.", name));
    }

    private static void AddStopAndWeighing(List<PlanStep> steps, CatchPlan plan, MeterPlan meter, int i)
    {
        var name = meter.Meter.Name;
        var stop = StopAll;
        if (plan.Drive == MeterDrive.Separate)
        {
            stop = Stop(i);
            steps.Add(new(stop, [Run], $"Stop {name} after {meter.Revolutions:0.#} ({meter.RunTime:F1}).", name));
        }

        var times = meter.Catches is { } catches and > 1 ? $" Plan for {catches} catches of {name}." : "";
        steps.Add(new(Weigh(i), [stop], $"Check zero, then weigh the container of {name}: about {meter.CatchMass} of {meter.Meter.Product} net. Write down mass and revolutions.{times}", name));
    }

    private static string Open(int i) => $"open-point-{i + 1}";

    private static string Restore(int i) => $"restore-point-{i + 1}";

    private static string Place(int i) => $"place-container-{i + 1}";

    private static string Prime(int i) => $"prime-meter-{i + 1}";

    private static string Tare(int i) => $"tare-{i + 1}";

    private static string Stop(int i) => $"stop-meter-{i + 1}";

    private static string Weigh(int i) => $"weigh-{i + 1}";
}
