from enum import Enum

class ScaleOfTest_accuracyClass(str, Enum):
    I = "I",
    II = "II",
    III = "III",
    IIII = "IIII",

