from enum import Enum

class RateFromElsewhere_madeBy(str, Enum):
    ExactUnits = "exact-units",
    DivideByTen = "divide-by-ten",

