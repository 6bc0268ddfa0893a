"""A field from which several can be chosen: a button that says what is, and a menu with a tick at each."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QAction, QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QPushButton, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import on_button
from quailsched.farm.units import names_text
from quailsched.words import say


class SeveralField(QWidget):
    """Ids that are chosen; those that are no choice any more stay chosen until their tick is taken away."""

    changed = Signal()

    def __init__(self, chosen: Sequence[str]) -> None:
        super().__init__()
        self._chosen = list(chosen)
        self._choices: list[tuple[str, str]] = []
        self._names: Mapping[str, str] = {}
        self.open: QPushButton = button("", lambda: None)
        self.menu = QMenu(self.open)
        self.menu.installEventFilter(self)
        self.open.setMenu(self.menu)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.open)
        row.addStretch()
        self.setFocusProxy(self.open)

    def show_choices(self, choices: Sequence[tuple[str, str]], names: Mapping[str, str]) -> None:
        """(words, id) of what can be chosen; ``names`` of what may be chosen already."""
        self._names = names
        ids = {id_ for _, id_ in choices}
        kept = [(names.get(id_, say("a batch that is gone")), id_) for id_ in self._chosen if id_ not in ids]
        self._choices = [*choices, *kept]
        self.menu.clear()
        for words, id_ in self._choices:
            action = QAction(on_button(words), self.menu)
            action.setCheckable(True)
            action.setChecked(id_ in self._chosen)
            action.setData(id_)
            action.toggled.connect(self._take)
            self.menu.addAction(action)
        self._tell()

    def has_choices(self) -> bool:
        return bool(self._choices)

    def chosen(self) -> tuple[str, ...]:
        return tuple(self._chosen)

    def _take(self) -> None:
        self._chosen = [str(action.data()) for action in self.menu.actions() if action.isChecked()]
        self._tell()
        self.changed.emit()

    def _tell(self) -> None:
        words = {id_: words for words, id_ in self._choices}
        text = names_text([words[id_] for id_ in self._chosen if id_ in words])
        self.open.setText(on_button(text) or say("not told"))
        self.open.setAccessibleName(say("Eggs from: {names}", names=text or say("not told")))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Space and a click tick without closing the menu, so that several can be ticked in one go."""
        action = self.menu.activeAction()
        if watched is self.menu and action is not None:
            is_space = isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Space
            if event.type() is QEvent.Type.MouseButtonRelease or (is_space and event.type() is QEvent.Type.KeyPress):
                action.toggle()
                return True
        return super().eventFilter(watched, event)
