"""The bar along the top and the rail of views along the left."""

from __future__ import annotations

from collections.abc import Callable, Collection

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QHBoxLayout,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.icons import ALL_RATIOS, put_on, ratios_there_are
from quailsched.desktop.labels import ShortLabel, as_it_is
from quailsched.farm.units import count_text
from quailsched.words import say


class TopBar(QWidget):
    """Farm and season, undo and redo, the calendar file, and how many clashes are ahead."""

    def __init__(
        self,
        undo: Callable[[], object],
        redo: Callable[[], object],
        calendar: Callable[[], object],
        clashes: Callable[[], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setObjectName("topBar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = QHBoxLayout(self)
        row.setContentsMargins(18, 3, 18, 3)
        row.setSpacing(8)
        self.farm_name = ShortLabel(12)
        font = self.farm_name.font()
        font.setPointSizeF(font.pointSizeF() * 1.25)
        font.setBold(True)
        self.farm_name.setFont(font)
        self.season_name = ShortLabel(0)
        self.season_name.setObjectName("soft")
        self.undo = self._button(say("Undo"), "flat", undo)
        self.redo = self._button(say("Redo"), "flat", redo)
        self.calendar = self._button(say("Calendar file"), "", calendar)
        self.calendar.setToolTip(say("Write every chore into a file that phones and calendars read"))
        self.clashes = self._button("", "clashes", clashes)
        row.addWidget(self.farm_name)
        row.addWidget(self.season_name)
        row.addSpacing(16)
        row.addWidget(self.undo)
        row.addWidget(self.redo)
        self._row = row
        row.addStretch(1)
        row.addWidget(self.calendar)
        row.addWidget(self.clashes)
        self.dress(ratios_there_are())

    def put_in(self, field: QWidget) -> None:
        """Let ``field`` stand after undo and redo."""
        self._row.insertWidget(self._row.indexOf(self.redo) + 1, field, 3)

    def _button(self, text: str, name: str, action: Callable[[], object]) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        button.clicked.connect(lambda: action())
        return button

    def dress(self, ratios: Collection[float] = ALL_RATIOS) -> None:
        """Take the icons in the ink of the theme, sharp on screens of ``ratios``."""
        for button, name in ((self.undo, "undo"), (self.redo, "redo"), (self.calendar, "calendar")):
            put_on(button, name, ratios=ratios)

    def show_steps(self, undo: str | None, redo: str | None) -> None:
        """What Undo and Redo would do; None where there is nothing."""
        nothing = say("Nothing to undo"), say("Nothing to redo")
        for button, none, label in ((self.undo, nothing[0], undo), (self.redo, nothing[1], redo)):
            button.setEnabled(label is not None)
            button.setToolTip(as_it_is(f"{button.text()}: {label}") if label else none)

    def show_clashes(self, count: int, accepted: int) -> None:
        """``count`` clashes that are open, and ``accepted`` ones, which do not count as long as they do not grow."""
        lived_with = count_text(accepted, "accepted clash", "accepted clashes")
        if count:
            text, tip = (
                say("{clashes} ahead", clashes=count_text(count, "clash", "clashes")),
                say("Go to the next clash (F3)"),
            )
        elif accepted:
            text, tip = say("{clashes} ahead", clashes=lived_with), say("Everything else fits. Shows what is accepted")
        else:
            text, tip = say("no clash ahead"), say("Everything fits")
        self.clashes.setText(text)
        self.clashes.setToolTip(
            say("{tip}; beside these, {lived_with}", tip=tip, lived_with=lived_with) if count and accepted else tip
        )
        name = "clashes" if count else "calm"
        if self.clashes.objectName() != name:  # to dress it anew takes longer than a frame of a drag has
            self.clashes.setObjectName(name)
            self.clashes.style().unpolish(self.clashes)
            self.clashes.style().polish(self.clashes)


class Rail(QWidget):
    """The views; one is on."""

    chosen = Signal(int)

    def __init__(self, views: list[tuple[str, str, str]], parent: QWidget | None = None) -> None:
        """``views``: icon, name and a sentence of each."""
        super().__init__(parent)
        self.setObjectName("rail")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        column = QVBoxLayout(self)
        column.setContentsMargins(7, 8, 7, 8)
        column.setSpacing(6)
        self._group = QButtonGroup(self)
        self._icons: list[tuple[QToolButton, str]] = []
        wide = max(self.fontMetrics().horizontalAdvance(name) for _, name, _ in views)
        for number, (picture, name, tip) in enumerate(views):
            button = QToolButton()
            button.setObjectName("view")
            button.setText(name)
            button.setToolTip(tip)
            button.setCheckable(True)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
            button.setMinimumWidth(round(wide * 1.2) + 18)
            self._group.addButton(button, number)
            self._icons.append((button, picture))
            column.addWidget(button)
        column.addStretch()
        self._group.idClicked.connect(self.chosen)
        self.dress(ratios_there_are())

    def dress(self, ratios: Collection[float] = ALL_RATIOS) -> None:
        """Take the icons in the ink of the theme, sharp on screens of ``ratios``."""
        for button, picture in self._icons:
            put_on(button, picture, 1.6, ratios)

    def show_chosen(self, number: int) -> None:
        """The Tab key comes to the view that is on; from there arrows go to the others."""
        self._group.button(number).setChecked(True)
        for button in self._group.buttons():
            is_on = button is self._group.button(number)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus if is_on else Qt.FocusPolicy.ClickFocus)
