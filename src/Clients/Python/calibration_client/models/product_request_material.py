from enum import Enum

class ProductRequest_material(str, Enum):
    FreeFlowing = "free-flowing",
    SmallSeed = "small-seed",
    Dusty = "dusty",

