"""Client of the Calibration API: plan, evaluate and record catch tests of seed and fertilizer meters."""

from .call import Described, Stored
from .changes import ChangeFeed
from .client import CalibrationClient
from .ids import new_id
from .pages import Pages
from .problems import ApiProblem, IncompleteBatch, NoAnswer, VersionConflict
from .quantities import Unit, quantity
from .retries import Retries
from .transport import Answer

__all__ = [
    "Answer",
    "ApiProblem",
    "CalibrationClient",
    "ChangeFeed",
    "Described",
    "IncompleteBatch",
    "NoAnswer",
    "Pages",
    "Retries",
    "Stored",
    "Unit",
    "VersionConflict",
    "new_id",
    "quantity",
]
