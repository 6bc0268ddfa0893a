"""The panel beside the season: all clashes, or the clash or batch that is picked, in words."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QGridLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.acceptance_box import AcceptanceBox
from quailsched.desktop.buttons import button
from quailsched.desktop.clash_rows import ClashRows
from quailsched.desktop.labels import label
from quailsched.desktop.narrow import Beside
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.way_cards import WayCards
from quailsched.farm.records import Batch
from quailsched.farm.units import count_text
from quailsched.outlook.likelihood import chance_of_clash
from quailsched.report.clashes import title_of
from quailsched.report.inspect import batch_rows, clash_rows
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.season.severity import Severity, acceptance_of, open_clashes, severity_of
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.farm.records import Farm
    from quailsched.report.what_moved import Moved


class Inspector(QFrame):
    """Shows one of three pages; asks by signals for what its buttons say."""

    clash_chosen = Signal(object)  # Clash
    batch_chosen = Signal(str)
    change_asked = Signal(str)  # batch id
    remove_asked = Signal(str)
    nudge_asked = Signal(str, int)
    back_asked = Signal()
    batch_wanted = Signal()
    place_wanted = Signal()
    next_set_wanted = Signal()
    accept_asked = Signal(object, str)  # Clash, reason
    take_back_asked = Signal(object)  # Clash
    way_entered = Signal(object)  # WayOut
    way_left = Signal()
    way_chosen = Signal(object)  # WayOut
    facts_asked = Signal(str, str)  # what (``FactsBox.asked``, or "undo"), batch id

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.today = today
        self.cards: WayCards | None = None  # of the clash that is shown, if it is one
        self.acceptance: AcceptanceBox | None = None
        self._moved: Sequence[Moved] = ()
        self._moved_farm: Farm | None = None  # after the step that moved them
        self._area = QScrollArea(self)
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        panel, self._page = QWidget(), QWidget()
        panel.setObjectName("panel")
        self._pages = QVBoxLayout(panel)
        self._pages.setContentsMargins(0, 0, 0, 0)
        self._pages.addWidget(self._page)
        self._area.setWidget(panel)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(6, 6, 6, 6)
        layout.addWidget(self._area)
        self.setMinimumWidth(self.fontMetrics().averageCharWidth() * 40)

    def show_picked(self, season: Season, clashes: tuple[Clash, ...], picked: Picked) -> None:
        """Show the page for what is picked; a batch that is gone shows as nothing."""
        page, self.acceptance, self.cards = QWidget(), None, None
        column = QVBoxLayout(page)
        column.setSpacing(8)
        batch = season.farm.find(picked.batch_id) if picked.batch_id else None
        if picked.clash is not None:
            self._clash_page(column, season, picked.clash)
        elif isinstance(batch, Batch):
            self._batch_page(column, season, batch, clashes)
        elif not season.farm.places:
            self._first_page(column)
        else:
            self._all_page(column, season, clashes)
        column.addStretch()
        self._turn_to(page)

    def tell_moved(self, moved: Sequence[Moved], farm: Farm) -> None:
        """What the step that led to ``farm`` has moved: batches show it until the next step."""
        self._moved, self._moved_farm = moved, farm

    def _turn_to(self, page: QWidget) -> None:
        old, self._page = self._page, page
        self._pages.addWidget(page)
        page.show()
        _hand_focus_on(old, page)
        old.hide()
        old.deleteLater()  # not at once: it may be a button or field of it that has asked for another page
        self._area.verticalScrollBar().setValue(0)

    def begin_accepting(self) -> None:
        """Open the line for the reason beside the clash that is shown, if it is one to watch."""
        if self.acceptance is not None:
            self.acceptance.begin()

    def tell_reason_fault(self, text: str) -> None:
        """What is wrong with the reason that was given last."""
        if self.acceptance is not None:
            self.acceptance.tell_fault(text)

    def _first_page(self, column: QVBoxLayout) -> None:
        """A farm with nothing in it: how to begin."""
        column.addWidget(label(say("Begin with your places"), "heading"))
        column.addWidget(
            label(
                say(
                    "Add what your birds live in: a setter or a cabinet for the eggs, a brooder for the "
                    "chicks, a pen for grown birds. Then add a batch: its days follow by themselves."
                )
            )
        )
        column.addWidget(_button(say("Add a place"), self.place_wanted.emit, "main"))

    def _all_page(self, column: QVBoxLayout, season: Season, clashes: tuple[Clash, ...]) -> None:
        farm = season.farm
        if not farm.batches:
            column.addWidget(label(say("Now a batch"), "heading"))
            column.addWidget(
                label(
                    say(
                        "Say how many eggs go in and when. The route through your places is filled in, "
                        "and where it goes wrong shows at once."
                    )
                )
            )
            column.addWidget(_button(say("Add a batch"), self.batch_wanted.emit, "main"))
            column.addWidget(_button(say("Add another place"), self.place_wanted.emit))
            return
        if not clashes:
            column.addWidget(label(say("No clash ahead"), "heading"))
            column.addWidget(
                label(say("Every batch has its place, its room and its clean-out. Pick a batch to see its days."))
            )
            column.addWidget(_button(say("When can the next eggs go in?"), self.next_set_wanted.emit, "main"))
            return
        still_open = len(open_clashes(farm, clashes))
        if still_open:
            column.addWidget(
                label(say("{clashes} ahead", clashes=count_text(still_open, "clash", "clashes")), "clashHeading")
            )
        else:
            column.addWidget(label(say("No clash ahead but accepted ones"), "quietHeading"))
        column.addWidget(label(say("Pick one to see why."), "soft"))
        column.addWidget(ClashRows(season, clashes, self.today, self.clash_chosen.emit))

    def _clash_page(self, column: QVBoxLayout, season: Season, clash: Clash) -> None:
        farm = season.farm
        is_accepted = acceptance_of(farm, clash) is not None
        column.addWidget(label(title_of(farm, clash), "quietHeading" if is_accepted else "clashHeading"))
        column.addLayout(_rows(clash_rows(farm, clash, self.today, chance_of_clash(season, clash, self.today))))
        if severity_of(clash.kind) is Severity.WATCH:
            self.acceptance = AcceptanceBox(is_accepted)
            self.acceptance.reason_given.connect(lambda reason: self.accept_asked.emit(clash, reason))
            self.acceptance.take_back_asked.connect(lambda: self.take_back_asked.emit(clash))
            self.acceptance.grown.connect(lambda: QTimer.singleShot(0, self._bring_acceptance_into_view))
            column.addWidget(self.acceptance)
        self.cards = WayCards()
        self.cards.entered.connect(self.way_entered)
        self.cards.left.connect(self.way_left)
        self.cards.chosen.connect(self.way_chosen)
        column.addWidget(self.cards)
        for batch_id in clash.batch_ids:
            name = farm.batch(batch_id).name
            column.addWidget(_button(say("Show {name}", name=name), partial(self.batch_chosen.emit, batch_id)))
        column.addWidget(_button(say("All clashes"), self.back_asked.emit, "flat"))

    def _bring_acceptance_into_view(self) -> None:
        """Called once the page has been laid out anew."""
        if self.acceptance is not None:
            self._area.ensureWidgetVisible(self.acceptance, 0, 8)

    def _batch_page(self, column: QVBoxLayout, season: Season, batch: Batch, clashes: tuple[Clash, ...]) -> None:
        from quailsched.desktop.counts.facts_box import FactsBox

        column.addWidget(label(batch.name, "heading"))
        if self._moved and season.farm is self._moved_farm:
            column.addWidget(self._moved_box(batch))
        column.addLayout(_rows(batch_rows(season, batch, self.today)))
        nudges = ((say("A day earlier"), -1), (say("A day later"), 1))
        earlier, later = (self._nudge(season.farm, batch, text, days) for text, days in nudges)
        change = _button(say("Change…"), lambda: self.change_asked.emit(batch.id), "main")
        remove = _button(say("Remove…"), lambda: self.remove_asked.emit(batch.id))
        for made in (change, remove):
            made.setAccessibleDescription(batch.name)
        column.addWidget(Beside(earlier, later))
        column.addWidget(Beside(change, remove))
        facts = FactsBox(season, batch, self.today)
        facts.asked.connect(lambda what: self.facts_asked.emit(what, batch.id))
        column.addWidget(facts)
        own = [clash for clash in clashes if batch.id in clash.batch_ids]
        column.addWidget(ClashRows(season, own, self.today, self.clash_chosen.emit))
        column.addWidget(_button(say("All clashes"), self.back_asked.emit, "flat"))

    def _moved_box(self, batch: Batch) -> QWidget:
        from quailsched.desktop.today.moved_box import MovedBox

        box = MovedBox()
        box.undo_asked.connect(lambda: self.facts_asked.emit("undo", batch.id))
        box.show_moved(self._moved)
        return box

    def _nudge(self, farm: Farm, batch: Batch, text: str, days: int) -> QPushButton:
        """A button that moves a batch by so many days; where it cannot, it says why."""
        made = _button(text, partial(self.nudge_asked.emit, batch.id, days))
        reason = _why_not(farm, batch.id, days)
        made.setEnabled(not reason)
        made.setToolTip(reason)
        made.setAccessibleDescription(reason or batch.name)
        return made


def _why_not(farm: Farm, batch_id: str, days: int) -> str:
    """Why a batch cannot be moved by so many days; "" if it can."""
    from quailsched.edits.batches import shift
    from quailsched.farm.faults import FarmError

    try:
        shift(farm, batch_id, days)
    except FarmError as error:
        return "; ".join(fault.accepted for fault in error.faults)
    return ""


def _hand_focus_on(old: QWidget, page: QWidget) -> None:
    """Who works with the keys stays in the panel: on the same button, else on the way back, else on the first row.

    Left alone, the focus would wander to the button for Undo, and the next key would press it.
    """
    focused = QApplication.focusWidget()
    if focused is None or not old.isAncestorOf(focused):
        return
    buttons = [one for one in page.findChildren(QPushButton) if one.isVisible() and one.isEnabled()]
    by_text = {one.text(): one for one in reversed(buttons)}
    same = by_text.get(focused.text()) if isinstance(focused, QPushButton) else None
    wanted = same or by_text.get(say("All clashes")) or next(iter(buttons), None)
    if wanted is not None:
        wanted.setFocus()


def _button(text: str, action: Callable[[], object], name: str = "") -> QPushButton:
    made = button(text, action)
    made.setObjectName(name)
    return made


def _rows(rows: list[tuple[str, str]]) -> QGridLayout:
    grid = QGridLayout()
    grid.setHorizontalSpacing(12)
    grid.setVerticalSpacing(6)
    grid.setColumnStretch(1, 1)
    said = ""
    for number, (name, text) in enumerate(rows):
        soft = label("" if name == said else name, "soft")
        soft.setAlignment(Qt.AlignmentFlag.AlignTop)
        grid.addWidget(soft, number, 0)
        grid.addWidget(label(text, "source" if name == say("Counts on") else ""), number, 1)
        said = name
    return grid
