"""A farm file of an older version is left alone until the first write, which brings it to this one and keeps a copy."""

from __future__ import annotations

import errno
import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import given

from quailsched.edits.change import Change, Touch, apply
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Farm, Record, Trial
from quailsched.store import upgrade
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile
from tests.store.older import farm_1, make_version_1
from tests.store.sample import AT, DILL, PUBLISHED, later, renamed, small_farm, small_farm_1
from tests.store.test_history_samples import SAMPLES
from tests.strategies import farms, ids

OLD = (SAMPLES / "history_1.sample").read_bytes()
COPY = "farm.before-version-3.quail"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    (tmp_path / "farm.quail").write_bytes(OLD)
    return tmp_path / "farm.quail"


def save(file: FarmFile) -> None:
    change = later(file.farm)
    file.save(change, apply(file.farm, change), AT + timedelta(hours=1))


WRITES: list[Callable[[FarmFile], object]] = [
    save,
    FarmFile.undo,
    FarmFile.redo,
    lambda file: file.save_published([replace(PUBLISHED[0], sequence=9)]),
]


def query(path: Path, sql: str) -> list[tuple[object, ...]]:
    with closing(sqlite3.connect(path)) as db:
        return list(db.execute(sql))


def columns_of(path: Path) -> dict[object, list[tuple[object, ...]]]:
    """Name, type, whether it may be empty, and place in the key of each column of each table."""
    tables = [name for (name,) in query(path, "SELECT name FROM sqlite_master WHERE type = 'table'")]
    sql = "SELECT name, type, \"notnull\", pk FROM pragma_table_info('{}')"
    return {table: query(path, sql.format(table)) for table in tables}


def names_beside(path: Path) -> list[str]:
    return sorted(item.name for item in path.parent.iterdir())


def test_opening_an_older_file_leaves_it_as_it_is(path: Path) -> None:
    before = path.stat()
    file = FarmFile.open(path)
    file.published()
    assert (file.farm.acceptances, file.farm.trials) == ((), ())
    assert path.read_bytes() == OLD
    assert path.stat().st_mtime_ns == before.st_mtime_ns
    assert names_beside(path) == ["farm.quail"]


@pytest.mark.parametrize("write", WRITES)
def test_the_first_write_brings_a_file_to_this_version_and_keeps_what_it_was(
    path: Path, write: Callable[[FarmFile], object]
) -> None:
    file = FarmFile.open(path)
    before = file.farm, file.history(), file.published()
    write(file)
    assert query(path, "PRAGMA user_version") == [(3,)]
    assert names_beside(path) == [COPY, "farm.quail"]
    assert (path.parent / COPY).read_bytes() == OLD
    kept = FarmFile.open(path.parent / COPY)
    assert (kept.farm, kept.history(), kept.published()) == before
    again = FarmFile.open(path)
    assert (again.farm, again.history(), again.published()) == (file.farm, file.history(), file.published())


def test_a_file_that_was_brought_up_has_the_tables_of_a_new_one(path: Path) -> None:
    save(FarmFile.open(path))
    FarmFile.create(path.with_name("new.quail"), small_farm())
    assert columns_of(path) == columns_of(path.with_name("new.quail"))


def test_a_second_write_makes_no_second_copy(path: Path) -> None:
    file = FarmFile.open(path)
    save(file)
    save(file)
    save(FarmFile.open(path))
    assert names_beside(path) == [COPY, "farm.quail"]


def test_what_is_new_can_be_set_and_taken_back_past_the_steps_of_the_older_version(path: Path) -> None:
    file = FarmFile.open(path)
    now = small_farm()
    plan: tuple[Record, ...] = (*now.places, *now.people, *now.acceptances, *now.trials, now.batch(DILL))
    new = (*plan, *now.counts, *now.marks, *now.own_chores)
    surer = Touch(file.farm.settings, replace(file.farm.settings, sure_pct=80))  # renamed since, so not that of now
    change = Change("Fittings", (surer, *(Touch(file.farm.find(record.id), record) for record in new)))
    file.save(change, apply(file.farm, change), AT + timedelta(hours=1))
    end = file.farm
    file = FarmFile.open(path)
    for _ in range(3):
        file.undo()
    assert file.farm == FarmFile.open(path).farm == small_farm_1()
    for _ in range(3):
        file.redo()
    assert file.farm == FarmFile.open(path).farm == end
    assert end.batch(DILL) == now.batch(DILL)
    assert replace(end, settings=now.settings, batches=now.batches) == now


