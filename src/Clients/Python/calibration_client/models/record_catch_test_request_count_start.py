from enum import Enum

class RecordCatchTestRequest_countStart(str, Enum):
    Free = "free",
    OnEdge = "on-edge",

