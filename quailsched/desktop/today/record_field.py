"""The line in which a count is typed, and below it what Return will record, or why it cannot be.

How words become a count is in ``typed_count``.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.desktop.today.typed_count import Meant, count_meant
from quailsched.edits.change import Change
from quailsched.edits.counts import label_of, odd_about, record
from quailsched.farm.facts import Count
from quailsched.farm.records import Batch
from quailsched.farm.units import day_text
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError
from quailsched.session.open_farm import OpenFarm, utc_now
from quailsched.words import say


class _Line(QLineEdit):
    """Undo and redo are those of the farm as long as nothing is typed."""

    left = Signal()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ShortcutOverride and not self.text() and _is_undo_or_redo(event):
            event.ignore()
            return False
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)


def _is_undo_or_redo(event: QEvent) -> bool:
    undo, redo = QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo
    return isinstance(event, QKeyEvent) and (event.matches(undo) or event.matches(redo))


class RecordField(QWidget):
    """Counts are always of the plan, whatever is looked at."""

    change_asked = Signal(object)  # Change
    left = Signal()

    def __init__(self, opened: Callable[[], OpenFarm], day: Callable[[], date], today: Callable[[], date]) -> None:
        """``day`` is the day of a count that names none."""
        super().__init__()
        self._opened, self._day, self._today = opened, day, today
        self._batch_id = ""
        self._odd: Count | None = None  # what was asked about: Return once more records it
        self.line, self.told = _Line(), label("", "source")
        self.line.setObjectName("record")
        self.line.setAccessibleName(say("Record a count"))
        self.line.setClearButtonEnabled(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(self.line)
        column.addWidget(self.told)
        self.told.setContentsMargins(18, 0, 0, 0)
        self.line.textEdited.connect(lambda _text: self.look())
        self.line.returnPressed.connect(self._give)
        self.line.left.connect(self._leave)
        self.begin("")

    def begin(self, batch_id: str) -> None:
        """Counts are of the batch ``batch_id`` where they name none; "" for no batch."""
        batch = self._opened().plan.find(batch_id)
        self._batch_id = batch_id if isinstance(batch, Batch) else ""
        name = batch.name if isinstance(batch, Batch) else ""
        self.line.setPlaceholderText(
            say("Record for {batch}: 2 died, 70 hatched, fed 2.5 kg …", batch=name)
            if name
            else say("Record: 2 died {batch}", batch=self._any_name())
        )
        self.line.setToolTip(say("Words in any order, as short as you like: d is one that died (F8)"))
        self.look()

    def _any_name(self) -> str:
        """A batch that has birds today, for an example; else any, and on an empty farm a name as the example has."""
        season, day = self._opened().plan_season, self._today()
        batches = season.farm.batches
        alive = [batch.name for batch in batches if season.birds(batch, day)]
        return next(iter(alive or [batch.name for batch in batches]), "Clover")

    def look(self) -> None:
        """Tell what Return would record now."""
        self._odd = None
        typed = self.line.text()
        if not typed.strip():
            self._tell(say("Return saves it, Ctrl+Z takes it back. d: 1 died; e 31: 31 eggs; also “yesterday”, “kg”."))
            return
        meant = self._meant()
        if meant.count is None:
            self._tell(meant.missing)
            return
        try:
            record(self._opened().plan, self._with_id(meant.count), self._today())
        except FarmError as error:
            self._tell(str(error), is_fault=True)
        else:
            self._tell(say("Return records: {what}", what=self._words(meant.count)))

    def _meant(self) -> Meant:
        return count_meant(self._opened().plan_season, self.line.text(), self._today(), self._batch_id, self._day())

    @staticmethod
    def _with_id(count: Count) -> Count:
        return replace(count, id=new_id(), entered=utc_now())

    def _words(self, count: Count) -> str:
        """The count in words, with its cause and weight, as far as the step does not tell them."""
        told = label_of(self._opened().plan, count)
        if count.cause is not None:
            told += f" ({say(count.cause)})"
        if count.grams and count.number:
            told += say(", {grams} g", grams=count.grams)
        return told

    def _give(self) -> None:
        """Record it; what is odd about it is asked first, and Return once more says yes."""
        meant = self._meant()
        if meant.count is None:
            self.look()
            return
        plan, count = self._opened().plan, meant.count
        try:
            change: Change = record(plan, self._with_id(count), self._today())
        except FarmError as error:  # what cannot be is not asked about
            self._tell(str(error), is_fault=True)
            return
        odd = odd_about(plan, count)
        if odd and count != self._odd:
            self._odd = count
            self._tell(" ".join([*odd, say("Return once more records it all the same.")]), is_odd=True)
            return
        self._odd = None
        self.line.clear()
        self.look()
        self.change_asked.emit(change)

    def _leave(self) -> None:
        self.line.clear()
        self.begin("")
        self.left.emit()

    def take_focus(self) -> None:
        self.line.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _tell(self, text: str, *, is_fault: bool = False, is_odd: bool = False) -> None:
        name = "fault" if is_fault else "strongSource" if is_odd else "source"
        if self.told.objectName() != name:
            self.told.setObjectName(name)
            self.told.style().unpolish(self.told)
            self.told.style().polish(self.told)
        self.told.setText(text)
        self.line.setAccessibleDescription(text)
        if QAccessible.isActive() and self.line.hasFocus():
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self.line, text))


def day_note(day: date, today: date) -> str:
    """Of which day counts are, where it is not today."""
    return "" if day == today else say("Counts without a day are of {day}.", day=day_text(day, today))
