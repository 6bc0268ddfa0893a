"""The plan after a count: what follows from it moves along, to the day; what is known to have happened stays."""

from __future__ import annotations

from dataclasses import replace

import pytest

from quailsched.edits.change import apply
from quailsched.edits.counts import correct, record, take_back
from quailsched.farm.check import require_sound
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.ledger import standing
from quailsched.farm.records import Leaving, Part, Place, Role, Stay
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, PEN, RUN, SETTER, on, stay
from tests.edits.counted import NOW, ROUTE, TODAY, TOGETHER, birds, clover, fact, known, stays

HATCH = fact(Sort.HATCHED, 17, 70)
PLANNED = [
    ("setter", 0, 15, "all"), ("hatcher", 15, 18, "all"), ("brooder", 18, 46, "all"), ("pen", 46, None, "hens"),
    ("ark", 46, 60, "cocks"),
]  # fmt: skip


def later(by: int) -> list[tuple[str, int, int | None, str]]:
    """The plan of Clover with all that comes after the hatch ``by`` days later."""
    return [
        ("setter", 0, 15, "all"), ("hatcher", 15, 18 + by, "all"), ("brooder", 18 + by, 46 + by, "all"),
        ("pen", 46 + by, None, "hens"), ("ark", 46 + by, 60 + by, "cocks"),
    ]  # fmt: skip


@pytest.mark.parametrize("by", [-1, 1, 2])
def test_a_hatch_on_another_day_moves_brooder_and_pens_along(by: int) -> None:
    one = known(clover(), fact(Sort.HATCHED, 17 + by, 70))
    assert stays(one) == later(by)
    days = Season(one).days(one.batch("clover"))
    assert (days.lockdown, days.hatch, days.dry, days.feathered) == (15, 17 + by, 18 + by, 42 + by)
    assert [birds(one, 17 + by + day) for day in (-1, 0, 1)] == [0, 70, 70]


@pytest.mark.parametrize("right", [15, 17, 19])
@pytest.mark.parametrize(("moves", "wrong"), [((), 13), ((), 14), ((fact(Sort.MOVED, 14, place_id=HATCHER.id),), 13)])
def test_a_hatch_that_was_told_far_too_early_leaves_nothing_of_it_in_the_plan(
    moves: tuple[Count, ...], wrong: int, right: int
) -> None:
    # They cannot be out of the hatcher before they are in it: that border came on by fewer days, or by none.
    start = known(clover(), *moves)
    one = known(start, first := fact(Sort.HATCHED, wrong, 70))
    better = fact(Sort.HATCHED, right, 70, hour=1)
    assert stays(apply(one, take_back(one, first.id, "gone", NOW))) == stays(start)
    assert stays(apply(one, correct(one, first.id, better, TODAY))) == stays(known(start, better))


def test_a_few_that_hatch_far_too_early_do_not_keep_the_others_in_the_hatcher() -> None:
    # By day 17 half are out, as was planned.
    assert stays(known(clover(), fact(Sort.HATCHED, 14, 10), fact(Sort.HATCHED, 17, 60))) == PLANNED


def test_a_hatch_on_its_day_moves_nothing() -> None:
    assert stays(known(clover(), HATCH)) == PLANNED


def test_of_several_hatch_counts_the_day_holds_by_which_half_were_out() -> None:
    # 10, 50 and 10: 10 are out by day 16, 60 of 70 by day 17.
    one = known(clover(), fact(Sort.HATCHED, 16, 10))
    assert stays(one) == later(-1)
    one = known(one, fact(Sort.HATCHED, 17, 50), fact(Sort.HATCHED, 18, 10))
    assert stays(one) == PLANNED
    assert [birds(one, day) for day in (16, 17, 18)] == [0, 60, 70]
    # 35 and 35: half of 70 are out by day 16.
    assert stays(known(clover(), fact(Sort.HATCHED, 16, 35), fact(Sort.HATCHED, 17, 35))) == later(-1)


def test_a_day_on_which_birds_moved_stays_when_the_hatch_turns_out_later() -> None:
    one = known(clover(), fact(Sort.HATCHED, 17, 10), fact(Sort.MOVED, 18, 10, place_id=BROODER.id))
    one = known(one, fact(Sort.HATCHED, 18, 60))  # now half were out a day later
    expected = later(1)
    expected[1:3] = [("hatcher", 15, 18, "all"), ("brooder", 18, 47, "all")]
    assert stays(one) == expected


