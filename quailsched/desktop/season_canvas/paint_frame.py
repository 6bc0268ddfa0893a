"""Draws what stands around the lanes: months and weeks, names of places, today, the focus."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from functools import lru_cache

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen

from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import LaneContent
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scale import Tick, TimeScale, day_ticks, month_ticks, uncrossed, week_ticks
from quailsched.farm.units import area_text, count_text, day_text, named_day_text, short_weekday_text
from quailsched.season.season import Season
from quailsched.words import say

_WIDE_DAY_PX = 48


@lru_cache(maxsize=16)
def _grid_days(scale: TimeScale, first: date, end: date) -> tuple[tuple[date, ...], tuple[date, ...]]:
    """The Mondays, or all days where they are wide, and the first days of months that get a line."""
    weeks, months = week_ticks(scale, first, end, 26), month_ticks(scale, first, end, 80)
    days = [tick.day for tick in day_ticks(scale, first, end, _WIDE_DAY_PX)] or [tick.day for tick in weeks]
    return tuple(days), tuple(tick.day for tick in months)


_BESIDE_NAMES = 22  # pixels, before and after a name together


class FramePainter:
    """Everything but lanes and bands."""

    def __init__(self, pens: Pens) -> None:
        self.pens, self.p, self.scene, self.theme, self.fonts = pens, pens.p, pens.scene, pens.theme, pens.fonts

    def grid(self) -> None:
        """Lines of months and weeks."""
        scene = self.scene
        first, last = scene.days()
        bottom = scene.top(scene.lanes[-1].bottom) if scene.lanes else scene.height
        for days, thickness in zip(_grid_days(scene.scale, first, last), (0.6, 1.4), strict=True):
            self.p.setPen(QPen(QColor(self.theme.line), thickness))
            xs = [x for day in days if self.pens.is_column_dirty(x := scene.x(day), 2)]
            self.p.drawLines([QLineF(x, scene.head, x, bottom) for x in xs])

    def head(self) -> None:
        """Months with their names, and Mondays, or days where they are wide, with their numbers."""
        scene = self.scene
        if self.pens.is_dirty(QRectF(0, 0, scene.width, scene.head - 2)):
            with self.pens.clipped(QRectF(scene.left, 0, scene.width - scene.left, scene.head)):
                self._months_and_days()

    def _months_and_days(self) -> None:
        scene, p = self.scene, self.p
        p.fillRect(QRectF(0, 0, scene.width, scene.head), QColor(self.theme.paper))
        first, last = scene.days()
        months = list(month_ticks(scene.scale, first, last, self.fonts.bold.width(f"{say('September')} 8")))
        line = self.fonts.small.height
        p.setPen(QPen(QColor(self.theme.line), 1.4))
        p.drawLines([QLineF(x, scene.head - line - 4, x, scene.head) for x in (scene.x(t.day) for t in months)])
        self._month_names(months, scene.head - line - 6)
        face = self.fonts.small
        weeks = week_ticks(scene.scale, first, last, face.width("28  ") + 4)
        widest = max(face.width(f"{short_weekday_text(first + timedelta(days=number))} 28") for number in range(7))
        days = list(day_ticks(scene.scale, first, last, widest + 8))
        for tick in days or uncrossed(weeks, months, scene.scale, face.width("28") + 3):
            x = scene.x(tick.day) + 3
            if tick.label and scene.left + 1 <= x <= scene.width - face.width(tick.label):
                self.pens.text(face, QPointF(x, scene.head - 5), tick.label, self.theme.soft)
        for start, end in scene.fits:  # below the days: let go here, and everything has room
            left, right = scene.x(start), scene.x(end)
            p.fillRect(QRectF(left, scene.head - 4, right - left, 4), QColor(self.theme.good))

    def _month_names(self, months: Sequence[Tick], base: float) -> None:
        scene, face = self.scene, self.fonts.bold
        for index, tick in enumerate(months):
            wide = face.width(tick.label)
            x = scene.x(tick.day) + 3
            if index == 0 and x < scene.left + 3:  # a month that began before the edge keeps its name in view
                following = scene.x(months[1].day) if len(months) > 1 else scene.width
                x = scene.left + 3
                if x + wide + 8 > following:
                    continue
            if x + wide <= scene.width:
                self.pens.text(face, QPointF(x, base), tick.label, self.theme.ink)

    def names(self) -> None:
        """What the lanes stand for, at the left."""
        scene = self.scene
        column = QRectF(0, scene.head, scene.left - 1, scene.height - scene.head)
        if not self.pens.is_dirty(column):
            return
        with self.pens.clipped(column):
            self.p.fillRect(column, QColor(self.theme.paper))
            for lane in scene.lanes_in_view():
                self._name(lane)

    def _name(self, lane: Lane) -> None:
        """The title over the middle of the lane, what there is below it; a title too wide for one line takes more."""
        scene, bold, small = self.scene, self.fonts.bold, self.fonts.small
        assert scene.layout.season is not None
        room = scene.left - _BESIDE_NAMES + 1  # the width of the names is rounded
        titles = bold.lines(lane.content.title, room, most=3)
        below = small.lines(subtitle(scene.layout.season, lane.content), room, most=2)
        middle = scene.top((lane.line_y + lane.base_y) / 2)
        if lane.content.id == scene.marked_lane:
            tall = len(titles) * bold.height + len(below) * small.height
            plate = QRectF(2, middle - tall / 2 - 3, scene.left - 6, tall + 6)
            self.p.fillRect(plate, QColor(self.theme.good_tint))
        base = middle - (len(titles) - 1) * bold.height / 2 - bold.descent
        for title in titles:
            self.pens.text(bold, QPointF(scene.left - 10 - bold.width(title), base), title, self.theme.ink)
            base += bold.height
        base += bold.descent - bold.height + small.ascent + 1
        for text in below:
            self.pens.text(small, QPointF(scene.left - 10 - small.width(text), base), text, self.theme.soft)
            base += small.height

    def today_line(self) -> None:
        """Over the bands, but under every word."""
        x = self.scene.x(self.scene.today)
        if self.scene.left <= x <= self.scene.width:
            bottom = self.scene.top(self.scene.lanes[-1].bottom) if self.scene.lanes else self.scene.height
            self.p.setPen(QPen(QColor(self.theme.ink), 1.5))
            self.p.drawLine(QPointF(x, self.scene.head), QPointF(x, min(bottom, self.scene.height)))
        if self.scene.marked_day is not None:
            x = self.scene.x(self.scene.marked_day)
            self.p.setPen(QPen(QColor(self.theme.good), 1.5))
            self.p.drawLine(QPointF(x, self.scene.head), QPointF(x, self.scene.height))

    def days_told(self) -> None:
        """Over their lines: today, and the day that was found."""
        self._pill(self.scene.today, say("today"), self.theme.ink, self.theme.paper)
        found = self.scene.marked_day
        if found is not None:
            self._pill(found, named_day_text(found, self.scene.today), self.theme.good, self.theme.on_good)

    def _pill(self, day: date, text: str, ground: str, ink: str) -> None:
        scene, p, face = self.scene, self.p, self.fonts.small_bold
        x = scene.x(day)
        if not scene.left <= x <= scene.width:
            return
        wide = face.width(text) + 16
        left = min(max(x - wide / 2, scene.left), scene.width - wide)
        pill = QRectF(left, 2, wide, face.height + 3)
        p.setPen(Qt.PenStyle.NoPen)
        p.setBrush(QColor(ground))
        p.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2)
        base = pill.center().y() + (face.ascent - face.descent) / 2
        self.pens.text(face, QPointF(left + 8, base), text, ink)

    def focus(self) -> None:
        """A thin frame while the keys go to the season."""
        if self.pens.has_focus:
            self.p.setBrush(Qt.BrushStyle.NoBrush)
            self.p.setPen(QPen(QColor(self.theme.good), 1.5))
            scene = self.scene
            self.p.drawRect(QRectF(scene.left, scene.head, scene.width - scene.left - 1, scene.height - scene.head - 1))


def head_height(fonts: Fonts) -> float:
    """The height of months and days: whole pixels, so that no row of them is half the head's and half the lanes'."""
    return float(round(fonts.plain.height * 3.4))


def names_width(season: Season | None, contents: Sequence[LaneContent], fonts: Fonts, least: float = 60.0) -> int:
    """What the names of lanes take where each stands in one line; never less than ``least`` and what is beside."""
    names = [fonts.bold.width(content.title) for content in contents]
    below = [fonts.small.width(subtitle(season, content)) for content in contents] if season is not None else []
    return round(max([*names, *below, least]) + _BESIDE_NAMES)


def subtitle(season: Season, content: LaneContent) -> str:
    """What there is: the room of a place, the size of a batch and the day that it is set or comes."""
    if content.place is not None:
        if content.place.role.holds_eggs:
            return count_text(content.place.egg_places, "egg place")
        return area_text(content.place.floor_cm2, season.farm.settings.units)
    batch = season.farm.batch(content.id)
    return f"{count_text(batch.number, 'egg' if batch.origin.is_eggs else 'bird')}, {day_text(batch.start)}"
