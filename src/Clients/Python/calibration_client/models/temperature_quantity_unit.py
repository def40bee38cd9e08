from enum import Enum

class TemperatureQuantity_unit(str, Enum):
    DegC = "degC",
    DegF = "degF",

