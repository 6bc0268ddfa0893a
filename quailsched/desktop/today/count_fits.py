"""Which batches and places a count can be of on a day, where none is named. No Qt."""

from __future__ import annotations

from datetime import date, timedelta

from quailsched.farm.facts import Sort
from quailsched.farm.ledger import eggs_left, standing
from quailsched.farm.records import Batch, Part, Place
from quailsched.season.season import Season

_HATCH_DAYS = 5  # so far from its day a hatch may be
_SET_DAYS = 14


def fitting(season: Season, sort: Sort, day: date) -> list[Batch]:
    """The batches that a count of ``sort`` can be of on ``day``, by their days."""
    fits = _is_alive
    if sort is Sort.SET:
        fits = _is_to_set
    elif sort.is_of_eggs:
        fits = _has_eggs
    elif sort is Sort.HATCHED:
        fits = _is_to_hatch
    return sorted((one for one in season.farm.batches if fits(season, one, day)), key=lambda one: one.start)


def _is_alive(season: Season, batch: Batch, day: date) -> bool:
    is_here = any(presence.start <= day < presence.end for presence in season.presences_of(batch))
    return is_here and season.birds(batch, day) > 0


def _sorts(season: Season, batch: Batch) -> set[Sort]:
    return {count.sort for count in standing(season.farm.counts_of(batch.id)) if count.batch_id == batch.id}


def _has_eggs(season: Season, batch: Batch, day: date) -> bool:
    if not batch.origin.is_eggs or Sort.HATCHED in _sorts(season, batch):
        return False
    last = batch.start + timedelta(days=season.days(batch).hatch + _HATCH_DAYS)
    return batch.start < day <= last and eggs_left(batch, season.farm.counts_of(batch.id), day) > 0


def _is_to_hatch(season: Season, batch: Batch, day: date) -> bool:
    if not batch.origin.is_eggs or Sort.HATCHED in _sorts(season, batch):
        return False
    hatch = batch.start + timedelta(days=season.days(batch).hatch)
    return abs((day - hatch).days) <= _HATCH_DAYS


def _is_to_set(season: Season, batch: Batch, day: date) -> bool:
    if not batch.origin.is_eggs or Sort.SET in _sorts(season, batch):
        return False
    return abs((day - batch.start).days) <= _SET_DAYS


def batches_in(season: Season, place: Place, day: date) -> list[Batch]:
    """Whose eggs or birds are in ``place`` on ``day``."""
    there = season.slice_on(place, day)
    return list(dict.fromkeys(share.presence.batch for share in there.shares)) if there is not None else []


def laying_places(season: Season, day: date) -> list[Place]:
    """Pens with hens of laying age on ``day``."""
    return [
        place
        for place in season.farm.places
        if place.role.is_pen and any(_lays(season, p.batch, p.part, day) for p in season.presences(place)
                                     if p.start <= day < p.end)
    ]  # fmt: skip


def _lays(season: Season, batch: Batch, part: Part, day: date) -> bool:
    first = batch.start + timedelta(days=season.days(batch).first_egg)
    return part is not Part.COCKS and first <= day
