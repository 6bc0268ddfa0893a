"""Tables as files: read whole, written whole, and nothing of somebody else is replaced."""

import os
from datetime import date
from pathlib import Path

import pytest

from quailsched.edits.tables.rows import Fate
from quailsched.edits.tables.sheet import Options
from quailsched.farm.faults import FarmError
from quailsched.session import trials
from quailsched.session.farms import make_example
from quailsched.session.faults import StoreError
from quailsched.session.open_farm import OpenFarm
from quailsched.session.tables import give_tables, look_at_table, read_table, take_table

TODAY = date(2027, 4, 6)
LOG = "day,place,eggs\n2027-04-01,Long run,12\n2027-04-02,Long run,14\n"


@pytest.fixture
def opened(tmp_path: Path) -> OpenFarm:
    return make_example(tmp_path / "x.quail", TODAY)


def test_looking_changes_nothing_and_taking_is_one_step_that_undo_takes_back(opened: OpenFarm) -> None:
    before = opened.plan
    taking = look_at_table(opened, LOG, Options(), TODAY)
    assert opened.plan is before
    take_table(opened, taking)
    assert len(opened.plan.counts) == 2
    assert opened.undo_label == "Take in 2 rows of a table (egg log)"
    opened.undo()
    assert opened.plan == before
    assert [row.fate for row in look_at_table(opened, LOG, Options(), TODAY).rows] == [Fate.TAKEN] * 2


def test_facts_go_into_the_plan_also_while_a_trial_is_looked_at(opened: OpenFarm) -> None:
    trials.start(opened, "Try")
    assert opened.trial is not None
    take_table(opened, look_at_table(opened, LOG, Options(), TODAY))
    assert len(opened.plan.counts) == 2


def test_a_file_that_is_not_there_or_no_text_is_told(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="there is no such file"):
        read_table(tmp_path / "none.csv")
    with pytest.raises(StoreError, match="it is a folder"):
        read_table(tmp_path)
    (tmp_path / "x.csv").write_bytes(b"PK\x03\x04")
    with pytest.raises(FarmError, match="file of a spreadsheet"):
        read_table(tmp_path / "x.csv")


def test_tables_are_written_into_a_new_folder_and_written_again(opened: OpenFarm, tmp_path: Path) -> None:
    folder = tmp_path / "out" / "tables"
    give_tables(opened, folder)
    first = {path.name: path.read_bytes() for path in folder.iterdir()}
    assert first["places.csv"].startswith(b"id,name,role,")
    take_table(opened, look_at_table(opened, LOG, Options(), TODAY))
    tables = give_tables(opened, folder)
    assert {path.name for path in folder.iterdir()} == {table.name for table in tables} == set(first)
    assert first["egg-log.csv"].count(b"\r\n") == 1
    assert (folder / "egg-log.csv").read_bytes().count(b"\r\n") == 3


def test_a_file_of_somebody_else_is_left_and_nothing_is_written_beside_it(opened: OpenFarm, tmp_path: Path) -> None:
    mine = tmp_path / "out" / "places.csv"
    mine.parent.mkdir()
    mine.write_text("place,price\nmarket,3\n")
    with pytest.raises(StoreError, match=r"places\.csv is there already"):
        give_tables(opened, mine.parent)
    assert os.listdir(mine.parent) == ["places.csv"]
    assert mine.read_text() == "place,price\nmarket,3\n"


def test_a_folder_that_cannot_be_made_is_told(opened: OpenFarm, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x")
    with pytest.raises(StoreError, match=r"^file cannot be written: a file of that name is there already\.$"):
        give_tables(opened, tmp_path / "file")
