"""100 grown birds in a pen of 96 square feet are at ease, 7 in the same pen are too few.

Common practice, no published source.
"""

from dataclasses import replace

from quailsched.farm.records import Leaving
from quailsched.season.clash import Clash
from tests.builders import PEN, bought, clashes, stay

CM2_PER_SQUARE_FOOT = 30.48**2  # NIST SP 811: 1 ft = 0.3048 m exactly
PEN_OF_96 = replace(PEN, floor_cm2=round(96 * CM2_PER_SQUARE_FOOT))


def in_the_pen(birds: int) -> tuple[Clash, ...]:
    """Grown birds (10 weeks) that come in and stay for a month; figures as published, no plain ones."""
    found = clashes(PEN_OF_96, bought("Aster", birds, 70, stay(PEN, 0, 30, leaving=Leaving.SOLD)), plain=False)
    return tuple(clash for clash in found if clash.kind != "cocks")  # how many are cocks is another matter


def test_a_hundred_are_at_ease() -> None:
    assert in_the_pen(100) == ()


def test_seven_are_too_few() -> None:
    (clash,) = in_the_pen(7)
    assert (clash.kind, clash.have) == ("calm", 7)
