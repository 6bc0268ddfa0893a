"""How a table was read, in words."""

from datetime import UTC, date, datetime
from itertools import count

import pytest

from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.report.taking import sheet_text
from tests.builders import ALL_PLACES, PEN, bought, farm, stay

NUMBERS = count(1)
NOW = Now(date(2027, 12, 1), datetime(2027, 12, 1, tzinfo=UTC), lambda: f"n{next(NUMBERS)}")


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("batch;set on;eggs set\nA;2027-03-01;90\n", "Read as a hatch log: columns parted by a semicolon, "),
        ("day;batch;eggs\n2027-04-01;Hens;12\n", "Read as an egg log: columns parted by a semicolon, "),
    ],
)
def test_how_a_table_was_read_is_told_as_people_say_it(text: str, expected: str) -> None:
    taking = taking_of(farm(*ALL_PLACES, bought("Hens", 40, 60, stay(PEN, 0, None))), text, Options(), NOW)
    assert sheet_text(taking) == expected + "days with the year first, decimals after “,”."
