"""Reads PDF documents with a library that did not write them."""

from __future__ import annotations

import re
from io import BytesIO

from pypdf import PdfReader
from pypdf.generic import DictionaryObject

_LIGATURES = str.maketrans({"ﬀ": "ff", "ﬁ": "fi", "ﬂ": "fl", "ﬃ": "ffi", "ﬄ": "ffl"})  # which fonts draw as one sign


def read(pdf: bytes) -> PdfReader:
    return PdfReader(BytesIO(pdf), strict=True)


def size_pt(pdf: bytes) -> tuple[float, float]:
    """Width and height of the first page in points of 1/72 inch."""
    box = read(pdf).pages[0].mediabox
    return float(box.width), float(box.height)


def words_of(pdf: bytes, page: int | None = None) -> str:
    """All text, or that of one page, with one space wherever lines are broken."""
    pages = read(pdf).pages
    texts = [one.extract_text() for one in (pages if page is None else [pages[page]])]
    return " ".join(" ".join(texts).translate(_LIGATURES).split())


def fonts_of(pdf: bytes) -> dict[str, bool]:
    """The fonts of the first page, and whether their outlines are in the document."""
    fonts = read(pdf).pages[0]["/Resources"]["/Font"]  # type: ignore[index]  # a dictionary, which the types do not tell
    found = {}
    for font in (one.get_object() for one in fonts.values()):
        inner = font["/DescendantFonts"][0].get_object()
        assert isinstance(inner, DictionaryObject)
        descriptor = inner["/FontDescriptor"].get_object()
        assert isinstance(descriptor, DictionaryObject)
        found[str(font["/BaseFont"])] = "/FontFile2" in descriptor
    return found


def without_dates(pdf: bytes) -> bytes:
    """The document without the moments at which it says it was made."""
    pdf = re.sub(rb"/(CreationDate|ModDate) \(D:\d+[^)]*\)", b"", pdf)
    return re.sub(rb'xmp:\w+Date="[^"]*"', b"", pdf)
