"""The mouse on the season: what a press takes hold of, and what its moves ask for.

Taken on a band, it drags: days to the right and left (weeks with Shift), another lane for another place, up and down
inside the lane to split. Taken on paper, it scrolls. ``drag`` says what a drag means; the canvas shows and asks.
"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, Qt

from quailsched.desktop.season_canvas.drag import Drop, Grab, Grip
from quailsched.desktop.season_canvas.lanes import Band, Grouping
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.quick import dataclass

_START_PX = 5.0  # a press that moves less is a click
_EDGE_PX = 5.0  # how near to the edge of a band a press takes the edge
_LEAST_BAND_PX = 16.0  # in a band narrower than this there is no room for edges


@dataclass(frozen=True, slots=True)
class Hold:
    """A band that the mouse holds since it was pressed at ``at``; ``scene`` is as it was then."""

    grab: Grab
    at: QPointF
    scene: Scene
    is_moving: bool = False
    is_upright: bool = False  # it went up or down first: a split, as long as it stays in the lane


def grab_at(scene: Scene, at: QPointF) -> Grab | None:
    """The band under a point, by an edge if it is near one; None where there is none."""
    lane = scene.lane_at(at.y())
    band = scene.band_at(lane, at.x(), at.y()) if lane is not None and at.x() >= scene.left else None
    return Grab(band, _grip_at(scene, band, at.x())) if band is not None else None


def _grip_at(scene: Scene, band: Band, x: float) -> Grip:
    left, right = scene.x(band.start), scene.x(band.end)
    if right - left < _LEAST_BAND_PX:
        return Grip.WHOLE
    if right - x <= _EDGE_PX:
        return Grip.END
    is_first = band.presences[0].leg.start == min(stay.from_day for stay in band.presences[0].batch.stays)
    return Grip.START if x - left <= _EDGE_PX and not is_first else Grip.WHOLE


def moved(hold: Hold, at: QPointF) -> Hold:
    """``hold`` when the pointer has come to ``at``: whether it drags by now, and which way it went first."""
    if hold.is_moving:
        return hold
    across, down = abs(at.x() - hold.at.x()), abs(at.y() - hold.at.y())
    if max(across, down) < _START_PX:
        return hold
    by_places = hold.scene.layout.grouping is Grouping.PLACES
    return replace(hold, is_moving=True, is_upright=down > across and by_places and hold.grab.grip is Grip.WHOLE)


def drop_at(hold: Hold, scene: Scene, at: QPointF, weeks: bool) -> Drop:
    """What the pointer at ``at`` asks for. A split has no place yet (``place_id`` None): ``drag.split_drop`` finds it.

    ``scene`` is as it is now: it may have been scrolled since the press.
    """
    days = round((at.x() - hold.at.x() + scene.dx - hold.scene.dx) / scene.scale.day_px)
    if weeks:
        days = round(days / 7) * 7
    if hold.grab.grip is not Grip.WHOLE or scene.layout.grouping is Grouping.BATCHES:
        return Drop(days)
    lane = scene.lane_at(at.y())
    own = hold.grab.band.place_id
    if lane is not None and lane.content.id != own:
        return Drop(days if not hold.is_upright else 0, lane.content.id)
    return Drop(split=_cut(hold, at)) if hold.is_upright else Drop(days)


def _cut(hold: Hold, at: QPointF) -> int:
    """How many of the batch lie above the pointer, in the band as it was taken."""
    scene, band = hold.scene, hold.grab.band
    lane = scene.lane_of(band.place_id)
    piece = band.piece_on(scene.day(hold.at.x()))
    if lane is None or piece is None:
        return 0
    load = lane.content.room * (lane.base_y - (at.y() - scene.head + scene.dy)) / (lane.base_y - lane.line_y)
    above = (piece.high - load) / (piece.high - piece.low)
    number = band.presences[0].batch.number
    return min(max(round(number * above), 0), number - 1)


def cursor_for(grab: Grab | None) -> Qt.CursorShape | None:
    """What the pointer looks like over a band."""
    if grab is None:
        return None
    return Qt.CursorShape.OpenHandCursor if grab.grip is Grip.WHOLE else Qt.CursorShape.SplitHCursor
