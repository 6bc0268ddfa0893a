"""What a screen reader finds in the season: its bands, each with a name, its place on the screen and its state.

The season as a table (``season_table``) tells all of it in words; here stands what is picked and where.
"""

from __future__ import annotations

from datetime import timedelta
from functools import cache
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QObject, QPoint, QRect
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QAccessibleEvent,
    QAccessibleInterface,
    QColor,
    QWindow,
)
from PySide6.QtWidgets import QAccessibleWidget
from shiboken6 import isValid

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band
from quailsched.farm.units import span_text
from quailsched.report.clashes import title_of
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.canvas import SeasonCanvas

_kept: list[QAccessibleInterface] = []  # Qt deletes what it is given, and Python must not do so before


@cache
def hear_seasons() -> None:
    """From now on Qt asks here for what is in a season. Costs nothing while nobody listens."""
    QAccessible.installFactory(_heard_of)


def hear_again(canvas: SeasonCanvas) -> None:
    """Let Qt ask here for ``canvas`` too, if somebody has listened before ``hear_seasons``."""
    if QAccessible.isActive():
        heard = QAccessible.queryAccessibleInterface(canvas)
        if not isinstance(heard, HeardSeason):
            QAccessible.deleteAccessibleInterface(QAccessible.uniqueId(heard))


def tell_picked(canvas: SeasonCanvas, text: str) -> None:
    """Tell a screen reader that something else is picked: the band that has the keys now, or ``text``."""
    if not QAccessible.isActive():
        return
    heard = QAccessible.queryAccessibleInterface(canvas)
    if isinstance(heard, HeardSeason) and canvas.hasFocus() and heard.picked() is not None:
        event = QAccessibleEvent(canvas, QAccessible.Event.Focus)
        event.setChild(heard.first + (heard.picked() or 0))
        QAccessible.updateAccessibility(event)
    else:
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(canvas, text))


def _heard_of(name: str, thing: QObject) -> QAccessibleInterface | None:
    if name != "SeasonCanvas":
        return None
    made = HeardSeason(cast("SeasonCanvas", thing))
    _kept.append(made)
    return made


class HeardSeason(QAccessibleWidget):
    """The season as a list of bands, after the widgets that are in it."""

    def __init__(self, canvas: SeasonCanvas) -> None:
        super().__init__(canvas, QAccessible.Role.List)
        self._bands: list[HeardBand] = []  # made once for each number: Qt holds on to them

    @property
    def canvas(self) -> SeasonCanvas:
        return cast("SeasonCanvas", self.object())

    @property
    def first(self) -> int:
        """How many widgets come before the bands."""
        return super().childCount()

    def bands(self) -> list[tuple[Lane, Band]]:
        if self.object() is None:  # the window has gone
            return []
        return [(lane, band) for lane in self.canvas.scene().lanes for band in lane.content.bands.items]

    def picked(self) -> int | None:
        """The number of the first band that is picked."""
        batch_id = self.canvas.scene().picked.batch_id
        return next((n for n, (_, band) in enumerate(self.bands()) if band.batch_id == batch_id), None)

    def childCount(self) -> int:
        return super().childCount() + len(self.bands())

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        number = index - self.first
        if number < 0:
            return super().child(index)
        if number >= len(self.bands()):
            return None
        while len(self._bands) <= number:
            self._bands.append(HeardBand(self, len(self._bands)))
            _kept.append(self._bands[-1])
        return self._bands[number]

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return self.first + child.number if isinstance(child, HeardBand) else super().indexOfChild(child)

    def focusChild(self) -> QAccessibleInterface | None:  # type: ignore[override]
        at = self.picked()
        return self.child(self.first + at) if at is not None and self.canvas.hasFocus() else super().focusChild()


class HeardBand(QAccessibleInterface):
    """The band with a number: what it is changes as the season does. Where there is nothing, Qt takes None."""

    def __init__(self, season: HeardSeason, number: int) -> None:
        super().__init__()
        self.season, self.number = season, number

    def _now(self) -> tuple[Lane, Band] | None:
        bands = self.season.bands() if isValid(self.season) else []
        return bands[self.number] if self.number < len(bands) else None

    def isValid(self) -> bool:
        return self._now() is not None

    def object(self) -> QObject | None:  # type: ignore[override]
        return None

    def window(self) -> QWindow | None:  # type: ignore[override]
        return self.season.window()

    def parent(self) -> QAccessibleInterface:
        return self.season

    def child(self, index: int) -> None:  # type: ignore[override]
        return None

    def childAt(self, x: int, y: int) -> None:  # type: ignore[override]
        return None

    def childCount(self) -> int:
        return 0

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return -1

    def role(self) -> QAccessible.Role:
        return QAccessible.Role.ListItem

    def setText(self, kind: QAccessible.Text, text: str) -> None:
        """Its name cannot be changed here."""

    def text(self, kind: QAccessible.Text) -> str:
        now = self._now()
        season = self.season.canvas.season if now is not None else None
        if now is None or season is None:
            return ""
        band, farm = now[1], season.farm
        if kind is QAccessible.Text.Name:
            last = band.presences[-1].end - timedelta(days=1)
            days = span_text(band.start, last, self.season.canvas.today)
            batch, place = farm.batch(band.batch_id).name, farm.place(band.place_id).name
            return say("{batch} in {place}, {days}", batch=batch, place=place, days=days)
        if kind is QAccessible.Text.Description:
            clashes = self.season.canvas.clashes_in(band.batch_id, band.place_id)
            return "; ".join(title_of(farm, clash) for clash in clashes)
        return ""

    def rect(self) -> QRect:
        now = self._now()
        if now is None:
            return QRect()
        lane, band = now
        scene, port = self.season.canvas.scene(), self.season.canvas.viewport()
        boxes = [scene.rect_of(lane, piece) for piece in band.pieces]
        left, top = min(b[0] for b in boxes), min(b[1] for b in boxes)
        right, bottom = max(b[2] for b in boxes), max(b[3] for b in boxes)
        at = port.mapToGlobal(QPoint(round(left), round(top)))
        return QRect(at.x(), at.y(), round(right - left), round(bottom - top))

    def state(self) -> QAccessible.State:
        now, state = self._now(), QAccessible.State()
        if now is None:
            state.invalid = True
            return state
        canvas = self.season.canvas
        is_picked = now[1].batch_id == canvas.scene().picked.batch_id
        state.focusable = state.selectable = True
        state.selected = is_picked
        state.focused = is_picked and canvas.hasFocus() and self.season.picked() == self.number
        port = canvas.viewport()
        state.offscreen = (self.rect() & QRect(port.mapToGlobal(QPoint(0, 0)), port.size())).isEmpty()
        return state

    def foregroundColor(self) -> QColor:
        return self.season.foregroundColor()

    def backgroundColor(self) -> QColor:
        return self.season.backgroundColor()
