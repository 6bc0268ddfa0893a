"""A write that fails leaves the farm in memory, its history and the file as they were."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import pytest

from quailsched.edits.change import Change, Touch, apply
from quailsched.farm.records import Farm
from quailsched.store import reading
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile
from tests.store.sample import AT, CLOVER, PUBLISHED, later, renamed, small_farm


@pytest.fixture
def file(tmp_path: Path) -> FarmFile:
    """A farm with one step done and one undone."""
    file = FarmFile.create(tmp_path / "farm.quail", small_farm(), PUBLISHED)
    for change in (later(file.farm), renamed(file.farm, "Mill End")):
        file.save(change, apply(file.farm, change), AT)
    file.undo()
    return file


def save(file: FarmFile) -> None:
    change = later(file.farm)
    file.save(change, apply(file.farm, change), AT)


WRITES: list[Callable[[FarmFile], object]] = [
    save,
    FarmFile.undo,
    FarmFile.redo,
    lambda file: file.save_published([replace(PUBLISHED[0], sequence=9)]),
]


def refused(file: FarmFile, write: Callable[[FarmFile], object]) -> str:
    """The sentence of a write that fails; nothing is changed by it, and it works once the cause is gone."""
    seen = _seen(file)
    before = file.path.read_bytes()
    with pytest.raises(StoreError) as told:
        write(file)
    assert _seen(file) == seen
    assert file.path.read_bytes() == before
    assert os.listdir(file.path.parent) == [file.path.name]
    return str(told.value)


def _seen(file: FarmFile) -> tuple[object, ...]:
    return file.farm, file.history(), file.undo_label, file.redo_label


def run(path: Path, sql: str) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.executescript(sql)


@pytest.mark.parametrize("write", WRITES)
@pytest.mark.parametrize("table", ["batch", "stay", "farm", "journal", "published", "file_state"])
def test_a_table_that_refuses_a_row_stops_the_whole_change(
    file: FarmFile, write: Callable[[FarmFile], object], table: str
) -> None:
    for act in ("INSERT", "UPDATE"):
        run(
            file.path,
            f"CREATE TRIGGER no_{act} AFTER {act} ON {table} BEGIN SELECT RAISE(ABORT, 'the cat is on it'); END",
        )
    seen, before = _seen(file), file.path.read_bytes()
    told = ""
    try:
        write(file)
    except StoreError as error:
        told = str(error)
    if told:
        assert told == "farm.quail could not be written, nothing was changed: the cat is on it."
        assert _seen(file) == seen
        assert file.path.read_bytes() == before
        run(file.path, "DROP TRIGGER no_INSERT; DROP TRIGGER no_UPDATE")
        write(file)
    else:
        assert table != "file_state", "every write moves the stamp"
    assert FarmFile.open(file.path).farm == file.farm
    assert FarmFile.open(file.path).history() == file.history()


@pytest.mark.parametrize("write", WRITES)
def test_a_file_that_another_window_changed_is_not_written(file: FarmFile, write: Callable[[FarmFile], object]) -> None:
    other = FarmFile.open(file.path)
    save(other)
    assert refused(file, write) == (
        "farm.quail was changed by another window or program since it was opened. Open it again to go on from there."
    )
    assert FarmFile.open(file.path).farm == other.farm


def test_a_file_that_was_replaced_by_a_back_up_is_not_written(file: FarmFile, tmp_path: Path) -> None:
    backup = tmp_path.parent / f"{tmp_path.name}-backup.quail"
    shutil.copy(file.path, backup)
    save(file)
    other = FarmFile.open(backup)
    save(other)  # as many writes as the file had, but others
    os.replace(backup, file.path)
    assert "was changed by another window" in refused(file, save)


@pytest.mark.parametrize("write", WRITES)
def test_a_file_that_another_program_is_writing_is_waited_for_and_then_told(
    file: FarmFile, write: Callable[[FarmFile], object], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(reading, "WAIT_SECONDS", 0.05)
    with closing(sqlite3.connect(file.path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        told = refused(file, write)
    assert told.endswith("another program is writing to it; try again when that has finished.")
    write(file)


def test_a_file_that_has_gone_is_told_and_not_made_again(file: FarmFile) -> None:
    file.path.unlink()
    with pytest.raises(StoreError, match=r"farm\.quail cannot be opened: there is no such file"):
        save(file)
    assert not file.path.exists()


def test_a_file_that_a_newer_version_took_over_is_not_written(file: FarmFile) -> None:
    run(file.path, "PRAGMA user_version = 7")
    assert "was written by a newer Quailsched (version 7" in refused(file, save)


def test_a_batch_cannot_be_left_without_its_place(file: FarmFile) -> None:
    def take_place(file: FarmFile) -> None:
        place = file.farm.places[0]
        change = Change("Remove Setter", (Touch(place, None),))
        file.save(change, apply(file.farm, change), AT)

    assert "could not be written, nothing was changed" in refused(file, take_place)


def test_text_that_no_file_can_hold_is_refused_whole(file: FarmFile) -> None:
    def bad_name(file: FarmFile) -> None:
        change = renamed(file.farm, "half a pair \ud83d")
        file.save(change, apply(file.farm, change), AT)

    assert "could not be written, nothing was changed" in refused(file, bad_name)


def test_a_farm_that_cannot_be_written_leaves_no_new_file(tmp_path: Path) -> None:
    farm = small_farm()
    loose = Farm(farm.settings, (), (), farm.batches)  # routes through places that it does not have
    with pytest.raises(StoreError, match=r"new\.quail cannot be made"):
        FarmFile.create(tmp_path / "new.quail", loose)
    assert os.listdir(tmp_path) == []


def test_a_fault_of_the_program_is_not_dressed_up(file: FarmFile, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise AttributeError("a fault of ours")

    monkeypatch.setattr("quailsched.store.writing.rows_of", broken)
    seen, before = _seen(file), file.path.read_bytes()
    with pytest.raises(AttributeError, match="a fault of ours"):
        save(file)
    assert (_seen(file), file.path.read_bytes()) == (seen, before)


_FULL_DISK = """
import resource, signal, sys
from pathlib import Path
from quailsched.edits.change import apply
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile
from tests.store.sample import AT, renamed

