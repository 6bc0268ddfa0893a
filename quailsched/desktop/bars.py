"""The bar along the top and the rail of views along the left."""

from __future__ import annotations

from collections.abc import Callable, Collection
from functools import partial

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QHBoxLayout,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.icons import ALL_RATIOS, keep_room, put_on, size_beside
from quailsched.desktop.labels import ShortLabel, as_it_is
from quailsched.desktop.narrow import ShortButton, shorten
from quailsched.farm.units import count_text
from quailsched.words import number_text, say

_LETTERS_TO_TYPE = 16  # room for a name or a day in the field
_NARROW_LETTERS = 110  # a window of fewer has no room for words below the icons of the rail


_ICON_LINES, _LOW_ICON_LINES = 1.6, 1.2  # how tall icons of the rail are, in lines of text
_AROUND_ICON_PX, _LOW_GAP_PX = 19, 2  # what a button of the rail has around its icon, and between two if it is low


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
        self.farm_name = ShortLabel(9)
        font = self.farm_name.font()
        font.setPointSizeF(font.pointSizeF() * 1.25)
        font.setBold(True)
        self.farm_name.setFont(font)
        self.season_name = ShortLabel(0)
        self.season_name.setObjectName("soft")
        self.undo, self.redo = ShortButton(say("Undo")), ShortButton(say("Redo"))
        self.calendar = ShortButton(say("Calendar file"))
        self.calendar.setToolTip(say("Write every chore into a file that phones and calendars read"))
        self.clashes = ShortButton("", "next-clash", "on_clash")
        for button, name, action in (
            (self.undo, "flat", undo),
            (self.redo, "flat", redo),
            (self.calendar, "", calendar),
            (self.clashes, "clashes", clashes),
        ):
            button.setObjectName(name)
            button.clicked.connect(partial(_do, action))
        row.addWidget(self.farm_name)
        row.addWidget(self.season_name)
        row.addSpacing(16)
        row.addWidget(self.undo)
        row.addWidget(self.redo)
        self._row = row
        self._with_icons = {self.undo: "undo", self.redo: "redo", self.calendar: "calendar"}
        row.addStretch(1)
        row.addWidget(self.calendar)
        row.addWidget(self.clashes)
        for button in self._with_icons:
            keep_room(button)

    def put_in(self, field: QWidget) -> None:
        """Let ``field`` stand after undo and redo."""
        self._row.insertWidget(self._row.indexOf(self.redo) + 1, field, 3)

    def dress(self, ratios: Collection[float] = ALL_RATIOS) -> None:
        """Take the icons in the ink of the theme, sharp on screens of ``ratios``."""
        for button, name in self._with_icons.items():
            put_on(button, name, ratios=ratios)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """A field to type in comes before the words of buttons."""
        least = self._row.minimumSize().width() + self.fontMetrics().averageCharWidth() * _LETTERS_TO_TYPE
        shorten((self.clashes, self.calendar, self.undo, self.redo), self.width() - least)

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
        if self.clashes.text() != text:
            self.clashes.setText(text)
            self.clashes.short_text = number_text(count or accepted)
            self.clashes.ink = "on_clash" if count else "ink"
            self._fit()
        self.clashes.setToolTip(
            say("{tip}; beside these, {lived_with}", tip=tip, lived_with=lived_with) if count and accepted else tip
        )
        name = "clashes" if count else "calm"
        if self.clashes.objectName() != name:  # to dress it anew takes longer than a frame of a drag has
            self.clashes.setObjectName(name)
            self.clashes.style().unpolish(self.clashes)
            self.clashes.style().polish(self.clashes)


def _do(action: Callable[[], object], _checked: bool = False) -> None:
    """Qt passes whether a button is checked; our actions take nothing."""
    action()


