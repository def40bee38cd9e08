from enum import Enum

class EntryOfSensor_form(str, Enum):
    PulsesPerDistance = "pulses-per-distance",
    DistancePerPulse = "distance-per-pulse",
    WheelCircumference = "wheel-circumference",

