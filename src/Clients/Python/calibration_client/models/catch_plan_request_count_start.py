from enum import Enum

class CatchPlanRequest_countStart(str, Enum):
    Free = "free",
    OnEdge = "on-edge",

