"""On which days two bands of one stay differ, and lists of days put together piece by piece."""

from dataclasses import dataclass
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.desktop.season_canvas.differing import days_differing
from quailsched.desktop.season_canvas.lanes import Band, Grouping, Timed
from quailsched.desktop.season_canvas.layout import layout_of
from quailsched.edits.batches import start_on
from quailsched.edits.change import apply
from quailsched.farm.records import Farm
from quailsched.season.season import Season
from tests.bench.big_farm import big_farm

_FIRST = date(2027, 1, 1)
_DAY = timedelta(days=1)


def bands_in(season: Season, place_id: str, batch_id: str) -> list[Band]:
    lanes = layout_of(season, (), Grouping.PLACES).lanes
    lane = next(lane for lane in lanes if lane.id == place_id)
    return [band for band in lane.bands.items if band.batch_id == batch_id]


def moved(farm: Farm, batch_id: str, days: int) -> Farm:
    return apply(farm, start_on(farm, batch_id, farm.batch(batch_id).start + timedelta(days=days)))


def test_a_band_of_one_height_differs_where_it_comes_and_where_it_goes() -> None:
    """Eggs in a setter take the same room from the first day to the last: moved on by a day, only two days differ.
    No stage of theirs has a texture."""
    farm = big_farm(40)
    batch = farm.batches[3]
    was, now = Season(farm), Season(moved(farm, batch.id, 1))
    old, new = (bands_in(season, batch.stays[0].place_id, batch.id) for season in (was, now))
    end = batch.start + timedelta(days=batch.stays[0].to_day or 0)
    assert list(days_differing(old, was, new, now)) == [(batch.start, batch.start + _DAY), (end, end + _DAY)]


def test_a_band_that_is_the_same_made_anew_differs_nowhere() -> None:
    farm = big_farm(40)
    seasons = Season(farm), Season(farm)
    batch = farm.batches[8]
    old, new = (bands_in(season, batch.stays[2].place_id, batch.id) for season in seasons)
    assert old[0] is not new[0]
    assert list(days_differing(old, seasons[0], new, seasons[1])) == []


def test_bands_that_come_or_go_differ_on_all_their_days() -> None:
    farm = big_farm(40)
    season = Season(farm)
    (band,) = bands_in(season, farm.batches[3].stays[0].place_id, farm.batches[3].id)
    assert list(days_differing([band], season, [], season)) == [(band.start, band.end)]
    assert list(days_differing([], season, [band], season)) == [(band.start, band.end)]


@dataclass(frozen=True, slots=True, eq=False)
class Thing:
    start: date
    end: date


things = st.builds(
    lambda start, days: Thing(_FIRST + timedelta(days=start), _FIRST + timedelta(days=start + days)),
    st.integers(0, 60),
    st.integers(1, 30),
)


@given(st.lists(things, max_size=12), st.lists(things, max_size=4), st.sets(st.integers(0, 11)), things)
def test_a_spliced_list_finds_what_one_made_anew_finds(
    old: list[Thing], come: list[Thing], gone: set[int], asked: Thing
) -> None:
    before = Timed(sorted(old, key=lambda thing: thing.start))
    goes = {thing for number, thing in enumerate(before.items) if number in gone}
    touched = [*goes, *come]
    first = min((thing.start for thing in touched), default=_FIRST)
    end = max((thing.end for thing in touched), default=_FIRST)
    spliced = before.spliced(come, first, end, lambda thing: thing in goes)
    fresh = Timed(
        sorted((*(thing for thing in before.items if thing not in goes), *come), key=lambda thing: thing.start)
    )
    assert set(spliced.items) == set(fresh.items)
    assert [thing.start for thing in spliced.items] == [thing.start for thing in fresh.items]
    assert set(spliced.within(asked.start, asked.end)) == set(fresh.within(asked.start, asked.end))
    assert spliced.span == fresh.span
    again = spliced.spliced([], first, end, lambda thing: False)
    assert again is spliced
