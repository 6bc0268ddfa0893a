"""Photos that are kept with a farm: copies in a folder beside the farm file, named after it."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from itertools import count
from pathlib import Path
from stat import S_ISREG

from quailsched.farm.faults import FarmError, Fault, field_of
from quailsched.store.errors import told_as_store_error
from quailsched.store.new_files import give_name, passing_name, short, write_synced
from quailsched.words import say

MOST_BYTES = 100 * 1024 * 1024


def photo_folder(farm_file: Path) -> Path:
    """ "Pebble Bank photos" beside "Pebble Bank.quail"; it may not be there yet."""
    return farm_file.with_name(f"{farm_file.stem} photos")


@contextmanager
def kept_photo(farm_file: Path, source: Path) -> Iterator[str]:
    """Copies ``source`` into the folder of photos, for as long as the block does not fail: then the copy goes again.

    Gives the name of the copy, which gets a number where the name is taken. Raises FarmError for what is no file or
    too large, StoreError where it cannot be read or written.
    """
    data = _read(source)
    folder = photo_folder(farm_file)
    with told_as_store_error(folder, say("cannot be written")):
        is_new = not folder.exists()
        folder.mkdir(exist_ok=True)
        path = _put(folder, _plain_name(source), data)
    try:
        yield path.name
    except BaseException:
        with suppress(OSError):
            path.unlink()
            if is_new:
                folder.rmdir()
        raise


def _read(source: Path) -> bytes:
    with told_as_store_error(source, say("cannot be read")):
        status = source.stat()
        is_fit = S_ISREG(status.st_mode) and status.st_size <= MOST_BYTES  # a pipe would never end
        data = source.read_bytes() if is_fit else b""
    if not is_fit:
        accepted = say("a file of up to {most} MB is accepted", most=MOST_BYTES // 1024 // 1024)
        raise FarmError([Fault(field_of(say("photo"), say("file")), source.name, accepted, "file_name")])
    return data


def _put(folder: Path, name: str, data: bytes) -> Path:
    """``data`` under ``name``, or with the first number that is free: "hatch 2.jpg"."""
    beside = passing_name(folder / name)
    try:
        write_synced(beside, data)
        stem, ending = os.path.splitext(name)
        for number in count(1):
            path = folder / (name if number == 1 else f"{stem} {number}{ending}")
            with suppress(FileExistsError):
                give_name(beside, path)
                return path
        raise AssertionError
    finally:
        beside.unlink(missing_ok=True)


def _plain_name(source: Path) -> str:
    """The name of ``source`` as every system can have it, and a farm file can hold it."""
    name = source.name.encode(errors="replace").decode(errors="replace")
    name = "".join("_" if one in '/\\:*?"<>|' or not one.isprintable() else one for one in name)
    stem, ending = os.path.splitext(name)
    return f"{short(stem).strip(' .') or 'photo'}{short(ending)}"
