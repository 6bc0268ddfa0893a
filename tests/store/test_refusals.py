"""Files that are refused keep their bytes, and the keeper is told why."""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from quailsched.edits.change import apply
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile
from tests.store.sample import AT, renamed, small_farm


@pytest.fixture
def path(tmp_path: Path) -> Path:
    file = FarmFile.create(tmp_path / "farm.quail", small_farm())
    change = renamed(file.farm, "Mill End")
    file.save(change, apply(file.farm, change), AT)
    return tmp_path / "farm.quail"


def refusal(path: Path) -> str:
    """The sentence; the bytes and the folder stay as they are."""
    before = path.read_bytes() if path.is_file() else None
    beside = sorted(item.name for item in path.parent.iterdir())
    with pytest.raises(StoreError) as told:
        FarmFile.open(path)
    assert before == (path.read_bytes() if path.is_file() else None)
    assert sorted(item.name for item in path.parent.iterdir()) == beside
    return str(told.value)


def run(path: Path, sql: str) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.executescript(sql)


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    told = refusal(tmp_path / "no.quail")
    assert told == f"no.quail cannot be opened: there is no such file in {tmp_path}."


def test_a_folder(tmp_path: Path) -> None:
    assert refusal(tmp_path) == f"{tmp_path.name} cannot be opened: it is not a file."


def test_an_empty_file(tmp_path: Path) -> None:
    (tmp_path / "farm.quail").touch()
    assert refusal(tmp_path / "farm.quail") == "farm.quail is empty: there is no farm in it."


@pytest.mark.parametrize("data", [b"hello", b"PK\3\4" + b"x" * 500, b"SQLite format 4\0" + b"\0" * 500])
def test_a_file_of_another_sort(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "farm.quail").write_bytes(data)
    assert refusal(tmp_path / "farm.quail") == "farm.quail is not a farm file of Quailsched."


def test_the_database_of_another_program(tmp_path: Path) -> None:
    run(tmp_path / "other.quail", "CREATE TABLE birds (id INTEGER)")
    assert refusal(tmp_path / "other.quail") == "other.quail is not a farm file of Quailsched but of another program."


def test_a_file_of_a_newer_version(path: Path) -> None:
    run(path, "PRAGMA user_version = 7")
    assert refusal(path) == (
        "farm.quail was written by a newer Quailsched (version 7, this one reads up to 3). It was left as it is."
    )


@pytest.mark.parametrize("version", [0, -1])
def test_a_file_of_no_version(path: Path, version: int) -> None:
    run(path, f"PRAGMA user_version = {version}")
    assert "is damaged" in refusal(path)


def test_a_file_that_was_cut_short_anywhere(path: Path) -> None:
    whole = path.read_bytes()
    for size in [1, 15, 16, 99, 100, *range(512, len(whole), 1024), len(whole) - 1]:
        path.write_bytes(whole[:size])
        told = refusal(path)
        assert told.startswith("farm.quail is damaged ("), (size, told)
        assert told.endswith("and was left as it is. Open a back-up of it instead."), (size, told)


def test_a_file_with_pages_of_rubbish(path: Path) -> None:
    whole = path.read_bytes()
    page = int.from_bytes(whole[16:18], "big")
    for start in range(page, len(whole), page):
        path.write_bytes(whole[:start] + b"\xa5" * page + whole[start + page :])
        try:
            found: object = FarmFile.open(path).farm.batches
        except StoreError as error:
            found = str(error)
        # A page that holds nothing at all may be rubbish.
        assert found == small_farm().batches or "damaged" in str(found)


@pytest.mark.parametrize(
    ("sql", "why"),
    [
        ("UPDATE batch SET start = '2027-02-30'", "not every value in it makes sense"),
        ("UPDATE batch SET number = 'many'", "not every value in it makes sense"),
        ("UPDATE place SET role = 'nest'", "not every value in it makes sense"),
        ("PRAGMA foreign_keys = OFF; UPDATE stay SET place_id = 'x'", "a stay in it belongs to a place that is not"),
        ("DELETE FROM file_state", "its history has a gap"),
        ("UPDATE file_state SET cursor = 5", "its history has a gap"),
        ("DELETE FROM night_low; DELETE FROM farm", "it holds 0 farms, not one"),
        ("DROP TABLE journal", "it lacks a table or a field"),
        ("ALTER TABLE batch DROP COLUMN note", "it lacks a table or a field"),
        ("ALTER TABLE stay DROP COLUMN part", "it lacks a table or a field"),
        ("UPDATE farm SET name = CAST(x'ff' AS TEXT)", "not every value in it makes sense"),
        ("UPDATE place SET outdoors = 2", "not every value in it makes sense"),
        ("UPDATE journal SET at = 'noon'", "not every value in it makes sense"),
    ],
)
def test_a_file_whose_rows_make_no_sense(path: Path, sql: str, why: str) -> None:
    run(path, sql)
    assert f"is damaged ({why}" in refusal(path)


def test_a_new_file_never_takes_the_place_of_another(tmp_path: Path) -> None:
    for there in (tmp_path / "farm.quail", tmp_path / "link.quail"):
        if there.name == "link.quail":
            there.symlink_to(tmp_path / "nowhere")
        else:
            there.write_bytes(b"precious")
        with pytest.raises(StoreError, match="is there already and was left as it is; choose another name"):
            FarmFile.create(there, small_farm())
    assert (tmp_path / "farm.quail").read_bytes() == b"precious"
    assert sorted(os.listdir(tmp_path)) == ["farm.quail", "link.quail"]


def test_a_file_that_comes_to_be_there_while_ours_is_made_is_kept(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    there = tmp_path / "farm.quail"
    monkeypatch.setattr(os.path, "lexists", lambda path: False)
    there.write_bytes(b"precious")
    with pytest.raises(StoreError, match="is there already"):
        FarmFile.create(there, small_farm())
    assert there.read_bytes() == b"precious"
    assert os.listdir(tmp_path) == ["farm.quail"]


def test_a_disk_without_hard_links_is_served_too(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def no_links(*_: object) -> None:
        raise PermissionError(1, "Operation not permitted")

    monkeypatch.setattr(os, "link", no_links)
    there = tmp_path / "farm.quail"
    assert FarmFile.create(there, small_farm()).farm == small_farm()
    assert os.listdir(tmp_path) == ["farm.quail"]
    monkeypatch.setattr(os.path, "lexists", lambda path: False)
    before = there.read_bytes()
    with pytest.raises(StoreError, match="is there already"):
        FarmFile.create(there, small_farm())
    assert there.read_bytes() == before
    assert os.listdir(tmp_path) == ["farm.quail"]


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"farm\.quail cannot be made: there is no such file or folder\."):
        FarmFile.create(tmp_path / "no" / "farm.quail", small_farm())
    (tmp_path / "file").touch()
    with pytest.raises(StoreError, match=r"farm\.quail cannot be made: its folder is not a folder\."):
        FarmFile.create(tmp_path / "file" / "farm.quail", small_farm())
    assert os.listdir(tmp_path) == ["file"]
