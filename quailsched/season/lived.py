"""What the counts of a batch say of its days and birds, in days from its day 0: the plan as it has been lived.

Facts win: up to the last count, birds are what the counts add up to; after it, that many, thinned by survival.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import Final

from quailsched.farm.facts import Count, Sort
from quailsched.farm.ledger import standing, total
from quailsched.farm.records import Batch, Part
from quailsched.quick import dataclass

# The sorts after which the number of birds is known. Birds that move are not counted one by one.
_TELLS_BIRDS = (
    *(Sort.HATCHED, Sort.COUNTED, Sort.DIED, Sort.SEXED, Sort.SOLD, Sort.PROCESSED, Sort.PARTED, Sort.JOINED),
)


@dataclass(frozen=True, slots=True)
class Sexed:
    """What was found on day ``day``: hens, cocks, and birds that could be either."""

    day: int
    hens: int
    cocks: int
    unsure: int


@dataclass(frozen=True, slots=True)
class Lived:
    """The facts of one batch. As it starts, for a batch of which nothing is known.

    ``hatch`` is the day by which half of the chicks were out, ``hatched`` how many came out in all, ``late`` are (day,
    chicks) of them that came out after it. ``taken`` are (day, eggs) out of
    the machine, ``is_candled`` whether clear ones were looked for. ``gone`` are (day, which birds, how many) that died,
    left or, less than 0, joined. ``known_to`` is the last day on which birds were counted. ``feathered`` is the day
    on which all were. ``moved`` are the days on which birds are known to have moved.
    """

    hatch: int | None = None
    hatched: int | None = None
    late: tuple[tuple[int, int], ...] = ()
    taken: tuple[tuple[int, int], ...] = ()
    is_candled: bool = False
    gone: tuple[tuple[int, Part, int], ...] = ()
    sexed: Sexed | None = None
    known_to: int | None = None
    feathered: int | None = None
    moved: tuple[int, ...] = ()

    def less_by(self, day: int) -> int:
        """How many fewer than all that hatched there are at the end of ``day``: gone by then, or not out yet."""
        gone = sum(number for at, _, number in self.gone if at <= day) if self.gone else 0
        return gone + sum(number for at, number in self.late if at > day)

    @property
    def eggs_taken(self) -> int:
        return sum(eggs for _, eggs in self.taken)


NOTHING: Final = Lived()


def lived_of(batch: Batch, counts: Iterable[Count]) -> Lived:
    """The facts of ``batch`` among its ``counts`` (``Farm.counts_of``)."""
    of_batch = tuple(counts)
    return _lived(batch.id, batch.start.toordinal(), of_batch) if of_batch else NOTHING


@lru_cache(maxsize=4096)
def _lived(batch_id: str, start: int, counts: tuple[Count, ...]) -> Lived:
    holds = standing(counts)
    own = [one for one in holds if one.batch_id == batch_id]

    def day(count: Count) -> int:
        return count.day.toordinal() - start

    hatches = [one for one in own if one.sort is Sort.HATCHED]
    gone = [(day(one), one.part, one.number) for one in own if one.sort.takes_birds]
    gone += [(day(one), Part.ALL, -one.number) for one in holds if _has_joined(one, batch_id)]
    sexed = [one for one in own if one.sort is Sort.SEXED]
    feathered = [day(one) for one in own if one.sort is Sort.FEATHERED]
    counted = [day(one) for one in holds if one.sort in _TELLS_BIRDS and (one in own or _has_joined(one, batch_id))]
    hatch = _half_out(hatches, day) if hatches else None
    return Lived(
        hatch=hatch,
        hatched=total(hatches, Sort.HATCHED) if hatches else None,
        late=tuple((day(one), one.number) for one in hatches if hatch is not None and day(one) > hatch),
        taken=tuple(sorted((day(one), one.number) for one in own if one.sort in (Sort.CLEAR, Sort.QUIT))),
        is_candled=any(one.sort is Sort.CLEAR for one in own),
        gone=tuple(sorted(gone)),
        sexed=_sexed(sexed[-1], day(sexed[-1])) if sexed else None,
        known_to=max(counted, default=None),
        feathered=max(feathered, default=None),
        moved=tuple(sorted({day(one) for one in own if one.sort is Sort.MOVED})),
    )


def _has_joined(count: Count, batch_id: str) -> bool:
    return count.sort is Sort.JOINED and count.to_batch_id == batch_id


def _half_out(hatches: list[Count], day: object) -> int:
    """The first day by which half of those that hatched were out; the last of the days where none did."""
    assert callable(day)
    out, half = 0, total(hatches, Sort.HATCHED) / 2
    for one in hatches:
        out += one.number
        if out >= half and out:
            return int(day(one))
    return int(day(hatches[-1]))


def _sexed(count: Count, day: int) -> Sexed:
    return Sexed(day, count.hens, count.cocks, count.unsure)
