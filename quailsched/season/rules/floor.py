"""Floor: too little of it for the birds at their age, or so much that a few birds are not calm."""

from __future__ import annotations

import math
from collections.abc import Iterator

from quailsched.farm.units import area_text, count_text, day_text, names_text
from quailsched.season.clash import Clash, batch_ids_in, stretches
from quailsched.season.occupancy import Slice
from quailsched.season.season import Season


def floor(season: Season) -> Iterator[Clash]:
    """Birds need more floor at their age (figure floor_cm2) than the brooder or pen has."""
    units = season.farm.settings.units
    for place in season.farm.places:
        if place.role.holds_eggs:
            continue
        for run in stretches(season.slices(place), lambda s, p=place: s.floor_cm2 > p.floor_cm2):  # type: ignore[misc]
            worst = max(run, key=lambda s: s.floor_cm2)
            over_cm2 = worst.floor_cm2 - place.floor_cm2
            over_birds = birds_without_room(worst, over_cm2)
            yield Clash(
                kind="floor",
                place_id=place.id,
                batch_ids=batch_ids_in(run),
                first=run[0].start,
                last=run[-1].last,
                worst=worst.start,
                need=worst.floor_cm2,
                have=place.floor_cm2,
                unit="cm2",
                birds_over=over_birds,
                sentence=f"{_birds_text(worst)} need {area_text(worst.floor_cm2, units)} by {day_text(worst.start)}, "
                f"{place.name} has {area_text(place.floor_cm2, units)}: "
                f"about {count_text(over_birds, 'bird')} too many.",
            )


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


def calm(season: Season) -> Iterator[Clash]:
    """Fewer birds than it takes to be calm in a pen of this size (figure calm_area_cm2: most floor a bird)."""
    units = season.farm.settings.units
    for place in season.farm.places:
        if not place.role.is_pen:
            continue

        def least(piece: Slice, floor_cm2: int = place.floor_cm2) -> int:
            kinds = [season.kind(share.presence.batch) for share in piece.shares]
            return math.ceil(floor_cm2 / max(kind.value("calm_area_cm2") for kind in kinds))

        for run in stretches(season.slices(place), lambda s: 0 < s.birds < least(s)):
            worst = min(run, key=lambda s: s.birds)
            yield Clash(
                kind="calm",
                place_id=place.id,
                batch_ids=batch_ids_in(run),
                first=run[0].start,
                last=run[-1].last,
                worst=worst.start,
                need=least(worst),
                have=worst.birds,
                unit="birds",
                birds_over=0,
                sentence=f"{_birds_text(worst)} are too few to be calm in the {area_text(place.floor_cm2, units)} of "
                f"{place.name}; from {count_text(least(worst), 'bird')} on a group settles. Fewer startle and fly up: "
                "give them less room, or low cover.",
            )


def _birds_text(piece: Slice) -> str:
    """ "Like "70 birds of Clover", "120 birds of Dill and Elder"."""
    shares = [share for share in piece.shares if share.run.birds]
    names = names_text(list(dict.fromkeys(share.presence.batch.name for share in shares)))
    return f"{count_text(piece.birds, 'bird')} of {names}"
