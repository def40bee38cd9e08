from enum import Enum

class DistanceSensorRequest_meterDrive(str, Enum):
    RateControlled = "rate-controlled",
    GroundDriven = "ground-driven",

