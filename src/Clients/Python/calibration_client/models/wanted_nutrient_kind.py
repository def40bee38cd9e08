from enum import Enum

class WantedNutrient_kind(str, Enum):
    AtLeast = "at-least",
    Exactly = "exactly",
    AtMost = "at-most",

