from enum import Enum

class PriorOfShare_reading(str, Enum):
    Survival = "survival",
    Emergence = "emergence",

