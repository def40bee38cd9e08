from enum import Enum

class SeedRowLimitRequest_opener(str, Enum):
    DoubleDisc = "double-disc",
    Disc = "disc",
    Knife = "knife",
    Spoon = "spoon",
    Hoe = "hoe",
    Sweep = "sweep",

