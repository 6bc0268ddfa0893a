"""The picture of birds that lies under the overview: kept, and drawn again only where days have changed."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPixmap
from PySide6.QtWidgets import QWidget

from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.loads import Steps, birds_on, columns, steps_after, steps_of
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.desktop.season_canvas.strip import draw_birds, draw_months, months_of
from quailsched.desktop.theme import current
from quailsched.season.season import Season


class StripPicture:
    """As large as a widget, with its fonts and sharpness."""

    def __init__(self, widget: QWidget) -> None:
        self._widget = widget
        self._season: Season | None = None
        self._steps: Steps = {}
        self._most = 1  # birds that fill the height
        self._known: tuple[object, ...] = ()  # what all of it rests on, but for the season
        self._is_new = True  # another season, all of which has to be drawn
        self._stale: tuple[int, int] | None = None  # the days (ordinals) that have to be drawn again
        self._pixmap = QPixmap()
        self._face = Fonts(widget.font()).tiny
        self._months: list[tuple[float, str]] = []

    def show_season(self, season: Season, *, is_preview: bool) -> None:
        """Take the birds of ``season``. A preview keeps the height of the picture, so that only the days that it
        changes need be drawn again."""
        steps, days = steps_after(self._steps, self._season, season) if self._season else (steps_of(season), None)
        self._season, self._steps = season, steps
        if not is_preview or days is None:
            self._is_new = True
        elif days[0] < days[1]:
            stale = self._stale or days
            self._stale = min(stale[0], days[0]), max(stale[1], days[1])

    def birds_on(self, day: int) -> int:
        """How many birds there are on a day (an ordinal)."""
        return birds_on(self._steps, day)

    def pixmap(self, scale: TimeScale, end: int) -> QPixmap:
        """The picture of the days of ``scale`` up to ``end`` (an ordinal), up to date."""
        widget, first_day = self._widget, scale.first.toordinal()
        ratio = widget.devicePixelRatioF()
        known = scale, end, widget.size(), ratio, current(), widget.font().key()
        if known == self._known and not self._is_new and self._stale is None:
            return self._pixmap
        left, right = 0, max(widget.width(), 1)
        if known != self._known:
            self._known, self._is_new = known, True
            self._face = Fonts(widget.font()).tiny
            self._months = months_of(self._face, scale, end, widget.width())
            self._pixmap = QPixmap(widget.size() * ratio)
            self._pixmap.setDevicePixelRatio(ratio)
        elif self._stale is not None and not self._is_new:
            days = [int((day - first_day) * scale.day_px) for day in self._stale]
            left, right = max(days[0], 0), min(days[1] + 2, right)
        heights = columns(self._steps, first_day, scale.day_px, left, right)
        if self._is_new:
            self._most = max([*heights, 1])
        self._is_new, self._stale = False, None
        self._draw(heights, left)
        return self._pixmap

    def _draw(self, heights: list[int], left: int) -> None:
        """The columns from ``left`` on."""
        theme, tall = current(), self._widget.height()
        painter = QPainter(self._pixmap)
        try:
            painter.setClipRect(QRectF(left, 0, len(heights), tall))
            draw_birds(painter, theme, heights, self._most, left, tall)
        finally:
            painter.end()

    def draw_months(self, painter: QPainter) -> None:
        """The names of months, over what is paler: they are to be read everywhere."""
        draw_months(painter, current(), self._face, self._months)
