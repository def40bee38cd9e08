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
        new CountDoubled(),
        new CountHalved(),
        new MeterNotPrimed(),
        new ContainerOverflowed(),
        new TankBridgedOrEmpty(),
        new MeterIsolated(),
        new CatchPointMissed(),
        new AnotherElement(),
        new AnotherProduct(),
        new ReferenceWrong(),
        new SomethingElse(),
    ];
}
