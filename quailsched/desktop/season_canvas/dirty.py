"""Which parts of the picture have to be drawn again when one layout takes the place of another."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date, timedelta
from typing import Any

from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QRegion

from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.labels import Label
from quailsched.desktop.season_canvas.lanes import HasDays, Timed, closed_words
from quailsched.desktop.season_canvas.paint_links import bend_of
from quailsched.desktop.season_canvas.scene import Scene

_MARK_PX = 130.0  # the words of a mark, or its days
_BESIDE_PX = 90.0  # the words of marks and the days of clashes stand this far beside what they belong to


def dirty_between(old: Scene, new: Scene, names: Callable[[Scene, Lane], Timed[Label]]) -> QRegion | None:
    """What differs between two scenes of the same place, size and scale; None if that is all, as lanes have moved.

    ``names`` gives the labels of a lane; it is asked of the old one first.
    """
    if len(old.lanes) != len(new.lanes) or not all(
        a.content.id == b.content.id and a.is_like(b) for a, b in zip(old.lanes, new.lanes, strict=True)
    ):
        return None
    region = QRegion()
    for was, now in zip(old.lanes, new.lanes, strict=True):
        if was.content is not now.content and now.bottom > new.dy and now.top < new.dy + new.height:
            view = new.days()
            labels = {*names(old, was).within(*view)} ^ {*names(new, now).within(*view)}
            days = _days_between(was, now, labels, *new.days())
            if days is not None:
                region += _strip(new, now, *days, _BESIDE_PX if was.content.marks is not now.content.marks else 4.0)
            # The name of a lane of a batch has its day below it.
            region += QRectF(0, new.top(now.top), new.left, now.bottom - now.top).toAlignedRect()
    lanes = {lane.content.id: lane for lane in new.lanes}
    bend = bend_of(new.scale.day_px) + 4
    for link in {*old.layout.links.within(*new.days())} ^ {*new.layout.links.within(*new.days())}:
        ends = [lane for place_id in (link.from_place, link.to_place) if (lane := lanes.get(place_id)) is not None]
        top, bottom = new.top(min(lane.top for lane in ends)), new.top(max(lane.bottom for lane in ends))
        region += QRectF(new.x(link.day) - bend, max(top, new.head + 1), 2 * bend, bottom - top).toAlignedRect()
    return region


def _days_between(was: Lane, now: Lane, labels: Iterable[Label], first: date, end: date) -> tuple[date, date] | None:
    """From the first to the last day in view on which the two lanes show something else."""
    a, b = was.content, now.content
    items: set[HasDays] = {label for label in labels if label.start < end and label.end > first}
    pairs: tuple[tuple[Timed[Any], Timed[Any]], ...] = (
        *((a.bands, b.bands), (a.overs, b.overs)),
        *((a.closed, b.closed), (a.marks, b.marks)),
    )
    for old, new in pairs:
        if old is not new:
            items |= {*old.within(first, end)} ^ {*new.within(first, end)}
    return (min(item.start for item in items), max(item.end for item in items)) if items else None


def _strip(scene: Scene, lane: Lane, first: date, end: date, beside: float) -> QRect:
    left, right = max(scene.x(first) - beside, scene.left), min(scene.x(end) + beside, scene.width)
    strip = QRectF(left, scene.top(lane.top), max(right - left, 0), lane.bottom - lane.top)
    return strip.toAlignedRect()


def edges_of(scene: Scene, fonts: Fonts, dx: int) -> QRegion:
    """What has to be drawn again when the picture has been scrolled by ``dx`` pixels across: what comes in, and words
    at the edges, which stay whole and so do not move with the picture."""
    near = timedelta(days=round((abs(dx) + _MARK_PX) / scene.scale.day_px) + 1)
    first, end = scene.days()
    region = QRegion()
    for lane in scene.lanes_in_view():
        top, high = round(scene.top(lane.top)) - 1, round(lane.bottom - lane.top) + 2
        wide = _wide_at(scene, lane, fonts, first - near, first + near) + abs(dx)
        region += QRect(round(scene.left), top, wide, high)
        wide = _wide_at(scene, lane, fonts, end - near, end + near) + abs(dx)
        region += QRect(round(scene.width) - wide, top, wide, high)
    bottom = round(scene.top(scene.lanes[-1].bottom)) if scene.lanes else round(scene.head)
    below = max(round(scene.height) - bottom, 0)
    for left in (round(scene.left), round(scene.width) - abs(dx) - 2):
        region += QRect(left, bottom, abs(dx) + 2, below)
    return region + QRect(0, 0, round(scene.width), round(scene.head))


def _wide_at(scene: Scene, lane: Lane, fonts: Fonts, first: date, end: date) -> int:
    """How far words may reach into the view that stand at its edge, on days from ``first`` to ``end``."""
    content = lane.content
    texts = [fonts.small_bold.width(scene.layout.label(band)) for band in content.bands.within(first, end)]
    texts += [fonts.small.width(closed_words(one)) for one in content.closed.within(first, end)]
    if content.marks.within(first, end):
        texts.append(_MARK_PX)
    return round(max(texts, default=0.0)) + 16
