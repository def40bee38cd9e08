from enum import Enum

class RevolutionsQuantity_unit(str, Enum):
    Rev = "rev",

