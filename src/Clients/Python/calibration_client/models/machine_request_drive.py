from enum import Enum

class MachineRequest_drive(str, Enum):
    Separate = "separate",
    SharedShaft = "shared-shaft",

