using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Simulation.Mistakes;

namespace CalibrationApi.Simulation.Tests;

/// <summary>
/// Every mistake against the same test without it. A mistake draws no random numbers of its own, so the two differ by the
/// mistake alone, and its ratio shows to the digits of the readings.
/// </summary>
public sealed class MistakeTests
{
    // Rounding to divisions of 1 ug on some 17 kg, twice, with room to spare.
    private const double ReadingDigits = 1e-9;

    private static readonly Mistake[] All =
    [
        new PoundsAsKilograms(),
        new KilogramsAsPounds(),
        new TareNotTakenOff(),
        new TareTakenOffTwice(),
        new AnotherContainersTare(2.4),
        new DecimalSlip(1),
        new DecimalSlip(-1),
        CountMultiplied.Doubled,
        CountMultiplied.Halved,
        new NotPrimed(1.2),
        new Overflowed(12),
        new Overflowed(),
        new BridgedOrEmptyTank(0.7),
        new MeterIsolated(0.6),
        new AnotherElement(0.75),
        new AnotherProduct(1.25),
        new CatchPointMissed(),
        new WrongValueInForce(1.3),
        new HalfOfPointsCaught(),
        new CounterNotReset(),
        new ContainerNotEmptied(),
        new ResidueLeft(1.2),
        new WindOrHand(0.1),
        new TareTypedAsZero(),
        new OuncesTypedAsDecimals(),
        new DigitsSwapped(),
    ];

    private static readonly CatchTestSetup Honest = Given.Setup with
    {
        Device = Given.Device with { CatchScatter = 0.01, DayToDay = 0.01 },
        Capacity = new Mass(14),
        Points = 12,
        PointsToCatch = 12,
        Asked = test =>
            test with
            {
                Reference = new ReferenceValue(new MassPerRevolution(Given.PerRevolution), ReferenceKind.ValueInForce),
            },
    };

    public static TheoryData<int, TareReading> Cases => Each(_ => true);

    // A meter is not primed in the first catch only, and the value in force is one for all.
    public static TheoryData<int, TareReading> CasesOfOneCatch => Each(mistake => mistake is not (NotPrimed or WrongValueInForce));

    [Fact]
    public void All_TypesOfMistake_AreTried() =>
        Assert.Equal(
            typeof(Mistake).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Mistake))).OrderBy(type => type.Name),
            All.Select(mistake => mistake.GetType()).Distinct().OrderBy(type => type.Name)
        );

    [Theory]
    [MemberData(nameof(Cases))]
    public void Run_MistakeInTheWholeTest_ChangesEveryCatchByItsRatio(int which, TareReading taring)
    {
        var mistake = All[which];
        for (var trial = 0; trial < 50; trial++)
        {
            var (honest, wrong) = Pair(mistake, taring, trial);
            for (var i = 0; i < honest.Catches.Count; i++)
            {
                var ratio = Found(wrong, i) / Found(honest, i);
                Assert.Equal(mistake.Ratio(honest.Catches[i]), ratio, ReadingDigits * Math.Max(1, ratio));
            }
        }
    }

    [Theory]
    [MemberData(nameof(CasesOfOneCatch))]
    public void Run_MistakeInOneCatch_LeavesTheOthersAlone(int which, TareReading taring)
    {
        var mistake = All[which] with { OnlyIn = 1 };
        var (honest, wrong) = Pair(mistake, taring, 0);

        Assert.Equal(Found(honest, 0), Found(wrong, 0), 1e-12);
        Assert.NotEqual(1, Found(wrong, 1) / Found(honest, 1), mistake is OuncesTypedAsDecimals ? 1e-6 : 0.03);
        Assert.Equal(Found(honest, 2), Found(wrong, 2), 1e-12);
    }

    [Fact]
    public void Run_NotPrimed_OnlyLowersTheFirstCatch()
    {
        var (honest, wrong) = Pair(new NotPrimed(1.2), TareReading.Each, 0);

        Assert.True(Found(wrong, 0) < Found(honest, 0));
        Assert.Equal(Found(honest, 1), Found(wrong, 1));
        Assert.Equal(Found(honest, 2), Found(wrong, 2));
    }

    [Fact]
    public void Run_Overflowed_NeverAddsToACatchThatFits()
    {
        var (honest, wrong) = Pair(new Overflowed(50), TareReading.Each, 0);

        Assert.Equal(honest.Question.Catches, wrong.Question.Catches);
    }

    [Fact]
    public void Run_SeveralMistakes_MultiplyUp()
    {
        var setup = Honest with { Mistakes = [new AnotherElement(0.5), CountMultiplied.Halved] };

        Assert.Equal(Found(Honest.Run(SeededRandom.Of(4, 0)), 0), Found(setup.Run(SeededRandom.Of(4, 0)), 0), 1e-9);
    }

    private static TheoryData<int, TareReading> Each(Predicate<Mistake> isAsked)
    {
        var cases = new TheoryData<int, TareReading>();
        for (var which = 0; which < All.Length; which++)
        {
            foreach (var taring in Enum.GetValues<TareReading>())
            {
                if (isAsked(All[which]))
                    cases.Add(which, taring);
            }
        }

        return cases;
    }

    private static (SimulatedTest Honest, SimulatedTest Wrong) Pair(Mistake mistake, TareReading taring, int trial)
    {
        var setup = Honest with { Taring = taring };
        return (setup.Run(SeededRandom.Of(4, trial)), (setup with { Mistakes = [mistake] }).Run(SeededRandom.Of(4, trial)));
    }

    // What is found over what is expected.
    private static double Found(SimulatedTest test, int position) =>
        test.Catches[position].Value() / test.Question.Reference!.Value.KilogramsPerRevolution;
}
