"""Splits and fittings: how many go, where, and how much more a place needs."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.change import apply
from quailsched.edits.splits import split_batch
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Batch, Farm, Leaving, Part, Person, Span, Stay
from quailsched.planner.ways_out import ways_out
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, MONDAY, PEN, SETTER, SETTINGS, eggs, farm, only, resized, stay
from tests.planner.judge import sentences

WIDE = (resized(SETTER, 400), resized(HATCHER, 400))
OTHER = replace(BROODER, id="other", name="Other", position=9)
CHAIN = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46, leaving=Leaving.SOLD))


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def test_chicks_without_floor_go_to_the_other_brooder_as_a_batch_of_their_own() -> None:
    # 150 plain birds of 200 cm2 in 20,000: 100 fit, 50 are over, which are a third. On day 10 they are set already, so
    # that they cannot be fewer; nobody lies in the other brooder.
    found = sentences(farm(eggs("Aster", 150, *CHAIN), OTHER, *WIDE), "floor", on(10))
    assert found[0] == (
        "Split Aster: about 50 of its 150 birds go to Other instead of Brooder on 19 Mar, as “Aster 2”."
    )


def test_birds_that_are_there_already_are_split_when_they_grow_too_large() -> None:
    # On day 30 all are in the brooder. By the figures 120 chicks take more than 20,000 cm2 from some day on only.
    one = farm(eggs("Aster", 160, *CHAIN), OTHER, *WIDE, plain=False)
    clash = only(clashes_of(Season(one), on(20)), "floor")
    assert clash.first > on(20)
    (way, *_) = ways_out(one, clash, on(20))
    after = apply(one, way.change)
    part = next(batch for batch in after.batches if batch.name == "Aster 2")
    day = (clash.first - MONDAY).days
    assert [(s.place_id, s.from_day, s.to_day, s.leaving) for s in part.stays[2:]] == [
        ("brooder", 18, day, None),
        ("other", day, 46, Leaving.SOLD),
    ]


def test_eggs_without_places_go_into_another_setter_and_not_into_a_hatcher() -> None:
    # 130 eggs for 100 places: 30 go.
    second = replace(SETTER, id="second", name="Second", position=9)
    found = sentences(farm(eggs("Aster", 130, *CHAIN), second, WIDE[1], resized(BROODER, 90_000)), "eggs")
    assert "Split Aster: 30 of its 130 eggs go to Second instead of Setter on 1 Mar, as “Aster 2”." in found
    assert not any("go to Hatcher" in sentence for sentence in found)


def test_a_day_without_hands_that_was_there_already_does_not_stand_against_a_split() -> None:
    # Ann is away on the day of the hatch: both halves hatch on it, as the whole did.
    ann = Person("ann", "Ann", away=(Span(on(17), on(18), "fair"),))
    found = sentences(farm(eggs("Aster", 150, *CHAIN), OTHER, *WIDE, ann), "floor", on(10))
    assert found[0].startswith("Split Aster")


PARTED = (*CHAIN[:2], stay(BROODER, 18, 46), stay(PEN, 46, 59), stay(PEN, 59, None, Part.HENS))


@given(st.integers(2, 400), st.data(), st.sampled_from([(2, 18), (2, 30), (3, 46), (4, 59), (4, 100)]))
def test_a_split_loses_nobody_and_keeps_all_days(number: int, data: st.DataObject, where: tuple[int, int]) -> None:
    index, day = where
    batch = eggs("Aster", number, *PARTED)
    one = farm(batch, OTHER, *WIDE)
    goes = data.draw(st.integers(1, number - 1))
    change = split_batch(one, "aster", goes, index, day, "other" if index == 2 else "pen")
    after = apply(one, change)
    parts = [b for b in after.batches if b.name.startswith("Aster")]
    assert sorted(part.number for part in parts) == sorted((number - goes, goes))
    assert {part.start for part in parts} == {MONDAY}
    assert {_days(part) for part in parts} == {_days(batch)}
    assert split_batch(one, "aster", goes, index, day, "other" if index == 2 else "pen") == change
    assert apply(after, change.inverse()) == one


def _days(batch: Batch) -> tuple[tuple[Part, int, int | None], ...]:
    """From when to when each part is somewhere, whatever the places."""

    def span(stays: list[Stay]) -> tuple[int, int | None]:
        return stays[0].from_day, stays[-1].to_day

    return tuple((part, *span(own)) for part in Part if (own := [s for s in batch.stays if s.part is part]))


@pytest.mark.parametrize("goes", [0, 50])
def test_a_part_of_nobody_or_of_all_is_no_split(goes: int) -> None:
    with pytest.raises(FarmError):
        split_batch(farm(eggs("Aster", 50, *CHAIN), OTHER), "aster", goes, 2, 18, "other")


def test_names_of_parts_are_free_and_do_not_look_like_another_number() -> None:
    one = farm(eggs("Aster", 50, *CHAIN), eggs("aster 2", 5, *CHAIN), eggs("Week 7", 50, *CHAIN), OTHER)
    named = [split_batch(one, name, 10, 2, 18, "other").touches[1].after for name in ("aster", "week 7")]
    assert [batch.name for batch in named if isinstance(batch, Batch)] == ["Aster 3", "Week 7, part 2"]


def _in_brooder(number: int, **fittings: int) -> Farm:
    place = replace(BROODER, floor_cm2=900_000, **fittings)  # type: ignore[arg-type]
    return farm(eggs("Aster", number, *CHAIN), place, *WIDE)


def test_missing_heat_is_hung() -> None:
    # 250 chicks, 100 to a lamp (heat_source_chicks): three lamps.
    found = sentences(_in_brooder(250, heat_sources=1), "heat", on(10))
    assert found[0] == "Put 2 more heat sources into Brooder: 3 instead of 1."


@pytest.mark.parametrize("what", ["drinker", "feeder"])
def test_missing_edge_is_put_in_by_tens(what: str) -> None:
    one = _in_brooder(350, **{f"{what}_cm": 53})
    kind = {"drinker": "water", "feeder": "feeder"}[what]
    clash = only(clashes_of(Season(one), on(10)), kind)
    more = next(n for n in range(0, 100_000, 10) if 53 + n >= clash.need)
    assert sentences(one, kind, on(10))[0] == (
        f"Put {more} cm more of {what} space into Brooder: {53 + more} cm in all."
    )


def test_short_days_are_lit() -> None:
    # Laying from day 59 on, in a hen house without lamps at 51 degrees north: in the winter it is too dark. Farms
    # give 14 hours (figure light_hours).
    one = farm(
        eggs("Aster", 80, *PARTED, stay(replace(PEN, id="run2"), 59, 73, Part.COCKS, Leaving.SOLD)),
        replace(PEN, id="run2", name="Run 2", floor_cm2=12_000),
        settings=replace(SETTINGS, latitude=51.0),
    )
    assert sentences(one, "dark", on(60))[0] == (
        "Let lamps in Pen fill the day up to 14 hours of light, every day of the year."
    )
