from enum import Enum

class MassPerTimeQuantity_unit(str, Enum):
    KgMin = "kg/min",
    GS = "g/s",
    LbMin = "lb/min",

