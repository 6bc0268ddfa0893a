"""Documents as files. The text itself: ``document``."""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from quailsched.farm.records import Farm
from quailsched.store.document import Document, export_document, read_whole
from quailsched.store.errors import StoreError, told_as_store_error
from quailsched.store.new_files import passing_name, write_synced
from quailsched.store.published import PublishedEntry
from quailsched.store.reading import MAGIC
from quailsched.words import say


def load_document(path: Path) -> Document:
    """What the document at ``path`` holds.

    Raises StoreError if it cannot be read as text, FarmError with every fault of what it says.
    """
    with told_as_store_error(path, say("cannot be read")):
        try:
            data = path.read_bytes()
            if data.startswith(MAGIC):
                reason = say("it is a farm file or another database; a JSON document is needed, such as export writes")
                raise StoreError(say("{path} cannot be read: {reason}.", path=path.name, reason=reason))
            text = data.decode("utf-8")
        except UnicodeDecodeError as error:
            reason = say("it is not UTF-8 text (byte {value} cannot be used)", value=error.start + 1)
            raise StoreError(say("{path} cannot be read: {reason}.", path=path.name, reason=reason)) from error
    return read_whole(text)


def write_document(path: Path, farm: Farm, published: Iterable[PublishedEntry] = ()) -> None:
    """Writes the document of ``farm`` whole, in place of what stood at ``path``. Raises StoreError."""
    beside = passing_name(path)
    with told_as_store_error(path, say("cannot be written")):
        if path.is_dir():
            raise StoreError(say("{path} cannot be written: it is a folder.", path=path.name))
        try:
            write_synced(beside, export_document(farm, published).encode())
            os.replace(beside, path)
        finally:
            beside.unlink(missing_ok=True)
