"""The history of changes: what one step of it is, and a change as JSON text and back."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from typing import Any

from quailsched.edits.change import Change, Touch
from quailsched.farm.plain import record_from_tagged, tagged
from quailsched.farm.records import Record
from quailsched.quick import dataclass

MERGES_WITHIN = timedelta(seconds=1)


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the history for people. ``at`` is UTC."""

    label: str
    at: datetime
    is_undone: bool


@dataclass(frozen=True, slots=True)
class Step:
    """One row of the journal without its change. Numbers count up from 1 without a gap."""

    number: int
    label: str
    at: datetime
    merge_key: str

    def takes(self, change: Change, at: datetime) -> bool:
        """Whether ``change`` is one more nudge of this step."""
        is_soon = timedelta(0) <= at - self.at < MERGES_WITHIN
        return bool(self.merge_key) and self.merge_key == change.merge_key and is_soon


def joined(first: Change, later: Change) -> Change:
    """Both in one step, without the records that end as they began."""
    both = first.then(later)
    return Change(both.label, tuple(t for t in both.touches if t.before != t.after), both.merge_key)


def change_text(change: Change) -> str:
    """The records of ``change`` before and after, as JSON."""
    touches = [{"before": _plain(touch.before), "after": _plain(touch.after)} for touch in change.touches]
    return json.dumps({"touches": touches}, ensure_ascii=False, separators=(",", ":"))


def change_from(text: str, label: str, merge_key: str) -> Change:
    """The change that ``change_text`` wrote. Raises ValueError or FarmError if it is not one."""
    try:
        plain = json.loads(text)["touches"]
        touches = tuple(Touch(_record(touch["before"]), _record(touch["after"])) for touch in plain)
    except (LookupError, TypeError, AttributeError) as error:
        raise ValueError(f"the history of “{label}” cannot be read") from error
    return Change(label, touches, merge_key)


def _plain(record: Record | None) -> dict[str, Any] | None:
    return None if record is None else tagged(record)


def _record(plain: dict[str, Any] | None) -> Record | None:
    return None if plain is None else record_from_tagged(plain)
