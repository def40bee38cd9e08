from enum import Enum

class SeedRowLimitRequest_region(str, Enum):
    Manitoba = "manitoba",
    Saskatchewan = "saskatchewan",
    Alberta = "alberta",
    Kansas = "kansas",
    NorthDakota = "north-dakota",
    SouthDakota = "south-dakota",
    Elsewhere = "elsewhere",

