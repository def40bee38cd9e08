from enum import Enum

class VolumePerTimeQuantity_unit(str, Enum):
    M3H = "m3/h",
    M3Min = "m3/min",
    LS = "L/s",
    Ft3Min = "ft3/min",

