"""The chore sheet for the wall: what is due on which day, in walking order, with a box to tick; page by page."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import groupby
from typing import Final

from PySide6.QtGui import QPainter

from quailsched.chores.chore import Chore
from quailsched.chores.work_out import chores_between, overdue_chores
from quailsched.desktop.paper.chore_rows import ChoreRows, Row
from quailsched.desktop.paper.lines import Block, block, draw, head, printed_words
from quailsched.desktop.paper.sheet import ON_PAPER, Sheet, fonts_on_paper
from quailsched.farm.records import Farm
from quailsched.farm.units import span_text
from quailsched.quick import dataclass
from quailsched.season.season import Season
from quailsched.words import marked, say

_BEFORE_DAY: Final = 6.0
_NO_BATCH = marked(
    "Nothing is due, as no batch is planned. Add one (Change › Add a batch), and print this sheet again."
)
_Rows = tuple[tuple[float, Row], ...]  # each with its top, from below the head


@dataclass(frozen=True, slots=True)
class ChoreSheet:
    """The chores of ``weeks`` weeks from ``today`` on, after what is overdue.

    Nothing is left out, so it takes as many pages as it takes.
    """

    season: Season
    today: date
    printed: date
    weeks: int

    @property
    def farm(self) -> Farm:
        return self.season.farm

    @property
    def title(self) -> str:
        """What the document is called."""
        return f"{self.farm.settings.name}, {self.about}"

    @property
    def is_upright(self) -> bool:
        """A list is longer than wide."""
        return True

    @property
    def about(self) -> str:
        """ "chores 6 – 19 Apr 2027"."""
        last = self.today + timedelta(days=7 * self.weeks - 1)
        year = f" {last.year}" if self.today.year == last.year else ""
        return say("chores {days}", days=f"{span_text(self.today, last)}{year}")

    def pages(self, sheet: Sheet) -> tuple[ChorePage, ...]:
        """The pages, each as large as ``sheet``; one at least."""
        chores = chores_between(self.season, self.today, self.today + timedelta(days=7 * self.weeks))
        room = sheet.height - self.head(sheet.width, say("page {number} of {many}", number=99, many=99)).height
        laying = _Laying(ChoreRows(fonts_on_paper(), sheet.width), room, self.today)
        late = overdue_chores(self.season, self.today)
        if late:  # on the first day that there is to do it
            laying.put_day(self.today, (*late, *(chore for chore in chores if chore.day == self.today)))
        for day, of_day in groupby(chores, key=lambda chore: chore.day):
            if day != self.today or not late:
                laying.put_day(day, tuple(of_day))
        many = len(laying.pages)
        return tuple(
            ChorePage(self, say("page {number} of {many}", number=number, many=many), tuple(rows))
            for number, rows in enumerate(laying.pages, 1)
        )

    def head(self, width: float, page: str) -> Block:
        """What stands at the top of every page."""
        at_right = f"{printed_words(self.today, self.printed)}, {page}"
        return head(width, self.farm.settings.name, self.about, at_right)

    def nothing(self) -> str:
        """What stands on the page if nothing is due."""
        return say("Nothing is due on these days.") if self.farm.batches else say(_NO_BATCH)


@dataclass(frozen=True, slots=True)
class ChorePage:
    """One page of a sheet."""

    of: ChoreSheet
    number: str
    rows: _Rows

    def paint(self, painter: QPainter, sheet: Sheet) -> None:
        """All of it, from the top left of ``sheet``, in pixels."""
        top = self.of.head(sheet.width, self.number)
        draw(painter, top.lines)
        for down, row in self.rows:
            row.paint(painter, top.height + down, sheet.width)
        if not self.rows:
            words = block(fonts_on_paper(14).plain, self.of.nothing(), ON_PAPER.ink, min(sheet.width, 640.0))
            draw(painter, words.moved(0, top.height + 20))


class _Laying:
    """Puts rows below each other and turns the page where the next has no room."""

    def __init__(self, rows: ChoreRows, room: float, near: date) -> None:
        self._rows, self._room, self._near = rows, room, near
        self.pages: list[list[tuple[float, Row]]] = [[]]
        self._end = 0.0
        self._told: set[str] = set()  # cautions of this page: at each chore the same words would be skipped over

    def put_day(self, day: date, chores: Sequence[Chore]) -> None:
        """A heading never stands alone at the foot of a page; on the next it says that the day goes on."""
        for at, chore in enumerate(chores):
            heading = self._rows.heading(day, self._near, is_continued=at > 0)
            needed = self._row(chore).height + (0 if at else _BEFORE_DAY + heading.height)
            turns = bool(self.pages[-1]) and self._end + needed > self._room
            if turns:
                self.pages.append([])
                self._end, self._told = 0.0, set()
            if turns or not at:
                self._put(heading, _BEFORE_DAY if self.pages[-1] else 0.0)
            self._put(self._row(chore))
            if chore.done_on is None:
                self._told.add(chore.caution)

    def _row(self, chore: Chore) -> Row:
        is_told = any(chore.caution in told for told in self._told)  # alone, or among others
        return self._rows.chore(chore, tells_caution=not is_told, today=self._near)

    def _put(self, row: Row, gap: float = 0.0) -> None:
        self.pages[-1].append((self._end + gap, row))
        self._end += gap + row.height
