from enum import Enum

class RunOfSensor_direction(str, Enum):
    There = "there",
    Back = "back",

