"""The season as a widget: scrolls, zooms, and tells what is hovered, picked, opened and nudged."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import QPoint, QPointF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QToolTip, QWidget

from quailsched.desktop.season_canvas.geometry import Lane, place_lanes
from quailsched.desktop.season_canvas.ghosts import Ghost
from quailsched.desktop.season_canvas.hover import hover_text
from quailsched.desktop.season_canvas.lanes import Band, LaneContent, Link, lane_contents, links
from quailsched.desktop.season_canvas.paint import SeasonPainter
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.desktop.season_canvas.scene import Picked, Scene, fit_span
from quailsched.desktop.theme import current
from quailsched.farm.units import area_text, count_text
from quailsched.report.clashes import told_sentence
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.season.severity import open_clashes

_ZOOM_STEP = 1.25
_LEAST_FIT_PX = 2.2  # pixels a day, below which names and dates have no room


class SeasonCanvas(QAbstractScrollArea):
    """Lanes of places over time. Shows what it is given with ``show_season``; changes nothing by itself."""

    picked = Signal(object)  # Picked
    batch_opened = Signal(str)  # batch id
    place_opened = Signal(str)  # place id
    nudged = Signal(str, int)  # batch id, days

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.today = today
        self._season: Season | None = None
        self._clashes: tuple[Clash, ...] = ()
        self._shown = _Shown()
        self._ghosts: tuple[Ghost, ...] = ()
        self._scale = TimeScale(today, 5.0)
        self._picked, self._hovered = Picked(), Picked()
        self._grabbed: tuple[QPointF, int, int] | None = None
        self._is_fitted = True
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.viewport().setMouseTracking(True)
        self.setAccessibleName("Season")
        self.setMinimumSize(QSize(240, 120))

    def show_season(self, season: Season, clashes: tuple[Clash, ...]) -> None:
        """Show ``season`` with ``clashes``; what is picked stays picked if it still exists."""
        self._season, self._clashes = season, clashes
        self._shown = _shown(season, clashes)
        if self._picked.batch_id is not None and season.farm.find(self._picked.batch_id) is None:
            self.pick(Picked())
        if self._picked.clash is not None:
            self.pick(Picked(clash=_same_clash(self._picked.clash, clashes)))
        self._hovered = Picked()
        if self._is_fitted:
            self.fit()
        self._lay_out()

    def preview(self, season: Season, clashes: tuple[Clash, ...]) -> None:
        """Draw another season until ``end_preview``; what is picked, and what the keys walk through, stays."""
        self._shown = _shown(season, clashes)
        self._lay_out()

    def end_preview(self) -> None:
        """Draw the season of ``show_season`` again."""
        if self._season is not None:
            self._shown = _shown(self._season, self._clashes)
            self._lay_out()

    def show_ghosts(self, ghosts: tuple[Ghost, ...]) -> None:
        """Draw these outlines with the season, until others are given. They cannot be picked."""
        self._ghosts = ghosts
        self._lay_out()

    def fit(self) -> None:
        """Zoom so that the season fits the width, and keep it so until the keeper zooms."""
        self._is_fitted = True
        start, end = fit_span(self._bands(), self.today)
        width = max(self.viewport().width() - self._left(), 100)
        fitting = width / (end - start).days
        self._set_scale(TimeScale(self._first_day(), 1.0).zoomed(max(fitting, _LEAST_FIT_PX)))
        self.horizontalScrollBar().setValue(int(self._scale.x(start)))
        if fitting < _LEAST_FIT_PX:  # not all can be told apart at once: what is near comes first
            self.go_to(self.today)

    def zoom(self, factor: float, anchor_x: float | None = None) -> None:
        """Zoom about a point of the widget, the middle if none; the day under it stays under it."""
        self._is_fitted = False
        left = self._left()
        anchor = anchor_x if anchor_x is not None else (left + self.viewport().width()) / 2
        bar = self.horizontalScrollBar()
        days = (anchor - left + bar.value()) / self._scale.day_px
        self._set_scale(self._scale.zoomed(factor))
        bar.setValue(round(days * self._scale.day_px - (anchor - left)))

    def go_to(self, day: date) -> None:
        """Scroll so that ``day`` stands a third from the left, if it is not well in view."""
        scene = self.scene()
        x, width = scene.x(day), self.viewport().width()
        if not scene.left + 40 <= x <= width - 80:
            self.horizontalScrollBar().setValue(round(self._scale.x(day) - (width - scene.left) / 3))

    def pick(self, picked: Picked) -> None:
        """Select a batch, a clash or nothing, and say so."""
        if picked == self._picked:
            return
        self._picked = picked
        self.setAccessibleDescription(self._spoken(picked))
        self.viewport().update()
        self.picked.emit(picked)

    def show_clash(self, clash: Clash) -> None:
        """Select ``clash`` and bring it into view."""
        self.pick(Picked(clash=clash))
        self.go_to(clash.first)
        lane = next((lane for lane in self._lanes() if lane.content.place.id == clash.place_id), None)
        if lane is not None:
            bar, page = self.verticalScrollBar(), self.viewport().height() - self._head()
            if not bar.value() <= lane.top or not lane.bottom <= bar.value() + page:
                bar.setValue(round(lane.top - 8))

    def next_clash(self, step: int = 1) -> None:
        """Go to the next clash (or the one before) that is not accepted, round the end to the first."""
        still_open = self._open()
        here = self._clashes.index(self._picked.clash) if self._picked.clash in self._clashes else None
        at = here if here is not None else (-1 if step > 0 else 0)
        for _ in self._clashes:
            at = (at + step) % len(self._clashes)
            if self._clashes[at] in still_open:
                self.show_clash(self._clashes[at])
                return

    def _open(self) -> tuple[Clash, ...]:
        return open_clashes(self._season.farm, self._clashes) if self._season is not None else ()

    def scene(self) -> Scene:
        farm = self._shown.season.farm if self._shown.season else None
        batches = farm.batches if farm else ()
        return Scene(
            lanes=self._lanes(),
            links=self._shown.links,
            scale=self._scale,
            today=self.today,
            left=self._left(),
            head=self._head(),
            dx=self.horizontalScrollBar().value(),
            dy=self.verticalScrollBar().value(),
            batch_numbers={batch.id: number for number, batch in enumerate(batches)},
            batch_names={batch.id: batch.name for batch in batches},
            picked=self._picked,
            hovered=self._hovered,
            ghosts=self._ghosts,
        )

    # geometry

    def _bands(self) -> list[Band]:
        return [band for content in self._shown.contents for band in content.bands]

    def _ghost_bands(self) -> list[Band]:
        return [ghost.band for ghost in self._ghosts]

    def _first_day(self) -> date:
        return min([band.start for band in [*self._bands(), *self._ghost_bands()]] + [self.today]) - timedelta(days=28)

    def _last_day(self) -> date:
        return max(
            [band.end for band in [*self._bands(), *self._ghost_bands()]] + [self.today + timedelta(days=120)]
        ) + timedelta(days=14)

    def _left(self) -> float:
        bold = self.font()
        bold.setBold(True)
        names = [QFontMetricsF(bold).horizontalAdvance(content.place.name) for content in self._shown.contents]
        rooms = [
            self.fontMetrics().horizontalAdvance(_room_text(self._season, content)) * 0.9
            for content in self._shown.contents
        ]
        return max([*names, *rooms, 60.0]) + 22

    def _head(self) -> float:
        return self.fontMetrics().height() * 3.4

    def _lanes(self) -> tuple[Lane, ...]:
        height = self.viewport().height() - self._head() - 4
        return place_lanes(self._shown.contents, self.fontMetrics().height(), height)

    def _set_scale(self, scale: TimeScale) -> None:
        self._scale = TimeScale(self._first_day(), scale.day_px)
        self._lay_out()

    def _lay_out(self) -> None:
        """Set the ranges of the scroll bars after anything that changes sizes."""
        across, down = self.horizontalScrollBar(), self.verticalScrollBar()
        page = round(self.viewport().width() - self._left())
        if self._scale.first != self._first_day():
            at = self._scale.day(across.value())
            self._scale = TimeScale(self._first_day(), self._scale.day_px)
            across.setRange(0, max(round(self._scale.x(self._last_day())) - page, 0))
            across.setValue(round(self._scale.x(at)))
        across.setPageStep(max(page, 1))
        across.setSingleStep(max(round(7 * self._scale.day_px), 1))
        across.setRange(0, max(round(self._scale.x(self._last_day())) - page, 0))
        lanes = self._lanes()
        tall = round(lanes[-1].bottom) if lanes else 0
        room = round(self.viewport().height() - self._head())
        down.setPageStep(max(room, 1))
        down.setSingleStep(24)
        down.setRange(0, max(tall - room, 0))
        self.viewport().update()

    # events

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._is_fitted:
            self.fit()
        self._lay_out()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._season is None:
            return
        painter = QPainter(self.viewport())
        try:
            units = self._season.farm.settings.units
            season = SeasonPainter(painter, self.scene(), current(), self.font(), units, self.hasFocus())
            season.paint(self.viewport().width(), self.viewport().height())
        finally:
            painter.end()

    def wheelEvent(self, event: QWheelEvent) -> None:
        turn = event.angleDelta().y() or event.angleDelta().x()
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom(_ZOOM_STEP ** (turn / 120), event.position().x())
        elif event.modifiers() & Qt.KeyboardModifier.ShiftModifier or event.angleDelta().x():
            bar = self.horizontalScrollBar()
            bar.setValue(bar.value() - turn)
        else:
            bar = self.verticalScrollBar()
            if bar.maximum() == 0:  # all lanes are in view: the wheel goes through time
                bar = self.horizontalScrollBar()
            bar.setValue(bar.value() - turn // 2)
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        scene, at = self.scene(), event.position()
        hit = scene.hit(at.x(), at.y())
        self.pick(hit)
        if hit == Picked():
            self._grabbed = (at, self.horizontalScrollBar().value(), self.verticalScrollBar().value())
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._grabbed is not None:
            start, across, down = self._grabbed
            self.horizontalScrollBar().setValue(round(across - (at.x() - start.x())))
            self.verticalScrollBar().setValue(round(down - (at.y() - start.y())))
            return
        self._hover(at)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grabbed = None
        self.viewport().unsetCursor()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        scene, at = self.scene(), event.position()
        hit = scene.hit(at.x(), at.y())
        lane = scene.lane_at(at.y())
        if hit.batch_id is not None:
            self.batch_opened.emit(hit.batch_id)
        elif at.x() < scene.left and lane is not None:
            self.place_opened.emit(lane.content.place.id)

    def leaveEvent(self, event: object) -> None:
        self._hovered = Picked()
        self.viewport().update()

    def _hover(self, at: QPointF) -> None:
        scene = self.scene()
        hit = scene.hit(at.x(), at.y())
        if hit != self._hovered:
            self._hovered = hit
            self.viewport().update()
        lane = scene.lane_at(at.y())
        text = ""
        if self._season is not None and lane is not None and at.x() >= scene.left and at.y() > scene.head:
            text = hover_text(self._season, lane.content.place, scene.day(at.x()), hit)
        if text:
            QToolTip.showText(self.viewport().mapToGlobal(at.toPoint() + QPoint(14, 18)), text, self.viewport())
        else:
            QToolTip.hideText()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, held = event.key(), event.modifiers()
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(key))
        if step and held & Qt.KeyboardModifier.AltModifier and self._picked.batch_id is not None:
            days = 7 * step if held & Qt.KeyboardModifier.ShiftModifier else step
            self.nudged.emit(self._picked.batch_id, days)
        elif step:
            self._pick_along(step)
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._pick_across(1 if key == Qt.Key.Key_Down else -1)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._picked.batch_id is not None:
            self.batch_opened.emit(self._picked.batch_id)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(_ZOOM_STEP)
        elif key == Qt.Key.Key_Minus:
            self.zoom(1 / _ZOOM_STEP)
        elif key == Qt.Key.Key_Escape:
            self.pick(Picked())
        elif key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            bar = self.horizontalScrollBar()
            bar.setValue(bar.value() + (bar.pageStep() * (1 if key == Qt.Key.Key_PageDown else -1)) // 2)
        elif key == Qt.Key.Key_Home:
            self.go_to(self.today)
        else:
            super().keyPressEvent(event)

    def _ordered(self) -> list[str]:
        return [batch.id for batch in self._season.farm.batches] if self._season else []

    def _pick_along(self, step: int) -> None:
        """The next batch in order of days."""
        ids = self._ordered()
        if not ids:
            return
        here = ids.index(self._picked.batch_id) if self._picked.batch_id in ids else (-1 if step > 0 else 0)
        self.pick(Picked(batch_id=ids[(here + step) % len(ids)]))
        self._show_picked()

    def _pick_across(self, step: int) -> None:
        """The next clash downwards or upwards in the list of clashes."""
        self.next_clash(step)

    def _show_picked(self) -> None:
        starts = [band.start for band in self._bands() if band.batch_id == self._picked.batch_id]
        if starts:
            self.go_to(min(starts))

    def _spoken(self, picked: Picked) -> str:
        """What a screen reader says of the selection."""
        if self._season is None:
            return ""
        if picked.clash is not None:
            return told_sentence(self._season.farm, picked.clash)
        if picked.batch_id is not None:
            batch = self._season.farm.batch(picked.batch_id)
            what = count_text(batch.number, "egg" if batch.origin.is_eggs else "bird")
            return f"Batch {batch.name}, {what}, {batch.start}"
        count = count_text(len(self._open()), "clash", "clashes")
        return f"{count}. Left and right go through batches, up and down through clashes."


@dataclass(frozen=True, slots=True)
class _Shown:
    """What is drawn: a season in lanes, with the curves between them."""

    season: Season | None = None
    contents: tuple[LaneContent, ...] = ()
    links: tuple[Link, ...] = ()


def _shown(season: Season, clashes: tuple[Clash, ...]) -> _Shown:
    contents = lane_contents(season, clashes)
    return _Shown(season, contents, links(season, contents))


def _same_clash(old: Clash, clashes: tuple[Clash, ...]) -> Clash | None:
    """The clash that ``old`` has become: of one kind and place, sharing a batch, nearest in time."""
    alike = [
        c for c in clashes if (c.kind, c.place_id) == (old.kind, old.place_id) and {*c.batch_ids} & {*old.batch_ids}
    ]
    return min(alike, key=lambda c: abs((c.first - old.first).days), default=None)


def _room_text(season: Season | None, content: LaneContent) -> str:
    if season is None or content.place.role.holds_eggs:
        return count_text(content.place.egg_places, "egg place")
    return area_text(content.place.floor_cm2, season.farm.settings.units)
