"""All clashes of a season, in order of their first day."""

from __future__ import annotations

from datetime import date

from quailsched.season.clash import Clash
from quailsched.season.rules import RULES
from quailsched.season.season import Season


def clashes_of(season: Season, since: date | None = None) -> tuple[Clash, ...]:
    """Every clash that is not over before ``since``, sorted by first day, then place, kind and batches."""
    names = {place.id: place.position for place in season.farm.places}
    found = [clash for rule in RULES for clash in rule(season) if since is None or clash.last >= since]
    return tuple(sorted(found, key=lambda c: (c.first, names[c.place_id], c.kind, c.batch_ids)))
