"""The season by batch: one lane for each, its stays one after the other, as high as the eggs or birds left. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from quailsched.desktop.season_canvas.facts import marks_of_batch
from quailsched.desktop.season_canvas.lanes import Band, LaneContent, Piece, Timed, marks_of
from quailsched.farm.records import Batch, Part
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season

_BODY = 1.9


def lanes_by_batch(
    season: Season, clashes: Sequence[Clash], old: Sequence[LaneContent] = (), before: Season | None = None
) -> tuple[LaneContent, ...]:
    """The lanes of all batches in order of their days. ``old`` are those of ``before``: what still holds is kept."""
    by_batch: dict[str, list[Clash]] = {batch.id: [] for batch in season.farm.batches}
    for clash in clashes:
        for batch_id in clash.batch_ids:
            if batch_id in by_batch:
                by_batch[batch_id].append(clash)
    known = {lane.id: lane for lane in old} if before is not None else {}
    lanes = []
    for batch in season.farm.batches:
        lane = known.get(batch.id)
        if lane is None or before is None or not _is_same(lane, before, season, batch, by_batch[batch.id]):
            lane = _fresh(season, batch, by_batch[batch.id])
        lanes.append(lane)
    return tuple(lanes)


def _is_same(lane: LaneContent, before: Season, season: Season, batch: Batch, clashes: list[Clash]) -> bool:
    return (
        before.farm.find(batch.id) is batch
        and before.presences_of(batch) is season.presences_of(batch)
        and before.farm.acceptances is season.farm.acceptances
        and [mark.clash for mark in lane.marks.items] == clashes
    )


def _fresh(season: Season, batch: Batch, clashes: Sequence[Clash]) -> LaneContent:
    return LaneContent(
        id=batch.id,
        title=batch.name,
        place=None,
        room=batch.number,
        body=_BODY,
        bands=Timed(sorted(_bands(season, batch), key=lambda band: band.start)),
        overs=Timed(()),
        closed=Timed(()),
        marks=marks_of(season.farm, clashes, over_line=False),
        facts=marks_of_batch(season, batch),
    )


def _bands(season: Season, batch: Batch) -> list[Band]:
    """Stays in one place that follow on from each other are one band, as in the lane of the place."""
    presences = season.presences_of(batch)
    hens = max((p.leg.most.birds for p in presences if p.part is Part.HENS), default=0)
    runs: list[list[Presence]] = []
    for presence in presences:
        own = [run for run in runs if (run[-1].part is Part.COCKS) is (presence.part is Part.COCKS)]
        if own and own[-1][-1].end == presence.start and own[-1][-1].place_id == presence.place_id:
            own[-1].append(presence)
        else:
            runs.append([presence])
    return [_band(batch, run, hens if run[0].part is Part.COCKS else 0) for run in runs]


def _band(batch: Batch, run: Sequence[Presence], low: int) -> Band:
    """``low`` lies what it stands on: the surplus cocks stand on the hens."""
    pieces = tuple(
        Piece(
            batch.start + timedelta(days=load.start),
            batch.start + timedelta(days=load.end),
            low,
            low + (load.birds or load.eggs),
        )
        for presence in run
        for load in presence.leg.runs
    )
    return Band(batch.id, run[0].place_id, run[0].part is Part.COCKS, pieces, tuple(run))
