"""How grave a clash is, and whether the keeper lives with it.

A clash stops the plan where what is planned cannot be done, or harms birds or eggs on the day: no room, no place, no
warmth, no water, a pen that does not stand, nobody at home, a machine that cannot turn and rest its eggs at once, a
quarantine broken. The others are to be watched: they cost something (a worse hatch, restless or worn-out hens, birds
that queue for feed, fewer eggs, a dirty floor), how much depends on the birds, and a keeper may well choose to pay it.
Only those can be accepted.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from typing import Final

from quailsched.farm.records import Acceptance, Farm
from quailsched.season.clash import Clash
from quailsched.words import marked


class Severity(StrEnum):
    STOPS = "stops the plan"
    WATCH = "watch"


SEVERITY_WORDS: Final = (marked("stops the plan"), marked("watch"))  # to be said where one is shown

STOPPING: Final = frozenset(
    {
        "eggs", "cabinet", "floor", "notready", "nowhere", "young", "cold",
        "heat", "water", "ages", "quarantine", "hands", "build",
    }
)  # fmt: skip
WATCHED: Final = frozenset({"cleanout", "calm", "crowd", "cocks", "stale", "feeder", "overdue", "dark"})


def severity_of(kind: str) -> Severity:
    """The severity of every clash of ``kind``. Raises KeyError for a kind that has none."""
    if kind in STOPPING:
        return Severity.STOPS
    if kind in WATCHED:
        return Severity.WATCH
    raise KeyError(kind)


def is_of(acceptance: Acceptance, clash: Clash) -> bool:
    """Whether ``acceptance`` is about ``clash``, grown or not: one rule, one place, a batch in common."""
    is_there = (acceptance.kind, acceptance.place_id) == (clash.kind, clash.place_id)
    return is_there and not set(acceptance.batch_ids).isdisjoint(clash.batch_ids)


def holds(acceptance: Acceptance, clash: Clash) -> bool:
    """Whether ``clash`` is accepted by ``acceptance``: it is about it, and it has not grown since."""
    return (
        severity_of(clash.kind) is Severity.WATCH
        and is_of(acceptance, clash)
        and amount_of(clash) <= acceptance.amount
        and clash.birds_over <= acceptance.birds
        and days_of(clash) <= acceptance.days
    )


def amount_of(clash: Clash) -> float:
    """By how much need and have differ, in the clash's unit."""
    return abs(clash.need - clash.have)


def days_of(clash: Clash) -> int:
    """How many days it lasts."""
    return (clash.last - clash.first).days + 1


def acceptances_of(farm: Farm, clash: Clash) -> tuple[Acceptance, ...]:
    """Every acceptance that holds for ``clash``: several only where two clashes of a place have shrunk into one."""
    return tuple(one for one in farm.acceptances if holds(one, clash))


def acceptance_of(farm: Farm, clash: Clash) -> Acceptance | None:
    """Why the keeper lives with ``clash``; None if it is not accepted, or has grown since it was."""
    return next(iter(acceptances_of(farm, clash)), None)


def open_clashes(farm: Farm, clashes: Iterable[Clash]) -> tuple[Clash, ...]:
    """Those of ``clashes`` that nobody has accepted, in their order."""
    return tuple(clash for clash in clashes if acceptance_of(farm, clash) is None)
