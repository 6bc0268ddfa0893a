"""Adding and changing a chore of the keeper's own, once or again and again."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QSpinBox, QToolButton, QWidget

from quailsched.chores.own import days_of_own
from quailsched.desktop.forms.dates import day_field, day_of
from quailsched.desktop.forms.fields import NarrowChoice, dress, name_field
from quailsched.desktop.labels import label
from quailsched.desktop.today.chore_forms import PlanForm
from quailsched.desktop.today.repeats import Often, Repeat, repeat_of, repeat_text, rule_of
from quailsched.edits.change import Change
from quailsched.edits.marks import put_own
from quailsched.farm.check import LATEST
from quailsched.farm.facts import OwnChore
from quailsched.farm.units import SHORT_WEEKDAYS, WEEKDAYS, named_day_text, names_text
from quailsched.session.farms import new_id
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say

_NEXT_TOLD = 3
_MOST_STEP = 99


class RepeatField(QWidget):
    """Once, or every so many days, weeks, months or years, of a week on certain days.

    A rule that cannot be asked for so (made by an imported document) stays as it is until another is chosen.
    """

    def __init__(self, rule: str) -> None:
        super().__init__()
        shown = repeat_of(rule)
        self._kept_rule = rule if shown is None else None
        shown = shown or Repeat()
        self.often, self.step = QComboBox(), QSpinBox(minimum=1, maximum=_MOST_STEP)
        if self._kept_rule is not None:
            self.often.addItem(say("as it is: {rule}", rule=rule), None)
        for one in Often:
            self.often.addItem(say(one), one)
        self.often.setAccessibleName(say("Repeat"))
        self.step.setAccessibleName(say("Every how many"))
        self.step.setPrefix(say("every "))
        self.step.setSpecialValueText(say("without a gap"))  # of one, as "every week" stands beside it
        self.step.setValue(shown.step)
        self.days = [self._day(number, number in shown.days) for number in range(len(WEEKDAYS))]
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(self.often)
        row.addWidget(self.step)
        row.addSpacing(6)
        for button in self.days:
            row.addWidget(button)
        row.addStretch(1)
        dress(self)
        if self._kept_rule is None:
            self.often.setCurrentIndex(list(Often).index(shown.often))
        self.often.currentIndexChanged.connect(lambda _index: self._show_parts())
        self.setFocusProxy(self.often)
        self._show_parts()

    @staticmethod
    def _day(number: int, is_on: bool) -> QToolButton:
        button = QToolButton()
        button.setObjectName("grouping")
        button.setText(say(SHORT_WEEKDAYS[number]))
        button.setAccessibleName(say(WEEKDAYS[number]))
        button.setCheckable(True)
        button.setChecked(is_on)
        return button

    @property
    def _often(self) -> Often | None:
        chosen = self.often.currentData()
        return None if chosen is None else Often(chosen)

    def _show_parts(self) -> None:
        often = self._often
        units = {
            Often.DAILY: say(" days"), Often.WEEKLY: say(" weeks"), Often.MONTHLY: say(" months"),
            Often.YEARLY: say(" years"),
        }  # fmt: skip
        self.step.setVisible(often in units)
        self.step.setSuffix(units.get(often, "") if often is not None else "")
        for button in self.days:
            button.setVisible(often is Often.WEEKLY)

    def repeat(self) -> Repeat | None:
        """What is chosen; None for a rule that stays as it is."""
        often = self._often
        if often is None:
            return None
        days = tuple(number for number, button in enumerate(self.days) if button.isChecked())
        step = self.step.value() if often is not Often.ONCE else 1
        return Repeat(often, step, days if often is Often.WEEKLY else ())

    def rule(self, first: date) -> str:
        repeat = self.repeat()
        return self._kept_rule or "" if repeat is None else rule_of(repeat, first)


class OwnChoreForm(PlanForm):
    """What, from when on, how often, where, with which batch, by whom, and how."""

    def __init__(
        self, parent: QWidget | None, opened: OpenFarm, day: date, chore: OwnChore | None = None, batch_id: str = ""
    ) -> None:
        title = say("Change {chore}", chore=chore.name) if chore else say("Add a chore")
        super().__init__(parent, opened, title)
        farm = opened.plan
        shown = chore or OwnChore(new_id(), "", day, batch_id=batch_id)
        self._id = shown.id
        self.name = name_field(shown.name)
        self.first = day_field(shown.first)
        self.repeat = RepeatField(shown.repeat)
        self.place = _choice([(place.name, place.id) for place in farm.places], shown.place_id, say("no place"))
        self.batch = _choice([(batch.name, batch.id) for batch in farm.batches], shown.batch_id, say("no batch"))
        self.person = _choice([(one.name, one.id) for one in farm.people], shown.person_id, say("anybody"))
        self.how = QLineEdit(shown.words)
        self.add_field("name", say("&What"), self.name)
        self.add_field("first", say("&First on"), self.first)
        self.add_field("repeat", say("&Repeat"), self.repeat)
        self.next_days = label("", "soft")
        self.add_line(self.next_days)
        self.add_field("place_id", say("&Place"), self.place)
        self.add_field("batch_id", say("&Batch"), self.batch)
        self.add_field("person_id", say("W&ho"), self.person)
        self.add_field("words", say("H&ow"), self.how, say("In one line, as it will stand on the page"))
        self.repeat.often.currentIndexChanged.connect(self._often_chosen)
        self.repeat.step.valueChanged.connect(lambda _value: self._tell_days())
        for button in self.repeat.days:
            button.toggled.connect(lambda _on: self._tell_days())
        self.first.dateChanged.connect(lambda _day: self._tell_days())
        self._tell_days()

    def _often_chosen(self) -> None:
        self._tell_days()
        self.fit()  # the days of a week are wider than the form that asked for once

    def _tell_days(self) -> None:
        """The first days on which it will be due, so that a rule can be judged before it is saved."""
        chore, repeat = self._chore(), self.repeat.repeat()
        self.next_days.setVisible(bool(chore.repeat))
        if not chore.repeat:
            self.next_days.setText("")
            return
        end = min(date.fromordinal(chore.first.toordinal() + 800), LATEST)
        days = days_of_own(chore, chore.first, end)[:_NEXT_TOLD]
        often = repeat_text(repeat) if repeat is not None else chore.repeat
        told = names_text([named_day_text(day, chore.first) for day in days])
        self.next_days.setText(say("{often}: {days} …", often=often[:1].upper() + often[1:], days=told))

    def _chore(self) -> OwnChore:
        first = day_of(self.first)
        return OwnChore(
            self._id, " ".join(self.name.text().split()), first, self.repeat.rule(first), self.how.text().strip(),
            place_id=self.place.currentData() or "", batch_id=self.batch.currentData() or "",
            person_id=self.person.currentData() or "",
        )  # fmt: skip

    def change(self) -> Change:
        chore = self._chore()
        change = put_own(self.opened.plan, chore)
        self.saved_id = chore.id
        return change


def _choice(choices: list[tuple[str, str]], chosen: str, none: str) -> NarrowChoice:
    field = NarrowChoice()
    field.addItem(none, "")
    for name, record_id in choices:
        field.addItem(name, record_id)
    field.setCurrentIndex(max(field.findData(chosen), 0))
    return field
