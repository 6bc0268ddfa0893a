"""Draws the names of batches where ``labels`` has found room for them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.labels import Ground, Label, Labels
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scene import Scene


def x_in_view(scene: Scene, label: Label) -> float | None:
    """Where the label begins on the widget; None if it cannot be shown whole."""
    wide, shift = label.face.width(label.text), scene.left - scene.dx
    edge, far_edge = scene.held()
    x = label.x + shift
    if not label.is_inside:
        return x if edge <= x and x + wide <= far_edge else None
    least, most = max(label.left + shift, edge + 2), min(label.right + shift, far_edge - 2) - wide
    return min(max(x, least), most) if least <= most else None


class NamePainter:
    """A name that the edge of the view would cut moves along its band, or is left out where that is too short."""

    def __init__(self, pens: Pens, labels: Labels) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme
        self._labels = labels

    def names(self, lane: Lane, runs: Sequence[tuple[date, date]]) -> None:
        """The names that stand in a lane on the days of ``runs``."""
        scene = self.scene
        view = scene.width - scene.left if self.pens.is_still else None
        ground = Ground(lane, scene.scale, scene.today, self.pens.fonts, view)
        labels = self._labels.of(ground, scene.layout.label, *scene.days())
        for label in self.pens.to_draw(labels, runs):
            x = self.x_in_view(label)
            if x is None:
                continue
            at = QPointF(x, self.scene.top(lane.top + label.base))
            room = QRectF(x - 2, at.y() - label.face.height, label.face.width(label.text) + 4, 2 * label.face.height)
            if self.pens.is_dirty(room):
                self._draw(label, at)

    def x_in_view(self, label: Label) -> float | None:
        """Where the label begins on the widget; None if it cannot be shown whole."""
        return x_in_view(self.scene, label)

    def _draw(self, label: Label, at: QPointF) -> None:
        if not label.is_inside:
            ground = self.theme.paper if label.is_over_line else self.theme.lane
            self.pens.text_clear(at, label.text, label.face, self.theme.ink, ground)
            return
        batch_id, picked = label.band.batch_id, self.scene.picked.batch_id
        colour = self.theme.batch(self.scene.layout.numbers[batch_id])
        is_faded = picked is not None and picked != batch_id
        if self.pens.is_still:
            high = label.face.ascent * 0.8  # a band may be no higher than its letters
            plate = QRectF(at.x() - 1, at.y() - high, label.face.width(label.text) + 2, high + 2)
            self.p.fillRect(plate, QColor(colour.fill))
        self.pens.text(label.face, at, label.text, self.theme.ink if is_faded else colour.ink)
