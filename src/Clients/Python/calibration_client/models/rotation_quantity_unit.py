from enum import Enum

class RotationQuantity_unit(str, Enum):
    Rpm = "rpm",
    RevS = "rev/s",

