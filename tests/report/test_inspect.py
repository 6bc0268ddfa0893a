"""What the panel says of a clash, in words."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from quailsched.farm.records import Units
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
