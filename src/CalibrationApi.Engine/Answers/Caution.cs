namespace CalibrationApi.Engine.Answers;

/// <summary>Something that can hurt a person, in one sentence.</summary>
/// <param name="Code">Stable kebab-case code; see <see cref="CautionCode"/>.</param>
/// <param name="Detail">The sentence.</param>
public sealed record Caution(string Code, FormattableString Detail)
{
    /// <summary>
    /// The cautions of every work under tanks and meters. Sources: safety sheets of public agencies (NASD; University of
    /// Wisconsin; Iowa State, Minnesota and Nebraska Extension) as collected in SOURCES.md, key SAFETY; otherwise common practice.
    /// </summary>
    public static IReadOnlyList<Caution> AtTheMachine { get; } =
    [
        new(CautionCode.ManualFirst, $"The machine's manual, the product label, local rules and licensed or certified advice go before anything said here."),
        new(CautionCode.UnexpectedStart, $"Stop the machine, take the key and lower what can fall before reaching under it; with two people, agree on signals, and nobody starts a drive while hands are under a tank."),
        new(CautionCode.RotatingParts, $"Meters and augers turn without warning and pull in fingers, sleeves and gloves: refit guards before each run and stay clear of chains and shafts."),
        new(CautionCode.StoredPressure, $"Hydraulic oil stays under pressure after the engine stops and a jet goes through skin: release it first, search for leaks with cardboard, and treat any injection injury as an emergency."),
        new(CautionCode.ProductDust, $"Dust of treated seed and of fertilizer reaches skin, eyes and lungs while it falls into a container: wear what the product label asks for."),
        new(CautionCode.TankEntry, $"Never enter a tank: flowing product buries a person in seconds. Entry needs lock-out and confined-space practice with a second person outside."),
    ];

    /// <summary>What goes for treated seed in the hand. Source: Minnesota and Nebraska Extension on treated seed (SOURCES.md, key SAFETY).</summary>
    public static Caution TreatedSeed { get; } = new(CautionCode.TreatedSeed,
        $"Treated seed and its dust reach the body through skin, eyes and lungs: follow the label of the treatment, wear the chemical-resistant gloves it asks for, and keep such seed out of food and feed.");
}
