from enum import Enum

class MeterOfPlan_material(str, Enum):
    FreeFlowing = "free-flowing",
    SmallSeed = "small-seed",
    Dusty = "dusty",

