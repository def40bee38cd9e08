using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation.Studies;

/// <summary>The tests that the studies make: invented meters, each with the default repeatability of its catches.</summary>
internal sealed record Scene
{
    /// <summary>Neither scale nor counter add anything: 47 turns of a cereal meter at 0.36 kg per revolution, repeatability 1 %.</summary>
    public static Scene Perfect { get; } =
        new(0.36, 47, new Scale { Division = new Mass(1e-7), StatedAccuracy = new Mass(1e-7) }) { Resolution = 0 };

    /// <summary>The same catches of 17 kg on a class III scale: 850 divisions of 20 g.</summary>
    public static Scene Usual { get; } = new(0.36, 47, Classed(0.02));

    /// <summary>Catches of 8.5 kg on a coarse class III scale: 170 divisions of 50 g.</summary>
    public static Scene Coarse { get; } = new(0.36, 23.6, Classed(0.05));

    /// <summary>Small seed: catches of 4 kg in 130 turns on 200 divisions of 20 g, more turns than most.</summary>
    public static Scene SmallSeed { get; } = new(0.031, 130, Classed(0.02));

    /// <summary>Small seed on a kitchen scale of unknown accuracy: catches of 0.6 kg in 130 turns on 600 divisions of 1 g.</summary>
    public static Scene KitchenScale { get; } = new(0.0046, 130, new Scale { Division = new Mass(0.001) });

    /// <summary>A dusty product in catches of 17 kg.</summary>
    public static Scene Dusty { get; } = new(0.36, 47, Classed(0.02), ProductMaterial.Dusty);

    /// <summary>Granular fertilizer: catches of 23 kg in 32 turns.</summary>
    public static Scene Fertilizer { get; } = new(0.71, 32, Classed(0.02));

    /// <summary>The four by which every rule is tried, with what they are called.</summary>
    public static IReadOnlyList<(string Name, Scene Scene)> Four { get; } =
    [("bulk", Usual), ("small seed, kitchen scale", KitchenScale), ("dusty", Dusty), ("fertilizer", Fertilizer)];

    /// <summary>A scale of which only the division is known: the engine takes 0.5 % of the load.</summary>
    public static Scene Unverified { get; } = new(0.36, 47, new Scale { Division = new Mass(0.02) });

    /// <summary>A scale known to no more than 2 % of the load: as uncertain as the catches, or more.</summary>
    public static Scene Poor { get; } = new(0.36, 47, new Scale { Division = new Mass(0.02), StatedAccuracy = new Mass(0.34) });

    /// <summary>A scale known to no more than 5 % of the load: with it no result is ever precise enough.</summary>
    public static Scene Useless { get; } = new(0.36, 47, new Scale { Division = new Mass(0.02), StatedAccuracy = new Mass(0.85) });

    private Scene(double perRevolution, double turns, Scale scale, ProductMaterial? material = null)
    {
        Material = material;
        PerRevolution = perRevolution;
        Turns = turns;
        Scale = scale;
        Prior = RepeatabilityPrior.Default(material, perRevolution * turns, turns);
    }

    public double PerRevolution { get; }

    public double Turns { get; }

    public Scale Scale { get; }

    public ProductMaterial? Material { get; }

    public RepeatabilityPrior Prior { get; }

    public double Resolution { get; init; } = 0.1;

    public TareReading Taring { get; init; }

    /// <summary>The repeatability over s0; null draws it from the prior.</summary>
    public double? FixedScatter { get; init; }

    /// <summary>Day-to-day scatter of the device.</summary>
    public double DayToDay { get; init; }

    /// <summary>A test in this scene, with a scale whose error is anywhere within its limit.</summary>
    public CatchTestSetup Draw(int catches, SeededRandom random)
    {
        var net = new Mass(PerRevolution * Turns);
        return new CatchTestSetup
        {
            Device = new MeteringDevice
            {
                Displacement = new Volume(PerRevolution / (620 * 0.9)),
                BulkDensity = new BulkDensity(620),
                CatchScatter = FixedScatter is { } factor
                    ? factor * Prior.Relative
                    : random.StandardDeviation(Prior.Relative, Prior.DegreesOfFreedom),
                DayToDay = DayToDay,
            },
            Scale = new SimulatedScale(Scale).WithinItsLimitAt(net, random),
            Counter = new SimulatedCounter(Resolution),
            PlannedTurns = [.. Enumerable.Repeat(Turns, catches)],
            // Another container each time, so that its rounding is not always the same.
            Container = new Mass(random.Between(1.4, 1.9)),
            Taring = Taring,
            Asked = test => test with { Material = Material },
        };
    }

    private static Scale Classed(double division) => new() { Division = new Mass(division), AccuracyClass = AccuracyClass.III };
}

/// <summary>What is asked of a simulated test.</summary>
internal static class Asking
{
    public static CatchTestResult Evaluated(this SimulatedTest test) =>
        CatchTestEvaluation.Evaluate(test.Question).Result ?? throw new InvalidOperationException("The engine refused a simulated test.");

    /// <summary>Compares with a number in force.</summary>
    public static CatchTestSetup InForce(
        this CatchTestSetup setup,
        double perRevolution,
        double? relativeUncertainty = null,
        bool fromAnotherScale = true
    ) =>
        setup with
        {
            Asked = test =>
                setup.Asked(test) with
                {
                    Reference = new ReferenceValue(
                        new MassPerRevolution(perRevolution),
                        ReferenceKind.ValueInForce,
                        relativeUncertainty,
                        fromAnotherScale
                    ),
                },
        };
}
