"""Heat sources, drinkers and feeders: too few or too short for the birds. What was not told is not checked."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from datetime import timedelta
from functools import lru_cache

from quailsched.farm.records import Place, Role
from quailsched.farm.units import count_text, day_text, names_text, two_lengths_text
from quailsched.husbandry.kind import Kind
from quailsched.season.clash import Clash, clash_of_run, stretches
from quailsched.season.occupancy import Share, Slice, Spell, slice_of
from quailsched.season.season import Season
from quailsched.words import marked, number_text, say

_Each = Callable[[Share, Slice], float]


def heat(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """More chicks on heat (below figure heat_off_day) than the brooder's lamps or plates warm (heat_source_chicks).

    Kinds that want different numbers to a lamp are judged by the least of them.
    """
    sources = place.heat_sources
    if place.role is not Role.BROODER or sources is None:
        return

    def warmed(piece: Slice) -> int:
        kinds = (season.kind(share.presence.batch) for share in piece.shares)
        return math.floor(sources * min((kind.value("heat_source_chicks") for kind in kinds), default=0))

    # Where all birds together are few enough, so are those on heat: the rest need not be looked at closely.
    many = (piece for piece in slices if piece.birds > warmed(piece))
    pieces = [_on_heat(season, part) for piece in many for part in at_heat_off(season, piece)]
    for run in stretches(pieces, lambda piece: piece.birds > warmed(piece)):
        worst = max(run, key=lambda piece: piece.birds - warmed(piece))
        chicks, have = worst.birds, warmed(worst)
        lamps = say("{sources} for {chicks}", sources=count_text(sources, "heat source"), chicks=number_text(have))
        sentence = say(
            "{chicks} of {names} needs heat by {day}, and {place} has {lamps}: {over} too many. Chilled chicks pile up "
            "and smother."
            if chicks == 1
            else "{chicks} of {names} need heat by {day}, and {place} has {lamps}: {over} too many. Chilled chicks "
            "pile up and smother.",
            chicks=count_text(chicks, "chick"),
            names=_names(worst),
            day=day_text(worst.start),
            place=place.name,
            lamps=lamps if sources else say("no heat source"),
            over=count_text(chicks - have, "chick"),
        )
        yield clash_of_run("heat", place, run, worst, chicks, have, "chicks", sentence, chicks - have)


def may_be_cold(season: Season, place: Place, spell: Spell) -> bool:
    if place.role is not Role.BROODER or place.heat_sources is None:
        return False
    return spell.most.birds > place.heat_sources * min(
        season.kind(presence.batch).value("heat_source_chicks") for presence in spell.presences
    )


def may_be_thirsty(season: Season, place: Place, spell: Spell) -> bool:
    if place.role.holds_eggs or place.drinker_cm is None:
        return False
    each = max(season.kind(presence.batch).value("drinker_cm") for presence in spell.presences)
    return spell.most.birds * each > place.drinker_cm


def may_be_hungry(season: Season, place: Place, spell: Spell) -> bool:
    if place.role.holds_eggs or place.feeder_cm is None:
        return False
    each = max(_most_edge(season.kind(presence.batch)) for presence in spell.presences)
    return spell.most.birds * each > place.feeder_cm


def heat_off_of(season: Season, share: Share) -> int:
    """The ordinal of the first day without heat."""
    batch = share.presence.batch
    return batch.start.toordinal() + season.days(batch).heat_off


def at_heat_off(season: Season, piece: Slice) -> Iterator[Slice]:
    return piece.parts(heat_off_of(season, share) for share in piece.shares)


def _on_heat(season: Season, piece: Slice) -> Slice:
    """``piece`` with only those birds in it that still need heat."""
    day = piece.start.toordinal()
    young = tuple(s for s in piece.shares if s.run.birds and day < heat_off_of(season, s))
    return slice_of(piece.start, piece.end, young)


def water(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Less drinker space than the birds need (figure drinker_cm each, at any age)."""
    if place.role.holds_eggs or place.drinker_cm is None:
        return

    def each(share: Share, piece: Slice) -> float:
        return season.kind(share.presence.batch).value("drinker_cm")

    yield from _short_edges(season, place, slices, "water", place.drinker_cm, each)


