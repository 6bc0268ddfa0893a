"""The words that people read, in the language that was chosen.

English stands in the code: ``say("{place} is too small", place=name)``. What is said goes through a table that the
window sets once, at its start (``use``); without one it stays English, as in documents, tests and the command line.
Texts that stand in tables and are said later are ``marked``. ``packaging/translations.py`` finds both.
"""

from __future__ import annotations

from collections.abc import Callable

from quailsched.quick import dataclass

Translate = Callable[[str], str]


@dataclass(frozen=True, slots=True)
class Language:
    """``translate`` gives a text for an English one; marks as in "1,300.5"; ``day_pattern`` as in "22 Apr"."""

    translate: Translate = str
    decimal_mark: str = "."
    thousands_mark: str = ","
    day_pattern: str = "{day} {month}"


ENGLISH = Language()
_language = ENGLISH


def use(language: Language) -> None:
    """Say everything in ``language`` from now on."""
    global _language
    _language = language


def say(text: str, /, **values: object) -> str:
    """``text`` in the language that was chosen, with ``values`` in the place of their names in braces.

    ``text`` is written out in the code, or it is ``marked`` where it stands.
    """
    said = _language.translate(text)
    return said.format(**values) if values else said


def marked(text: str, /) -> str:
    """``text`` itself, to be said later: in tables that are made when a module is loaded."""
    return text


def number_text(value: float, decimals: int = 0) -> str:
    """ "1,300" or "0.5" with the marks of the language."""
    return _with_marks(f"{value:,.{decimals}f}")


def value_text(value: float) -> str:
    """ "1300" or "0.25": no more decimals than there are, and no marks of thousands."""
    return _with_marks(f"{value:g}")


def exact_text(value: float) -> str:
    """ "0.5" or "99.0": every digit that there is, and no marks of thousands."""
    return _with_marks(str(value))


def _with_marks(text: str) -> str:
    marks = {",": _language.thousands_mark, ".": _language.decimal_mark}
    return text if _language is ENGLISH else "".join(marks.get(letter, letter) for letter in text)


def day_and_month(day: int, month: str) -> str:
    """A day of the month and the name of the month, already said, in the order of the language."""
    return _language.day_pattern.format(day=day, month=month)
