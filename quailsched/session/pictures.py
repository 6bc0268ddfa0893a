"""Giving out a page or a picture as a file: whole or not at all, and never in the place of something else."""

from __future__ import annotations

from pathlib import Path

from quailsched.session.replacing import PICTURE, require_replaceable
from quailsched.session.whole_files import write_whole


def give_picture(path: Path, data: bytes) -> None:
    """Write ``data`` to ``path``. Raises StoreError, also where ``path`` holds a file that this program has not made;
    what was there stays then."""
    require_replaceable(path, PICTURE)
    write_whole(path, data)
