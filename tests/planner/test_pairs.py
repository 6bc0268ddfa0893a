"""Two small changes together: each still means what its sentence says once the other is made."""

from __future__ import annotations

from datetime import timedelta
from itertools import permutations

from quailsched.edits.change import apply
from quailsched.farm.records import Farm, Leaving, Place, Role
from quailsched.planner.move import Move
from quailsched.planner.moves import moves
from quailsched.planner.ways_out import joined, look_for_ways_out
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.builders import BROODER, CABINET, MONDAY, PEN, RUN, eggs, farm, only, resized, stay

THIRD = Place("third", "Third", Role.PEN, 7, floor_cm2=60_000)


def one_batch() -> Farm:
    """90 eggs, from the brooder into Pen on day 45 and into Run on day 120; its cocks fight from day 59 on."""
    route = (stay(CABINET, 0, 18), stay(BROODER, 18, 45), stay(PEN, 45, 120), stay(RUN, 120, 160, leaving=Leaving.SOLD))
    return farm(eggs("Aster", 90, *route, start=MONDAY + timedelta(days=1)), THIRD)


def moves_by_sentence(one: Farm, kind: str) -> dict[str, Move]:
    season = Season(one)
    clash = next(clash for clash in checked(season).clashes if clash.kind == kind)
    return {move.sentence: move for move in moves(season, clash, MONDAY)}


def starting(found: dict[str, Move], words: str) -> Move:
    return next(move for sentence, move in found.items() if sentence.startswith(words))


def test_birds_that_are_parted_on_a_day_do_not_leave_the_pen_before_it() -> None:
    # Parted on 30 April in Pen, Aster would be out of it on 29 April, so that the first sentence were not true.
    found = moves_by_sentence(one_batch(), "cocks")
    part, out = starting(found, "Part Aster on"), starting(found, "Take Aster out of Pen ")
    assert joined(one_batch(), (part,)) is not None
    assert joined(one_batch(), (part, out)) is None
    assert joined(one_batch(), (out, part)) is None


def test_a_stay_that_the_sale_takes_away_ends_on_no_other_day() -> None:
    # Three batches of about 63 in a pen for 45 each, a week apart: sold there, none comes into the second pen.
    pens = resized(PEN, 9_000), resized(RUN, 9_000)
    route = (stay(CABINET, 0, 18), stay(BROODER, 18, 45), stay(PEN, 45, 60), stay(RUN, 60, 100, leaving=Leaving.SOLD))
    days = {"Aster": 1, "Bracken": 8, "Clover": 15}
    batches = [eggs(name, 60, *route, start=MONDAY + timedelta(days=day)) for name, day in days.items()]
    now = checked(Season(farm(*batches, *pens, resized(CABINET, 300), plain=False)))
    for clash in now.clashes:
        look_for_ways_out(now, clash, MONDAY)  # pairs of every kind among them


def test_moves_that_leave_each_other_alone_go_together_in_either_order() -> None:
    found = moves_by_sentence(one_batch(), "cocks")
    fewer = starting(found, "Take 86 eggs")
    out = starting(found, "Take Aster out of Pen ")
    both, other = joined(one_batch(), (fewer, out)), joined(one_batch(), (out, fewer))
    assert both is not None
    assert other is not None
    assert apply(one_batch(), both) == apply(one_batch(), other)
    assert apply(one_batch(), both).batch("aster").number == 86


def test_a_day_that_a_sentence_tells_stays_the_day() -> None:
    # Out of Pen on a day, and a week later as a whole: it would be out a week after the day that the first one tells.
    one = one_batch()
    crowded = one.with_records(set(), (resized(PEN, 9_000),))
    found = moves_by_sentence(crowded, "floor")
    later, out = starting(found, "Set Aster 7 days later"), starting(found, "Take Aster out of Pen ")
    assert all(joined(crowded, pair) is None for pair in permutations((later, out)))


def test_the_number_of_birds_that_are_sold_is_the_number_that_there_are() -> None:
    crowded = one_batch().with_records(set(), (resized(PEN, 9_000),))
    found = moves_by_sentence(crowded, "floor")
    sold, fewer = starting(found, "Sell the 90 started birds of Aster"), starting(found, "Take 86 eggs")
    assert only(checked(Season(crowded)).clashes, "floor").birds_over
    assert joined(crowded, (fewer, sold)) is None
    assert joined(crowded, (sold, fewer)) is None
