"""Tables as spreadsheets write them, by what their makers document, and Python's csv module as the other reader.

A German desktop writes CSV with semicolons (its list separator), decimal commas, points for thousands, days as
TT.MM.JJJJ and lines that end in CR LF, in Windows-1252 or, as "CSV UTF-8", with a byte order mark.
"""

import csv
import io
from datetime import UTC, date, datetime
from itertools import count

import pytest

from quailsched.edits.change import apply
from quailsched.edits.tables.letters import text_of
from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.rows import Fate
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.farm.facts import Sort
from tests.builders import ALL_PLACES, PEN, bought, farm, stay

HENS = farm(*ALL_PLACES, bought("Hennen", 40, 60, stay(PEN, 0, None)))
NUMBERS = count(1)
NOW = Now(date(2027, 12, 1), datetime(2027, 12, 1, tzinfo=UTC), lambda: f"n{next(NUMBERS)}")
GERMAN = (
    "Datum;Gehege;Eier;Futter (kg);Tote Tiere;Bemerkung\r\n"
    '01.04.2027;Pen;31;1,5;;"kühl; windig"\r\n'
    "02.04.2027;Pen;1.029;12,25;1;\r\n"
    "Summe;;1.060;13,75;1;\r\n"
)


@pytest.mark.parametrize("encoding", ["cp1252", "utf-8-sig", "utf-8", "utf-16"])
def test_what_a_german_spreadsheet_writes(encoding: str) -> None:
    taking = taking_of(HENS, text_of(GERMAN.encode(encoding)), Options(), NOW)
    assert [row.fate for row in taking.rows] == [Fate.TAKEN, Fate.TAKEN, Fate.OUT]
    assert taking.change is not None
    after = apply(HENS, taking.change)
    amounts = {(one.sort, one.day.day): (one.number, one.grams) for one in after.counts}
    assert amounts == {
        (Sort.LAID, 1): (31, 0), (Sort.FED, 1): (0, 1500), (Sort.LAID, 2): (1029, 0), (Sort.FED, 2): (0, 12_250),
        (Sort.DIED, 2): (1, 0),
    }  # fmt: skip
    assert "kühl; windig" in {one.words for one in after.counts}


@pytest.mark.parametrize("dialect", ["excel", "excel-tab", "unix"])
def test_every_dialect_of_the_csv_module(dialect: str) -> None:
    text = io.StringIO(newline="")
    csv.writer(text, dialect).writerows(
        [["Date", "Pen", "Eggs"], ["4/21/2027", "Pen", "12"], ["4/22/2027", "Pen", "9"]]
    )
    taking = taking_of(HENS, text_of(text.getvalue().encode()), Options(), NOW)
    assert [row.words for row in taking.rows] == ["Pen, 21 Apr 2027: 12 laid", "Pen, 22 Apr 2027: 9 laid"]


@pytest.mark.parametrize("mark", [";", "\t", "|"])
def test_the_csv_module_finds_the_same_delimiter(mark: str) -> None:
    text = "Datum;Gehege;Eier;Futter (kg)\r\n01.04.2027;Pen;31;1,5\r\n02.04.2027;Pen;29;1,6\r\n".replace(";", mark)
    taking = taking_of(HENS, text, Options(), NOW)
    assert taking.sheet.grid.delimiter == csv.Sniffer().sniff(text, ",;\t|").delimiter == mark
