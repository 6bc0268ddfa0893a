"""Buttons as the panels and forms have them."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QPushButton

from quailsched.desktop.labels import on_button


def button(text: str, action: Callable[[], object]) -> QPushButton:
    """A plain button that is not pressed by Return in another field. ``text`` may hold any name."""
    made = QPushButton(on_button(text))
    made.setAutoDefault(False)
    made.clicked.connect(lambda: action())
    return made
