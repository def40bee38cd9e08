from enum import Enum

class CountPerMassQuantity_unit(str, Enum):
    Kg = "/kg",
    Lb = "/lb",

