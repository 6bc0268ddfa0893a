"""What a count can be of, which sorts fit it, and what is proposed. No Qt."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Final

from quailsched.farm.facts import Cause, Sort
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.farm.terms import named
from quailsched.season.season import Season
from quailsched.words import marked, say

_EGGS = (Sort.SET, Sort.CLEAR, Sort.QUIT, Sort.PIPPED, Sort.HATCHED)
_ANYWHERE = (
    *(Sort.LAID, Sort.FED, Sort.FEED_BOUGHT, Sort.BEDDING, Sort.BUILT),
    *(Sort.HOURS, Sort.NOTE, Sort.PHOTO),
)
PART_WORDS: Final[Mapping[Part, str]] = {
    Part.ALL: marked("all"),
    Part.HENS: marked("laying group"),
    Part.COCKS: marked("surplus cocks"),
}
# The causes with the one that is not known first: it is the one of a count that tells none.
CAUSES: Final = tuple(cause for cause in Cause if cause is not Cause.MISSING)
_NUMBERS: Final[Mapping[Sort, str]] = {
    **dict.fromkeys((Sort.SET, Sort.CLEAR, Sort.QUIT, Sort.PIPPED, Sort.LAID), marked("&Eggs")),
    Sort.HATCHED: marked("&Chicks"),
}


def of_choices(farm: Farm) -> list[tuple[str, str]]:
    """(words, id) of all that a count can be of; the farm itself has the id ""."""
    batches = [(named(Batch, one.name), one.id) for one in farm.batches]
    places = [(named(Place, one.name), one.id) for one in farm.places]
    return [(say("the whole farm"), ""), *batches, *places]


def sorts_for(farm: Farm, of_id: str) -> list[Sort]:
    """The sorts that a count of it can have. Birds that part or join have forms of their own."""
    of = farm.find(of_id) if of_id else None
    if not isinstance(of, Batch):
        return list(_ANYWHERE)
    own = [sort for sort in Sort if sort.needs_batch and sort not in (Sort.PARTED, Sort.JOINED)]
    if not of.origin.is_eggs:
        own = [sort for sort in own if sort not in _EGGS]
    return [*own, *(sort for sort in _ANYWHERE if sort is not Sort.BUILT)]


def likely_sort(season: Season, of_id: str, today: date) -> Sort:
    """The sort that is counted most often of it at this time."""
    of = season.farm.find(of_id) if of_id else None
    if not isinstance(of, Batch):
        return Sort.FED
    if not of.origin.is_eggs or season.lived(of).hatched is not None:
        return Sort.DIED
    day = (today - of.start).days
    return Sort.SET if day < 3 else Sort.HATCHED if day >= season.days(of).lockdown else Sort.CLEAR


def has_parts(farm: Farm, batch_id: str) -> bool:
    """Whether the hens and the cocks of a batch go ways of their own."""
    batch = farm.find(batch_id) if batch_id else None
    return isinstance(batch, Batch) and any(stay.part is not Part.ALL for stay in batch.stays)


def number_words(sort: Sort) -> str:
    """What the number of a sort counts."""
    return say(_NUMBERS.get(sort, marked("&Birds")))
