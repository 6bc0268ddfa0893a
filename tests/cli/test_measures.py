"""``quailsched measures``: what the counts of a farm come to, in words and as JSON; and the page of definitions."""

import json
from datetime import date
from pathlib import Path

import pytest

from quailsched.cli import main
from quailsched.edits.counts import record
from quailsched.farm.facts import Count, Sort
from quailsched.husbandry.definitions import definitions
from quailsched.report.definitions_page import definitions_page
from quailsched.session.farms import make_example, open_farm

TODAY = date(2027, 4, 6)
TOP = Path(__file__).parents[2]


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return make_example(tmp_path / "x.quail", TODAY).file.path


@pytest.fixture
def counted(file: Path) -> Path:
    """Of Clover's eggs 6 were clear and 30 hatched; 2,500 g were fed to it, and 800 g to nobody in particular."""
    opened = open_farm(file)
    clover = next(batch for batch in opened.plan.batches if batch.name == "Clover")
    hatch = date.fromordinal(clover.start.toordinal() + 17)
    today = date.fromordinal(max(TODAY.toordinal(), hatch.toordinal()))
    for number, count in enumerate(
        (
            Count("", Sort.CLEAR, clover.start, number=6, batch_id=clover.id),
            Count("", Sort.HATCHED, hatch, number=30, batch_id=clover.id),
            Count("", Sort.FED, hatch, grams=2_500, batch_id=clover.id),
            Count("", Sort.FED, hatch, grams=800),
        )
    ):
        made = Count(
            f"00000000-0000-4000-8000-{number:012}", count.sort, count.day, number=count.number,
            batch_id=count.batch_id, grams=count.grams,
        )  # fmt: skip
        opened.apply(record(opened.farm, made, today))
    return file


def run(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    capsys.readouterr()
    code = main(list(words), TODAY)
    out, err = capsys.readouterr()
    return code, out, err


def test_nothing_counted_is_said_so(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(capsys, "measures", str(file)) == (0, "Pebble Bank: measures\n\nNothing has been counted yet.\n", "")


def test_measures_in_words(counted: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys, "measures", str(counted))
    eggs = next(batch.number for batch in open_farm(counted).plan.batches if batch.name == "Clover")
    assert (code, err) == (0, "")
    lines = [" ".join(line.split()) for line in out.splitlines()]
    assert f"Hatch of set {100 * 30 / eggs:.1f} % 30 chicks of {eggs} eggs set" in lines
    assert f"Hatch of fertile {100 * 30 / (eggs - 6):.1f} % 30 chicks of {eggs - 6} fertile eggs" in lines
    assert "2.50 kg of feed" in lines
    assert "Incubators" in lines
    assert lines[-1] == "Of no batch: 800 g of feed"
    assert "Livability" not in out  # nobody has looked


def test_measures_as_json(counted: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "measures", str(counted), "--json")
    found = json.loads(out)
    assert code == 0
    assert list(found) == [
        "farm", "day", "batches", "breeding_groups", "incubators", "of_no_batch", "definitions",
    ]  # fmt: skip
    clover = next(one for one in found["batches"] if one["batch"] == "Clover")
    assert list(clover["measures"]) == list(definitions())
    assert (clover["measures"]["hatch_of_set"]["part"], clover["measures"]["livability"]) == (30, None)
    assert (clover["feed_g"], clover["hours"], found["of_no_batch"]["feed_g"]) == (2_500, None, 800)
    assert {one["place"] for one in found["incubators"] if one["measures"]["hatch_of_set"] is not None}


def test_the_page_in_the_documents_is_made_from_the_table() -> None:
    told = "run python packaging/measures_page.py"
    assert (TOP / "resources" / "MEASURES.md").read_text(encoding="utf-8") == definitions_page(), told
