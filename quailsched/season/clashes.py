"""All clashes of a season, in order of their first day."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from quailsched.season.clash import Clash
from quailsched.season.rules import BATCH_RULES, FARM_RULES, PLACE_RULES
from quailsched.season.season import Season


def clashes_of(season: Season, since: date | None = None) -> tuple[Clash, ...]:
    """Every clash that is not over before ``since``, sorted by first day, then place, kind and batches."""
    positions = {place.id: place.position for place in season.farm.places}
    found = [clash for clash in _all(season) if since is None or clash.last >= since]
    return tuple(sorted(found, key=lambda c: (c.first, positions[c.place_id], c.kind, c.batch_ids)))


def _all(season: Season) -> Iterator[Clash]:
    for batch in season.farm.batches:
        for of_batch in BATCH_RULES:
            yield from of_batch(season, batch)
    for place in season.farm.places:
        for of_place in PLACE_RULES:
            yield from of_place(season, place, season.slices(place))
    for of_farm in FARM_RULES:
        yield from of_farm(season)
