"""What can go wrong, as exceptions."""

from __future__ import annotations

import json
import time
from collections.abc import Mapping
from email.utils import parsedate_to_datetime
from typing import Any, TypeGuard, cast

from .schema import Problem, ProblemError


class ApiProblem(Exception):
    """The service refused a request or failed. Decide by `code`; show `sentence`."""

    status: int
    """The HTTP status."""

    errors: list[ProblemError]
    """Every error found, each with its place, code and sentence. Empty when something before the service answered."""

    trace_id: str | None
    """Name of the request in the service's log."""

    retry_after: float | None
    """Seconds after which the service wants to be asked again."""

    def __init__(self, status: int, problem: Problem | None = None, retry_after: float | None = None, remark: str = "") -> None:
        told = _message_of(problem) if problem else f"The service answered with status {status} and no explanation."
        super().__init__(f"{told} {remark}".rstrip())
        self.status = status
        self.errors = problem["errors"] if problem else []
        self.trace_id = problem.get("traceId") if problem else None
        self.retry_after = retry_after

    @property
    def code(self) -> str | None:
        """Stable code of the first error."""
        return self.errors[0]["code"] if self.errors else None

    @property
    def pointer(self) -> str | None:
        """Where in the body the first error is, as a JSON pointer such as `#/catches/0/net`."""
        return self.errors[0].get("pointer") if self.errors else None

    @property
    def sentence(self) -> str:
        """What is wrong and what to do about it."""
        return self.errors[0]["detail"] if self.errors else str(self)


class VersionConflict(ApiProblem):
    """The record was changed since it was read (status 412). Read it again, make the change anew, and replace that revision."""


class NoAnswer(ConnectionError):
    """The service could not be reached, or the connection broke before the whole answer was there."""

    perhaps_done: bool
    """The request had been sent, so the service may have carried it out."""

    def __init__(self, message: str, perhaps_done: bool) -> None:
        super().__init__(message)
        self.perhaps_done = perhaps_done


class IncompleteBatch(ConnectionError):
    """The answers of a batch broke off. Those that came are good."""

    answered: int
    """How many questions were answered. Send those behind them again."""

    def __init__(self, answered: int, taken: int) -> None:
        super().__init__(
            f"The answers broke off after {answered} of the {taken} questions taken so far. "
            f"The answers that came are good; send the questions from number {answered + 1} on again."
        )
        self.answered = answered


def problem_of(status: int, headers: Mapping[str, str], body: bytes, longest_pause: float) -> ApiProblem:
    """The problem that an answer tells of."""
    kind = VersionConflict if status == 412 else ApiProblem
    pause = seconds_until_retry(headers)
    remark = ""
    if pause is not None and pause > longest_pause:
        remark = f"It asks to wait {pause:.0f} s before the next request; this client waits {longest_pause:.0f} s at most."
    elif 300 <= status < 400 and "Location" in headers:
        remark = f"It leads to {headers['Location']}; give the client that address."
    try:
        problem: Any = json.loads(body)
    except ValueError:
        problem = None
    return kind(status, problem if _is_problem(problem) else None, pause, remark)


def seconds_until_retry(headers: Mapping[str, str]) -> float | None:
    """What Retry-After says, in seconds; it is a number of them or a date."""
    text = headers.get("Retry-After")
    if text is None:
        return None
    if text.isdecimal():
        return float(text)
    try:
        return max(0.0, parsedate_to_datetime(text).timestamp() - time.time())
    except ValueError:
        return None


def _is_problem(body: object) -> TypeGuard[Problem]:
    return isinstance(body, dict) and "detail" in body and isinstance(cast("dict[str, object]", body).get("errors"), list)


def _message_of(problem: Problem) -> str:
    sentences = [problem["detail"]]
    for error in problem["errors"]:
        if error["detail"] != problem["detail"]:
            place = error.get("pointer") or error.get("parameter") or error.get("header")
            sentences.append(f"{place}: {error['detail']}" if place else error["detail"])
    return " ".join(sentences)
