"""What the counts of a batch add up to: eggs still in the machine, birds gained and lost. Whole numbers, no figures.

A bird that dies, is sold or goes over to another batch on a day does not count on that day any more; one that hatches
or joins does (the convention of the published examples of hen-day lay, rows ``ex.henday…`` of the reference).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from datetime import date, datetime
from typing import Final

from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch, Farm
from quailsched.quick import dataclass

# The fields that a sort of count has beside its day and what it is of, the needed ones first with "!".
FIELDS: Final[Mapping[Sort, tuple[str, ...]]] = {
    Sort.SET: ("number!",),
    Sort.CLEAR: ("number",),  # none clear is told too: fertility rests on it
    Sort.QUIT: ("number!",),
    Sort.PIPPED: ("number!",),
    Sort.HATCHED: ("number", "hour"),
    Sort.COUNTED: ("number", "part"),
    Sort.DIED: ("number!", "cause", "part"),
    Sort.MOVED: ("place_id!", "number", "part"),
    Sort.FEATHERED: (),
    Sort.SEXED: ("number!", "hens", "cocks"),
    Sort.WEIGHED: ("number!", "grams!", "part"),
    Sort.SOLD: ("number!", "part"),
    Sort.PROCESSED: ("number!", "grams", "dressed_g", "part"),
    Sort.PARTED: ("number!", "to_batch_id!", "part"),
    Sort.JOINED: ("number!", "to_batch_id!", "part"),
    Sort.LAID: ("number",),
    Sort.FEED_BOUGHT: ("grams!",),
    Sort.FED: ("grams!",),
    Sort.BEDDING: ("place_id!",),
    Sort.BUILT: ("place_id!",),
    Sort.HOURS: ("hours!",),
    Sort.NOTE: ("words!",),
    Sort.PHOTO: ("file_name!",),
}


def standing(counts: Iterable[Count]) -> list[Count]:
    """Those that hold: not corrected by another, and not taken back. In the same order."""
    counts = tuple(counts)
    corrected = {count.corrects for count in counts}
    return [count for count in counts if count.id not in corrected and not count.is_taken_back]


def traces_in(counts: Iterable[Count]) -> Callable[[Count], list[Count]]:
    """For any count among ``counts``, what stood in its place before it, newest first."""
    by_id = {one.id: one for one in counts}

    def trace_of(count: Count) -> list[Count]:
        found: dict[str, Count] = {}
        while (before := by_id.get(count.corrects)) is not None and before.id not in found:
            found[before.id] = before
            count = before
        return [*found.values()]

    return trace_of


def total(counts: Iterable[Count], *sorts: Sort) -> int:
    """The numbers of these sorts together."""
    return sum(count.number for count in counts if count.sort in sorts)


@dataclass(frozen=True, slots=True)
class Line:
    """One count of a batch with what there was before it: eggs in the machine, birds alive."""

    count: Count
    eggs: int
    birds: int


def lines_of(batch: Batch, counts: Iterable[Count]) -> Iterator[Line]:
    """The standing counts of ``batch`` in order of days: on one day eggs, then gains, then what was seen of all, then
    losses and head counts as they were written down.

    As long as no hatch is recorded, as many birds may be there as eggs are left; until the hatch, eggs move.
    """
    counts = tuple(counts)
    of_batch = standing(counts)
    hatches = [one.day for one in of_batch if one.sort is Sort.HATCHED and one.batch_id == batch.id]
    is_hatched = bool(hatches) or not batch.origin.is_eggs
    eggs = batch.number if batch.origin.is_eggs else 0
    birds = 0 if batch.origin.is_eggs else batch.number
    lost_before_hatch = 0
    first_written = _first_written(counts)
    for count in sorted(of_batch, key=lambda one: (one.day, _rank(batch, one), first_written(one))):
        there = birds if is_hatched else eggs + birds - lost_before_hatch
        if count.sort is Sort.MOVED and hatches and count.day < hatches[0]:
            there = eggs
        yield Line(count, eggs, there)
        if count.sort is Sort.JOINED and count.to_batch_id == batch.id:
            birds += count.number
        elif count.batch_id != batch.id:
            continue
        elif count.sort is Sort.HATCHED:
            eggs -= count.number
            birds += count.number
        elif count.sort in (Sort.CLEAR, Sort.QUIT):
            eggs -= count.number
        elif count.sort.takes_birds:
            birds -= count.number if is_hatched else 0
            lost_before_hatch += 0 if is_hatched else count.number


def _first_written(counts: tuple[Count, ...]) -> Callable[[Count], tuple[datetime, str]]:
    """When what a count stands for was first written down: a correction has the place of what it corrects."""
    if not any(count.corrects for count in counts):
        return lambda count: (count.entered, count.id)
    trace_of = traces_in(counts)

    def first(count: Count) -> tuple[datetime, str]:
        oldest = trace_of(count)[-1:] or [count]
        return oldest[0].entered, oldest[0].id

    return first


def heir_of(counts: Iterable[Count], count_id: str) -> Count | None:
    """What stands in the place of a count by now, itself if it was never corrected; None if it was taken back."""
    counts = tuple(counts)
    by_id = {one.id: one for one in counts}
    next_of = {one.corrects: one for one in counts if one.corrects}
    found, seen = by_id.get(count_id), {count_id}
    while found is not None and (later := next_of.get(found.id)) is not None and later.id not in seen:
        found = later
        seen.add(later.id)
    return None if found is None or found.is_taken_back else found


def _rank(batch: Batch, count: Count) -> int:
    if count.sort is Sort.HATCHED or (count.sort is Sort.JOINED and count.to_batch_id == batch.id):
        return 1
    if count.sort.is_of_eggs:
        return 0
    return 3 if count.sort.takes_birds or count.sort in (Sort.COUNTED, Sort.SEXED) else 2


def eggs_left(batch: Batch, counts: Iterable[Count], day: date) -> int:
    """Eggs of ``batch`` that nothing is known of yet at the end of ``day``: not clear, not quit, not hatched."""
    if not batch.origin.is_eggs:
        return 0
    till = [one for one in standing(counts) if one.batch_id == batch.id and one.day <= day]
    return batch.number - total(till, Sort.CLEAR, Sort.QUIT, Sort.HATCHED)


def has_facts(farm: Farm, batch: Batch) -> bool:
    """Whether anything of ``batch`` is known, so that its day 0 stays as it is."""
    return any(count.sort.needs_batch for count in standing(farm.counts_of(batch.id)))
