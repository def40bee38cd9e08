using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Simulation.Mistakes;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often a mistake is named that nobody made, and how often one is found that somebody made.</summary>
public static class MistakeStudy
{
    // A likelier rival that an ordinary change imitates pushes a mistake below the 10 % from which the list shows it.
    private const double InTheGroup = 0.85;

    private static readonly int[] OneToSix = [1, 2, 3, 4, 5, 6];
    private static readonly int[] SomeCatches = [1, 2, 3, 5];
    private static readonly int[] ThreeAndFive = [3, 5];
    private static readonly int[] SeveralCatches = [2, 3, 5];
    private const double GearRatio = 0.31;

    /// <summary>The study.</summary>
    public static Study Study { get; } =
        new(
            "Likely mistakes",
            "Share of tests, in per cent. Ordinary changes since the value in force are Student t with 3 degrees of freedom, 4 % (new lot: 8 %), the value in force is known to 1 %, 1 % from day to day, repeatability from its prior, 850 divisions. \"Named\" is a probability of at least one half, \"found first\" the mistake that was made, in the catch where it was made, at the head of the list, \"in the group\" anywhere in it. "
                + "A mistake has to be found first where its ratio is at least 12 predictive standard deviations from 1 and no other fixed ratio is nearer than 4, nor a range that holds it. Eight would not do: ordinary changes beyond 8 happen in 0.4 % of tests, more often than most of the mistakes. Otherwise it has to be in the group. A group shows nothing under 10 %, so that a mistake with a likelier rival next to it is missed where an ordinary change shifts the test towards the rival; count halved against pounds as kilograms is the worst.",
            [
                Names("honest: a mistake is named, same lot", MistakeScene.Usual),
                Names("honest: a mistake is named, new lot", MistakeScene.Usual with { NewLot = true }),
                Names("honest: a mistake is named, nothing known of the machine", MistakeScene.Usual with { KnowsTheMachine = false }),
                Names("honest: a mistake is named, net masses only", MistakeScene.Usual with { NetOnly = true }),
                Names("honest: a mistake is named, heavy container", MistakeScene.HeavyContainer),
                Names(
                    "honest: a mistake is named, counted by pulses",
                    MistakeScene.Usual with
                    {
                        CountedAs = CountSource.Pulses,
                        ReferenceInPounds = false,
                    }
                ),
                Names(
                    "honest: a mistake is named, turns of a crank",
                    MistakeScene.Usual with
                    {
                        CountedAs = CountSource.Turns,
                        MeterRevolutionsPerTurn = GearRatio,
                    }
                ),
                .. Scene
                    .Four.Skip(1)
                    .Select(each =>
                        Names($"honest: a mistake is named: {each.Name}", MistakeScene.Usual with { Scene = each.Scene, Capacity = 40 })
                    ),
                .. Planted(),
                .. PlantedBesideTheScale(),
            ]
        )
        {
            // The search weighs some forty explanations of each test.
            Trials = 5_000,
        };

