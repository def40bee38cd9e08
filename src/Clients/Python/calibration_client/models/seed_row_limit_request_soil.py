from enum import Enum

class SeedRowLimitRequest_soil(str, Enum):
    Light = "light",
    Medium = "medium",
    Heavy = "heavy",

