from enum import Enum

class CatchTestRequest_countStart(str, Enum):
    Free = "free",
    OnEdge = "on-edge",