def test_seventy_of_a_hundred_and_twenty_are_seventy_birds_everywhere() -> None:
    one = known(clover(number=120), HATCH)
    # 35 hens with 12 of 35 cocks, and 23 surplus; 200 cm2 each.
    assert (birds(one, 30), birds(one, 50, Part.HENS), birds(one, 50, Part.COCKS)) == (70, 47, 23)
    season = Season(one)
    brooder, pen, ark = (season.slice_on(place, on(day)) for place, day in ((BROODER, 30), (PEN, 50), (ARK, 50)))
    assert [piece and piece.floor_cm2 for piece in (brooder, pen, ark)] == [14_000, 9_400, 4_600]


def test_birds_that_feather_slowly_stay_in_the_brooder_until_they_are() -> None:
    one = known(clover(), HATCH, fact(Sort.FEATHERED, 50))
    expected = [*PLANNED[:2], ("brooder", 18, 50, "all"), ("pen", 50, None, "hens"), ("ark", 50, 60, "cocks")]
    assert stays(one) == expected
    assert Season(one).days(one.batch("clover")).feathered == 50


def test_birds_that_feather_early_leave_when_planned() -> None:
    one = known(clover(), HATCH, fact(Sort.FEATHERED, 38))
    assert stays(one) == PLANNED
    assert Season(one).days(one.batch("clover")).may_leave_brooder == 42  # feathered by 38, off heat by 17 + 25


def test_birds_that_were_moved_out_before_they_were_feathered_stay_out() -> None:
    one = known(clover(route=TOGETHER), HATCH, fact(Sort.MOVED, 46, 70, place_id=PEN.id), fact(Sort.FEATHERED, 50))
    assert stays(one)[2:] == [("brooder", 18, 46, "all"), ("pen", 46, 90, "all")]


def test_a_pen_that_is_finished_a_week_late_keeps_birds_where_they_are() -> None:
    one = clover(replace(PEN, ready_on=on(46), work_hours=20.0, work_from=on(0)))
    one = known(one, HATCH, fact(Sort.BUILT, 53, batch="", place_id=PEN.id))
    pen = one.place(PEN.id)
    assert (pen.ready_on, pen.work_hours, pen.work_from) == (on(53), 0.0, None)
    assert stays(one)[2:] == [("brooder", 18, 53, "all"), ("pen", 53, None, "hens"), ("ark", 53, 60, "cocks")]


def test_a_pen_for_cocks_that_is_finished_late_keeps_all_where_they_are() -> None:
    one = clover(replace(ARK, ready_on=on(46)))
    one = known(one, HATCH, fact(Sort.BUILT, 53, batch="", place_id=ARK.id))
    assert stays(one)[2:] == [("brooder", 18, 53, "all"), ("pen", 53, None, "hens"), ("ark", 53, 60, "cocks")]


def test_a_pen_of_both_groups_that_is_finished_late_keeps_both() -> None:
    route = (*clover().batch("clover").stays[:3], stay(RUN, 46, 50, Part.HENS), stay(PEN, 50, None, Part.HENS),
             stay(RUN, 46, 50, Part.COCKS), stay(PEN, 50, 60, Part.COCKS))  # fmt: skip
    one = known(clover(replace(PEN, ready_on=on(46)), route=route), fact(Sort.BUILT, 53, batch="", place_id=PEN.id))
    assert stays(one)[3:] == [
        *(("run", 46, 53, "hens"), ("pen", 53, None, "hens"), ("run", 46, 53, "cocks"), ("pen", 53, 60, "cocks")),
    ]


def test_a_pen_that_is_finished_in_time_moves_nobody() -> None:
    one = known(clover(replace(PEN, ready_on=on(46))), fact(Sort.BUILT, 40, batch="", place_id=PEN.id))
    assert (stays(one), one.place(PEN.id).ready_on) == (PLANNED, on(40))


def test_a_pen_that_stood_already_stays_as_it_is() -> None:
    one = known(clover(), fact(Sort.BUILT, 53, batch="", place_id=PEN.id))
    assert (one.place(PEN.id).ready_on, stays(one)) == (None, PLANNED)


