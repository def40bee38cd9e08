namespace CalibrationApi.Engine.Answers;

/// <summary>The stable codes of cautions: the comment of each is the danger, <see cref="RemedyAttribute"/> how to keep out of it.</summary>
public static class CautionCode
{
    /// <summary>Nothing said here knows the machine, the product and the place as their own papers and people do.</summary>
    [Remedy("The machine's manual, the product label, local rules and licensed or certified advice go first.")]
    public const string ManualFirst = "manual-first";

    /// <summary>A machine that starts, or a part that comes down, while somebody reaches under it.</summary>
    [Remedy("Stop the machine, take the key, and lower what can fall. With two people, agree on signals.")]
    public const string UnexpectedStart = "unexpected-start";

    /// <summary>Meters and augers that turn without warning and pull in fingers, sleeves and gloves.</summary>
    [Remedy("Refit guards before each run, and stay clear of chains and shafts.")]
    public const string RotatingParts = "rotating-parts";

    /// <summary>Hydraulic oil that stays under pressure after the engine stops; a jet goes through skin.</summary>
    [Remedy("Release the pressure first, and search for leaks with cardboard. Treat any injection injury as an emergency.")]
    public const string StoredPressure = "stored-pressure";

    /// <summary>Dust of treated seed and of fertilizer on skin, in eyes and in lungs.</summary>
    [Remedy("Wear what the product label asks for.")]
    public const string ProductDust = "product-dust";

    /// <summary>Flowing product that buries a person in seconds.</summary>
    [Remedy("Never enter a tank. Entry needs lock-out and confined-space practice with a second person outside.")]
    public const string TankEntry = "tank-entry";

    /// <summary>A container that is too heavy for one person once the catch is in it.</summary>
    [Remedy("Lift it with two persons or a hoist.")]
    public const string HeavyContainer = "heavy-container";

    /// <summary>A machine that drives over a course where people count, measure and watch.</summary>
    [Remedy("Keep everybody clear of the machine and in sight of the driver. Nobody rides on it, and nobody measures while it moves.")]
    public const string MovingMachine = "moving-machine";

    /// <summary>A machine that comes off its jack while somebody turns a wheel or holds a container.</summary>
    [Remedy("Stand it on firm, level ground, chock its wheels, put stands under it, and keep from under it.")]
    public const string JackedMachine = "jacked-machine";

    /// <summary>Published limits of fertilizer with the seed do not know the field.</summary>
    [Remedy("Local guidance, the product label and a licensed adviser go first.")]
    public const string LocalGuidanceFirst = "local-guidance-first";

    /// <summary>A stand that thins although no published limit is exceeded.</summary>
    [Remedy(
        "Read the conditions of each limit, and place less where the seedbed dries. What is put away from the seed row cannot harm it."
    )]
    public const string LimitIsNoPromise = "limit-is-no-promise";

    /// <summary>Seed and fertilizer that lie closer together than the opener promises.</summary>
    [Remedy("Dig up a few rows behind the drill and measure the spread.")]
    public const string SpreadToBeMeasured = "spread-to-be-measured";

    /// <summary>Nutrients given without knowing what the soil holds and what local rules allow.</summary>
    [Remedy("Rates follow a soil test, the product label, local rules and a licensed or certified adviser.")]
    public const string SoilTestFirst = "soil-test-first";

    /// <summary>Fertilizer in the seed row that kills the seed beside it.</summary>
    [Remedy("Ask for the limit of what is laid in the seed row before placing any of it there.")]
    public const string SeedRowHasItsOwnLimit = "seed-row-has-its-own-limit";

    /// <summary>Products that cake, give off gas or feed a fire when they are mixed.</summary>
    [Remedy("Read the labels and safety data sheets, and ask the supplier, before products share a tank or a heap.")]
    public const string NotAllProductsMix = "not-all-products-mix";

    /// <summary>Treated seed on the skin, most of all while it is counted or filled by hand.</summary>
    [Remedy("Wear the gloves and the clothing that the label of the treatment asks for, and wash before eating.")]
    public const string TreatedSeed = "treated-seed";
}
