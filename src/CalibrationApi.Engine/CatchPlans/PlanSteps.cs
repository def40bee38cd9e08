using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>Derives the steps of a plan from the machine's own points and from what depends on what.</summary>
/// <remarks>
/// A common run has hands under several tanks and turning meters by turns. So nothing turns before everybody stands clear, and
/// nobody reaches under a tank before the machine was made safe again: these steps are common to all meters.
/// </remarks>
internal static class PlanSteps
{
    private const string MakeSafe = "make-safe";
    private const string ClearToPrime = "stand-clear-to-prime";
    private const string SafeAfterPriming = "make-safe-after-priming";
    private const string ClearToRun = "stand-clear-to-run";
    private const string Simulate = "set-simulated-speed";
    private const string ZeroCounts = "zero-counts";
    private const string Run = "run";
    private const string StopAll = "stop-all";
    private const string SafeAfterRun = "make-safe-after-run";
    private const string Evaluate = "evaluate";
    private const string CheckReady = "check-ready";

    /// <summary>The steps.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="meters">Its meters as they will be run.</param>
    /// <param name="common">The speed simulated for all of them; null when they run one after the other.</param>
    public static List<PlanStep> Of(CatchPlanQuestion plan, IReadOnlyList<MeterPlan> meters, Speed? common)
    {
        var steps = new List<PlanStep>
        {
            new(MakeSafe, [], $"Stop the machine, release stored pressure, take the key. Agree on signals with everybody present."),
        };
        var points = plan.DisturbedPoints;
        for (var i = 0; i < points.Count; i++)
            steps.Add(
                new(
                    Open(i),
                    [MakeSafe],
                    $"{points[i].Name}: {points[i].ToOpen ?? "open or isolate it for the test, and note that you did."}"
                )
            );
        string[] opened = points.Count == 0 ? [MakeSafe] : [.. Enumerable.Range(0, points.Count).Select(Open)];

        AddPreparation(steps, plan, meters, opened, common);
        steps.Add(
            new(
                ClearToRun,
                Each(meters, Tare),
                $"Refit the guards and see that nobody has hands under a tank. Only then switch the drives on."
            )
        );
        steps.Add(
            new(
                ZeroCounts,
                [ClearToRun],
                $"Set the counts of revolutions to zero now, so that what was turned while priming is not counted."
            )
        );
        steps.Add(new(Run, [ZeroCounts], Start(plan, meters, common)));
        var stopTogether = plan.Drive == MeterDrive.SharedShaft && common is not null;
        if (stopTogether)
            steps.Add(new(StopAll, [Run], $"Stop the shaft after {meters[0].RunTime:F1}; all meters stop together."));
        for (var i = 0; i < meters.Count && !stopTogether; i++)
            steps.Add(
                new(
                    Stop(i),
                    [Run],
                    $"Stop {meters[i].Meter.Called} after {meters[i].Revolutions:0.#} ({meters[i].RunTime:F1}).",
                    meters[i].Meter.Name
                )
            );
        steps.Add(
            new(
                SafeAfterRun,
                stopTogether ? [StopAll] : Each(meters, Stop),
                $"Stop the machine and take the key before anybody reaches for a container."
            )
        );
        for (var i = 0; i < meters.Count; i++)
            steps.Add(WeighStep(meters[i], i));

        steps.Add(
            new(
                Evaluate,
                Each(meters, Weigh),
                $"Enter masses and revolutions, judge the test, and catch again from the empty containers on if more catches are wanted."
            )
        );
        for (var i = 0; i < points.Count; i++)
            steps.Add(new(Restore(i), [Evaluate], $"{points[i].Name}: {points[i].ToRestore ?? "put it back as it was before the test."}"));
        string[] restored = points.Count == 0 ? [Evaluate] : [.. Enumerable.Range(0, points.Count).Select(Restore)];
        steps.Add(
            new(
                CheckReady,
                restored,
                points.Count == 0
                    ? (Sentence)$"Before seeding, check that the machine is as it was before the test."
                    : $"Before seeding, check that each of these is as it was before the test: {string.Join("; ", points.Select(point => point.Name))}."
            )
        );
        return steps;
    }

    private static string[] Each(IReadOnlyList<MeterPlan> meters, Func<int, string> id) =>
        [.. Enumerable.Range(0, meters.Count).Select(id)];

