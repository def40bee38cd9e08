from enum import Enum

class MeasuredLength_unit(str, Enum):
    M = "m",
    Cm = "cm",
    Mm = "mm",
    Ft = "ft",
    In_ = "in",

