using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation;

/// <summary>A catch test to be made: the device, the tools, and what the person does.</summary>
public sealed record CatchTestSetup
{
    // Nobody stops a meter on the turn: the turns made are anywhere within this share of those planned.
    private const double StoppingShare = 0.02;

    // A wild scatter, drawn once in many thousand tests, would otherwise let a catch weigh nothing or less.
    private const double LeastShare = 0.01;

    /// <summary>The device with its truth.</summary>
    public required MeteringDevice Device { get; init; }

    /// <summary>The scale with its truth.</summary>
    public required SimulatedScale Scale { get; init; }

    /// <summary>The counter.</summary>
    public SimulatedCounter Counter { get; init; } = new(0.1);

    /// <summary>Turns planned for each catch, in order.</summary>
    public required IReadOnlyList<double> PlannedTurns { get; init; }

    /// <summary>Speed of the meter.</summary>
    public RotationalSpeed Speed { get; init; } = new(0.5);

    /// <summary>Mass of the empty container.</summary>
    public Mass Container { get; init; } = new(1.62);

    /// <summary>What the container holds; null when it is large enough for anything.</summary>
    public Mass? Capacity { get; init; }

    /// <summary>How the empty container is taken into account.</summary>
    public TareReading Taring { get; init; }

    /// <summary>Only net masses are written down.</summary>
    public bool WritesNetOnly { get; init; }

    /// <summary>Points that the meter feeds.</summary>
    public int Points { get; init; } = 1;

    /// <summary>How many of them the person means to catch.</summary>
    public int PointsToCatch { get; init; } = 1;

    /// <summary>What goes wrong.</summary>
    public IReadOnlyList<Mistake> Mistakes { get; init; } = [];

    /// <summary>What the question holds beyond the readings: reference, limits, material.</summary>
    public Func<CatchTestQuestion, CatchTestQuestion> Asked { get; init; } = static test => test;

    /// <summary>Mass that the device delivers in a catch as planned, in the long run.</summary>
    public Mass ExpectedCatch(int position = 0) =>
        new(Device.MassPerRevolutionAt(Speed).KilogramsPerRevolution * PlannedTurns[position] * PointsToCatch / Points);

    /// <summary>Makes the test.</summary>
    public SimulatedTest Run(SeededRandom random)
    {
        var longRun = Device.MassPerRevolutionAt(Speed).KilogramsPerRevolution;
        var ofTheDay = longRun * (1 + random.Normal(Device.DayToDay));
        var sharedTare = Taring == TareReading.Shared ? Scale.Show(Container.Kilograms, random) : (double?)null;
        var catches = new OneCatch[PlannedTurns.Count];
        for (var position = 0; position < catches.Length; position++)
            catches[position] = Make(position, position == 0 ? null : catches[position - 1], ofTheDay, sharedTare, random);

        var question = Asked(
            new CatchTestQuestion
            {
                Catches = [.. catches.Select(Written)],
                Scale = Scale.Stated,
                TareReading = Taring,
                CountStart = Counter.Start,
                PocketsPerRevolution = Device.Pockets,
                CaughtPoints = PointsToCatch < Points ? new CaughtPoints(PointsToCatch, Points, 0) : null,
            }
        );
        foreach (var mistake in Mistakes)
            question = mistake.InTheQuestion(question);
        return new SimulatedTest(question, catches, new MassPerRevolution(longRun), new MassPerRevolution(ofTheDay));
    }

    private OneCatch Make(int position, OneCatch? before, double ofTheDay, double? sharedTare, SeededRandom random)
    {
        var one = new OneCatch
        {
            Position = position,
            Before = before,
            Turns = PlannedTurns[position] * (1 + random.Between(-StoppingShare, StoppingShare)),
            Container = Container.Kilograms,
            Capacity = Capacity?.Kilograms,
            PointsCaught = PointsToCatch,
            PerRevolution = ofTheDay * Math.Max(LeastShare, 1 + random.Normal(Device.CatchScatter)),
            HeldBack = position == 0 ? Math.Abs(random.Normal(Device.PrimingDeficit.Kilograms)) : 0,
        };
        var happening = Mistakes.Where(mistake => mistake.HappensIn(position)).ToArray();
        foreach (var mistake in happening)
            mistake.AtTheMachine(one);

        var fallen = Device.Discharged(one.PerRevolution, one.Turns * one.ShareDelivered, random) - one.HeldBack;
        one.Caught = Math.Clamp(fallen * one.PointsCaught / Points, 0, one.MostThatStays);
        Weigh(one, sharedTare, random);
        one.Counted = Counter.Show(one.Turns, random);
        foreach (var mistake in happening)
            mistake.OnPaper(one);
        if (WritesNetOnly)
            (one.Gross, one.Tare) = (one.Net, null);
        // Nobody writes down a net mass of nothing or less: a wild draw leaves one division.
        var least = (one.Tare ?? 0) + Scale.Stated.Division.Kilograms;
        one.Gross = Math.Max(one.Gross, least);
        return one;
    }

    private void Weigh(OneCatch one, double? sharedTare, SeededRandom random)
    {
        var loaded = one.Container + one.Caught;
        if (Taring == TareReading.Zeroed)
        {
            var zero = Scale.SetToZero(one.Container, random);
            one.EmptyReading = Scale.Show(one.Container, random);
            one.Gross = Scale.Show(loaded, random, zero);
            return;
        }

        one.EmptyReading = sharedTare ?? Scale.Show(one.Container, random);
        one.Tare = one.EmptyReading;
        one.Gross = Scale.Show(loaded, random);
    }

    private Catch Written(OneCatch one)
    {
        var counted = new CountedRevolutions(one.Counted, Counter.Resolution);
        return one.Tare is { } tare ? Catch.Weighed(new Mass(one.Gross), new Mass(tare), counted) : Catch.Net(new Mass(one.Gross), counted);
    }
}

/// <summary>A test that was made, with the truth behind it.</summary>
/// <param name="Question">What is asked of the engine.</param>
/// <param name="Catches">What happened, and the readings as written down.</param>
/// <param name="LongRun">The truth from day to day.</param>
/// <param name="OfTheDay">The truth on the day of the test.</param>
public sealed record SimulatedTest(
    CatchTestQuestion Question,
    IReadOnlyList<OneCatch> Catches,
    MassPerRevolution LongRun,
    MassPerRevolution OfTheDay
);
