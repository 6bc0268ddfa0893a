"""What all forms share: labelled fields with a sentence of fault beside each, Save and Cancel."""

from __future__ import annotations

from collections.abc import Callable, Iterable

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

from quailsched.edits.records import put
from quailsched.farm.records import Record
from quailsched.session.faults import FarmError, Fault, StoreError
from quailsched.session.open_farm import OpenFarm


class RecordForm(QDialog):
    """A form for one record. Subclasses add fields, and make the record of what was typed in ``record``."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, title: str) -> None:
        super().__init__(parent)
        self.opened = opened
        self.saved_id: str | None = None
        self.setWindowTitle(title)
        self._fields: dict[str, tuple[QWidget, QLabel]] = {}
        self._top = _sentence("fault")
        self._grid = QGridLayout()
        self._grid.setColumnStretch(1, 1)
        self._grid.setHorizontalSpacing(14)
        self._grid.setVerticalSpacing(7)
        page = QWidget()
        page.setObjectName("panel")
        column = QVBoxLayout(page)
        column.addWidget(self._top)
        column.addLayout(self._grid)
        column.addStretch()
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(page)
        self._page = page
        self.outer = QVBoxLayout(self)
        self.outer.addWidget(area, 1)
        self.outer.addLayout(self._buttons())
        QShortcut(QKeySequence("Ctrl+Return"), self, self.save)

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addStretch()
        cancel, self.save_button = QPushButton("Cancel"), QPushButton("Save")
        cancel.setAutoDefault(False)
        cancel.clicked.connect(self.reject)
        self.save_button.setObjectName("main")
        self.save_button.setDefault(True)
        self.save_button.clicked.connect(self.save)
        row.addWidget(cancel)
        row.addWidget(self.save_button)
        return row

    def add_field(self, name: str, text: str, field: QWidget, tip: str = "") -> None:
        """A row: label, field, and room for the sentence that tells what is wrong with ``name``."""
        row = self._grid.rowCount()
        label = QLabel(text)
        label.setBuddy(field)
        field.setAccessibleName(text.replace("&", ""))
        field.setObjectName(field.objectName() or f"field_{name}")
        if tip:
            field.setToolTip(tip)
            field.setAccessibleDescription(tip)
        fault = _sentence("fault")
        self._grid.addWidget(label, row, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(field, row, 1)
        self._grid.addWidget(fault, row + 1, 1)
        self._fields[name] = (field, fault)

    def add_line(self, widget: QWidget) -> None:
        """Something as wide as the form, without a label."""
        self._grid.addWidget(widget, self._grid.rowCount(), 0, 1, 2)

    def show_field(self, name: str, is_shown: bool) -> None:
        """Hide or show a field with its label."""
        field, fault = self._fields[name]
        index = self._grid.indexOf(field)
        row = self._grid.getItemPosition(index)[0]  # type: ignore[index]
        label = self._grid.itemAtPosition(row, 0)
        assert label is not None
        words = label.widget()
        assert words is not None
        words.setVisible(is_shown)
        field.setVisible(is_shown)
        fault.setVisible(is_shown and bool(fault.text()))

    def set_label(self, name: str, text: str) -> None:
        field, _ = self._fields[name]
        row = self._grid.getItemPosition(self._grid.indexOf(field))[0]  # type: ignore[index]
        item = self._grid.itemAtPosition(row, 0)
        assert item is not None
        label = item.widget()
        assert isinstance(label, QLabel)
        label.setText(text)
        field.setAccessibleName(text.replace("&", ""))

    def record(self) -> Record:
        """The record that the fields say. Raises FarmError if they say none."""
        raise NotImplementedError

    def save(self) -> None:
        """Write the record, or show what is wrong with it; what was typed stays."""
        self.show_faults(())
        try:
            record = self.record()
            self.opened.apply(put(self.opened.farm, record))
        except FarmError as error:
            self.show_faults(error.faults)
        except StoreError as error:
            _say(self._top, str(error))
        else:
            self.saved_id = record.id
            self.accept()

    def show_faults(self, faults: Iterable[Fault]) -> None:
        """Each fault beside its field; those of no field here above all. The first faulty field gets the focus."""
        loose: list[str] = []
        told: dict[str, list[str]] = {name: [] for name in self._fields}
        for fault in faults:
            told.get(fault.field, loose).append(fault.sentence())
        _say(self._top, "\n".join(loose))
        for name, sentences in told.items():
            _say(self._fields[name][1], "\n".join(sentences))
        first = next((name for name, sentences in told.items() if sentences), None)
        if first is not None:
            self._fields[first][0].setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._fields:
            first = next(iter(self._fields.values()))[0]
            first.setFocus(Qt.FocusReason.TabFocusReason)

    def fit(self) -> None:
        """As large as its fields want, within the screen."""
        room = self.screen().availableSize()
        wanted = self._page.sizeHint()
        wide = max(wanted.width() + 60, self.fontMetrics().averageCharWidth() * 70)
        self.resize(min(wide, room.width() - 40), min(wanted.height() + 110, room.height() - 60))


def ask(form: RecordForm) -> str | None:
    """Show ``form`` until it is saved or cancelled; the id of the record that was saved."""
    form.fit()
    form.exec()
    form.deleteLater()
    return form.saved_id


def name_field(text: str) -> QLineEdit:
    field = QLineEdit(text)
    field.setMaxLength(80)
    return field


def button(text: str, action: Callable[[], object]) -> QPushButton:
    """A plain button that is not pressed by Return in another field."""
    made = QPushButton(text)
    made.setAutoDefault(False)
    made.clicked.connect(lambda: action())
    return made


def _sentence(name: str) -> QLabel:
    label = QLabel()
    label.setObjectName(name)
    label.setWordWrap(True)
    label.hide()
    return label


def _say(label: QLabel, text: str) -> None:
    label.setText(text)
    label.setVisible(bool(text))
