"""How likely a number of eggs gives the birds that somebody wants: a hatch, thinned by death and halved by sex."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from itertools import count
from math import exp, lgamma, log

from quailsched.husbandry.kind import Kind
from quailsched.outlook.hatch import hatch_odds
from quailsched.quick import dataclass

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
    hatched_alive = kind.at("alive", 0)
    if not hatched_alive:
        return 0.0
    alive = kind.at("alive", ready_age(kind, aim.what)) / hatched_alive
    each = alive / 2 if aim.what is Wanted.HENS else alive
    odds, number = hatch_odds(kind, eggs).chances, aim.number
    return sum(chance * tail for chance, tail in zip(odds[number:], _at_least(number, each), strict=False))


def fewest_eggs(kind: Kind, aim: Aim) -> int | None:
    """The fewest eggs that are sure enough; None if even ``MOST_EGGS_TRIED`` are not."""
    low, high = aim.number - 1, min(aim.number, MOST_EGGS_TRIED)
    while chance_of(kind, aim, high) < aim.sure:
        if high == MOST_EGGS_TRIED:
            return None
        low, high = high, min(high * 2, MOST_EGGS_TRIED)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if chance_of(kind, aim, middle) >= aim.sure else (middle, high)
    return high


def _at_least(number: int, each: float) -> Iterator[float]:
    """The chance of at least ``number`` of n that each come with chance ``each``, for n from ``number`` on.

    With one more, the chance grows by that of ``number`` - 1 so far and the one more coming.
    """
    tail = 0.0
    for before in count(number - 1):
        tail += each * _exactly(number - 1, before, each)
        yield min(tail, 1.0)


def _exactly(number: int, of: int, each: float) -> float:
    """The binomial chance, by logarithms: hundreds of birds are too many for powers."""
    if each >= 1:
        return 1.0 if number == of else 0.0
    if each <= 0:
        return 1.0 if number == 0 else 0.0
    ways = lgamma(of + 1) - lgamma(number + 1) - lgamma(of - number + 1)
    return exp(ways + number * log(each) + (of - number) * log(1 - each))
