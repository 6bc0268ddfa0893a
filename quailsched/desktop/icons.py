"""Our own icons, drawn in the inks of the theme that is shown. Whoever shows one asks again when the theme changes."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QGuiApplication, QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QAbstractButton

from quailsched.desktop.theme import current
from quailsched.resources import resource

if TYPE_CHECKING:
    from PySide6.QtSvg import QSvgRenderer

_DRAWN_IN = "#000000"  # what stands in the files for the ink
ALL_RATIOS = (1.0, 1.25, 1.5, 1.75, 2.0, 3.0)  # pixels of the screen to one of the window's own
_EMBLEM_PX = (16, 24, 32, 48, 64, 128, 256)


def ratios_there_are() -> Collection[float]:
    """Those of the screens: drawing for these alone takes a sixth of the time at the start."""
    return {screen.devicePixelRatio() for screen in QGuiApplication.screens()}


def icon(
    name: str, size_px: int = 16, ratios: Collection[float] = ALL_RATIOS, ink: str = "", active_ink: str = ""
) -> QIcon:
    """The line icon ``name``, sharp at ``size_px`` on screens of ``ratios``; paler on what is disabled.

    ``ink``: a colour, where it is not that of text. ``active_ink``: another one for the row of a menu that is lit.
    """
    made = QIcon()
    inks = {QIcon.Mode.Normal: ink or current().ink, QIcon.Mode.Disabled: current().soft}
    if active_ink:
        inks[QIcon.Mode.Active] = active_ink
    for mode, colour in inks.items():
        renderer = _renderer(name, colour)
        for ratio in ratios:
            made.addPixmap(_drawn(renderer, round(size_px * ratio)), mode)
    return made


def put_on(button: QAbstractButton, name: str, lines: float = 1.1, ratios: Collection[float] = ALL_RATIOS) -> None:
    """Show the icon ``name`` on ``button``, as tall as ``lines`` lines of its text."""
    size_px = size_beside(button.fontMetrics(), lines)
    button.setIconSize(QSize(size_px, size_px))
    button.setIcon(icon(name, size_px, ratios))


def keep_room(button: QAbstractButton, lines: float = 1.1) -> None:
    """Lay ``button`` out as with an icon, which follows: to draw them all takes 10 ms of a start."""
    size_px = size_beside(button.fontMetrics(), lines)
    button.setIconSize(QSize(size_px, size_px))
    nothing = QPixmap(1, 1)
    nothing.fill(Qt.GlobalColor.transparent)
    button.setIcon(QIcon(nothing))


def size_beside(metrics: QFontMetrics, lines: float = 1.1) -> int:
    """Pixels of an icon beside text: it grows with the letters, and is even, so that its strokes stay crisp."""
    return max(round(metrics.height() * lines / 2) * 2, 16)


def emblem() -> QIcon:
    """The program's own picture, in its own colours."""
    made = QIcon()
    renderer = _renderer("quailsched", _DRAWN_IN)
    for size_px in _EMBLEM_PX:
        made.addPixmap(_drawn(renderer, size_px))
    return made


def _renderer(name: str, ink: str) -> QSvgRenderer:
    from PySide6.QtSvg import QSvgRenderer

    text = resource("icons", f"{name}.svg").read_text(encoding="utf-8").replace(_DRAWN_IN, ink)
    return QSvgRenderer(QByteArray(text.encode()))


def _drawn(renderer: QSvgRenderer, size_px: int) -> QPixmap:
    pixmap = QPixmap(size_px, size_px)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, size_px, size_px))
    painter.end()
    return pixmap
