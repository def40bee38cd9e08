from enum import Enum

class ExpectedRatio_unit(str, Enum):
    Percent = "%",
    One = "1",
    Ppm = "ppm",

