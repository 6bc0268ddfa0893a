"""The next set turned round: birds that are wanted by a day, to days and numbers of eggs."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from quailsched.farm.kinds import kind_in
from quailsched.outlook.reaching import Aim, Wanted, chance_of, fewest_eggs, ready_age
from quailsched.planner.next_set import NextSet, next_sets_of
from quailsched.season.clashes import Checked

MOST_DAYS = 366  # further ahead is another season


@dataclass(frozen=True, slots=True)
class Answer:
    """What reaches ``aim`` by ``by``: at least ``eggs`` eggs, set by ``latest``, on one of ``days`` (earliest first).

    Without such a day, ``closest`` is the day for most eggs in time (perhaps none) and ``chance`` what it gives; it is
    None if it is too late, or there are no egg places. ``eggs`` is None if no number would be sure enough.
    """

    aim: Aim
    by: date
    latest: date
    eggs: int | None
    days: tuple[NextSet, ...]
    closest: NextSet | None
    chance: float


def answer_to(now: Checked, kind_id: str, aim: Aim, by: date, today: date) -> Answer:
    """When eggs can be set for ``aim`` by ``by`` without a new clash. Hens are kept; other birds may be sold."""
    kind = kind_in(now.season.farm, kind_id)
    latest = by - timedelta(days=kind.days("incubation_days") + ready_age(kind, aim.what))
    eggs = fewest_eggs(kind, aim)
    days = min(max((latest - today).days + 1, 0), MOST_DAYS)
    found = next_sets_of(now, kind_id, today, days, keeps_hens=aim.what is Wanted.HENS)
    fitting = tuple(one for one in found if eggs is not None and one.eggs >= eggs)
    best = max(found, key=lambda one: one.eggs, default=None)
    closest = None if fitting else best
    chance = chance_of(kind, aim, closest.eggs) if closest is not None else 0.0
    return Answer(aim, by, latest, eggs, fitting, closest, chance)
