"""Choosing the file of a photo."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QWidget

from quailsched.desktop.buttons import button
from quailsched.desktop.labels import ShortLabel, plain
from quailsched.words import say


class PhotoField(QWidget):
    """A button, and the name of the file that was chosen. ``source`` is None until one is."""

    def __init__(self, name: str) -> None:
        """``name`` is the photo that is there already, "" for none."""
        super().__init__()
        self.source: Path | None = None
        self.choose = button(say("Choose a file…"), self._ask)
        self._name = ShortLabel(8)
        plain(self._name)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.choose)
        row.addWidget(self._name, 1)
        self.setFocusProxy(self.choose)
        self._tell(name)

    def take(self, source: Path) -> None:
        """Take ``source`` as the file that was chosen."""
        self.source = source
        self._tell(source.name)

    def _ask(self) -> None:
        kinds = say("Pictures (*.jpg *.jpeg *.png *.heic *.webp *.gif);;All files (*)")
        name, _ = QFileDialog.getOpenFileName(self, say("A photo"), "", kinds)
        if name:
            self.take(Path(name))

    def _tell(self, name: str) -> None:
        self._name.setText(name or say("none yet"))
        self.choose.setAccessibleDescription(self._name.text())
