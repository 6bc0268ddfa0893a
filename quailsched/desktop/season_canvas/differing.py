"""On which days two bands of one stay show something else. No painting.

A batch that is moved by a day moves the corners of all bands that stand on it, but between the corners most of them
look as they did: only days that differ have to be drawn again.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from itertools import pairwise
from typing import Any

from quailsched.desktop.season_canvas.lanes import Band
from quailsched.desktop.season_canvas.paint_stages import textured
from quailsched.season.season import Season

_LONG_DAYS = 10  # of a stage that has room for its texture at every zoom
Days = tuple[date, date]  # half-open
_Steps = Sequence[tuple[date, object]]  # what holds from each day on; None where nothing does


def days_differing(old: Iterable[Band], was: Season, new: Iterable[Band], now: Season) -> Iterator[Days]:
    """The days on which the bands ``old`` of the season ``was`` and ``new`` of ``now`` differ. They are those of one
    lane that are not in both."""
    waiting = {band.key: band for band in old}
    for band in new:
        before = waiting.pop(band.key, None)
        if before is None:
            yield band.start, band.end
        elif _lowest(before) != _lowest(band):  # level textures are counted from there
            yield min(before.start, band.start), max(before.end, band.end)
        else:
            yield from _apart(_levels(before), _levels(band))
            yield from _apart(_stages(was, before), _stages(now, band))
    for band in waiting.values():
        yield band.start, band.end


def _lowest(band: Band) -> int:
    known: int | None = band.kept.get("lowest")
    if known is None:
        known = band.kept["lowest"] = min([piece.low for piece in band.pieces])
    return known


def _levels(band: Band) -> _Steps:
    known: _Steps | None = band.kept.get("levels")
    if known is None:
        known = band.kept["levels"] = _steps((piece.start, piece.end, (piece.low, piece.high)) for piece in band.pieces)
    return known


def _stages(season: Season, band: Band) -> _Steps:
    known: _Steps | None = band.kept.get("stage steps")
    if known is None:
        # How long a short one is counts, too: it may be too narrow for its texture.
        runs = textured(season, band)
        known = _steps((start, end, (stage, min((end - start).days, _LONG_DAYS))) for start, end, stage in runs)
        band.kept["stage steps"] = known
    return known


def _steps(runs: Iterable[tuple[date, date, object]]) -> _Steps:
    """Runs of days in their order, those that go on as one."""
    steps: list[tuple[date, object]] = []
    for start, end, what in runs:
        if steps and steps[-1][0] == start:
            steps.pop()
        if not steps or steps[-1][1] != what:
            steps.append((start, what))
        steps.append((end, None))
    return steps


def _apart(one: _Steps, other: _Steps) -> Iterator[Days]:
    """The days on which not the same holds."""
    changes: dict[date, list[Any]] = {}
    for number, steps in enumerate((one, other)):
        for day, what in steps:
            changes.setdefault(day, []).append((number, what))
    holds: list[object] = [None, None]
    for day, end in pairwise(sorted(changes)):
        for number, what in changes[day]:
            holds[number] = what
        if holds[0] != holds[1]:
            yield day, end
