"""Which parts of the picture have to be drawn again when one layout takes the place of another."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from datetime import timedelta
from typing import Any, TypeVar

from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QRegion

from quailsched.desktop.season_canvas.differing import Days, days_differing
from quailsched.desktop.season_canvas.fonts import Face, Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.labels import Label
from quailsched.desktop.season_canvas.lanes import Band, LaneContent, Timed, closed_words
from quailsched.desktop.season_canvas.layout import Link
from quailsched.desktop.season_canvas.mark_places import MarkPlace
from quailsched.desktop.season_canvas.paint_links import Curve, curve_of, links_about
from quailsched.desktop.season_canvas.paint_names import x_in_view
from quailsched.desktop.season_canvas.pens import merged
from quailsched.desktop.season_canvas.scene import WORDS_PX, Scene

_BESIDE_PX = 4.0  # outlines, and what words have around them; strips that touch with it are drawn as one
_NAME_PX = 8.0  # names of lanes reach at most this far above and below them
_Spans = list[tuple[float, float]]
_Item = TypeVar("_Item", Band, Label)
Names = Callable[[Scene, Lane], Timed[Label]]
Marks = Callable[[Scene, Lane], Sequence[MarkPlace]]


def dirty_between(old: Scene, new: Scene, names: Names, marks: Marks) -> QRegion | None:
    """What differs between two scenes of the same place, size and scale; None if that is all, as lanes have moved.

    ``names`` gives the labels of a lane, ``marks`` where its marks stand; they are asked of the old one first.
    """
    if len(old.lanes) != len(new.lanes) or not all(
        a.content.id == b.content.id and a.is_like(b) for a, b in zip(old.lanes, new.lanes, strict=True)
    ):
        return None
    region = QRegion()
    moved: dict[str, list[Days]] = {}
    for was, now in zip(old.lanes, new.lanes, strict=True):
        if was.content is now.content:
            continue
        days = moved[now.content.id] = _days_of_bands(old, was, new, now)
        if now.bottom > new.dy and now.top < new.dy + new.height:
            days = [*days, *_days_of_others(new, was.content, now.content)]
            spans = [(new.x(start), new.x(end)) for start, end in days]
            spans += _of_words(old, was, new, now, names, marks)
            for left, right in merged((left - _BESIDE_PX, right + _BESIDE_PX) for left, right in spans):
                region += _strip(new, now if now.foot > was.foot else was, left, right)
            if now.content.place is None or now.content.place is not was.content.place:
                # The name of a lane of a batch has its day below it, which a low lane does not hold.
                name = QRectF(0, new.top(now.top), new.left, now.bottom - now.top)
                region += name.adjusted(0, -_NAME_PX, 0, _NAME_PX).toAlignedRect()
    return region + _of_links(old, new, moved)


def _days_of_bands(old: Scene, was: Lane, new: Scene, now: Lane) -> list[Days]:
    """The days in view on which the bands of a lane differ."""
    before, after = was.content.bands, now.content.bands
    if before is after:
        return []
    first, end = new.days()
    gone, come = _apart(before.within(first, end), after.within(first, end))
    before_season, season = old.layout.season, new.layout.season
    assert before_season is not None
    assert season is not None
    return merged(days_differing(gone, before_season, come, season))


def _days_of_others(scene: Scene, was: LaneContent, now: LaneContent) -> Iterator[Days]:
    """The days in view on which overflow, closed days or marks of facts differ."""
    first, end = scene.days()
    pairs: tuple[tuple[Timed[Any], Timed[Any]], ...] = (
        *((was.overs, now.overs), (was.closed, now.closed), (was.facts, now.facts)),
    )
    for old, new in pairs:
        if old is not new:
            yield from ((one.start, one.end) for one in {*old.within(first, end)} ^ {*new.within(first, end)})


def _of_words(old: Scene, was: Lane, new: Scene, now: Lane, names: Names, marks: Marks) -> _Spans:
    """Where names, marks and the words of outlines differ."""
    gone, come = _apart(names(old, was).within(*old.days()), names(new, now).within(*new.days()))
    spans: _Spans = [(x, x + face.width(text)) for text, face, x, *_ in {*_named(old, gone)} ^ {*_named(new, come)}]
    if was.content.marks is not now.content.marks or was.content.overs is not now.content.overs:
        before, after = {p.shown: p for p in marks(old, was)}, {p.shown: p for p in marks(new, now)}
        spans += [(before | after)[shown].span for shown in before.keys() ^ after.keys()]
    return spans


_Named = tuple[str, Face, float, float, str, bool, bool]


def _named(scene: Scene, labels: Iterable[Label]) -> Iterator[_Named]:
    """All that tells a name in view from another."""
    for label in labels:
        x = x_in_view(scene, label)
        if x is not None:
            batch_id = label.band.batch_id
            yield label.text, label.face, x, label.base, batch_id, label.is_inside, label.is_over_line


def _apart(old: Sequence[_Item], new: Sequence[_Item]) -> tuple[list[_Item], list[_Item]]:
    """Those only in ``old`` and those only in ``new``, the very same ones being in both."""
    was, now = {*map(id, old)}, {*map(id, new)}
    return [item for item in old if id(item) not in now], [item for item in new if id(item) not in was]


def _of_links(old: Scene, new: Scene, moved: Mapping[str, Sequence[Days]]) -> QRegion:
    """Where curves differ. Those that leave or arrive on days of bands that have ``moved`` may lie otherwise all the
    way, though their batch is as it was."""
    region = QRegion()
    if not moved:
        return region
    links = links_about(old), links_about(new)
    others = {*map(id, links[0])} ^ {*map(id, links[1])}
    found: list[set[Curve]] = []
    for scene, about in zip((old, new), links, strict=True):
        lanes = {lane.content.id: lane for lane in scene.lanes}
        apart = [link for link in about if id(link) in others or _is_moved(link, moved)]
        found.append({curve for link in apart if (curve := curve_of(scene, lanes, link)) is not None})
    for curve in found[0] ^ found[1]:
        region += curve.around.toAlignedRect()
    return region


def _is_moved(link: Link, moved: Mapping[str, Sequence[Days]]) -> bool:
    for place_id in (link.from_place, link.to_place):
        for start, end in moved.get(place_id, ()):
            if start <= link.day <= end:
                return True
    return False


def _strip(scene: Scene, lane: Lane, left: float, right: float) -> QRect:
    left, right = max(left, scene.left), min(right, scene.width)
    strip = QRectF(left, scene.top(lane.top), max(right - left, 0), lane.foot - lane.top)
    return strip.toAlignedRect()


def edges_of(scene: Scene, fonts: Fonts, edges: Iterable[float]) -> QRegion:
    """What has to be drawn again where words stand otherwise at ``edges`` (pixels on the widget) than they did.

    Words at the edges of a picture that lies still stay whole; while it is scrolled they move with it.
    """
    region = QRegion()
    for edge in edges:
        for lane in scene.lanes_in_view():
            wide = _wide_at(scene, lane, fonts, edge)
            region += _strip(scene, lane, edge - wide, edge + wide)
    return region


def _wide_at(scene: Scene, lane: Lane, fonts: Fonts, edge: float) -> float:
    """How far words may reach that stand at an edge."""
    content, day = lane.content, scene.day(edge)
    near = timedelta(days=round(WORDS_PX / scene.scale.day_px) + 1)
    first, end = day - near, day + near
    texts = [fonts.small_bold.width(scene.layout.label(band)) for band in content.bands.within(first, end)]
    texts += [fonts.small.width(closed_words(one)) for one in content.closed.within(first, end)]
    texts += [2 * fonts.tiny.width(ghost.label) for ghost in scene.ghosts if ghost.band.place_id == content.id]
    if content.marks.within(first, end):
        texts.append(WORDS_PX)
    return max(texts, default=0.0) + 16
