"""What the panel says of a clash, in words."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from quailsched.farm.records import Acceptance, Units
from quailsched.report.inspect import clash_rows
from quailsched.season.clash import Clash
from tests.store.sample import small_farm

DAY = date(2027, 9, 5)


@pytest.mark.parametrize(("units", "short"), [(Units.METRIC, "3 °C"), (Units.US, "5.4 °F")])
def test_a_cold_night_is_short_by_what_is_missing(units: Units, short: str) -> None:
    farm = small_farm()
    farm = farm.with_records(set(), (replace(farm.settings, units=units),))
    clash = Clash("cold", farm.places[0].id, (farm.batches[0].id,), DAY, DAY, DAY, 10.0, 7.0, "degC", 0, "Cold.")
    assert ("Short by", short) in clash_rows(farm, clash, DAY)


def test_how_grave_it_is_comes_first_and_why_it_is_accepted_after_why_it_is() -> None:
    farm = small_farm()
    place, batch = farm.places[0], farm.batches[0]
    clash = Clash("calm", place.id, (batch.id,), DAY, DAY, DAY, 25, 19, "birds", 0, "Too few.")
    assert clash_rows(farm, clash, DAY)[0] == ("Severity", "watch")
    assert clash_rows(farm, replace(clash, kind="floor", unit="cm2"), DAY)[0] == ("Severity", "stops the plan")
    lived_with = farm.with_records(set(), (Acceptance("a", "calm", place.id, (batch.id,), 6, 0, 1, "Only a day"),))
    names = [name for name, _ in clash_rows(lived_with, clash, DAY)]
    assert ("Accepted because", "Only a day") in clash_rows(lived_with, clash, DAY)
    assert names.index("Accepted because") == names.index("Why") + 1
    assert "Accepted because" not in [name for name, _ in clash_rows(farm, clash, DAY)]
