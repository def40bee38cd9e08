"""A connection that one thread writes to while another reads from it."""

from __future__ import annotations

import io
import selectors
import socket
import ssl
import threading
from collections.abc import Callable
from typing import Any

_Selector = getattr(selectors, "PollSelector", selectors.SelectSelector)
_NOT_READY = (BlockingIOError, ssl.SSLWantReadError, ssl.SSLWantWriteError)


class Duplex(io.RawIOBase):
    """A connected socket, plain or encrypted, for one reading and one writing thread.

    An encrypted connection must not be used by two threads at once, so it is only touched under a lock and never waited
    for inside it.
    """

    def __init__(self, connected: socket.socket, patience: float | None, is_owed: Callable[[], bool]) -> None:
        """Reading gives up after `patience` seconds without data, unless nothing is owed."""
        super().__init__()
        self._socket = connected
        self._patience = patience
        self._is_owed = is_owed
        self._lock = threading.Lock()
        self._users = 2
        connected.setblocking(False)

    def readable(self) -> bool:
        return True

    def readinto(self, buffer: Any) -> int:
        while True:
            with self._lock:
                try:
                    return self._socket.recv_into(buffer)
                except _NOT_READY as reason:
                    wanted = _event_of(reason, selectors.EVENT_READ)
            if not wait_for(self._socket, wanted, self._patience) and self._is_owed():
                raise TimeoutError(f"No data came for {self._patience:g} s.")

    def sendall(self, data: Any) -> None:
        """Sends all of it. Whoever does not read holds this up for ever, or until the connection is shut."""
        rest = memoryview(data)
        while rest:
            with self._lock:
                try:
                    rest = rest[self._socket.send(rest) :]
                    continue
                except _NOT_READY as reason:
                    wanted = _event_of(reason, selectors.EVENT_WRITE)
            wait_for(self._socket, wanted, None)

    def makefile(self, *_: Any, **__: Any) -> io.BufferedReader:
        """A reader, as the HTTP library asks for one."""
        return io.BufferedReader(self)

    def close(self) -> None:
        """Does nothing: the HTTP library closes what the other thread may still be writing to. See `leave`."""

    def shut(self) -> None:
        """Ends the connection for both threads, waking whoever waits for it."""
        try:
            self._socket.shutdown(socket.SHUT_RDWR)
        except OSError:
            # It has ended already.
            pass

    def leave(self) -> None:
        """Said once by each thread when it is done; the last one closes the connection."""
        with self._lock:
            self._users -= 1
            if self._users == 0:
                self._socket.close()


def wait_for(connected: socket.socket, event: int, patience: float | None) -> bool:
    """Waits until a socket can be read or written; false when that takes longer than `patience` seconds."""
    with _Selector() as selector:
        selector.register(connected, event)
        return bool(selector.select(patience))


def _event_of(reason: BaseException, usual: int) -> int:
    if isinstance(reason, ssl.SSLWantReadError):
        return selectors.EVENT_READ
    if isinstance(reason, ssl.SSLWantWriteError):
        return selectors.EVENT_WRITE
    return usual
