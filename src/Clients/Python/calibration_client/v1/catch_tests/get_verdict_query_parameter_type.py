from enum import Enum

class GetVerdictQueryParameterType(str, Enum):
    Investigate = "investigate",
    Repeat = "repeat",
    Keep = "keep",
    Adopt = "adopt",
    Passed = "passed",
    Failed = "failed",

