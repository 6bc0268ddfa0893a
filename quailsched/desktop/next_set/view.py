"""The Next set view put together: the landscape, what follows from the chosen day, and the button that does it."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSpinBox,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.empty_page import EmptyPage
from quailsched.desktop.forms.batch_form import free_name
from quailsched.desktop.forms.fields import dress, name_choice
from quailsched.desktop.labels import label
from quailsched.desktop.narrow import Beside, scrolling
from quailsched.desktop.next_set.landscape import Landscape, number_of
from quailsched.desktop.season_canvas.ghosts import Ghost, ghosts_of
from quailsched.desktop.tasks import Run
from quailsched.edits.records import put
from quailsched.farm.check import MOST_EGGS
from quailsched.farm.records import Batch, Farm, Origin, Part
from quailsched.farm.units import count_text, day_text, named_day_text
from quailsched.husbandry.handbook import handbook
from quailsched.planner.next_set import NextSet, best_of, broken_by, next_sets_of, what_stops
from quailsched.report.inspect import odds_text
from quailsched.season.season import Season
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say

DAYS = 120
_LETTERS_BESIDE = 70  # of a line: from here on there is room for the card beside the landscape
_MOST_LETTERS = 56  # of a line of the card
_LEAST_LINES = 6  # of what follows from a day


class NextSetView(QStackedWidget):
    """Works the days out beside the window, when it is shown and the farm has changed since."""

    set_asked = Signal(object)  # Change
    look_asked = Signal()  # show the batch that is thought of in the season
    place_wanted = Signal()
    clash_wanted = Signal()

    def __init__(self, opened: OpenFarm, today: date, run: Run) -> None:
        super().__init__()
        self.opened, self.today, self._run = opened, today, run
        self._worked_out: tuple[Farm, str] | None = None
        self._is_shown = False  # whether ``_days`` are those of ``_worked_out``
        self._days: tuple[NextSet, ...] = ()
        self._one: NextSet | None = None
        self._too_few = ""  # the clash that the chosen number makes
        self.kind = QComboBox()
        for kind in handbook().values():
            self.kind.addItem(say(kind.name), kind.id)
        name_choice(self.kind, say("Kind"))
        self.landscape = Landscape()
        self.state = label("", "soft")
        self.eggs = QSpinBox(minimum=0, maximum=MOST_EGGS)
        self.eggs.setKeyboardTracking(False)  # a number is looked at when it is typed, not figure by figure
        self.eggs.setAccessibleName(say("Eggs"))
        self.eggs.setEnabled(False)
        self.button = QPushButton(say("Set eggs"))
        self.button.setObjectName("main")
        self.button.setEnabled(False)
        self.look = QPushButton(say("See it in the season"))
        self.look.setToolTip(say("The season with this batch as an outline; nothing is set yet"))
        self.look.setEnabled(False)
        self._lay_out()
        dress(self)
        self.landscape.chosen.connect(self._chosen)
        self.kind.currentIndexChanged.connect(lambda _index: self.work_out())
        self.eggs.valueChanged.connect(self._number_chosen)
        self.button.clicked.connect(self._ask)
        self.look.clicked.connect(lambda: self.look_asked.emit())

    def _lay_out(self) -> None:
        self.empty = EmptyPage(say("When can the next eggs go in?"))
        self.empty.tell(say("There is no place for eggs yet. Add a setter or a cabinet first."), say("Add a place"))
        self.empty.asked.connect(self.place_wanted)
        left, card = self._left(), self._card()
        letter = self.fontMetrics().averageCharWidth()
        card.setMaximumWidth(letter * _MOST_LETTERS)
        sides = Beside(left, card, from_px=letter * _LETTERS_BESIDE)
        sides.row.setSpacing(16)
        for part, share in ((left, 3), (card, 2)):
            sides.row.setStretchFactor(part, share)
        column = QVBoxLayout()
        column.setContentsMargins(22, 14, 14, 14)
        column.addWidget(sides)
        for page in (scrolling(column), self.empty):
            self.addWidget(page)

    def _left(self) -> QWidget:
        """What it is about, and the landscape."""
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(label(say("When can the next eggs go in, and how many?"), "heading"))
        column.addWidget(
            label(
                say(
                    "Each day shows the most eggs that make no new clash, with room for all but the largest hatches "
                    "(how sure: Change › Farm). Below stands what stops more. Drag the point, or use the arrow keys, "
                    "to another day or fewer eggs."
                ),
                "soft",
            )
        )
        column.addWidget(self.state)
        self.to_clash, self.to_place = QPushButton(say("Go to the next clash")), QPushButton(say("Add a place"))
        for button, wanted in ((self.to_clash, self.clash_wanted), (self.to_place, self.place_wanted)):
            button.clicked.connect(lambda _checked=False, wanted=wanted: wanted.emit())
            button.hide()
            column.addWidget(button, alignment=Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.landscape, 1)
        return left

    def _card(self) -> QFrame:
        """One day: what follows from it, how many eggs, and setting them."""
        card = QFrame()
        card.setObjectName("card")
        column = QVBoxLayout(card)
        column.addWidget(self.kind)
        self._title = label("", "heading")
        column.addWidget(self._title)
        column.addWidget(self._rows_area(), 1)
        row = QHBoxLayout()
        row.addWidget(label(say("Eggs")))
        row.addWidget(self.eggs, 1)
        column.addLayout(row)
        column.addWidget(self.button)
        column.addWidget(self.look)
        return card

    def _rows_area(self) -> QScrollArea:
        """The rows about one day; they scroll, so that the page stays as it is while days are gone through."""
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        self._rows = QGridLayout()
        self._rows.setColumnStretch(1, 1)
        column.addLayout(self._rows)
        column.addStretch()
        area = scrolling(column)
        area.setMinimumHeight(self.fontMetrics().height() * _LEAST_LINES)
        return area

    def set_farm(self, opened: OpenFarm) -> None:
        """Another farm; nothing of the one before is shown any more."""
        self.opened = opened
        self._worked_out, self._is_shown = None, False
        self._days, self._one = (), None
        self.landscape.show_days(opened.farm, (), 0)
        self._clear_rows()
        self._title.clear()
        self.button.setText(say("Set eggs"))

    def take_focus(self) -> None:
        """The keys go to the days, or to the button that makes a place for eggs."""
        (self.empty.button if self.currentIndex() else self.landscape).setFocus()

    def work_out(self) -> None:
        """Work the days out anew if the farm or the kind is another than the one that is shown."""
        wanted = (self.opened.farm, self.kind.currentData())
        if self._worked_out == wanted:
            return
        self._worked_out, self._is_shown = wanted, False
        self._arm(False)  # what is shown is of another farm or kind
        self.state.setText(say("Trying every day …"))
        (farm, kind_id), now = wanted, self.opened.checked

        def show(days: tuple[NextSet, ...]) -> None:
            if self._worked_out == wanted:  # else the farm has changed meanwhile
                self._show(farm, days)

        def search() -> tuple[NextSet, ...]:
            return next_sets_of(now, kind_id, self.today, DAYS) if self._worked_out == wanted else ()

        self._run(search, show)

    def _show(self, farm: Farm, days: tuple[NextSet, ...]) -> None:
        self._is_shown = True
        best = best_of(days)
        kept = self._one.day if self._one is not None else None
        self._days = days
        self.setCurrentIndex(0 if days else 1)
        has_clashes = bool(self.opened.checked.since(self.today))
        self.to_clash.setVisible(best is None and has_clashes)
        self.to_place.setVisible(best is None and not has_clashes)
        self.state.setText(_state_text(best, has_clashes))
        day = kept or (best.day if best is not None else self.today)
        self.landscape.show_days(farm, days, number_of(days, day))

    def _number_chosen(self, eggs: int) -> None:
        if self._one is not None:
            self.landscape.choose(number_of(self._days, self._one.day), eggs)

    def _chosen(self, number: int, eggs: int) -> None:
        one = self._one = self._days[number]
        self._title.setText(f"{named_day_text(one.day)} {one.day.year}")
        with QSignalBlocker(self.eggs):  # more than the most was typed: the most stands there again
            self.eggs.setValue(eggs)
        self._too_few = self._clash_of(one, eggs)
        self._arm(self._is_shown and one.eggs > 0)
        self._clear_rows()
        for row, (name, text) in enumerate(self._what_follows(one, eggs)):
            self._rows.addWidget(label(name, "soft"), row, 0, Qt.AlignmentFlag.AlignTop)
            self._rows.addWidget(label(text), row, 1)
        self._name_button()

    def _clear_rows(self) -> None:
        while (item := self._rows.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()  # it is freed later, and would be painted until then
                widget.deleteLater()

    def _arm(self, can_set: bool) -> None:
        for part in (self.eggs, self.button, self.look):
            part.setEnabled(can_set)

    def _what_follows(self, one: NextSet, eggs: int) -> list[tuple[str, str]]:
        farm = self.opened.farm
        rows = [(say("At most"), count_text(one.eggs, "egg"))]
        clash = what_stops(self.opened.checked, one)
        if clash is not None:
            rows.append((say("One more than that"), clash.sentence))
        if one.eggs:
            if self._too_few:
                rows.append((say("So few would clash"), self._too_few))
            batch = self._batch(one, eggs)
            kind = Season(farm).kind(batch)
            rows.append((say("Hatch"), f"{named_day_text(one.hatch)}; {odds_text(kind, eggs)}"))
            words = {Part.ALL: "", Part.HENS: say(" (laying group)"), Part.COCKS: say(" (surplus cocks)")}
            for stay in one.route:
                start = one.day + timedelta(days=stay.from_day)
                rows.append((day_text(start), f"{farm.place(stay.place_id).name}{words[stay.part]}"))
        return rows

    def _clash_of(self, one: NextSet, eggs: int) -> str:
        """The clash that ``eggs`` eggs make though the day takes more: a few birds are not calm in a large pen."""
        if not self._is_shown or eggs >= one.eggs or one.fewest_from(eggs) == eggs:
            return ""
        clash = broken_by(self.opened.checked, one.kind_id, one.day, one.route, eggs)
        return "" if clash is None else clash.sentence

    def _batch(self, one: NextSet, eggs: int) -> Batch:
        name = free_name(self.opened.farm)
        return Batch(new_id(), name, self.kind.currentData(), Origin.OWN_EGGS, one.day, eggs, one.route)

    def ghosts(self) -> tuple[Ghost, ...]:
        """The outlines of the batch that is thought of, for the canvas of the season."""
        one = self._one
        is_of_now = self._is_shown and self._worked_out is not None and self._worked_out[0] is self.opened.farm
        if one is None or not one.eggs or not is_of_now:
            return ()
        batch = self._batch(one, self.eggs.value())
        season = self.opened.season
        with_it = season.after(season.farm.with_records(set(), (batch,)), (), (batch,))
        return ghosts_of(with_it, {batch.id}, say("thought of"))

    def _name_button(self) -> None:
        if self._one is not None:
            count, when = count_text(self.eggs.value(), "egg"), day_text(self._one.day)
            if not self._one.eggs:
                text = say("None on this day")
            elif self._too_few:
                text = say("Set {count} on {when} all the same", count=count, when=when)
            else:
                text = say("Set {count} on {when}", count=count, when=when)
            self.button.setText(text)

    def _ask(self) -> None:
        if self._one is not None and self._one.eggs and self._is_shown:
            batch = self._batch(self._one, self.eggs.value())
            label_text = say(
                "Set {count} of {batch} on {day}",
                count=count_text(batch.number, "egg"),
                batch=batch.name,
                day=day_text(batch.start),
            )
            self.landscape.setFocus()  # the button will have nothing to set, and the keys would go to Undo
            self.set_asked.emit(put(self.opened.farm, batch, label_text))


def _state_text(best: NextSet | None, has_clashes: bool) -> str:
    if best is not None:
        return say("Best: up to {count} on {day}.", count=count_text(best.eggs, "egg"), day=named_day_text(best.day))
    if has_clashes:
        return say("On no day can eggs be set without a new clash. Solve those that there are first.")
    return say("On no day can eggs be set without a clash. Each day tells what is lacking.")
