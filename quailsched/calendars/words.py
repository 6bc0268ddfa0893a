"""The words of a calendar entry, made fit for a calendar file. Escaping and folding are in ``text``."""

from __future__ import annotations

import re
from collections.abc import Sequence

from quailsched.chores.chore import Chore
from quailsched.words import say

_BREAKS = re.compile("\r\n|[\r\x0b\x0c\x85\u2028\u2029]")
# CONTROL of RFC 5545 3.1 but for tab and line feed, the C1 controls, the byte order mark, lone surrogates:
# some readers refuse the whole file for one of them, and a lone surrogate cannot be written as UTF-8 at all.
_UNFIT = re.compile("[\x00-\x08\x0e-\x1f\x7f-\x9f\ufeff\ud800-\udfff]")


def clean(text: str) -> str:
    """``text`` with every kind of line break as a line feed and without what a calendar file may not hold."""
    return _UNFIT.sub("", _BREAKS.sub("\n", text))


def one_line(text: str) -> str:
    """``text`` cleaned, with every run of spaces and line breaks as one space."""
    return " ".join(clean(text).split())


def summary_of(chore: Chore) -> str:
    """The line that a phone shows: "Move chicks · Clover · Tub brooder". A name in the title is not said twice."""
    title, batch, place = (one_line(part) for part in (chore.title, chore.batch, chore.place))
    names = (name for name in (batch, place) if not _says(title, name))
    return " · ".join(part for part in (title, *names) if part)


def _says(title: str, name: str) -> bool:
    """Whether ``title`` has ``name`` in it as words of their own."""
    return re.search(rf"(?<!\w){re.escape(name)}(?!\w)", title, re.IGNORECASE) is not None


def description_of(chore: Chore) -> str:
    """How it is done, who can do it, and the caution, a line each."""
    caution = clean(chore.caution).strip()
    lines = (
        clean(chore.how).strip(),
        say("Who can do it: {who}.", who=who_can(chore)) if chore.has_people else "",
        say("Caution: {caution}", caution=caution) if caution else "",
    )
    return "\n".join(line for line in lines if line)


def who_can(chore: Chore) -> str:
    """Who can do it, such as "Ann or Leo"; when nobody can, why not."""
    names = [name for name in map(one_line, chore.able) if name]
    if names:
        return any_of(names)
    # Somebody may be at home who is too young for it, so "nobody" would be wrong.
    return say("no grown-up is at home that day" if chore.needs_grown_up else "nobody is at home that day")


def any_of(names: Sequence[str]) -> str:
    """One or more names as a choice: "Ann", "Ann or Leo", "Ann, Leo or Mia"."""
    *others, last = names
    return say("{names} or {last}", names=", ".join(others), last=last) if others else last
