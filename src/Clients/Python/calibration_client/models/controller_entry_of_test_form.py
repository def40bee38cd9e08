from enum import Enum

class ControllerEntryOfTest_form(str, Enum):
    MassPerRevolution = "mass-per-revolution",
    MassPerTenRevolutions = "mass-per-ten-revolutions",
    MassPerPulse = "mass-per-pulse",
    VolumePerRevolution = "volume-per-revolution",
    MassPerTime = "mass-per-time",

