from enum import Enum

class SeedRowOfPlan_soil(str, Enum):
    Light = "light",
    Medium = "medium",
    Heavy = "heavy",

