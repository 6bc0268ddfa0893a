"""The text that a trial keeps of a record: as the trial has it, and as the plan had it when the trial changed it."""

from __future__ import annotations

import json
from functools import lru_cache

from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.plain import record_from_tagged, tagged
from quailsched.farm.records import Record
from quailsched.quick import dataclass
from quailsched.words import say

_WAS = "was"


@dataclass(frozen=True, slots=True)
class TrialText:
    """``after`` is None where the trial takes the record away, ``was`` where the plan did not have it.

    Early trials did not keep what was: then ``knows_was`` is False.
    """

    after: Record | None
    was: Record | None = None
    knows_was: bool = False


def write_text(after: Record | None, was: Record | None) -> str:
    """The content of a ``TrialRecord``."""
    plain = {**({} if after is None else tagged(after)), _WAS: None if was is None else tagged(was)}
    return json.dumps(plain, ensure_ascii=False, separators=(",", ":"))


@lru_cache(maxsize=4096)  # every change of the farm asks again
def read_text(content: str) -> TrialText:
    """What ``write_text`` wrote. Raises ValueError, RecursionError or FarmError for anything else."""
    if not content:
        return TrialText(None)
    plain = json.loads(content)
    if not isinstance(plain, dict):
        raise FarmError([Fault("record", content, say("the JSON text of a record is accepted"), "record")])
    knows_was, was = _WAS in plain, plain.pop(_WAS, None)
    after = record_from_tagged(plain) if plain or not knows_was else None
    return TrialText(after, None if was is None else _record(was), knows_was)


def _record(plain: object) -> Record:
    if not isinstance(plain, dict):
        raise FarmError([Fault(_WAS, str(plain), say("the JSON text of a record is accepted"), "record")])
    return record_from_tagged(plain)
