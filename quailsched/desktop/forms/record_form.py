"""What all forms share: labelled fields with a sentence of fault beside each, Save and Cancel."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.forms.fields import dress, focus_in, line_height
from quailsched.desktop.labels import plain
from quailsched.edits.change import Change
from quailsched.edits.records import put
from quailsched.farm.records import Record
from quailsched.session.faults import FarmError, Fault, StoreError
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


class RecordForm(QDialog):
    """A form for one record. Subclasses add fields, and make the record of what was typed in ``record``."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, title: str) -> None:
        super().__init__(parent)
        self.opened = opened
        self.saved_id: str | None = None
        self.setWindowTitle(title)
        self._fields: dict[str, tuple[QLabel, QWidget, QLabel]] = {}
        self._tips: dict[str, str] = {}
        self._feet: list[QLabel] = []
        self._top = _sentence()
        self._grid = QGridLayout()
        self._grid.setColumnStretch(1, 1)
        self._grid.setHorizontalSpacing(14)
        self._grid.setVerticalSpacing(7)
        self._page = QWidget()
        self._page.setObjectName("panel")
        column = QVBoxLayout(self._page)
        column.addWidget(self._top)
        column.addLayout(self._grid)
        column.addStretch()
        self._area = QScrollArea()
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._area.setWidget(self._page)
        self.outer = QVBoxLayout(self)
        self.outer.addWidget(self._area, 1)
        self.outer.addLayout(self._buttons())
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            QShortcut(QKeySequence(keys), self, self.save)

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addStretch()
        cancel, self.save_button = QPushButton(say("Cancel")), QPushButton(say("Save"))
        cancel.setAutoDefault(False)
        cancel.setToolTip(say("Key: Escape"))
        cancel.clicked.connect(self.reject)
        self.save_button.setObjectName("main")
        self.save_button.setDefault(True)
        self.save_button.setToolTip(say("Key: Ctrl+Return"))
        self.save_button.clicked.connect(self.save)
        row.addWidget(cancel)
        row.addWidget(self.save_button)
        return row

    def add_field(self, name: str, text: str, field: QWidget, tip: str = "", is_wide: bool = False) -> None:
        """A row: label, field, and room for the sentence that tells what is wrong with ``name``.

        A wide field stands below its label and takes the whole width of the form.
        """
        row = self._grid.rowCount()
        label, fault = QLabel(text), _sentence()
        label.setBuddy(field.focusProxy() or field)
        if not isinstance(field, QLabel) and not is_wide:
            label.setMinimumHeight(line_height(label))  # beside the first line of its field
        field.setAccessibleName(text.replace("&", ""))
        field.setObjectName(field.objectName() or f"field_{name}")
        field.setToolTip(tip)
        self._tips[name] = tip
        dress(field)
        self._grid.addWidget(label, row, 0, Qt.AlignmentFlag.AlignTop)
        below = row + 1 if is_wide else row
        self._grid.addWidget(field, below, 0 if is_wide else 1, 1, 2 if is_wide else 1)
        self._grid.addWidget(fault, below + 1, 0 if is_wide else 1, 1, 2 if is_wide else 1)
        self._fields[name] = (label, field, fault)
        self._tell_fault(name, "")
        for inner in (field, *field.findChildren(QLineEdit)):
            if isinstance(inner, QLineEdit):  # what was wrong is being mended
                inner.textEdited.connect(lambda: self._tell_fault(name, ""))

    def add_line(self, widget: QWidget) -> None:
        """Something as wide as the form, without a label."""
        self._grid.addWidget(widget, self._grid.rowCount(), 0, 1, 2)

    def add_foot(self, label: QLabel) -> None:
        """A text under the fields that stays in sight while they are scrolled."""
        self._feet.append(label)
        self.outer.insertWidget(self.outer.count() - 1, label)

    def show_field(self, name: str, is_shown: bool) -> None:
        """Hide or show a field with its label."""
        label, field, fault = self._fields[name]
        label.setVisible(is_shown)
        field.setVisible(is_shown)
        fault.setVisible(is_shown and bool(fault.text()))

    def set_label(self, name: str, text: str) -> None:
        label, field, _ = self._fields[name]
        label.setText(text)
        field.setAccessibleName(text.replace("&", ""))

    def record(self) -> Record:
        """The record that the fields say. Raises FarmError if they say none."""
        raise NotImplementedError

    def change(self) -> Change:
        """The step that Save takes. Raises FarmError if the farm would not be sound after it."""
        record = self.record()
        self.saved_id = record.id
        return put(self.opened.farm, record)

    def take(self, change: Change) -> None:
        """Write the step. Forms of what is never of a trial take it to the plan."""
        self.opened.apply(change)

    def save(self) -> None:
        """Write the record, or show what is wrong with it; what was typed stays."""
        self.show_faults(())
        try:
            self.take(self.change())
        except FarmError as error:
            self.saved_id = None
            self.show_faults(error.faults)
        except StoreError as error:
            self.saved_id = None
            self._tell_top(str(error))
        else:
            self.accept()

    def show_faults(self, faults: Iterable[Fault]) -> None:
        """Each fault beside its field; those of no field here above all. The first faulty field gets the focus."""
        loose: list[str] = []
        told: dict[str, list[str]] = {name: [] for name in self._fields}
        for fault in faults:
            told.get(fault.field, loose).append(fault.sentence())
        for name, sentences in told.items():
            self._tell_fault(name, "\n".join(sentences))
        self._tell_top("\n".join(loose))
        first = next((name for name, sentences in told.items() if sentences), None)
        if first is not None:
            self.grow()
            focus_in(self._fields[first][1])
            self._area.ensureWidgetVisible(self._fields[first][2])

    def _tell_fault(self, name: str, text: str) -> None:
        """The sentence beside a field; who hears the field hears it as well."""
        _, field, fault = self._fields[name]
        _say(fault, text)
        field.setAccessibleDescription(text or self._tips[name])

    def _tell_top(self, text: str) -> None:
        _say(self._top, text)
        if text:
            self.grow()
            self._area.ensureWidgetVisible(self._top)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        fields = (field for _, field, _ in self._fields.values() if not isinstance(field, QLabel))
        first = next(fields, None)
        if first is not None:
            first.setFocus(Qt.FocusReason.TabFocusReason)

    def fit(self) -> None:
        """As large as its fields want, within the screen."""
        bar = self._area.verticalScrollBar().sizeHint().width()
        sides = self.outer.contentsMargins()
        wanted = self._page.sizeHint().width() + bar + sides.left() + sides.right()
        wide = max(wanted, self.fontMetrics().averageCharWidth() * 70)
        wide = min(wide, self.screen().availableSize().width() - 16)
        self.resize(wide, 0)
        self.grow()

    def grow(self) -> None:
        """Tall enough for what is told now, within the screen; never less tall than it is."""
        column, sides = self._page.layout(), self.outer.contentsMargins()
        assert column is not None
        inner = self.width() - sides.left() - sides.right()
        tall = column.totalHeightForWidth(inner) if column.hasHeightForWidth() else column.totalSizeHint().height()
        tall += sum(foot.heightForWidth(inner) + self.outer.spacing() for foot in self._feet)
        tall += self.save_button.sizeHint().height() + self.outer.spacing() + sides.top() + sides.bottom()
        self.resize(self.width(), min(max(tall, self.height()), self.screen().availableSize().height() - 60))


def ask(form: RecordForm) -> str | None:
    """Show ``form`` until it is saved or cancelled; the id of the record that was saved."""
    form.fit()
    form.exec()
    form.deleteLater()
    return form.saved_id


def _sentence() -> QLabel:
    label = plain(QLabel())
    label.setObjectName("fault")
    label.setWordWrap(True)
    label.hide()
    return label


def _say(label: QLabel, text: str) -> None:
    label.setText(text)
    label.setVisible(bool(text))
