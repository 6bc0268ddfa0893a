"""The shapes that lanes are made of: bands, overflow, closed days, clash marks; in days and loads, no pixels, no Qt.

``by_place`` and ``by_batch`` make lanes of them: the two groupings of one season.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Sequence
from dataclasses import field
from datetime import date, timedelta
from enum import StrEnum
from functools import cached_property
from itertools import accumulate
from operator import attrgetter
from typing import Any, Generic, NamedTuple, Protocol, TypeVar

from quailsched.farm.range import EARLIEST
from quailsched.farm.records import Farm, Place
from quailsched.farm.units import day_text
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.season.occupancy import Presence
from quailsched.season.severity import Severity, acceptance_of, severity_of
from quailsched.words import say


class Grouping(StrEnum):
    """What a lane stands for."""

    PLACES = "places"
    BATCHES = "batches"


class Piece(NamedTuple):
    """Days on which a band takes the loads from ``low`` to ``high``.

    Egg places or cm2 in the lane of a place, eggs or birds in the lane of a batch.
    """

    start: date
    end: date
    low: int
    high: int


@dataclass(frozen=True, slots=True, eq=False)
class Band:
    """One batch in one place without a break. A batch that stays on as a laying group is one band.

    ``presences`` are the stays that it is made of, in order of days. Compared by identity: a band that has not
    changed stays the same one.
    """

    batch_id: str
    place_id: str
    is_cocks: bool
    pieces: tuple[Piece, ...]
    presences: tuple[Presence, ...]
    start: date = field(init=False)  # kept, not worked out: a frame of a drag asks thousands of times
    end: date = field(init=False)
    kept: dict[str, Any] = field(init=False, default_factory=dict, repr=False)  # what those who draw it worked out

    def __post_init__(self) -> None:
        object.__setattr__(self, "start", self.pieces[0].start)
        object.__setattr__(self, "end", self.pieces[-1].end)

    @property
    def key(self) -> tuple[str, str, bool, int]:
        """The same for the same stay of a batch, in every grouping and however it is moved."""
        return self.batch_id, self.place_id, self.is_cocks, self.presences[0].leg.index

    def piece_on(self, day: date) -> Piece | None:
        at = bisect_right(self.pieces, day, key=attrgetter("start")) - 1
        return self.pieces[at] if at >= 0 and day < self.pieces[at].end else None


@dataclass(frozen=True, slots=True)
class Over:
    """Days on which all bands together take ``total``, more than the place has."""

    start: date
    end: date
    total: int


@dataclass(frozen=True, slots=True)
class Closed:
    """Days on which a place cannot take anyone, and why in a word or two."""

    start: date
    end: date
    why: str
    is_clean_out: bool


@dataclass(frozen=True, slots=True)
class Mark:
    """A clash of the lane; ``row`` keeps marks that overlap in time apart. Overflow has ``row`` -1."""

    clash: Clash
    row: int
    severity: Severity
    is_accepted: bool
    start: date
    end: date


@dataclass(frozen=True, slots=True)
class FactMark:
    """Something of a batch that happened on ``day``, though the plan had it on the day ``plan``; ``words`` tell it."""

    batch_id: str
    day: date
    plan: date
    words: str
    start: date  # the days on which it is drawn
    end: date


class HasDays(Protocol):
    """Anything on days: ``end`` is the first that it is not on."""

    @property
    def start(self) -> date: ...

    @property
    def end(self) -> date: ...


_Item = TypeVar("_Item", bound=HasDays)


class Timed(Generic[_Item]):
    """Things with days, in the order of their first days, found by days."""

    def __init__(self, items: Sequence[_Item]) -> None:
        self.items = tuple(items)

    @cached_property
    def _starts(self) -> list[date]:
        return [item.start for item in self.items]

    @cached_property
    def _ends(self) -> list[date]:
        """With each, the latest end of all up to it: this never falls, so it can be searched by halves."""
        return list(accumulate([item.end for item in self.items], max))

    @property
    def span(self) -> tuple[date, date] | None:
        """From the first day of all to the last end; None if there are none."""
        return (self._starts[0], self._ends[-1]) if self.items else None

    def within(self, first: date, end: date) -> list[_Item]:
        """Those that share a day with ``first`` to ``end`` (half-open)."""
        low, high = bisect_right(self._ends, first), bisect_left(self._starts, end)
        return [item for item in self.items[low:high] if item.end > first]

    def spliced(
        self,
        items: Iterable[_Item],
        first: date,
        end: date,
        gone: Callable[[_Item], bool],
        order: Callable[[_Item], Any] = attrgetter("start"),
    ) -> Timed[_Item]:
        """With ``items`` in the place of those that touch the days from ``first`` to ``end`` and are ``gone``; the same
        one if they are what was there. Only what lies about these days is looked at: a drag asks in each frame.

        ``order`` is by the first day and whatever else tells those apart that begin on the same one.
        """
        come = list(items)
        low, high = bisect_left(self._ends, first), bisect_right(self._starts, end)
        if come:
            low = min(low, bisect_left(self._starts, min(item.start for item in come)))
            high = max(high, bisect_right(self._starts, max(item.start for item in come)))
        old = self.items[low:high]
        fresh = sorted((*(item for item in old if not gone(item)), *come), key=order)
        if len(fresh) == len(old) and all(a is b for a, b in zip(old, fresh, strict=True)):
            return self
        spliced = Timed((*self.items[:low], *fresh, *self.items[high:]))
        spliced.__dict__["_starts"] = [*self._starts[:low], *(item.start for item in fresh), *self._starts[high:]]
        before = self._ends[low - 1 : low] if low else []
        ends = list(accumulate([*before, *(item.end for item in fresh)], max))
        if high and ends and ends[-1] == self._ends[high - 1]:  # so the later ones hold
            spliced.__dict__["_ends"] = [*self._ends[:low], *ends[len(before) :], *self._ends[high:]]
        return spliced


@dataclass(frozen=True, slots=True, eq=False)
class LaneContent:
    """One lane. ``id`` is that of its place or batch; ``room`` is what stands for full; ``body`` is how high the lane
    wants to be, in heights of the font. ``place`` is None in the lane of a batch."""

    id: str
    title: str
    place: Place | None
    room: int
    body: float
    bands: Timed[Band]
    overs: Timed[Over]
    closed: Timed[Closed]
    marks: Timed[Mark]
    facts: Timed[FactMark] = field(default_factory=lambda: Timed(()))

    def peak(self) -> int:
        """The most that is over the line at once; 0 if nothing is."""
        return max((over.total for over in self.overs.items), default=0)

    def mark_rows(self) -> int:
        return max((mark.row + 1 for mark in self.marks.items), default=0)


def closed_words(closed: Closed) -> str:
    """Why a place is out of use; nothing for a clean-out, which its dots tell."""
    if closed.is_clean_out:
        return ""
    return (
        say("{why}, ready {day}", why=closed.why, day=day_text(closed.end)) if closed.start < EARLIEST else closed.why
    )


def marks_of(farm: Farm, clashes: Sequence[Clash], over_line: bool, old: Sequence[Mark] = ()) -> Timed[Mark]:
    """The marks of a lane's clashes. Those that overlap in time get a row each; what is over the line shows itself,
    and gets none, if ``over_line``. Marks of ``old``, of a farm with the same acceptances, stay the same objects."""
    clashes, before = sorted(clashes, key=attrgetter("first")), [mark.clash for mark in old]
    most = min(len(clashes), len(before))
    begin = alike(before, clashes, most)
    late = alike(before[::-1], clashes[::-1], most - begin)
    was, now = _Rows(), _Rows()
    marks = [*old[:begin]]
    for mark in marks:
        was.take(mark)
        now.take(mark)
    known = {id(mark.clash): mark for mark in old[begin:]}
    end = len(clashes) - late
    for clash in clashes[begin:end]:
        marks.append(now.mark(farm, clash, over_line, known.get(id(clash))))
    for mark in old[begin : len(old) - late]:
        was.take(mark)
    if late and was.as_on(clashes[end].first) == now.as_on(clashes[end].first):  # the later ones find the same rows
        return Timed((*marks, *old[len(old) - late :]))
    for clash in clashes[end:]:
        marks.append(now.mark(farm, clash, over_line, known.get(id(clash))))
    return Timed(marks)


class _Rows:
    """Up to which day each row of marks is taken."""

    def __init__(self) -> None:
        self._lasts: list[date] = []

    def as_on(self, day: date) -> dict[int, date]:
        """The rows that are taken on ``day``, and until when."""
        return {row: last for row, last in enumerate(self._lasts) if last >= day}

    def take(self, mark: Mark) -> None:
        if mark.row >= 0:
            self._lasts[mark.row : mark.row + 1] = [mark.clash.last]

    def mark(self, farm: Farm, clash: Clash, over_line: bool, known: Mark | None) -> Mark:
        """The mark of ``clash`` in the first row that is free; ``known`` if it is that."""
        row = -1
        if not over_line or clash.kind not in ("floor", "eggs"):
            row = next((i for i, last in enumerate(self._lasts) if last < clash.first), len(self._lasts))
        if known is None or known.row != row:
            accepted, end = acceptance_of(farm, clash) is not None, clash.last + timedelta(days=1)
            known = Mark(clash, row, severity_of(clash.kind), accepted, clash.first, end)
        self.take(known)
        return known


def alike(one: Sequence[object], other: Sequence[object], most: int) -> int:
    """How many of the first ``most`` are the very same in both: by leaps, as a drag asks of hundreds in each frame."""
    known = 0
    for leap in (256, 32, 4, 1):
        while known + leap <= most and one[known : known + leap] == other[known : known + leap]:
            known += leap
    return known
