from enum import Enum

class CountPerLengthQuantity_unit(str, Enum):
    M = "/m",
    Ft = "/ft",