def test_a_pen_that_is_not_finished_after_all_is_planned_as_before() -> None:
    before = clover(replace(PEN, ready_on=on(60)))
    one = known(before, fact(Sort.BUILT, 40, batch="", place_id=PEN.id))
    one = apply(one, take_back(one, "builtpen-40-0", "gone", NOW))
    assert one.place(PEN.id).ready_on == on(60)


def test_a_pen_that_is_not_finished_after_all_has_its_work_left_again() -> None:
    # No day was planned, but 20.5 hours of work: whole ones in a count, which does not keep that they were of day 0.
    before = clover(replace(PEN, work_hours=20.5, work_from=on(0)))
    one = known(before, fact(Sort.BUILT, 40, batch="", place_id=PEN.id))
    one = apply(one, take_back(one, "builtpen-40-0", "gone", NOW))
    pen = one.place(PEN.id)
    assert (pen.ready_on, pen.work_hours, pen.work_from) == (None, 21.0, on(40))
    assert stays(one) == stays(before)


def test_that_another_pen_is_finished_is_another_count() -> None:
    built = fact(Sort.BUILT, 40, batch="", place_id=PEN.id)
    one = known(clover(replace(PEN, ready_on=on(60))), built)
    with pytest.raises(FarmError, match="take it back and record it for the other place instead"):
        correct(one, built.id, replace(built, id="other", place_id=ARK.id), TODAY)


def test_a_pen_that_was_finished_by_another_count_too_stands_since_that_one() -> None:
    one = clover(replace(PEN, work_hours=20.0, work_from=on(0)))
    first, again = (fact(Sort.BUILT, day, batch="", place_id=PEN.id) for day in (30, 40))
    one = known(one, first, again)
    one = apply(one, take_back(one, first.id, "gone", NOW))
    assert (one.place(PEN.id).ready_on, one.place(PEN.id).work_hours) == (on(40), 0.0)


# Moves


def test_a_planned_move_on_another_day_begins_the_stay_then() -> None:
    for day in (17, 19):
        one = known(clover(), HATCH, fact(Sort.MOVED, day, 70, place_id=BROODER.id))
        assert stays(one)[1:3] == [("hatcher", 15, day, "all"), ("brooder", day, 46, "all")]
        assert one.counts[-1].plan_day == on(18)


def test_a_move_to_a_place_that_was_not_planned_is_a_stay_of_its_own() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 40, 70, place_id=RUN.id))
    assert stays(one)[2:] == [
        *(("brooder", 18, 40, "all"), ("run", 40, 46, "all"), ("pen", 46, None, "hens"), ("ark", 46, 60, "cocks")),
    ]
    assert one.counts[-1].plan_day is None


def test_all_moving_into_the_pen_of_the_hens_are_together_there_until_they_part() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 44, 70, place_id=PEN.id))
    assert stays(one)[2:] == [
        *(("brooder", 18, 44, "all"), ("pen", 44, 46, "all"), ("pen", 46, None, "hens"), ("ark", 46, 60, "cocks")),
    ]


def test_hens_that_move_early_part_from_the_cocks_then() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 44, 47, place_id=PEN.id, part=Part.HENS))
    assert stays(one)[2:] == [
        *(("brooder", 18, 44, "all"), ("pen", 44, None, "hens")),
        *(("brooder", 44, 46, "cocks"), ("ark", 46, 60, "cocks")),
    ]


def test_hens_that_move_late_wait_where_all_were() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 48, 47, place_id=PEN.id, part=Part.HENS))
    assert stays(one)[2:] == [
        *(("brooder", 18, 46, "all"), ("brooder", 46, 48, "hens"), ("pen", 48, None, "hens"), ("ark", 46, 60, "cocks")),
    ]
    one = known(one, fact(Sort.MOVED, 49, 23, place_id=ARK.id, part=Part.COCKS))
    assert stays(one)[5:] == [("brooder", 46, 49, "cocks"), ("ark", 49, 60, "cocks")]


def test_a_late_move_of_all_goes_for_the_group_that_was_to_go_there() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 48, 70, place_id=PEN.id))
    assert ("pen", 48, None, "hens") in stays(one)


def test_one_group_moves_to_another_place_without_the_other() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 50, 23, place_id=RUN.id, part=Part.COCKS))
    assert stays(one)[3:] == [("pen", 46, None, "hens"), ("ark", 46, 50, "cocks"), ("run", 50, 60, "cocks")]
    assert one.batch("clover").stays[-1].leaving is Leaving.PROCESSED


