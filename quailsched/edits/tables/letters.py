"""The text in the bytes of a table: as UTF-8, UTF-16 or what a Western desktop writes (Windows-1252)."""

from __future__ import annotations

import codecs

from quailsched.farm.faults import FarmError, Fault, Finding
from quailsched.words import say

MOST_BYTES = 20_000_000


def text_of(data: bytes) -> str:
    """The text that ``data`` holds. Raises FarmError for what is no text, such as the own file of a spreadsheet."""
    if len(data) > MOST_BYTES:
        raise _fault(say("it is larger than 20 MB"))
    if data.startswith(b"PK\x03\x04") or data.startswith(b"\xd0\xcf\x11\xe0"):
        raise _fault(say("it is the file of a spreadsheet, not a table as text"))
    text = _decoded(data)
    if text is None or "\0" in text:
        raise _fault(say("it is no text"))
    return text


def _decoded(data: bytes) -> str | None:
    for encoding in (_by_mark(data), "utf-8", "cp1252"):
        try:
            if encoding:
                return data.decode(encoding)
        except UnicodeDecodeError:
            continue
    return None


def _by_mark(data: bytes) -> str:
    """What its first bytes tell; "" if nothing. Western text in UTF-16 has noughts at every other byte."""
    if data.startswith(codecs.BOM_UTF8):
        return "utf-8-sig"
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return "utf-16"
    even, odd = data[:400:2].count(0), data[1:400:2].count(0)
    most = len(data[:400]) * 3 // 8  # three of four letters; a dash or a euro sign is no Western letter
    if odd > most and not even:
        return "utf-16-le"
    return "utf-16-be" if even > most and not odd else ""


def _fault(found: str) -> FarmError:
    accepted = say("a table with commas, semicolons or tabs is accepted (a spreadsheet saves it as CSV)")
    return FarmError([Fault(say("table"), Finding(found), accepted, "file")])
