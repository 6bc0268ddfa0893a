"""Documents as files."""

from __future__ import annotations

from pathlib import Path

import pytest

from quailsched.farm.faults import FarmError
from quailsched.store.document import export_document
from quailsched.store.document_file import load_document, write_document
from quailsched.store.errors import StoreError
from tests.store.sample import PUBLISHED, renamed, small_farm


def test_what_is_written_is_read_back(tmp_path: Path) -> None:
    path = tmp_path / "farm.json"
    write_document(path, small_farm(), PUBLISHED)
    assert path.read_bytes() == export_document(small_farm(), PUBLISHED).encode()
    assert load_document(path).published == PUBLISHED
    assert [item.name for item in tmp_path.iterdir()] == ["farm.json"]


def test_a_file_is_replaced_as_a_whole(tmp_path: Path) -> None:
    path = tmp_path / "farm.json"
    path.write_text("x" * 1_000_000)
    write_document(path, small_farm())
    assert load_document(path).farm == small_farm()


def test_a_folder_is_not_replaced(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"farm\.json cannot be written: it is a folder\."):
        write_document(_folder(tmp_path / "farm.json"), small_farm())
    assert [item.name for item in tmp_path.iterdir()] == ["farm.json"]


def test_a_missing_folder_is_told(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"farm\.json cannot be written: there is no such file or folder\."):
        write_document(tmp_path / "no" / "farm.json", small_farm())


def test_a_missing_document_is_told(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"farm\.json cannot be read: there is no such file or folder\."):
        load_document(tmp_path / "farm.json")


def test_bytes_that_are_no_text_are_told(tmp_path: Path) -> None:
    path = tmp_path / "farm.json"
    path.write_bytes(b'{"a": "\xff"}')
    with pytest.raises(StoreError, match=r"it is not UTF-8 text \(byte 8 cannot be used\)\."):
        load_document(path)


def test_a_farm_file_in_place_of_a_document_is_told(tmp_path: Path) -> None:
    path = tmp_path / "farm.quail"
    path.write_bytes(b"SQLite format 3\0" + b"\xff" * 84)
    with pytest.raises(StoreError, match=r"farm\.quail cannot be read: it is a farm file or another database"):
        load_document(path)


def test_faults_of_the_document_are_told_as_such(tmp_path: Path) -> None:
    path = tmp_path / "farm.json"
    farm = small_farm()
    (touch,) = renamed(farm, " ").touches
    assert touch.after is not None
    write_document(path, farm.with_records(set(), (touch.after,)))
    with pytest.raises(FarmError, match="farm, name"):
        load_document(path)


def _folder(path: Path) -> Path:
    path.mkdir()
    return path
