"""Egg places, and turning and lockdown under one lid."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quailsched.farm.records import Batch, Place, Role
from quailsched.farm.units import count_text, day_text, names_text
from quailsched.season.clash import Clash, clash_of_run, overfull, stretches
from quailsched.season.occupancy import Share, Slice, Spell
from quailsched.season.season import Season
from quailsched.words import number_text, say, value_text


def eggs(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """More eggs in a setter, hatcher or cabinet than it has egg places."""
    if not place.role.holds_eggs:
        return
    for run, worst in overfull(place, slices):
        sentence = say(
            "{names} need {number} egg places by {day}, {place} has {room}: {over} too many."
            if len(worst.shares) > 1
            else "{names} needs {number} egg places by {day}, {place} has {room}: {over} too many.",
            names=names_text([share.presence.batch.name for share in worst.shares]),
            number=number_text(worst.eggs),
            day=day_text(worst.start),
            place=place.name,
            room=number_text(place.egg_places),
            over=count_text(worst.eggs - place.egg_places, "egg"),
        )
        yield clash_of_run("eggs", place, run, worst, worst.eggs, place.egg_places, "eggs", sentence)


def may_be_too_many(_season: Season, place: Place, spell: Spell) -> bool:
    return place.role.holds_eggs and spell.most.eggs > place.egg_places


def stale(season: Season, batch: Batch) -> Iterator[Clash]:
    """Eggs older at setting than figure egg_storage_days: fewer hatch for each day."""
    kind = season.kind(batch)
    most = kind.days("egg_storage_days")
    if not batch.origin.is_eggs or batch.egg_age_days <= most:
        return
    lost = kind.value("egg_storage_loss_pct_per_day")
    sentence = say(
        "The oldest eggs of {batch} would be {age} days old when they are set on {day}; {most} days is the rule, and "
        "each day costs about {lost} chicks in 100 eggs.",
        batch=batch.name,
        age=batch.egg_age_days,
        day=day_text(batch.start),
        most=most,
        lost=value_text(lost),
    )
    yield Clash(
        kind="stale",
        place_id=batch.stays[0].place_id,
        batch_ids=(batch.id,),
        first=batch.start,
        last=batch.start,
        worst=batch.start,
        need=most,
        have=batch.egg_age_days,
        unit="days",
        birds_over=0,
        sentence=sentence,
    )


def cabinet(season: Season, place: Place, slices: Sequence[Slice]) -> Iterator[Clash]:
    """Eggs that must be turned and eggs that must lie still in one cabinet, or either in the wrong machine."""
    if not place.role.holds_eggs:
        return

    def wrong_eggs(piece: Slice) -> int:
        return _wrong_eggs(season, place, piece)

    pieces = [part for piece in slices for part in _at_borders(season, piece)]
    for run in stretches(pieces, lambda piece: wrong_eggs(piece) > 0):
        worst = max(run, key=wrong_eggs)
        sentence = _sentence(season, place, worst)
        yield clash_of_run("cabinet", place, run, worst, wrong_eggs(worst), 0, "eggs", sentence)


def may_be_wrong(season: Season, place: Place, spell: Spell) -> bool:
    if place.role is Role.CABINET:
        return len(spell.presences) > 1
    if place.role is Role.SETTER:
        return any(p.leg.end > season.days(p.batch).lockdown for p in spell.presences)
    return place.role is Role.HATCHER and any(p.leg.start < season.days(p.batch).lockdown for p in spell.presences)


def _still(season: Season, share: Share, piece: Slice) -> bool:
    """Whether the eggs of ``share`` are in lockdown (or hatching) on the first day of ``piece``."""
    batch = share.presence.batch
    return (piece.start - batch.start).days >= season.days(batch).lockdown


def _at_borders(season: Season, piece: Slice) -> Iterator[Slice]:
    """``piece`` cut at the lockdown days of its batches: lockdown changes no load, but it changes this rule."""
    batches = (share.presence.batch for share in piece.shares)
    return piece.parts(batch.start.toordinal() + season.days(batch).lockdown for batch in batches)


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
        return say(
            "The eggs of {names} are in lockdown and must lie still, but {place} goes on turning.",
            names=still_names,
            place=place.name,
        )
    if place.role is Role.HATCHER:
        return say(
            "The eggs of {names} still need turning, and {place} does not turn.", names=turning_names, place=place.name
        )
    return say(
        "{place} cannot do both: the eggs of {turning} need turning while those of {still} must lie still in damper "
        "air.",
        place=place.name,
        turning=turning_names,
        still=still_names,
    )
