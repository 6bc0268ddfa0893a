"""Writing a file that is given out: whole or not at all."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

from quailsched.store.errors import told_as_store_error
from quailsched.store.new_files import passing_name, write_synced
from quailsched.words import say


def write_whole(path: Path, data: bytes) -> None:
    """Write ``data`` to ``path`` by way of a file beside it. A link stays a link: what it points to is replaced.

    Raises StoreError; what was there stays then.
    """
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
