from enum import Enum

class CountPerAreaQuantity_unit(str, Enum):
    M2 = "/m2",
    Ha = "/ha",
    Ft2 = "/ft2",
    Ac = "/ac",

