"""How many of a batch's birds are hens: those found at sexing, or else the half that is expected."""

from __future__ import annotations

import math
from datetime import date, timedelta

from quailsched.farm.facts import Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Part
from quailsched.season.birds import birds_on, hatched, whole
from quailsched.season.lived import Lived
from quailsched.season.season import Season


class Flock:
    """Birds and hens of batches on days, each worked out once: to ask a season for what a batch has lived costs as much
    as it has counts."""

    def __init__(self, season: Season) -> None:
        self._season = season
        self._lived: dict[str, Lived] = {}
        self._hens: dict[tuple[str, date], int] = {}

    def lived(self, batch: Batch) -> Lived:
        if batch.id not in self._lived:
            self._lived[batch.id] = self._season.lived(batch)
        return self._lived[batch.id]

    def birds(self, batch: Batch, day: date, part: Part = Part.ALL) -> int:
        """Birds of ``part`` alive on ``day``."""
        return birds_on(self._season.kind(batch), batch, (day - batch.start).days, part, self.lived(batch))

    def hens(self, batch: Batch, day: date) -> int:
        """Hens of ``batch`` alive on ``day``, whole ones; birds that were neither called hen nor cock count as hens.

        One that dies or leaves on the day does not count any more, one that hatches, comes or joins does. After the
        last count they are thinned by survival, as all birds are.
        """
        key = batch.id, day
        if key not in self._hens:
            self._hens[key] = self._hens_on(batch, day)
        return self._hens[key]

    def _hens_on(self, batch: Batch, day: date) -> int:
        lived, number, kind = self.lived(batch), (day - batch.start).days, self._season.kind(batch)
        split = next((stay.from_day for stay in batch.stays if stay.part is not Part.ALL), None)
        if split is not None and number >= split:
            at_split = self.birds(batch, batch.start + timedelta(days=split))
            hens, cocks = _found(self._season, batch, lived, at_split)
            kept = min(cocks, math.ceil(hens / kind.value("hens_per_cock"))) if hens else 0
            return whole(self.birds(batch, day, Part.HENS) * _share(hens, kept))
        hens, cocks = _found(self._season, batch, lived, hatched(kind, batch, lived))
        return whole(self.birds(batch, day) * _share(*_left(hens, cocks, lived, number)))


def _found(season: Season, batch: Batch, lived: Lived, birds: int) -> tuple[int, int]:
    """(hens, cocks) at sexing; of a batch parted from another by sex, what it was made of; else halves of ``birds``,
    an odd one being a hen."""
    if lived.sexed is not None:
        return lived.sexed.hens + lived.sexed.unsure, lived.sexed.cocks
    counts = standing(season.farm.counts_of(batch.id))
    made_of = next((one.part for one in counts if one.sort is Sort.PARTED and one.to_batch_id == batch.id), Part.ALL)
    if made_of is Part.COCKS:
        return 0, birds
    if made_of is Part.HENS:  # the laying group, with the cocks kept with it
        cocks = round(birds / (season.kind(batch).value("hens_per_cock") + 1))
        return birds - cocks, cocks
    return birds - birds // 2, birds // 2


def _left(hens: float, cocks: float, lived: Lived, number: int) -> tuple[float, float]:
    """What is left by day ``number`` of so many hens and cocks that were never set apart.

    Birds of no told sex that went, or joined, were hens and cocks in the proportion of those that were there.
    """
    since = lived.sexed.day if lived.sexed is not None else -math.inf
    for at, part, gone in lived.gone:
        if not since <= at <= number:
            continue
        if part is Part.COCKS:
            cocks = max(cocks - gone, 0)
        elif part is Part.HENS:
            hens = max(hens - gone, 0)
        elif hens + cocks:
            kept = max(1 - gone / (hens + cocks), 0)
            hens, cocks = hens * kept, cocks * kept
    return hens, cocks


def _share(hens: float, cocks: float) -> float:
    return hens / (hens + cocks) if hens + cocks else 0.0
