"""Occupancy against a general interval library (portion) and the free days that follow from it."""

from datetime import date, timedelta

import portion
from hypothesis import given
from hypothesis import strategies as st

from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Farm, Place
from quailsched.season.freeing import place_states
from quailsched.season.season import Season
from tests.strategies import farms


def stays_in(farm: Farm, place: Place) -> portion.Interval:
    """The days of all stays in ``place`` as one set of half-open intervals of day numbers."""
    days = portion.empty()
    for batch in farm.batches:
        kind = kind_of(farm, batch)
        hatch = kind.days("incubation_days") if batch.origin.is_eggs else -batch.age_days
        replaced = hatch + kind.days("first_egg_day") + kind.days("keep_lay_days")
        for stay in batch.stays:
            if stay.place_id == place.id:
                end = stay.to_day if stay.to_day is not None else max(replaced, stay.from_day + 1)
                zero = batch.start.toordinal()
                days |= portion.closedopen(zero + stay.from_day, zero + end)
    return days


@given(farms())
def test_slices_cover_the_union_of_all_stays(farm: Farm) -> None:
    season = Season(farm)
    for place in farm.places:
        covered = portion.empty()
        for piece in season.slices(place):
            covered |= portion.closedopen(piece.start.toordinal(), piece.end.toordinal())
        assert covered == stays_in(farm, place)


@given(farms(), st.dates(date(2026, 1, 1), date(2029, 12, 31)))
def test_a_place_said_to_be_free_is_not_taken_closed_or_being_cleaned(farm: Farm, today: date) -> None:
    season = Season(farm)
    for state in place_states(season, today, weeks=1):
        place = state.place
        stays = stays_in(farm, place)
        blocked = stays
        for run in stays:  # after the last stay of a run come the days of clean-out
            blocked |= portion.closedopen(run.lower, run.upper + place.clean_out_days)
        if place.ready_on is not None:
            blocked |= portion.closedopen(-portion.inf, place.ready_on.toordinal())
        for span in place.shut:
            blocked |= portion.closedopen(span.start.toordinal(), span.end.toordinal())
        free = state.free_on.toordinal()
        assert free not in blocked
        before = portion.closedopen(today.toordinal(), free)
        assert before in blocked or before.empty
        assert state.free_on - today >= timedelta(0)
