"""Ways out of a clash as cards: hovering one previews it, its button does it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Signal
from PySide6.QtGui import QCursor, QEnterEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from quailsched.desktop.forms.fields import tab_in_order
from quailsched.desktop.labels import label
from quailsched.planner.ways_out import Looked, WayOut
from quailsched.report.ways_out import none_text
from quailsched.words import say


class WayCard(QFrame):
    """One way out. Under the pointer, or with the focus on its button, it asks to be previewed."""

    entered = Signal(object)  # WayOut
    left = Signal()
    chosen = Signal(object)  # WayOut

    def __init__(self, way: WayOut, is_best: bool) -> None:
        super().__init__()
        self.way = way
        self._pointer = QCursor.pos()  # a card that comes up under a resting pointer was not pointed at
        self.setObjectName("best" if is_best else "quiet")
        row = QHBoxLayout(self)
        row.setContentsMargins(10, 7, 8, 7)
        row.addWidget(label(way.sentence), 1)
        self.button = QPushButton(say("Do it"))
        self.button.setObjectName("main" if is_best else "")
        self.button.setAutoDefault(False)
        self.button.setAccessibleName(say("Do it: {sentence}", sentence=way.sentence))
        self.button.clicked.connect(lambda: self.chosen.emit(self.way))
        self.button.installEventFilter(self)
        row.addWidget(self.button)

    def enterEvent(self, event: QEnterEvent) -> None:
        if event.globalPosition().toPoint() != self._pointer:
            self.entered.emit(self.way)

    def leaveEvent(self, event: QEvent) -> None:
        self.left.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.FocusIn:
            self.entered.emit(self.way)
        elif event.type() is QEvent.Type.FocusOut:
            self.left.emit()
        return super().eventFilter(watched, event)


class WayCards(QWidget):
    """The cards of one clash; while they are being worked out, a word that says so."""

    entered = Signal(object)
    left = Signal()
    chosen = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 4, 0, 0)
        self._column.addWidget(label(say("Ways out, each re-checked"), "strong"))
        self._waiting = label(say("Trying small changes …"), "soft")
        self._column.addWidget(self._waiting)

    def show_ways(self, looked: Looked) -> None:
        self._waiting.setVisible(not looked.ways)
        self._waiting.setText("" if looked.ways else none_text(looked))
        for number, way in enumerate(looked.ways):
            card = WayCard(way, number == 0)
            card.entered.connect(self.entered)
            card.left.connect(self.left)
            card.chosen.connect(self.chosen)
            self._column.addWidget(card)
        # They come after the buttons below them were made, but the Tab key goes from top to bottom.
        tab_in_order(self, [card.button for card in self.findChildren(WayCard)])