    private static IEnumerable<StudyCase> Planted()
    {
        var usual = MistakeScene.Usual;
        var pounds = usual with { EnteredInPounds = true };
        var heavy = MistakeScene.HeavyContainer;
        yield return First(
            "pounds as kilograms, count checked",
            usual with
            {
                RuledOut = [MistakeCodes.CountHalved],
            },
            MistakeCodes.PoundsAsKilograms,
            new PoundsAsKilograms()
        );
        yield return Group("pounds as kilograms, count not checked", usual, MistakeCodes.PoundsAsKilograms, new PoundsAsKilograms());
        yield return Group("kilograms as pounds", pounds, MistakeCodes.KilogramsAsPounds, new KilogramsAsPounds());
        yield return First(
            "tare not taken off, heavy container",
            heavy with
            {
                NetOnly = true,
            },
            MistakeCodes.TareNotTakenOff,
            new TareNotTakenOff()
        );
        yield return Group(
            "tare taken off twice, container of 10 kg",
            usual with
            {
                Container = 10,
            },
            MistakeCodes.TareTakenOffTwice,
            new TareTakenOffTwice()
        );
        yield return First(
            "tare of another container, heavy container",
            heavy,
            MistakeCodes.TareOfAnotherContainer,
            new AnotherContainersTare(MistakeScene.LightContainer)
        );
        yield return First("decimal slip to the right", usual with { NetOnly = true }, MistakeCodes.DecimalSlip, new DecimalSlip(1));
        yield return Group("decimal slip to the left", usual with { NetOnly = true }, MistakeCodes.DecimalSlip, new DecimalSlip(-1));
        yield return Group("count doubled", usual, MistakeCodes.CountDoubled, CountMultiplied.Doubled);
        yield return Group("count halved", usual, MistakeCodes.CountHalved, CountMultiplied.Halved);
        yield return Group("tank bridged, 30 % delivered", usual, MistakeCodes.TankBridgedOrEmpty, new BridgedOrEmptyTank(0.3));
        yield return Group("meter isolated, 30 % of the time turning", usual, MistakeCodes.MeterIsolated, new MeterIsolated(0.3));
        yield return First(
            "another element, five times the displacement",
            usual,
            MistakeCodes.AnotherElement,
            new AnotherElement(MistakeScene.CoarseElement)
        );
        yield return Group(
            "another element, 0.2 times the displacement",
            usual,
            MistakeCodes.AnotherElement,
            new AnotherElement(MistakeScene.FineElement)
        );
        yield return First(
            "another product, three times the density",
            usual,
            MistakeCodes.AnotherProduct,
            new AnotherProduct(MistakeScene.HeavyProduct)
        );
        yield return Group("half of the points missed", usual with { Points = 2 }, MistakeCodes.CatchPointMissed, new CatchPointMissed());
        yield return Group(
            "value in force wrong by a factor of 4",
            usual,
            MistakeCodes.ValueInForceWrong,
            new WrongValueInForce(4),
            asked: [2, 3, 5]
        );

        yield return First(
            "decimal slip to the right in one catch",
            usual with
            {
                NetOnly = true,
            },
            MistakeCodes.DecimalSlip,
            new DecimalSlip(1),
            inOneCatch: true
        );
        yield return First(
            "pounds as kilograms in one catch, count checked",
            usual with
            {
                RuledOut = [MistakeCodes.CountHalved],
            },
            MistakeCodes.PoundsAsKilograms,
            new PoundsAsKilograms(),
            inOneCatch: true
        );
        yield return First(
            "tare of another container in one catch, heavy container",
            heavy,
            MistakeCodes.TareOfAnotherContainer,
            new AnotherContainersTare(MistakeScene.LightContainer),
            inOneCatch: true
        );
        yield return First(
            "tare not taken off in one catch, heavy container",
            heavy,
            MistakeCodes.TareNotTakenOff,
            new TareNotTakenOff(),
            inOneCatch: true
        );
        yield return Group("not primed, a third missing in the first catch", usual, MistakeCodes.MeterNotPrimed, new NotPrimed(6));
        yield return Group(
            "overflowed in one catch, at three quarters of the mass",
            usual with
            {
                Capacity = 12.8,
            },
            MistakeCodes.ContainerOverflowed,
            new Overflowed(),
            inOneCatch: true
        );
        yield return Group(
            "tank bridged in one catch, 30 % delivered",
            usual,
            MistakeCodes.TankBridgedOrEmpty,
            new BridgedOrEmptyTank(0.3),
            inOneCatch: true
        );
        yield return Group(
            "meter isolated in one catch, 30 % of the time turning",
            usual,
            MistakeCodes.MeterIsolated,
            new MeterIsolated(0.3),
            inOneCatch: true
        );
        yield return Group(
            "half of the points missed in one catch",
            usual with
            {
                Points = 2,
            },
            MistakeCodes.CatchPointMissed,
            new CatchPointMissed(),
            inOneCatch: true
        );
    }

