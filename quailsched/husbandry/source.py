"""Where a value comes from, and how far to trust it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import field
from enum import StrEnum

from quailsched.quick import dataclass
from quailsched.words import marked, say

_NO_DATE = "n.d."


class Confidence(StrEnum):
    """How far a value can be trusted."""

    PUBLISHED = "published"  # seen in a bulletin, journal, government or academic page
    COMPUTED = "computed"  # our arithmetic or fit on published values
    COMMON_PRACTICE = "common practice"  # keepers and trade pages only, or taken from another kind
    FROM_MEMORY = "from memory"  # not seen: to be verified
    OWN = "the farm's own"  # put in place of ours by a farm

    @property
    def weakness(self) -> int:
        """0 for the strongest; the order in which the members stand."""
        return list(Confidence).index(self)


CONFIDENCE_WORDS = (  # to be said where a confidence is shown
    *(marked("published"), marked("computed"), marked("common practice"), marked("from memory")),
    marked("the farm's own"),
)


@dataclass(frozen=True, slots=True)
class Source:
    """One row of the reference table. ``locator`` is the place inside the text, ``year`` as printed."""

    key: str
    text: str
    year: str
    locator: str
    url: str
    confidence: Confidence
    note: str

    @property
    def year_text(self) -> str:
        """The year in words for people: "no date" where the table has its "n.d."."""
        return say("no date") if self.year == _NO_DATE else self.year

    @property
    def short_text(self) -> str:
        """The text with its year, where it has one."""
        return self.text if self.year in ("", _NO_DATE) else f"{self.text}, {self.year}"


@dataclass(frozen=True, slots=True)
class Cited:
    """Rows of the reference table by their keys. ``known`` gives the table, which is read when one is looked at."""

    keys: tuple[str, ...] = ()
    known: Callable[[], Mapping[str, Source]] = field(default=dict, compare=False, repr=False)

    @property
    def sources(self) -> tuple[Source, ...]:
        known = self.known() if self.keys else {}
        return tuple(known[key] for key in self.keys)


def weakest(sources: Iterable[Source], basis: str) -> Confidence:
    """The weakest confidence among the sources and the basis; common practice when there is neither."""
    found = [source.confidence for source in sources]
    if basis:
        found.append(Confidence(basis))
    return max(found, key=lambda confidence: confidence.weakness, default=Confidence.COMMON_PRACTICE)


def joined_text(sources: Iterable[Source], basis: str) -> str:
    """Each source once, in order, with the basis: "computed from Shim K.F., c.1990s; Moraes et al., 2008"."""
    joined = "; ".join(dict.fromkeys(source.short_text for source in sources))
    if not joined:
        return say(basis or Confidence.COMMON_PRACTICE.value)
    if basis == Confidence.COMPUTED:
        return say("computed from {sources}", sources=joined)
    return say("{sources}; taken as {basis}", sources=joined, basis=say(basis)) if basis else joined
