"""Draws what stands around the lanes: months and weeks, names of places, today, the focus."""

from __future__ import annotations

from datetime import timedelta

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPen

from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scale import month_ticks, uncrossed, week_ticks
from quailsched.farm.units import area_text, count_text


class FramePainter(Pens):
    """Everything but lanes and bands."""

    def grid(self, width: float, height: float) -> None:
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

    def head(self, width: float) -> None:
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
            if x + wide <= width:
                p.drawText(QPointF(x, scene.head - line - 6), tick.label)
        p.setFont(self.small)
        p.setPen(QColor(self.theme.soft))
        wide = QFontMetricsF(self.small).horizontalAdvance("28")
        weeks = week_ticks(scene.scale, first, last, QFontMetricsF(self.small).horizontalAdvance("28  ") + 4)
        for tick in uncrossed(weeks, months, scene.scale, wide + 3):
            x = scene.x(tick.day) + 3
            if scene.left + 1 <= x <= width - wide:
                p.drawText(QPointF(x, scene.head - 5), tick.label)
        p.restore()

    def names(self, height: float) -> None:
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

    def today_line(self, width: float, height: float) -> None:
        """Over the bands, but under every word."""
        x = self.scene.x(self.scene.today)
        if self.scene.left <= x <= width:
            bottom = self.scene.top(self.scene.lanes[-1].bottom) if self.scene.lanes else height
            self.p.setPen(QPen(QColor(self.theme.ink), 1.5))
            self.p.drawLine(QPointF(x, self.scene.head), QPointF(x, min(bottom, height)))

    def today(self, width: float) -> None:
        scene, p = self.scene, self.p
        x = scene.x(scene.today)
        if not scene.left <= x <= width:
            return
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

    def focus(self, width: float, height: float) -> None:
        """A thin frame while the keys go to the season."""
        if self.has_focus:
            self.p.setBrush(Qt.BrushStyle.NoBrush)
            self.p.setPen(QPen(QColor(self.theme.good), 1.5))
            left, head = self.scene.left, self.scene.head
            self.p.drawRect(QRectF(left, head, width - left - 1, height - head - 1))
