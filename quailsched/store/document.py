"""Everything in a farm as one JSON document, and back. Its schema: ``resources/schema/farm.schema.json``.

Reading tells every fault at once: those of form (here and in ``farm.plain``), then those of meaning
(``farm.check``), which are also looked for in records of which some other field cannot be used.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final

from quailsched.farm.facts import ChoreMark, Count, OwnChore
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.plain import plain_of, read_record
from quailsched.farm.plain_values import MISSING, fault_at, shown
from quailsched.farm.records import Acceptance, Batch, Farm, FigureChoice, Person, Place, Settings, Trial, farm_of
from quailsched.farm.versions import VERSION, came_with, is_version
from quailsched.quick import dataclass
from quailsched.store.json_text import plain_from_text
from quailsched.store.published import Published, PublishedEntry, published_of
from quailsched.store.sections import ReadRecord, identity_faults, meaning_faults, read_all, read_one
from quailsched.words import say

FORMAT: Final = "quailsched farm"
SECTIONS: Final[Mapping[str, type]] = {
    "places": Place,
    "people": Person,
    "batches": Batch,
    "figures": FigureChoice,
    "accepted": Acceptance,
    "trials": Trial,
    "counts": Count,
    "marks": ChoreMark,
    "own_chores": OwnChore,
    "published": Published,
}
_TOP: Final = ("format", "version", "farm", *SECTIONS)


@dataclass(frozen=True, slots=True)
class Document:
    """What a document holds: the farm, and the calendar entries that were given out."""

    farm: Farm
    published: tuple[Published, ...]


def export_document(farm: Farm, published: Iterable[PublishedEntry] = ()) -> str:
    """The document of ``farm``, in a fixed order: equal farms give equal text."""
    entries = sorted((published_of(entry) for entry in published), key=lambda entry: entry.uid)
    document = {
        "format": FORMAT,
        "version": VERSION,
        "farm": plain_of(farm.settings),
        "places": [plain_of(place) for place in farm.places],
        "people": [plain_of(person) for person in farm.people],
        "batches": [plain_of(batch) for batch in farm.batches],
        "figures": [plain_of(choice) for choice in farm.choices],
        "accepted": [plain_of(acceptance) for acceptance in farm.acceptances],
        "trials": [plain_of(trial) for trial in farm.trials],
        "counts": [plain_of(count) for count in farm.counts],
        "marks": [plain_of(mark) for mark in farm.marks],
        "own_chores": [plain_of(chore) for chore in farm.own_chores],
        "published": [plain_of(entry) for entry in entries],
    }
    return json.dumps(document, ensure_ascii=False, indent=2) + "\n"


def read_document(text: str) -> Farm:
    """The farm of a document. Raises FarmError with every fault."""
    return read_whole(text).farm


def read_whole(text: str) -> Document:
    """The farm of a document and its calendar entries. Raises FarmError with every fault."""
    faults: list[Fault] = []
    plain = _top_level(plain_from_text(text, faults), faults)
    version = plain["version"]
    read: list[ReadRecord[Any]] = [
        read_one(Settings, plain["farm"], "farm", faults, version)
        if "farm" in plain
        else ReadRecord(Settings("farm", "farm"), "farm", frozenset({"id", "name"}))
    ]
    for section, cls in SECTIONS.items():
        if cls is not Published:
            read += read_all(cls, section, plain.get(section, ()), faults, version)
    published = _published(plain.get("published", ()), faults, version)
    faults += identity_faults(read)
    faults += meaning_faults(read, unusable=[cls for section, cls in SECTIONS.items() if section not in plain])
    if faults:
        raise FarmError(faults)
    return Document(farm_of([one.record for one in read]), published)


def _top_level(plain: object, faults: list[Fault]) -> dict[str, Any]:
    """The version and the sections by name, without those that cannot be used.

    Raises FarmError at once if this is no document of ours: its other faults would say nothing.
    """
    if not isinstance(plain, dict) or plain.get("format") != FORMAT:
        found = plain.get("format", MISSING) if isinstance(plain, dict) else plain
        where = say("document, format") if isinstance(plain, dict) else "document"
        raise FarmError(
            [Fault(where, shown(found), say("an exported farm, with format “{FORMAT}”, is accepted", FORMAT=FORMAT))]
        )
    version = plain.get("version", MISSING)
    if not is_version(version):
        is_newer = type(version) is int and version > VERSION
        why = say("it was exported by a newer Quailsched; this one reads") if is_newer else say("this Quailsched reads")
        raise FarmError(
            [
                Fault(
                    say("document, version"),
                    shown(version),
                    say("{why} versions 1 to {VERSION}", why=why, VERSION=VERSION),
                )
            ]
        )
    for name in plain:
        if name not in _TOP:
            accepted = say("there is no such field here, only {join}", join=", ".join(_TOP))
            faults.append(fault_at(("document", str(shown(name))), plain[name], accepted))
    if "farm" not in plain:
        faults.append(Fault(say("document, farm"), MISSING, say("the farm's own fields are needed")))
    usable = {name: plain[name] for name in _TOP if name in plain}
    for name, cls in SECTIONS.items():
        items = plain.get(name, [] if came_with(cls) > version else MISSING)
        if not isinstance(items, list):
            faults.append(
                Fault(
                    say("document, {name}", name=name),
                    shown(items),
                    say("a list in square brackets is needed, [] for none"),
                )
            )
            usable.pop(name, None)
    return usable


def _published(items: Sequence[Any], faults: list[Fault], version: int) -> tuple[Published, ...]:
    entries = []
    seen: set[str] = set()
    for place, item in enumerate(items, 1):
        words = say("published, item {place}", place=place)
        reading = read_record(Published, item, (words,), faults, version)
        entry = reading.record
        if "uid" not in reading.broken and entry.uid in seen:
            faults.append(
                Fault(
                    say("{words}, uid", words=words),
                    entry.uid,
                    say("an entry has it already, each needs its own"),
                    "uid",
                )
            )
        if entry.sequence < 0:
            faults.append(
                Fault(
                    say("{words}, sequence", words=words),
                    entry.sequence,
                    say("a number from 0 is accepted"),
                    "sequence",
                )
            )
        seen.add(entry.uid)
        entries.append(entry)
    return tuple(entries)
