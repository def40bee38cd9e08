from enum import Enum

class SeedRowOfPlan_crop(str, Enum):
    Wheat = "wheat",
    Barley = "barley",
    Oat = "oat",
    Canola = "canola",
    Corn = "corn",
    Sunflower = "sunflower",
    Soybean = "soybean",
    DryBean = "dry-bean",
    Flax = "flax",
    Pea = "pea",
    Lentil = "lentil",
    Chickpea = "chickpea",
    Other = "other",