def test_both_groups_move_to_another_place_together() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 50, 70, place_id=RUN.id))
    assert stays(one)[3:] == [
        *(("pen", 46, 50, "hens"), ("run", 50, None, "hens"), ("ark", 46, 50, "cocks"), ("run", 50, 60, "cocks")),
    ]


def test_a_move_that_is_corrected_happened_on_the_other_day_only() -> None:
    moved = fact(Sort.MOVED, 40, 70, place_id=RUN.id)
    one = known(clover(), HATCH, moved)
    one = require_sound(apply(one, correct(one, moved.id, replace(moved, id="better", day=on(43)), TODAY)))
    assert stays(one)[2:4] == [("brooder", 18, 43, "all"), ("run", 43, 46, "all")]


@pytest.mark.parametrize("route", [ROUTE, TOGETHER])
@pytest.mark.parametrize(
    ("wrong", "right"),
    [
        *(((20, BROODER, Part.ALL), (44, PEN, Part.HENS)), ((48, RUN, Part.HENS), (48, RUN, Part.ALL))),
        *(((48, RUN, Part.ALL), (48, RUN, Part.HENS)), ((44, PEN, Part.HENS), (44, PEN, Part.ALL))),
        *(((49, PEN, Part.ALL), (44, PEN, Part.ALL)), ((42, ARK, Part.COCKS), (44, PEN, Part.HENS))),
        *(((44, PEN, Part.ALL), (44, RUN, Part.HENS)), ((50, ARK, Part.COCKS), (20, BROODER, Part.ALL))),
    ],
)
def test_a_move_that_is_corrected_is_as_if_the_right_one_had_been_recorded(
    route: tuple[Stay, ...], wrong: tuple[int, Place, Part], right: tuple[int, Place, Part]
) -> None:
    first, better = (fact(Sort.MOVED, day, place_id=place.id, part=part, hour=1 if (day, place, part) == right else 0)
                     for day, place, part in (wrong, right))  # fmt: skip
    start = known(clover(route=route), HATCH)
    expected = known(start, better)
    one = known(start, first)
    one = require_sound(apply(one, correct(one, first.id, better, TODAY)))
    assert stays(one) == stays(expected)
    assert one.batch("clover") == expected.batch("clover")
    if wrong[1:] != right[1:]:  # what the plan had for the right place, not for the wrong one
        assert [c.plan_day for c in standing(one.counts)] == [c.plan_day for c in standing(expected.counts)]


@pytest.mark.parametrize(("day", "place"), [(20, BROODER), (16, BROODER), (40, RUN), (44, PEN)])
def test_a_move_that_is_taken_back_is_planned_as_before(day: int, place: object) -> None:
    moved = fact(Sort.MOVED, day, place_id=getattr(place, "id", ""))
    one = known(clover(), moved)
    assert stays(one) != PLANNED
    one = require_sound(apply(one, take_back(one, moved.id, "gone", NOW)))
    assert stays(one) == PLANNED


@pytest.mark.parametrize(
    ("route", "day", "place", "part"),
    [
        # Two days before all part: they would wait in the brooder, and the others are there too.
        *((ROUTE, 44, PEN, Part.HENS), (ROUTE, 42, ARK, Part.COCKS)),
        # Of a batch that is planned to stay together until it is sold on day 90.
        *((TOGETHER, 44, PEN, Part.HENS), (TOGETHER, 46, PEN, Part.HENS), (TOGETHER, 49, PEN, Part.HENS)),
        *((TOGETHER, 44, RUN, Part.HENS), (TOGETHER, 48, RUN, Part.HENS), (TOGETHER, 70, RUN, Part.HENS)),
        *((TOGETHER, 42, ARK, Part.COCKS), (TOGETHER, 46, ARK, Part.COCKS), (TOGETHER, 50, ARK, Part.COCKS)),
    ],
)
def test_a_group_that_did_not_part_after_all_is_with_the_others_again(
    route: tuple[Stay, ...], day: int, place: Place, part: Part
) -> None:
    before, move = known(clover(route=route), HATCH), fact(Sort.MOVED, day, place_id=place.id, part=part)
    one = known(before, move)
    assert one.batch("clover") != before.batch("clover") or day == 46
    one = require_sound(apply(one, take_back(one, move.id, "gone", NOW)))
    assert one.batch("clover") == before.batch("clover")


