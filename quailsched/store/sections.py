"""The records of a document, read whatever their faults, and what is wrong between them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any, Generic, TypeVar
from uuid import UUID

from quailsched.farm.check import faults_of
from quailsched.farm.faults import Fault
from quailsched.farm.plain import read_record
from quailsched.farm.records import (
    Acceptance,
    Batch,
    FigureChoice,
    Person,
    Place,
    Record,
    Settings,
    Trial,
    farm_of,
)

R = TypeVar("R", Settings, Place, Person, Batch, FigureChoice, Acceptance, Trial)

_NOUNS = {
    Place: "place",
    Person: "person",
    Batch: "batch",
    FigureChoice: "figure",
    Acceptance: "accepted clash",
    Trial: "trial",
}
_NAMED_BY = {FigureChoice: ("kind", "key"), Acceptance: ("kind", "place_id")}  # the others have a name
# A fault of the second field says nothing while the first cannot be read.
_DEPENDS = {"egg_places": "role", "floor_cm2": "role", "age_days": "origin", "egg_age_days": "origin"}


@dataclass(frozen=True, slots=True)
class ReadRecord(Generic[R]):
    """A record, the words for it in faults, and the fields that hold stand-ins for what cannot be used."""

    record: R
    words: str
    broken: frozenset[str]

    @property
    def words_in_check(self) -> str:
        """How ``farm.check`` names the record."""
        if isinstance(self.record, Settings):
            return "farm"
        return f"{_NOUNS[type(self.record)]} {_name(self.record)}"

    def hides(self, field: str) -> bool:
        return field in self.broken or _DEPENDS.get(field) in self.broken


def read_one(cls: type[R], plain: object, words: str, faults: list[Fault]) -> ReadRecord[R]:
    """One record; ``words`` name it where it has no name of its own."""
    words = _words(cls, plain) or words
    reading = read_record(cls, plain, (words,), faults)
    unreadable: dict[str, Any] = {field: words for field in ("id", "name") if field in reading.broken}
    return ReadRecord(replace(reading.record, **unreadable), words, reading.broken)


def read_all(cls: type[R], section: str, items: Sequence[object], faults: list[Fault]) -> list[ReadRecord[R]]:
    """The records of one section of the document, in its order."""
    return [read_one(cls, item, f"{section}, item {place}", faults) for place, item in enumerate(items, 1)]


def identity_faults(read: Sequence[ReadRecord[Any]]) -> Iterator[Fault]:
    """Ids that are missing, used twice, or (the farm's, which calendar ids are made from) no UUID."""
    seen: dict[str, str] = {}
    for one in read:
        record_id = one.record.id
        if "id" in one.broken:
            continue
        if isinstance(one.record, Settings):
            if not _is_uuid(record_id):
                accepted = "a UUID such as 6f1c9f0e-5d0b-4c58-9f5e-0c6a1b7d2e43 is accepted"
                yield Fault("farm, id", record_id, accepted, "id")
        elif not record_id.strip():
            yield Fault(f"{one.words}, id", record_id, "an id of at least one letter is needed", "id")
        if record_id in seen:
            accepted = f"{seen[record_id]} has it already, each record needs its own"
            yield Fault(f"{one.words}, id", record_id, accepted, "id")
        seen.setdefault(record_id, one.words)


def meaning_faults(read: Sequence[ReadRecord[Any]]) -> Iterator[Fault]:
    """The faults of ``farm.check``, without those that only come from a stand-in."""
    whole = [one for one in read if not (one.broken and isinstance(one.record, FigureChoice))]
    records: list[Record] = [one.record for one in whole]
    is_role_broken = any("role" in one.broken for one in whole)
    for fault in faults_of(farm_of(records)):
        one = next((one for one in whole if fault.where.startswith(f"{one.words_in_check},")), None)
        if one is None:
            yield fault
            continue
        is_about_role = fault.where.endswith(", first place")
        if one.hides(fault.field) or (is_about_role and (is_role_broken or "origin" in one.broken)):
            continue
        yield replace(fault, where=one.words + fault.where.removeprefix(one.words_in_check))


def _name(record: Record) -> str:
    return " ".join(getattr(record, field) for field in _NAMED_BY.get(type(record), ("name",)))


def _words(cls: type[Record], plain: object) -> str:
    """ "batch Clover", "farm", "figure coturnix lay_pct"; nothing where the naming fields are no text."""
    if cls is Settings:
        return "farm"
    fields = _NAMED_BY.get(cls, ("name",))
    names = [plain.get(field) for field in fields] if isinstance(plain, dict) else []
    texts = [name for name in names if isinstance(name, str) and name.strip()]
    return f"{_NOUNS[cls]} {' '.join(texts)}" if texts and len(texts) == len(fields) else ""


def _is_uuid(text: str) -> bool:
    try:
        return str(UUID(text)) == text
    except ValueError:
        return False
