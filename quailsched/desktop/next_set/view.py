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
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.forms.batch_form import free_name
from quailsched.desktop.forms.fields import dress
from quailsched.desktop.labels import label
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


class NextSetView(QWidget):
    """Works the days out beside the window, when it is shown and the farm has changed since."""

    set_asked = Signal(object)  # Change
    look_asked = Signal()  # show the batch that is thought of in the season

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
        self.kind.setAccessibleName(say("Kind"))
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
        outer = QHBoxLayout(self)
        outer.setContentsMargins(22, 14, 14, 14)
        outer.setSpacing(16)
        left = QVBoxLayout()
        left.addWidget(label(say("When can the next eggs go in, and how many?"), "heading"))
        left.addWidget(
            label(
                say(
                    "Each day shows the most eggs that make no new clash, with room for all but the largest hatches "
                    "(how sure: Change › Farm). Below stands what stops more. Drag the point, or use the arrow keys, "
                    "to another day or fewer eggs."
                ),
                "soft",
            )
        )
        left.addWidget(self.state)
        left.addWidget(self.landscape, 1)
        outer.addLayout(left, 3)
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
        letter = self.fontMetrics().averageCharWidth()
        card.setMinimumWidth(letter * 34)
        card.setMaximumWidth(letter * 48)
        outer.addWidget(card, 2)

    def _rows_area(self) -> QScrollArea:
        """The rows about one day; they scroll where the window is low."""
        page, area = QWidget(), QScrollArea()
        page.setObjectName("panel")
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        self._rows = QGridLayout()
        self._rows.setColumnStretch(1, 1)
        column.addLayout(self._rows)
        column.addStretch()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setMinimumHeight(self.fontMetrics().height() * 2)  # on a small screen it scrolls early
        area.setWidget(page)
        return area

    def set_farm(self, opened: OpenFarm) -> None:
        self.opened = opened
        self._worked_out, self._is_shown = None, False

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
        if not days:
            self.state.setText(say("There is no place for eggs. Add a setter or a cabinet first."))
        elif best is None:
            self.state.setText(say("On no day can eggs be set without a new clash. Solve those that there are first."))
        else:
            self.state.setText(
                say("Best: up to {count} on {day}.", count=count_text(best.eggs, "egg"), day=named_day_text(best.day))
            )
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
        while (item := self._rows.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()  # it is freed later, and would be painted until then
                widget.deleteLater()
        for row, (name, text) in enumerate(self._what_follows(one, eggs)):
            self._rows.addWidget(label(name, "soft"), row, 0, Qt.AlignmentFlag.AlignTop)
            self._rows.addWidget(label(text), row, 1)
        self._name_button()

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
            self.set_asked.emit(put(self.opened.farm, batch, label_text))
