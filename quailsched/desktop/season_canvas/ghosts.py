"""Bands that are not of the season shown: the plan behind a trial, a batch that is only thought of. No Qt."""

from __future__ import annotations

from collections.abc import Collection

from quailsched.desktop.season_canvas.by_place import bands_of
from quailsched.desktop.season_canvas.lanes import Band
from quailsched.quick import dataclass
from quailsched.season.season import Season


@dataclass(frozen=True, slots=True)
class Ghost:
    """A band of another season, and the words that stand on it."""

    band: Band
    label: str


def ghosts_of(season: Season, batch_ids: Collection[str], word: str) -> tuple[Ghost, ...]:
    """The bands of ``batch_ids`` as ``season`` has them, each labelled "Elder (plan)" where ``word`` is "plan".

    Ids that the season does not know are passed over; so are, by the painter, places that the canvas does not show.
    """
    batches = [batch for batch in season.farm.batches if batch.id in batch_ids]
    names = {batch.id: batch.name for batch in batches}
    passed = {presence.place_id for batch in batches for presence in season.presences_of(batch)}
    return tuple(
        Ghost(band, f"{names[band.batch_id]} ({word})")
        for place in season.farm.places
        if place.id in passed  # the others have none of these bands, and a large farm has many places
        for band in bands_of(season, place)
        if band.batch_id in names
    )
