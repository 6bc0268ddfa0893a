"""A changed farm that is looked at again only where it changed has the clashes of a fresh look."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.change import apply
from quailsched.edits.counts import record, take_back
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.builders import resized
from tests.strategies import LAST_DAY, MOMENT, batches, farms, ids, places


def changed(farm: Farm, data: st.DataObject) -> Farm:
    """``farm`` with a batch moved, thinned, taken away or added, or a place made smaller."""
    what = data.draw(st.sampled_from(["move", "move", "move", "thin", "remove", "add", "place"]))
    if not farm.places:
        return farm.with_records(set(), (data.draw(places(ids(900), "New place")),))
    if what == "place" or (what != "add" and not farm.batches):
        place = data.draw(st.sampled_from(farm.places))
        smaller = resized(place, place.egg_places // 2 + 1 if place.role.holds_eggs else 5_000)
        return farm.with_records(set(), (replace(smaller, clean_out_days=data.draw(st.integers(0, 9))),))
    if what == "add":
        return farm.with_records(set(), (data.draw(batches(ids(901), "A new batch", farm.places)),))
    batch = data.draw(st.sampled_from(farm.batches))
    if what == "remove":
        return farm.with_records({batch.id}, ())
    other: Batch = replace(batch, number=data.draw(st.integers(1, 400)))
    if what == "move":
        other = batch.moved_to(batch.start + timedelta(days=data.draw(st.integers(-40, 40))))
    return farm.with_records(set(), (other,))


def taken(season: Season, place: Place) -> list[tuple[object, ...]]:
    """What stands in the slices of a place."""
    return [
        (one.start, one.end, one.eggs, one.birds, one.floor_cm2, [(s.presence.batch, s.run) for s in one.shares])
        for one in season.slices(place)
    ]


@given(farms(most_places=4, most_batches=6), st.data())
def test_clashes_after_changes_are_those_of_a_fresh_look(farm: Farm, data: st.DataObject) -> None:
    found = checked(Season(farm))
    for _ in range(data.draw(st.integers(1, 4))):
        farm = changed(farm, data)
        found = found.after(farm)
        fresh = checked(Season(farm))
        assert found.clashes == fresh.clashes
        for place in farm.places:
            assert taken(found.season, place) == taken(fresh.season, place)


OF_BATCHES = [sort for sort in Sort if sort.needs_batch and sort not in (Sort.PARTED, Sort.JOINED)]


def counted(farm: Farm, data: st.DataObject, number: int) -> Farm:
    """``farm`` with one more count, or one that holds taken back; as it was where that cannot be."""
    holds = standing(farm.counts)
    try:
        if holds and data.draw(st.integers(0, 4)) == 0:
            old = data.draw(st.sampled_from(holds))
            return apply(farm, take_back(farm, old.id, f"back {number}", MOMENT))
        place = data.draw(st.sampled_from(farm.places))
        batch = data.draw(st.sampled_from(farm.batches)) if farm.batches else None
        sort = data.draw(st.sampled_from([*OF_BATCHES, Sort.BUILT] if batch else [Sort.BUILT]))
        day = batch.start if batch else data.draw(st.dates(LAST_DAY - timedelta(days=400), LAST_DAY))
        if sort is not Sort.SET:
            day += timedelta(days=data.draw(st.integers(0, 80)))
        many = data.draw(st.integers(1, 40))
        count = Count(
            f"new {number}", sort, day, MOMENT, many, batch.id if batch and sort.needs_batch else "",
            place.id if sort in (Sort.MOVED, Sort.BUILT) else "", data.draw(st.sampled_from(Part)), grams=many * 100,
        )  # fmt: skip
        return apply(farm, record(farm, count, LAST_DAY + timedelta(days=1000)))
    except FarmError:
        return farm


@given(farms(most_places=4, most_batches=4, has_facts=True), st.data())
def test_clashes_after_counts_are_those_of_a_fresh_look(farm: Farm, data: st.DataObject) -> None:
    found = checked(Season(farm))
    for number in range(data.draw(st.integers(1, 5)) if farm.places else 0):
        farm = counted(farm, data, number)
        found = found.after(farm)
        fresh = checked(Season(farm))
        assert found.clashes == fresh.clashes
        for place in farm.places:
            assert taken(found.season, place) == taken(fresh.season, place)
        for batch in farm.batches:
            assert found.season.days(batch) == fresh.season.days(batch)
