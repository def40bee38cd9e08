"""Many questions in one request: they are sent while their answers are read."""

from __future__ import annotations

import http.client
import json
import threading
from collections.abc import Generator, Iterable, Iterator, Mapping
from typing import Any, cast

from .duplex import Duplex
from .problems import IncompleteBatch, NoAnswer, problem_of
from .retries import Retries, with_retries
from .transport import Request, Transport, encoded

# Questions of a list, which are all there already, go out together up to about this many bytes.
_LONGEST_PIECE = 16 * 1024


def run_batch(questions: Iterable[Any], target: str, transport: Transport, retries: Retries) -> Generator[Any, None, None]:
    """Sends questions as lines of JSON and gives their answers as they come, in the same order."""
    # A list can be sent again from its beginning; what is made on the way cannot.
    is_list = isinstance(questions, (list, tuple))
    stream = with_retries(retries, lambda: _Stream(questions, is_list, target, transport), repeatable=is_list, refusable=is_list)
    try:
        if stream.status != 200:
            raise problem_of(stream.status, stream.headers, stream.read(), retries.longest_pause)
        for line in stream.lines():
            answer = json.loads(line)
            stream.answered += 1
            yield answer
    except (OSError, http.client.HTTPException, json.JSONDecodeError) as failure:
        raise stream.failure or IncompleteBatch(stream.answered, stream.taken) from failure
    finally:
        stream.discard()
    if stream.failure:
        raise stream.failure
    if not stream.are_all_taken or stream.answered < stream.taken:
        raise IncompleteBatch(stream.answered, stream.taken)


class _Stream:
    """One request whose body a thread of its own sends, and its answer."""

    def __init__(self, questions: Iterable[Any], is_list: bool, target: str, transport: Transport) -> None:
        self.taken = 0
        self.answered = 0
        self.are_all_taken = False
        # What the questions themselves raised, so that it is not taken for a failure of the network.
        self.failure: Exception | None = None
        self._questions = questions
        self._longest_piece = _LONGEST_PIECE if is_list else 0
        self._is_over = threading.Event()
        headers = {"Content-Type": "application/x-ndjson", "Accept": "application/x-ndjson", "Transfer-Encoding": "chunked"}
        connection, url = transport.connected(target)
        # While every question is answered, the service owes nothing, however long the next question takes.
        self._duplex = Duplex(connection.sock, transport.timeout, lambda: self.are_all_taken or self.taken > self.answered)
        connection.sock = self._duplex
        try:
            transport.send_head(connection, url, Request("POST", target, headers))
            threading.Thread(target=self._write, name="questions of a batch", daemon=True).start()
        except BaseException:
            self._duplex.leave()
            self.discard()
            raise
        try:
            self._response = connection.getresponse()
        except (OSError, http.client.HTTPException) as failure:
            self.discard()
            lost = NoAnswer(f"The connection broke before the first answer was there: {failure}", perhaps_done=True)
            raise self.failure or lost from failure
        except BaseException:
            self.discard()
            raise

    @property
    def status(self) -> int:
        return self._response.status

    @property
    def headers(self) -> Mapping[str, str]:
        return cast("Mapping[str, str]", self._response.headers)

    def read(self) -> bytes:
        return self._response.read()

    def lines(self) -> Iterator[bytes]:
        rest = b""
        while piece := self._response.read1(_LONGEST_PIECE):
            *lines, rest = (rest + piece).split(b"\n")
            yield from filter(bytes.strip, lines)
        if rest.strip():
            yield rest

    def discard(self) -> None:
        """Ends it. The questions are asked for no more, though one that is just being made may take as long as it likes."""
        if not self._is_over.is_set():
            self._is_over.set()
            self._duplex.shut()
            self._duplex.leave()

    def _write(self) -> None:
        try:
            for piece in self._pieces():
                self._duplex.sendall(b"%x\r\n%b\r\n" % (len(piece), piece))
            if self.are_all_taken:
                self._duplex.sendall(b"0\r\n\r\n")
        except OSError:
            # What became of it is seen where the answers are read.
            pass
        finally:
            end = getattr(self._questions, "close", None)
            # A generator has something to clean up; whatever else can be closed is the caller's.
            if end and isinstance(self._questions, Generator):
                end()
            if self.failure:
                self._duplex.shut()
            self._duplex.leave()

    def _pieces(self) -> Iterator[bytes]:
        piece = b""
        for line in self._lines():
            piece += line
            if len(piece) > self._longest_piece:
                yield piece
                piece = b""
        if piece:
            yield piece

    def _lines(self) -> Iterator[bytes]:
        try:
            for question in self._questions:
                if self._is_over.is_set():
                    return
                line = encoded(question) + b"\n"
                self.taken += 1
                yield line
            self.are_all_taken = True
        except Exception as failure:
            self.failure = failure
