namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The stable codes of likely mistakes.</summary>
public static class MistakeCode
{
    /// <summary>The scale showed pounds and the numbers were entered as kilograms.</summary>
    public const string PoundsAsKilograms = "pounds-as-kilograms";

    /// <summary>The scale showed kilograms and the numbers were entered as pounds.</summary>
    public const string KilogramsAsPounds = "kilograms-as-pounds";

    /// <summary>The empty container is still in the mass.</summary>
    public const string TareNotTakenOff = "tare-not-taken-off";

    /// <summary>The empty container was subtracted from a mass that was net already.</summary>
    public const string TareTakenOffTwice = "tare-taken-off-twice";

    /// <summary>The tare belongs to another container.</summary>
    public const string TareOfAnotherContainer = "tare-of-another-container";

    /// <summary>A decimal point or a digit slipped.</summary>
    public const string DecimalSlip = "decimal-slip";

    /// <summary>The count of revolutions shows twice as many as there were.</summary>
    public const string CountDoubled = "count-doubled";

    /// <summary>The count of revolutions shows half as many as there were.</summary>
    public const string CountHalved = "count-halved";

    /// <summary>The count began before the product flowed.</summary>
    public const string MeterNotPrimed = "meter-not-primed";

    /// <summary>The container ran over.</summary>
    public const string ContainerOverflowed = "container-overflowed";

    /// <summary>The product hung in the tank, or the tank ran empty.</summary>
    public const string TankBridgedOrEmpty = "tank-bridged-or-empty";

    /// <summary>The meter was isolated or stood still part of the time.</summary>
    public const string MeterIsolated = "meter-isolated";

    /// <summary>Another metering element of the machine was fitted.</summary>
    public const string AnotherElement = "another-element";

    /// <summary>Another product of the machine was in the tank.</summary>
    public const string AnotherProduct = "another-product";

    /// <summary>Product from one of the points was not caught.</summary>
    public const string CatchPointMissed = "catch-point-missed";

    /// <summary>Half of the points were caught and sent as the whole meter.</summary>
    public const string HalfOfPointsAsWhole = "half-of-points-as-whole";

    /// <summary>The container was not emptied between catches.</summary>
    public const string ContainerNotEmptied = "container-not-emptied";

    /// <summary>The counter was not set to zero between catches.</summary>
    public const string CounterNotReset = "counter-not-reset";

    /// <summary>Product was left in the container.</summary>
    public const string ResidueInContainer = "residue-in-container";

    /// <summary>Wind or a hand carried part of the container while it was weighed.</summary>
    public const string WindOrHand = "wind-or-hand";

    /// <summary>Ounces were typed as decimals of a pound.</summary>
    public const string OuncesAsDecimals = "ounces-as-decimals";

    /// <summary>Digits changed places, or one is wrong.</summary>
    public const string DigitWrong = "digit-wrong";

    /// <summary>The pulses per revolution are not those of the sensor.</summary>
    public const string PulsesPerRevolutionWrong = "pulses-per-revolution-wrong";

    /// <summary>The turns of another shaft than the meter's were counted.</summary>
    public const string TurnsOfAnotherShaft = "turns-of-another-shaft";

    /// <summary>The value compared with is in the other unit, pounds or kilograms.</summary>
    public const string ValueInAnotherUnit = "value-in-another-unit";

    /// <summary>The value in force is not the number that belongs to this meter and product.</summary>
    public const string ValueInForceWrong = "value-in-force-wrong";

    /// <summary>The start value was a poor guess.</summary>
    public const string StartValueWrong = "start-value-wrong";

    /// <summary>None of the mistakes that have a name.</summary>
    public const string SomethingElse = "something-else";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [.. MistakeCatalog.All.SelectMany(mistake => mistake.Codes).Distinct()];

    /// <summary>The one thing to look at for a code.</summary>
    /// <param name="code">One of <see cref="All"/>.</param>
    /// <exception cref="InvalidOperationException">There is no such code.</exception>
    public static string CheckOf(string code) => MistakeCatalog.All.First(mistake => mistake.Codes.Contains(code)).Check;
}
