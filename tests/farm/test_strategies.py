"""The random farms of the tests are what they claim to be."""

from __future__ import annotations

from hypothesis import find, given, settings

from quailsched.farm.check import faults_of
from quailsched.farm.records import Farm, Part
from tests.strategies import farms


@given(farms())
def test_random_farms_are_sound(farm: Farm) -> None:
    assert faults_of(farm) == []


def test_random_farms_reach_the_split_of_hens_and_cocks_and_own_figures() -> None:
    def is_rich(farm: Farm) -> bool:
        parts = {stay.part for batch in farm.batches for stay in batch.stays}
        return parts == set(Part) and bool(farm.choices) and bool(farm.people)

    found = find(farms(), is_rich, settings=settings(max_examples=2000, deadline=None, database=None))
    assert is_rich(found)
