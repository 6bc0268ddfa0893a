"""What must hold for every farm, whatever is in it."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, Part, Place, Span, farm_of
from quailsched.season.birds import birds_on, hatched, split_of
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.footprint import footprint_of
from quailsched.season.season import Season
from tests.strategies import farms


def taken(farm: Farm, place: Place, day: date) -> tuple[int, int]:
    """(eggs or floor taken, birds) in ``place`` on ``day``, counted afresh from the stays alone."""
    from math import ceil

    load = birds = 0
    for batch in farm.batches:
        kind = kind_of(farm, batch)
        hatch = kind.days("incubation_days") if batch.origin.is_eggs else -batch.age_days
        number = (day - batch.start).days
        for stay in batch.stays:
            open_end = max(hatch + kind.days("first_egg_day") + kind.days("keep_lay_days"), stay.from_day + 1)
            end = stay.to_day if stay.to_day is not None else open_end
            if stay.place_id != place.id or not stay.from_day <= number < end:
                continue
            head = birds_on(kind, batch, number, stay.part)
            birds += head
            if place.role.holds_eggs:
                load += batch.number if batch.origin.is_eggs else 0
            elif number >= hatch:
                load += head * ceil(kind.at("floor_cm2", number - hatch))
    return load, birds


@given(farms(most_batches=4), st.data())
def test_occupancy_equals_a_day_by_day_count(farm: Farm, data: st.DataObject) -> None:
    season = Season(farm)
    for place in farm.places:
        slices = season.slices(place)
        assert all(a.end <= b.start for a, b in pairwise(slices))
        days = [day for piece in slices for day in (piece.start, piece.last, piece.end)]
        days.append(data.draw(st.dates(date(2026, 1, 1), date(2030, 12, 31))))
        for day in days:
            piece = next((s for s in slices if s.start <= day < s.end), None)
            shown = (piece.taken(place), piece.birds) if piece else (0, 0)
            assert shown == taken(farm, place, day)


def moved(farm: Farm, days: int) -> Farm:
    """Everything with a date, ``days`` later; what follows the calendar, cold nights and daylight, is not known."""
    step = timedelta(days=days)

    def spans(old: tuple[Span, ...]) -> tuple[Span, ...]:
        return tuple(Span(s.start + step, s.end + step, s.reason) for s in old)

    def place(old: Place) -> Place:
        ready_on, work_from = (day and day + step for day in (old.ready_on, old.work_from))
        return replace(old, shut=spans(old.shut), ready_on=ready_on, work_from=work_from)

    return farm_of(
        [
            replace(farm.settings, night_lows_c=(), latitude=None),
            *(place(p) for p in farm.places),
            *(replace(p, away=spans(p.away)) for p in farm.people),
            *(replace(b, start=b.start + step) for b in farm.batches),
            *farm.choices,
        ]
    )


def facts(clash: Clash, days: int = 0) -> tuple[object, ...]:
    step = timedelta(days=days)
    return (
        clash.kind, clash.place_id, clash.batch_ids, clash.first + step, clash.last + step, clash.worst + step,
        clash.need, clash.have, clash.birds_over,
    )  # fmt: skip


@given(farms(most_batches=4), st.integers(-400, 400))
def test_moving_everything_moves_every_clash(farm: Farm, days: int) -> None:
    here = clashes_of(Season(moved(farm, 0)))
    there = clashes_of(Season(moved(farm, days)))
    assert sorted(facts(c, days) for c in here) == sorted(facts(c) for c in there)


@given(farms(most_batches=4), st.data())
def test_more_room_never_makes_a_clash_about_room(farm: Farm, data: st.DataObject) -> None:
    if not farm.places:
        return
    place = data.draw(st.sampled_from(farm.places))
    more = data.draw(st.integers(1, 50_000))
    wider = replace(place, egg_places=place.egg_places + more) if place.role.holds_eggs else replace(
        place, floor_cm2=place.floor_cm2 + more
    )  # fmt: skip

    def days_over(one: Farm) -> set[date]:
        season = Season(one)
        found = [c for c in clashes_of(season) if c.kind in ("eggs", "floor") and c.place_id == place.id]
        return {c.first + timedelta(days=n) for c in found for n in range((c.last - c.first).days + 1)}

    assert days_over(farm.with_records(set(), (wider,))) <= days_over(farm)


@given(farms(most_batches=4), st.data())
def test_removing_a_batch_never_raises_what_is_taken(farm: Farm, data: st.DataObject) -> None:
    if not farm.batches:
        return
    batch = data.draw(st.sampled_from(farm.batches))
    fewer = farm.with_records({batch.id}, ())
    for place in farm.places:
        for piece in Season(fewer).slices(place):
            assert piece.taken(place) <= taken(farm, place, piece.start)[0]


@given(farms(most_batches=4), st.randoms(use_true_random=False))
def test_the_order_of_records_is_irrelevant(farm: Farm, random: Random) -> None:
    records = list(farm.records())
    random.shuffle(records)
    again = farm_of(records)
    assert again == farm
    assert clashes_of(Season(again)) == clashes_of(Season(farm))


@given(farms(most_batches=2))
def test_birds_never_come_back_to_life(farm: Farm) -> None:
    for batch in farm.batches:
        kind = kind_of(farm, batch)
        parts = {stay.part for stay in batch.stays}
        for part in parts:
            legs = footprint_of(kind, batch, tuple(farm.place(stay.place_id).role for stay in batch.stays)).legs
            first = max(min(leg.start for leg in legs if leg.stay.part is part), 0)
            hatch = kind.days("incubation_days") if batch.origin.is_eggs else 0
            counts = [birds_on(kind, batch, day, part) for day in range(max(first, hatch), first + 400, 3)]
            assert counts == sorted(counts, reverse=True)
            assert all(0 <= count <= hatched(kind, batch) for count in counts)


@given(farms(most_batches=2), st.integers(0, 1000))
def test_a_split_loses_and_makes_no_bird(farm: Farm, alive: int) -> None:
    for batch in farm.batches:
        kind = kind_of(farm, batch)
        laying, surplus = split_of(kind, alive)
        assert laying + surplus == alive
        assert min(laying, surplus) >= 0
        split = [stay.from_day for stay in batch.stays if stay.part is not Part.ALL]
        hatch = kind.days("incubation_days") if batch.origin.is_eggs else 0
        if split and split[0] >= hatch:
            together = birds_on(kind, batch, split[0])
            apart = [birds_on(kind, batch, split[0], part) for part in (Part.HENS, Part.COCKS)]
            assert sum(apart) == together


@given(farms(most_batches=4))
def test_clashes_lie_inside_their_days_and_name_real_records(farm: Farm) -> None:
    for clash in clashes_of(Season(farm)):
        assert clash.first <= clash.worst <= clash.last
        names_place = farm.place(clash.place_id).name in clash.sentence
        assert names_place or clash.kind in ("stale", "hands")
        assert all(isinstance(farm.find(batch_id), Batch) for batch_id in clash.batch_ids)
        assert clash.need != clash.have
        assert clash.sentence.endswith(".")
