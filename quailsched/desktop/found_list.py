"""The list below the field for finding: what may be meant, a row each. It never has the focus; the field moves it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPoint, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QAbstractItemView, QListView, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from quailsched.desktop.finding import Match
from quailsched.desktop.theme import current

_MORE = Qt.ItemDataRole.UserRole + 1
_SIDE_PX, _GAP_PX, _FRAME_PX = 8, 18, 12
_Index = QModelIndex | QPersistentModelIndex


class _Row(QStyledItemDelegate):
    """What it is at the left, and what tells it from others, softly, at the right."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        theme = current()
        rect: QRect = option.rect
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if index == self._view().currentIndex():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(theme.rail_on))
            painter.drawRoundedRect(QRectF(rect).adjusted(1, 0, -1, 0), 6, 6)
        inner, metrics = rect.adjusted(_SIDE_PX, 0, -_SIDE_PX, 0), painter.fontMetrics()
        more = str(index.data(_MORE) or "")
        room = inner.width() - (metrics.horizontalAdvance(more) + _GAP_PX if more else 0)
        text = metrics.elidedText(str(index.data()), Qt.TextElideMode.ElideMiddle, room)
        level = Qt.AlignmentFlag.AlignVCenter
        painter.setPen(QColor(theme.ink if index.flags() & Qt.ItemFlag.ItemIsEnabled else theme.soft))
        painter.drawText(inner, level | Qt.AlignmentFlag.AlignLeft, text)
        painter.setPen(QColor(theme.soft))
        painter.drawText(inner, level | Qt.AlignmentFlag.AlignRight, more)
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        metrics = self._view().fontMetrics()
        wide = [metrics.horizontalAdvance(text) for text in (str(index.data()), str(index.data(_MORE) or "")) if text]
        return QSize(sum(wide) + _GAP_PX * (len(wide) - 1) + 2 * _SIDE_PX, round(metrics.height() * 1.6))

    def _view(self) -> QAbstractItemView:
        view = self.parent()
        assert isinstance(view, QAbstractItemView)
        return view


class FoundList(QListView):
    """A child of the window, not a window of its own: the keys stay with the field on every desktop."""

    taken = Signal(int)  # the number of the match

    def __init__(self, field: QWidget) -> None:
        super().__init__(field.window())
        self._field = field
        self.setObjectName("card")
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setViewportMargins(4, 4, 4, 4)
        self.setMouseTracking(True)
        self.setItemDelegate(_Row(self))
        self._rows = QStandardItemModel(self)
        self.setModel(self._rows)
        self.entered.connect(self._point_at)
        self.clicked.connect(lambda index: self.taken.emit(index.row()))
        self.hide()

    def show_matches(self, found: Sequence[Match], hint: str) -> None:
        """Show them below the field, the first one chosen; ``hint`` where there are none."""
        self._rows.clear()
        for match in found:
            self._rows.appendRow(_item(match.text, match.more))
        if not found:
            item = _item(hint, "")
            item.setFlags(Qt.ItemFlag.NoItemFlags)
            self._rows.appendRow(item)
        self.setCurrentIndex(self._rows.index(0, 0) if found else QModelIndex())
        self.lie_below()
        self.show()
        self.raise_()

    def lie_below(self) -> None:
        """Take the place below the field, as wide as the rows are and the window lets it be."""
        window = self._field.window()
        corner = self._field.mapTo(window, QPoint(0, self._field.height() + 2))
        wide = max(self._field.width(), self.sizeHintForColumn(0) + _FRAME_PX)
        tall = self._rows.rowCount() * self.sizeHintForRow(0) + _FRAME_PX
        left = max(min(corner.x(), window.width() - wide - 4), 4)
        self.setGeometry(left, corner.y(), min(wide, window.width() - 8), min(tall, window.height() - corner.y() - 4))

    def step(self, rows: int) -> None:
        """Choose a row further down, or up; round the end to the first."""
        if self.row is not None:
            self.setCurrentIndex(self._rows.index((self.row + rows) % self._rows.rowCount(), 0))

    @property
    def row(self) -> int | None:
        """The number of the match that is chosen; None if there are none."""
        index = self.currentIndex()
        return index.row() if index.isValid() else None

    def _point_at(self, index: QModelIndex) -> None:
        if index.flags() & Qt.ItemFlag.ItemIsEnabled:
            self.setCurrentIndex(index)


def _item(text: str, more: str) -> QStandardItem:
    item = QStandardItem(text)
    item.setData(more, _MORE)
    item.setData(f"{text}, {more}" if more else text, Qt.ItemDataRole.AccessibleTextRole)
    return item
