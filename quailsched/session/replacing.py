"""What may be replaced by a file that we give out: a file of its own sort, never a farm or somebody's notes."""

from __future__ import annotations

from pathlib import Path

from quailsched.session.faults import StoreError

CALENDAR = b"BEGIN:VCALENDAR"
DOCUMENT = b"{"
_ENOUGH_BYTES = 64


def require_replaceable(path: Path, begins: bytes) -> None:
    """Nothing if ``path`` is free, empty or holds a file that starts with ``begins``; else raises StoreError.

    A path that cannot even be looked at is left to whoever writes to it.
    """
    try:
        if path.is_dir():
            raise StoreError(f"{path} cannot be written: it is a folder.")
        if not path.exists():
            return
        if not path.is_file():  # a device would be replaced by a plain file
            raise StoreError(f"{path} cannot be written: it is no plain file.")
        with path.open("rb") as file:
            start = file.read(_ENOUGH_BYTES).lstrip()
    except (OSError, ValueError):
        return
    if start and not start.startswith(begins):
        what = "calendar" if begins == CALENDAR else "JSON document"
        raise StoreError(
            f"{path.name} is there already, is no {what}, and was left as it is; another file name is accepted."
        )
