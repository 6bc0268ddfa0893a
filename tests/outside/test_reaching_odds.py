"""The chance to get the birds that are wanted, against scipy.stats (betabinom and binom): an independent library."""

from __future__ import annotations

import pytest
from scipy.stats import betabinom, binom

from quailsched.husbandry.handbook import handbook
from quailsched.outlook.hatch import beta_of
from quailsched.outlook.reaching import Aim, Wanted, chance_of, fewest_eggs, ready_age

KIND = handbook()["coturnix"]


def by_scipy(aim: Aim, eggs: int) -> float:
    """Hatched of the eggs, then alive (and a hen) of the hatched, summed over all numbers of chicks."""
    alpha, beta = beta_of(KIND)
    each = KIND.at("alive", ready_age(KIND, aim.what)) / KIND.at("alive", 0)
    each = each / 2 if aim.what is Wanted.HENS else each
    chicks = range(eggs + 1)
    return float(sum(betabinom.pmf(n, eggs, alpha, beta) * binom.sf(aim.number - 1, n, each) for n in chicks))


@pytest.mark.parametrize("what", Wanted)
@pytest.mark.parametrize(
    ("number", "eggs"), [(1, 1), (10, 30), (40, 160), (40, 100), (60, 60), (400, 1_400), (700, 1_500)]
)
def test_the_chance_is_that_of_scipy(what: Wanted, number: int, eggs: int) -> None:
    aim = Aim(what, number, 0.9)
    assert chance_of(KIND, aim, eggs) == pytest.approx(by_scipy(aim, eggs), abs=1e-9)


@pytest.mark.parametrize("what", Wanted)
def test_the_fewest_eggs_are_sure_enough_and_one_less_is_not(what: Wanted) -> None:
    aim = Aim(what, 20, 0.9)
    eggs = fewest_eggs(KIND, aim)
    assert eggs is not None
    assert by_scipy(aim, eggs) >= 0.9 > by_scipy(aim, eggs - 1)


def test_what_no_number_of_eggs_gives_is_none() -> None:
    assert fewest_eggs(KIND, Aim(Wanted.CHICKS, 2_900, 0.9)) is None
