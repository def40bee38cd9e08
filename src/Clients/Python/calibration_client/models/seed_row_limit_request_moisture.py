from enum import Enum

class SeedRowLimitRequest_moisture(str, Enum):
    Good = "good",
    Dry = "dry",

