from enum import Enum

class DisplacementOfElement_unit(str, Enum):
    L = "L",
    M3 = "m3",
    BuUs = "bu-us",
    BuImp = "bu-imp",
    Ft3 = "ft3",

