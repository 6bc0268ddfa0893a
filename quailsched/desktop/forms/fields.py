"""Small fields and buttons that forms are made of, and what all of them need for eye and keyboard."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtGui import QPaintEvent, QValidator
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QComboBox,
    QDoubleSpinBox,
    QLineEdit,
    QSpinBox,
    QStyle,
    QStyleOptionComboBox,
    QStylePainter,
    QWidget,
)

from quailsched.words import say

_Field = QLineEdit | QAbstractSpinBox | QComboBox


_THOUSANDS = re.compile(r"-?\d{1,3}([.,]\d{3})+")


class NumberField(QDoubleSpinBox):
    """A number that shows no more decimals than it has, but at least ``fewest``: "15 days", "0.3168 m²".

    Comma and point are both read as the decimal mark, whatever the desktop's language; in a field of whole numbers
    "13,000" is thousands. A number beyond the most can be typed, and the nearest that is accepted stands there then.
    """

    def __init__(self, least: float, most: float, decimals: int, suffix: str, fewest: int = 0) -> None:
        self._fewest = fewest
        super().__init__(minimum=least, maximum=most, decimals=decimals, suffix=suffix)
        self.setCorrectionMode(QAbstractSpinBox.CorrectionMode.CorrectToNearestValue)

    def _marked(self, text: str) -> str:
        """``text`` with the decimal mark of the desktop's language, and without marks of thousands."""
        number = text.removesuffix(self.suffix()).strip()
        if self.decimals() == 0 and _THOUSANDS.fullmatch(number):
            return text.replace(",", "").replace(".", "")
        return text.replace(",", ".").replace(".", self.locale().decimalPoint())

    def validate(self, text: str, at: int) -> tuple[QValidator.State, str, int]:
        marked = self._marked(text)
        state, _, _ = super().validate(marked, at)
        if state is QValidator.State.Invalid and self._number_in(marked) is not None:
            state = QValidator.State.Intermediate  # too much, or with decimals that there are not: told by the field
        return state, text, at

    def _number_in(self, text: str) -> float | None:
        number = text.removesuffix(self.suffix()).strip().replace(self.locale().decimalPoint(), ".")
        try:
            return float(number) if number.strip("-").replace(".", "", 1).isdecimal() else None
        except ValueError:
            return None

    def fixup(self, text: str) -> str:
        number = self._number_in(self._marked(text))
        if number is None or (self.decimals() == 0 and number != round(number)):
            number = self.value()  # Qt would take the mark away, and make 15 of 1,5
        return self.textFromValue(min(max(number, self.minimum()), self.maximum())) + self.suffix()

    def valueFromText(self, text: str) -> float:
        return super().valueFromText(self._marked(text))

    def textFromValue(self, value: float) -> str:
        text = super().textFromValue(value)
        point = self.locale().decimalPoint()
        whole, _, rest = text.partition(point)
        rest = rest.rstrip("0").ljust(self._fewest, "0")
        return f"{whole}{point}{rest}" if rest else whole


class MaybeField(NumberField):
    """A number from 0 up, or nothing: an empty field says "not told"."""

    _NOTHING = -1.0

    def __init__(self, most: float, decimals: int, suffix: str = "") -> None:
        super().__init__(self._NOTHING, most, decimals, suffix)
        self.setSpecialValueText(say("not told"))
        self.setValue(self._NOTHING)

    def _is_empty(self, text: str) -> bool:
        return text.removesuffix(self.suffix()).strip() in ("", self.suffix().strip(), self.specialValueText())

    def validate(self, text: str, at: int) -> tuple[QValidator.State, str, int]:
        if self._is_empty(text):
            return QValidator.State.Acceptable, text, at
        return super().validate(text, at)

    def valueFromText(self, text: str) -> float:
        return self._NOTHING if self._is_empty(text) else super().valueFromText(text)

    def show_value(self, value: float | None) -> None:
        self.setValue(self._NOTHING if value is None else value)

    def value_or_none(self) -> float | None:
        return self.value() if self.value() >= 0 else None


