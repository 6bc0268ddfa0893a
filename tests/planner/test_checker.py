"""The judge of proposals, with clashes made by hand."""

from dataclasses import replace
from datetime import date

from quailsched.planner.checker import has_grown, is_same, solves
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
