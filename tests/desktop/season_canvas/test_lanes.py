"""What the lanes show follows from the season, load for load."""

from datetime import date, timedelta
from itertools import count, pairwise
from uuid import UUID

import pytest

from quailsched.desktop.season_canvas.by_place import lanes_by_place
from quailsched.desktop.season_canvas.geometry import place_lanes
from quailsched.desktop.season_canvas.lanes import Grouping, LaneContent
from quailsched.desktop.season_canvas.layout import layout_of
from quailsched.desktop.season_canvas.mark_places import MARK_WORDS
from quailsched.farm.example import example_farm
from quailsched.farm.records import Place
from quailsched.report.clashes import TITLES
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season

TODAY = date(2027, 4, 6)


@pytest.fixture(scope="module")
def season() -> Season:
    numbers = count(1)
    return Season(example_farm(TODAY, lambda: str(UUID(int=next(numbers)))))


@pytest.fixture(scope="module")
def lanes(season: Season) -> tuple[LaneContent, ...]:
    return lanes_by_place(season, clashes_of(season))


def place_of(lane: LaneContent) -> Place:
    assert lane.place is not None
    return lane.place


def test_bands_stack_to_what_is_taken_on_every_day(season: Season, lanes: tuple[LaneContent, ...]) -> None:
    for lane in lanes:
        for piece in season.slices(place_of(lane)):
            here = [p for band in lane.bands.items for p in band.pieces if p.start <= piece.start < p.end]
            spans = sorted((p.low, p.high) for p in here)
            assert spans[0][0] == 0
            assert all(a[1] == b[0] for a, b in pairwise(spans))
            assert spans[-1][1] == piece.taken(place_of(lane))


def test_overflow_is_shown_on_exactly_the_days_over_the_line(season: Season, lanes: tuple[LaneContent, ...]) -> None:
    for lane in lanes:
        shown = {
            over.start + timedelta(days=n) for over in lane.overs.items for n in range((over.end - over.start).days)
        }
        counted = {
            piece.start + timedelta(days=n)
            for piece in season.slices(place_of(lane))
            if piece.taken(place_of(lane)) > lane.room
            for n in range((piece.end - piece.start).days)
        }
        assert shown == counted


def test_every_clash_has_a_mark_and_marks_in_a_row_do_not_overlap(
    season: Season, lanes: tuple[LaneContent, ...]
) -> None:
    clashes = clashes_of(season)
    assert sorted(m.clash.sentence for lane in lanes for m in lane.marks.items) == sorted(c.sentence for c in clashes)
    for lane in lanes:
        for row in range(lane.mark_rows()):
            days = sorted((m.clash.first, m.clash.last) for m in lane.marks.items if m.row == row)
            assert all(a[1] < b[0] for a, b in pairwise(days))


def test_every_kind_of_clash_has_words_for_its_mark() -> None:
    assert MARK_WORDS.keys() == TITLES.keys()


def test_a_link_joins_each_move_to_another_place(season: Season) -> None:
    # Aster: setter, tray, brooder, run, and its cocks to the ark: four moves between lanes.
    aster = season.farm.batches[0]
    links = layout_of(season, (), Grouping.PLACES).links.items
    moves = [(link.day - aster.start).days for link in links if link.batch_id == aster.id]
    assert sorted(moves) == [15, 18, 46, 59]


def test_lanes_never_overlap_and_overflow_stays_inside_its_lane(lanes: tuple[LaneContent, ...]) -> None:
    for height in (200.0, 600.0, 1500.0):
        placed = place_lanes(lanes, 15.0, height)
        for lane in placed:
            most = max(lane.content.peak(), lane.content.room)
            assert lane.top <= lane.y(most) <= lane.line_y < lane.base_y < lane.bottom
        assert all(a.bottom == b.top for a, b in pairwise(placed))
