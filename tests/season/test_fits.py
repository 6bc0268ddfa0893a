"""The days on which a batch fits in everywhere, against trying each day by itself."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, FigureChoice, Place, Span
from quailsched.season.fits import fitting_starts
from quailsched.season.rules.notready import closures
from quailsched.season.season import Season
from tests.builders import BROODER, MONDAY, PEN, PLAIN_FIGURES, SETTER, bought, eggs, farm, resized, stay
from tests.season.test_properties import taken
from tests.strategies import farms


def number_of(days: list[date], first: date = MONDAY) -> list[int]:
    return [(day - first).days for day in days]


def test_a_batch_fits_before_and_after_one_that_fills_the_setter() -> None:
    # Aster takes 60 of 100 egg places on days 10 to 24 (half-open at 25). Clover's 60 take 15 days: beside Aster there
    # is no room, so they start so early that they are out on day 10 (not after -5), or from day 25 on.
    aster = eggs("Aster", 60, stay(SETTER, 0, 15), start=MONDAY + timedelta(days=10))
    clover = eggs("Clover", 60, stay(SETTER, 0, 15))
    season = Season(farm(aster))
    found = fitting_starts(season, clover, MONDAY - timedelta(days=8), MONDAY + timedelta(days=28))
    assert number_of(found) == [-8, -7, -6, -5, 25, 26, 27]


def test_as_much_as_is_left_fits_and_one_more_does_not() -> None:
    # 100 egg places, 60 taken on all days asked about: 40 are left.
    season = Season(farm(eggs("Aster", 60, stay(SETTER, 0, 15))))
    ask = MONDAY, MONDAY + timedelta(days=3)
    assert number_of(fitting_starts(season, eggs("Clover", 40, stay(SETTER, 0, 15)), *ask)) == [0, 1, 2]
    assert fitting_starts(season, eggs("Clover", 41, stay(SETTER, 0, 15)), *ask) == []


def test_a_batch_is_not_in_its_own_way() -> None:
    aster = eggs("Aster", 100, stay(SETTER, 0, 15))
    assert len(fitting_starts(Season(farm(aster)), aster, MONDAY, MONDAY + timedelta(days=40))) == 40


def test_a_batch_too_large_for_an_empty_place_fits_on_no_day() -> None:
    season = Season(farm(SETTER))
    assert fitting_starts(season, eggs("Aster", 101, stay(SETTER, 0, 15)), MONDAY, MONDAY + timedelta(days=9)) == []


def test_every_place_of_the_route_counts() -> None:
    # 100 birds take 200 cm2 each, all of the brooder's 20,000 cm2, on days 0 to 4 after their start; on days 5 to 9
    # they are in the pen. The brooder is taken on days 0 to 2 (no start on 0, 1, 2), the pen shut on day 12 (no start
    # on 3 to 7, from which 12 is one of the days 5 to 9).
    others = bought("Aster", 100, 60, stay(BROODER, 0, 3))
    pen = replace(PEN, shut=(Span(MONDAY + timedelta(days=12), MONDAY + timedelta(days=13)),))
    season = Season(farm(others, pen))
    clover = bought("Clover", 100, 60, stay(BROODER, 0, 5), stay(PEN, 5, 10))
    assert number_of(fitting_starts(season, clover, MONDAY, MONDAY + timedelta(days=12))) == [8, 9, 10, 11]


def test_a_batch_that_grows_leaves_room_until_it_has_grown() -> None:
    # Aster's 100 birds take 100 cm2 each on days 0 to 9 and 200 cm2 from day 10 until they leave on day 20, in 20,000
    # cm2. Clover's 50, older, take 200 cm2 each for one day: 10,000 beside Aster's 10,000, but not beside 20,000.
    grows = FigureChoice("f3", "coturnix", "floor_cm2", None, ((0.0, 100.0), (9.0, 100.0), (10.0, 200.0)))
    season = Season(farm(bought("Aster", 100, 0, stay(BROODER, 0, 20)), *PLAIN_FIGURES[:2], grows, plain=False))
    clover = bought("Clover", 50, 60, stay(BROODER, 0, 1))
    found = fitting_starts(season, clover, MONDAY, MONDAY + timedelta(days=22))
    assert number_of(found) == [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 20, 21]


def test_no_days_asked_for_are_none() -> None:
    season = Season(farm(eggs("Aster", 60, stay(SETTER, 0, 15))))
    assert fitting_starts(season, season.farm.batches[0], MONDAY, MONDAY) == []


def fits_on(alone: Farm, others: Farm, batch: Batch) -> bool:
    """Whether ``batch`` finds room as it stands, each day counted by itself; it is the only one in ``alone``."""
    kind = kind_of(alone, batch)
    hatch = kind.days("incubation_days") if batch.origin.is_eggs else -batch.age_days
    last = max(hatch + kind.days("first_egg_day") + kind.days("keep_lay_days"), *(s.from_day + 1 for s in batch.stays))
    ends = [last if stay.to_day is None else stay.to_day for stay in batch.stays]
    for number in range(max(ends)):
        day = batch.start + timedelta(days=number)
        here = {stay.place_id for stay, end in zip(batch.stays, ends, strict=True) if stay.from_day <= number < end}
        for place in (alone.place(place_id) for place_id in here):
            load, birds = taken(alone, place, day)
            is_egg = batch.origin.is_eggs and (place.role.holds_eggs or number < hatch)
            if (birds or is_egg) and (is_shut(place, day) or load + taken(others, place, day)[0] > room_in(place)):
                return False
    return True


def is_shut(place: Place, day: date) -> bool:
    return any(closure.holds(day) for closure in closures(place))


def room_in(place: Place) -> int:
    return place.egg_places if place.role.holds_eggs else place.floor_cm2


@given(farms(most_places=3, most_batches=5), st.data())
def test_days_that_fit_are_those_found_by_trying_each(farm: Farm, data: st.DataObject) -> None:
    if not farm.batches:
        return
    batch = data.draw(st.sampled_from(farm.batches))
    # Rooms that some day of a batch fills just so, where one too many or a day too late shows.
    full_on = data.draw(st.sampled_from(farm.batches)).start + timedelta(days=data.draw(st.integers(0, 60)))
    tight = [resized(place, load) for place in farm.places if (load := taken(farm, place, full_on)[0])]
    farm = farm.with_records(set(), tuple(tight))
    first = data.draw(st.sampled_from(farm.batches)).start + timedelta(days=data.draw(st.integers(-40, 40)))
    days = [first + timedelta(days=number) for number in range(12)]
    others = farm.with_records({batch.id}, ())
    found = fitting_starts(Season(farm), batch, first, days[-1] + timedelta(days=1))
    nobody = farm.with_records({other.id for other in farm.batches}, ())
    moved = [batch.moved_to(day) for day in days]
    assert found == [m.start for m in moved if fits_on(nobody.with_records(set(), (m,)), others, m)]
    assert found == fitting_starts(Season(others), batch, first, days[-1] + timedelta(days=1))
