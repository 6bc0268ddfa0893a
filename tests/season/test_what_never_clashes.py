"""For each kind of clash a farm in which it can never be, whatever else is planned.

The kinds of fittings, work and light have theirs in ``test_clashes_of_fittings``.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.records import Batch, Farm, Origin, Place, Role, Stay
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import farm
from tests.season.test_everything_breaks import CHILLY, everything
from tests.strategies import farms

Change = Callable[[Farm], Farm]


def with_places(change: Callable[[Place], Place]) -> Change:
    return lambda farm: replace(farm, places=tuple(change(place) for place in farm.places))


def with_batches(change: Callable[[Batch], Batch]) -> Change:
    return lambda farm: replace(farm, batches=tuple(change(batch) for batch in farm.batches))


def roomy(place: Place) -> Place:
    room = {"egg_places": 100_000} if place.role.holds_eggs else {"floor_cm2": 100_000_000}
    return replace(place, **room)  # type: ignore[arg-type]


def one_machine(place: Place) -> Place:
    return replace(place, role=Role.CABINET) if place.role.holds_eggs else place


def no_pen(place: Place) -> Place:
    return replace(place, role=Role.BROODER) if place.role.is_pen else place


def tiny_pen(place: Place) -> Place:
    return replace(place, floor_cm2=100) if place.role.is_pen else place


def first_batch_alone(farm: Farm) -> Farm:
    """One batch, in cabinets and on floors of which it is never in one with another."""
    return replace(farm, batches=farm.batches[:1])


def brought_in_for_good(farm: Farm) -> Farm:
    """Only bought birds, each batch in one place until it is replaced."""
    floors = [place for place in farm.places if not place.role.holds_eggs]
    batches = farm.batches if floors else ()
    return replace(
        farm,
        batches=tuple(
            replace(one, origin=Origin.BOUGHT_BIRDS, egg_age_days=0, stays=(Stay(floors[0].id, 0, None),))
            for one in batches
        ),
    )


def nobody_bought(farm: Farm) -> Farm:
    return replace(farm, batches=tuple(batch for batch in farm.batches if batch.origin.is_eggs))


def nobody_away(farm: Farm) -> Farm:
    return replace(farm, people=tuple(replace(one, away=(), is_grown_up=True) for one in farm.people))


NEVER: dict[str, Change] = {
    "eggs": with_places(roomy),
    "cabinet": lambda farm: first_batch_alone(with_places(one_machine)(farm)),
    "floor": with_places(roomy),
    "cleanout": with_places(lambda place: replace(place, clean_out_days=0)),
    "notready": with_places(lambda place: replace(place, ready_on=None, shut=())),
    "young": with_places(no_pen),
    "cold": with_places(lambda place: replace(place, outdoors=False)),
    "calm": with_places(tiny_pen),
    "nowhere": brought_in_for_good,
    "stale": with_batches(lambda batch: replace(batch, egg_age_days=0)),
    "ages": first_batch_alone,
    "crowd": lambda farm: first_batch_alone(with_batches(lambda batch: replace(batch, number=2))(farm)),
    "cocks": with_batches(lambda batch: replace(batch, number=1)),
    "quarantine": nobody_bought,
    "hands": nobody_away,
}


@pytest.mark.parametrize("kind", NEVER)
@given(data=st.data())
def test_a_kind_of_clash_that_cannot_be_is_not(kind: str, data: st.DataObject) -> None:
    one = NEVER[kind](replace(data.draw(farms()), trials=()))
    assert kind not in {clash.kind for clash in clashes_of(Season(one))}


@pytest.mark.parametrize("kind", NEVER)
def test_without_that_change_the_kind_does_come_up(kind: str) -> None:
    """So that none of the changes is one that no random farm would feel."""
    one = farm(*everything(), settings=CHILLY)
    assert kind in {clash.kind for clash in clashes_of(Season(one))}
    assert kind not in {clash.kind for clash in clashes_of(Season(NEVER[kind](one)))}
