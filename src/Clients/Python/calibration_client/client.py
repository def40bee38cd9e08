"""The client."""

from __future__ import annotations

from typing import Literal

from .changes import ChangeFeed
from .operations import Operations

_LONGEST_WAIT = 20.0


class CalibrationClient(Operations):
    """The Calibration API: one method for each operation of the contract, by its name there.

    An answer that is not a success is raised as `ApiProblem`. One client can be used by several threads. Close it, or use it
    in a `with` statement, when you are done early; else its connections are closed when it is no longer used.
    """

    def follow_changes(
        self,
        *,
        after: str | None = None,
        kind: Literal["machine", "product", "lot", "scale", "container", "plan", "catch-test", "adoption", "scale-check"] | None = None,
        machine: str | None = None,
        limit: int | None = None,
    ) -> ChangeFeed:
        """Hands out every stored change, each once and in the order in which it was stored, and waits for the next ones without end.

        A service that is away for a while is asked again from the same place. Leave the loop to end it.

        Args:
            after: Go on behind this cursor: `after` of an earlier feed, or the cursor of a change. From the first change without it.
            kind: Only records of this kind.
            machine: Only what is about the machine with this id, or was until the change.
            limit: Changes on a page, 1 to 1000.
        """
        timeout = self._transport.timeout
        wait = f"{_LONGEST_WAIT if timeout is None else min(_LONGEST_WAIT, timeout / 2):.0f}s"
        return ChangeFeed(
            lambda cursor: self.list_changes(after=cursor, wait=wait, kind=kind, machine=machine, limit=limit), self._retries, after
        )
