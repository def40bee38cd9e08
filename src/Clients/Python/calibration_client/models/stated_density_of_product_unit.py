from enum import Enum

class StatedDensityOfProduct_unit(str, Enum):
    KgHL = "kg/hL",
    KgM3 = "kg/m3",
    KgL = "kg/L",
    LbFt3 = "lb/ft3",
    LbBuUs = "lb/bu-us",
    LbBuImp = "lb/bu-imp",

