"""Widgets that get by with less room, for small screens and large letters. Labels that do so: ``labels.ShortLabel``."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QHelpEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QStatusBar,
    QToolTip,
    QVBoxLayout,
    QWidget,
)

from quailsched.desktop.icons import icon, size_beside
from quailsched.desktop.labels import as_it_is, label
from quailsched.desktop.theme import current

_BESIDE_PX = 4  # between an icon and words


class ShortButton(QPushButton):
    """A button that can do without its words; its tip begins with them then, and a screen reader reads them."""

    def __init__(self, text: str = "", picture: str = "", ink: str = "ink") -> None:
        """``picture``: an icon to be shown in place of the words, in the ``ink`` of that name of the theme; without
        one, the button has an icon of its own."""
        super().__init__(text)
        self.is_short = False
        self.short_text = ""  # words that are always left
        self._picture, self.ink = picture, ink
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)

    @property
    def words_px(self) -> int:
        """The room that is won without the words."""
        advance = self.fontMetrics().horizontalAdvance
        won = advance(self.text().replace("&", "")) - advance(self.short_text)
        if not self.short_text:
            won += _BESIDE_PX
        return won - (size_beside(self.fontMetrics()) + _BESIDE_PX if self._picture else 0)

    def shorten(self, is_short: bool) -> None:
        self.is_short = is_short
        self.updateGeometry()
        self.update()

    @property
    def lacks_words(self) -> bool:
        """Whether its words are not shown; they never are in part."""
        return self.is_short or self.width() < super().sizeHint().width()

    def sizeHint(self) -> QSize:
        return self.minimumSizeHint() if self.is_short else super().sizeHint()

    def minimumSizeHint(self) -> QSize:
        whole = super().sizeHint()
        return QSize(whole.width() - self.words_px, whole.height())

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and self.lacks_words and isinstance(event, QHelpEvent):
            words, tip = self.text().replace("&", ""), self.toolTip()
            QToolTip.showText(event.globalPos(), tip if words in tip else as_it_is(f"{words}: {tip}"), self)
            return True
        return super().event(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self.lacks_words:
            super().paintEvent(event)
            return
        from PySide6.QtWidgets import QStyle, QStyleOptionButton, QStylePainter  # their names alone take 5 ms

        option = QStyleOptionButton()
        self.initStyleOption(option)
        option.text = self.short_text
        if self._picture:
            size_px = size_beside(self.fontMetrics())
            option.iconSize = QSize(size_px, size_px)
            option.icon = icon(self._picture, size_px, ink=getattr(current(), self.ink))
        painter = QStylePainter(self)
        painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
        painter.end()


def shorten(buttons: Sequence[ShortButton], spare_px: int) -> None:
    """Leave out the words of those ``buttons`` that have no room for them, the last first.

    ``spare_px`` is what is over beside all that stands there when no button has words.
    """
    for button in buttons:
        button.shorten(spare_px < button.words_px)
        spare_px -= button.words_px


class Beside(QWidget):
    """Widgets side by side; one below the other where that is too wide. They share all the room if ``is_spread``."""

    def __init__(self, *parts: QWidget, is_spread: bool = True, from_px: int = 0) -> None:
        """``from_px``: how much room they need side by side, if it is not what each of them would like to have."""
        super().__init__()
        self._parts, self._from_px = parts, from_px
        self.row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self.row.setContentsMargins(0, 0, 0, 0)
        for part in parts:
            self.row.addWidget(part)
        if not is_spread:
            self.row.addStretch()

    def minimumSizeHint(self) -> QSize:
        return QSize(max(part.minimumSizeHint().width() for part in self._parts), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        gaps = self.row.spacing() * (len(self._parts) - 1)
        wanted = self._from_px or sum(part.sizeHint().width() for part in self._parts) + gaps
        is_wide = event.size().width() >= wanted
        self.row.setDirection(QBoxLayout.Direction.LeftToRight if is_wide else QBoxLayout.Direction.TopToBottom)


def together(*parts: QWidget) -> QWidget:
    """Widgets that stay side by side, as one."""
    made = QWidget()
    row = QHBoxLayout(made)
    row.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        row.addWidget(part)
    return made


def scrolling(column: QVBoxLayout) -> QScrollArea:
    """``column`` in an area that scrolls down, never to the side."""
    page, area = QWidget(), QScrollArea()
    page.setObjectName("panel")
    page.setLayout(column)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setWidget(page)
    return area


class FewLines(QScrollArea):
    """A text that takes at most ``most`` lines; the others come by scrolling."""

    _is_low = False

    def __init__(self, most: int) -> None:
        super().__init__()
        self._most = most
        self._tall = 0
        self._label = label("", "soft")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(self._label)
        self._label.setAutoFillBackground(False)
        self._fit()

    def text(self) -> str:
        return self._label.text()

    def setText(self, text: str) -> None:
        self._label.setText(text)
        self.verticalScrollBar().setValue(0)
        self._fit()

    def show_low(self, is_low: bool) -> None:
        """One line is enough where there is little room from top to bottom."""
        if is_low != self._is_low:
            self._is_low = is_low
            self._fit()

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), self._tall)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        line = self.fontMetrics().lineSpacing()
        wanted = self._label.heightForWidth(self.width()) if self.text() else 0
        self._tall = min(wanted, line if self._is_low else line * self._most)
        self.setMinimumHeight(min(self._tall, line))
        self.setMaximumHeight(self._tall)
        self.updateGeometry()


class StatusLine(QStatusBar):
    """The line at the bottom; a sentence that is too long ends in an ellipsis, and the tip tells the whole."""

    _SIDE_PX = 6

    def __init__(self) -> None:
        super().__init__()
        self.setSizeGripEnabled(False)

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            QToolTip.showText(event.globalPos(), as_it_is(self.currentMessage()), self)
            return True
        return super().event(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        room = self.rect().adjusted(self._SIDE_PX, 0, -self._SIDE_PX, 0)
        text = self.fontMetrics().elidedText(self.currentMessage(), Qt.TextElideMode.ElideRight, room.width())
        painter = QPainter(self)
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
        painter.end()
