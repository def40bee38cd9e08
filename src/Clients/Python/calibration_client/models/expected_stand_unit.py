from enum import Enum

class ExpectedStand_unit(str, Enum):
    M2 = "/m2",
    Ha = "/ha",
    Ft2 = "/ft2",
    Ac = "/ac",

