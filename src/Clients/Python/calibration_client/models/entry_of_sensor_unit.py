from enum import Enum

class EntryOfSensor_unit(str, Enum):
    M = "m",
    Cm = "cm",
    Mm = "mm",
    Ft = "ft",
    In_ = "in",

