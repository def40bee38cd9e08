"""Waiting for changes."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from .problems import ApiProblem, NoAnswer
from .retries import Retries, back_off

if TYPE_CHECKING:
    from .schema import ChangeItem, ChangePage


class ChangeFeed:
    """Waits for changes, one request after another, without end: iterate over it."""

    after: str | None
    """The cursor behind the change that was handed out last. Store it together with what you did with that change, and give it to
    `follow_changes` after a restart: each change comes once. None before the first answer of a feed from the beginning.
    """

    def __init__(self, read: Callable[[str | None], ChangePage], retries: Retries, after: str | None) -> None:
        """`read` reads the page after a cursor, waiting for something to be there."""
        self._read = read
        self._retries = retries
        self.after = after

    def __iter__(self) -> Iterator[ChangeItem]:
        failures = 0
        while True:
            try:
                page = self._read(self.after)
            except (ApiProblem, NoAnswer) as failure:
                if not _is_passing(failure):
                    raise
                failures += 1
                asked = failure.retry_after if isinstance(failure, ApiProblem) else None
                time.sleep(min(back_off(failures), self._retries.longest_pause) if asked is None else asked)
                continue
            failures = 0
            for change in page["items"]:
                self.after = change["cursor"]
                yield change
            self.after = page["after"]


def _is_passing(failure: ApiProblem | NoAnswer) -> bool:
    # A service that is away, busy or broken comes back; what it refuses, it refuses again.
    return isinstance(failure, NoAnswer) or failure.status >= 500 or failure.status in (408, 429)
