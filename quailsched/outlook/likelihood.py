"""In how many hatches a clash comes about: how many chicks there are is not known before they have hatched.

Of the clashes that hang on the number of birds only (``CHANCY``); the others do not depend on how a hatch turns out.
Each batch that is still to hatch has the odds of ``outlook.hatch``, apart from the others; the birds of a day follow
from its chicks in the proportion that the season works out for the expected hatch. What is weighed is the worst day
of the clash: if nothing is broken then, there is at most a lesser clash on other days.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from datetime import date, timedelta
from itertools import accumulate
from math import inf

from quailsched.farm.records import Batch
from quailsched.outlook.hatch import hatch_odds
from quailsched.season.birds import hatched, whole
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Share
from quailsched.season.rules.fittings import heat_off_of
from quailsched.season.season import Season

CHANCY = frozenset({"floor", "crowd", "heat", "water", "feeder", "calm"})
_MOST_POINTS = 32  # of the odds of each of several batches; those of the largest are weighed exactly
_SAME = 1e-6  # as exactly as the rules count

_Odds = list[tuple[float, float]]  # what is needed, and the chance that it is that


def chance_of_clash(season: Season, clash: Clash, today: date) -> float | None:
    """From 0 to 1; None where it hangs on no hatch that is still to come."""
    piece = season.slice_on(season.farm.place(clash.place_id), clash.worst) if clash.kind in CHANCY else None
    if piece is None:
        return None
    unsure: dict[str, list[Share]] = {}  # by batch, those that are still to hatch
    sure = 0.0  # what birds need that there are
    for share in piece.shares:
        batch = share.presence.batch
        if _is_to_hatch(season, batch, today):
            unsure.setdefault(batch.id, []).append(share)
        else:
            sure += share.run.birds * _each(season, clash, share)
    odds = [_odds(season, clash, shares) for shares in unsure.values()]
    odds = sorted((one for one in odds if one[-1][0] > 0), key=len)
    if not odds:
        return None
    if clash.kind == "calm":  # too few, but not none: an empty pen is calm
        return _chance(odds, _SAME - sure, clash.need - sure - _SAME)
    return _chance(odds, clash.have - sure + _SAME, inf)


def _is_to_hatch(season: Season, batch: Batch, today: date) -> bool:
    is_known = season.lived(batch).hatched is not None
    return batch.origin.is_eggs and not is_known and batch.start + timedelta(days=season.days(batch).hatch) > today


def _each(season: Season, clash: Clash, share: Share) -> float:
    """What a bird of ``share`` needs on the worst day of ``clash``, in its unit."""
    batch = share.presence.batch
    kind, worst = season.kind(batch), clash.worst
    if clash.kind == "floor":
        return share.run.each_cm2
    if clash.kind == "heat":
        return 1.0 if worst.toordinal() < heat_off_of(season, share) else 0.0
    if clash.kind == "water":
        return kind.value("drinker_cm")
    if clash.kind == "feeder":
        return kind.at("feeder_edge_cm", (worst - batch.start).days - season.days(batch).hatch)
    return 1.0


def _odds(season: Season, clash: Clash, shares: Sequence[Share]) -> _Odds:
    """What the birds of a batch may need, all of its ``shares`` together; the most at the end."""
    batch = shares[0].presence.batch
    kind = season.kind(batch)
    lived = season.lived(batch)
    expected = hatched(kind, batch, lived)
    eggs = batch.number
    if lived.taken:  # so many as would give the expected chicks: of those left, more hatch than of those set
        eggs = min(eggs - lived.eggs_taken, whole(expected * 100 / kind.value("hatch_of_set_pct")))
    alive = [(share.run.birds / expected if expected else 0.0, _each(season, clash, share)) for share in shares]
    return [
        (sum(whole(chicks * share) * each for share, each in alive), chance)
        for chicks, chance in enumerate(hatch_odds(kind, eggs).chances)
    ]


def _chance(odds: Sequence[_Odds], least: float, most: float) -> float:
    """The chance that all together need at least ``least`` and less than ``most``."""
    *others, last = odds
    before: _Odds = [(0.0, 1.0)]
    for one in others:
        before = _fewer([(need + more, chance * its) for need, chance in before for more, its in _fewer(one)])
    needs = [need for need, _ in last]
    below = [0.0, *accumulate(chance for _, chance in last)]  # the chance of the first so many
    total = sum(
        chance * (below[bisect_left(needs, most - need)] - below[bisect_left(needs, least - need)])
        for need, chance in before
    )
    return min(max(total, 0.0), 1.0)


def _fewer(odds: _Odds) -> _Odds:
    """``odds`` with their likely neighbours put together, so that the odds of several batches stay few."""
    if len(odds) <= _MOST_POINTS:
        return odds
    points: _Odds = []
    weight = chance = 0.0
    for need, its in sorted(odds):
        weight, chance = weight + need * its, chance + its
        if chance >= 1 / _MOST_POINTS:
            points.append((weight / chance, chance))
            weight = chance = 0.0
    return [*points, (weight / chance, chance)] if chance else points
