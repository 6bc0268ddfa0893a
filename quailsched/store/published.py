"""What the outside world holds on to: the calendar entries that were given out, with their revisions."""

from __future__ import annotations

from datetime import datetime
from typing import Protocol

from quailsched.quick import dataclass


@dataclass(frozen=True, slots=True)
class Published:
    """One calendar entry as last given out: the hash of its content, its revision number and moment (UTC)."""

    uid: str
    content: str
    sequence: int
    revised: datetime


class PublishedEntry(Protocol):
    """Anything with the same fields, so that the calendar need not know the store."""

    @property
    def uid(self) -> str: ...
    @property
    def content(self) -> str: ...
    @property
    def sequence(self) -> int: ...
    @property
    def revised(self) -> datetime: ...


def published_of(entry: PublishedEntry) -> Published:
    """The store's own copy of an entry."""
    return Published(entry.uid, entry.content, entry.sequence, entry.revised)
