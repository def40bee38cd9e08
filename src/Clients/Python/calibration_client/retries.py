"""Trying again when the service is busy or cannot be reached."""

from __future__ import annotations

import random
import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Protocol, TypeVar

from .problems import NoAnswer, seconds_until_retry


@dataclass(frozen=True)
class Retries:
    """How often and how long the client tries again when the service is busy or cannot be reached."""

    attempts: int = 4
    """Attempts in all, the first one included; 1 never tries again."""

    longest_pause: float = 30.0
    """Longest pause between two attempts, in seconds. Asked to wait longer, the client gives up at once."""


class Answering(Protocol):
    """What has to be known of an answer to try again."""

    @property
    def status(self) -> int: ...

    @property
    def headers(self) -> Mapping[str, str]: ...

    def discard(self) -> None:
        """Ends an answer that nobody reads."""


Answer = TypeVar("Answer", bound=Answering)


def with_retries(rules: Retries, send: Callable[[], Answer], *, repeatable: bool, keyed: bool = False, refusable: bool = True) -> Answer:
    """Sends again while the service is busy or, if that cannot do a thing twice, gives no answer.

    `repeatable`: doing it twice is as good as once. `keyed`: the request carries an idempotency key. `refusable`: what a busy
    service refused is still there to be sent.
    """
    attempt = 1
    while True:
        is_last = attempt >= rules.attempts
        try:
            answer = send()
        except NoAnswer as failure:
            if is_last or (failure.perhaps_done and not repeatable):
                raise
            pause = min(back_off(attempt), rules.longest_pause)
        else:
            if is_last or not refusable or not _is_busy(answer, keyed):
                return answer
            asked = seconds_until_retry(answer.headers)
            pause = back_off(attempt) if asked is None else asked
            if pause > rules.longest_pause:
                return answer
            answer.discard()
        time.sleep(pause)
        attempt += 1


def _is_busy(answer: Answering, keyed: bool) -> bool:
    # 409 with a time to wait: an earlier attempt with the same key is still being worked on.
    return answer.status in (429, 503) or (answer.status == 409 and keyed and "Retry-After" in answer.headers)


def back_off(attempt: int) -> float:
    """Half a second, one, two; a part of it at random, so that clients that failed together do not come back together."""
    return 0.25 * 2**attempt * random.uniform(0.5, 1)
