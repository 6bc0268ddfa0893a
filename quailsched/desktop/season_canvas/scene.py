"""Everything that the painter and the mouse need of one moment: lanes, scale, what is picked. No painting."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.ghosts import Ghost
from quailsched.desktop.season_canvas.lanes import Band, Link
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.season.clash import Clash


@dataclass(frozen=True, slots=True)
class Picked:
    """What is selected: a batch, or a clash (with the place that it is in)."""

    batch_id: str | None = None
    clash: Clash | None = None


@dataclass(frozen=True, slots=True)
class Scene:
    """``left`` is the width of the names, ``head`` the height of the header; ``dx``, ``dy`` are scrolled away."""

    lanes: tuple[Lane, ...]
    links: tuple[Link, ...]
    scale: TimeScale
    today: date
    left: float
    head: float
    dx: float
    dy: float
    batch_numbers: dict[str, int]
    batch_names: dict[str, str]
    picked: Picked
    hovered: Picked
    ghosts: tuple[Ghost, ...] = ()

    def x(self, day: date) -> float:
        return self.left + self.scale.x(day) - self.dx

    def top(self, y: float) -> float:
        """A height among the lanes, on the widget."""
        return self.head + y - self.dy

    def day(self, x: float) -> date:
        return self.scale.day(x - self.left + self.dx)

    def lane_at(self, y: float) -> Lane | None:
        inner = y - self.head + self.dy
        return next((lane for lane in self.lanes if lane.top <= inner < lane.bottom), None)

    def lane_of(self, place_id: str) -> Lane:
        return next(lane for lane in self.lanes if lane.content.place.id == place_id)

    def hit(self, x: float, y: float) -> Picked:
        """The clash or batch under a point; nothing where there is only paper."""
        lane = self.lane_at(y)
        if lane is None or x < self.left:
            return Picked()
        clash = self._clash_at(lane, x, y)
        if clash is not None:
            return Picked(clash=clash)
        band = self.band_at(lane, x, y)
        return Picked(batch_id=band.batch_id) if band else Picked()

    def band_at(self, lane: Lane, x: float, y: float) -> Band | None:
        day, inner = self.day(x), y - self.head + self.dy
        for band in lane.content.bands:
            for piece in band.pieces:
                if piece.start <= day < piece.end and lane.y(piece.high) <= inner < lane.y(piece.low):
                    return band
        return None

    def _clash_at(self, lane: Lane, x: float, y: float) -> Clash | None:
        day, inner = self.day(x), y - self.head + self.dy
        for mark in lane.content.marks:
            if not mark.clash.first <= day <= mark.clash.last:
                continue
            if mark.row >= 0:
                top = lane.mark_y(mark.row)
                if top - 1 <= inner < top + lane.mark_height + 1:
                    return mark.clash
            elif inner < lane.line_y and any(
                over.start <= day < over.end and lane.y(over.total) - 16 <= inner for over in lane.content.overs
            ):
                return mark.clash
        return None


def fit_span(bands: Sequence[Band], today: date) -> tuple[date, date]:
    """The days that show the season at once: from its start, or a while before today, to its last beginnings."""
    if not bands:
        return date.fromordinal(today.toordinal() - 14), date.fromordinal(today.toordinal() + 120)
    start = max(min(band.start for band in bands).toordinal(), today.toordinal() - 70)
    end = max(max(band.start for band in bands).toordinal() + 35, today.toordinal() + 60)
    return date.fromordinal(start - 5), date.fromordinal(end)
