from enum import Enum

class SpeedQuantity_unit(str, Enum):
    KmH = "km/h",
    MS = "m/s",
    MiH = "mi/h",

