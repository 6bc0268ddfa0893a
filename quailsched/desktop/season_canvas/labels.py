"""Where the names of bands stand: in their bands, or beside them where a band is too low or too short. No painting.

Places are in pixels from the first day and the top of the lane, whatever is scrolled: names move with the season.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterator, Sequence
from datetime import date, timedelta
from operator import attrgetter

from PySide6.QtCore import QRectF

from quailsched.desktop.season_canvas.fonts import Face, Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Band, Piece, Timed
from quailsched.desktop.season_canvas.paint_links import bend_of
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.quick import dataclass

_APART = 640.0  # pixels between two names in one long band, so that one is always in view
_NEAR_PX = 160.0  # names stand at most this far beside their bands
_MOST_DIGITS = 3
_CLASH_DAYS_PX = 90.0  # what a clash's days take at most


@dataclass(frozen=True, slots=True, eq=False)
class Label:
    """``text`` of a band with its base line's start at ``x``, ``base``.

    Inside the band it may be moved from ``x`` within ``left`` to ``right``; outside, ``left`` is ``right``.
    """

    band: Band
    text: str
    face: Face
    x: float
    base: float
    left: float
    right: float
    is_inside: bool
    start: date  # the days over which it may stand
    end: date
    is_over_line: bool = False

    @property
    def rect(self) -> QRectF:
        return _room_of(self.text, self.face, self.x, self.base)


@dataclass(frozen=True, slots=True)
class Ground:
    """What places depend on beside the bands: the lane, days to pixels, the line of today, the faces.

    ``view``: how many pixels from the first day on are seen; None where it can be scrolled.
    """

    lane: Lane
    scale: TimeScale
    today: date
    fonts: Fonts
    view: float | None = None

    def is_like(self, other: Ground) -> bool:
        """Whether a band that is the same in both has its name in the same place."""
        return (
            self.lane.is_as_high_as(other.lane)
            and self.scale == other.scale
            and self.today == other.today
            and self.fonts is other.fonts
            and self.view == other.view
        )


@dataclass(frozen=True, slots=True, eq=False)
class _OfBand:
    """The labels of one band: ``full`` and ``brief`` are those that have room in it, whatever is beside it."""

    full: tuple[Label, ...]
    brief: tuple[Label, ...]
    shown: tuple[Label, ...]


_OfBands = dict[Band, _OfBand]


@dataclass(frozen=True, slots=True)
class _Kept:
    """The names of the bands of a lane on some days."""

    ground: Ground
    first: date
    end: date
    of_bands: _OfBands
    labels: Timed[Label]


class Labels:
    """Keeps what it has found: in a drag only the names near what moves are placed again."""

    def __init__(self) -> None:
        self._kept: dict[str, _Kept] = {}
        self._lanes: dict[str, int] = {}  # their numbers

    def forget(self) -> None:
        """Place all names anew: some may be others, or find a better place than beside what was there before."""
        self._kept.clear()

    def of(self, ground: Ground, text_of: Callable[[Band], str], first: date, end: date) -> Timed[Label]:
        """The labels of all bands of the lane that share a day with ``first`` to ``end``, and of some beside them.

        They are found by the days over which they stand.
        """
        content = ground.lane.content
        if ground.view is None:  # the name of a band that is about to come in may stand in view already
            near = timedelta(days=round(_NEAR_PX / ground.scale.day_px) + 1)
            first, end = first - near, end + near
        old = self._kept.get(content.id)
        if old is not None and not old.ground.is_like(ground):
            old = None
        is_in_window = old is not None and old.first <= first and end <= old.end
        is_same = old is not None and old.ground.lane.content is content
        if old is not None and is_in_window and is_same:
            return old.labels
        if old is not None and is_in_window:
            first, end = old.first, old.end
        else:
            # A bit more or less with each lane, so that in a scroll they do not all run out in the same frame.
            more = (end - first) * (1 + self._lanes.setdefault(content.id, len(self._lanes)) % 8) // 20
            first, end = first - more, end + more
        bands = content.bands.within(first, end)
        of_bands = _placed(ground, bands, text_of, old.of_bands if old is not None else {}, is_same)
        labels = Timed(sorted((label for one in of_bands.values() for label in one.shown), key=attrgetter("start")))
        self._kept[content.id] = _Kept(ground, first, end, of_bands, labels)
        return labels


def _placed(
    ground: Ground, bands: Sequence[Band], text_of: Callable[[Band], str], known: _OfBands, is_same: bool
) -> _OfBands:
    """Labels of ``bands``: those of ``known`` where nothing near them has changed.

    ``is_same``: the lane shows what it showed, on other days perhaps; bands that are not asked for have not gone.
    """
    kept = {band: known[band] for band in bands if band in known}
    changed = [band for band in bands if band not in kept]
    changed += [] if is_same else [band for band in known if band not in kept]
    stay = kept
    if known and changed:
        first, end = min(band.start for band in changed), max(band.end for band in changed)
        stay = {band: one for band, one in kept.items() if one.full or not _touches(one, first, end)}
    taken = [label.rect for one in stay.values() for label in one.shown if not label.is_inside]
    placing = _Placing(ground, taken)
    return {band: stay.get(band) or placing.of_band(band, text_of(band), kept.get(band)) for band in bands}


def _touches(one: _OfBand, first: date, end: date) -> bool:
    """Whether a name beside its band stands over days from ``first`` to ``end``, where something has changed."""
    return any(label.start < end and label.end > first for label in one.shown)


class _Placing:
    """Whole names where they fit, a first letter where they do not; what has neither is told by the pointer."""

    def __init__(self, ground: Ground, taken: list[QRectF]) -> None:
        """``taken`` is where names stand outside their bands."""
        self._lane, self._scale, self._fonts = ground.lane, ground.scale, ground.fonts
        self._line_y, self._base_y = self._lane.line_y - self._lane.top, self._lane.base_y - self._lane.top
        self._per_load = (self._base_y - self._line_y) / max(self._lane.content.room, 1)
        self._today_x = ground.scale.x(ground.today)
        self._view = ground.view
        self._taken = taken
        self._boxes: dict[tuple[Band, float], QRectF | None] = {}

    def of_band(self, band: Band, name: str, old: _OfBand | None) -> _OfBand:
        """The best of what fits; nothing if nothing does. ``old`` tells what fits into the band."""
        full = old.full if old is not None else self._inside(band, name)
        if full:
            return _OfBand(full, (), full)
        brief = old.brief if old is not None else self._inside(band, short(name))
        beside = self._beside(band, name)
        shown = beside or brief or self._over_line(band, name) or self._beside(band, short(name))
        return _OfBand(full, brief, shown)

    def _inside(self, band: Band, text: str) -> tuple[Label, ...]:
        """``text`` in the band, smaller if it is low."""
        for face, high in (
            (self._fonts.small_bold, self._fonts.small_bold.height),
            (self._fonts.tiny_bold, self._fonts.tiny_bold.ascent + 1),
        ):
            box = self._widest_box(band, high)
            if box is not None and box.width() >= face.width(text) + 4:
                return tuple(self._in_box(band, text, face, part) for part in _parts(box))
        return ()

    def _in_box(self, band: Band, text: str, face: Face, box: QRectF) -> Label:
        wide = face.width(text)
        box = self._beside_today(box, wide + 4)
        base = box.center().y() + (face.ascent - face.descent) / 2
        left, right = box.left() + 2, box.right() - 2
        return Label(band, text, face, box.center().x() - wide / 2, base, left, right, True, *self._days(left, right))

    def _beside_today(self, box: QRectF, wide: float) -> QRectF:
        """The part of ``box`` that the line of today leaves, where it would cross a text in the middle."""
        if abs(box.center().x() - self._today_x) > wide / 2:
            return box
        left, right = QRectF(box), QRectF(box)
        left.setRight(self._today_x - 1)
        right.setLeft(self._today_x + 1)
        part = max(left, right, key=QRectF.width)
        return part if part.width() >= wide else box

    def _beside(self, band: Band, text: str) -> tuple[Label, ...]:
        """``text`` on the back of the band, else before its first day or after its last."""
        face = self._fonts.small_bold
        for x, base in self._places_beside(band, face.width(text), face.ascent):
            if found := self._outside(band, x, base, text, is_over_line=False):
                return found
        return ()

    def _over_line(self, band: Band, text: str) -> tuple[Label, ...]:
        """``text`` over the line, where no clash stands there."""
        near = timedelta(days=7)
        if self._view is not None:  # far out, the days of a clash are wider than a week
            near = max(near, timedelta(days=_CLASH_DAYS_PX / self._scale.day_px))
        if self._lane.content.place is None or self._lane.content.overs.within(band.start - near, band.end + near):
            return ()
        return self._outside(band, self._scale.x(band.start) + 2, self._line_y - 3, text, is_over_line=True)

    def _outside(self, band: Band, x: float, base: float, text: str, is_over_line: bool) -> tuple[Label, ...]:
        """``text`` from a point of its base line, if all of it is free."""
        face = self._fonts.small_bold
        right = x + face.width(text)
        room = _room_of(text, face, x, base)
        if not self._is_free(room):
            return ()
        self._taken.append(room)
        return (Label(band, text, face, x, base, x, right, False, *self._days(x - 3, right + 3), is_over_line),)

    def _places_beside(self, band: Band, wide: float, high: float) -> Iterator[tuple[float, float]]:
        """Points of the base line of a text beside its band."""
        start, end = self._scale.x(band.start), self._scale.x(band.end)
        back = self._y(max(piece.high for piece in band.pieces))
        if back - 2 - high >= self._line_y:
            yield start + 2, back - 2
        curve = bend_of(self._scale.day_px)  # a curve that comes in swings as far before the band
        first = band.pieces[0]
        middle = (self._y(first.low) + self._y(first.high)) / 2
        base = min(middle + high / 2 - 1, self._base_y - 1)
        if base - high >= self._line_y:
            yield start - curve - 3 - wide, base
            yield end + curve + 3, base

    def _days(self, left: float, right: float) -> tuple[date, date]:
        return self._scale.day(left), self._scale.day(right) + timedelta(days=1)

    def _is_free(self, rect: QRectF) -> bool:
        """Whether ``rect`` is in view, and no band and no other name stands in it."""
        if self._view is not None and not 0 <= rect.left() < rect.right() <= self._view:
            return False
        if any(rect.intersects(one) for one in self._taken):
            return False
        left, top, right, bottom = rect.left(), rect.top(), rect.right(), rect.bottom()
        first, end = self._days(left, right)
        for band in self._lane.content.bands.within(first, end):
            for start, stop, low, high in _pieces_within(band, first, end):
                head, foot = self._y(high), self._y(low)
                is_level = head < foot and head < bottom and foot > top
                if is_level and self._scale.x(start) < right and self._scale.x(stop) > left:
                    return False
        return True

    def _x_in_view(self, day: date) -> float:
        x = self._scale.x(day)
        return x if self._view is None else min(max(x, 0.0), self._view)

    def _y(self, load: int) -> float:
        """How far below the top of the lane ``load`` ends; no higher than the line."""
        return max(self._base_y - load * self._per_load, self._line_y)

    def _widest_box(self, band: Band, high: float) -> QRectF | None:
        """The widest box of at least ``high`` pixels inside a band: a run of pieces on one level."""
        if (band, high) not in self._boxes:
            self._boxes[band, high] = self._box_in(band, high)
        return self._boxes[band, high]

    def _box_in(self, band: Band, high: float) -> QRectF | None:
        widest: tuple[float, float, float, float] | None = None  # left, right, top, bottom
        run: tuple[float, float, float, float] | None = None
        base, per_load, line = self._base_y, self._per_load, self._line_y
        for piece_start, piece_end, low, up in band.pieces:  # as in ``_y``, which would be half of a frame's names
            top, bottom = base - up * per_load, base - low * per_load
            top, bottom = (top if top > line else line), (bottom if bottom > line else line)
            if run is not None and min(bottom, run[3]) - max(top, run[2]) >= high:
                run = (run[0], self._x_in_view(piece_end), max(top, run[2]), min(bottom, run[3]))
            elif bottom - top >= high:
                run = (self._x_in_view(piece_start), self._x_in_view(piece_end), top, bottom)
            else:
                run = None
            if run is not None and (widest is None or run[1] - run[0] > widest[1] - widest[0]):
                widest = run
        if widest is None:
            return None
        left, right, top, bottom = widest
        return QRectF(left, top, right - left, bottom - top)


def _room_of(text: str, face: Face, x: float, base: float) -> QRectF:
    """What ``text`` takes whose base line begins at ``x``, ``base``."""
    return QRectF(x - 3, base - face.ascent + 1, face.width(text) + 6, face.ascent)


def short(name: str) -> str:
    """What stands for a name where it has no room: its number if it ends in one ("Batch 12"), else its first letter."""
    last = name.split()[-1]
    return last if last.isdigit() and len(last) <= _MOST_DIGITS else name[:1]


def _parts(box: QRectF) -> list[QRectF]:
    """A long box cut into several, so that each can carry the name."""
    many = max(int(box.width() // _APART), 1)
    wide = box.width() / many
    return [QRectF(box.left() + number * wide, box.top(), wide, box.height()) for number in range(many)]


def _pieces_within(band: Band, first: date, end: date) -> Sequence[Piece]:
    low = bisect_right(band.pieces, first, key=attrgetter("end"))
    return band.pieces[low : bisect_left(band.pieces, end, key=attrgetter("start"))]
