"""What a chore asks to be written down when it is ticked, and the counts that the answers make."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import date, datetime
from typing import Final

from quailsched.chores.chore import Chore
from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import eggs_left
from quailsched.farm.records import Batch
from quailsched.quick import dataclass
from quailsched.season.season import Season
from quailsched.words import marked


@dataclass(frozen=True, slots=True)
class Ask:
    """One number to ask for: ``name`` of the answer, words to be said, and what is expected, None if nothing is."""

    name: str
    words: str
    expected: int | None = None


_ASKS: Final[Mapping[str, tuple[tuple[str, str], ...]]] = {
    "set": (("set", marked("eggs set")),),
    "candle": (("clear", marked("clear")), ("quit", marked("quit"))),
    "hatch": (("hatched", marked("hatched")), ("left", marked("not hatched"))),
    "to brooder": (("moved", marked("chicks")),),
    "move out": (("moved", marked("birds")),),
    "move": (("moved", marked("birds")),),
    "cocks out": (("moved", marked("cocks")),),
    "sex": (("hens", marked("hens")), ("cocks", marked("cocks")), ("unsure", marked("unsure"))),
    "process": (("processed", marked("birds")), ("grams", marked("live g")), ("dressed", marked("dressed g"))),
    "sold": (("sold", marked("birds")),),
    "collect": (("laid", marked("eggs")),),
}


def asks_of(season: Season, chore: Chore) -> tuple[Ask, ...]:
    """The numbers that go with ``chore``; none for most."""
    return tuple(Ask(name, words, _expected(season, chore, name)) for name, words in _ASKS.get(chore.kind, ()))


def _expected(season: Season, chore: Chore, name: str) -> int | None:
    batch = season.farm.find(chore.batch_id or "")
    if not isinstance(batch, Batch):
        return None
    if name == "set":
        return batch.number
    if name in ("hatched", "moved", "sold", "processed"):
        day = chore.day if name in ("hatched", "moved") else date.fromordinal(chore.day.toordinal() - 1)
        return season.birds(batch, day, chore.part)
    if name == "left":
        left = eggs_left(batch, season.farm.counts_of(batch.id), chore.day)
        return max(left - season.birds(batch, chore.day), 0)
    return None


def counts_of(
    season: Season, chore: Chore, answers: Mapping[str, int], day: date, entered: datetime, new_id: Callable[[], str]
) -> tuple[Count, ...]:
    """The counts that ``answers`` (by the names of ``asks_of``) make on ``day``; those not answered make none."""

    def count(sort: Sort, number: int = 0) -> Count:
        return Count(new_id(), sort, day, entered, number, chore.batch_id or "", chore.place_id or "", chore.part)

    found = []
    for name, sort in _SORTS.items():
        # A move is a fact by being done, without a number too; and of no chicks at all something is known.
        is_told = name in answers and (answers[name] > 0 or sort in (Sort.HATCHED, Sort.LAID))
        if is_told or (sort is Sort.MOVED and chore.kind in _MOVES):
            found.append(count(sort, answers.get(name, 0)))
    if chore.kind == "sex" and (number := sum(answers.get(name, 0) for name in ("hens", "cocks", "unsure"))):
        found.append(replace(count(Sort.SEXED, number), hens=answers.get("hens", 0), cocks=answers.get("cocks", 0)))
    if answers.get("processed"):
        grams, dressed_g = answers.get("grams", 0), answers.get("dressed", 0)
        found.append(replace(count(Sort.PROCESSED, answers["processed"]), grams=grams, dressed_g=dressed_g))
    if chore.kind == "bedding":
        found.append(count(Sort.BEDDING))
    return tuple(found)


_MOVES = ("to brooder", "move out", "move", "cocks out")
_SORTS: Final[Mapping[str, Sort]] = {
    "set": Sort.SET,
    "clear": Sort.CLEAR,
    "quit": Sort.QUIT,
    "hatched": Sort.HATCHED,
    "left": Sort.QUIT,
    "moved": Sort.MOVED,
    "sold": Sort.SOLD,
    "laid": Sort.LAID,
}
