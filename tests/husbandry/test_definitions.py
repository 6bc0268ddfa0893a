"""Every measure is defined once, with a formula and a source, and a broken table is told by row and field."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from quailsched.husbandry.definitions import definitions, read_definitions
from quailsched.report.measures import _FROM
from quailsched.resources import resource


def test_every_measure_that_is_worked_out_is_defined() -> None:
    assert set(definitions()) == set(_FROM)


@pytest.mark.parametrize("key", definitions())
def test_a_definition_tells_formula_convention_and_source(key: str) -> None:
    one = definitions()[key]
    assert "÷" in one.formula
    assert one.note.endswith(".")
    assert one.sources or one.basis == "common practice"
    assert one.help_text.splitlines()[0] == f"{one.name} = {one.formula}"


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("hatch_of_fertile,Hatch", "fertility,Hatch", "it stands in an earlier row too"),
        ("ex.lacin", "ex.nobody", "reference.csv has no row ex.nobody"),
        (",common practice,", ",,", "without a reference it has to say common practice"),
        ("hen_day,Hen-day lay,%", "hen_day,Hen-day lay,", "something must stand here"),
    ],
)
def test_a_broken_table_is_told(tmp_path: Path, old: str, new: str, told: str) -> None:
    shutil.copy(resource("husbandry", "reference.csv"), tmp_path)
    text = resource("husbandry", "measures.csv").read_text(encoding="utf-8")
    assert old in text
    (tmp_path / "measures.csv").write_text(text.replace(old, new, 1), encoding="utf-8")
    with pytest.raises(ValueError, match=told):
        read_definitions(tmp_path)
