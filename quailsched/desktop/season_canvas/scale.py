"""Days to pixels and back, and which days get a line or a label. No Qt."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from datetime import date, timedelta

from quailsched.farm.units import MONTHS, short_weekday_text
from quailsched.quick import dataclass
from quailsched.words import marked, say

ZOOM_STEP = 1.25  # times, for one key or one click of a wheel
LEAST_PX, MOST_PX = 0.5, 560.0  # pixels a day: three years in a small window, a week on the largest screen
MONTH_NAMES = (
    marked("January"),
    marked("February"),
    marked("March"),
    marked("April"),
    marked("May"),
    marked("June"),
    marked("July"),
    marked("August"),
    marked("September"),
    marked("October"),
    marked("November"),
    marked("December"),
)


@dataclass(frozen=True, slots=True)
class TimeScale:
    """``first`` lies at x = 0; each day is ``day_px`` wide. x grows with time, without end either way."""

    first: date
    day_px: float

    def x(self, day: date) -> float:
        return (day.toordinal() - self.first.toordinal()) * self.day_px

    def day(self, x: float) -> date:
        """The day that holds ``x``."""
        ordinal = self.first.toordinal() + int(x // self.day_px)
        return date.fromordinal(min(max(ordinal, 1), date.max.toordinal()))

    def zoomed(self, factor: float) -> TimeScale:
        return replace(self, day_px=min(max(self.day_px * factor, LEAST_PX), MOST_PX))


@dataclass(frozen=True, slots=True)
class Tick:
    """A line at ``day``; ``label`` may be empty. Months are strong."""

    day: date
    label: str
    is_month: bool


def month_ticks(scale: TimeScale, start: date, end: date, label_px: float) -> Iterator[Tick]:
    """The first of each month from ``start`` to ``end``; short names, or none but January, where room is short."""
    month_px = 30 * scale.day_px
    day = start.replace(day=1)
    while day < end:
        name = say(MONTH_NAMES[day.month - 1])
        if month_px < label_px:
            name = (
                say(MONTHS[day.month - 1]) if month_px >= label_px * 0.55 else (str(day.year) if day.month == 1 else "")
            )
        elif day.month == 1:
            name = f"{name} {day.year}" if month_px >= label_px * 1.5 else name
        yield Tick(day, name, True)
        day = (day + timedelta(days=32)).replace(day=1)


def week_ticks(scale: TimeScale, start: date, end: date, label_px: float) -> Iterator[Tick]:
    """Mondays, labelled as often as ``label_px`` leaves room; none at all where weeks are too narrow to tell."""
    week_px = 7 * scale.day_px
    if week_px < 7:
        return
    each = next(n for n in (1, 2, 4, 8, 1000) if n * week_px >= label_px or n == 1000)
    monday = start - timedelta(days=start.weekday())
    while monday < end:
        is_labelled = (monday.toordinal() // 7) % each == 0
        yield Tick(monday, str(monday.day) if is_labelled else "", False)
        monday += timedelta(days=7)


def day_ticks(scale: TimeScale, start: date, end: date, label_px: float) -> Iterator[Tick]:
    """Every day, where a label of ``label_px`` such as "Mon 28" has room in it; none at all where it has not."""
    if scale.day_px < label_px:
        return
    for number in range(max((end - start).days, 0)):
        day = start + timedelta(days=number)
        yield Tick(day, f"{short_weekday_text(day)} {day.day}", False)


def uncrossed(weeks: Iterable[Tick], months: Sequence[Tick], scale: TimeScale, label_px: float) -> Iterator[Tick]:
    """The weeks, unlabelled where a month begins within the ``label_px`` after one.

    Beyond the line of the next month and under its name, the last Monday of this one would be misread.
    """
    firsts = [month.day for month in months]
    for week in weeks:
        at = bisect_right(firsts, week.day)
        is_crossed = at < len(firsts) and (firsts[at] - week.day).days * scale.day_px <= label_px
        yield replace(week, label="") if is_crossed and week.label else week
