"""The quick look at clashes against a plain recount of every day (``tests.bench.recount``), on random farms."""

from __future__ import annotations

from hypothesis import given

from quailsched.farm.records import Farm
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.bench.recount import broken_days, days_of_clashes
from tests.strategies import farms


@given(farms(most_places=3, most_batches=6))
def test_clashes_are_on_the_days_that_a_plain_recount_finds(farm: Farm) -> None:
    assert days_of_clashes(clashes_of(Season(farm))) == broken_days(farm)


@given(farms(most_places=3, most_batches=6, has_facts=True))
def test_clashes_after_counts_are_on_the_days_that_a_plain_recount_finds(farm: Farm) -> None:
    assert days_of_clashes(clashes_of(Season(farm))) == broken_days(farm)
