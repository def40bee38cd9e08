from enum import Enum

class TimeQuantity_unit(str, Enum):
    S = "s",
    Min = "min",
    H = "h",

