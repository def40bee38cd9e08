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

    /// <summary>Treated seed on the skin, most of all while it is counted or filled by hand.</summary>
    [Remedy("Wear the gloves and the clothing that the label of the treatment asks for, and wash before eating.")]
    public const string TreatedSeed = "treated-seed";
}