def test_a_copy_never_takes_the_place_of_another_file(path: Path) -> None:
    (path.parent / COPY).write_bytes(b"precious")
    (path.parent / "farm.before-version-3 (2).quail").mkdir()
    save(FarmFile.open(path))
    assert (path.parent / COPY).read_bytes() == b"precious"
    assert (path.parent / "farm.before-version-3 (3).quail").read_bytes() == OLD
    assert len(names_beside(path)) == 4


def test_a_long_name_leaves_room_for_that_of_the_copy(path: Path) -> None:
    long = path.rename(path.with_name("Wachtelhöfe " * 18 + ".quail"))  # 18 x 13 + 6 bytes of at most 255
    save(FarmFile.open(long))
    (copy,) = [item for item in path.parent.iterdir() if "before-version-3" in item.name]
    assert copy.read_bytes() == OLD


def test_without_a_copy_nothing_is_written(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    file = FarmFile.open(path)
    before = (file.farm, file.history())
    with monkeypatch.context() as patch:
        patch.setattr(upgrade, "write_synced", full)
        with pytest.raises(StoreError) as told:
            save(file)
    assert str(told.value) == (
        "farm.quail is of an older version, and the copy that is kept of it before it is changed cannot be made: "
        "the disk is full. Nothing was changed."
    )
    assert (file.farm, file.history()) == before
    assert path.read_bytes() == OLD
    assert names_beside(path) == ["farm.quail"]
    save(file)
    assert names_beside(path) == [COPY, "farm.quail"]


def test_a_write_that_fails_leaves_the_older_version(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.execute("CREATE TRIGGER no BEFORE INSERT ON stay BEGIN SELECT RAISE(ABORT, 'the cat is on it'); END")
    before = path.read_bytes()
    file = FarmFile.open(path)
    for _ in range(2):
        with pytest.raises(StoreError, match="nothing was changed: the cat is on it"):
            save(file)
        assert path.read_bytes() == before
        assert names_beside(path) == [COPY, "farm.quail"]  # the copy of the second try is the first one
    with closing(sqlite3.connect(path)) as db:
        db.execute("DROP TRIGGER no")
    save(file)
    assert query(path, "PRAGMA user_version") == [(3,)]


def test_a_file_that_another_window_brought_up_is_not_written_and_not_copied_again(path: Path) -> None:
    first, second = FarmFile.open(path), FarmFile.open(path)
    save(first)
    with pytest.raises(StoreError, match="was changed by another window"):
        save(second)
    assert names_beside(path) == [COPY, "farm.quail"]
    assert FarmFile.open(path).farm == first.farm


def test_a_file_that_says_this_version_but_lacks_what_is_new_is_damaged(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.execute("PRAGMA user_version = 2")
    with pytest.raises(StoreError, match="it lacks a table or a field"):
        FarmFile.open(path)


def test_a_disk_without_hard_links_keeps_a_copy_too(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def no_links(*_: object) -> None:
        raise PermissionError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "link", no_links)
    (path.parent / COPY).write_bytes(b"precious")
    save(FarmFile.open(path))
    assert (path.parent / COPY).read_bytes() == b"precious"
    assert (path.parent / "farm.before-version-3 (2).quail").read_bytes() == OLD


@given(farms(has_facts=True))
def test_any_farm_of_version_1_opens_and_takes_what_is_new(farm: Farm) -> None:
    folder = Path(tempfile.mkdtemp())
    try:
        path = folder / "farm.quail"
        old = farm_1(farm)
        made = FarmFile.create(path, old)
        change = renamed(old, "Mill End")
        made.save(change, apply(old, change), AT)
        make_version_1(path)
        file = FarmFile.open(path)
        assert file.farm == made.farm
        file.undo()
        assert file.farm == old == FarmFile.open(path).farm
        trial, note = Trial(ids(999), "New"), Count(ids(998), Sort.NOTE, AT.date(), AT, words="new")
        change = Change("New", (Touch(None, trial), Touch(None, note)))
        file.save(change, apply(old, change), AT)
        again = FarmFile.open(path).farm
        assert (again.trials, again.counts) == ((trial,), (note,))
    finally:
        shutil.rmtree(folder)
