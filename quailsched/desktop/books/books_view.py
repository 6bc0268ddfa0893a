"""The Books view: measures of batches, breeding groups and incubators, and charts of them.

It changes nothing. What it shows is made when it is first shown, and worked out beside the window, page by page.
"""

from __future__ import annotations

from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.desktop.tasks import Run
from quailsched.session.open_farm import Notice, OpenFarm
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.books.rows import BookTable
    from quailsched.outlook.batch_measures import Books

BATCHES, GROUPS, INCUBATORS, CHARTS = range(4)


class BooksView(QWidget):
    """Follows the farm that it shows. Facts are of the plan, so a trial is not looked at."""

    def __init__(self, opened: OpenFarm, today: date, run: Run, parent: QWidget | None = None) -> None:
        """``run`` carries out slow work."""
        super().__init__(parent)
        self.opened, self.today, self._run = opened, today, run
        self._followed: OpenFarm | None = None
        self._books: Books | None = None
        self._asked = 0  # how often something was to be worked out: what comes too late is passed over
        self._wants_focus = False
        self._is_made = False
        self.set_farm(opened)

    def set_farm(self, opened: OpenFarm) -> None:
        """Show another farm."""
        self.opened = opened
        if opened is not self._followed:
            self._followed = opened
            opened.listen(self._changed)
        if self.isVisible():
            self.refresh()

    @cached_property
    def tabs(self) -> QTabWidget:
        from quailsched.desktop.books.charts_page import ChartsPage
        from quailsched.desktop.books.rows import EMPTY, batch_headings, group_headings, incubator_headings
        from quailsched.desktop.books.table import BookPage

        tabs = QTabWidget()
        tabs.setDocumentMode(True)
        tabs.addTab(BookPage(say("Batches"), batch_headings(), say(EMPTY["batches"])), say("Batches"))
        tabs.addTab(BookPage(say("Groups"), group_headings(), say(EMPTY["groups"])), say("Groups"))
        tabs.addTab(BookPage(say("Incubators"), incubator_headings(), say(EMPTY["incubators"])), say("Incubators"))
        tabs.addTab(ChartsPage(), say("Charts"))
        tabs.currentChanged.connect(lambda _n: self.refresh())
        return tabs

    def refresh(self) -> None:
        """Work out the page that is shown; the others when they are."""
        from quailsched.outlook.batch_measures import Books

        season, number = self.opened.plan_season, self.tabs.currentIndex()
        if self._books is None or self._books.season is not season:
            self._books = Books(season, self.today)
        books = self._books
        self._asked += 1
        asked = self._asked
        self._run(lambda: _worked_out(books, number), lambda table: self._show(asked, books, table))

    def _show(self, asked: int, books: Books, table: BookTable | None) -> None:
        from quailsched.desktop.books.charts_page import ChartsPage
        from quailsched.desktop.books.table import BookPage

        if asked != self._asked:
            return
        page = self.tabs.currentWidget()
        if isinstance(page, ChartsPage):
            page.show_books(books)
        elif isinstance(page, BookPage) and table is not None:
            page.show_table(table)
        if self._wants_focus:
            self._wants_focus = False
            self.take_focus()

    def take_focus(self) -> None:
        """The keys go to the table or chart that is shown, or to the tabs where there is none."""
        page = self.tabs.currentWidget()
        if not page.take_focus():  # type: ignore[attr-defined]
            self.tabs.tabBar().setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        if not self._is_made:
            self._is_made = True
            column = QVBoxLayout(self)
            column.setContentsMargins(22, 12, 22, 12)
            column.addWidget(label(say("Books"), "heading"))
            column.addWidget(self.tabs, 1)
        super().showEvent(event)
        self.tabs.tabBar().setFocus()  # until there is something to go through
        self._wants_focus = True
        self.refresh()

    def _changed(self, _notice: Notice) -> None:
        if self.isVisible():  # else when it is shown
            self.refresh()


def _worked_out(books: Books, number: int) -> BookTable | None:
    """The table of a page; for the charts, what they rest on is worked out and kept in ``books``."""
    from quailsched.desktop.books.rows import batch_table, group_table, incubator_table

    if number == CHARTS:
        _ = books.eggs
        return None
    return (batch_table, group_table, incubator_table)[number](books)
