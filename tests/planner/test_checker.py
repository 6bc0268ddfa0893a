"""The judge of proposals, with clashes made by hand."""

from dataclasses import replace
from datetime import date

from quailsched.planner.checker import has_grown, is_same, laid_to, solves
from quailsched.season.clash import Clash

FLOOR = Clash(
    "floor", "tub", ("aster",), date(2027, 5, 1), date(2027, 5, 5), date(2027, 5, 5), 120, 100, "cm2", 2, "Too small."
)
COLD = replace(FLOOR, kind="cold", need=10, have=7, unit="degC")


def test_a_clash_is_known_again_by_rule_place_and_a_batch() -> None:
    assert is_same(FLOOR, replace(FLOOR, batch_ids=("bracken", "aster"), first=date(2027, 5, 3)))
    assert not is_same(FLOOR, replace(FLOOR, batch_ids=("bracken",)))
    assert not is_same(FLOOR, replace(FLOOR, place_id="shed"))
    assert not is_same(FLOOR, COLD)


def test_more_or_longer_is_grown() -> None:
    assert has_grown(FLOOR, replace(FLOOR, need=121))
    assert has_grown(FLOOR, replace(FLOOR, last=date(2027, 5, 6)))
    assert has_grown(COLD, replace(COLD, have=6))
    assert not has_grown(FLOOR, replace(FLOOR, need=110, last=date(2027, 5, 4)))


def test_gone_without_another_is_solved() -> None:
    assert solves(FLOOR, [FLOOR, COLD], [COLD])
    assert solves(FLOOR, [FLOOR], [])


def test_still_there_or_another_come_or_grown_is_not() -> None:
    assert not solves(FLOOR, [FLOOR], [replace(FLOOR, need=101)])
    assert not solves(FLOOR, [FLOOR], [COLD])
    assert not solves(FLOOR, [FLOOR, COLD], [replace(COLD, have=5)])


def test_one_old_clash_does_not_answer_for_two_new_ones() -> None:
    other = replace(COLD, first=date(2027, 5, 20), last=date(2027, 5, 24), worst=date(2027, 5, 20))
    wandered = replace(other, first=date(2027, 6, 1), last=date(2027, 6, 5), worst=date(2027, 6, 1))
    assert not solves(COLD, [COLD, other], [other, wandered])


def test_a_clash_may_break_up_into_pieces_of_itself() -> None:
    first = replace(COLD, last=date(2027, 5, 2))
    second = replace(COLD, first=date(2027, 5, 4), worst=date(2027, 5, 4))
    assert solves(FLOOR, [FLOOR, COLD], [first, second])


def test_a_clash_that_another_of_its_rule_has_moved_onto_is_not_gone() -> None:
    # The second goes and the first has grown over its days: it would answer for no more than that.
    second = replace(FLOOR, first=date(2027, 5, 6), last=date(2027, 5, 20), worst=date(2027, 5, 6))
    grown = replace(FLOOR, last=date(2027, 5, 15))
    assert not solves(FLOOR, [FLOOR, second], [grown])


def test_what_a_split_batch_takes_along_is_laid_to_the_one_that_it_comes_from() -> None:
    # A cold night for both halves is a piece of the same cold night for each of them; not so in another place.
    halves = [replace(COLD, birds_over=1), replace(COLD, batch_ids=("aster 2",), birds_over=1, sentence="Another.")]
    origins = {"aster 2": "aster"}
    assert not solves(FLOOR, [FLOOR, COLD], [COLD, halves[1]])
    assert solves(FLOOR, [FLOOR, COLD], laid_to(halves, origins))
    elsewhere = [halves[0], replace(halves[1], place_id="shed")]
    assert not solves(FLOOR, [FLOOR, COLD], laid_to(elsewhere, origins))
    more = [halves[0], replace(halves[1], birds_over=99)]
    assert not solves(FLOOR, [FLOOR, COLD], laid_to(more, origins))


def test_one_trouble_of_two_halves_is_one() -> None:
    # Nobody at home when both hatch: the clash of the whole stays as it was, and that of the part adds nothing.
    of_part = replace(COLD, batch_ids=("aster 2",), sentence="Aster 2 hatches.")
    for after in ([COLD, of_part], [of_part, COLD]):
        (left,) = laid_to(after, {"aster 2": "aster"})
        assert left is COLD
    assert laid_to([COLD], {}) == [COLD]
