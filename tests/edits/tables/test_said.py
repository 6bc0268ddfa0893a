"""What is told of tables and their rows goes through the table of words, but for what people typed."""

import re
from collections.abc import Iterator
from datetime import UTC, date, datetime
from itertools import count

import pytest

from quailsched.edits.tables.letters import text_of
from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.rows import Fate
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.farm.faults import FarmError
from quailsched.husbandry.handbook import handbook
from quailsched.report.taking import sheet_text, sum_text
from quailsched.words import ENGLISH, use
from tests.builders import ALL_PLACES, PEN, bought, eggs, farm, hatch_route, stay
from tests.pseudo import PSEUDO, unsaid

FARM = farm(*ALL_PLACES, bought("Hens", 40, 60, stay(PEN, 0, None)), eggs("Clover", 100, *hatch_route()))
NUMBERS = count(1)
NOW = Now(date(2027, 12, 1), datetime(2027, 12, 1, tzinfo=UTC), lambda: f"n{next(NUMBERS)}")
HATCHES = """batch;kind;place;set on;eggs set;candled on;clear;quit;hatched on;hatched;moon
A;;;2027-03-01;90;;10;5;;60;
B;;;2027-03-01;90;2027-03-09;10;5;2027-03-18;60;
A;;;2027-03-01;90;;11;5;;60;
A;;;2027-03-02;90;;;;;;
A;;;2027-03-01;90;;10;5;;60
Clover;;;2027-05-01;90;;;;;;
Clover;bobwhite;;2027-03-01;90;;;;;;
Hens;;;2027-03-01;90;;;;;;
C;;;2027-03-01;;;;;;;
;;;;9;;;;;;
;;;2027-03-02;9;;;;;;
D;moa;;2027-03-01;9;;;;;;
D;;Moon;2027-03-01;9;;;;;;
D;;Pen;2027-03-01;9;;;;;;
D;;;soon;9;;;;;;
D;;;2027-03-01;nine;;;;;;
D;;;2027-11-25;9;;;;;5;
D;;;2027-03-01;9;;9;9;;9;
D;;;2028-03-01;9;;;;;;
D;;;2027-03-01;9;;;;;;;x
"""
EGGS = """day;place;batch;eggs;died;feed (kg);feed bought;birds weighed;weight (g);note
2027-04-01;Pen;;12;1;1,5;;;;wind
2027-04-01;Pen;;13;;;;;;
;Pen;;13;;;;;;
2027-04-02;Pen;;13;99;;;;;
2027-04-02;Run;;13;9;;;;;
2027-04-02;;;13;9;;;;;
2027-04-02;;;13;;;3;;;
2027-04-02;;Hens;13;;;;10;2000;
2027-04-02;;Hens;13;;;;;2000;
2027-02-02;;Hens;13;;;;;;
2027-04-09;;;;;;;;;
"""
NO_TABLES = (
    "",
    "hello",
    "day;eggs\n",
    "hatched;moon\n3;4\n",
    "eggs\n4\n",
    "day;eggs\n3/4/2027;5\n",
    'day;eggs\n"x;5\n',
)


@pytest.fixture(autouse=True)
def _nobody_speaks_it() -> Iterator[None]:
    use(PSEUDO)
    yield
    use(ENGLISH)


@pytest.mark.parametrize("text", [HATCHES, EGGS])
def test_what_becomes_of_every_row_is_said(text: str) -> None:
    taking = taking_of(FARM, text, Options(), NOW)
    again = taking_of(FARM, text, Options(), NOW)
    names = [*(one.name for one in FARM.places), *(one.name for one in FARM.batches)]
    typed = [*re.split("[;\n]", text), *names, *handbook()]
    for row in (*taking.rows, *again.rows):
        assert unsaid(row.words, typed) == [], row.words
    assert {row.fate for row in taking.rows} >= {Fate.TAKEN, Fate.OUT}
    assert taking.change is not None
    for told in (taking.change.label, sheet_text(taking), sum_text(taking)):
        assert unsaid(told, typed) == [], told


def test_a_column_that_is_not_there_is_named_in_words() -> None:
    taking = taking_of(FARM, "batch;hatched\nE;30\n", Options(), NOW)
    assert unsaid(taking.rows[0].words, ["E"]) == []


@pytest.mark.parametrize("text", NO_TABLES)
def test_what_is_no_table_is_said(text: str) -> None:
    try:
        taking_of(FARM, text, Options(), NOW)
    except FarmError as error:
        told = str(error)
    else:
        told = ""
    assert unsaid(told, [*re.split("[;\n]", text)]) == [], told


@pytest.mark.parametrize("data", [b"PK\x03\x04", b"a\0b", b"x" * 20_000_001])
def test_what_is_no_text_is_said(data: bytes) -> None:
    with pytest.raises(FarmError) as error:
        text_of(data)
    assert unsaid(str(error.value), ["MB", "CSV"]) == []
