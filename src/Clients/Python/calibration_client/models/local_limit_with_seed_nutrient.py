from enum import Enum

class LocalLimitWithSeed_nutrient(str, Enum):
    Nitrogen = "nitrogen",
    UreaNitrogen = "urea-nitrogen",
    UreaAndSulfateNitrogen = "urea-and-sulfate-nitrogen",
    NitrogenBesidePhosphates = "nitrogen-beside-phosphates",
    Phosphate = "phosphate",
    Potash = "potash",
    NitrogenPlusPotash = "nitrogen-plus-potash",
    Sulfur = "sulfur",
    AllNutrients = "all-nutrients",

