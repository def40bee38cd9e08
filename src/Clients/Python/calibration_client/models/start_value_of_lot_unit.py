from enum import Enum

class StartValueOfLot_unit(str, Enum):
    KgRev = "kg/rev",
    GRev = "g/rev",
    LbRev = "lb/rev",
    OzRev = "oz/rev",

