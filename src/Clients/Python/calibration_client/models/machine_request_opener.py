from enum import Enum

class MachineRequest_opener(str, Enum):
    DoubleDisc = "double-disc",
    Disc = "disc",
    Knife = "knife",
    Spoon = "spoon",
    Hoe = "hoe",
    Sweep = "sweep",

