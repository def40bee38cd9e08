from enum import Enum

class SeedingRateRequest_crop(str, Enum):
    Wheat = "wheat",
    Barley = "barley",
    Oat = "oat",
    Rye = "rye",
    Corn = "corn",
    Soybean = "soybean",
    Pea = "pea",
    Lentil = "lentil",
    Chickpea = "chickpea",
    DryBean = "dry-bean",
    Canola = "canola",
    Flax = "flax",
    Sunflower = "sunflower",
    Alfalfa = "alfalfa",
    RedClover = "red-clover",
    Vetch = "vetch",
    Ryegrass = "ryegrass",
    Timothy = "timothy",

