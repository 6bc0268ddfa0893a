"""Putting a calendar on the disk, whole or not at all (R15)."""

from __future__ import annotations

import os
import shutil
from errno import EDQUOT, EFBIG, ENOSPC
from pathlib import Path
from secrets import token_hex

from quailsched.calendars.errors import CalendarError
from quailsched.words import say


def write_calendar(path: Path, data: bytes) -> bool:
    """Write ``data`` to ``path``; False if the file holds the same bytes already and was left untouched.

    The bytes go to a file beside it, which then takes its place, so that a reader sees the old calendar or
    the new one. A link stays a link: the file that it points to is replaced. Raises CalendarError if it
    cannot be written; what was there before is still there then.
    """
    try:
        target = Path(os.path.realpath(path))
        _refuse_what_is_no_file(path, target)
        if _holds(target, data):
            return False
        _replace(target, data)
    except (OSError, ValueError) as error:
        raise CalendarError(_sentence(path, error)) from error
    return True


def _refuse_what_is_no_file(path: Path, target: Path) -> None:
    # A device such as /dev/null would be replaced by a plain file, so it is refused as well.
    if target.is_dir():
        raise CalendarError(_refusal(path, say("it is a folder; a file name that ends in .ics would be accepted")))
    if target.exists() and not target.is_file():
        raise CalendarError(_refusal(path, say("it is no plain file; a file name that ends in .ics would be accepted")))


def _holds(target: Path, data: bytes) -> bool:
    try:
        return target.stat().st_size == len(data) and target.read_bytes() == data
    except FileNotFoundError:
        return False


def _replace(target: Path, data: bytes) -> None:
    beside = target.with_name(f".quailsched-{token_hex(8)}.part")
    try:
        with beside.open("xb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if target.exists():
            shutil.copymode(target, beside)
        beside.replace(target)
    finally:
        beside.unlink(missing_ok=True)


def _refusal(path: Path, why: str) -> str:
    return say("calendar file: “{path}” cannot be written; {why}.", path=path, why=why)


def _sentence(path: Path, error: OSError | ValueError) -> str:
    if isinstance(error, FileNotFoundError | NotADirectoryError):
        folder = Path(os.path.realpath(path)).parent
        why = say("there is no folder “{folder}”; a folder that exists would be accepted", folder=folder)
        return _refusal(path, why)
    if isinstance(error, PermissionError):
        folder = Path(os.path.realpath(path)).parent
        why = say("you may not write in “{folder}”; a folder of your own would be accepted", folder=folder)
        return _refusal(path, why)
    if isinstance(error, OSError) and error.errno in (ENOSPC, EDQUOT, EFBIG):
        return _refusal(path, say("there is not enough room on the disk; the calendar is as it was before"))
    reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
    why = say("the system says “{reason}”; another file name or folder would be accepted", reason=reason)
    return _refusal(path, why)
