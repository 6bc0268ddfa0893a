"""Our own icons, drawn in the ink of the theme."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from quailsched.resources import resource

_SIZES = (16, 24, 32, 48, 64, 128)


def icon(name: str, ink: str) -> QIcon:
    """The line icon ``name`` in the colour ``ink``, sharp at 100 to 200 %."""
    text = resource("icons", f"{name}.svg").read_text(encoding="utf-8").replace("#000000", ink)
    renderer = QSvgRenderer(QByteArray(text.encode()))
    made = QIcon()
    for size in _SIZES:
        pixmap = QPixmap(size, size)
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        renderer.render(painter, QRectF(0, 0, size, size))
        painter.end()
        made.addPixmap(pixmap)
    return made
