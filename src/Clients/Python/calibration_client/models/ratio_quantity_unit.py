from enum import Enum

class RatioQuantity_unit(str, Enum):
    Percent = "%",
    One = "1",
    Ppm = "ppm",

