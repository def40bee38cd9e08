from enum import Enum

class GetUnitsQueryParameterType(str, Enum):
    AsAsked = "as-asked",
    Metric = "metric",
    Us = "us",

