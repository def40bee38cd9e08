"""HTTP to one service: connections that are used again, redirections, and the key that only the service sees."""

from __future__ import annotations

import http.client
import json
import re
import selectors
import ssl
from collections import deque
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, cast
from urllib.parse import SplitResult, urljoin, urlsplit

from .duplex import wait_for
from .problems import NoAnswer

_MOST_REDIRECTIONS = 5
_MOST_IDLE = 8


@dataclass(frozen=True)
class Request:
    """A request below the address of the service."""

    method: str
    target: str
    headers: Mapping[str, str]
    body: bytes | None = None
    repeatable: bool = False
    """Doing it twice is as good as once."""


@dataclass(frozen=True)
class Answer:
    """An answer that was read whole."""

    status: int
    headers: Mapping[str, str]
    body: bytes

    def discard(self) -> None:
        """Nothing is left to be read."""

    @property
    def text(self) -> str:
        return self.body.decode()

    def json(self) -> Any:
        return json.loads(self.body)


class Transport:
    """Sends requests to a service and to wherever it leads."""

    def __init__(
        self, address: str, key: str | None, headers: Mapping[str, str], timeout: float | None, tls: ssl.SSLContext | None
    ) -> None:
        self._address = address.rstrip("/")
        self._service = urlsplit(self._address)
        if self._service.scheme not in ("http", "https") or not self._service.hostname or "@" in self._service.netloc:
            raise ValueError("The address of the service has to be like http://localhost:5000 or https://calibration.example/path.")
        self._headers = dict(headers)
        self._show = key_shower(self._service, key)
        self._tls = tls
        self._idle: deque[http.client.HTTPConnection] = deque()
        self.timeout = timeout

    def send(self, request: Request) -> Answer:
        """Sends a request once and follows where it is led."""
        url = f"{self._address}{request.target}"
        # What is not only read keeps its method and body, so it goes only where that is what is asked for.
        followed = (301, 302, 303, 307, 308) if request.method == "GET" else (307, 308)
        led = 0
        while True:
            answer = self._exchange(urlsplit(url), request)
            following = urljoin(url, answer.headers.get("Location", ""))
            if answer.status not in followed or led == _MOST_REDIRECTIONS or urlsplit(following).scheme not in ("http", "https"):
                return answer
            url = following
            led += 1

    def connected(self, target: str) -> tuple[http.client.HTTPConnection, SplitResult]:
        """A connection of its own to the service, and the address of a request."""
        url = urlsplit(f"{self._address}{target}")
        connection = self._fresh(url)
        self._connect(connection, url)
        return connection, url

    def send_head(
        self, connection: http.client.HTTPConnection, url: SplitResult, request: Request, body: bytes | None = None
    ) -> None:
        """Sends all of a request but a body that follows by the piece."""
        # Elsewhere nobody has to know what the caller tells the service.
        headers = {**(self._headers if origin_of(url) == origin_of(self._service) else {}), **request.headers}
        self._show(url, headers)
        if "Transfer-Encoding" not in headers and (body is not None or request.method == "POST"):
            headers["Content-Length"] = str(len(body or b""))
        connection.putrequest(request.method, (url.path or "/") + (f"?{url.query}" if url.query else ""))
        for name, value in headers.items():
            connection.putheader(name, value)
        connection.endheaders(body)

    def close(self) -> None:
        """Closes the connections that nobody uses."""
        while self._idle:
            self._idle.pop().close()

    def _exchange(self, url: SplitResult, request: Request) -> Answer:
        connection = self._take(url, request)
        if connection.sock is None:
            self._connect(connection, url)
        try:
            self.send_head(connection, url, request, request.body)
            response = connection.getresponse()
            answer = Answer(response.status, cast("Mapping[str, str]", response.headers), response.read())
        except (OSError, http.client.HTTPException) as failure:
            connection.close()
            lost = f"The connection to {_name_of(url)} broke before the answer was there: {_reason(failure)}"
            raise NoAnswer(lost, perhaps_done=True) from failure
        except BaseException:
            connection.close()
            raise
        self._put_back(connection, url)
        return answer

    def _connect(self, connection: http.client.HTTPConnection, url: SplitResult) -> None:
        try:
            connection.connect()
        except ssl.SSLCertVerificationError:
            # Trying again would not make it any truer.
            connection.close()
            raise
        except (OSError, http.client.HTTPException) as failure:
            connection.close()
            raise NoAnswer(f"The service at {_name_of(url)} cannot be reached: {_reason(failure)}", perhaps_done=False) from failure

    def _take(self, url: SplitResult, request: Request) -> http.client.HTTPConnection:
        # A connection that waited may be closed by the other side just now. Then nobody knows whether a request was carried
        # out, so what cannot be repeated gets a new one.
        while request.repeatable and origin_of(url) == origin_of(self._service):
            try:
                connection = self._idle.pop()
            except IndexError:
                break
            # Something to read before anything was asked is the end of the connection.
            if not wait_for(connection.sock, selectors.EVENT_READ, 0):
                return connection
            connection.close()
        return self._fresh(url)

    def _put_back(self, connection: http.client.HTTPConnection, url: SplitResult) -> None:
        if connection.sock is not None and origin_of(url) == origin_of(self._service) and len(self._idle) < _MOST_IDLE:
            self._idle.append(connection)
        else:
            connection.close()

    def _fresh(self, url: SplitResult) -> http.client.HTTPConnection:
        host = url.hostname or ""
        if url.scheme == "https":
            return http.client.HTTPSConnection(host, url.port, timeout=self.timeout, context=self._tls or ssl.create_default_context())
        return http.client.HTTPConnection(host, url.port, timeout=self.timeout)


def origin_of(url: SplitResult) -> tuple[str, str | None, int | None]:
    """Who is asked at an address."""
    return url.scheme, url.hostname, url.port or {"http": 80, "https": 443}.get(url.scheme)


def key_shower(service: SplitResult, key: str | None) -> Callable[[SplitResult, dict[str, str]], None]:
    """Shows the caller's key to the service, and to nobody else: a redirection may lead anywhere."""
    # Left to the header, a key read with the line break behind it would stand in the message of an error.
    if key is not None and not re.fullmatch("[!-~]+", key):
        raise ValueError(
            "The key is empty, or holds a space, a line break or another letter that no key has. "
            "Check that it was read whole and without what stands around it."
        )

    def show(url: SplitResult, headers: dict[str, str]) -> None:
        belongs = origin_of(url) == origin_of(service) and url.path.startswith(f"{service.path}/") and ".." not in url.path.split("/")
        if key is not None and belongs and not any(name.lower() == "authorization" for name in headers):
            headers["Authorization"] = f"Bearer {key}"

    return show


def encoded(body: Any) -> bytes:
    """A body as JSON."""
    return json.dumps(body, ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode()


def _name_of(url: SplitResult) -> str:
    return f"{url.scheme}://{url.netloc}"


def _reason(failure: Exception) -> str:
    return str(failure) or type(failure).__name__
