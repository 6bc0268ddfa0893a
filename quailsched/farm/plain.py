"""Records as plain JSON values and back, driven by the fields of the dataclasses.

The document, the journal and the rows of the farm file all use this one mapping. Days are ISO text, enums
their value; every field is always written, and needed unless it came later (``versions``). What the values mean is
judged in ``check``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import Field, fields
from functools import cache
from typing import Any, Final, Generic, TypeVar, get_type_hints

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.plain_values import (
    BROKEN,
    Reader,
    Spot,
    Writer,
    accepted_for,
    fault_at,
    missing_at,
    reader_for,
    shown,
    stand_in_for,
    writer_for,
)
from quailsched.farm.records import Acceptance, Batch, FigureChoice, Person, Place, Record, Settings, Trial
from quailsched.farm.versions import VERSION, is_version, values_before
from quailsched.quick import dataclass
from quailsched.words import say

R = TypeVar("R")

RECORD_TAGS: Final[Mapping[str, type[Record]]] = {
    "settings": Settings,
    "place": Place,
    "person": Person,
    "batch": Batch,
    "figure": FigureChoice,
    "acceptance": Acceptance,
    "trial": Trial,
    "count": Count,
    "chore mark": ChoreMark,
    "own chore": OwnChore,
}


@dataclass(frozen=True, slots=True)
class Reading(Generic[R]):
    """A record that was read, and the fields that could not be: these hold a stand-in value."""

    record: R
    broken: frozenset[str]


def plain_of(record: object) -> dict[str, Any]:
    """Every field of ``record`` by name, in the order of its class, as JSON types only."""
    return {name: write(getattr(record, name)) for name, write in _writers_of(type(record))}


def tagged(record: Record) -> dict[str, Any]:
    """``plain_of`` with the word for the record's type (see ``RECORD_TAGS``) and the version of its shape."""
    tag = next(tag for tag, cls in RECORD_TAGS.items() if isinstance(record, cls))
    return {"record": tag, "version": VERSION, **plain_of(record)}


def record_from(cls: type[R], plain: object, version: int = VERSION) -> R:
    """The record that ``plain_of`` wrote. Raises FarmError with every fault of form."""
    faults: list[Fault] = []
    reading = read_record(cls, plain, (cls.__name__.lower(),), faults, version)
    if faults:
        raise FarmError(faults)
    return reading.record


def record_from_tagged(plain: Mapping[str, Any]) -> Record:
    """The record that ``tagged`` wrote. Raises FarmError with every fault of form."""
    tag = plain.get("record")
    cls = RECORD_TAGS.get(tag) if isinstance(tag, str) else None
    if cls is None:
        accepted = say("one of {choices} is accepted", choices=", ".join(RECORD_TAGS))
        raise FarmError([Fault(say("record"), shown(tag), accepted, "record")])
    version = plain.get("version", 1)  # the first did not say it
    if not is_version(version):
        accepted = say("a version from 1 to {latest} is accepted", latest=VERSION)
        raise FarmError([Fault(say("version"), shown(version), accepted, "version")])
    fields_only = {name: value for name, value in plain.items() if name not in ("record", "version")}
    return record_from(cls, fields_only, version)


def read_record(cls: type[R], plain: object, spot: Spot, faults: list[Fault], version: int = VERSION) -> Reading[R]:
    """A record from ``plain`` whatever its faults, which are added to ``faults``.

    ``spot`` starts with the words for the record; it goes before the field in each fault. Fields that came
    after ``version`` may be missing.
    """
    readers = _readers_of(cls, version)
    values: dict[str, object] = dict(values_before(cls, version))
    if not isinstance(plain, Mapping):
        accepted = accepted_for(plain, say("a group of fields in curly brackets"))
        faults.append(fault_at(spot, plain, accepted))
        return Reading(cls(**{name: stand_in for name, (_, stand_in) in readers.items()}), frozenset(readers))
    for name in plain:
        if name not in readers:
            accepted = say("there is no such field here, only {fields}", fields=", ".join(readers))
            faults.append(fault_at((*spot, str(shown(name))), plain[name], accepted))
    broken: set[str] = set()
    for name, (read, stand_in) in readers.items():
        if name in plain:
            value = read(plain[name], (*spot, name), faults)
        elif name in values:
            continue
        else:
            faults.append(missing_at((*spot, name), read))
            value = BROKEN
        if value is BROKEN:
            broken.add(name)
            value = stand_in
        values[name] = value
    return Reading(cls(**values), frozenset(broken))


def hints_of(cls: type) -> dict[str, Any]:
    """The declared type of every field that is stored, by name, in the order of the class."""
    hints = get_type_hints(cls)
    return {field.name: hints[field.name] for field in stored_fields(cls)}


def stored_fields(cls: type) -> list[Field[Any]]:
    """The fields that are stored, in the order of the class, their types as they are written there."""
    return [field for field in fields(cls) if field.init]


# A cache wants a hashable argument. A bare ``type`` is one; mypy doubts it of ``type[R]``.


def _writers_of(cls: type) -> tuple[tuple[str, Writer], ...]:
    return _writers(cls)


def _readers_of(cls: type, version: int) -> dict[str, tuple[Reader, object]]:
    return _readers(cls, version)


@cache
def _readers(cls: type, version: int) -> dict[str, tuple[Reader, object]]:
    def nested(inner: type) -> Reader:
        return _nested_reader(inner, version)

    return {name: (reader_for(hint, nested), stand_in_for(hint)) for name, hint in hints_of(cls).items()}


@cache
def _writers(cls: type) -> tuple[tuple[str, Writer], ...]:
    return tuple((name, writer_for(hint, lambda _: plain_of)) for name, hint in hints_of(cls).items())


def _nested_reader(cls: type, version: int) -> Reader:
    def read(value: object, spot: Spot, faults: list[Fault]) -> object:
        reading: Reading[Any] = read_record(cls, value, spot, faults, version)
        return BROKEN if reading.broken else reading.record

    return read
