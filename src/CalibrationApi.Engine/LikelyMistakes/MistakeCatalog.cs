namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Every kind of mistake that a test is searched for.</summary>
internal static class MistakeCatalog
{
    public static Mistake[] All { get; } =
    [
        new PoundsAsKilograms(),
        new KilogramsAsPounds(),
        new TareNotTakenOff(),
        new TareTakenOffTwice(),
        new TareOfAnotherContainer(),
        new DecimalSlip(),
        new DigitWrong(),
        new CountDoubled(),
        new CountHalved(),
        new MeterNotPrimed(),
        new ContainerOverflowed(),
        new TankBridgedOrEmpty(),
        new MeterIsolated(),
        new CatchPointMissed(),
        new HalfOfPointsAsWhole(),
        new ContainerNotEmptied(),
        new CounterNotReset(),
        new ResidueInContainer(),
        new WindOrHand(),
        new OuncesAsDecimals(),
        new PulsesPerRevolutionWrong(),
        new TurnsOfAnotherShaft(),
        new AnotherElement(),
        new AnotherProduct(),
        new ValueInAnotherUnit(),
        new ReferenceWrong(),
        new SomethingElse(),
    ];
}
