from enum import Enum

class ScaleRequest_accuracyClass(str, Enum):
    I = "I",
    II = "II",
    III = "III",
    IIII = "IIII",

