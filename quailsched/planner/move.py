"""What a move is: a small change with a family, a cost and a sentence.

Costs are in days of trouble, our own weighing: a day earlier or later counts 1, a chick less half a day, another
place 2, a split 4 (two batches to look after), a day less of cleaning 3, a day of building sooner 2, a bird sold young
0.3 and one in lay 1, fittings 2 to 4, somebody asked to come 4, somebody who stays at home 5.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from quailsched.edits.change import Change
from quailsched.farm.records import Batch, Farm, Part

_WHO = {Part.ALL: "", Part.HENS: "the laying group of ", Part.COCKS: "the surplus cocks of "}


@dataclass(frozen=True, slots=True)
class Move:
    """One change that may help. Of each ``family`` only the cheapest that helps is offered.

    ``splits`` is the batch that a part is taken from to make a batch of its own, "" for every other move.
    """

    edit: Callable[[Farm], Change]
    family: str
    cost: float
    sentence: str
    splits: str = ""


def who_text(batch: Batch, part: Part) -> str:
    """ "Clover", "the laying group of Clover"."""
    return f"{_WHO[part]}{batch.name}"