    private static IEnumerable<StudyCase> PlantedBesideTheScale()
    {
        var usual = MistakeScene.Usual;
        var points = usual with { Points = 6 };
        var pounds = usual with { EnteredInPounds = true };
        yield return First(
            "container not emptied",
            usual,
            MistakeCodes.ContainerNotEmptied,
            new ContainerNotEmptied(),
            asked: SeveralCatches
        );
        yield return First("counter not set to zero", usual, MistakeCodes.CounterNotReset, new CounterNotReset(), asked: SeveralCatches);
        yield return Group("half of the points sent as the whole", usual, MistakeCodes.HalfOfPointsAsWhole, new HalfOfPointsCaught());
        yield return Group(
            "value in force in pounds taken for kilograms",
            pounds with
            {
                ReferenceInPounds = false,
            },
            MistakeCodes.ValueInAnotherUnit,
            new WrongValueInForce(1 / Units.Pound)
        );
        yield return Group(
            "turns of a motor counted as the meter's",
            usual with
            {
                MeterRevolutionsPerTurn = GearRatio,
            },
            MistakeCodes.TurnsOfAnotherShaft,
            new CountMultiplied(1 / GearRatio)
        );
        yield return Group("two digits swapped in one catch", usual, MistakeCodes.DigitWrong, new DigitsSwapped(), inOneCatch: true);
        yield return Group(
            "ounces as decimals, small seed",
            usual with
            {
                Scene = Scene.KitchenScale,
                Container = 0.4,
                EnteredInPounds = true,
            },
            MistakeCodes.OuncesAsDecimals,
            new OuncesTypedAsDecimals(),
            asked: SeveralCatches
        );
        yield return Lists("one point of six missed", points, MistakeCodes.CatchPointMissed, new CatchPointMissed());
        yield return Lists(
            "pulses per revolution a fifth too few",
            usual with
            {
                CountedAs = CountSource.Pulses,
            },
            MistakeCodes.PulsesPerRevolutionWrong,
            new CountMultiplied(1 / 1.2)
        );
        yield return Lists("a tenth of the load carried by wind or hand", usual, MistakeCodes.WindOrHand, new WindOrHand(0.12));
        yield return Lists(
            "tare of 20 % typed as 0 with the container's on record",
            usual with
            {
                Container = 3.4,
            },
            MistakeCodes.TareNotTakenOff,
            new TareTypedAsZero()
        );
    }

    // Where an ordinary change makes up for the mistake, there is no large change and nothing to list.
    private static StudyCase Lists(string name, MistakeScene scene, MistakeCode code, Mistake mistake) =>
        new($"{name}: in the list of a large change", SomeCatches, (catches, random) =>
        {
            for (var attempt = 0; attempt < 1000; attempt++)
            {
                var result = (scene with { Mistake = mistake }).Draw(catches, random).Run(random).Evaluated();
                if (result.FromExpected!.IsLarge)
                    return result.LikelyMistakes.Shown.Concat(result.LikelyMistakes.AlsoPossible).Any(one => one.Code == code);
            }

            throw new InvalidOperationException("This mistake makes no large change.");
        }) { AtLeast = InTheGroup };

    private static StudyCase Names(string name, MistakeScene scene) =>
        new(name, OneToSix, (catches, random) =>
            Search(scene, catches, random).Shown is [{ Probability: >= MistakeJudgement.NamedFrom }, ..]
        )
        {
            AtMost = 0.02,
        };

    private static StudyCase First(
        string name,
        MistakeScene scene,
        MistakeCode code,
        Mistake mistake,
        bool inOneCatch = false,
        int[]? asked = null
    ) => new($"{name}: found first", asked ?? (inOneCatch || mistake is NotPrimed ? ThreeAndFive : SomeCatches), (catches, random) =>
        {
            var (found, at) = Plant(scene, mistake, inOneCatch, catches, random);
            return found.Shown is [var first, ..] && Is(first, code, at);
        }) { AtLeast = 0.95 };

    private static StudyCase Group(
        string name,
        MistakeScene scene,
        MistakeCode code,
        Mistake mistake,
        bool inOneCatch = false,
        int[]? asked = null
    ) => new($"{name}: in the group", asked ?? (inOneCatch || mistake is NotPrimed ? ThreeAndFive : SomeCatches), (catches, random) =>
        {
            var (found, at) = Plant(scene, mistake, inOneCatch, catches, random);
            return found.Shown.Any(one => Is(one, code, at));
        }) { AtLeast = InTheGroup };

    private static bool Is(LikelyMistake one, MistakeCode code, int? at) => one.Code == code && one.Catch == at;

    private static (LikelyMistakesResult Found, int? At) Plant(
        MistakeScene scene,
        Mistake mistake,
        bool inOneCatch,
        int catches,
        SeededRandom random
    )
    {
        int? at =
            inOneCatch ? random.Next(catches)
            : mistake is NotPrimed ? 0
            : null;
        return (Search(scene with { Mistake = mistake with { OnlyIn = at } }, catches, random), at);
    }

    private static LikelyMistakesResult Search(MistakeScene scene, int catches, SeededRandom random) =>
        scene.Draw(catches, random).Run(random).Evaluated().LikelyMistakes;
}
