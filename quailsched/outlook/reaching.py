"""How likely a number of eggs gives the birds that somebody wants: a hatch, thinned by death and halved by sex."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from math import comb

from quailsched.husbandry.kind import Kind
from quailsched.outlook.hatch import hatch_odds

MOST_EGGS_TRIED = 3_000


class Wanted(StrEnum):
    """What can be wanted by a day."""

    HENS = "hens"  # at half lay (figure half_lay_day)
    STARTED = "started"  # birds off heat and feathered, cocks and hens
    CHICKS = "chicks"  # on the day of hatch


@dataclass(frozen=True, slots=True)
class Aim:
    """``number`` birds of what is wanted, in at least ``sure`` (0 to 1) of all hatches."""

    what: Wanted
    number: int
    sure: float


def ready_age(kind: Kind, what: Wanted) -> int:
    """The age in days at which birds are what is wanted."""
    if what is Wanted.HENS:
        return kind.days("half_lay_day")
    return max(kind.days("feathered_day"), kind.days("heat_off_day")) if what is Wanted.STARTED else 0


def chance_of(kind: Kind, aim: Aim, eggs: int) -> float:
    """The chance that ``eggs`` eggs give what is wanted.

    Chicks are the beta-binomial of ``hatch_odds``; each lives to the age with the chance of curve "alive", and is a
    hen with a chance of one half, so those that are wanted of n chicks are binomial.
    """
    alive = kind.at("alive", ready_age(kind, aim.what)) / kind.at("alive", 0)
    each = alive / 2 if aim.what is Wanted.HENS else alive
    odds = hatch_odds(kind, eggs).chances
    return sum(
        chance * _at_least(aim.number, chicks, each) for chicks, chance in enumerate(odds) if chicks >= aim.number
    )


def fewest_eggs(kind: Kind, aim: Aim) -> int | None:
    """The fewest eggs that are sure enough; None if even ``MOST_EGGS_TRIED`` are not."""
    low, high = aim.number - 1, aim.number
    while high <= MOST_EGGS_TRIED and chance_of(kind, aim, high) < aim.sure:
        low, high = high, high * 2
    if high > MOST_EGGS_TRIED:
        return None
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if chance_of(kind, aim, middle) >= aim.sure else (middle, high)
    return high


@lru_cache(maxsize=65536)
def _at_least(number: int, of: int, each: float) -> float:
    """The chance of at least ``number`` of ``of`` that each come with chance ``each``."""
    if each >= 1:
        return 1.0 if of >= number else 0.0
    few = sum(comb(of, n) * each**n * (1 - each) ** (of - n) for n in range(min(number, of + 1)))
    return max(1.0 - few, 0.0)
