"""The example farm on any day of the year."""

from collections.abc import Callable
from datetime import date, timedelta
from itertools import count
from uuid import UUID

import pytest

from quailsched.farm.check import faults_of
from quailsched.farm.example import example_farm
from quailsched.farm.records import Role
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season


def ids() -> Callable[[], str]:
    numbers = count(1)
    return lambda: str(UUID(int=next(numbers)))


@pytest.mark.parametrize("days", range(0, 366, 5))
def test_it_is_sound_and_clashes_ahead_in_at_least_four_ways_on_any_day(days: int) -> None:
    today = date(2026, 11, 25) + timedelta(days=days)
    farm = example_farm(today, ids())
    assert faults_of(farm) == []
    assert len({clash.kind for clash in clashes_of(Season(farm), today)}) >= 4
    assert len(farm.batches) == 7
    assert farm.batches[0].start < today < farm.batches[2].start + timedelta(days=8)


def test_it_has_the_places_and_people_that_it_promises() -> None:
    farm = example_farm(date(2027, 4, 6), ids())
    roles = sorted(place.role for place in farm.places)
    assert roles == sorted(
        [Role.SETTER, Role.HATCHER, Role.CABINET, Role.BROODER, Role.BROODER, Role.PEN, Role.GRASS_PEN]
    )
    pen = next(place for place in farm.places if place.role is Role.PEN)
    assert pen.outdoors
    assert pen.ready_on is not None
    assert pen.ready_on > date(2027, 4, 6)
    assert [bool(person.away) for person in farm.people] == [True, True]
    assert len(farm.settings.night_lows_c) == 12


def test_two_examples_never_share_an_id() -> None:
    make = ids()
    first, second = (example_farm(date(2027, 4, 6), make) for _ in range(2))
    assert not {r.id for r in first.records()} & {r.id for r in second.records()}
