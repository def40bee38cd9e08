from enum import Enum

class PressureQuantity_unit(str, Enum):
    KPa = "kPa",
    Mbar = "mbar",
    Psi = "psi",
    InH2O = "inH2O",

