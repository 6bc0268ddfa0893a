"""Where the marks of clashes stand, and their words: in the bar, else after it, else before it. No painting."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from PySide6.QtCore import QRectF

from quailsched.desktop.season_canvas.fonts import Face, Fonts
from quailsched.desktop.season_canvas.geometry import Lane
from quailsched.desktop.season_canvas.lanes import Mark
from quailsched.desktop.season_canvas.scene import Scene
from quailsched.farm.units import span_text
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.words import marked, say

MARK_WORDS = {
    "eggs": marked("too many eggs"),
    "floor": marked("too small"),
    "cabinet": marked("turning and lockdown"),
    "cleanout": marked("no clean-out"),
    "notready": marked("not ready"),
    "young": marked("too young"),
    "cold": marked("cold nights"),
    "calm": marked("too few birds"),
    "nowhere": marked("no place"),
    "stale": marked("old eggs"),
    "ages": marked("two ages"),
    "crowd": marked("a crowd"),
    "cocks": marked("too many cocks"),
    "quarantine": "quarantine",
    "hands": marked("nobody home"),
    "heat": marked("too little heat"),
    "water": marked("short drinkers"),
    "feeder": marked("short feeders"),
    "overdue": marked("past their day"),
    "build": marked("not built"),
    "dark": marked("short days"),
}
_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class MarkPlace:
    """A mark on the widget: its ``bar`` as (left, top, right, bottom), None over the line; ``text`` from ``x`` on its
    ``base``, empty where all room is taken. Its days go from ``left`` to ``right``, in view or not."""

    mark: Mark
    is_on: bool
    left: float
    right: float
    bar: tuple[float, float, float, float] | None
    text: str
    face: Face
    x: float
    base: float
    is_in_bar: bool = False

    @property
    def shown(self) -> tuple[object, ...]:
        """All that tells its picture from another's."""
        mark = self.mark.severity, self.mark.is_accepted, self.is_on
        return *mark, self.left, self.right, self.bar, self.text, self.x, self.base, self.is_in_bar

    @property
    def words(self) -> QRectF:
        """The room of the text and of what is drawn around it."""
        wide, face = self.face.width(self.text) if self.text else 0.0, self.face
        return QRectF(self.x - 2, self.base - face.ascent - 1, wide + 4, face.ascent + face.descent + 4)

    @property
    def span(self) -> tuple[float, float]:
        """From where to where it is drawn."""
        words = self.words
        if self.bar is None:
            return words.left(), words.right()
        return min(self.bar[0] - 2, words.left()), max(self.bar[2] + 2, words.right())


class MarkPlaces:
    """Keeps what it has found, lane by lane, for as long as they are looked at from the same place."""

    def __init__(self) -> None:
        self._kept: dict[str, tuple[tuple[object, ...], list[MarkPlace]]] = {}

    def forget(self) -> None:
        """Find all anew: words may be others."""
        self._kept.clear()

    def of(
        self, scene: Scene, lane: Lane, fonts: Fonts, reaches: Sequence[tuple[float, float]] = ()
    ) -> list[MarkPlace]:
        """The marks of the lane: all in view, so that their words come to stand where they would in a whole paint. If
        it is being scrolled, those between the pixels of ``reaches`` are enough."""
        if not lane.content.marks.items:
            return []
        if reaches and scene.is_passing:
            days = [scene.days_near(*reach) for reach in reaches]
            marks = dict.fromkeys(mark for span in days for mark in lane.content.marks.within(*span))
            return _places(scene, lane, fonts, tuple(marks))
        looked_from = scene.scale, scene.left, scene.width, scene.head, scene.dx, scene.dy, scene.is_passing
        ground = *looked_from, fonts, scene.picked.clash, scene.hovered.clash
        old = self._kept.get(lane.content.id)
        if old is not None and old[0][0] is lane and old[0][1:] == ground:
            return old[1]
        found = _places(scene, lane, fonts, lane.content.marks.within(*scene.days_about()))
        self._kept[lane.content.id] = (lane, *ground), found
        return found


def _places(scene: Scene, lane: Lane, fonts: Fonts, marks: Sequence[Mark]) -> list[MarkPlace]:
    """The marks of the lane's clashes, and the days of those over the line."""
    places: list[MarkPlace] = []
    taken: list[QRectF] = []
    taken_until = float("-inf")
    on = _on(scene)
    for mark in marks:
        is_on = mark.clash in on
        if mark.row >= 0:
            places.append(_under(scene, lane, mark, is_on, marks, taken, fonts.tiny))
            continue
        over = _over(scene, lane, mark, is_on, fonts.small_bold)
        if over.x >= taken_until + 6:
            taken_until = over.x + fonts.small_bold.width(over.text)
            places.append(over)
    return places


def _on(scene: Scene) -> tuple[Clash, ...]:
    return tuple(clash for clash in (scene.picked.clash, scene.hovered.clash) if clash is not None)


def _over(scene: Scene, lane: Lane, mark: Mark, is_on: bool, face: Face) -> MarkPlace:
    """The days of what stands over the line, above its worst day."""
    least, most = scene.held()
    left, right = scene.x(mark.start), scene.x(mark.end)
    text = span_text(mark.clash.first, mark.clash.last)
    wide = face.width(text)
    x = min(max((left + right) / 2 - wide / 2, least + 2), most - wide - 4)
    worst = mark.clash.worst
    peak = max((over.total for over in lane.content.overs.within(worst, worst + _DAY)), default=0)
    base = max(scene.top(lane.y(peak)) - 4, scene.top(lane.top) + face.ascent)
    return MarkPlace(mark, is_on, left, right, None, text, face, x, base)


def _under(
    scene: Scene, lane: Lane, mark: Mark, is_on: bool, marks: Sequence[Mark], taken: list[QRectF], face: Face
) -> MarkPlace:
    """A clash that is not about room: a bar below the lane, its idea in two words in it or beside it."""
    least, most = scene.held()
    left, right = scene.x(mark.start), scene.x(mark.end)
    y, high = scene.top(lane.mark_y(mark.row)), lane.mark_height - 2
    shown_left = max(left, least)
    shown_right = max(min(right, most - 2.0), shown_left + 5)
    bar = shown_left, y, shown_right, y + high
    words = say(MARK_WORDS[mark.clash.kind])
    text = say("{clash}, accepted", clash=words) if mark.is_accepted else words
    wide = face.width(text)
    base = y + high / 2 + (face.ascent - face.descent) / 2
    if wide + 12 <= shown_right - shown_left:
        return MarkPlace(mark, is_on, left, right, bar, text, face, shown_left + 8, base, is_in_bar=True)
    others = [other for other in marks if other.row == mark.row and other is not mark]
    after = [scene.x(other.start) for other in others if other.start > mark.start]
    before = [scene.x(other.end) for other in others if other.start < mark.start]
    for x, low, limit in (
        (shown_right + 4, least, min([*after, most])),
        (shown_left - 4 - wide, max([*before, least]) + 2, shown_left),
    ):
        room = QRectF(x - 2, y, wide + 4, high)
        if x >= low and x + wide <= limit and not any(room.intersects(one) for one in taken):
            taken.append(room)
            return MarkPlace(mark, is_on, left, right, bar, text, face, x, base)
    return MarkPlace(mark, is_on, left, right, bar, "", face, shown_left, base)
