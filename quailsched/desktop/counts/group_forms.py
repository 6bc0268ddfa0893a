"""Forms for birds that leave their batch: as one of their own, or to another batch."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QComboBox, QDateEdit, QSpinBox, QWidget

from quailsched.desktop.counts.choices import PART_WORDS, has_parts
from quailsched.desktop.counts.count_form import Take
from quailsched.desktop.forms.dates import day_field, day_of
from quailsched.desktop.forms.fields import name_field
from quailsched.desktop.forms.record_form import RecordForm
from quailsched.desktop.labels import label
from quailsched.edits.change import Change
from quailsched.edits.groups import join, odd_about_joining, part_off
from quailsched.edits.splits import part_name
from quailsched.farm.check_counts import MOST_NUMBER
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch, Part
from quailsched.farm.units import count_text, day_text
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError
from quailsched.session.open_farm import OpenFarm, utc_now
from quailsched.words import say


class LeaveForm(RecordForm):
    """What both share: which birds, how many, and the day."""

    sort: Sort

    def __init__(
        self, parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch, take: Take, title: str
    ) -> None:
        super().__init__(parent, opened, title)
        self._today, self._batch, self._take = today, batch, take
        self._count_id = new_id()
        self.part = QComboBox()
        for part, words in PART_WORDS.items():
            self.part.addItem(say(words), part)
        self.number = QSpinBox(maximum=MOST_NUMBER)
        self.day: QDateEdit = day_field(today)
        self.alive = label("", "soft")

    def _add_shared(self) -> None:
        self.add_field("day", say("&Day"), self.day)
        self.add_field("part", say("Which &birds"), self.part)
        self.add_field("number", say("&How many"), self.number)
        self.add_line(self.alive)
        self.show_field("part", has_parts(self.opened.plan, self._batch.id))
        if self.opened.trial_id is not None:
            self.add_line(label(say("It goes into the plan: what happens, happens to no trial."), "soft"))
        for signal in (self.day.dateChanged, self.part.currentIndexChanged):
            signal.connect(self._tell)
        self.number.setValue(self._birds())
        self._tell()

    def _part(self) -> Part:
        return Part(self.part.currentData())

    def _birds(self) -> int:
        """How many there are, by what is known."""
        return self.opened.plan_season.birds(self._batch, day_of(self.day), self._part())

    def _tell(self) -> None:
        words = {"batch": self._batch.name, "birds": count_text(self._birds(), "bird")}
        day = day_text(day_of(self.day), self._today)
        text = say("{batch} has {birds} on {day}", **words, day=day)
        part = self._part()
        self.alive.setText(text if part is Part.ALL else f"{text} ({say(PART_WORDS[part])})")

    def _count(self, to_batch_id: str, place_id: str) -> Count:
        self.saved_id = to_batch_id
        return Count(
            self._count_id, self.sort, day_of(self.day), utc_now(), self.number.value(), self._batch.id, place_id,
            self._part(), to_batch_id=to_batch_id,
        )  # fmt: skip

    def take(self, change: Change) -> None:
        """A step of the plan, whatever is looked at."""
        self._take(change)


class PartForm(LeaveForm):
    """A part of a batch becomes a batch of its own, in another place."""

    sort = Sort.PARTED

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch, take: Take) -> None:
        super().__init__(parent, opened, today, batch, take, say("Part of {batch} as a batch", batch=batch.name))
        self._new_id = new_id()
        self.name = name_field(part_name(opened.plan, batch))
        self.place = QComboBox()
        for place in opened.plan.places:
            if not place.role.holds_eggs:
                self.place.addItem(place.name, place.id)
        self.add_field("name", say("&Name"), self.name)
        self.add_field("place_id", say("&Into"), self.place)
        self._add_shared()

    def change(self) -> Change:
        count = self._count(self._new_id, str(self.place.currentData() or ""))
        return part_off(self.opened.plan, count, self.name.text(), self._today)


class JoinForm(LeaveForm):
    """Birds of a batch go over to another that lives on the day."""

    sort = Sort.JOINED

    def __init__(self, parent: QWidget | None, opened: OpenFarm, today: date, batch: Batch, take: Take) -> None:
        super().__init__(parent, opened, today, batch, take, say("{batch} joins another batch", batch=batch.name))
        self.other = QComboBox()
        self.warning = label("", "strong")
        self.warning.setContentsMargins(11, 0, 11, 0)
        self.add_field("to_batch_id", say("&Join"), self.other)
        self._add_shared()
        self.add_foot(self.warning)
        self.day.dateChanged.connect(self._show_others)
        self.other.currentIndexChanged.connect(self._warn)
        self._show_others()

    def _show_others(self) -> None:
        """The batches of the kind that live on the day; the one that was chosen stays."""
        season, day, before = self.opened.plan_season, day_of(self.day), self.other.currentData()
        self.other.clear()
        for one in self.opened.plan.batches:
            if one.id != self._batch.id and one.kind == self._batch.kind and season.birds(one, day):
                self.other.addItem(one.name, one.id)
        self.other.setCurrentIndex(max(self.other.findData(before), 0) if self.other.count() else -1)
        self._warn()

    def _warn(self) -> None:
        """What to think of before they are put together."""
        other_id, day = str(self.other.currentData() or ""), day_of(self.day)
        if not other_id:
            told = [say("No other batch of its kind lives on this day.")]
        else:
            try:
                told = odd_about_joining(self.opened.plan, self._batch.id, other_id, day)
            except FarmError as error:
                told = [str(error)]
        self.warning.setText(" ".join(told))
        self.warning.setVisible(bool(told))
        if self.isVisible():
            self.grow()

    def change(self) -> Change:
        return join(self.opened.plan, self._count(str(self.other.currentData() or ""), ""), self._today)
