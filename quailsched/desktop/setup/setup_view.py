"""The Setup view: tables of places, people, batches and figures, and the farm's own settings."""

from __future__ import annotations

from datetime import date
from functools import cached_property, partial

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QTabWidget, QVBoxLayout, QWidget

from quailsched.desktop.forms.batch_form import edit_batch
from quailsched.desktop.forms.confirm import remove_record
from quailsched.desktop.forms.farm_form import edit_farm
from quailsched.desktop.forms.figure_form import edit_figure
from quailsched.desktop.forms.person_form import edit_person
from quailsched.desktop.forms.place_form import edit_place
from quailsched.desktop.labels import ShortLabel
from quailsched.desktop.narrow import ShortButton, shorten
from quailsched.desktop.setup.page import TablePage
from quailsched.desktop.setup.tables import FIGURE_HEADINGS, NO_PLACES, TABLES, figure_rows
from quailsched.farm.records import Batch, Person, Place
from quailsched.husbandry.handbook import handbook
from quailsched.session.open_farm import Notice, OpenFarm
from quailsched.words import marked, say

PLACES, PEOPLE, BATCHES, FIGURES = range(4)
_KEYS = marked("Insert adds, Return changes, Delete removes; Ctrl+Up or Ctrl+Down sorts by the column of the cell.")
_FIGURE_KEYS = marked(
    "Return shows a figure and lets this farm have its own; Ctrl+Up or Ctrl+Down sorts by the column."
)


class SetupView(QWidget):
    """Follows the farm that it shows; changes it only through the forms."""

    status = Signal(str)

    def __init__(self, opened: OpenFarm, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.opened, self.today = opened, today
        self._followed: OpenFarm | None = None
        self.pages = [TablePage(t.title, t.headings) for t in TABLES]
        self._figures_tab = QWidget()
        self.tabs = QTabWidget(self)
        self.tabs.setAccessibleName(say("Setup"))
        self.tabs.setDocumentMode(True)
        for table, page in zip(TABLES, self.pages, strict=True):
            self.tabs.addTab(page, say(table.title))
        self.tabs.addTab(self._figures_tab, say("Figures"))
        self._lay_out()
        self._connect()
        self.set_farm(opened)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(22, 6, 22, 8)
        self.farm_button = ShortButton(say("F&arm: name, units, nights…"), "farm")
        self.tabs.setCornerWidget(self.farm_button)
        column.addWidget(self.tabs, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = self.tabs.tabBar().sizeHint().width() + self.farm_button.minimumSizeHint().width()
        shorten((self.farm_button,), self.tabs.width() - beside)

    @cached_property
    def kind(self) -> QComboBox:
        """The kind whose figures are shown."""
        made = QComboBox()
        made.setAccessibleName(say("Kind"))
        for kind in handbook().values():
            made.addItem(say(kind.name), kind.id)
        made.currentIndexChanged.connect(lambda _index: self.refresh())
        return made

    @cached_property
    def figures(self) -> TablePage:
        """The page of figures; made when it is first asked for, as the others are enough for once."""
        made = TablePage(marked("Figures"), FIGURE_HEADINGS, can_add=False)
        made.change_asked.connect(lambda key: edit_figure(self, self.opened, self.kind.currentData(), key))
        column = QVBoxLayout(self._figures_tab)
        column.setContentsMargins(0, 10, 0, 0)
        row = QHBoxLayout()
        kind_label = QLabel(say("&Kind"))
        kind_label.setBuddy(self.kind)
        row.addWidget(kind_label)
        row.addWidget(self.kind)
        note = ShortLabel(9)
        note.setText(say("Every figure shows its source. A farm may replace any of them by its own."))
        note.setObjectName("soft")
        row.addWidget(note, 1)
        column.addLayout(row)
        column.addWidget(made, 1)
        return made

    def _connect(self) -> None:
        places, people, batches = self.pages
        places.add_asked.connect(lambda: self._show_new(edit_place(self, self.opened, self.today)))
        people.add_asked.connect(lambda: self._show_new(edit_person(self, self.opened, self.today)))
        batches.add_asked.connect(lambda: self._show_new(edit_batch(self, self.opened, self.today)))
        for number, page in enumerate(self.pages):
            page.begin_asked.connect(partial(self._begin, number))
            page.change_asked.connect(self.change)
            page.remove_asked.connect(lambda key: remove_record(self, self.opened, key))
        self.tabs.currentChanged.connect(self._tab_chosen)
        self.farm_button.clicked.connect(lambda: edit_farm(self, self.opened))

    def _begin(self, number: int) -> None:
        """The first row of a table; a batch needs places first."""
        if number == BATCHES and not self.opened.farm.places:
            self.tabs.setCurrentIndex(PLACES)
            number = PLACES
        self.pages[number].add_asked.emit()

    def _page(self) -> TablePage:
        number = self.tabs.currentIndex()
        return self.figures if number == FIGURES else self.pages[number]

    def _show_new(self, record_id: str | None) -> None:
        """Select what was added."""
        if record_id is not None:
            self._page().choose(record_id)
            self._page().take_focus()

    def set_farm(self, opened: OpenFarm) -> None:
        """Show another farm."""
        self.opened = opened
        if opened is not self._followed:
            self._followed = opened
            opened.listen(self._changed)
        if self.isVisible():  # else when it is shown
            self.refresh()

    def change(self, record_id: str) -> None:
        """Open the form of a record."""
        record = self.opened.farm.find(record_id)
        if isinstance(record, Place):
            edit_place(self, self.opened, self.today, record)
        elif isinstance(record, Person):
            edit_person(self, self.opened, self.today, record)
        elif isinstance(record, Batch):
            edit_batch(self, self.opened, self.today, record)

    def refresh(self) -> None:
        """Fill the table that is shown; the others when they are."""
        number = self.tabs.currentIndex()
        if number == FIGURES:
            self.figures.show_rows(figure_rows(self.opened.season, self.kind.currentData()))
        else:
            lacks_places = number == BATCHES and not self.opened.farm.places
            text, button = NO_PLACES if lacks_places else (TABLES[number].empty, TABLES[number].begin)
            self.pages[number].empty.tell(say(text), say(button))
            self.pages[number].show_rows(TABLES[number].rows(self.opened.checked, self.today))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.refresh()
        self._page().take_focus()

    def _tab_chosen(self) -> None:
        self.refresh()
        self.status.emit(say(_FIGURE_KEYS if self.tabs.currentIndex() == FIGURES else _KEYS))

    def _changed(self, notice: Notice) -> None:
        if self.isVisible():  # else when it is shown
            self.refresh()
