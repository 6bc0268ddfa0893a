"""R15: a calendar is written whole or not at all, and not touched when nothing has changed. Real files."""

from __future__ import annotations

import os
import resource
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from quailsched.calendars.errors import CalendarError
from quailsched.calendars.write import write_calendar

OLD, NEW = b"BEGIN:VCALENDAR old\r\n", b"BEGIN:VCALENDAR new\r\n"
NOBODY = 65534


@contextmanager
def no_right_to_write(folder: Path) -> Iterator[None]:
    """``folder`` can be read but not written; root, whom no mode stops, becomes somebody else for a while."""
    user = os.geteuid()
    folder.chmod(0o555)
    try:
        if user == 0:
            os.seteuid(NOBODY)
        yield
    finally:
        if user == 0:
            os.seteuid(user)
        folder.chmod(0o755)


@contextmanager
def room_for(octets: int) -> Iterator[None]:
    """No file can grow beyond ``octets``, as on a full disk."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (octets, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


def test_r15_a_new_file_holds_the_bytes_and_nothing_is_left_beside_it(tmp_path: Path) -> None:
    assert write_calendar(tmp_path / "chores.ics", NEW) is True
    assert (tmp_path / "chores.ics").read_bytes() == NEW
    assert [path.name for path in tmp_path.iterdir()] == ["chores.ics"]


def test_r15_an_old_file_is_replaced_and_keeps_its_mode(tmp_path: Path) -> None:
    path = tmp_path / "chores.ics"
    path.write_bytes(OLD)
    path.chmod(0o640)
    assert write_calendar(path, NEW) is True
    assert path.read_bytes() == NEW
    assert path.stat().st_mode & 0o777 == 0o640


def test_r15_the_same_bytes_leave_the_file_untouched(tmp_path: Path) -> None:
    path = tmp_path / "chores.ics"
    write_calendar(path, NEW)
    before = path.stat()
    assert write_calendar(path, NEW) is False
    after = path.stat()
    assert (after.st_ino, after.st_mtime_ns) == (before.st_ino, before.st_mtime_ns)


def test_r15_a_reader_with_the_old_file_open_still_reads_the_old_calendar(tmp_path: Path) -> None:
    path = tmp_path / "chores.ics"
    path.write_bytes(OLD)
    with path.open("rb") as reader:
        write_calendar(path, NEW)
        assert reader.read() == OLD


def test_r15_a_link_stays_a_link(tmp_path: Path) -> None:
    real = tmp_path / "synced.ics"
    real.write_bytes(OLD)
    link = tmp_path / "chores.ics"
    link.symlink_to(real)
    assert write_calendar(link, NEW) is True
    assert link.is_symlink()
    assert real.read_bytes() == NEW


def test_r15_when_the_room_runs_out_the_old_calendar_is_still_there(tmp_path: Path) -> None:
    path = tmp_path / "chores.ics"
    path.write_bytes(OLD)
    with room_for(1000), pytest.raises(CalendarError, match="not enough room on the disk"):
        write_calendar(path, b"x" * 100_000)
    assert path.read_bytes() == OLD
    assert [each.name for each in tmp_path.iterdir()] == ["chores.ics"]


def test_r15_a_folder_that_does_not_exist_is_named(tmp_path: Path) -> None:
    path = tmp_path / "nowhere" / "chores.ics"
    with pytest.raises(CalendarError) as caught:
        write_calendar(path, NEW)
    assert str(caught.value) == (
        f"calendar file: “{path}” cannot be written; there is no folder “{tmp_path / 'nowhere'}”; "
        "a folder that exists would be accepted."
    )
    assert not path.parent.exists()


def test_r15_a_file_in_the_place_of_the_folder_is_told(tmp_path: Path) -> None:
    (tmp_path / "file").write_bytes(OLD)
    with pytest.raises(CalendarError, match="there is no folder"):
        write_calendar(tmp_path / "file" / "chores.ics", NEW)


def test_r15_a_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(CalendarError, match=r"it is a folder; a file name that ends in \.ics would be accepted"):
        write_calendar(tmp_path, NEW)
    assert list(tmp_path.iterdir()) == []


def test_r15_a_device_is_refused_and_stays_a_device(tmp_path: Path) -> None:
    # A pipe of our own stands for a device: a failing test must not replace a real one for everybody.
    device = tmp_path / "device"
    os.mkfifo(device)
    with pytest.raises(CalendarError, match="it is no plain file"):
        write_calendar(device, NEW)
    assert device.is_fifo()


def test_r15_a_folder_that_may_not_be_written_is_told(tmp_path: Path) -> None:
    (tmp_path / "chores.ics").write_bytes(OLD)
    with no_right_to_write(tmp_path), pytest.raises(CalendarError, match="you may not write in"):
        write_calendar(tmp_path / "chores.ics", NEW)
    assert (tmp_path / "chores.ics").read_bytes() == OLD


@pytest.mark.parametrize("name", ["a" * 300, "a\0b"])
def test_r15_a_name_that_no_file_can_have_is_told_in_a_sentence(tmp_path: Path, name: str) -> None:
    with pytest.raises(CalendarError, match=r"cannot be written; the system says “.+” *; another file name"):
        write_calendar(tmp_path / name, NEW)
