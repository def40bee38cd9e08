from enum import Enum

class ShareOfNutrient_nutrient(str, Enum):
    N = "N",
    P2O5 = "P2O5",
    P = "P",
    K2O = "K2O",
    K = "K",
    S = "S",
    SO4S = "SO4-S",
    SO3 = "SO3",
    SO4 = "SO4",

