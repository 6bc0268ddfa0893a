"""What may be replaced by a file that we give out: a file of its own sort, never a farm or somebody's notes."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final, NamedTuple

from quailsched.session.faults import StoreError
from quailsched.store.document import FORMAT
from quailsched.words import marked, say


class Sort(NamedTuple):
    """A sort of file, in words and by how it begins."""

    words: str
    beginning: re.Pattern[bytes]


CALENDAR: Final = Sort("calendar", re.compile(rb"\s*BEGIN:VCALENDAR"))
# Export writes the format first. Another JSON file may be somebody's only copy of something.
DOCUMENT: Final = Sort(marked("exported farm"), re.compile(rb'\s*\{\s*"format"\s*:\s*"%s"' % FORMAT.encode()))
# Another PDF or picture may be somebody's only copy. A PDF names its maker in two bytes a letter.
PICTURE: Final = Sort(
    marked("page or picture by Quailsched"),
    re.compile(
        rb"(%PDF-|\x89PNG|<\?xml).*(Quailsched|" + re.escape("Quailsched".encode("utf-16-be")) + rb")", re.DOTALL
    ),
)
_ENOUGH_BYTES = 2048  # before its maker a PDF has its title, with the names of a farm and a trial


def require_replaceable(path: Path, sort: Sort) -> None:
    """Nothing if ``path`` is free, empty or holds a file of this sort; else raises StoreError.

    A path that cannot even be looked at is left to whoever writes to it.
    """
    try:
        if path.is_dir():
            raise StoreError(say("{path} cannot be written: it is a folder.", path=path))
        if not path.exists():
            return
        if not path.is_file():  # a device would be replaced by a plain file
            raise StoreError(say("{path} cannot be written: it is no plain file.", path=path))
        with path.open("rb") as file:
            start = file.read(_ENOUGH_BYTES)
    except (OSError, ValueError):
        return
    if start and not sort.beginning.match(start):
        raise StoreError(
            say(
                "{path} is there already, is no {words}, and was left as it is; another file name is accepted.",
                path=path.name,
                words=say(sort.words),
            )
        )
