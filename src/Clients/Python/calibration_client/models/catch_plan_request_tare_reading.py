from enum import Enum

class CatchPlanRequest_tareReading(str, Enum):
    Each = "each",
    Shared = "shared",
    Zeroed = "zeroed",

