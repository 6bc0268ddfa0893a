"""The records of a document, read whatever their faults, and what is wrong between them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any, Generic, TypeVar
from uuid import UUID

from quailsched.farm.check import FIRST_PLACE, PLACE_OF_A_STAY, acceptance_words, faults_of, is_at
from quailsched.farm.check_counts import counts_faults_of
from quailsched.farm.fact_words import count_words
from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import Fault, Finding
from quailsched.farm.plain import read_record
from quailsched.farm.records import (
    Acceptance,
    Batch,
    Farm,
    FigureChoice,
    Person,
    Place,
    Record,
    Settings,
    Trial,
    farm_of,
)
from quailsched.farm.terms import named
from quailsched.quick import dataclass
from quailsched.words import say

R = TypeVar("R", Settings, Place, Person, Batch, FigureChoice, Acceptance, Trial, Count, ChoreMark, OwnChore)

_NAMED_BY = {FigureChoice: ("kind", "key"), Acceptance: (), Count: (), ChoreMark: ()}  # the others have a name
# A fault of the field says nothing while one of the others cannot be read.
_DEPENDS: Mapping[str, frozenset[str]] = {
    **dict.fromkeys(
        ("egg_places", "floor_cm2", "heat_sources", "feeder_cm", "drinker_cm", "light_hours"), frozenset({"role"})
    ),
    **dict.fromkeys(("age_days", "egg_age_days"), frozenset({"origin"})),
    # What a count cannot do without is told by its sort.
    **dict.fromkeys(("number", "grams", "hours", "words", "file_name"), frozenset({"sort"})),
    "hens": frozenset({"sort", "number", "cocks"}),
    "dressed_g": frozenset({"sort", "grams"}),
}
# What a field of a count, a mark or a chore looks for.
_SOUGHT = {"batch_id": Batch, "to_batch_id": Batch, "place_id": Place, "person_id": Person, "corrects": Count}
# The fields that counts are added up by, and those of a batch that they are held against.
_ADDED_UP = frozenset(
    ("id", "sort", "day", "number", "batch_id", "to_batch_id", "place_id", "part", "corrects", "is_taken_back")
)
_HELD_AGAINST = frozenset(("id", "start", "number", "origin", "stays"))


@dataclass(frozen=True, slots=True)
class ReadRecord(Generic[R]):
    """A record, the words for it in faults, and the fields that hold stand-ins for what cannot be used."""

    record: R
    words: str
    broken: frozenset[str]

    def words_in_check(self, farm: Farm) -> str:
        """How ``farm.check`` names the record."""
        if isinstance(self.record, Settings):
            return say("farm")
        if isinstance(self.record, Acceptance):
            return acceptance_words(farm, self.record)
        if isinstance(self.record, Count):
            return count_words(self.record)
        if isinstance(self.record, ChoreMark):
            return say("chore mark")
        return named(type(self.record), _name(self.record))

    def hides(self, field: str) -> bool:
        return field in self.broken or bool(_DEPENDS.get(field, frozenset()) & self.broken)


def read_one(cls: type[R], plain: object, words: str, faults: list[Fault], version: int) -> ReadRecord[R]:
    """One record; ``words`` name it where it has no name of its own."""
    words = _words(cls, plain) or words
    reading = read_record(cls, plain, (words,), faults, version)
    unreadable: dict[str, Any] = {field: words for field in ("id", "name") if field in reading.broken}
    return ReadRecord(replace(reading.record, **unreadable), words, reading.broken)


def read_all(
    cls: type[R], section: str, items: Sequence[object], faults: list[Fault], version: int
) -> list[ReadRecord[R]]:
    """The records of one section of a document of ``version``, in its order."""
    return [
        read_one(cls, item, say("{section}, item {place}", section=section, place=place), faults, version)
        for place, item in enumerate(items, 1)
    ]


def identity_faults(read: Sequence[ReadRecord[Any]]) -> Iterator[Fault]:
    """Ids that are missing, used twice, or (the farm's, which calendar ids are made from) no UUID."""
    seen: dict[str, str] = {}
    for one in read:
        record_id = one.record.id
        if "id" in one.broken:
            continue
        if isinstance(one.record, Settings):
            if not _is_uuid(record_id):
                accepted = say("a UUID such as 6f1c9f0e-5d0b-4c58-9f5e-0c6a1b7d2e43 is accepted")
                yield Fault(say("farm, id"), record_id, accepted, "id")
        elif not record_id.strip():
            yield Fault(
                say("{words}, id", words=one.words), record_id, say("an id of at least one letter is needed"), "id"
            )
        if record_id in seen:
            accepted = say("{value} has it already, each record needs its own", value=seen[record_id])
            yield Fault(say("{words}, id", words=one.words), record_id, accepted, "id")
        seen.setdefault(record_id, one.words)


def meaning_faults(read: Sequence[ReadRecord[Any]], unusable: Collection[type]) -> Iterator[Fault]:
    """The faults of ``farm.check``, without those that only come from a stand-in or from an id that stands twice.

    ``unusable`` are the classes of records whose whole section cannot be used.
    """
    whole = [one for one in read if not (one.broken and isinstance(one.record, FigureChoice))]
    farm = farm_of([one.record for one in whole])
    named = [(one.words_in_check(farm), one) for one in whole]
    routes, facts = _RouteDoubts(read, unusable), _FactDoubts(read, unusable)
    found = faults_of(farm)
    follow = facts.following(farm, found)
    for fault in found:
        about = [
            (words, one)
            for words, one in named
            if fault.record_id in ("", one.record.id) and fault.where.startswith(f"{words},")
        ]
        if fault in follow or any(
            one.hides(fault.field) or routes.hide(fault, one.record) or facts.hide(fault, one) for _, one in about
        ):
            continue
        for words, one in about[:1]:
            fault = replace(fault, where=one.words + fault.where.removeprefix(words))
        yield fault


class _RouteDoubts:
    """What cannot be said about the places of a route, because of faults that are told elsewhere."""

    def __init__(self, read: Sequence[ReadRecord[Any]], unusable: Collection[type]) -> None:
        places = [one for one in read if isinstance(one.record, Place)]
        self._doubled = _twice(read)
        # Of two places with one id, one has lost its own.
        is_id_lost = any("id" in one.broken for one in places) or bool(_twice(places))
        self._is_id_missing = Place in unusable or is_id_lost
        self._is_role_missing = any("role" in one.broken for one in places)
        self._no_origin = {one.record.id for one in read if "origin" in one.broken}

    def hide(self, fault: Fault, record: Record) -> bool:
        if not isinstance(record, Batch):
            return False
        if is_at(fault, PLACE_OF_A_STAY):
            return self._is_id_missing or fault.value in self._doubled
        if is_at(fault, FIRST_PLACE):
            is_doubled = record.stays[0].place_id in self._doubled
            return self._is_role_missing or is_doubled or record.id in self._no_origin
        return False


class _FactDoubts:
    """What cannot be said about counts, marks and chores, because of faults that are told elsewhere."""

    def __init__(self, read: Sequence[ReadRecord[Any]], unusable: Collection[type]) -> None:
        doubled = _twice(read)
        no_id = {type(one.record) for one in read if "id" in one.broken or one.record.id in doubled}
        self._lost = no_id | set(unusable)
        self._counts = [one for one in read if isinstance(one.record, Count)]
        if any(one.broken & {"sort", "batch_id"} for one in self._counts):
            self._lost.add(Count)  # one corrects only another of its sort and batch
        self._batches = {one.record.id: one for one in read if isinstance(one.record, Batch)}

    def hide(self, fault: Fault, one: ReadRecord[Any]) -> bool:
        """Whether what ``one`` looks for may be among the records that have lost their id."""
        if not isinstance(one.record, Count | ChoreMark | OwnChore):
            return False
        if fault.field in _SOUGHT and isinstance(fault.value, Finding):  # it names nothing, though its sort needs it
            return "sort" in one.broken or (fault.field == "corrects" and "is_taken_back" in one.broken)
        return _SOUGHT.get(fault.field) in self._lost

    def following(self, farm: Farm, found: Sequence[Fault]) -> list[Fault]:
        """Those of ``found`` that come from adding up the counts of batches of which something cannot be used."""
        together = [(fault, batch) for batch in farm.batches for fault in counts_faults_of(farm, batch)]
        added = [fault for fault, _ in together]
        by_itself = {(fault.record_id, fault.field) for fault in found if fault not in added}
        return [
            fault
            for fault, batch in together
            if self._is_unsure(batch)
            or {(batch.id, "start"), (batch.id, "number"), (fault.record_id, fault.field)} & by_itself
        ]

    def _is_unsure(self, batch: Batch) -> bool:
        if self._lost & {Batch, Count} or self._batches[batch.id].broken & _HELD_AGAINST:
            return True
        return any(
            one.broken & _ADDED_UP
            and (one.broken & {"batch_id", "to_batch_id"} or batch.id in (one.record.batch_id, one.record.to_batch_id))
            for one in self._counts
        )


def _twice(read: Sequence[ReadRecord[Any]]) -> set[str]:
    return {record_id for record_id, times in Counter(one.record.id for one in read).items() if times > 1}


def _name(record: Record) -> str:
    return " ".join(getattr(record, field) for field in _NAMED_BY.get(type(record), ("name",)))


def _words(cls: type[Record], plain: object) -> str:
    """ "batch Clover", "farm", "figure coturnix lay_pct"; nothing where the naming fields are no text."""
    if cls is Settings:
        return say("farm")
    fields = _NAMED_BY.get(cls, ("name",))
    names = [plain.get(field) for field in fields] if isinstance(plain, dict) else []
    texts = [name for name in names if isinstance(name, str) and name.strip()]
    return named(cls, " ".join(texts)) if texts and len(texts) == len(fields) else ""


def _is_uuid(text: str) -> bool:
    try:
        return str(UUID(text)) == text
    except ValueError:
        return False
