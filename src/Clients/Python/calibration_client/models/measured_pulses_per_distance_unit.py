from enum import Enum

class MeasuredPulsesPerDistance_unit(str, Enum):
    Pulses100m = "pulses/100m",

