"""Lists that come in pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any, Generic, TypeVar
from urllib.parse import parse_qs, urlsplit

Item = TypeVar("Item")


class Pages(Generic[Item]):
    """A list: iterate over it, and its pages are fetched as they are needed."""

    def __init__(self, read: Callable[[str | None], Any]) -> None:
        """`read` reads the page at a cursor, the first page without one."""
        self._read = read

    def __iter__(self) -> Iterator[Item]:
        for items in self.pages():
            yield from items

    def pages(self) -> Iterator[list[Item]]:
        """The items page by page."""
        cursor: str | None = None
        while True:
            page = self._read(cursor)
            yield page["items"]
            cursor = _cursor_of(page.get("next"))
            if cursor is None:
                return

    def all(self) -> list[Item]:
        """Every item, in one list."""
        return list(self)


def _cursor_of(following: str | None) -> str | None:
    # Only the cursor of the address is used: behind a proxy the service may know itself by another name than its callers.
    return parse_qs(urlsplit(following).query).get("cursor", [None])[0] if following else None
