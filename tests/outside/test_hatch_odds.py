"""The odds of a hatch against scipy.stats.betabinom (SciPy 1.17, an independent implementation), to 1e-9."""

import pytest
from scipy.stats import betabinom

from quailsched.husbandry.handbook import handbook
from quailsched.outlook.hatch import beta_of, hatch_odds


@pytest.mark.parametrize("kind_id", ["coturnix", "coturnix-heavy", "bobwhite", "button"])
@pytest.mark.parametrize("eggs", [0, 1, 2, 17, 140, 1000])
def test_each_chance_equals_that_of_scipy(kind_id: str, eggs: int) -> None:
    kind = handbook()[kind_id]
    reference = betabinom(eggs, *beta_of(kind))
    odds = hatch_odds(kind, eggs)
    assert max(abs(chance - reference.pmf(n)) for n, chance in enumerate(odds.chances)) < 1e-9


@pytest.mark.parametrize("share", [0.05, 0.1, 0.25, 0.5])
def test_what_is_exceeded_is_the_quantile_of_scipy(share: float) -> None:
    kind = handbook()["coturnix"]
    assert hatch_odds(kind, 140).exceeded_by(share) == int(betabinom(140, *beta_of(kind)).ppf(1 - share))


@pytest.mark.parametrize("share", [0.5, 0.75, 0.9, 0.95])
def test_what_is_reached_is_what_scipy_says_survives(share: float) -> None:
    kind = handbook()["coturnix"]
    reference = betabinom(140, *beta_of(kind))
    number = hatch_odds(kind, 140).reached_by(share)
    assert reference.sf(number - 1) >= share > reference.sf(number)
