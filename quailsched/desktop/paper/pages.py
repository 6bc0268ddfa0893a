"""Documents of pages, onto a printer or into a PDF."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from PySide6.QtCore import QBuffer, QIODevice, QUuid
from PySide6.QtGui import QPagedPaintDevice, QPainter, QPdfWriter

from quailsched import __version__
from quailsched.desktop.paper.lines import painting_on
from quailsched.desktop.paper.papers import Paper
from quailsched.desktop.paper.sheet import PX_PER_INCH, Sheet, page_layout, sheet_of

_DOTS_PER_INCH = 1200


class Page(Protocol):
    """Something that fills one sheet."""

    def paint(self, painter: QPainter, sheet: Sheet) -> None: ...


class Document(Protocol):
    """Something that is printed. How many pages it takes depends on the sheets."""

    @property
    def title(self) -> str: ...

    @property
    def is_upright(self) -> bool: ...

    def pages(self, sheet: Sheet) -> Sequence[Page]: ...


def print_on(device: QPagedPaintDevice, document: Document) -> None:
    """Put ``document`` on the sheets that ``device`` has. Raises StoreError if it takes none."""
    sheet, scale = sheet_of(device.pageLayout()), device.logicalDpiX() / PX_PER_INCH
    with painting_on(device) as painter:
        for number, page in enumerate(document.pages(sheet)):
            if number:
                device.newPage()
            painter.save()
            painter.scale(scale, scale)
            page.paint(painter, sheet)
            painter.restore()


def pdf_of(document: Document, paper: Paper) -> bytes:
    """``document`` as a PDF. Twice the same differs in nothing but the time that it says it was made at."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DOTS_PER_INCH)
    writer.setPageLayout(page_layout(paper, document.is_upright))
    writer.setTitle(document.title)
    writer.setCreator(f"Quailsched {__version__}")
    writer.setDocumentId(QUuid.createUuidV5(QUuid(), document.title.encode()))
    print_on(writer, document)
    return bytes(buffer.data().data())