path = Path(sys.argv[1])
file = FarmFile.open(path)
name = "Mill" * 100_000
before = path.read_bytes()
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
resource.setrlimit(resource.RLIMIT_FSIZE, (len(before), len(before)))
change = renamed(file.farm, name)
try:
    file.save(change, apply(file.farm, change), AT)
except StoreError as error:
    print(error)
assert file.farm == FarmFile.open(path).farm
assert path.read_bytes() == before
"""


@pytest.mark.skipif(sys.platform == "win32", reason="limits of file size are POSIX")
def test_a_disk_that_takes_no_more_is_told(file: FarmFile) -> None:
    done = subprocess.run(
        [sys.executable, "-c", _FULL_DISK, str(file.path)], capture_output=True, text=True, check=False
    )
    assert (done.stderr, done.returncode) == ("", 0)
    assert done.stdout.startswith("farm.quail could not be written, nothing was changed: the disk ")
    assert os.listdir(file.path.parent) == [file.path.name]


@pytest.mark.skipif(hasattr(os, "geteuid") and os.geteuid() == 0, reason="root may write everywhere")
def test_a_folder_that_may_not_be_written_to_is_told(file: FarmFile) -> None:
    file.path.parent.chmod(0o500)
    try:
        assert "may not be written to" in refused(file, save)
        with pytest.raises(StoreError, match=r"new\.quail cannot be made: .* may not be"):
            FarmFile.create(file.path.with_name("new.quail"), small_farm())
    finally:
        file.path.parent.chmod(0o700)


def test_the_record_of_a_change_has_to_be_in_the_file(file: FarmFile) -> None:
    run(file.path, f"PRAGMA foreign_keys = ON; DELETE FROM batch WHERE id = '{CLOVER}'")
    assert "is not in the file any more" in refused(file, save)
