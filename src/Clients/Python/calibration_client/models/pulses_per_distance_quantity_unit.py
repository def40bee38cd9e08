from enum import Enum

class PulsesPerDistanceQuantity_unit(str, Enum):
    Pulses100m = "pulses/100m",