def test_a_group_that_did_not_part_yet_goes_when_the_others_do() -> None:
    # The pen that was planned for them is lost: the run was put in its place. Until day 46 all are in the brooder.
    one = known(clover(), HATCH, move := fact(Sort.MOVED, 44, place_id=RUN.id, part=Part.HENS))
    one = require_sound(apply(one, take_back(one, move.id, "gone", NOW)))
    assert stays(one) == [*PLANNED[:3], ("run", 46, None, "hens"), ("ark", 46, 60, "cocks")]


def test_a_group_that_did_not_part_stays_where_it_is_if_another_is_known_to_have_moved() -> None:
    cocks = fact(Sort.MOVED, 44, place_id=ARK.id, part=Part.COCKS)
    before = known(clover(route=TOGETHER), HATCH, cocks)
    one = known(before, move := fact(Sort.MOVED, 60, place_id=RUN.id, part=Part.HENS))
    one = require_sound(apply(one, take_back(one, move.id, "gone", NOW)))
    assert stays(one) == stays(before)


def test_both_groups_are_back_where_all_were_not_moved_together() -> None:
    # The cocks, due to go on day 60, were in the ark until they were moved on day 70, and went a day later.
    one = known(clover(), HATCH, move := fact(Sort.MOVED, 70, place_id=RUN.id))
    assert stays(one)[3:] == [
        *(("pen", 46, 70, "hens"), ("run", 70, None, "hens"), ("ark", 46, 70, "cocks"), ("run", 70, 71, "cocks")),
    ]
    one = require_sound(apply(one, take_back(one, move.id, "gone", NOW)))
    assert stays(one)[3:] == [("pen", 46, None, "hens"), ("ark", 46, 71, "cocks")]


def test_a_day_on_which_birds_moved_cannot_be_pushed_away_by_the_next_count() -> None:
    # Moved to the brooder on day 17; a hatch that turns out on day 18 leaves the move on its day.
    one = known(clover(), fact(Sort.MOVED, 17, place_id=BROODER.id), fact(Sort.HATCHED, 18, 70))
    assert stays(one)[1:3] == [("hatcher", 15, 17, "all"), ("brooder", 17, 47, "all")]


def test_birds_that_are_put_back_where_they_were_stay_there_again() -> None:
    out, back = fact(Sort.MOVED, 40, 70, place_id=RUN.id), fact(Sort.MOVED, 43, 70, place_id=BROODER.id)
    for known_before in ((), (fact(Sort.MOVED, 18, 70, place_id=BROODER.id),)):
        one = known(clover(), HATCH, *known_before, out, back)
        assert stays(one)[2:5] == [("brooder", 18, 40, "all"), ("run", 40, 43, "all"), ("brooder", 43, 46, "all")]


@pytest.mark.parametrize(
    ("route", "day", "part"), [(ROUTE, 50, Part.ALL), (ROUTE, 50, Part.HENS), (TOGETHER, 50, Part.ALL)]
)
def test_birds_that_are_put_back_were_not_planned_to_be(route: tuple[Stay, ...], day: int, part: Part) -> None:
    # They came into the brooder on day 18; that they are there again on day 50 is no move of that day come late.
    start = known(clover(route=route), HATCH)
    back = fact(Sort.MOVED, day, place_id=BROODER.id, part=part)
    one = known(start, back)
    assert [count.plan_day for count in one.counts if count.sort is Sort.MOVED] == [None]
    one = require_sound(apply(one, take_back(one, back.id, "gone", NOW)))
    assert one.batch("clover") == start.batch("clover")


def test_a_hatch_does_not_push_a_border_past_a_day_on_which_birds_moved() -> None:
    # Moved on to the run on day 20: the brooder before it cannot begin on day 21, three days later. The rest can.
    one = known(clover(), fact(Sort.MOVED, 20, place_id=RUN.id), fact(Sort.HATCHED, 20, 70))
    assert stays(one)[1:] == [
        *(("hatcher", 15, 18, "all"), ("brooder", 18, 20, "all"), ("run", 20, 49, "all")),
        *(("pen", 49, None, "hens"), ("ark", 49, 63, "cocks")),
    ]


