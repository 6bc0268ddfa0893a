"""A file and a document of every version that was ever given out are still read, with all that was in them."""

from __future__ import annotations

import shutil
from datetime import timedelta
from pathlib import Path

import pytest

from quailsched.edits.change import apply
from quailsched.farm.versions import VERSION
from quailsched.store.document import Document, export_document, read_whole
from quailsched.store.farm_file import FarmFile
from quailsched.store.layout import SCHEMA_VERSION
from tests.store.sample import AT, PUBLISHED, later, renamed, small_farm, small_farm_1, small_farm_2

SAMPLES = Path(__file__).parent / "samples"


# How the farm of each sample started. A later version adds its own and leaves these as they are.
FIRST = {1: small_farm_1(), 2: small_farm_2(), 3: small_farm()}


def test_every_version_has_its_sample() -> None:
    assert list(FIRST) == list(range(1, SCHEMA_VERSION + 1))
    assert sorted(SAMPLES.glob("*.sample")) == [SAMPLES / f"history_{version}.sample" for version in FIRST]
    assert sorted(SAMPLES.glob("*.json")) == [SAMPLES / f"document_{version}.json" for version in FIRST]


@pytest.mark.parametrize("version", FIRST)
def test_the_document_of_a_version_is_imported_and_exported_as_of_this_one(version: int) -> None:
    text = (SAMPLES / f"document_{version}.json").read_bytes().decode()
    assert f'"version": {version},' in text
    document = read_whole(text)
    assert document == Document(FIRST[version], PUBLISHED)
    now = export_document(document.farm, document.published)
    assert read_whole(now) == document
    if version == VERSION:
        assert now == text
    else:
        assert f'"version": {VERSION},' in now


@pytest.mark.parametrize("version", FIRST)
def test_the_sample_of_a_version_opens_and_goes_on(tmp_path: Path, version: int) -> None:
    path = tmp_path / "farm.quail"
    shutil.copy(SAMPLES / f"history_{version}.sample", path)
    start = FIRST[version]
    named = apply(start, renamed(start, "Mill End"))
    moved = apply(named, later(named, 5))

    file = FarmFile.open(path)
    assert file.farm == moved
    assert tuple(file.published().values()) == PUBLISHED
    assert [(entry.label, entry.at, entry.is_undone) for entry in file.history()] == [
        ("Call it Mill End", AT, False),
        ("Set Clover 3 later", AT + timedelta(seconds=60), False),
        ("Call it Mill Hill", AT + timedelta(seconds=120), True),
    ]
    file.redo()
    assert file.farm.settings.name == "Mill Hill"
    for _ in range(3):
        file.undo()
    assert file.farm == start == FarmFile.open(path).farm
    for _ in range(3):
        file.redo()
    assert FarmFile.open(path).farm == file.farm
