"""The random farms of the tests are varied enough; ``test_check`` sees that they are sound."""

from __future__ import annotations

from hypothesis import Phase, find, settings

from quailsched.farm.records import Farm, Part
from tests.strategies import farms


def test_random_farms_reach_the_split_of_hens_and_cocks_and_own_figures() -> None:
    def is_rich(farm: Farm) -> bool:
        parts = {stay.part for batch in farm.batches for stay in batch.stays}
        return parts == set(Part) and bool(farm.choices) and bool(farm.people)

    generate = settings(max_examples=2000, deadline=None, database=None, phases=[Phase.generate])
    assert is_rich(find(farms(), is_rich, settings=generate))
