"""The chores of the example farm: every kind on its first day, each told in full, quickly for a long time."""

from collections.abc import Callable
from datetime import date, timedelta
from itertools import count
from time import perf_counter
from uuid import UUID

import pytest

from quailsched.chores.chore import Chore
from quailsched.chores.work_out import chores_between
from quailsched.farm.example import example_farm
from quailsched.season.season import Season

TODAY = date(2027, 4, 6)
DAY_0 = date(2027, 3, 1)  # a Monday, five weeks before the Monday of TODAY's week: Aster is set


def ids() -> Callable[[], str]:
    numbers = count(1)
    return lambda: str(UUID(int=next(numbers)))


@pytest.fixture(scope="module")
def first_days() -> dict[str, tuple[int, Chore]]:
    """The first chore of each kind with its day, counted from DAY_0."""
    season = Season(example_farm(TODAY, ids()))
    first: dict[str, tuple[int, Chore]] = {}
    for chore in chores_between(season, DAY_0 - timedelta(days=10), DAY_0 + timedelta(days=390)):
        first.setdefault(chore.kind, ((chore.day - DAY_0).days, chore))
    return first


@pytest.mark.parametrize(
    ("kind", "day", "place"),
    [
        # Aster is set on day 0, in the hatching tray from 15, hatches on 17 and goes to the tub on 18.
        ("set", 0, "Bench setter"),
        ("candle", 7, "Bench setter"),
        ("lockdown", 15, "Hatching tray"),
        ("watch", 16, "Hatching tray"),
        ("hatch", 17, "Hatching tray"),
        ("to brooder", 18, "Tub brooder"),
        ("clean-out", 18, "Hatching tray"),
        # In the tub until day 46: one week of age, one week of bedding, three weeks, seven days before the move.
        ("heat", 24, "Tub brooder"),
        ("bedding", 25, "Tub brooder"),
        ("drain", 25, "Tub brooder"),
        ("sex", 38, "Tub brooder"),
        ("harden", 39, "Tub brooder"),
        ("heat off", 42, "Tub brooder"),
        ("light", 42, "Tub brooder"),
        ("move out", 46, "Long run"),
        ("old drinker", 51, "Long run"),
        ("dust bath", 53, "Long run"),
        # Cocks to the ark on day 59, which moves from then on; processed on 73. First eggs at 43 days = day 60.
        ("cocks out", 59, "Grass ark"),
        ("grass", 60, "Grass ark"),
        ("first eggs", 60, "Long run"),
        ("collect", 60, "Long run"),
        ("process", 73, "Grass ark"),
        # Elder is set on day 84 in the cabinet, which does not turn by itself; Gorse's eggs are shipped, set on 114.
        ("turn", 85, "Old cabinet"),
        ("rest", 113, "Bench setter"),
    ],
)
def test_each_kind_comes_first_on_its_day(
    first_days: dict[str, tuple[int, Chore]], kind: str, day: int, place: str
) -> None:
    found, chore = first_days[kind]
    assert (found, chore.place) == (day, place)


def test_each_says_how() -> None:
    chores = chores_between(Season(example_farm(TODAY, ids())), TODAY, TODAY + timedelta(days=400))
    assert all(chore.title and chore.how.endswith(".") and chore.place for chore in chores)


def test_four_hundred_days_are_worked_out_quickly() -> None:
    farm = example_farm(TODAY, ids())
    started = perf_counter()
    chores = chores_between(Season(farm), TODAY, TODAY + timedelta(days=400))
    assert perf_counter() - started < 2  # about 0.02 s; the rest is for slow machines
    assert len(chores) > 400
