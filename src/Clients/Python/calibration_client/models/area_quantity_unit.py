from enum import Enum

class AreaQuantity_unit(str, Enum):
    Ha = "ha",
    M2 = "m2",
    Ac = "ac",
    Ft2 = "ft2",

