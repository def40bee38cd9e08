from enum import Enum

class ProductOfTest_material(str, Enum):
    FreeFlowing = "free-flowing",
    SmallSeed = "small-seed",
    Dusty = "dusty",

