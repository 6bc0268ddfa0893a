"""How many birds there are on the farm, as steps up and down by day, and which days a change touches. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import accumulate

from quailsched.farm.records import Batch
from quailsched.season.season import Season, is_like

Steps = Mapping[int, int]  # by the ordinal of a day, how many birds more than the day before


def steps_of(season: Season) -> Steps:
    """Every bird of every stay, by the most that there are in it at once: close enough for a picture."""
    steps: dict[int, int] = {}
    for batch in season.farm.batches:
        _add(steps, season, batch, 1)
    return steps


def steps_after(steps: Steps, old: Season, new: Season) -> tuple[Steps, tuple[int, int] | None]:
    """The steps of ``new`` from those of ``old``, and the first day and the end of the days that differ (ordinals).

    None stands for: perhaps all of them do.
    """
    if new is old:
        return steps, (0, 0)
    if not is_like(old.farm, new.farm):
        return steps_of(new), None
    changed = dict(steps)
    days: list[int] = []
    for one, other, times in ((old, new, -1), (new, old, 1)):
        for batch in one.farm.batches_not_in(other.farm):
            _add(changed, one, batch, times)
            days += [day for start, end, _ in _stays(one, batch) for day in (start, end)]
    return changed, (min(days), max(days)) if days else (0, 0)


def columns(steps: Steps, first: int, day_px: float, left: int, right: int) -> list[int]:
    """How many birds there are at the columns of pixels ``left`` to ``right``; the day ``first`` (an ordinal) begins
    at column 0."""
    by_column = [0] * max(right - left, 1)
    from_day, to_day = first + left / day_px, first + right / day_px
    for day, more in steps.items():
        if day < from_day:
            by_column[0] += more
        elif day < to_day:
            by_column[int((day - first) * day_px) - left] += more
    return list(accumulate(by_column))


def birds_on(steps: Steps, day: int) -> int:
    """How many birds there are on a day (an ordinal)."""
    return sum(more for at, more in steps.items() if at <= day)


def _add(steps: dict[int, int], season: Season, batch: Batch, times: int) -> None:
    for start, end, birds in _stays(season, batch):
        steps[start] = steps.get(start, 0) + times * birds
        steps[end] = steps.get(end, 0) - times * birds


def _stays(season: Season, batch: Batch) -> Iterator[tuple[int, int, int]]:
    """The first day with birds and the end of each stay (ordinals), and its birds."""
    for presence in season.presences_of(batch):
        hatched = next((run.start for run in presence.leg.runs if run.birds), None)
        if hatched is not None:
            yield batch.start.toordinal() + hatched, presence.end.toordinal(), presence.leg.most.birds
