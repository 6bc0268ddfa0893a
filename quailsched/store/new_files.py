"""How a file comes to be: whole under a passing name first, then under its own, never over another one."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path
from secrets import token_hex

_STEM_BYTES = 100  # names of more than 255 bytes are refused by most disks


def short(name: str) -> str:
    """The start of ``name``, short enough to stand within another name."""
    return name.encode(errors="replace")[:_STEM_BYTES].decode(errors="ignore")


def passing_name(path: Path) -> Path:
    """A name beside ``path`` that nothing else has."""
    return path.with_name(f".{short(path.name)}.{token_hex(4)}.new")


def write_synced(path: Path, data: bytes) -> None:
    """Writes a new file and has it on the disk when it returns. Raises OSError, FileExistsError too."""
    with path.open("xb") as file:
        file.write(data)
        file.flush()
        os.fsync(file.fileno())


def give_name(beside: Path, path: Path) -> None:
    """Like a rename, but raises FileExistsError rather than take the place of a file."""
    try:
        os.link(beside, path)
    except FileExistsError:
        raise
    except OSError:  # a disk without hard links (FAT): claim the name, then replace what claims it
        path.touch(exist_ok=False)
        os.replace(beside, path)


def settle_folder(folder: Path) -> None:
    """Has the new name itself written to the disk, where the system can."""
    if os.name != "posix":
        return
    with suppress(OSError):  # some network disks refuse; the file itself is whole by now
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
