from enum import Enum

class PulsesPerRevolutionQuantity_unit(str, Enum):
    PulsesRev = "pulses/rev",