def test_a_pen_that_is_finished_after_birds_went_on_from_it_moves_nobody() -> None:
    route = (*TOGETHER[:3], stay(PEN, 46, 50), stay(RUN, 50, 90, leaving=Leaving.SOLD))
    one = known(clover(replace(PEN, ready_on=on(40)), route=route), HATCH, fact(Sort.MOVED, 50, place_id=RUN.id))
    one = known(one, fact(Sort.BUILT, 53, batch="", place_id=PEN.id))
    assert stays(one)[2:] == [("brooder", 18, 46, "all"), ("pen", 46, 50, "all"), ("run", 50, 90, "all")]


def test_a_second_move_into_the_same_place_leaves_the_first_on_its_day() -> None:
    first, second = (fact(Sort.MOVED, day, 70, place_id=BROODER.id) for day in (18, 30))
    one = known(clover(), HATCH, first, second)
    assert stays(one)[1:4] == [("hatcher", 15, 18, "all"), ("brooder", 18, 30, "all"), ("brooder", 30, 46, "all")]


def test_a_move_long_after_the_plan_had_them_elsewhere_is_a_return() -> None:
    one = known(clover(route=TOGETHER), HATCH, fact(Sort.MOVED, 62, 70, place_id=BROODER.id))
    assert stays(one)[2:] == [("brooder", 18, 46, "all"), ("pen", 46, 62, "all"), ("brooder", 62, 90, "all")]


# The last birds


def test_the_last_birds_sold_end_the_stay() -> None:
    one = known(clover(), HATCH, fact(Sort.SOLD, 40, 70))
    assert stays(one) == [*PLANNED[:2], ("brooder", 18, 40, "all")]
    assert birds(one, 40) == 0
    assert Season(one).slice_on(BROODER, on(40)) is None


def test_birds_that_are_sold_on_the_day_of_their_move_have_moved() -> None:
    one = known(clover(), HATCH, fact(Sort.MOVED, 18, 70, place_id=BROODER.id), fact(Sort.SOLD, 18, 70))
    assert stays(one) == [*PLANNED[:2], ("brooder", 18, 19, "all")]
    assert birds(one, 18) == 0
    # All dead the day before, though they were moved: the move was written down, and is not refused afterwards.
    moved = fact(Sort.MOVED, 18, place_id=BROODER.id)
    one = known(clover(), fact(Sort.CLEAR, 7, 30), HATCH, moved, fact(Sort.DIED, 17, 70))
    assert stays(one) == [*PLANNED[:2], ("brooder", 18, 19, "all")]


@pytest.mark.parametrize("order", [(0, 1), (1, 0)])
def test_the_stay_ends_with_the_last_of_them_in_whatever_order_they_are_written_down(order: tuple[int, int]) -> None:
    sold = (fact(Sort.SOLD, 40, 60), fact(Sort.DIED, 44, 10))
    one = known(clover(), HATCH, *(sold[number] for number in order))
    assert stays(one) == [*PLANNED[:2], ("brooder", 18, 44, "all")]


def test_a_bird_that_is_left_keeps_the_stays() -> None:
    assert stays(known(clover(), HATCH, fact(Sort.SOLD, 40, 69))) == PLANNED


def test_processed_cocks_end_their_stay_and_no_other() -> None:
    one = known(clover(), HATCH, fact(Sort.PROCESSED, 55, 23, part=Part.COCKS, grams=4600, dressed_g=3200))
    assert stays(one) == [*PLANNED[:4], ("ark", 46, 55, "cocks")]
    assert [birds(one, 55, part) for part in Part] == [47, 47, 0]


def test_processed_cocks_left_on_their_day_though_hens_died_later() -> None:
    cocks = fact(Sort.PROCESSED, 55, 23, part=Part.COCKS)
    for facts in ((cocks, fact(Sort.DIED, 58, 1, part=Part.HENS)), (fact(Sort.DIED, 58, 1, part=Part.HENS), cocks)):
        assert stays(known(clover(), HATCH, *facts))[4] == ("ark", 46, 55, "cocks")


