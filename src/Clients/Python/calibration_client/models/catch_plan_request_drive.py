from enum import Enum

class CatchPlanRequest_drive(str, Enum):
    Separate = "separate",
    SharedShaft = "shared-shaft",

