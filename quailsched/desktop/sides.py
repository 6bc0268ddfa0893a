"""The season and what is told about it, side by side, or one in place of the other where a narrow view has no more
room. What stands in the two is put together in ``season_view``."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QWidget

_NARROW_LETTERS = 100  # of a line: in fewer, the lanes come first
_LANES_LETTERS = 40  # what lanes need beside the side
_SIDE_LETTERS = 46


class Sides(QSplitter):
    """``main`` and, to its right, ``side``. A narrow view begins with ``main`` alone."""

    def __init__(self, main: QWidget, side: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self._main, self._side = main, side
        self._is_narrow = False
        self._shows_side = {False: True, True: False}  # in a wide and in a narrow view
        self._wide_state: QByteArray | None = None  # while the view is narrow
        for part in (main, side):
            self.addWidget(part)
        self.setStretchFactor(0, 1)
        self.setCollapsible(0, False)
        self.setSizes([1000, self.fontMetrics().averageCharWidth() * _SIDE_LETTERS])

    def saveState(self) -> QByteArray:
        """How a wide view is divided."""
        return super().saveState() if self._wide_state is None else self._wide_state

    def minimumSizeHint(self) -> QSize:
        """As narrow as it can be: on the way there one of the two goes."""
        one, other = (_least(part) for part in (self._main, self._side))
        return QSize(max(one.width(), other.width()), max(one.height(), other.height()))

    @property
    def shows_side(self) -> bool:
        return self._shows_side[self._is_narrow]

    @property
    def shows_main(self) -> bool:
        return not self._main.isHidden()

    def show_side(self, is_shown: bool) -> None:
        """Show the side, or the season alone; this holds for views as narrow or as wide as this one."""
        self._shows_side[self._is_narrow] = is_shown
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        is_narrow = event.size().width() < self.fontMetrics().averageCharWidth() * _NARROW_LETTERS
        if is_narrow and not self._is_narrow:
            self._wide_state = super().saveState()
        self._is_narrow = is_narrow
        self._arrange()
        if not is_narrow and self._wide_state is not None:
            self.restoreState(self._wide_state)
            self._wide_state = None

    def _arrange(self) -> None:
        beside = self.fontMetrics().averageCharWidth() * _LANES_LETTERS + self.handleWidth()
        has_room = self.width() >= beside + _least(self._side).width()
        self._side.setVisible(self.shows_side)
        self._main.setVisible(has_room or not self.shows_side)
        if self._is_narrow:
            self.setSizes([1000, 1])


def _least(part: QWidget) -> QSize:
    return part.minimumSizeHint().expandedTo(part.minimumSize())
