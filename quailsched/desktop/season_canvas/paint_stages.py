"""Draws textures over bands, one for each stage, so that a stage is told without its colour."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date

from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band
from quailsched.desktop.season_canvas.pens import Pens, mixed
from quailsched.season.days import Stage
from quailsched.season.season import Season

_BOX_CORNERS = 5  # at most, of a band of one height
_LEAST_PX = 5.0  # a stage narrower than this shows no texture
_Stages = tuple[tuple[date, date, Stage], ...]


def stages_of(season: Season, band: Band) -> _Stages:
    """(first day, end, stage) of each stage of ``band``, in order of days."""
    return tuple(run for presence in band.presences for run in season.stages(presence))


def textured(season: Season, band: Band) -> _Stages:
    """Those of the stages that have a texture."""
    known: _Stages | None = band.kept.get("stages")
    if known is None:
        known = tuple(run for run in stages_of(season, band) if run[2] in _TEXTURED)
        band.kept["stages"] = known
    return known


class StagePainter:
    """Quiet lines in the ink of the band: upright for lockdown, level for lay, slanting for finishing, and so on."""

    def __init__(self, pens: Pens) -> None:
        self.pens, self.p, self.scene, self.theme = pens, pens.p, pens.scene, pens.theme

    def textures(self, lane: Lane, band: Band, shape: QPolygonF, is_faded: bool) -> None:
        season = self.scene.layout.season
        if season is None or not textured(season, band):
            return
        parts = list(self._parts(season, band, shape.boundingRect()))
        if not parts:
            return
        colour = self.theme.batch(self.scene.layout.numbers[band.batch_id])
        tint = mixed(colour.ink, colour.fill, 0.12 if is_faded else 0.3)
        if shape.size() <= _BOX_CORNERS:
            self._draw(parts, tint)
            return
        with self.pens.clipped(_path(shape)):  # once for all: it takes longer than what is drawn in it
            self._draw(parts, tint)

    def _parts(self, season: Season, band: Band, box: QRectF) -> Iterator[tuple[Stage, QRectF]]:
        """The stages that show a texture, and where there is something to be drawn of it."""
        for first, end, stage in textured(season, band):
            left, right = self.scene.x(first), self.scene.x(end)
            if right - left < _LEAST_PX:
                continue
            reaches = self.pens.reaches(left, right)
            if not reaches:
                continue
            left, right = max(left, self.scene.left, reaches[0][0]), min(right, self.scene.width, reaches[-1][1])
            part = QRectF(left, box.top(), right - left, box.height())
            if self.pens.is_dirty(part):
                yield stage, part

    def _draw(self, parts: Iterable[tuple[Stage, QRectF]], tint: QColor) -> None:
        for stage, part in parts:
            with self.pens.clipped(part):
                if stage in _SLANTING:
                    self.p.setRenderHint(QPainter.RenderHint.Antialiasing)
                    self.pens.hatch(part, tint, _SLANTING[stage], 1.3, leaning=1)
                    continue
                lines, steps = (self._upright, _UPRIGHT) if stage in _UPRIGHT else (self._level, _LEVEL)
                self.p.setPen(QPen(tint, 1.0))
                self.p.drawLines(lines(part, steps[stage] * self.pens.grain))

    def _upright(self, part: QRectF, step: float) -> list[QLineF]:
        x = part.left() + (-part.left() - self.scene.dx) % step
        lines = []
        while x < part.right():
            lines.append(QLineF(x, part.top(), x, part.bottom()))
            x += step
        return lines

    def _level(self, part: QRectF, step: float) -> list[QLineF]:
        y, lines = part.bottom() - step / 2, []
        while y > part.top():
            lines.append(QLineF(part.left(), y, part.right(), y))
            y -= step
        return lines


def _path(shape: QPolygonF) -> QPainterPath:
    path = QPainterPath()
    path.addPolygon(shape)
    return path


# Pixels between two lines. Setting and growing are plain: the eggs that only wait, the birds that only grow.
_UPRIGHT = {Stage.LOCKDOWN: 4.0, Stage.HATCHING: 2.0, Stage.HARDENING: 9.0}
_LEVEL = {Stage.LAYING: 6.0, Stage.BROODING: 14.0}
_SLANTING = {Stage.FINISHING: 7.0}
_TEXTURED = frozenset(_UPRIGHT | _LEVEL | _SLANTING)
