from enum import Enum

class SeedRowOfPlan_moisture(str, Enum):
    Good = "good",
    Dry = "dry",