def feeder(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Less feeder space than the birds need at their age (curve feeder_edge_cm)."""
    if place.role.holds_eggs or place.feeder_cm is None:
        return

    def each(share: Share, piece: Slice) -> float:
        batch = share.presence.batch
        age = (piece.start - batch.start - timedelta(days=season.days(batch).hatch)).days
        return season.kind(batch).at("feeder_edge_cm", age)

    # Where the edge is enough at the age that needs most, no step need be looked for.
    have = place.feeder_cm
    many = (p for p in slices if p.birds * max(_most_edge(season.kind(s.presence.batch)) for s in p.shares) > have)
    pieces = [part for piece in many for part in at_steps(season, piece)]
    yield from _short_edges(season, place, pieces, "feeder", place.feeder_cm, each)


@lru_cache(maxsize=64)
def _most_edge(kind: Kind) -> float:
    """The feeder space of a bird at the age that needs most, in cm."""
    return max(edge for _, edge in kind.curves["feeder_edge_cm"].points)


def at_steps(season: Season, piece: Slice) -> Iterator[Slice]:
    """``piece`` cut where the edge that its birds need steps up or down: the load of floor need not change there."""
    days = []
    for share in piece.shares:
        batch = share.presence.batch
        hatch = batch.start.toordinal() + season.days(batch).hatch
        days += [hatch + math.ceil(age) for age, _ in season.kind(batch).curves["feeder_edge_cm"].points]
    return piece.parts(days)


def _short_edges(
    season: Season, place: Place, slices: Sequence[Slice], kind: str, have_cm: int, each: _Each
) -> Iterator[Clash]:
    """The clashes of an edge of ``have_cm``; ``each`` is what a bird of a share needs on the first day of a slice."""

    def need(piece: Slice) -> float:
        return round(sum(share.run.birds * each(share, piece) for share in piece.shares), 6)

    for run in stretches(slices, lambda piece: need(piece) > have_cm):
        worst = max(run, key=need)
        over = _birds_over(worst, need(worst) - have_cm, each)
        needed, there = two_lengths_text(need(worst), have_cm, season.farm.settings.units)
        sentence = say(
            _SHORT[kind][worst.birds == 1],
            birds=count_text(worst.birds, "bird"),
            names=_names(worst),
            needed=needed,
            day=day_text(worst.start),
            place=place.name,
            there=there,
            over=count_text(over, "bird"),
        )
        yield clash_of_run(kind, place, run, worst, need(worst), have_cm, "cm", sentence, over)


def _birds_over(piece: Slice, over_cm: float, each: _Each) -> int:
    """The fewest birds whose leaving frees ``over_cm``: those that need most each go first."""
    left, birds = over_cm, 0
    for share in sorted(piece.shares, key=lambda s: -each(s, piece)):
        if left <= 0:
            break
        go = min(share.run.birds, math.ceil(round(left / each(share, piece), 6)))
        left -= go * each(share, piece)
        birds += go
    return birds


def _names(piece: Slice) -> str:
    return names_text(list(dict.fromkeys(s.presence.batch.name for s in piece.shares if s.run.birds)))


# By kind of clash, for many birds and for one.
_SHORT = {
    "water": (
        marked(
            "{birds} of {names} need {needed} of drinker space by {day}, {place} has {there}: about {over} too many, "
            "and the weaker ones go short."
        ),
        marked(
            "{birds} of {names} needs {needed} of drinker space by {day}, {place} has {there}: about {over} too many, "
            "and the weaker ones go short."
        ),
    ),
    "feeder": (
        marked(
            "{birds} of {names} need {needed} of feeder space by {day}, {place} has {there}: about {over} too many, "
            "and the weaker ones go short."
        ),
        marked(
            "{birds} of {names} needs {needed} of feeder space by {day}, {place} has {there}: about {over} too many, "
            "and the weaker ones go short."
        ),
    ),
}
