"""Draws a scene. Colours come from the theme; nothing here decides what is shown, only how."""

from __future__ import annotations

from datetime import timedelta

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, Closed, Link
from quailsched.desktop.season_canvas.paint_clashes import ClashPainter
from quailsched.desktop.season_canvas.paint_frame import FramePainter
from quailsched.desktop.season_canvas.paint_ghosts import GhostPainter
from quailsched.desktop.season_canvas.paint_names import NamePainter
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.theme import Theme
from quailsched.farm.check import EARLIEST
from quailsched.farm.records import Units
from quailsched.farm.units import day_text


class SeasonPainter(Pens):
    """Lanes, bands and the curves between them; hands the rest to its companions."""

    def __init__(
        self, painter: QPainter, scene: Scene, theme: Theme, font: QFont, units: Units, has_focus: bool
    ) -> None:
        super().__init__(painter, scene, theme, font, units, has_focus)
        self._frame = FramePainter(painter, scene, theme, font, units, has_focus)
        self._clashes = ClashPainter(painter, scene, theme, font, units, has_focus)
        self._ghosts = GhostPainter(painter, scene, theme, font, units, has_focus)
        self._names = NamePainter(painter, scene, theme, font, units, has_focus)

    def paint(self, width: float, height: float) -> None:
        self.p.fillRect(QRectF(0, 0, width, height), QColor(self.theme.paper))
        self.p.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_lanes(width, height)
        self._frame.head(width)
        self._frame.names(height)
        self._frame.today(width)
        self._frame.focus(width, height)

    def _paint_lanes(self, width: float, height: float) -> None:
        scene, p = self.scene, self.p
        p.save()
        p.setClipRect(QRectF(scene.left, scene.head, width - scene.left, height - scene.head))
        for lane in scene.lanes:
            body = QRectF(scene.left, scene.top(lane.line_y), width - scene.left, lane.base_y - lane.line_y)
            p.fillRect(body, QColor(self.theme.lane))
        self._frame.grid(width, height)
        for lane in scene.lanes:
            for closed in lane.content.closed:
                self._closed(lane, closed)
        self._ghosts.behind()
        for link in scene.links:
            self._link(link)
        for lane in scene.lanes:
            for closed in lane.content.closed:
                self._closed_words(lane, closed)
        for lane in scene.lanes:
            for band in lane.content.bands:
                self._band(lane, band)
            self._clashes.overflow(lane)
            self._lines(lane, width)
        self._ghosts.over()
        self._frame.today_line(width, height)
        for lane in scene.lanes:
            self._names.names(lane)
            self._clashes.marks(lane)
        p.restore()

    def _closed(self, lane: Lane, closed: Closed) -> None:
        scene, p = self.scene, self.p
        if not self.is_visible(closed.start, closed.end):
            return
        left, right = (
            max(scene.x(closed.start), scene.left - 20),
            min(scene.x(closed.end), p.viewport().width() + 20),
        )
        rect = QRectF(left, scene.top(lane.line_y), right - left, lane.base_y - lane.line_y)
        p.save()
        p.setClipRect(rect, Qt.ClipOperation.IntersectClip)
        if not closed.is_clean_out:
            p.fillRect(rect, QColor(self.theme.shut))
        self.hatch(rect, QColor(self.theme.shut_line), 8.0, 1.2, leaning=-1, dotted=closed.is_clean_out)
        p.restore()

    def _closed_words(self, lane: Lane, closed: Closed) -> None:
        """Why a place is out of use, where that is not told in a word each time; left out rather than cut."""
        scene = self.scene
        if closed.is_clean_out or not self.is_visible(closed.start, closed.end):
            return
        text = f"{closed.why}, ready {day_text(closed.end)}" if closed.start < EARLIEST else closed.why
        left = max(scene.x(closed.start), scene.left) + 6
        metrics = QFontMetricsF(self.small)
        if left + metrics.horizontalAdvance(text) <= scene.x(closed.end) - 2:
            base = scene.top(lane.line_y) + 3 + metrics.ascent()
            self.text_clear(QPointF(left, base), text, self.small, self.theme.soft, self.theme.shut)

    def _link(self, link: Link) -> None:
        scene = self.scene
        if not self.is_visible(link.day - timedelta(days=10), link.day + timedelta(days=10)):
            return
        old, new = scene.lane_of(link.from_band.place_id), scene.lane_of(link.to_band.place_id)
        last = next(piece for piece in link.from_band.pieces if piece.end >= link.day)
        first = next(piece for piece in link.to_band.pieces if piece.end > link.day)
        x = scene.x(link.day)
        y0 = scene.top((old.y(last.low) + old.y(last.high)) / 2)
        y1 = scene.top((new.y(first.low) + new.y(first.high)) / 2)
        bend = min(max(3.0, scene.scale.day_px * 1.2), 12.0)
        path = QPainterPath(QPointF(x - 1, y0))
        path.cubicTo(QPointF(x + bend, y0), QPointF(x + bend, y0 + (y1 - y0) * 0.15), QPointF(x, y0 + (y1 - y0) * 0.5))
        path.cubicTo(QPointF(x - bend, y0 + (y1 - y0) * 0.85), QPointF(x - bend, y1), QPointF(x + 1, y1))
        colour = QColor(self.theme.batch(scene.batch_numbers[link.batch_id]).fill)
        is_picked = scene.picked.batch_id == link.batch_id
        colour.setAlphaF(0.95 if is_picked else 0.5)
        self.p.setPen(QPen(colour, 2.8 if is_picked else 2.2))
        self.p.setBrush(Qt.BrushStyle.NoBrush)
        self.p.drawPath(path)

    def _band(self, lane: Lane, band: Band) -> None:
        scene, p = self.scene, self.p
        if not self.is_visible(band.start, band.end):
            return
        colour = self.theme.batch(scene.batch_numbers[band.batch_id])
        shape = self.outline(lane, band)
        fill = QColor(colour.fill)
        is_picked, is_hovered = (
            scene.picked.batch_id == band.batch_id,
            scene.hovered.batch_id == band.batch_id,
        )
        is_faded = scene.picked.batch_id is not None and not is_picked
        if is_faded:
            fill.setAlphaF(0.5)
        p.setBrush(QBrush(fill))
        p.setPen(QPen(QColor(self.theme.paper), 1.0))
        p.drawPolygon(shape)
        if band.is_cocks:
            p.save()
            path = QPainterPath()
            path.addPolygon(shape)
            p.setClipPath(path, Qt.ClipOperation.IntersectClip)
            tint = QColor(colour.ink)
            tint.setAlphaF(0.3)
            self.hatch(shape.boundingRect(), tint, 7.0, 1.3, leaning=1)
            p.restore()
        if is_picked or is_hovered:
            p.setBrush(Qt.BrushStyle.NoBrush)
            p.setPen(QPen(QColor(self.theme.ink), 2.0 if is_picked else 1.2))
            p.drawPolygon(shape)

    def _lines(self, lane: Lane, width: float) -> None:
        scene = self.scene
        pen = QPen(QColor(self.theme.ink), 1.2, Qt.PenStyle.CustomDashLine)
        pen.setDashPattern([4, 3])
        self.p.setPen(pen)
        y = scene.top(lane.line_y)
        self.p.drawLine(QPointF(scene.left, y), QPointF(width, y))
        self.p.setPen(QPen(QColor(self.theme.line), 1.0))
        y = scene.top(lane.base_y)
        self.p.drawLine(QPointF(scene.left, y), QPointF(width, y))
