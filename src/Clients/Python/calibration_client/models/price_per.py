from enum import Enum

class Price_per(str, Enum):
    Kg = "kg",
    G = "g",
    T = "t",
    Lb = "lb",
    Oz = "oz",
    TonUs = "ton-us",
    TonUk = "ton-uk",

