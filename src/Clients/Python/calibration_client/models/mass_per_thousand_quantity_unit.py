from enum import Enum

class MassPerThousandQuantity_unit(str, Enum):
    G1000 = "g/1000",

