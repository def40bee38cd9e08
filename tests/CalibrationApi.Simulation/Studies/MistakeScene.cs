using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Simulation.Studies;

/// <summary>A test with ordinary changes, what is known around it, and perhaps one mistake. Invented.</summary>
internal sealed record MistakeScene
{
    /// <summary>Displacement of the other elements of the machine, over that of the one meant.</summary>
    public const double CoarseElement = 5,
        FineElement = 0.2;

    /// <summary>Density of the other product of the machine, over that of the one meant.</summary>
    public const double HeavyProduct = 3;

    /// <summary>Another container at hand, kg.</summary>
    public const double LightContainer = 1.2;

    private const double OldUncertainty = 0.01;
    private const double Outlets = 12;

    /// <summary>Catches of 17 kg in a container of some 1.6 kg.</summary>
    public static MistakeScene Usual { get; } = new() { Scene = Scene.Usual, Container = 1.62 };

    /// <summary>The same catches in a container of 13 kg; the count was checked.</summary>
    public static MistakeScene HeavyContainer { get; } =
        new()
        {
            Scene = Scene.Usual,
            Container = 13,
            RuledOut = [MistakeCodes.CountHalved],
        };

    public required Scene Scene { get; init; }

    public required double Container { get; init; }

    /// <summary>The container weighs up to so much more or less from test to test, kg.</summary>
    public double ContainerSpread { get; init; } = 0.01;

    public double Capacity { get; init; } = 26;

    /// <summary>Another container at hand, kg.</summary>
    public double OtherContainer { get; init; } = LightContainer;

    /// <summary>What another product of the machine would deliver, over that of the one meant.</summary>
    public double OtherProduct { get; init; } = HeavyProduct;

    /// <summary>False where nothing has changed since the value in force was found.</summary>
    public bool OtherChange { get; init; } = true;

    public bool NewLot { get; init; }

    public bool NetOnly { get; init; }

    public bool KnowsTheMachine { get; init; } = true;

    public bool EnteredInPounds { get; init; }

    public CountSource CountedAs { get; init; }

    public double? MeterRevolutionsPerTurn { get; init; }

    public bool? ReferenceInPounds { get; init; }

    public int Points { get; init; } = (int)Outlets;

    public IReadOnlyList<MistakeCode> RuledOut { get; init; } = [];

    public Mistake? Mistake { get; init; }

    public CatchTestSetup Draw(int catches, SeededRandom random)
    {
        var drawn = (Scene with { DayToDay = CatchTestLimits.DefaultDayToDay }).Draw(catches, random);
        var ordinary = random.Student(BlurredChange, NewLot ? MistakeJudgement.OrdinaryChangeWithNewLot : MistakeJudgement.OrdinaryChange);
        var change = OtherChange ? ordinary : 0;
        var inForce = Scene.PerRevolution * Math.Exp(random.Normal(OldUncertainty));
        return drawn with
        {
            Device = drawn.Device with { Displacement = new Volume(drawn.Device.Displacement.CubicMetres * Math.Exp(change)) },
            // Within a division, so that its rounding is not always the same.
            Container = new Mass(Container + random.Between(-ContainerSpread, ContainerSpread)),
            Capacity = new Mass(Capacity),
            Points = Points,
            PointsToCatch = Points,
            Mistakes = Mistake is null ? [] : [Mistake],
            WritesNetOnly = NetOnly,
            Asked = test =>
                test with
                {
                    Reference = new ReferenceValue(
                        new MassPerRevolution(inForce),
                        ReferenceKind.ValueInForce,
                        OldUncertainty,
                        FromAnotherScale: true
                    ),
                    Context = KnowsTheMachine ? Known() : new MistakeContext { NewLot = NewLot, RuledOut = RuledOut },
                },
        };
    }

    private static double BlurredChange => Engine.Statistics.BlurredStudentT.DegreesOfFreedom;

    private MistakeContext Known() =>
        new()
        {
            ContainerCapacity = new Mass(Capacity),
            ContainerTare = new Mass(Container),
            OtherContainers = [new OtherContainer("bucket", new Mass(OtherContainer)), new OtherContainer("tub", new Mass(Container))],
            OtherElements = [Other("coarse roller", CoarseElement), Other("fine roller", FineElement)],
            OtherProducts = [Other("granular fertilizer", OtherProduct)],
            CatchPoints = Points,
            NewLot = NewLot,
            EnteredInPounds = EnteredInPounds,
            CountedAs = CountedAs,
            MeterRevolutionsPerTurn = MeterRevolutionsPerTurn,
            ReferenceInPounds = ReferenceInPounds,
            RuledOut = RuledOut,
        };

    private OtherDelivery Other(string name, double ratio) => new(name, new MassPerRevolution(ratio * Scene.PerRevolution));
}
