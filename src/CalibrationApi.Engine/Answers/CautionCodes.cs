namespace CalibrationApi.Engine.Answers;

/// <summary>The codes of dangers at every machine.</summary>
public static class CautionCodes
{
    /// <summary>Nothing said here knows the machine, the product and the place as their own papers and people do.</summary>
    public static CautionCode ManualFirst { get; } =
        new("manual-first", "The machine's manual, the product label, local rules and licensed or certified advice go first.");

    /// <summary>A machine that starts, or a part that comes down, while somebody reaches under it.</summary>
    public static CautionCode UnexpectedStart { get; } =
        new("unexpected-start", "Stop the machine, take the key, and lower what can fall. With two people, agree on signals.");

    /// <summary>Meters and augers that turn without warning and pull in fingers, sleeves and gloves.</summary>
    public static CautionCode RotatingParts { get; } =
        new("rotating-parts", "Refit guards before each run, and stay clear of chains and shafts.");

    /// <summary>Hydraulic oil that stays under pressure after the engine stops; a jet goes through skin.</summary>
    public static CautionCode StoredPressure { get; } =
        new(
            "stored-pressure",
            "Release the pressure first, and search for leaks with cardboard. Treat any injection injury as an emergency."
        );

    /// <summary>Dust of treated seed and of fertilizer on skin, in eyes and in lungs.</summary>
    public static CautionCode ProductDust { get; } = new("product-dust", "Wear what the product label asks for.");

    /// <summary>Flowing product that buries a person in seconds.</summary>
    public static CautionCode TankEntry { get; } =
        new("tank-entry", "Never enter a tank. Entry needs lock-out and confined-space practice with a second person outside.");

    /// <summary>A machine that drives over a course where people count, measure and watch.</summary>
    public static CautionCode MovingMachine { get; } =
        new(
            "moving-machine",
            "Keep everybody clear of the machine and in sight of the driver. Nobody rides on it, and nobody measures while it moves."
        );

    /// <summary>A machine that comes off its jack while somebody turns a wheel or holds a container.</summary>
    public static CautionCode JackedMachine { get; } =
        new("jacked-machine", "Stand it on firm, level ground, chock its wheels, put stands under it, and keep from under it.");

    /// <summary>Treated seed on the skin, most of all while it is counted or filled by hand.</summary>
    public static CautionCode TreatedSeed { get; } =
        new("treated-seed", "Wear the gloves and the clothing that the label of the treatment asks for, and wash before eating.");
}
