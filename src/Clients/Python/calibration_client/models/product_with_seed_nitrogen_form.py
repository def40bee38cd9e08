from enum import Enum

class ProductWithSeed_nitrogenForm(str, Enum):
    Urea = "urea",
    UreaAmmoniumNitrate = "urea-ammonium-nitrate",
    AmmoniumSulfate = "ammonium-sulfate",
    AmmoniumPhosphate = "ammonium-phosphate",
    AmmoniumNitrate = "ammonium-nitrate",
    Other = "other",

