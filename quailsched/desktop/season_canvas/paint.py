"""Draws a scene. Colours come from the theme; nothing here decides what is shown, only how."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.labels import Labels
from quailsched.desktop.season_canvas.lanes import Band, Closed, closed_words
from quailsched.desktop.season_canvas.mark_places import MarkPlaces
from quailsched.desktop.season_canvas.paint_clashes import ClashPainter
from quailsched.desktop.season_canvas.paint_frame import FramePainter
from quailsched.desktop.season_canvas.paint_links import LinkPainter
from quailsched.desktop.season_canvas.paint_names import NamePainter
from quailsched.desktop.season_canvas.paint_stages import StagePainter
from quailsched.desktop.season_canvas.pens import Pens, mixed

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.paint_facts import FactPainter
    from quailsched.desktop.season_canvas.paint_ghosts import GhostPainter

_DASHES_PX = 7 * 1.2  # after this the dashes of a line are as they were
_SMOOTH = QPainter.RenderHint.Antialiasing


class SeasonPainter:
    """Lanes and bands; hands the rest to its companions. ``labels`` and ``marks`` remember where names and marks stand
    between two paints."""

    def __init__(self, pens: Pens, labels: Labels | None = None, marks: MarkPlaces | None = None) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme
        self._frame, self._clashes = FramePainter(pens), ClashPainter(pens, marks or MarkPlaces())
        self._edge, self._base = QPen(QColor(self.theme.paper), 1.0), QPen(QColor(self.theme.line), 1.0)
        self._full = QPen(QColor(self.theme.ink), 1.2, Qt.PenStyle.CustomDashLine)
        self._full.setDashPattern([4, 3])
        self._links, self._stages = LinkPainter(pens), StagePainter(pens)
        self._names = NamePainter(pens, labels if labels is not None else Labels())

    def paint(self) -> None:
        scene, p = self.scene, self.p
        p.fillRect(QRectF(0, 0, scene.width, scene.height), QColor(self.theme.paper))
        p.setRenderHint(_SMOOTH)
        with self.pens.clipped(QRectF(scene.left, scene.head, scene.width - scene.left, scene.height - scene.head)):
            self._lanes()
        self._frame.head()
        self._frame.names()
        self._frame.days_told()
        self._frame.focus()

    def _lanes(self) -> None:
        scene = self.scene
        lanes = [(lane, runs) for lane in scene.lanes_in_view() if (runs := self.pens.days_to_draw(lane))]
        for lane, _ in lanes:
            body = QRectF(scene.left, scene.top(lane.line_y), scene.width - scene.left, lane.base_y - lane.line_y)
            self.p.fillRect(body, QColor(self.theme.lane))
        self._frame.grid()
        draw, facts, ghosts = self.pens.to_draw, self._facts(), self._ghosts()
        closed = [(lane, one) for lane, runs in lanes for one in draw(lane.content.closed, runs)]
        for lane, one in closed:
            self._closed(lane, one)
        if ghosts is not None:
            ghosts.behind()
        self._links.links()
        for lane, one in closed:
            self._closed_words(lane, one)
        for lane, runs in lanes:
            self.p.setRenderHint(
                _SMOOTH, False
            )  # upright and level edges: crisp on whole pixels, and three times as quick
            for band in draw(lane.content.bands, runs):
                self._band(lane, band)
                if facts is not None:
                    facts.edge(lane, band)
            self.p.setRenderHint(_SMOOTH)
            for first, end in runs:
                self._clashes.overflow(lane, first, end)
            self._lines(lane, runs)
            if facts is not None:
                facts.marks(lane, runs)
        if ghosts is not None:
            ghosts.over()
        self._frame.today_line()
        for lane, runs in lanes:
            self._names.names(lane, runs)
            self._clashes.marks(lane)

    def _facts(self) -> FactPainter | None:
        """Who draws what has happened, if anything has: a farm that begins does without."""
        season = self.scene.layout.season
        if season is None or not season.farm.counts:
            return None
        from quailsched.desktop.season_canvas.paint_facts import FactPainter

        return FactPainter(self.pens)

    def _ghosts(self) -> GhostPainter | None:
        if not self.scene.ghosts:
            return None
        from quailsched.desktop.season_canvas.paint_ghosts import GhostPainter

        return GhostPainter(self.pens)

    def _closed(self, lane: Lane, closed: Closed) -> None:
        scene, p = self.scene, self.p
        left, right = max(scene.x(closed.start), scene.left - 20), min(scene.x(closed.end), scene.width + 20)
        rect = QRectF(left, scene.top(lane.line_y), right - left, lane.base_y - lane.line_y)
        if not self.pens.is_dirty(rect):
            return
        with self.pens.clipped(rect):
            if not closed.is_clean_out:
                p.fillRect(rect, QColor(self.theme.shut))
            self.pens.hatch(rect, QColor(self.theme.shut_line), 8.0, 1.2, leaning=-1, dotted=closed.is_clean_out)

    def _closed_words(self, lane: Lane, closed: Closed) -> None:
        """Why a place is out of use, where that is not told in a word each time; left out rather than cut."""
        scene, face = self.scene, self.pens.fonts.small
        text = closed_words(closed)
        if not text:
            return
        left = max(scene.x(closed.start), scene.held()[0]) + 6
        if left + face.width(text) <= scene.x(closed.end) - 2:
            at = QPointF(left, scene.top(lane.line_y) + 3 + face.ascent)
            self.pens.text_clear(at, text, face, self.theme.soft, self.theme.shut)

    def _band(self, lane: Lane, band: Band) -> None:
        scene, p = self.scene, self.p
        colour = self.theme.batch(scene.layout.numbers[band.batch_id])
        is_picked = scene.picked.batch_id == band.batch_id
        is_faded = scene.picked.batch_id is not None and not is_picked
        shape = self.pens.outline(lane, band)
        p.setBrush(QBrush(mixed(colour.fill, self.theme.lane, 0.5 if is_faded else 1.0)))
        p.setPen(self._edge)
        p.drawPolygon(shape)
        self._stages.textures(lane, band, shape, is_faded)
        if is_picked or scene.hovered.batch_id == band.batch_id:
            p.setBrush(Qt.BrushStyle.NoBrush)
            p.setPen(QPen(QColor(self.theme.ink), 2.0 if is_picked else 1.2))
            p.drawPolygon(shape)

    def _lines(self, lane: Lane, runs: Sequence[tuple[date, date]]) -> None:
        """Full, for a place, and empty; only over the days of ``runs``, since long dashed lines take their time."""
        scene = self.scene
        full, empty = scene.top(lane.line_y), scene.top(lane.base_y)
        for first, end in runs:
            left, right = max(scene.x(first), scene.left), min(scene.x(end), scene.width)
            if lane.content.place is not None:
                begin = left - (left - scene.left + scene.dx) % _DASHES_PX  # so that dashes scroll with the season
                self.p.setPen(self._full)
                self.p.drawLine(QPointF(begin, full), QPointF(right, full))
            self.p.setPen(self._base)
            self.p.drawLine(QPointF(left, empty), QPointF(right, empty))
