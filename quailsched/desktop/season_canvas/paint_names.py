"""Draws the names of batches: in their bands, or beside them where a band is too low or too short."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, Piece
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.theme import Theme
from quailsched.farm.records import Units


class NamePainter(Pens):
    """Whole names where they fit, a first letter where they do not; what has neither is told by the pointer."""

    def __init__(
        self, painter: QPainter, scene: Scene, theme: Theme, font: QFont, units: Units, has_focus: bool
    ) -> None:
        super().__init__(painter, scene, theme, font, units, has_focus)
        self._taken: list[QRectF] = []  # where names stand outside their bands

    def names(self, lane: Lane) -> None:
        """The names of all bands of a lane that are in view."""
        for band in lane.content.bands:
            if self.is_visible(band.start, band.end):
                self._name(lane, band, self.scene.batch_names[band.batch_id])

    def _name(self, lane: Lane, band: Band, name: str) -> bool:
        """The best of what fits; whether anything does."""
        return (
            self._inside(lane, band, name)
            or self._beside(lane, band, name)
            or self._inside(lane, band, name[:1])
            or self._over_line(lane, band, name)
            or self._beside(lane, band, name[:1])
        )

    def _inside(self, lane: Lane, band: Band, text: str) -> bool:
        """Draw ``text`` in the band, smaller if it is low; whether there was room."""
        for font in (self.small_bold, self.tiny_bold):
            metrics = QFontMetricsF(font)
            wide = metrics.horizontalAdvance(text) + 4
            need = metrics.height() if font is self.small_bold else metrics.ascent() + 1
            rects = [rect for rect in self._inner_rects(lane, band, need) if rect.width() >= wide]
            if rects:
                rect = self._beside_today(max(rects, key=QRectF.width), wide)
                self.p.setFont(font)
                self.p.setPen(QColor(self._ink(band)))
                self.p.drawText(rect, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip, text)
                return True
        return False

    def _ink(self, band: Band) -> str:
        is_faded = self.scene.picked.batch_id not in (None, band.batch_id)
        return self.theme.ink if is_faded else self.theme.batch(self.scene.batch_numbers[band.batch_id]).ink

    def _beside_today(self, rect: QRectF, wide: float) -> QRectF:
        """The part of ``rect`` that the line of today leaves, where it would cross a text in the middle."""
        x = self.scene.x(self.scene.today)
        if abs(rect.center().x() - x) > wide / 2:
            return rect
        left, right = QRectF(rect), QRectF(rect)
        left.setRight(x - 1)
        right.setLeft(x + 1)
        part = max(left, right, key=QRectF.width)
        return part if part.width() >= wide else rect

    def _beside(self, lane: Lane, band: Band, text: str) -> bool:
        """Draw ``text`` on the back of the band, else before its first day or after its last; whether it fits."""
        metrics = QFontMetricsF(self.small_bold)
        places = self._places_beside(lane, band, metrics.horizontalAdvance(text), metrics.ascent())
        return any(self._outside(lane, at, text, self.theme.lane) for at in places)

    def _over_line(self, lane: Lane, band: Band, text: str) -> bool:
        """Draw ``text`` over the line, where no clash stands there; whether it fits."""
        near = timedelta(days=7)
        if any(over.end + near > band.start and over.start - near < band.end for over in lane.content.overs):
            return False
        at = QPointF(max(self.scene.x(band.start), self.scene.left) + 2, self.scene.top(lane.line_y) - 3)
        return self._outside(lane, at, text, self.theme.paper)

    def _outside(self, lane: Lane, at: QPointF, text: str, ground: str) -> bool:
        """Draw ``text`` from a point of its base line, on the colour that lies there, if all of it is free."""
        metrics = QFontMetricsF(self.small_bold)
        wide, high = metrics.horizontalAdvance(text), metrics.ascent()
        rect = QRectF(at.x() - 3, at.y() - high + 1, wide + 6, high)
        if at.x() < self.scene.left or at.x() + wide > self.p.viewport().width() or not self._is_free(lane, rect):
            return False
        self._taken.append(rect)
        self.text_clear(at, text, self.small_bold, self.theme.ink, ground)
        return True

    def _places_beside(self, lane: Lane, band: Band, wide: float, high: float) -> Iterator[QPointF]:
        """Points of the base line of a text beside its band."""
        scene = self.scene
        start, end = scene.x(band.start), scene.x(band.end)
        back = scene.top(lane.y(max(piece.high for piece in band.pieces)))
        line = scene.top(lane.line_y)
        if back - 2 - high >= line:
            yield QPointF(max(start, scene.left) + 2, back - 2)
        curve = min(max(3.0, scene.scale.day_px * 1.2), 12.0)  # a curve that comes in swings as far before the band
        first = band.pieces[0]
        middle = scene.top((lane.y(first.low) + lane.y(first.high)) / 2)
        base = min(middle + high / 2 - 1, scene.top(lane.base_y) - 1)
        if base - high >= line:
            yield QPointF(start - curve - 3 - wide, base)
            yield QPointF(end + curve + 3, base)

    def _is_free(self, lane: Lane, rect: QRectF) -> bool:
        """Whether no band and no other name stands in ``rect``."""
        first, last = self.scene.day(rect.left()), self.scene.day(rect.right())
        near = [band for band in lane.content.bands if band.start <= last and band.end > first]
        return not any(rect.intersects(one) for one in self._taken) and not any(
            rect.intersects(self._piece_rect(lane, piece))
            for band in near
            for piece in band.pieces
            if piece.start <= last and piece.end > first
        )

    def _piece_rect(self, lane: Lane, piece: Piece) -> QRectF:
        scene, cap = self.scene, lane.content.room
        left, right = scene.x(piece.start), scene.x(piece.end)
        top, bottom = scene.top(lane.y(min(piece.high, cap))), scene.top(lane.y(min(piece.low, cap)))
        return QRectF(left, top, right - left, bottom - top)

    def _inner_rects(self, lane: Lane, band: Band, need: float) -> list[QRectF]:
        """Boxes of at least ``need`` height inside the visible part of a band: runs of pieces on one level."""
        scene, cap = self.scene, lane.content.room
        right_end = float(self.p.viewport().width())
        rects: list[QRectF] = []
        run: list[float] | None = None  # left, right, top, bottom
        for piece in band.pieces:
            left, right = max(scene.x(piece.start), scene.left), min(scene.x(piece.end), right_end)
            if right <= left:
                continue
            top, bottom = scene.top(lane.y(min(piece.high, cap))), scene.top(lane.y(min(piece.low, cap)))
            if run is not None and min(bottom, run[3]) - max(top, run[2]) >= need and abs(left - run[1]) < 0.5:
                run = [run[0], right, max(top, run[2]), min(bottom, run[3])]
            else:
                run = [left, right, top, bottom]
                rects.append(QRectF())
            if run[3] - run[2] >= need:
                rects[-1] = QRectF(run[0], run[2], run[1] - run[0], run[3] - run[2])
        return [rect for rect in rects if rect.width() > 0]
