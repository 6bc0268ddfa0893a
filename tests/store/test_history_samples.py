"""A file of every schema version that was ever given out still opens with its history and published entries."""

from __future__ import annotations

import shutil
from datetime import timedelta
from pathlib import Path

import pytest

from quailsched.edits.change import apply
from quailsched.store.farm_file import FarmFile
from quailsched.store.layout import SCHEMA_VERSION
from tests.store.sample import AT, PUBLISHED, later, renamed, small_farm, small_farm_1

SAMPLES = Path(__file__).parent / "samples"


# How the farm of each sample started. A later version adds its own and leaves these as they are.
FIRST = {1: small_farm_1(), 2: small_farm()}


def test_every_version_has_its_sample() -> None:
    assert list(FIRST) == list(range(1, SCHEMA_VERSION + 1))
    assert sorted(SAMPLES.glob("*.sample")) == [SAMPLES / f"history_{version}.sample" for version in FIRST]


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
