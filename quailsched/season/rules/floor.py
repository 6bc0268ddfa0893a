"""Floor: too little of it for the birds at their age, or so much that a few birds are not calm."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from quailsched.farm.records import Place
from quailsched.farm.units import area_text, count_text, day_text, names_text, two_areas_text
from quailsched.season.clash import Clash, clash_of_run, overfull, stretches
from quailsched.season.occupancy import Presence, Slice, Spell
from quailsched.season.season import Season
from quailsched.words import say


def floor(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Birds need more floor at their age (figure floor_cm2) than the brooder or pen has."""
    if place.role.holds_eggs:
        return
    units = season.farm.settings.units
    for run, worst in overfull(place, slices):
        over = birds_without_room(worst, worst.floor_cm2 - place.floor_cm2)
        need, have = two_areas_text(worst.floor_cm2, place.floor_cm2, units)
        sentence = say(
            "{birds} needs {need} by {day}, {place} has {have}: about {over} too many."
            if worst.birds == 1
            else "{birds} need {need} by {day}, {place} has {have}: about {over} too many.",
            birds=_birds_text(worst),
            need=need,
            day=day_text(worst.start),
            place=place.name,
            have=have,
            over=count_text(over, "bird"),
        )
        yield clash_of_run("floor", place, run, worst, worst.floor_cm2, place.floor_cm2, "cm2", sentence, over)


def may_be_too_small(_season: Season, place: Place, spell: Spell) -> bool:
    return not place.role.holds_eggs and spell.most.floor_cm2 > place.floor_cm2


def birds_without_room(piece: Slice, over_cm2: int) -> int:
    """The fewest birds whose leaving frees ``over_cm2``: those that need most floor each go first."""
    left, birds = over_cm2, 0
    for share in sorted(piece.shares, key=lambda s: -s.run.each_cm2):
        if left <= 0 or not share.run.each_cm2:
            break
        go = min(share.run.birds, math.ceil(left / share.run.each_cm2))
        left -= go * share.run.each_cm2
        birds += go
    return birds


def calm(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Fewer birds than it takes to be calm in a pen of this size (figure calm_area_cm2: most floor a bird)."""
    if not place.role.is_pen:
        return

    def least(piece: Slice) -> int:
        return _least_calm(season, place, [share.presence for share in piece.shares])

    for run in stretches(slices, lambda piece: 0 < piece.birds < least(piece)):
        worst = min(run, key=lambda piece: piece.birds)
        area = area_text(place.floor_cm2, season.farm.settings.units)
        sentence = say(
            "{birds} is too few to be calm in the {area} of {place}; from {least} on a group settles. Fewer startle "
            "and fly up: give them less room, or low cover."
            if worst.birds == 1
            else "{birds} are too few to be calm in the {area} of {place}; from {least} on a group settles. Fewer "
            "startle and fly up: give them less room, or low cover.",
            birds=_birds_text(worst),
            area=area,
            place=place.name,
            least=count_text(least(worst), "bird"),
        )
        yield clash_of_run("calm", place, run, worst, least(worst), worst.birds, "birds", sentence)


def may_be_too_few(season: Season, place: Place, spell: Spell) -> bool:
    return place.role.is_pen and spell.least.birds < _least_calm(season, place, spell.presences)


def _least_calm(season: Season, place: Place, presences: Sequence[Presence]) -> int:
    """The fewest birds that settle in ``place``."""
    return math.ceil(place.floor_cm2 / max(season.kind(p.batch).value("calm_area_cm2") for p in presences))


def _birds_text(piece: Slice) -> str:
    """Like "70 birds of Clover", "120 birds of Dill and Elder"."""
    names = [share.presence.batch.name for share in piece.shares if share.run.birds]
    birds = count_text(piece.birds, "bird")
    return say("{birds} of {batches}", birds=birds, batches=names_text(list(dict.fromkeys(names))))
