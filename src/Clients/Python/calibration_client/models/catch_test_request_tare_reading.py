from enum import Enum

class CatchTestRequest_tareReading(str, Enum):
    Each = "each",
    Shared = "shared",
    Zeroed = "zeroed",

