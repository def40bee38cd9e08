using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The codes of likely mistakes: the comment of each is what went wrong, its remedy the one thing to look at.</summary>
public static class MistakeCodes
{
    /// <summary>The scale showed pounds and the numbers were entered as kilograms.</summary>
    public static MistakeCode PoundsAsKilograms { get; } =
        new("pounds-as-kilograms", "Compare the unit on the display of the scale with the unit that was entered.");

    /// <summary>The scale showed kilograms and the numbers were entered as pounds.</summary>
    public static MistakeCode KilogramsAsPounds { get; } =
        new("kilograms-as-pounds", "Compare the unit on the display of the scale with the unit that was entered.");

    /// <summary>The empty container is still in the mass.</summary>
    public static MistakeCode TareNotTakenOff { get; } =
        new("tare-not-taken-off", "Weigh the empty container, and see whether its mass was taken off.");

    /// <summary>The empty container was subtracted from a mass that was net already.</summary>
    public static MistakeCode TareTakenOffTwice { get; } =
        new("tare-taken-off-twice", "See whether the scale already showed net when the tare was taken off by hand.");

    /// <summary>The tare belongs to another container.</summary>
    public static MistakeCode TareOfAnotherContainer { get; } =
        new("tare-of-another-container", "Weigh the container of this catch empty, and compare with the tare that was used.");

    /// <summary>A decimal point or a digit slipped.</summary>
    public static MistakeCode DecimalSlip { get; } =
        new("decimal-slip", "Compare the masses and the count that were entered with what was written down at the machine.");

    /// <summary>The count of revolutions shows twice as many as there were.</summary>
    public static MistakeCode CountDoubled { get; } =
        new("count-doubled", "Turn the meter by hand, say ten times, and compare with the count.");

    /// <summary>The count of revolutions shows half as many as there were.</summary>
    public static MistakeCode CountHalved { get; } =
        new("count-halved", "Turn the meter by hand, say ten times, and compare with the count.");

    /// <summary>The count began before the product flowed.</summary>
    public static MistakeCode MeterNotPrimed { get; } =
        new("meter-not-primed", "Turn the meter until the product flows steadily, then catch once more.");

    /// <summary>The container ran over.</summary>
    public static MistakeCode ContainerOverflowed { get; } =
        new("container-overflowed", "Look for product beside the container, and see how full it was.");

    /// <summary>The product hung in the tank, or the tank ran empty.</summary>
    public static MistakeCode TankBridgedOrEmpty { get; } =
        new("tank-bridged-or-empty", "Look into the tank from outside, whether there is product over the meter and whether it slides.");

    /// <summary>The meter was isolated or stood still part of the time.</summary>
    public static MistakeCode MeterIsolated { get; } =
        new("meter-isolated", "See whether the drive of this meter was engaged all the time, and its shutter fully open.");

    /// <summary>Another metering element of the machine was fitted.</summary>
    public static MistakeCode AnotherElement { get; } = new("another-element", "Read the mark on the metering element that is fitted.");

    /// <summary>Another product of the machine was in the tank.</summary>
    public static MistakeCode AnotherProduct { get; } = new("another-product", "Look at the product in the container.");

    /// <summary>Product from one of the points was not caught.</summary>
    public static MistakeCode CatchPointMissed { get; } =
        new("catch-point-missed", "Count the points that fed into the container, and look for product on the ground.");

    /// <summary>Half of the points were caught and sent as the whole meter.</summary>
    public static MistakeCode HalfOfPointsAsWhole { get; } =
        new("half-of-points-as-whole", "Count the points that fed into the container, and compare with those that the meter feeds.");

    /// <summary>The container was not emptied between catches.</summary>
    public static MistakeCode ContainerNotEmptied { get; } =
        new(
            "container-not-emptied",
            "See whether the container was emptied before each catch. If it was not, the masses written down grow from catch to catch."
        );

    /// <summary>The counter was not set to zero between catches.</summary>
    public static MistakeCode CounterNotReset { get; } =
        new(
            "counter-not-reset",
            "See whether the counter was set to zero before each catch. If it was not, the counts written down grow from catch to catch."
        );

    /// <summary>Product was left in the container.</summary>
    public static MistakeCode ResidueInContainer { get; } =
        new("residue-in-container", "Look into the container after emptying it, and clean out what sticks in it.");

    /// <summary>Wind or a hand carried part of the container while it was weighed.</summary>
    public static MistakeCode WindOrHand { get; } =
        new("wind-or-hand", "Weigh the full container again, out of the wind, with nothing touching it.");

    /// <summary>Ounces were typed as decimals of a pound.</summary>
    public static MistakeCode OuncesAsDecimals { get; } =
        new("ounces-as-decimals", "Does the scale show pounds and ounces? 12 lb 8 oz are 12.5 lb, not 12.8.");

    /// <summary>Digits changed places, or one is wrong.</summary>
    public static MistakeCode DigitWrong { get; } =
        new("digit-wrong", "Compare every digit of the masses and the counts that were entered with what was written down at the machine.");

    /// <summary>The pulses per revolution are not those of the sensor.</summary>
    public static MistakeCode PulsesPerRevolutionWrong { get; } =
        new("pulses-per-revolution-wrong", "Turn the meter by hand, say ten times, and divide the pulses by ten.");

    /// <summary>The turns of another shaft than the meter's were counted.</summary>
    public static MistakeCode TurnsOfAnotherShaft { get; } =
        new("turns-of-another-shaft", "Mark the shaft of the meter and the one that was counted, turn, and see how often each goes round.");

    /// <summary>The value compared with is in the other unit, pounds or kilograms.</summary>
    public static MistakeCode ValueInAnotherUnit { get; } =
        new(
            "value-in-another-unit",
            "Look at the unit that the controller shows beside its number, and compare with the unit of the value that the test was judged against."
        );

    /// <summary>The value in force is not the number that belongs to this meter and product.</summary>
    public static MistakeCode ValueInForceWrong { get; } =
        new(
            "value-in-force-wrong",
            "Compare the value that the test was judged against with what the controller shows and with where it came from."
        );

    /// <summary>The start value was a poor guess.</summary>
    public static MistakeCode StartValueWrong { get; } =
        new(
            "start-value-wrong",
            "Compare the value that the test was judged against with what the controller shows and with where it came from."
        );

    /// <summary>None of the mistakes that have a name.</summary>
    public static MistakeCode SomethingElse { get; } =
        new("something-else", "Go through the test step by step as it was done, and do it once more with somebody watching.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MistakeCode> All { get; } = [.. MistakeCatalog.All.SelectMany(mistake => mistake.Codes).Distinct()];
}
