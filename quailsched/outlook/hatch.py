"""How many chicks may hatch: an exact beta-binomial from the published range of the hatch of eggs set.

One hatch differs from another by more than the luck of single eggs: fertility, storage and the machine move all of
them together. So the rate of a hatch is itself a draw from a beta distribution, and the chicks are a beta-binomial
(Skellam, J. R. Stat. Soc. B 10:257, 1948, from memory). Its mean is the figure ``hatch_of_set_pct``; the figure's
low and high are taken as the rates that 1 hatch in 20 falls short of and 1 in 20 exceeds (our own convention).
"""

from __future__ import annotations

import math
from functools import lru_cache
from math import exp, lgamma

from quailsched.husbandry.kind import Kind
from quailsched.quick import dataclass

_Z_95 = 1.6448536269514722  # 95th percentile of the normal distribution
_LEAST_SPREAD = 0.02  # of the rate, where sources print no range


@dataclass(frozen=True, slots=True)
class HatchOdds:
    """``chances[n]`` is the chance that exactly ``n`` chicks hatch of ``len(chances) - 1`` eggs."""

    chances: tuple[float, ...]

    @property
    def expected(self) -> float:
        return sum(number * chance for number, chance in enumerate(self.chances))

    def exceeded_by(self, share: float) -> int:
        """The fewest chicks that at most ``share`` of hatches exceed (0.1: one in ten): what to make room for."""
        tail = 1.0
        for number, chance in enumerate(self.chances):
            tail -= chance
            if tail <= share + 1e-12:
                return number
        return len(self.chances) - 1

    def reached_by(self, share: float) -> int:
        """The most chicks that at least ``share`` of hatches reach (0.9: nine in ten): what to promise."""
        tail, best = 1.0, 0
        for number, chance in enumerate(self.chances):
            if tail < share - 1e-12:
                break
            best = number
            tail -= chance
        return best


@lru_cache(maxsize=16384)
def as_eggs(kind: Kind, eggs: int, sure_pct: int, *, of_many: bool) -> int:
    """Eggs of which, at the expected rate, as many hatch as no more do in ``sure_pct`` of 100 hatches (``of_many``),
    or no fewer.

    What ``season`` works out for that number of eggs is then planned for the large, or the small, hatch.
    """
    odds, rate = hatch_odds(kind, eggs), kind.value("hatch_of_set_pct") / 100
    if of_many:
        return math.ceil(odds.exceeded_by(1 - sure_pct / 100) / rate)
    return max(math.floor(odds.reached_by(sure_pct / 100) / rate), 1)  # one alone is not calm; none would break no rule


def beta_of(kind: Kind) -> tuple[float, float]:
    """(alpha, beta) of the rate of hatch of ``kind``, from its figure's value, low and high."""
    figure = kind.figures["hatch_of_set_pct"]
    mean = min(max(figure.value / 100, 0.005), 0.995)
    spread = max((figure.high - figure.low) / 100 / (2 * _Z_95), _LEAST_SPREAD)
    strength = mean * (1 - mean) / spread**2 - 1  # from the variance of a beta distribution
    strength = max(strength, 2.0)
    return mean * strength, (1 - mean) * strength


@lru_cache(maxsize=512)
def hatch_odds(kind: Kind, eggs: int) -> HatchOdds:
    """The odds of a hatch of ``eggs`` eggs. Raises ValueError for fewer than none."""
    if eggs < 0:
        raise ValueError(f"{eggs} eggs cannot be set; a number from 0 is accepted")
    alpha, beta = beta_of(kind)
    whole = _log_beta(alpha, beta)
    chances = [exp(_log_choose(eggs, n) + _log_beta(n + alpha, eggs - n + beta) - whole) for n in range(eggs + 1)]
    return HatchOdds(tuple(chances))


def _log_beta(a: float, b: float) -> float:
    return lgamma(a) + lgamma(b) - lgamma(a + b)


def _log_choose(n: int, k: int) -> float:
    return lgamma(n + 1) - lgamma(k + 1) - lgamma(n - k + 1)
