"""What a move is: a small change with a family, a cost and a sentence.

Costs are in days of trouble, our own weighing: a day earlier or later counts 1, a chick less half a day, another
place 2, a split 4 (two batches to look after), a day less of cleaning 3, a day of building sooner 2, a bird sold young
0.3 and one in lay 1, fittings 2 to 4, somebody asked to come 4, somebody who stays at home 5.
"""

from __future__ import annotations

from collections.abc import Callable

from quailsched.edits.change import Change
from quailsched.farm.records import Batch, Farm, Part
from quailsched.quick import dataclass
from quailsched.words import marked, say

_WHO = {Part.HENS: marked("the laying group of {batch}"), Part.COCKS: marked("the surplus cocks of {batch}")}


@dataclass(frozen=True, slots=True)
class Move:
    """One change that may help. Of each ``family`` only the cheapest that helps is offered.

    ``splits`` is the batch that a part is taken from to make a batch of its own, "" for every other move. ``rests_on``
    gives what of a farm the edit and the sentence count on: two moves go together if neither changes it for the other.
    """

    edit: Callable[[Farm], Change]
    family: str
    cost: float
    sentence: str
    splits: str = ""
    rests_on: Callable[[Farm], object] = lambda farm: None


def on_start(farm: Farm, batch_id: str) -> object:
    """The day on which a batch starts."""
    return farm.batch(batch_id).start


def on_number(farm: Farm, batch_id: str) -> object:
    """How many eggs are set, or birds brought in."""
    return farm.batch(batch_id).number


def on_place(farm: Farm, batch_id: str, index: int) -> object:
    """Which birds stay ``index`` holds, and where; its days are left to others."""
    stays = farm.batch(batch_id).stays[index : index + 1]
    return [(stay.place_id, stay.part) for stay in stays]


def on_end(farm: Farm, batch_id: str, index: int) -> object:
    """Which birds stay ``index`` holds, where, and the day on which they leave it."""
    batch = farm.batch(batch_id)
    return batch.start, [(stay.place_id, stay.part, stay.to_day) for stay in batch.stays[index : index + 1]]


def on_all(farm: Farm, batch_id: str) -> object:
    """Days, birds and places of a batch: the sentence tells how many birds of it are where on a day."""
    batch = farm.batch(batch_id)
    return batch.start, batch.number, batch.stays


def who_text(batch: Batch, part: Part) -> str:
    """ "Clover", "the laying group of Clover"."""
    return say(_WHO[part], batch=batch.name) if part in _WHO else batch.name
