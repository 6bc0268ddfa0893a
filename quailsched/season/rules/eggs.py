"""Egg places, and turning and lockdown under one lid."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from quailsched.farm.records import Place, Role
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.season.clash import Clash, batch_ids_in, stretches
from quailsched.season.occupancy import Share, Slice
from quailsched.season.season import Season


def eggs(season: Season) -> Iterator[Clash]:
    """More eggs in a setter, hatcher or cabinet than it has egg places."""
    for place in season.farm.places:
        if not place.role.holds_eggs:
            continue
        for run in stretches(season.slices(place), lambda s, p=place: s.eggs > p.egg_places):  # type: ignore[misc]
            worst = max(run, key=lambda s: s.eggs)
            over = worst.eggs - place.egg_places
            names = names_text([share.presence.batch.name for share in worst.shares])
            yield Clash(
                kind="eggs",
                place_id=place.id,
                batch_ids=batch_ids_in(run),
                first=run[0].start,
                last=run[-1].last,
                worst=worst.start,
                need=worst.eggs,
                have=place.egg_places,
                unit="eggs",
                birds_over=0,
                sentence=f"{names} {'need' if len(worst.shares) > 1 else 'needs'} {worst.eggs:,} egg places by "
                f"{day_text(worst.start)}, {place.name} has {place.egg_places:,}: {count_text(over, 'egg')} too many.",
            )


def cabinet(season: Season) -> Iterator[Clash]:
    """Eggs that must be turned and eggs that must lie still in one cabinet, or either in the wrong machine."""
    for place in season.farm.places:
        if not place.role.holds_eggs:
            continue
        split = [_at_borders(season, piece) for piece in season.slices(place)]
        pieces = [piece for parts in split for piece in parts]
        for run in stretches(pieces, lambda s, p=place: _wrong_eggs(season, p, s) > 0):  # type: ignore[misc]
            worst = max(run, key=lambda s: _wrong_eggs(season, place, s))
            yield Clash(
                kind="cabinet",
                place_id=place.id,
                batch_ids=batch_ids_in(run),
                first=run[0].start,
                last=run[-1].last,
                worst=worst.start,
                need=_wrong_eggs(season, place, worst),
                have=0,
                unit="eggs",
                birds_over=0,
                sentence=_sentence(season, place, worst),
            )


def _still(season: Season, share: Share, piece: Slice) -> bool:
    """Whether the eggs of ``share`` are in lockdown (or hatching) on the first day of ``piece``."""
    batch = share.presence.batch
    return (piece.start - batch.start).days >= season.days(batch).lockdown


def _at_borders(season: Season, piece: Slice) -> Iterator[Slice]:
    """``piece`` cut at the lockdown days of its batches: lockdown changes no load, but it changes this rule."""
    cuts = {piece.start.toordinal(), piece.end.toordinal()}
    for share in piece.shares:
        batch = share.presence.batch
        cuts.add(batch.start.toordinal() + season.days(batch).lockdown)
    inside = sorted(c for c in cuts if piece.start.toordinal() <= c <= piece.end.toordinal())
    for start, end in pairwise(inside):
        yield Slice(
            piece.start.fromordinal(start), piece.start.fromordinal(end), piece.shares,
            piece.eggs, piece.birds, piece.floor_cm2,
        )  # fmt: skip


def _wrong_eggs(season: Season, place: Place, piece: Slice) -> int:
    """Eggs in the wrong machine; in a cabinet with both kinds, the fewer of the two: those to move."""
    still = sum(s.run.eggs for s in piece.shares if _still(season, s, piece))
    turning = piece.eggs - still
    if place.role is Role.SETTER:
        return still
    return turning if place.role is Role.HATCHER else min(still, turning)


def _sentence(season: Season, place: Place, piece: Slice) -> str:
    still = [s for s in piece.shares if _still(season, s, piece)]
    turning = [s for s in piece.shares if not _still(season, s, piece)]
    still_names = names_text([s.presence.batch.name for s in still])
    turning_names = names_text([s.presence.batch.name for s in turning])
    if place.role is Role.SETTER:
        return f"The eggs of {still_names} are in lockdown and must lie still, but {place.name} goes on turning."
    if place.role is Role.HATCHER:
        return f"The eggs of {turning_names} still need turning, and {place.name} does not turn."
    return (
        f"{place.name} cannot do both: the eggs of {turning_names} need turning while those of {still_names} "
        "must lie still in damper air."
    )
