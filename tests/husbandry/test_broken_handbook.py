"""A broken file of the handbook is told by file, row and field."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from quailsched.husbandry.handbook import handbook
from quailsched.husbandry.reading import read_handbook
from quailsched.resources import resource


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    copy = tmp_path / "husbandry"
    shutil.copytree(resource("husbandry"), copy)
    return copy


def test_an_untouched_copy_reads_the_same(folder: Path) -> None:
    assert list(read_handbook(folder)) == list(handbook())
    assert dict(read_handbook(folder)["bobwhite"].figures) == dict(handbook()["bobwhite"].figures)


INCUBATION = "coturnix,incubation_days,17,16,18,days,"


@pytest.mark.parametrize(
    ("file", "old", "new", "told"),
    [
        ("figures.csv", INCUBATION, "coturnix,incubation_days,soon,16,18,days,", "figures.csv, row 2, value: “soon”"),
        ("figures.csv", INCUBATION, "coturnix,incubation_days,nan,16,18,days,", "row 2, value: “nan”"),
        ("figures.csv", INCUBATION, "coturnix,incubation_days,19,16,18,days,", "from low (16) to high (18)"),
        ("figures.csv", INCUBATION, "coturnix,incubation_days,5,5,18,days,", "from 12 to 35 is possible"),
        ("figures.csv", INCUBATION, INCUBATION + "no.such.row ", "references: “no.such.row inc.days"),
        ("figures.csv", INCUBATION, "coturnix,brooding_days,17,16,18,days,", "row 2, key: “brooding_days”"),
        ("figures.csv", INCUBATION, "coturnix,weight_g,17,16,18,days,", "row 2, key: “weight_g”"),
        ("figures.csv", INCUBATION, "emu,incubation_days,17,16,18,days,", "no row incubation_days for the kind"),
        ("figures.csv", "coturnix,lockdown_day,15,14,15", "coturnix,lockdown_day,17,14,17", "less than 17 is possible"),
        ("figures.csv", "kind,key,value", "kind,key,worth", "figures.csv, row 1: the headings must be kind, key"),
        ("figures.csv", "harden_off_days,7,7,7,days,,common practice,", "harden_off_days,7,7,7,days,,,",
         "basis: “” cannot be used; without a reference"),
        ("figures.csv", "days,,common practice,", "days,,a hunch,", "basis: “a hunch” cannot be used"),
        ("figures.csv", "coturnix,harden_off_days,7,7,7", "coturnix,sex_day,7,7,7", "it stands in an earlier row too"),
        ("figures.csv", "coturnix,harden_off_days,7,7,7,days", "coturnix,harden_off_days", "9 fields are needed"),
        ("curves.csv", "0:35 7:31.5", "0:35 7:warm", "curves.csv, row 2, points"),
        ("curves.csv", "0:35 7:31.5", "7:35 0:31.5", "ages must rise"),
        ("curves.csv", "0:35 7:31.5", "0:350 7:31.5", "350 cannot be used; from 10 to 42 degC is possible"),
        ("curves.csv", "heat_c,step", "heat_c,spline", "shape: “spline” cannot be used"),
        ("curves.csv", "A=242.1 b=3.325", "A=242.1 c=3.325", "A, b and k are needed"),
        ("kinds.csv", "button,", "ostrich,", "for the kind “ostrich”"),
        ("labels.csv", "incubation_days,figure", "incubation_days,number", "sort: “number” cannot be used"),
        ("reference.csv", ",published,", ",certain,", "confidence: “certain” cannot be used"),
    ],
)  # fmt: skip
def test_a_broken_file_is_told_by_file_row_and_field(folder: Path, file: str, old: str, new: str, told: str) -> None:
    text = (folder / file).read_text(encoding="utf-8")
    assert old in text
    (folder / file).write_text(text.replace(old, new, 1), encoding="utf-8")
    with pytest.raises(ValueError) as caught:
        read_handbook(folder)
    assert told in str(caught.value)


def test_a_file_that_is_no_utf8_is_told(folder: Path) -> None:
    (folder / "kinds.csv").write_bytes(b"id,name,plural,latin,note\nq,\xff,q,q,q\n")
    with pytest.raises(ValueError, match=r"kinds\.csv: not a readable csv file"):
        read_handbook(folder)


def test_a_kind_that_only_the_other_files_know_is_told(folder: Path) -> None:
    lines = (folder / "kinds.csv").read_text(encoding="utf-8").splitlines(keepends=True)
    (folder / "kinds.csv").write_text("".join(lines[:-1]), encoding="utf-8")
    with pytest.raises(ValueError, match="no row for the kind “button”"):
        read_handbook(folder)
