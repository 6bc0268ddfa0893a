"""What can go wrong with a file, as a sentence for the keeper."""

from __future__ import annotations

import errno
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from quailsched.farm.faults import FarmError
from quailsched.words import marked, say

_OF_SQLITE: Final = {
    sqlite3.SQLITE_FULL: marked("the disk is full"),
    sqlite3.SQLITE_READONLY: marked("the file or its folder may not be written to"),
    sqlite3.SQLITE_BUSY: marked("another program is writing to it; try again when that has finished"),
    sqlite3.SQLITE_LOCKED: marked("another program is writing to it; try again when that has finished"),
    sqlite3.SQLITE_CANTOPEN: marked("it cannot be opened; it may have been moved or its folder may not be written to"),
    sqlite3.SQLITE_IOERR: marked("the disk does not read or write as it should, or is full"),
    sqlite3.SQLITE_CORRUPT: marked("the file is damaged"),
    sqlite3.SQLITE_NOTADB: marked("the file is damaged"),
}
_OF_SYSTEM: Final = {
    errno.ENOSPC: marked("the disk is full"),
    errno.EDQUOT: marked("the disk quota is used up"),
    errno.EACCES: marked("the file or its folder may not be read or written to"),
    errno.EPERM: marked("the file or its folder may not be read or written to"),
    errno.EROFS: marked("the disk may not be written to"),
    errno.ENOENT: marked("there is no such file or folder"),
    errno.ENOTDIR: marked("its folder is not a folder"),
    errno.EISDIR: marked("it is a folder"),
    errno.EEXIST: marked("a file of that name is there already"),
    errno.ENAMETOOLONG: marked("the name is too long"),
}
_KNOWN: Final = (sqlite3.Error, OSError, ValueError, OverflowError, FarmError)


class StoreError(Exception):
    """A file that cannot be opened, read or written, and why: one sentence. What was saved stays saved."""


def reason_of(error: BaseException) -> str:
    """Why, in words; SQLAlchemy's errors carry the one of SQLite as ``orig``."""
    cause = getattr(error, "orig", None) or error
    if isinstance(cause, sqlite3.Error):
        code = getattr(cause, "sqlite_errorcode", None)
        if code is not None and code & 0xFF in _OF_SQLITE:
            return say(_OF_SQLITE[code & 0xFF])
    if isinstance(cause, OSError) and cause.errno in _OF_SYSTEM:
        return say(_OF_SYSTEM[cause.errno])
    return " ".join(str(cause).split()) or type(cause).__name__


@contextmanager
def told_as_store_error(path: Path, failure: str) -> Iterator[None]:
    """Turns what files, SQLite and bad values raise into a StoreError; ``failure`` is the verb.

    Anything else is a fault of the program and goes on as it is.
    """
    try:
        yield
    except StoreError:
        raise
    except Exception as error:
        if isinstance(error, _KNOWN) or hasattr(error, "orig"):
            raise StoreError(f"{path.name} {failure}: {reason_of(error)}.") from error
        raise
