"""Everything that the painter and the mouse need of one moment: lanes, scale, what is picked. No painting, no Qt."""

from __future__ import annotations

from bisect import bisect_right
from datetime import date, timedelta
from operator import attrgetter
from typing import TYPE_CHECKING

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, Piece
from quailsched.desktop.season_canvas.layout import SeasonLayout
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.quick import dataclass
from quailsched.season.clash import Clash

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.ghosts import Ghost

WORDS_PX = 280.0  # words reach at most this far beside what they belong to


@dataclass(frozen=True, slots=True)
class Picked:
    """What is selected: a batch, or a clash (with the place that it is in)."""

    batch_id: str | None = None
    clash: Clash | None = None


@dataclass(frozen=True, slots=True)
class Scene:
    """One view of a season, ``width`` by ``height`` pixels.

    ``left`` is the width of the names, ``head`` the height of the header; ``dx``, ``dy`` are scrolled away.
    """

    layout: SeasonLayout
    lanes: tuple[Lane, ...]
    scale: TimeScale
    today: date
    width: float
    height: float
    left: float
    head: float
    dx: float
    dy: float
    picked: Picked
    hovered: Picked
    ghosts: tuple[Ghost, ...] = ()
    marked_day: date | None = None  # found by typing
    marked_lane: str | None = None
    is_passing: bool = False  # it is being scrolled: words go with the season
    fits: tuple[tuple[date, date], ...] = ()  # while a batch is dragged: where the pointer lets it fit in everywhere

    def x(self, day: date) -> float:
        return self.left + (day.toordinal() - self.scale.first.toordinal()) * self.scale.day_px - self.dx

    def top(self, y: float) -> float:
        """A height among the lanes, on the widget."""
        return self.head + y - self.dy

    def day(self, x: float) -> date:
        return self.scale.day(x - self.left + self.dx)

    def days(self) -> tuple[date, date]:
        """The days in view, half-open."""
        return self.day(self.left), self.day(self.width) + timedelta(days=1)

    def held(self) -> tuple[float, float]:
        """Between which edges words stay whole: those of the view; far out while it is being scrolled, so that what
        comes in bit by bit fits together."""
        beyond = self.width if self.is_passing else 0.0
        return self.left - beyond, self.width + beyond

    def days_about(self) -> tuple[date, date]:
        """The days whose words may stand in view."""
        if not self.is_passing:
            return self.days()
        return self.days_near(self.left, self.width)

    def days_near(self, left: float, right: float) -> tuple[date, date]:
        """The days whose words may stand between ``left`` and ``right``."""
        return self.day(left - WORDS_PX), self.day(right + WORDS_PX) + timedelta(days=1)

    def lanes_in_view(self) -> tuple[Lane, ...]:
        low = bisect_right(self.lanes, self.dy, key=attrgetter("bottom"))
        high = bisect_right(self.lanes, self.dy + self.height - self.head, key=attrgetter("top"))
        return self.lanes[low:high]

    def lane_at(self, y: float) -> Lane | None:
        inner = y - self.head + self.dy
        at = bisect_right(self.lanes, inner, key=attrgetter("top")) - 1
        return self.lanes[at] if at >= 0 and inner < self.lanes[at].bottom else None

    def lane_of(self, lane_id: str) -> Lane | None:
        """The lane of a place or a batch; None if this grouping has none of it."""
        return next((lane for lane in self.lanes if lane.content.id == lane_id), None)

    def rect_of(self, lane: Lane, piece: Piece) -> tuple[float, float, float, float]:
        """(left, top, right, bottom) of ``piece``, cut at the line: what stands above it is drawn as overflow."""
        cap = lane.content.room
        top, bottom = self.top(lane.y(min(piece.high, cap))), self.top(lane.y(min(piece.low, cap)))
        return self.x(piece.start), top, self.x(piece.end), bottom

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
        for band in lane.content.bands.within(day, day + timedelta(days=1)):
            piece = band.piece_on(day)
            if piece is not None and lane.y(piece.high) <= inner < lane.y(piece.low):
                return band
        return None

    def _clash_at(self, lane: Lane, x: float, y: float) -> Clash | None:
        day, inner = self.day(x), y - self.head + self.dy
        overs = lane.content.overs.within(day, day + timedelta(days=1))
        for mark in lane.content.marks.within(day, day + timedelta(days=1)):
            if mark.row >= 0:
                top = lane.mark_y(mark.row)
                if top - 1 <= inner < top + lane.mark_height + 1:
                    return mark.clash
            elif inner < lane.line_y and any(lane.y(over.total) - 16 <= inner for over in overs):
                return mark.clash
        return None
