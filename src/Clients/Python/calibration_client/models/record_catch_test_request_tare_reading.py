from enum import Enum

class RecordCatchTestRequest_tareReading(str, Enum):
    Each = "each",
    Shared = "shared",
    Zeroed = "zeroed",

