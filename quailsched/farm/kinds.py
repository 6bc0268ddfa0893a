"""The kind of a batch with the farm's own figures put in."""

from __future__ import annotations

from functools import lru_cache

from quailsched.farm.records import Batch, Farm, FigureChoice
from quailsched.husbandry.handbook import handbook, kind_with
from quailsched.husbandry.kind import Kind


@lru_cache(maxsize=256)
def _kind(kind_id: str, choices: tuple[FigureChoice, ...]) -> Kind:
    kind = handbook()[kind_id]
    if not choices:
        return kind
    return kind_with(kind, tuple((c.key, c.value, c.points) for c in choices))


def kind_in(farm: Farm, kind_id: str) -> Kind:
    """The kind ``kind_id`` as this farm keeps it. Raises KeyError for an unknown kind."""
    return _kind(kind_id, tuple(c for c in farm.choices if c.kind == kind_id))


def kind_of(farm: Farm, batch: Batch) -> Kind:
    return kind_in(farm, batch.kind)