    private static Sentence Start(CatchPlanQuestion plan, IReadOnlyList<MeterPlan> meters, Speed? common) =>
        common is null
            ? (Sentence)
                $"Run the meters one after the other, each at its own simulated ground speed: {Speeds(meters)}. Count the revolutions of each."
        : meters.Count == 1 ? (Sentence)$"Start the meter and the count of revolutions."
        : plan.Drive == MeterDrive.Separate
            ? (Sentence)$"Start all meters together, which only holds if every one of them is primed. Count the revolutions of each."
        : $"Start the shaft. Count the revolutions.";

    private static Sentence Speeds(IReadOnlyList<MeterPlan> meters) =>
        meters.Select(meter => (Sentence)$"{meter.Meter.Called} {meter.SimulatedSpeed}").Aggregate((one, next) => $"{one}; {next}");

    private static void AddPreparation(
        List<PlanStep> steps,
        CatchPlanQuestion plan,
        IReadOnlyList<MeterPlan> meters,
        string[] opened,
        Speed? common
    )
    {
        for (var i = 0; i < meters.Count; i++)
            steps.Add(
                new(
                    Place(i),
                    opened,
                    $"Place the container under {meters[i].Meter.Called} ({meters[i].Meter.Product}), so that nothing falls beside it.",
                    meters[i].Meter.Name
                )
            );
        steps.Add(
            new(
                ClearToPrime,
                Each(meters, Place),
                $"Refit the guards and see that nobody has hands under a tank. Only then switch the drives on."
            )
        );
        steps.Add(
            new(
                Simulate,
                [ClearToPrime],
                common is { } speed
                    ? (Sentence)$"Set the controller to the target rates and to a simulated ground speed of {speed}."
                    : $"Set the controller to the target rates, and before each meter turns to its own simulated ground speed: {Speeds(meters)}."
            )
        );
        for (var i = 0; i < meters.Count; i++)
        {
            var meter = meters[i].Meter;
            steps.Add(new(Prime(i), [Simulate], $"Turn {meter.Called} until the flow is steady.", meter.Name));
            steps.Add(
                new(
                    CheckDrive(i),
                    [Prime(i)],
                    $"While {meter.Called} still turns, see how fast: {meters[i].MeterSpeed:F1} are planned. Where the test drive turns it at another speed and cannot be set, note that speed with the test: a meter can deliver differently then.",
                    meter.Name
                )
            );
        }

        steps.Add(
            new(SafeAfterPriming, Each(meters, CheckDrive), $"Stop the machine and take the key before anybody reaches for a container.")
        );
        for (var i = 0; i < meters.Count; i++)
        {
            var meter = meters[i].Meter;
            steps.Add(
                new(
                    Tare(i),
                    [SafeAfterPriming],
                    plan.TareReading == TareReading.Zeroed
                        ? (Sentence)
                            $"Put the product caught under {meter.Called} back into its tank. Set the scale to zero with the empty container on it, and place it under {meter.Called} again."
                        : $"Put the product caught under {meter.Called} back into its tank. Weigh the empty container (without it the scale must show zero), and place it under {meter.Called} again.",
                    meter.Name
                )
            );
        }
    }

    private static PlanStep WeighStep(MeterPlan meter, int i)
    {
        var times = meter.Catches is { } catches and > 1 ? (Sentence)$" Plan for {catches} catches of {meter.Meter.Called}." : $"";
        return new(
            Weigh(i),
            [SafeAfterRun],
            $"Check zero, then weigh the container of {meter.Meter.Called}: about {meter.CatchMass} of {meter.Meter.Product} net. Write down mass and revolutions.{times}",
            meter.Meter.Name
        );
    }

    private static string Open(int i) => $"open-point-{i + 1}";

    private static string Restore(int i) => $"restore-point-{i + 1}";

    private static string Place(int i) => $"place-container-{i + 1}";

    private static string Prime(int i) => $"prime-meter-{i + 1}";

    private static string CheckDrive(int i) => $"check-drive-{i + 1}";

    private static string Tare(int i) => $"tare-{i + 1}";

    private static string Stop(int i) => $"stop-meter-{i + 1}";

    private static string Weigh(int i) => $"weigh-{i + 1}";
}