def test_chicks_sold_while_others_still_hatch_leave_a_place_for_these() -> None:
    one = known(clover(), fact(Sort.HATCHED, 17, 40), fact(Sort.SOLD, 17, 40), fact(Sort.HATCHED, 18, 30))
    assert [place for place, _, _, _ in stays(one)] == ["setter", "hatcher", "brooder", "pen", "ark"]
    assert (birds(one, 17), birds(one, 18)) == (0, 30)


def test_eggs_that_are_all_clear_end_the_batch() -> None:
    one = known(clover(), fact(Sort.CLEAR, 7, 90), fact(Sort.QUIT, 14, 10))
    assert stays(one) == [("setter", 0, 14, "all")]
    one = known(clover(), fact(Sort.CLEAR, 7, 90), fact(Sort.HATCHED, 18, 0), fact(Sort.QUIT, 19, 10))
    assert stays(one) == [("setter", 0, 15, "all"), ("hatcher", 15, 19, "all")]


def test_none_hatched_yet_keeps_the_stays() -> None:
    assert len(stays(known(clover(), fact(Sort.HATCHED, 17, 0)))) == 5


def test_a_sale_of_all_that_was_one_of_a_few_gives_the_birds_their_place_back() -> None:
    sold = fact(Sort.SOLD, 40, 70)
    one = known(clover(), HATCH, sold)
    after = require_sound(apply(one, correct(one, sold.id, replace(sold, id="better", number=7), TODAY)))
    assert stays(after) == PLANNED[:3]  # what was to come after it has to be planned again
    assert birds(after, 41) == 63
    assert stays(apply(one, take_back(one, sold.id, "gone", NOW))) == PLANNED[:3]


@pytest.mark.parametrize("right", [47, 49, 60, 90, 95])
def test_a_sale_of_all_on_another_day_ends_the_stay_on_that_day(right: int) -> None:
    # Planned until day 90: birds that were sold later are told of by a clash, they do not stay longer by a sale.
    one = known(clover(route=TOGETHER), HATCH, sold := fact(Sort.SOLD, 50, 70))
    assert stays(one)[3:] == [("pen", 46, 50, "all")]
    one = require_sound(apply(one, correct(one, sold.id, replace(sold, id="better", day=on(right)), TODAY)))
    assert stays(one)[3:] == [("pen", 46, min(right, 90), "all")]


def test_a_sale_that_is_taken_back_gives_each_group_its_own_end_back() -> None:
    # 70 are 35 hens with 12 cocks and 23 more; without the 47 none of the laying group is left.
    for number, left in (
        (47, [("pen", 46, 50, "hens"), PLANNED[-1]]),
        (70, [("pen", 46, 50, "hens"), ("ark", 46, 50, "cocks")]),
    ):
        one = known(clover(), HATCH, sold := fact(Sort.SOLD, 50, number))
        assert stays(one)[3:] == left
        assert stays(apply(one, take_back(one, sold.id, "gone", NOW))) == PLANNED


def test_a_hatch_of_more_than_were_sold_gives_the_others_their_place_back() -> None:
    one = known(clover(), HATCH, fact(Sort.SOLD, 50, 70))
    assert stays(one) == [*PLANNED[:3], ("pen", 46, 50, "hens"), ("ark", 46, 50, "cocks")]
    one = require_sound(apply(one, correct(one, HATCH.id, replace(HATCH, id="better", number=73), TODAY)))
    # 73: 37 hens with 13 of 36 cocks. Of the 70 that were sold nobody told the group, so hens go first: 3 cocks left.
    assert [birds(one, 50, part) for part in (Part.HENS, Part.COCKS)] == [0, 3]
    assert stays(one)[3:] == [("pen", 46, 50, "hens"), ("ark", 46, 60, "cocks")]


# What cannot follow


def test_no_count_leaves_an_unsound_plan_for_any_day_of_hatch_and_move() -> None:
    for day in range(0, 40):
        for place in (SETTER, HATCHER, BROODER, PEN, RUN):
            one = clover()
            move = fact(Sort.MOVED, day, place_id=place.id)
            if day == 0 and place.role not in (Role.SETTER, Role.HATCHER):
                continue  # no eggs are set in a pen: refused
            one = require_sound(apply(one, record(one, move, TODAY)))
            for hatch in range(max(day - 3, 1), day + 4):
                one_hatched = require_sound(apply(one, record(one, fact(Sort.HATCHED, hatch, 70), TODAY)))
                assert birds(one_hatched, hatch) == 70
