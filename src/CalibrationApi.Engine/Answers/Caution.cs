using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>Something that can hurt a person, in one sentence.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Detail">The sentence.</param>
public sealed record Caution(CautionCode Code, Sentence Detail)
{
    /// <summary>Goes before everything said here; common practice.</summary>
    public static Caution ManualFirst { get; } =
        new(
            CautionCodes.ManualFirst,
            $"The machine's manual, the product label, local rules and licensed or certified advice go before anything said here."
        );

    /// <summary>For whoever reaches under a machine.</summary>
    public static Caution UnexpectedStart { get; } =
        new(
            CautionCodes.UnexpectedStart,
            $"Stop the machine, take the key and lower what can fall before reaching under it; with two people, agree on signals, and nobody starts a drive while hands are under a tank."
        );

    /// <summary>For whoever is near meters and augers.</summary>
    public static Caution RotatingParts { get; } =
        new(
            CautionCodes.RotatingParts,
            $"Meters and augers turn without warning and pull in fingers, sleeves and gloves: refit guards before each run and stay clear of chains and shafts."
        );

    /// <summary>For whoever works on hydraulics.</summary>
    public static Caution StoredPressure { get; } =
        new(
            CautionCodes.StoredPressure,
            $"Hydraulic oil stays under pressure after the engine stops and a jet goes through skin: release it first, search for leaks with cardboard, and treat any injection injury as an emergency."
        );

    /// <summary>For whoever lets product fall into a container.</summary>
    public static Caution ProductDust { get; } =
        new(
            CautionCodes.ProductDust,
            $"Dust of treated seed and of fertilizer reaches skin, eyes and lungs while it falls into a container: wear what the product label asks for."
        );

    /// <summary>For whoever fills or empties a tank.</summary>
    public static Caution TankEntry { get; } =
        new(
            CautionCodes.TankEntry,
            $"Never enter a tank: flowing product buries a person in seconds. Entry needs lock-out and confined-space practice with a second person outside."
        );

    /// <summary>For whoever counts or measures on a course; common practice.</summary>
    public static Caution MovingMachine { get; } =
        new(
            CautionCodes.MovingMachine,
            $"Whoever counts or watches the marks stands clear of the machine and in sight of the driver. Nobody rides on the machine, nobody walks beside its wheels, and nothing is measured while it moves."
        );

    /// <summary>For whoever turns a wheel of a lifted machine; common practice.</summary>
    public static Caution JackedMachine { get; } =
        new(
            CautionCodes.JackedMachine,
            $"Lift the machine on firm, level ground, chock the other wheels and put stands under it before turning a wheel: a jack alone lets go. Nobody lies or reaches under it, and guards of chains and gears stay on while the wheel turns."
        );

    /// <summary>
    /// The cautions of every work under tanks and meters. Sources: safety sheets of public agencies (NASD; University of
    /// Wisconsin; Iowa State, Minnesota and Nebraska Extension) as collected in SOURCES.md, key SAFETY; otherwise common practice.
    /// </summary>
    public static IReadOnlyList<Caution> AtTheMachine { get; } =
    [ManualFirst, UnexpectedStart, RotatingParts, StoredPressure, ProductDust, TankEntry];

    /// <summary>The cautions of driving over a measured course; common practice, no published source.</summary>
    public static IReadOnlyList<Caution> OnAMeasuredCourse { get; } = [ManualFirst, MovingMachine];

    /// <summary>The cautions of turning a wheel of a machine that is lifted off the ground; the jack is common practice.</summary>
    public static IReadOnlyList<Caution> AtAJackedMachine { get; } = [.. AtTheMachine, JackedMachine];

    /// <summary>
    /// What goes for treated seed in the hand. Source: Minnesota and Nebraska Extension on treated seed (SOURCES.md, key SAFETY).
    /// </summary>
    public static Caution TreatedSeed { get; } =
        new(
            CautionCodes.TreatedSeed,
            $"Treated seed and its dust reach the body through skin, eyes and lungs: follow the label of the treatment, wear the chemical-resistant gloves it asks for, and keep such seed out of food and feed."
        );
}
