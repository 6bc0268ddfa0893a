"""Draws a scene. Colours come from the theme; nothing here decides what is shown, only how."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, Closed, Link, Mark
from quailsched.desktop.season_canvas.scale import month_ticks, week_ticks
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.desktop.theme import Theme
from quailsched.farm.check import EARLIEST
from quailsched.farm.records import Units
from quailsched.farm.units import area_text, count_text, day_text, span_text

MARK_WORDS = {
    "cabinet": "turning and lockdown",
    "cleanout": "no clean-out",
    "notready": "not ready",
    "young": "too young",
    "cold": "cold nights",
    "calm": "too few birds",
    "nowhere": "no place",
    "stale": "old eggs",
    "ages": "two ages",
    "crowd": "a crowd",
    "cocks": "too many cocks",
    "quarantine": "quarantine",
    "hands": "nobody home",
}


class SeasonPainter:
    """Paints one scene on one painter; made anew for each paint."""

    def __init__(
        self, painter: QPainter, scene: Scene, theme: Theme, font: QFont, units: Units, has_focus: bool
    ) -> None:
        self.p, self.scene, self.theme, self.units, self.has_focus = painter, scene, theme, units, has_focus
        self.font = QFont(font)
        self.bold = QFont(font)
        self.bold.setBold(True)
        self.small = QFont(font)
        self.small.setPointSizeF(font.pointSizeF() * 0.88)
        self.tiny = QFont(font)
        self.tiny.setPointSizeF(font.pointSizeF() * 0.8)
        self.small_bold = QFont(self.small)
        self.small_bold.setBold(True)

    def paint(self, width: float, height: float) -> None:
        self.p.fillRect(QRectF(0, 0, width, height), QColor(self.theme.paper))
        self.p.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_lanes(width, height)
        self._paint_head(width)
        self._paint_names(height)
        self._paint_today(width, height)

    def _paint_lanes(self, width: float, height: float) -> None:
        scene, p = self.scene, self.p
        p.save()
        p.setClipRect(QRectF(scene.left, scene.head, width - scene.left, height - scene.head))
        for lane in scene.lanes:
            body = QRectF(scene.left, scene.top(lane.line_y), width - scene.left, lane.base_y - lane.line_y)
            p.fillRect(body, QColor(self.theme.lane))
        self._grid(width, height)
        for lane in scene.lanes:
            for closed in lane.content.closed:
                self._closed(lane, closed)
        for link in scene.links:
            self._link(link)
        for lane in scene.lanes:
            for band in lane.content.bands:
                self._band(lane, band)
            self._overflow(lane)
            self._lines(lane, width)
        for lane in scene.lanes:
            self._marks(lane)
        p.restore()

    def _visible(self, start: date, end: date) -> bool:
        return self.scene.x(end) >= self.scene.left and self.scene.x(start) <= self.p.viewport().width()

    def _grid(self, width: float, height: float) -> None:
        scene = self.scene
        first, last = scene.day(scene.left), scene.day(width) + timedelta(days=1)
        bottom = scene.top(scene.lanes[-1].bottom) if scene.lanes else height
        for ticks, thickness in (
            (week_ticks(scene.scale, first, last, 26), 0.6),
            (month_ticks(scene.scale, first, last, 80), 1.4),
        ):
            self.p.setPen(QPen(QColor(self.theme.line), thickness))
            for tick in ticks:
                x = scene.x(tick.day)
                self.p.drawLine(QPointF(x, scene.head - 20 if tick.is_month else scene.head), QPointF(x, bottom))

    def _closed(self, lane: Lane, closed: Closed) -> None:
        scene, p = self.scene, self.p
        if not self._visible(closed.start, closed.end):
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
        self._hatch(rect, QColor(self.theme.shut_line), 8.0, 1.2, leaning=-1, dotted=closed.is_clean_out)
        p.restore()
        if not closed.is_clean_out:
            is_building = closed.start < EARLIEST
            ready = f"{closed.why}, ready {day_text(closed.end)}" if is_building else closed.why
            self._text_in(
                QRectF(max(left, scene.left) + 6, rect.top() + 2, right - max(left, scene.left) - 8, 18),
                ready,
                self.small,
                self.theme.soft,
            )

    def _hatch(
        self, rect: QRectF, colour: QColor, step: float, thickness: float, leaning: int, dotted: bool = False
    ) -> None:
        """Own lines, since brush patterns neither scale with the screen nor print well."""
        pen = QPen(colour, thickness)
        if dotted:
            pen.setStyle(Qt.PenStyle.DotLine)
        self.p.setPen(pen)
        height = rect.height()
        x = rect.left() - height - (rect.left() % step)
        lines = []
        while x < rect.right() + height:
            if leaning > 0:
                lines.append((QPointF(x, rect.bottom()), QPointF(x + height, rect.top())))
            else:
                lines.append((QPointF(x, rect.top()), QPointF(x + height, rect.bottom())))
            x += step
        for start, end in lines:
            self.p.drawLine(start, end)

    def _link(self, link: Link) -> None:
        scene = self.scene
        if not self._visible(link.day - timedelta(days=10), link.day + timedelta(days=10)):
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

    def _outline(self, lane: Lane, band: Band) -> QPolygonF:
        """The stepped shape of a band, cut at the line: what stands above it is drawn as overflow."""
        scene, cap = self.scene, lane.content.room
        upper: list[QPointF] = []
        lower: list[QPointF] = []
        for piece in band.pieces:
            x0, x1 = scene.x(piece.start), scene.x(piece.end)
            high, low = scene.top(lane.y(min(piece.high, cap))), scene.top(lane.y(min(piece.low, cap)))
            upper += [QPointF(x0, high), QPointF(x1, high)]
            lower += [QPointF(x0, low), QPointF(x1, low)]
        return QPolygonF(upper + lower[::-1])

    def _band(self, lane: Lane, band: Band) -> None:
        scene, p = self.scene, self.p
        if not self._visible(band.start, band.end):
            return
        colour = self.theme.batch(scene.batch_numbers[band.batch_id])
        shape = self._outline(lane, band)
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
            self._hatch(shape.boundingRect(), tint, 7.0, 1.3, leaning=1)
            p.restore()
        if is_picked or is_hovered:
            p.setBrush(Qt.BrushStyle.NoBrush)
            p.setPen(QPen(QColor(self.theme.ink), 2.0 if is_picked else 1.2))
            p.drawPolygon(shape)
        self._band_name(lane, band, self.theme.ink if is_faded else colour.ink)

    def _band_name(self, lane: Lane, band: Band, ink: str) -> None:
        """The name where the band is tall enough and in view, whole, or its first letter, or nothing."""
        scene = self.scene
        metrics = QFontMetricsF(self.small_bold)
        name = scene.batch_names[band.batch_id]
        best: QRectF | None = None
        for rect in self._inner_rects(lane, band, metrics.height()):
            if best is None or rect.width() > best.width() + 0.5:
                best = rect
        if best is None:
            self._name_above(lane, band, name)
            return
        text = next((t for t in (name, name[:1]) if metrics.horizontalAdvance(t) + 4 <= best.width()), "")
        if text:
            self.p.setFont(self.small_bold)
            self.p.setPen(QColor(ink))
            self.p.drawText(best, Qt.AlignmentFlag.AlignCenter, text)

    def _name_above(self, lane: Lane, band: Band, name: str) -> None:
        """A low band that lies alone carries its name on its back, as far as the lane has room there."""
        metrics = QFontMetricsF(self.small_bold)
        top = max(piece.high for piece in band.pieces)
        is_alone = all(
            other is band or other.end <= band.start or other.start >= band.end for other in lane.content.bands
        )
        left, right = max(self.scene.x(band.start), self.scene.left), self.scene.x(band.end)
        room = lane.y(top) - lane.line_y
        if is_alone and room >= metrics.ascent() and metrics.horizontalAdvance(name) <= right - left:
            self.p.setFont(self.small_bold)
            self.p.setPen(QColor(self.theme.ink))
            self.p.drawText(QPointF(left + 2, self.scene.top(lane.y(top)) - 3), name)

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

    def _overflow(self, lane: Lane) -> None:
        scene, p = self.scene, self.p
        for over in lane.content.overs:
            if not self._visible(over.start, over.end):
                continue
            top, line = scene.top(lane.y(over.total)), scene.top(lane.line_y)
            rect = QRectF(scene.x(over.start), top, scene.x(over.end) - scene.x(over.start), line - top)
            p.save()
            p.setClipRect(rect, Qt.ClipOperation.IntersectClip)
            p.fillRect(rect, QColor(self.theme.clash_tint))
            self._hatch(rect, QColor(self.theme.clash), 7.0, 2.6, leaning=1)
            p.restore()
        self._overflow_outline(lane)

    def _overflow_outline(self, lane: Lane) -> None:
        scene = self.scene
        self.p.setPen(QPen(QColor(self.theme.clash), 1.4))
        last: tuple[date, float] | None = None
        line = scene.top(lane.line_y)
        for over in lane.content.overs:
            y = scene.top(lane.y(over.total))
            x0, x1 = scene.x(over.start), scene.x(over.end)
            joins = last is not None and last[0] == over.start
            self.p.drawLine(QPointF(x0, last[1] if joins and last else line), QPointF(x0, y))
            self.p.drawLine(QPointF(x0, y), QPointF(x1, y))
            if last is not None and not joins:
                self.p.drawLine(QPointF(scene.x(last[0]), last[1]), QPointF(scene.x(last[0]), line))
            last = (over.end, y)
        if last is not None:
            self.p.drawLine(QPointF(scene.x(last[0]), last[1]), QPointF(scene.x(last[0]), line))

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

    def _marks(self, lane: Lane) -> None:
        scene, p = self.scene, self.p
        taken_until = float("-inf")
        metrics = QFontMetricsF(self.small_bold)
        for mark in lane.content.marks:
            left, right = scene.x(mark.clash.first), scene.x(mark.clash.last + timedelta(days=1))
            if right < scene.left or left > p.viewport().width():
                continue
            is_on = mark.clash in (scene.picked.clash, scene.hovered.clash)
            if mark.row >= 0:
                self._strip(lane, mark, left, right, is_on)
                continue
            text = span_text(mark.clash.first, mark.clash.last)
            wide = metrics.horizontalAdvance(text)
            at = min(max((left + right) / 2 - wide / 2, scene.left + 2), p.viewport().width() - wide - 4)
            if at < taken_until + 6:
                continue
            taken_until = at + wide
            peak = max(o.total for o in lane.content.overs if o.start <= mark.clash.worst < o.end)
            y = scene.top(lane.y(peak)) - 4
            p.setFont(self.small_bold)
            p.setPen(QColor(self.theme.clash))
            p.drawText(QPointF(at, y), text)
            if is_on:
                p.drawLine(QPointF(at, y + 2), QPointF(at + wide, y + 2))

    def _strip(self, lane: Lane, mark: Mark, left: float, right: float, is_on: bool) -> None:
        """A clash that is not about room: a red bar below the lane, its idea in two words in or after it."""
        scene, p = self.scene, self.p
        y, high = scene.top(lane.mark_y(mark.row)), lane.mark_height - 2
        shown_left = max(left, scene.left)
        shown_right = max(min(right, p.viewport().width() - 2.0), shown_left + 5)
        p.setPen(QPen(QColor(self.theme.clash), 1.0))
        p.setBrush(QColor(self.theme.clash if is_on else self.theme.clash_tint))
        p.drawRoundedRect(QRectF(shown_left, y, shown_right - shown_left, high), 3, 3)
        if left >= scene.left:
            p.fillRect(QRectF(left, y, 4.0, high), QColor(self.theme.clash))
        text = MARK_WORDS[mark.clash.kind]
        wide = QFontMetricsF(self.tiny).horizontalAdvance(text)
        free = min(
            (
                scene.x(m.clash.first)
                for m in lane.content.marks
                if m.row == mark.row and m.clash.first > mark.clash.first
            ),
            default=float(p.viewport().width()),
        )
        inside = wide + 12 <= shown_right - shown_left
        if not inside and shown_right + 5 + wide > free:
            return
        p.setFont(self.tiny)
        p.setPen(QColor(self.theme.on_clash if is_on and inside else self.theme.clash))
        at = shown_left + 8 if inside else shown_right + 4
        p.drawText(QRectF(at, y - 1, wide + 4, high + 2), Qt.AlignmentFlag.AlignVCenter, text)

    def _text_in(self, rect: QRectF, text: str, font: QFont, colour: str) -> None:
        """Text that is left out rather than cut."""
        if QFontMetricsF(font).horizontalAdvance(text) <= rect.width():
            self.p.setFont(font)
            self.p.setPen(QColor(colour))
            self.p.drawText(rect, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)

    def _paint_head(self, width: float) -> None:
        scene, p = self.scene, self.p
        p.save()
        p.setClipRect(QRectF(scene.left, 0, width - scene.left, scene.head))
        p.fillRect(QRectF(0, 0, width, scene.head), QColor(self.theme.paper))
        first, last = scene.day(scene.left), scene.day(width) + timedelta(days=1)
        months = list(month_ticks(scene.scale, first, last, QFontMetricsF(self.bold).horizontalAdvance("September 8")))
        line = QFontMetricsF(self.small).height()
        p.setPen(QPen(QColor(self.theme.line), 1.4))
        for tick in months:
            p.drawLine(QPointF(scene.x(tick.day), scene.head - line - 4), QPointF(scene.x(tick.day), scene.head))
        p.setFont(self.bold)
        p.setPen(QColor(self.theme.ink))
        for index, tick in enumerate(months):
            wide = QFontMetricsF(self.bold).horizontalAdvance(tick.label)
            x = scene.x(tick.day) + 3
            if index == 0 and x < scene.left + 3:  # a month that began before the edge keeps its name in view
                following = scene.x(months[1].day) if len(months) > 1 else width
                x = scene.left + 3
                if x + wide + 8 > following:
                    continue
            p.drawText(QPointF(x, scene.head - line - 6), tick.label)
        p.setFont(self.small)
        p.setPen(QColor(self.theme.soft))
        for tick in week_ticks(scene.scale, first, last, QFontMetricsF(self.small).horizontalAdvance("28  ") + 4):
            if scene.x(tick.day) >= scene.left - 2:
                p.drawText(QPointF(scene.x(tick.day) + 3, scene.head - 5), tick.label)
        p.restore()

    def _paint_names(self, height: float) -> None:
        scene, p = self.scene, self.p
        p.save()
        p.setClipRect(QRectF(0, scene.head, scene.left, height - scene.head))
        p.fillRect(QRectF(0, scene.head, scene.left - 1, height - scene.head), QColor(self.theme.paper))
        line = QFontMetricsF(self.bold).height()
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        for lane in scene.lanes:
            place = lane.content.place
            middle = scene.top((lane.line_y + lane.base_y) / 2)
            p.setFont(self.bold)
            p.setPen(QColor(self.theme.ink))
            p.drawText(QRectF(4, middle - line, scene.left - 14, line), right, place.name)
            p.setFont(self.small)
            p.setPen(QColor(self.theme.soft))
            room = (
                count_text(place.egg_places, "egg place")
                if place.role.holds_eggs
                else area_text(place.floor_cm2, self.units)
            )
            p.drawText(QRectF(4, middle, scene.left - 14, line), right, room)
        p.restore()

    def _paint_today(self, width: float, height: float) -> None:
        scene, p = self.scene, self.p
        x = scene.x(scene.today)
        if not scene.left <= x <= width:
            return
        bottom = scene.top(scene.lanes[-1].bottom) if scene.lanes else height
        p.setPen(QPen(QColor(self.theme.ink), 1.5))
        p.drawLine(QPointF(x, scene.head), QPointF(x, min(bottom, height)))
        metrics = QFontMetricsF(self.small_bold)
        wide = metrics.horizontalAdvance("today") + 16
        left = min(max(x - wide / 2, scene.left), width - wide)
        pill = QRectF(left, 2, wide, metrics.height() + 3)
        p.setPen(Qt.PenStyle.NoPen)
        p.setBrush(QColor(self.theme.ink))
        p.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2)
        p.setFont(self.small_bold)
        p.setPen(QColor(self.theme.paper))
        p.drawText(pill, Qt.AlignmentFlag.AlignCenter, "today")
