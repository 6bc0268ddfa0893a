"""One chore as a card: the round box, what, where, how, the caution, the numbers that go with it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QColor, QContextMenuEvent, QPainter, QPainterPath, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QLabel, QToolButton, QVBoxLayout

from quailsched.chores.asks import Ask
from quailsched.chores.chore import Chore
from quailsched.desktop.labels import label
from quailsched.desktop.theme import current
from quailsched.desktop.today.count_fields import CountFields
from quailsched.desktop.today.page import state_text
from quailsched.desktop.today.tick_box import TickBox
from quailsched.words import say

_STRIPE_PX, _RADIUS_PX = 6, 10
_BESIDE = 12  # pixels between a title and the place beside it
_NARROW_LETTERS = 66  # a card less wide has the place below the title


class ChoreCard(QFrame):
    """Shows a chore and asks for what is to be done with it. It is kept as long as its chore is on the page."""

    tick_asked = Signal(object)  # this card
    menu_asked = Signal(object)
    key_pressed = Signal(object, int)  # this card, Qt.Key
    step_asked = Signal(object, int)  # to the card before or after this one

    def __init__(self, chore: Chore, asks: Sequence[Ask]) -> None:
        super().__init__()
        self.chore = chore
        self.warning = ""  # the odd things that were told: ticked once more, they are recorded
        self._colour: int | None = None
        self.box = TickBox()
        self.title, self.where = label("", "strong"), label("", "source")
        self.how, self.state, self.caution = label("", "source"), label("", "state"), label("", "caution")
        self.fault = label("", "fault")
        self.more = QToolButton()
        self.more.setObjectName("more")
        self.more.setText("⋯")
        self.asks = tuple(ask.name for ask in asks)
        self.fields = CountFields(asks, chore.title) if asks else None
        self._lay_out()
        self.box.asked.connect(lambda: self.tick_asked.emit(self))
        self.box.key_pressed.connect(lambda key: self.key_pressed.emit(self, key))
        self.more.clicked.connect(lambda: self.menu_asked.emit(self))
        if self.fields is not None:
            self.fields.finished.connect(lambda: self.tick_asked.emit(self))
            self.fields.changed.connect(lambda: self.tell(""))
            self.fields.left.connect(lambda step: self.step_asked.emit(self, step))

    def _lay_out(self) -> None:
        row = QHBoxLayout(self)
        row.setContentsMargins(_STRIPE_PX + 8, 7, 8, 9)
        row.setSpacing(8)
        row.addWidget(self.box, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout()
        column.setContentsMargins(0, 3, 0, 0)
        column.setSpacing(3)
        self._head = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._head.setSpacing(_BESIDE)
        self._head.addWidget(self.title, 1)
        self._head.addWidget(self.where, 0, Qt.AlignmentFlag.AlignTop)
        self.where.setWordWrap(False)
        top = QHBoxLayout()
        top.setSpacing(4)
        top.addLayout(self._head, 1)
        top.addWidget(self.more, 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(top)
        for line in (self.state, self.how, self.caution):
            column.addWidget(line)
        if self.fields is not None:
            column.addWidget(self.fields)
        column.addWidget(self.fault)
        self.fault.hide()
        row.addLayout(column, 1)

    def show_chore(
        self, chore: Chore, asks: Sequence[Ask], today: date, colour: int | None, *, tells_caution: bool
    ) -> None:
        """``colour`` is the number of its batch in the theme. A caution that stands on a card above is not repeated."""
        if chore != self.chore:
            self.tell("")
        self.chore, self._colour = chore, colour
        is_open = chore.is_open
        self.setObjectName("chore" if is_open else "choreDone")
        _say(self.title, chore.title)
        _say(self.where, where_text(chore))
        _say(self.how, chore.how)
        _say(self.state, state_text(chore, today))
        caution = chore.caution if tells_caution and is_open else ""
        _say(self.caution, f"▲ {caution}" if caution else "")
        if self.fields is not None:
            self.fields.show_asks(asks)
            self.fields.setVisible(is_open)
            if not is_open:
                self.fields.clear()
        told = ", ".join(part for part in (chore.title, where_text(chore), state_text(chore, today)) if part)
        self.box.show_done(chore.done_on is not None, told)
        self.box.setAccessibleDescription(" ".join(part for part in (chore.how, chore.caution) if part))
        self.box.setToolTip(say("Tick it. Keys: P put it off, L leave it out, G give it to somebody"))
        self.more.setAccessibleName(say("More about {chore}", chore=chore.title))
        self.more.setToolTip(say("Put it off, leave it out, give it to somebody"))
        self.title.setEnabled(is_open)
        self.setAccessibleName(chore.title)
        self.update()

    def answers(self) -> dict[str, int]:
        return self.fields.answers() if self.fields is not None else {}

    def tell(self, text: str, *, is_warning: bool = False) -> None:
        """Say why it cannot be done so, or ask about something odd; "" takes it away."""
        self.warning = text if is_warning else ""
        self.fault.setObjectName("strong" if is_warning else "fault")
        self.fault.style().unpolish(self.fault)
        self.fault.style().polish(self.fault)
        _say(self.fault, text)
        self.box.setAccessibleDescription(text)

    def take_focus(self) -> None:
        self.box.setFocus(Qt.FocusReason.TabFocusReason)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        self.menu_asked.emit(self)
        event.accept()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        is_narrow = self.width() < self.fontMetrics().averageCharWidth() * _NARROW_LETTERS
        way = QBoxLayout.Direction.TopToBottom if is_narrow else QBoxLayout.Direction.LeftToRight
        if self._head.direction() is not way:
            self._head.setDirection(way)
            self._head.setSpacing(2 if is_narrow else _BESIDE)
            self._head.setAlignment(self.where, Qt.AlignmentFlag.AlignLeft if is_narrow else Qt.AlignmentFlag.AlignTop)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """The card with the colour of its batch along its left side."""
        theme, painter = current(), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
        shape = QPainterPath()
        shape.addRoundedRect(box, _RADIUS_PX, _RADIUS_PX)
        painter.fillPath(shape, QColor(theme.card if self.chore.is_open else theme.sunk))
        painter.setClipPath(shape)
        stripe = theme.soft if self._colour is None else theme.batch(self._colour).fill
        painter.setOpacity(1.0 if self.chore.is_open else theme.faded)
        painter.fillRect(QRectF(0, 0, _STRIPE_PX, self.height()), QColor(stripe))
        painter.setOpacity(1.0)
        painter.setClipping(False)
        painter.setPen(QPen(QColor(theme.line), 1))
        painter.drawPath(shape)
        painter.end()


def where_text(chore: Chore) -> str:
    """ "Hatching tray · Clover"."""
    return " · ".join(part for part in (chore.place, chore.batch) if part)


def _say(made: QLabel, text: str) -> None:
    made.setText(text)
    made.setVisible(bool(text))
