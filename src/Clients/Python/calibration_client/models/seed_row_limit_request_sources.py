from enum import Enum

class SeedRowLimitRequest_sources(str, Enum):
    CCC20 = "CCC-20",
    CCCSP = "CCC-SP",
    KSUCORN = "KSU-CORN",
    KSUWHEAT = "KSU-WHEAT",
    MBDRY = "MB-DRY",
    MBSBU = "MB-SBU",
    MBSBU2 = "MB-SBU2",
    MBSOY = "MB-SOY",
    MPSGPEA = "MPSG-PEA",
    NDSUCPR = "NDSU-CPR",
    NDSUFLAX = "NDSU-FLAX",
    SASKFLAX = "SASKFLAX",
    SDSUDRY = "SDSU-DRY",
    SKCANOLA = "SK-CANOLA",
    USASKPULSE = "USASK-PULSE",

