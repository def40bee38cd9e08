from enum import Enum

class MeasuredRatio_unit(str, Enum):
    Percent = "%",
    One = "1",
    Ppm = "ppm",

