"""Real faults of SQLite and of the system, told in words."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from quailsched.store.errors import StoreError, reason_of, told_as_store_error


def test_a_database_that_may_only_be_read(tmp_path: Path) -> None:
    path = tmp_path / "x.quail"
    with closing(sqlite3.connect(path)) as db:
        db.execute("CREATE TABLE t (a)")
    with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True)) as db, pytest.raises(sqlite3.Error) as told:
        db.execute("INSERT INTO t VALUES (1)")
    assert reason_of(told.value) == "the file or its folder may not be written to"


def test_a_full_database(tmp_path: Path) -> None:
    with closing(sqlite3.connect(tmp_path / "x.quail")) as db:
        db.execute("CREATE TABLE t (a)")
        db.execute("PRAGMA max_page_count = 3")
        with pytest.raises(sqlite3.Error) as told:
            db.execute("INSERT INTO t VALUES (zeroblob(100000))")
    assert reason_of(told.value) == "the disk is full"


def test_a_folder_that_is_not_there(tmp_path: Path) -> None:
    with (
        pytest.raises(StoreError, match=r"x cannot be read: there is no such file or folder\."),
        told_as_store_error(tmp_path / "x", "cannot be read"),
    ):
        (tmp_path / "no" / "x").read_bytes()


def test_what_has_no_words_yet_says_what_the_system_says() -> None:
    assert reason_of(ValueError("two\nlines")) == "two lines"
    assert reason_of(ValueError()) == "ValueError"


def test_a_fault_of_the_program_goes_on_as_it_is(tmp_path: Path) -> None:
    with pytest.raises(KeyError), told_as_store_error(tmp_path, "cannot be read"):
        raise KeyError("ours")
