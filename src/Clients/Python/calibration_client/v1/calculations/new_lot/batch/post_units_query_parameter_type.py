from enum import Enum

class PostUnitsQueryParameterType(str, Enum):
    AsAsked = "as-asked",
    Metric = "metric",
    Us = "us",

