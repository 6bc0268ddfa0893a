"""The history in a farm file: steps, merging, undo and redo; which rows a step writes."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from quailsched.edits.change import Change, Touch, apply
from quailsched.farm.records import Stay
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile
from quailsched.store.layout import SCHEMA_VERSION
from tests.store.sample import AT, CLOVER, PUBLISHED, later, renamed, small_farm
from tests.strategies import ids


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "Mill Lane 100% #1?.quail"


def save(file: FarmFile, change: Change, at: datetime = AT) -> None:
    file.save(change, apply(file.farm, change), at)


def names_beside(path: Path) -> list[str]:
    return sorted(item.name for item in path.parent.iterdir())


def query(path: Path, sql: str) -> list[tuple[object, ...]]:
    with closing(sqlite3.connect(path)) as db:
        return list(db.execute(sql))


def test_a_new_file_is_marked_as_ours_and_stands_alone(path: Path) -> None:
    file = FarmFile.create(path, small_farm(), PUBLISHED)
    assert names_beside(path) == [path.name]
    assert query(path, "PRAGMA application_id") == [(0x5155414C,)]
    assert query(path, "PRAGMA user_version") == [(SCHEMA_VERSION,)]
    assert query(path, "PRAGMA journal_mode") == [("delete",)]
    assert file.history() == []
    assert (file.undo_label, file.redo_label) == (None, None)
    assert tuple(file.published().values()) == PUBLISHED


def test_rows_hold_plain_columns(path: Path) -> None:
    FarmFile.create(path, small_farm())
    sql = "SELECT start, number, origin FROM batch WHERE name = 'Clover'"
    assert query(path, sql) == [("2027-03-08", 96, "own eggs")]
    sql = f"SELECT from_day, to_day, part, leaving FROM stay WHERE batch_id = '{CLOVER}' ORDER BY position"
    assert query(path, sql)[2:] == [(45, None, "hens", None), (45, 60, "cocks", "processed")]
    sql = "SELECT start, end, reason FROM span WHERE away_person_id IS NOT NULL"
    assert query(path, sql) == [("2027-05-01", "2027-05-04", "away")]


def test_a_change_is_in_the_file_with_its_label_and_moment(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    change = later(file.farm, 2)
    save(file, change, AT.astimezone(tz=None))
    assert file.farm == apply(small_farm(), change)
    again = FarmFile.open(path)
    assert again.farm == file.farm
    (entry,) = again.history()
    assert (entry.label, entry.at, entry.at.tzinfo, entry.is_undone) == ("Set Clover 2 later", AT, UTC, False)
    assert names_beside(path) == [path.name]


def test_a_change_writes_only_the_records_that_it_touches(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    tables = ("farm", "night_low", "place", "person", "span", "figure_choice", "figure_point", "stay", "batch")
    with closing(sqlite3.connect(path)) as db:
        db.execute("CREATE TABLE written (what TEXT)")
        for table in tables:
            for act in ("INSERT", "UPDATE", "DELETE"):
                body = f"INSERT INTO written VALUES ('{table}')"
                db.execute(f"CREATE TRIGGER {table}_{act} AFTER {act} ON {table} BEGIN {body}; END")
        db.commit()
    save(file, later(file.farm))
    assert set(query(path, "SELECT what FROM written")) == {("batch",), ("stay",)}
    # Clover alone: one row out and in, and its four stays out and in.
    assert query(path, "SELECT what, count(*) FROM written GROUP BY what") == [("batch", 2), ("stay", 8)]


def test_undo_and_redo_return_what_they_did_and_live_through_a_restart(path: Path) -> None:
    first = FarmFile.create(path, small_farm())
    one = later(first.farm, 1)
    save(first, one)
    two = renamed(first.farm, "Mill End")
    save(first, two, AT + timedelta(minutes=1))
    end = first.farm

    second = FarmFile.open(path)
    assert (second.undo_label, second.redo_label) == ("Call it Mill End", None)
    assert second.undo() == two.inverse()
    assert second.undo() == replace(one, touches=one.inverse().touches)
    assert second.farm == small_farm()
    assert [entry.is_undone for entry in second.history()] == [True, True]

    third = FarmFile.open(path)
    assert (third.undo_label, third.redo_label) == (None, one.label)
    assert third.farm == small_farm()
    assert third.redo() == one
    assert third.redo() == two
    assert third.farm == end == FarmFile.open(path).farm


def test_a_record_that_was_removed_comes_back_with_its_id(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    batch = file.farm.batch(CLOVER)
    save(file, Change("Remove Clover", (Touch(batch, None),)))
    assert FarmFile.open(path).farm.find(CLOVER) is None
    file.undo()
    assert FarmFile.open(path).farm.find(CLOVER) == batch


def test_a_new_change_drops_what_was_undone(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    save(file, later(file.farm, 1))
    save(file, later(file.farm, 2))
    file.undo()
    save(file, renamed(file.farm, "Mill End"))
    for seen in (file, FarmFile.open(path)):
        assert [entry.label for entry in seen.history()] == ["Set Clover 1 later", "Call it Mill End"]
        assert seen.redo_label is None


def test_nothing_to_undo_or_redo_is_said(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    with pytest.raises(StoreError, match=r"There is nothing to undo\."):
        file.undo()
    with pytest.raises(StoreError, match=r"There is nothing to redo\."):
        file.redo()


def test_nudges_within_a_second_are_one_step(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    for tenths in (0, 9, 18, 27):
        save(file, later(file.farm, 1, "nudge"), AT + timedelta(seconds=tenths / 10))
    assert [(entry.label, entry.at) for entry in file.history()] == [
        ("Set Clover 1 later", AT + timedelta(seconds=2.7))
    ]
    assert file.farm.batch(CLOVER).start == small_farm().batch(CLOVER).start + timedelta(days=4)
    file = FarmFile.open(path)
    change = file.undo()
    assert (change.touches[0].before, change.touches[0].after) == (later(small_farm(), 4).touches[0].after,
                                                                   small_farm().batch(CLOVER))  # fmt: skip
    assert file.farm == small_farm()


@pytest.mark.parametrize(
    ("first", "second", "seconds"),
    [("nudge", "nudge", 1.0), ("nudge", "nudge", -0.5), ("nudge", "other", 0.1), ("", "", 0.1)],
)
def test_other_steps_stay_apart(path: Path, first: str, second: str, seconds: float) -> None:
    file = FarmFile.create(path, small_farm())
    save(file, later(file.farm, 1, first))
    save(file, later(file.farm, 1, second), AT + timedelta(seconds=seconds))
    assert len(FarmFile.open(path).history()) == 2


def test_a_nudge_after_an_undo_does_not_join_the_step_before(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    save(file, later(file.farm, 1, "nudge"))
    save(file, renamed(file.farm, "Mill End"))
    file.undo()
    save(file, later(file.farm, 1, "nudge"))
    assert [entry.label for entry in file.history()] == ["Set Clover 1 later"] * 2


def test_nudges_that_lead_back_leave_no_step(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    save(file, renamed(file.farm, "Mill End"))
    save(file, later(file.farm, 1, "nudge"))
    save(file, later(file.farm, -1, "nudge"))
    for seen in (file, FarmFile.open(path)):
        assert [entry.label for entry in seen.history()] == ["Call it Mill End"]
        assert seen.farm.batch(CLOVER) == small_farm().batch(CLOVER)
    assert file.undo().label == "Call it Mill End"


def test_a_record_added_and_removed_in_one_step_leaves_no_step(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    new = replace(file.farm.batch(CLOVER), id=ids(999), name="New")
    save(file, Change("Add New", (Touch(None, new),), "new"))
    save(file, Change("Remove New", (Touch(new, None),), "new"))
    assert FarmFile.open(path).history() == []
    assert FarmFile.open(path).farm == small_farm()


def test_a_change_of_nothing_writes_nothing(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    before = path.read_bytes()
    batch = file.farm.batch(CLOVER)
    save(file, Change("Nothing", (Touch(batch, batch),)))
    assert path.read_bytes() == before


def test_a_place_and_the_batch_that_uses_it_may_come_in_any_order(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    place = replace(file.farm.places[0], id=ids(999), name="New")
    batch = replace(file.farm.batch(CLOVER), stays=(Stay(place.id, 0, 5),))
    change = Change("Both", (Touch(file.farm.batch(CLOVER), batch), Touch(None, place)))
    save(file, change)
    assert FarmFile.open(path).farm == file.farm
    file.undo()
    assert FarmFile.open(path).farm == small_farm()


def test_a_change_has_to_lead_to_the_farm_that_is_given(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    with pytest.raises(ValueError, match="does not lead from this farm to that one"):
        file.save(later(file.farm), file.farm, AT)


def test_the_moment_needs_an_offset(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    with pytest.raises(ValueError, match="needs its offset"):
        save(file, later(file.farm), AT.replace(tzinfo=None))


def test_published_entries_are_kept_changed_and_forgotten(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    assert file.published() == {}
    file.save_published(PUBLISHED)
    assert tuple(FarmFile.open(path).published().values()) == PUBLISHED
    revised = replace(PUBLISHED[1], content="c" * 64, sequence=4, revised=AT + timedelta(days=1))
    file.save_published([revised])
    assert FarmFile.open(path).published() == {revised.uid: revised}
    before = path.read_bytes()
    file.save_published([revised])
    assert path.read_bytes() == before
    save(file, later(file.farm))
    assert file.published() == {revised.uid: revised}


def test_any_step_of_the_history_can_be_gone_to_and_back_again(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    farms = [file.farm]
    for number, name in enumerate(("One", "Two", "Three", "Four")):
        save(file, renamed(file.farm, name), AT + timedelta(minutes=number))
        farms.append(file.farm)
    for step in (1, 4, 0, 3, 2, 2):
        file.go_to(step)
        assert file.farm == farms[step]
        assert FarmFile.open(path).farm == farms[step]
        assert [entry.is_undone for entry in file.history()] == [number > step for number in range(1, 5)]


def test_going_to_a_step_is_told_as_one_change(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    start = file.farm
    for number in range(1, 4):
        save(file, renamed(file.farm, f"Name {number}"), AT + timedelta(minutes=number))
    (touch,) = file.go_to(0).touches
    assert (touch.before, touch.after) == (replace(start.settings, name="Name 3"), start.settings)
    assert file.go_to(0).touches == ()


@pytest.mark.parametrize("step", [-1, 4])
def test_a_step_that_there_is_not_changes_nothing(path: Path, step: int) -> None:
    file = FarmFile.create(path, small_farm())
    for number in range(1, 4):
        save(file, renamed(file.farm, f"Name {number}"), AT + timedelta(minutes=number))
    whole = path.read_bytes()
    with pytest.raises(ValueError, match="there are steps 0 to 3"):
        file.go_to(step)
    assert path.read_bytes() == whole


def test_after_going_back_a_new_step_drops_those_that_were_undone(path: Path) -> None:
    file = FarmFile.create(path, small_farm())
    for number in range(1, 4):
        save(file, renamed(file.farm, f"Name {number}"), AT + timedelta(minutes=number))
    file.go_to(1)
    save(file, renamed(file.farm, "Another way"), AT + timedelta(hours=1))
    assert [entry.label for entry in file.history()] == ["Call it Name 1", "Call it Another way"]
