"""A changed farm that is looked at again only where it changed has the clashes of a fresh look."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.records import Batch, Farm, Place
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.builders import resized
from tests.strategies import batches, farms, ids, places


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
