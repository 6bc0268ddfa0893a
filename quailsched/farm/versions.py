"""The versions of a record's shape: which records and fields came with which. Version 1 had all the others.

A farm file, a step of its history, a trial and a document each say their version. What is missing in one that is
older has the value that its dataclass starts with, so that value is written nowhere else.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import MISSING, fields
from typing import Final

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.records import Acceptance, Batch, Person, Place, Settings, Trial, TrialRecord

VERSION: Final = 3  # what is written

_RECORDS: Final[Mapping[type, int]] = {Acceptance: 2, Trial: 2, TrialRecord: 2, Count: 3, ChoreMark: 3, OwnChore: 3}
_FIELDS: Final[Mapping[type, Mapping[str, int]]] = {
    Place: dict.fromkeys(("heat_sources", "feeder_cm", "drinker_cm", "light_hours", "work_hours", "work_from"), 2),
    Person: {"build_hours": 2},
    Settings: {"sure_pct": 2},
    Batch: {"from_ids": 3},
}


def came_with(cls: type, field: str = "") -> int:
    """The version that brought a record, or one field of it."""
    record = _RECORDS.get(cls, 1)
    return max(record, _FIELDS.get(cls, {}).get(field, 1))


def is_version(value: object) -> bool:
    """Whether ``value`` is the number of a version that can be read."""
    return type(value) is int and 1 <= value <= VERSION


def values_before(cls: type, version: int) -> Mapping[str, object]:
    """The fields of ``cls`` that ``version`` did not have yet, with the values that stand for them."""
    return {field: _start_of(cls, field) for field in _FIELDS.get(cls, {}) if came_with(cls, field) > version}


def _start_of(cls: type, name: str) -> object:
    field = next(field for field in fields(cls) if field.name == name)
    if field.default is not MISSING:
        return field.default
    if field.default_factory is MISSING:
        raise TypeError(f"{cls.__name__}.{name} came later than its record and has no value to start with")
    return field.default_factory()
