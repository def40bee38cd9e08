from enum import Enum

class CatchTestRequest_ruledOutMistakes(str, Enum):
    PoundsAsKilograms = "pounds-as-kilograms",
    KilogramsAsPounds = "kilograms-as-pounds",
    TareNotTakenOff = "tare-not-taken-off",
    TareTakenOffTwice = "tare-taken-off-twice",
    TareOfAnotherContainer = "tare-of-another-container",
    DecimalSlip = "decimal-slip",
    CountDoubled = "count-doubled",
    CountHalved = "count-halved",
    MeterNotPrimed = "meter-not-primed",
    ContainerOverflowed = "container-overflowed",
    TankBridgedOrEmpty = "tank-bridged-or-empty",
    MeterIsolated = "meter-isolated",
    CatchPointMissed = "catch-point-missed",
    AnotherElement = "another-element",
    AnotherProduct = "another-product",
    ValueInForceWrong = "value-in-force-wrong",
    StartValueWrong = "start-value-wrong",
    SomethingElse = "something-else",