def name_choice(box: QComboBox, name: str) -> None:
    """Tell those who hear the window what is chosen in ``box``, which has no label of its own.

    On Linux Qt gives what is chosen for its name, so the name is its description too.
    """
    box.setAccessibleName(name)
    box.setAccessibleDescription(name)


class NarrowChoice(QComboBox):
    """A choice that wants room for its longest text, but gets by with some letters where the screen is small.

    What is cut off ends in an ellipsis.
    """

    _FEWEST, _MOST = 9, 32  # letters
    _BESIDE = 4  # pixels that the style leaves free beside the text, and does not ask room for

    def sizeHint(self) -> QSize:
        cut = self._cut(super().sizeHint(), self._MOST)
        return QSize(cut.width() + self._BESIDE, cut.height())

    def minimumSizeHint(self) -> QSize:
        return self._cut(super().minimumSizeHint(), self._FEWEST)

    def paintEvent(self, event: QPaintEvent) -> None:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        part, field = QStyle.ComplexControl.CC_ComboBox, QStyle.SubControl.SC_ComboBoxEditField
        wide = self.style().subControlRect(part, option, field, self).width() - 2
        option.currentText = self.fontMetrics().elidedText(self.currentText(), Qt.TextElideMode.ElideRight, wide)
        painter = QStylePainter(self)
        painter.drawComplexControl(part, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.end()

    def _cut(self, hint: QSize, letters: int) -> QSize:
        longest = max((self.fontMetrics().horizontalAdvance(self.itemText(i)) for i in range(self.count())), default=0)
        spare = longest - self.fontMetrics().averageCharWidth() * letters
        return QSize(hint.width() - max(spare, 0), hint.height())


class _QuietWheel(QObject):
    """Lets the wheel scroll the form; it changes a value only in the field that has the focus."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Wheel and isinstance(watched, QWidget) and not watched.hasFocus():
            event.ignore()
            return True
        return False


def line_height(widget: QWidget) -> int:
    """How tall a field of one line is, in pixels: its letters with a little air."""
    return widget.fontMetrics().height() + 10


def dress(root: QWidget) -> None:
    """Make ``root`` and the fields in it tall enough to read, and deaf to a passing wheel."""
    for widget in (root, *root.findChildren(QWidget)):
        if not isinstance(widget, _Field) or isinstance(widget.parent(), QAbstractSpinBox | QComboBox):
            continue
        widget.setMinimumHeight(line_height(widget))
        if isinstance(widget, QSpinBox | QDoubleSpinBox):
            widget.lineEdit().setTextMargins(4, 0, 0, 0)  # a sheet's padding does not reach into it
        if not isinstance(widget, QLineEdit):
            widget.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            widget.installEventFilter(_QuietWheel(widget))


def focus_in(field: QWidget) -> None:
    """Give the focus to ``field``, or to the first in it that the Tab key comes to."""
    if field.focusPolicy() is not Qt.FocusPolicy.NoFocus or field.focusProxy() is not None:
        field.setFocus()
        return
    inner = field.nextInFocusChain()
    while inner is not None and inner is not field:
        if field.isAncestorOf(inner) and _takes_tab(inner) and inner.isEnabled():
            inner.setFocus()
            return
        inner = inner.nextInFocusChain()


def _takes_tab(widget: QWidget) -> bool:
    return bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and widget.focusProxy() is None


def tab_in_order(field: QWidget, widgets: Sequence[QWidget]) -> None:
    """Let the Tab key go through ``widgets`` of ``field`` in this order, where ``field`` stands in its window."""
    before = field.previousInFocusChain()
    while before is not None and before is not field and (field.isAncestorOf(before) or not _takes_tab(before)):
        before = before.previousInFocusChain()
    is_first = before is None or before is field
    for one, following in pairwise(widgets if is_first or before is None else [before, *widgets]):
        QWidget.setTabOrder(one, following)


def name_field(text: str) -> QLineEdit:
    field = QLineEdit(text)
    field.setMaxLength(80)
    return field
