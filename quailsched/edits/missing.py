"""Birds that a head count or a sexing did not find: written down beside it as missing, and corrected with it."""

from __future__ import annotations

from dataclasses import replace

from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.kinds import kind_of
from quailsched.farm.ledger import heir_of, lines_of
from quailsched.farm.records import Batch, Farm, Part
from quailsched.season.birds import by_the_books
from quailsched.season.lived import lived_of


def missing_count(farm: Farm, count: Count) -> Count | None:
    """What stands beside ``count``, which ``farm`` has: the birds that are missing by it, instead of those that were
    missing by what it corrects; None if there is nothing to write down."""
    if count.sort not in (Sort.COUNTED, Sort.SEXED):
        return None
    beside = f"{count.id}-missing"
    old = heir_of(farm.counts_of(count.batch_id), f"{count.corrects}-missing") if count.corrects else None
    if old is not None:
        farm = farm.with_records({old.id}, ())
    gone = 0 if count.is_taken_back else short_by(farm, count)
    if gone > 0:
        return Count(
            beside, Sort.DIED, count.day, count.entered, gone, batch_id=count.batch_id, place_id=count.place_id,
            part=count.part, cause=Cause.MISSING, corrects=old.id if old else "",
        )  # fmt: skip
    return replace(old, id=beside, entered=count.entered, corrects=old.id, is_taken_back=True) if old else None


def short_by(farm: Farm, count: Count) -> int:
    """How many birds fewer ``count`` found than should be there; 0 where that was never counted.

    ``farm`` may have the count or not.
    """
    batch = farm.find(count.batch_id)
    if not isinstance(batch, Batch):
        return 0
    counts = farm.counts_of(batch.id)
    lived = lived_of(batch, counts)
    if lived.hatched is None and batch.origin.is_eggs:
        return 0
    if count.part is Part.ALL:
        with_it = counts if count in counts else (*counts, count)
        there = next((line.birds for line in lines_of(batch, with_it) if line.count.id == count.id), 0)
        return max(there - count.number, 0)
    day = (count.day - batch.start).days
    if not any(stay.part is not Part.ALL and stay.from_day <= day for stay in batch.stays):
        return 0  # a group of birds that are all together
    return max(by_the_books(kind_of(farm, batch), batch, day, count.part, lived) - count.number, 0)
