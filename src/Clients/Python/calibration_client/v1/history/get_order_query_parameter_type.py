from enum import Enum

class GetOrderQueryParameterType(str, Enum):
    NewestFirst = "newest-first",
    OldestFirst = "oldest-first",

