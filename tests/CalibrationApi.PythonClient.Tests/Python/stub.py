"""A service that answers what a test tells it to, and remembers what it was asked."""

from __future__ import annotations

import contextlib
import json
import os
import socket
import ssl
import threading
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

from calibration_client import CalibrationClient, Retries

QUICK = Retries(longest_pause=0.001)


class Asked:
    """A request that came."""

    def __init__(self, handler, body):
        self.method, self.target, self.headers, self.body = handler.command, handler.path, handler.headers, body
        self.connection = handler.client_address


class Handler(BaseHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True

    def answer(self):
        stub = self.server.stub
        with stub.lock:
            chosen = stub.answers[min(len(stub.asked), len(stub.answers) - 1)]
            asked = Asked(self, b"")
            stub.asked.append(asked)
        if getattr(chosen, "reads", True):
            is_cut = "Transfer-Encoding" in self.headers
            asked.body = b"".join(pieces_of(self)) if is_cut else self.rfile.read(int(self.headers.get("Content-Length", 0)))
        # A client that goes away is what some tests are about.
        with contextlib.suppress(ConnectionError):
            chosen(self)

    do_GET = do_POST = do_PUT = answer

    def log_message(self, format, *args):
        pass


def pieces_of(handler):
    """The pieces of a body that is sent in pieces, as they come."""
    while True:
        size = int(handler.rfile.readline(), 16)
        piece = handler.rfile.read(size)
        handler.rfile.readline()
        if size == 0:
            return
        yield piece


def lines_of(handler):
    """The lines of such a body, as they come."""
    rest = b""
    for piece in pieces_of(handler):
        *lines, rest = (rest + piece).split(b"\n")
        yield from lines


class Stub:
    """The service; each answer is a function for one request to come, the last one answers all that follow."""

    def __init__(self, *answers, encrypted=False):
        self.answers, self.asked, self.lock = answers, [], threading.Lock()
        self._server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self._server.daemon_threads = True
        self._server.handle_error = lambda *_: None
        self._server.stub = self
        scheme = "http"
        if encrypted:
            scheme = "https"
            context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
            context.load_cert_chain(os.environ["CALIBRATION_TEST_CERTIFICATE"])
            self._server.socket = context.wrap_socket(self._server.socket, server_side=True)
        self.address = f"{scheme}://127.0.0.1:{self._server.server_address[1]}"

    def __enter__(self):
        threading.Thread(target=self._server.serve_forever, args=(0.01,), daemon=True).start()
        return self

    def __exit__(self, *_):
        self._server.shutdown()
        self._server.server_close()


@contextlib.contextmanager
def against(*answers, encrypted=False, **options):
    """A client of a service with these answers, and what that service is asked."""
    with Stub(*answers, encrypted=encrypted) as stub, CalibrationClient(stub.address, **{"retries": QUICK, **options}) as api:
        yield api, stub.asked


def json_answer(status, body, headers=None):
    """Answers with JSON."""
    media = "application/json" if status < 400 else "application/problem+json"
    return raw(status, json.dumps(body).encode(), {"Content-Type": media, **(headers or {})})


def raw(status, body, headers=None):
    """Answers with anything."""

    def answer(handler):
        handler.send_response(status)
        for name, value in (headers or {}).items():
            handler.send_header(name, value)
        if status != 304:
            handler.send_header("Content-Length", str(len(body)))
        handler.end_headers()
        handler.wfile.write(body)

    return answer


def cut(handler):
    """Breaks the connection off without an answer."""
    handler.close_connection = True
    handler.connection.shutdown(socket.SHUT_RDWR)


def problem(status, code, detail="It cannot be done."):
    """A problem as the service tells it."""
    errors = [{"code": code, "detail": detail}]
    return {"type": "about:blank", "title": "Refused", "status": status, "detail": detail, "traceId": "trace", "errors": errors}
