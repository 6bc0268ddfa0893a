"""All chores of a season between two days."""

from __future__ import annotations

from datetime import date, timedelta

from quailsched.chores.chicks import chick_chores
from quailsched.chores.chore import Chore
from quailsched.chores.eggs import egg_chores
from quailsched.chores.grown import grown_chores
from quailsched.chores.places import place_chores
from quailsched.farm.records import Batch
from quailsched.season.season import Season

# Healthy before sick and young before old, so that hands and boots carry nothing from old to young
# (common practice, row "order" of the reference): eggs, brooders, then pens.
_WALK = {"setter": 0, "hatcher": 1, "cabinet": 2, "brooder": 3, "pen": 4, "grass pen": 5}


def chores_between(season: Season, start: date, end: date) -> tuple[Chore, ...]:
    """The chores of the days from ``start`` to ``end`` (half-open), by day and then in walking order."""
    found: list[Chore] = []
    near = [batch for batch in season.farm.batches if _may_have_chores(season, batch, start, end)]
    for batch in near:
        for rule in (egg_chores, chick_chores, grown_chores):
            found += rule(season, batch)
    for place in season.farm.places:
        found += place_chores(season, place, start, end)
    position = {p.id: (_WALK[p.role], p.position) for p in season.farm.places}
    found = [chore for chore in found if start <= chore.day < end]
    return tuple(sorted(found, key=lambda c: (c.day, position.get(c.place_id or "", (9, 0)), c.kind, c.key)))


_AROUND = timedelta(days=60)  # no chore of a batch lies further before its start or after its end: tested


def _may_have_chores(season: Season, batch: Batch, start: date, end: date) -> bool:
    """Whether ``batch`` is on the farm about these days: of ten years' batches most are not."""
    last = max((presence.end for presence in season.presences_of(batch)), default=batch.start)
    return batch.start - _AROUND < end and max(last, batch.start + _AROUND) + _AROUND > start
