"""A form for one count of any sort: of a batch, a place or the farm; also for what stands in the place of another."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from typing import Any

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QComboBox, QLineEdit, QSpinBox, QWidget

from quailsched.desktop.counts.choices import (
    CAUSES,
    PART_WORDS,
    has_parts,
    likely_sort,
    number_words,
    of_choices,
    sorts_for,
)
from quailsched.desktop.counts.photo_field import PhotoField
from quailsched.desktop.forms.dates import day_field, day_of
from quailsched.desktop.forms.fields import MaybeField, NumberField, focus_in
from quailsched.desktop.forms.record_form import RecordForm
from quailsched.desktop.labels import label
from quailsched.edits.change import Change
from quailsched.edits.counts import correct, odd_about, record
from quailsched.farm.check_counts import MOST_GRAMS, MOST_HOURS, MOST_NUMBER, MOST_WORDS
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.ledger import FIELDS
from quailsched.farm.records import Batch, Part, Place
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError, StoreError
from quailsched.session.open_farm import OpenFarm, utc_now
from quailsched.session.photos import kept_photo
from quailsched.words import say

Take = Callable[[Change], None]


class CountForm(RecordForm):
    """Which fields there are follows from the sort. What is merely odd is asked once before it is recorded."""

    def __init__(
        self, parent: QWidget | None, opened: OpenFarm, today: date, of_id: str, take: Take, old: Count | None = None
    ) -> None:
        """``of_id``: a batch, a place, or "" for the farm. ``take`` carries out the step. ``old``: it is corrected."""
        title = say("Correct a count") if old else say("Record a count")
        super().__init__(parent, opened, title)
        self._today, self._old, self._take = today, old, take
        self._base = old or Count(new_id(), Sort.NOTE, today)
        self._id = new_id() if old else self._base.id
        self._asked: list[str] = []
        self._offered = 0  # the number that nobody has typed
        self._kept = ""  # the name of the photo that is being recorded
        self._make_fields()
        self._add_fields(of_id if old is None else old.batch_id or old.place_id)
        if opened.trial_id is not None:
            self.add_line(label(say("It goes into the plan: what happens, happens to no trial."), "soft"))
        self._odd = label("", "strong")
        self._odd.hide()
        self._odd.setContentsMargins(11, 0, 11, 0)
        self.add_foot(self._odd)
        self._connect()
        self._show_sorts()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._old is not None:
            focus_in(self.number if "number" in self._shown_fields() else self.day)
            self.number.selectAll()
        elif self.of.currentData():
            self.sort.setFocus()  # what it is of is known

    # its fields

    def _make_fields(self) -> None:
        shown, farm = self._base, self.opened.plan
        self.of, self.sort = QComboBox(), QComboBox()
        self.day = day_field(shown.day)
        self.number, self.hens, self.cocks = (
            QSpinBox(maximum=MOST_NUMBER, value=value) for value in (shown.number, shown.hens, shown.cocks)
        )
        self.grams, self.dressed = (
            QSpinBox(maximum=MOST_GRAMS, value=value, suffix=" g") for value in (shown.grams, shown.dressed_g)
        )
        self.hours = NumberField(0, MOST_HOURS, 2, say(" hours"))
        self.hours.setValue(shown.hours)
        self.hour = MaybeField(23, 0, say(" o'clock"))
        self.hour.show_value(shown.hour)
        self.cause = _choice([(say(one), one) for one in CAUSES], shown.cause)
        self.part = _choice([(say(words), one) for one, words in PART_WORDS.items()], shown.part)
        self.place = _choice([(one.name, one.id) for one in farm.places], shown.place_id)
        people = [(say("not told"), ""), *((one.name, one.id) for one in farm.people)]
        self.person = _choice(people, shown.person_id)
        self.words = QLineEdit(shown.words)
        self.words.setMaxLength(MOST_WORDS)
        self.photo = PhotoField(shown.file_name)

    def _add_fields(self, of_id: str) -> None:
        for name, text, field, tip in (
            ("batch_id", say("&Of"), self.of, ""),
            ("sort", say("&What"), self.sort, ""),
            ("number", say("&Number"), self.number, ""),
            ("hens", say("&Hens"), self.hens, ""),
            ("cocks", say("C&ocks"), self.cocks, say("The rest is unsure")),
            ("place_id", say("&Place"), self.place, ""),
            ("grams", say("&Weight"), self.grams, ""),
            ("dressed_g", say("D&ressed weight"), self.dressed, ""),
            ("hours", say("Hours wor&ked"), self.hours, ""),
            ("hour", say("Ho&ur"), self.hour, say("By which half of them were out; empty if you do not know")),
            ("cause", say("C&ause"), self.cause, ""),
            ("part", say("Which &birds"), self.part, ""),
            ("file_name", say("P&hoto"), self.photo, say("It is copied into a folder beside the farm")),
            ("day", say("&Day"), self.day, ""),
            ("person_id", say("B&y"), self.person, ""),
            ("words", say("No&te"), self.words, ""),
        ):
            self.add_field(name, text, field, tip)
        for words, id_ in of_choices(self.opened.plan):
            self.of.addItem(words, id_)
        self.of.setCurrentIndex(max(self.of.findData(of_id), 0))
        self.of.setEnabled(self._old is None)
        self.sort.setEnabled(self._old is None)
        self.save_button.setText(say("Record"))

    def _connect(self) -> None:
        self.of.currentIndexChanged.connect(self._show_sorts)
        self.sort.currentIndexChanged.connect(self._show_fitting)
        for field in (self.number, self.hens, self.cocks, self.grams):
            field.valueChanged.connect(self._forget_asking)
        self.day.dateChanged.connect(self._forget_asking)

    def _show_sorts(self) -> None:
        """The sorts that fit what is chosen; the one that was chosen stays if it is one of them."""
        of_id, before = str(self.of.currentData() or ""), self.sort.currentData()
        wanted = before or likely_sort(self.opened.plan_season, of_id, self._today)
        if self._old is not None:
            wanted = self._old.sort
        sorts = [self._old.sort] if self._old is not None else sorts_for(self.opened.plan, of_id)
        if wanted not in sorts:
            wanted = likely_sort(self.opened.plan_season, of_id, self._today)
        self.sort.blockSignals(True)
        self.sort.clear()
        for sort in sorts:
            self.sort.addItem(say(sort), sort)
        self.sort.setCurrentIndex(max(sorts.index(wanted) if wanted in sorts else 0, 0))
        self.sort.blockSignals(False)
        self._show_fitting()

    def _show_fitting(self) -> None:
        sort, shown = self._chosen_sort(), self._shown_fields()
        for name in ("number", "hens", "cocks", "grams", "dressed_g", "hours", "hour", "cause", "part", "place_id"):
            self.show_field(name, name in shown)
        self.show_field("file_name", sort is Sort.PHOTO)
        self.set_label("number", number_words(sort))
        self.set_label("grams", say("Live &weight") if sort is Sort.PROCESSED else say("&Weight"))
        self._offer_number()
        self._forget_asking()
        if self.isVisible():
            self.grow()

    def _offer_number(self) -> None:
        """The eggs of the plan where it is told that they were set, as long as nobody has typed another number."""
        of, is_set = self._chosen_of(), self._old is None and self._chosen_sort() is Sort.SET
        if self._old is None and self.number.value() == self._offered:
            self._offered = of.number if is_set and isinstance(of, Batch) else 0
            self.number.setValue(self._offered)

    def _chosen_sort(self) -> Sort:
        return Sort(self.sort.currentData())

    def _chosen_of(self) -> Batch | Place | None:
        found = self.opened.plan.find(str(self.of.currentData() or ""))
        return found if isinstance(found, Batch | Place) else None

    def _shown_fields(self) -> set[str]:
        """The names of the fields that the sort has, as far as they say something here."""
        fields, of = {name.rstrip("!") for name in FIELDS[self._chosen_sort()]}, self._chosen_of()
        if not isinstance(of, Batch) or not has_parts(self.opened.plan, of.id):
            fields.discard("part")
        if isinstance(of, Place):
            fields.discard("place_id")
        return fields

    # what they say

    def record(self) -> Count:
        """The count as it is typed, whether it can be or not."""
        of, shown = self._chosen_of(), self._shown_fields()
        values: dict[str, Any] = {
            "number": self.number.value(),
            "hens": self.hens.value(),
            "cocks": self.cocks.value(),
            "grams": self.grams.value(),
            "dressed_g": self.dressed.value(),
            "hours": self.hours.value(),
            "hour": _whole(self.hour.value_or_none()),
            "cause": self._cause(),
            "part": Part(self.part.currentData()),
            "place_id": self.place.currentData() or "",
        }
        count = replace(self._base, **{name: value for name, value in values.items() if name in shown})
        if isinstance(of, Place):
            count = replace(count, place_id=of.id)
        file_name = self._kept or (self.photo.source.name if self.photo.source else count.file_name)
        return replace(
            count,
            id=self._id,
            sort=self._chosen_sort(),
            day=day_of(self.day),
            entered=utc_now(),
            batch_id=of.id if isinstance(of, Batch) else "",
            person_id=self.person.currentData(),
            words=self.words.text().strip(),
            file_name=file_name if self._chosen_sort() is Sort.PHOTO else "",
        )

    def _cause(self) -> Cause | None:
        """None as long as the keeper does not know it."""
        chosen = Cause(self.cause.currentData())
        return self._base.cause if chosen is (self._base.cause or Cause.UNKNOWN) else chosen

    def change(self) -> Change:
        count, plan = self.record(), self.opened.plan
        self.saved_id = count.id
        if self._old is not None:
            return correct(plan, self._old.id, count, self._today)
        return record(plan, count, self._today)

    def take(self, change: Change) -> None:
        """A step of the plan, whatever is looked at."""
        self._take(change)

    def save(self) -> None:
        """Record it, once the keeper has answered to what is odd; the copy of a photo goes again if it is refused."""
        if self._asks():
            return
        if self.photo.source is None or self._chosen_sort() is not Sort.PHOTO:
            super().save()
            return
        self.show_faults(())
        try:
            with kept_photo(self.opened.file.path, self.photo.source) as self._kept:
                super().save()
                if self.saved_id is None:
                    raise _RefusedError
        except _RefusedError:
            pass  # the reason stands beside its field
        except FarmError as error:
            self.show_faults(error.faults)
        except StoreError as error:
            self._tell_top(str(error))
        finally:
            self._kept = ""

    def _asks(self) -> bool:
        """Whether there is something odd that was not asked yet; then it is asked now."""
        plan = self.opened.plan
        if self._old is not None:
            plan = plan.with_records({self._old.id}, ())
        odd = odd_about(plan, self.record()) if not self._is_impossible() else []
        if not odd or odd == self._asked:
            return False
        self._asked = odd
        self._odd.setText(" ".join(odd))
        self._odd.show()
        self.save_button.setText(say("Record it all the same"))
        self.grow()
        self.save_button.setFocus()
        return True

    def _is_impossible(self) -> bool:
        try:
            self.change()
        except FarmError:
            return True
        finally:
            self.saved_id = None
        return False

    def _forget_asking(self) -> None:
        self._asked = []
        self._odd.hide()
        self.save_button.setText(say("Record"))


class _RefusedError(Exception):
    """The step was refused, and its reason is told."""


def _choice(items: list[tuple[str, Any]], chosen: object) -> QComboBox:
    made = QComboBox()
    for words, value in items:
        made.addItem(words, value)
    values = [value for _, value in items]
    made.setCurrentIndex(values.index(chosen) if chosen in values else 0 if values else -1)
    return made


def _whole(value: float | None) -> int | None:
    return None if value is None else round(value)
