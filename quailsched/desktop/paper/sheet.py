"""Sheets: their sizes and margins, the pixels that pages are laid out in, fonts and colours on paper. No painting."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QFont, QGuiApplication, QPageLayout, QPageSize

from quailsched.desktop.paper.papers import Paper
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.theme import LIGHT
from quailsched.quick import dataclass

PX_PER_INCH: Final = 96.0  # of CSS and of most screens: a page has the proportions of the window
MARGIN_MM: Final = 9.0  # more than common printers leave white
GRAIN: Final = 1.1  # times 7 pixels are 2 mm: finer hatches print grey, and make a file of megabytes
ON_PAPER: Final = replace(LIGHT, paper="#ffffff")


_IDS = {
    Paper.A4: QPageSize.PageSizeId.A4,
    Paper.A3: QPageSize.PageSizeId.A3,
    Paper.LETTER: QPageSize.PageSizeId.Letter,
}


@dataclass(frozen=True, slots=True)
class Sheet:
    """What lies inside the margins, in pixels."""

    width: float
    height: float


def page_layout(paper: Paper, is_upright: bool) -> QPageLayout:
    """``paper`` lengthwise or upright, with our margins."""
    way = QPageLayout.Orientation.Portrait if is_upright else QPageLayout.Orientation.Landscape
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    return QPageLayout(QPageSize(_IDS[paper]), way, margins, QPageLayout.Unit.Millimeter)


def sheet_of(layout: QPageLayout) -> Sheet:
    """The sheet inside the margins of ``layout``."""
    inside = layout.paintRect(QPageLayout.Unit.Inch)
    return Sheet(inside.width() * PX_PER_INCH, inside.height() * PX_PER_INCH)


def fonts_on_paper(size_px: int = 12) -> Fonts:
    """The program's font at a size of its own, not that of the window; letters as wide as the font has them."""
    font = QFont(QGuiApplication.font())
    font.setPixelSize(size_px)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return Fonts(font)
