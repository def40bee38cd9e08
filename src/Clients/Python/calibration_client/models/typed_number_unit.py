from enum import Enum

class TypedNumber_unit(str, Enum):
    KgRev = "kg/rev",
    GRev = "g/rev",
    LbRev = "lb/rev",
    OzRev = "oz/rev",
    Kg = "kg",
    G = "g",
    T = "t",
    Lb = "lb",
    Oz = "oz",
    TonUs = "ton-us",
    TonUk = "ton-uk",
    L = "L",
    M3 = "m3",
    BuUs = "bu-us",
    BuImp = "bu-imp",
    Ft3 = "ft3",
    KgMin = "kg/min",
    GS = "g/s",
    LbMin = "lb/min",

