"""A farm taken apart by batch: what a row says is checked against the counts of its own batch alone.

A farm with a thousand counts more is not looked at anew for each of them. ``whole`` puts everything together as one
change and looks at it once more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import date, datetime

from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.counts import record
from quailsched.edits.records import put, sound
from quailsched.farm.facts import Count
from quailsched.farm.records import Batch, Farm


@dataclass(frozen=True, slots=True)
class Now:
    """When rows are taken in, and what gives new records their ids."""

    today: date
    entered: datetime
    new_id: Callable[[], str]


@dataclass(slots=True)
class Pieces:
    """``farm`` as it was, and what has been taken in since."""

    farm: Farm
    now: Now
    _base: Farm = field(init=False)
    _own: dict[str, Farm] = field(init=False, default_factory=dict)
    _touches: dict[str, Touch] = field(init=False, default_factory=dict)

    def __post_init__(self) -> None:
        farm = self.farm
        self._base = Farm(farm.settings, farm.places, farm.people, choices=farm.choices)

    def piece(self, batch_id: str) -> Farm:
        """A farm with nothing but one batch, what its counts name, and those of its counts that tell of its birds;
        without ``batch_id``, with no batch."""
        if not batch_id:
            return self._base
        if batch_id not in self._own:
            counts = self.farm.counts_of(batch_id)
            ids = {batch_id} | {one for count in counts for one in (count.batch_id, count.to_batch_id) if one}
            batches = tuple(self.farm.batch(one) for one in ids)
            told = tuple(count for count in counts if count.sort.needs_batch)
            base = self._base
            self._own[batch_id] = Farm(base.settings, base.places, base.people, batches, base.choices, counts=told)
        return self._own[batch_id]

    def take(self, counts: Iterable[Count], new_batch: Batch | None = None) -> None:
        """Take in what one row says, all of it or, with FarmError, nothing."""
        changed: dict[str, Farm] = {}
        steps: list[Change] = []
        if new_batch is not None:
            steps.append(put(self._base, new_batch))
            changed[new_batch.id] = apply(self._base, steps[0])
        for count in counts:
            piece = changed.get(count.batch_id) or self.piece(count.batch_id)
            step = record(piece, count, self.now.today)
            steps.append(step)
            if count.sort.needs_batch:  # no other count is judged by what hens lay and eat
                changed[count.batch_id] = apply(piece, step)
        self._own.update(changed)
        for touch in (touch for step in steps for touch in step.touches):
            first = self._touches.get(touch.record_id)
            self._touches[touch.record_id] = Touch(first.before if first else touch.before, touch.after)

    def whole(self, label: str) -> Change | None:
        """Everything that was taken in as one step; None if there was nothing."""
        if not self._touches:
            return None
        return sound(self.farm, Change(label, tuple(self._touches.values())))
