from enum import Enum

class MassQuantity_unit(str, Enum):
    Kg = "kg",
    G = "g",
    T = "t",
    Lb = "lb",
    Oz = "oz",
    TonUs = "ton-us",
    TonUk = "ton-uk",

