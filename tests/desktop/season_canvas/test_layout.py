"""The layout after a change is the one of a fresh look; what a change does not touch stays the same object."""

from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from quailsched.desktop.season_canvas.lanes import Grouping, LaneContent
from quailsched.desktop.season_canvas.layout import SeasonLayout, layout_of, numbers_after
from quailsched.farm.records import Batch, Farm, Part
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, PEN, SETTER, eggs, farm, stay
from tests.strategies import farms


def plain(content: LaneContent) -> tuple[object, ...]:
    """Everything that a lane shows, by value."""
    bands = sorted((band.key, band.pieces) for band in content.bands.items)
    closed = sorted((one.start, one.end, one.why) for one in content.closed.items)
    marks = [(mark.clash, mark.row, mark.is_accepted) for mark in content.marks.items]
    return content.id, content.title, content.room, bands, content.overs.items, closed, marks


def same(one: SeasonLayout, other: SeasonLayout) -> None:
    assert [plain(content) for content in one.lanes] == [plain(content) for content in other.lanes]
    assert set(one.links.items) == set(other.links.items)


def laid_out(now: Checked, grouping: Grouping, old: SeasonLayout | None = None) -> SeasonLayout:
    return layout_of(now.season, now.clashes, grouping, old)


@given(
    plan=farms(),
    grouping=st.sampled_from(Grouping),
    moves=st.lists(st.tuples(st.integers(0, 9), st.integers(-40, 40)), min_size=1, max_size=4),
)
@settings(deadline=None)
def test_a_layout_after_moves_is_a_fresh_one(plan: Farm, grouping: Grouping, moves: list[tuple[int, int]]) -> None:
    now = checked(Season(plan))
    layout = laid_out(now, grouping)
    for number, days in moves:
        if not now.season.farm.batches:
            return
        batch = now.season.farm.batches[number % len(now.season.farm.batches)]
        moved = batch.moved_to(batch.start + timedelta(days=days))
        now = now.after(now.season.farm.with_records(set(), (moved,)))
        layout = laid_out(now, grouping, layout)
        same(layout, laid_out(checked(Season(now.season.farm)), grouping))


@given(plan=farms(), grouping=st.sampled_from(Grouping), number=st.integers(0, 9))
@settings(deadline=None)
def test_a_layout_without_a_batch_is_a_fresh_one(plan: Farm, grouping: Grouping, number: int) -> None:
    if not plan.batches:
        return
    now = checked(Season(plan))
    gone = plan.batches[number % len(plan.batches)]
    after = now.after(plan.with_records({gone.id}, ()))
    same(laid_out(after, grouping, laid_out(now, grouping)), laid_out(checked(Season(after.season.farm)), grouping))


def two_batches() -> Farm:
    route = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 66))
    return farm(eggs("Elder", 60, *route), eggs("Fern", 40, *route, start=date(2027, 9, 6)))


def test_what_a_move_does_not_touch_stays_the_same_object() -> None:
    now = checked(Season(two_batches()))
    before = laid_out(now, Grouping.PLACES)
    fern = now.season.farm.batch("fern")
    after = laid_out(
        now.after(now.season.farm.with_records(set(), (fern.moved_to(fern.start + timedelta(days=1)),))),
        Grouping.PLACES,
        before,
    )
    for old, new in zip(before.lanes, after.lanes, strict=True):
        elder_old = [band for band in old.bands.items if band.batch_id == "elder"]
        elder_new = [band for band in new.bands.items if band.batch_id == "elder"]
        assert all(one is other for one, other in zip(elder_old, elder_new, strict=True))
    assert any(old is not new for old, new in zip(before.lanes, after.lanes, strict=True))


def test_the_lane_of_a_batch_shows_its_eggs_and_birds_on_every_day() -> None:
    plan = two_batches()
    season = Season(plan)
    lane = layout_of(season, (), Grouping.BATCHES).lanes[0]
    elder = plan.batch("elder")
    # 60 eggs until the hatch on day 17 or so, then as many as are alive, in one stay after the other.
    for number in range(66):
        day = elder.start + timedelta(days=number)
        (band,) = lane.bands.within(day, day + timedelta(days=1))
        piece = band.piece_on(day)
        assert piece is not None
        alive = season.birds(elder, day, Part.ALL)
        assert piece.high - piece.low == (alive or 60)
    assert lane.room == 60
    assert [plan.place(band.place_id) for band in lane.bands.items] == [SETTER, HATCHER, BROODER, PEN]


def batches(*starts: tuple[str, int]) -> tuple[Batch, ...]:
    first = date(2027, 3, 1)
    made = [eggs(name, 20, stay(SETTER, 0, 15), start=first + timedelta(days=day)) for name, day in starts]
    return tuple(sorted(made, key=lambda batch: batch.start))


def test_a_batch_keeps_its_colour_when_it_is_moved_past_another() -> None:
    before = numbers_after({}, batches(("A", 0), ("B", 10), ("C", 20)))
    assert list(before.values()) == [0, 1, 2]
    after = numbers_after(before, batches(("A", 15), ("B", 10), ("C", 20)))
    assert after == before


def test_a_new_batch_gets_a_colour_that_none_near_it_has() -> None:
    ten = batches(*((chr(65 + number), number * 7) for number in range(10)))
    numbers = dict(numbers_after({}, ten))
    added = batches(*((chr(65 + number), number * 7) for number in range(10)), ("Z", 31))
    after = numbers_after(numbers, added)
    at = [batch.id for batch in added].index("z")
    near = [after[batch.id] for batch in (*added[at - 3 : at], *added[at + 1 : at + 4])]
    assert after["z"] not in near
    assert {one: number for one, number in after.items() if one != "z"} == numbers
