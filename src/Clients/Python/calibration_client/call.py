"""What the methods of the operations are made of."""

from __future__ import annotations

import ssl
import weakref
from collections.abc import Generator, Iterable, Mapping
from dataclasses import dataclass
from types import TracebackType
from typing import Any, Generic, TypeVar
from urllib.parse import quote, urlencode

from .batch import run_batch
from .ids import new_id
from .pages import Pages
from .problems import problem_of
from .retries import Retries, with_retries
from .transport import Answer, Request, Transport, encoded

Record = TypeVar("Record")
Body = TypeVar("Body")
Self = TypeVar("Self", bound="Caller")

_CALCULATIONS = "/v1/calculations/"
# What the service keeps itself in a record that can be replaced.
_KEPT_BY_THE_SERVICE = ("revision", "createdAt", "updatedAt")


@dataclass(frozen=True)
class Stored(Generic[Record]):
    """A record and the entity tag of the revision that was read."""

    record: Record

    etag: str
    """Send it back as `if_match` when you replace the record, or as `if_none_match` when you read it again."""

    replayed: bool
    """The record had been stored by an earlier, equal request."""


@dataclass(frozen=True)
class Described(Stored[Record], Generic[Record, Body]):
    """A record that can be replaced."""

    @property
    def editable(self) -> Body:
        """The record without what the service keeps itself: change it and send it back, `{**scale.editable, "retired": True}`."""
        record: Any = self.record
        body: Any = {name: value for name, value in record.items() if name not in _KEPT_BY_THE_SERVICE}
        return body


class Caller:
    """Asks one service, with a key, idempotency keys and retries."""

    def __init__(
        self,
        address: str,
        *,
        key: str | None = None,
        headers: Mapping[str, str] | None = None,
        retries: Retries | None = None,
        timeout: float | None = 100.0,
        tls: ssl.SSLContext | None = None,
    ) -> None:
        """Makes a client of the service at an address, for example `http://localhost:5000`.

        Args:
            key: The key that the service asks for. It goes to the address of the service and nowhere else. A service without
                keys takes requests from its own machine only.
            headers: Headers to send with every request to the service.
            retries: How often to try again when the service is busy or cannot be reached.
            timeout: Longest wait for a connection, and for data on it, in seconds; None waits for ever.
            tls: Which certificates to trust; those that the machine trusts if you give none.
        """
        self._transport = Transport(address, key, headers or {}, timeout, tls)
        self._retries = retries or Retries()
        weakref.finalize(self, self._transport.close)

    def close(self) -> None:
        """Closes the connections that are kept for the next request."""
        self._transport.close()

    def __enter__(self: Self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None) -> None:
        self.close()

    def request(
        self,
        method: str,
        path: str,
        *,
        query: Mapping[str, object] | None = None,
        body: bytes | None = None,
        headers: Mapping[str, str] | None = None,
    ) -> Answer:
        """Asks for anything at the service with the same key, idempotency keys and retries: for other formats than JSON."""
        sent = dict(headers or {})
        if method == "POST" and not path.startswith(_CALCULATIONS) and not any(name.lower() == "idempotency-key" for name in sent):
            sent["Idempotency-Key"] = key_or_new(None)
        answer = self._send(method, path + _query_of(query or {}), sent, body)
        return self._succeeded(answer)

    def _send(self, method: str, target: str, headers: Mapping[str, str], body: bytes | None) -> Answer:
        keyed = any(name.lower() == "idempotency-key" for name in headers)
        # When no answer came, the request may have been carried out. Twice is as good as once for whatever is only read or
        # calculated, and for what carries a key.
        repeatable = method == "GET" or keyed or target.startswith(_CALCULATIONS)
        request = Request(method, target, headers, body, repeatable)
        return with_retries(self._retries, lambda: self._transport.send(request), repeatable=repeatable, keyed=keyed)

    def _succeeded(self, answer: Answer) -> Answer:
        if 200 <= answer.status < 300:
            return answer
        raise problem_of(answer.status, answer.headers, answer.body, self._retries.longest_pause)

    def _ask(
        self,
        method: str,
        path: str,
        id: str | None = None,
        *,
        query: Mapping[str, object] | None = None,
        body: object = None,
        headers: Mapping[str, str | None] | None = None,
    ) -> Answer:
        target = path if id is None else path.replace("{id}", quote(id, safe=""))
        sent = {"Accept": "application/json", **{name: value for name, value in (headers or {}).items() if value is not None}}
        content = None
        if body is not None:
            sent["Content-Type"] = "application/json"
            content = encoded(body)
        answer = self._send(method, target + _query_of(query or {}), sent, content)
        return answer if answer.status == 304 and "If-None-Match" in sent else self._succeeded(answer)

    def _pages(self, path: str, query: Mapping[str, object], id: str | None = None) -> Pages[Any]:
        return Pages(lambda cursor: self._ask("GET", path, id, query={**query, "cursor": cursor}).json())

    def _batch(self, path: str, questions: Iterable[Any], query: Mapping[str, object]) -> Generator[Any, None, None]:
        return run_batch(questions, path + _query_of(query), self._transport, self._retries)


def key_or_new(given: str | None) -> str:
    """A request that stores something has a key; every attempt is the same request, so every attempt has the same key."""
    return f'"{new_id()}"' if given is None else given


def stored(answer: Answer) -> Stored[Any]:
    """The record of an answer."""
    return Stored(*_parts_of(answer))


def described(answer: Answer) -> Described[Any, Any]:
    """The record of an answer, which can be replaced."""
    return Described(*_parts_of(answer))


def _parts_of(answer: Answer) -> tuple[Any, str, bool]:
    return answer.json(), answer.headers.get("ETag", ""), answer.headers.get("Idempotent-Replayed") == "true"


def _query_of(query: Mapping[str, object]) -> str:
    given = {name: str(value).lower() if isinstance(value, bool) else str(value) for name, value in query.items() if value is not None}
    return f"?{urlencode(given, quote_via=quote)}" if given else ""
