"""The client."""

from .operations import Operations


class CalibrationClient(Operations):
    """The Calibration API: one method for each operation of the contract, by its name there.

    An answer that is not a success is raised as `ApiProblem`. One client can be used by several threads. Close it, or use it
    in a `with` statement, when you are done early; else its connections are closed when it is no longer used.
    """