class Rail(QWidget):
    """The views; one is on."""

    chosen = Signal(int)
    details_asked = Signal()  # to be shown, or to go
    won_px = 0  # how much narrower it would be without words

    def __init__(self, views: list[tuple[str, str, str]], parent: QWidget | None = None) -> None:
        """``views``: icon, name and a sentence of each."""
        super().__init__(parent)
        self.setObjectName("rail")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._column = column = QVBoxLayout(self)
        self._group = QButtonGroup(self)
        self._icons: list[tuple[QToolButton, str]] = []
        self._words = [(name, tip) for _, name, tip in views]
        self._widest = max(self.fontMetrics().horizontalAdvance(name) for name, _ in self._words)
        for number, (picture, name, _) in enumerate(views):
            button = QToolButton()
            button.setObjectName("view")
            button.setText(name)
            button.setCheckable(True)
            self._group.addButton(button, number)
            self._icons.append((button, picture))
            column.addWidget(button)
        column.addStretch()
        self._details = QToolButton()
        self._details.setObjectName("view")
        self._details.setText(say("Details"))
        self._details.setToolTip(say("Details: what is picked, or all clashes ahead (F9)"))
        self._details.clicked.connect(lambda: self.details_asked.emit())
        column.addWidget(self._details)
        self._is_narrow = False
        self._group.idClicked.connect(self.chosen)
        self._lines = _ICON_LINES
        self._is_dressed = False
        self._keep_room()
        self.show_short(False, False)

    def show_short(self, is_narrow: bool, is_low: bool) -> None:
        """Icons alone where there is no room for words below them. A narrow window has the details on a button."""
        is_short = is_narrow or is_low
        self._is_narrow = is_narrow
        sides = _LOW_GAP_PX if is_low else 8
        self._column.setContentsMargins(7, sides, 7, sides)
        self._column.setSpacing(_LOW_GAP_PX if is_low else 6)
        narrow_px = size_beside(self.fontMetrics(), _ICON_LINES) + 9  # low or not, it is as wide
        style = Qt.ToolButtonStyle
        for (button, _), (name, tip) in zip(self._icons, self._words, strict=True):
            button.setToolButtonStyle(style.ToolButtonIconOnly if is_short else style.ToolButtonTextUnderIcon)
            button.setMinimumWidth(narrow_px if is_short else round(self._widest * 1.2) + 18)
            button.setToolTip(f"{name}: {tip}" if is_short else tip)
        self.won_px = round(self._widest * 1.2) if not is_short else 0
        self.has_words = not is_short
        if self._lines != (lines := _LOW_ICON_LINES if is_low else _ICON_LINES):
            self._lines = lines
            self.dress() if self._is_dressed else self._keep_room()
        self._offer_details()

    def minimumSizeHint(self) -> QSize:
        """As low as it gets with icons alone, also while it has words: they go when a window gets low."""
        number = len(self._icons) + self._is_narrow
        each = size_beside(self.fontMetrics(), _LOW_ICON_LINES) + _AROUND_ICON_PX
        return QSize(super().minimumSizeHint().width(), number * (each + _LOW_GAP_PX) + _LOW_GAP_PX)

    def _offer_details(self) -> None:
        """A narrow season has no room for the details beside it, and a button that shows them."""
        self._details.setVisible(self._is_narrow and self._group.checkedId() == 0)

    def dress(self, ratios: Collection[float] = ALL_RATIOS) -> None:
        """Take the icons in the ink of the theme, sharp on screens of ``ratios``."""
        self._is_dressed = True
        for button, picture in self._icons:
            put_on(button, picture, self._lines, ratios)
        put_on(self._details, "details", self._lines, ratios)

    def _keep_room(self) -> None:
        for button in (*(button for button, _ in self._icons), self._details):
            keep_room(button, self._lines)

    def show_chosen(self, number: int) -> None:
        """The Tab key comes to the view that is on; from there arrows go to the others."""
        self._group.button(number).setChecked(True)
        for button in self._group.buttons():
            is_on = button is self._group.button(number)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus if is_on else Qt.FocusPolicy.ClickFocus)
        self._offer_details()


class Body(QWidget):
    """What the window is filled with: the top bar, and below it the rail beside ``stage``."""

    def __init__(self, top: TopBar, rail: Rail, stage: QWidget) -> None:
        super().__init__()
        self._top, self._rail = top, rail
        self._shown_for = (False, False)  # narrow, low
        self._tall_px = 0  # what the bars take with words
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(top)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(rail)
        row.addWidget(stage, 1)
        column.addLayout(row, 1)

    def minimumSizeHint(self) -> QSize:
        """As small as it can be: the rail shortens itself on the way there."""
        hint = super().minimumSizeHint()
        return QSize(hint.width() - self._rail.won_px, hint.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._rail.has_words:
            self._tall_px = self._top.sizeHint().height() + self._rail.sizeHint().height()
        is_narrow = event.size().width() < self.fontMetrics().averageCharWidth() * _NARROW_LETTERS
        wanted = (is_narrow, event.size().height() < self._tall_px)
        if wanted != self._shown_for:
            self._shown_for = wanted
            self._rail.show_short(*wanted)
