"""What a change is: the records that it touches, before and after, and a label that people read."""

from __future__ import annotations

from quailsched.farm.records import Farm, Record
from quailsched.quick import dataclass


@dataclass(frozen=True, slots=True)
class Touch:
    """One record before and after. None before: it is new; None after: it is removed."""

    before: Record | None
    after: Record | None

    @property
    def record_id(self) -> str:
        record = self.after if self.after is not None else self.before
        if record is None:
            raise ValueError("a touch needs a record before or after")
        return record.id


@dataclass(frozen=True, slots=True)
class Change:
    """A labelled step. ``merge_key`` joins repeated small steps (nudges) of one record within a second."""

    label: str
    touches: tuple[Touch, ...]
    merge_key: str = ""

    def inverse(self) -> Change:
        return Change(self.label, tuple(Touch(t.after, t.before) for t in reversed(self.touches)))

    def is_empty(self) -> bool:
        return all(touch.before == touch.after for touch in self.touches)

    def then(self, later: Change) -> Change:
        """Both in one step; a record touched twice keeps its first before and its last after."""
        merged = {touch.record_id: touch for touch in self.touches}
        for touch in later.touches:
            first = merged.get(touch.record_id)
            merged[touch.record_id] = Touch(first.before if first else touch.before, touch.after)
        return Change(later.label, tuple(merged.values()), later.merge_key)


def apply(farm: Farm, change: Change) -> Farm:
    """The farm after ``change``. Raises ValueError if a record is not as the change remembers it."""
    for touch in change.touches:
        if farm.find(touch.record_id) != touch.before:
            raise ValueError(f"“{change.label}” does not fit this farm: {touch.record_id} has changed since")
    removed = {t.record_id for t in change.touches if t.after is None}
    return farm.with_records(removed, tuple(t.after for t in change.touches if t.after is not None))
