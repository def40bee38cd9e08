"""Ids for records."""

import secrets
import time
import uuid


def new_id() -> str:
    """A new id for a record: a UUID of version 7 (RFC 9562), which sorts by the time when it was made.

    A record sent with an id of your own can be sent again at any time, even days later, and is stored once.
    """
    milliseconds = time.time_ns() // 1_000_000
    return str(uuid.UUID(int=milliseconds << 80 | 0x7 << 76 | secrets.randbits(12) << 64 | 0b10 << 62 | secrets.randbits(62)))
