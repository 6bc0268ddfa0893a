"""The round box in which a chore is ticked."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QCheckBox

from quailsched.desktop.theme import current

_RING_PX = 4  # around the box, for the mark of the focus


class TickBox(QCheckBox):
    """Asks to be ticked or not; whether it is, follows the farm (``show_done``), never the click alone."""

    asked = Signal()
    key_pressed = Signal(int)  # a key that is not the box's own: Qt.Key

    def __init__(self) -> None:
        super().__init__()
        self._is_done = False
        self.clicked.connect(self._ask)

    def show_done(self, is_done: bool, title: str) -> None:
        """What is said of it is said by the name, for who hears it."""
        self._is_done = is_done
        self.setChecked(is_done)
        self.setAccessibleName(title)

    def _ask(self) -> None:
        self.setChecked(self._is_done)
        self.asked.emit()

    @property
    def _side(self) -> int:
        return self.fontMetrics().height() + 4

    def sizeHint(self) -> QSize:
        return QSize(self._side + 2 * _RING_PX, self._side + 2 * _RING_PX)

    minimumSizeHint = sizeHint

    def hitButton(self, _point: object) -> bool:
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space or event.modifiers() & ~Qt.KeyboardModifier.ShiftModifier:
            super().keyPressEvent(event)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            self.key_pressed.emit(event.key())

    def paintEvent(self, _event: QPaintEvent) -> None:
        theme, painter = current(), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        side = float(self._side)
        box = QRectF((self.width() - side) / 2, (self.height() - side) / 2, side, side).adjusted(1, 1, -1, -1)
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.good), 2))
            painter.drawEllipse(box.adjusted(-3, -3, 3, 3))
        is_under = self.underMouse() and not self._is_done
        painter.setPen(QPen(QColor(theme.good if self._is_done or is_under else theme.edge), 1.6))
        painter.setBrush(QColor(theme.good if self._is_done else theme.good_tint if is_under else theme.card))
        painter.drawEllipse(box)
        if self._is_done or is_under:
            pen = QPen(QColor(theme.on_good if self._is_done else theme.good), side / 10)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            painter.setPen(pen)
            at = ((0.29, 0.53), (0.44, 0.68), (0.72, 0.35))
            points = [QPointF(box.x() + x * box.width(), box.y() + y * box.height()) for x, y in at]
            painter.drawPolyline(QPolygonF(points))
        painter.end()
