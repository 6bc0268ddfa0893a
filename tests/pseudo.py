"""A language that nobody speaks: every letter of what is said is a wide one, "ｅｇｇ", inside ⟦⟧.

Whatever is put into a text unsaid keeps its plain letters, even inside another text, and ``unsaid`` finds it.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.records import Acceptance, Farm, FigureChoice, Person, Place
from quailsched.words import Language

_WIDER = ord("Ａ") - ord("A")
_WIDE = str.maketrans({chr(code): chr(code + _WIDER) for code in (*range(65, 91), *range(97, 123))})
_BRACES = re.compile(r"({\w+})")
_WORD = re.compile(r"[^\W\d_]+")
_UNITS = {"m²", "cm²", "cm", "g", "C", "F"}  # the same in every language


def _translated(text: str) -> str:
    parts = (part if _BRACES.fullmatch(part) else part.translate(_WIDE) for part in _BRACES.split(str(text)))
    return f"⟦{''.join(parts)}⟧"


PSEUDO = Language(translate=_translated)


def unsaid(text: str, typed: Iterable[str] = ()) -> list[str]:
    """The words of ``text`` that did not go through the table, but for those ``typed`` by the keeper and units."""
    for name in sorted(filter(None, typed), key=len, reverse=True):
        text = re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", "", text)
    return [word for word in _WORD.findall(text) if word not in _UNITS and not _is_wide(word)]


def _is_wide(word: str) -> bool:
    return all("Ａ" <= letter <= "ｚ" or letter == "²" for letter in word)


def typed_in(farm: Farm) -> list[str]:
    """What the keeper has typed: names, notes, reasons, words."""
    texts: list[str] = []
    for record in farm.records():
        if isinstance(record, FigureChoice | Acceptance):
            texts.append(record.reason)
        elif isinstance(record, Count):
            texts += [record.words, record.file_name]
        elif isinstance(record, ChoreMark):
            texts.append(record.left_out)
        elif isinstance(record, OwnChore):
            texts += [record.name, record.words]
        else:
            texts += [record.name, record.note]
        if isinstance(record, Place | Person):
            texts += [span.reason for span in (record.shut if isinstance(record, Place) else record.away)]
    return texts
