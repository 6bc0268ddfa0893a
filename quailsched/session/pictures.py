"""Giving out a page or a picture as a file: whole or not at all, and never in the place of something else."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

from quailsched.session.replacing import PICTURE, require_replaceable
from quailsched.store.errors import told_as_store_error
from quailsched.store.new_files import passing_name, write_synced
from quailsched.words import say


def give_picture(path: Path, data: bytes) -> None:
    """Write ``data`` to ``path`` by way of a file beside it. A link stays a link: what it points to is replaced.

    Raises StoreError, also where ``path`` holds a file that this program has not made; what was there stays then.
    """
    require_replaceable(path, PICTURE)
    with told_as_store_error(path, say("cannot be written")):
        target = Path(os.path.realpath(path))
        beside = passing_name(target)
        try:
            write_synced(beside, data)
            if target.exists():
                shutil.copymode(target, beside)
            os.replace(beside, target)
        finally:
            beside.unlink(missing_ok=True)
