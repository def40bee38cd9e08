from enum import Enum

class RateFromElsewhere_unit(str, Enum):
    KgHa = "kg/ha",
    GM2 = "g/m2",
    LbAc = "lb/ac",

