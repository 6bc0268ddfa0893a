"""Places in words: the weeks in tables that fit their width, each row in one unit."""

import re
from dataclasses import replace
from datetime import date, timedelta
from itertools import count

import pytest

from quailsched.farm.example import example_farm
from quailsched.farm.records import Units
from quailsched.farm.units import day_text
from quailsched.report.places import places_text
from quailsched.season.freeing import place_states
from quailsched.season.season import Season

TODAY = date(2027, 4, 6)


def weeks_told(weeks: int, width: int, units: Units = Units.METRIC) -> list[str]:
    numbers = count()
    farm = example_farm(TODAY, lambda: str(next(numbers)))
    farm = farm.with_records(set(), (replace(farm.settings, units=units),))
    text = places_text(farm, place_states(Season(farm), TODAY, weeks), TODAY, width)
    return text.partition("Room left throughout each week from\n")[2].splitlines()


@pytest.mark.parametrize(("weeks", "width"), [(1, 100), (12, 100), (104, 100), (104, 60), (104, 10)])
def test_two_years_of_weeks_fit_the_width_and_none_is_lost(weeks: int, width: int) -> None:
    lines = weeks_told(weeks, width)
    # Names of places and one column are the least that a line can be: "  Hatching tray  11 Jan 2028".
    assert max(len(line) for line in lines) <= max(width, 30)
    told = [day for line in lines[1::9] for day in re.split(r"\s{2,}", line.strip())]  # seven places and an empty line
    assert told == [day_text(TODAY + timedelta(days=7 * week), TODAY) for week in range(weeks)]


@pytest.mark.parametrize("units", Units)
def test_a_row_has_one_unit(units: Units) -> None:
    rows = [line for line in weeks_told(30, 100, units) if line.startswith("  Tub brooder")]
    assert len(rows) > 1
    for row in rows:
        assert len(set(re.findall(r"cm²|m²|sq ft", row))) == 1
