"""Everything in a farm as one JSON document, and back. Its schema: ``resources/schema/farm.schema.json``.

Reading tells every fault at once: those of form (here and in ``farm.plain``), then those of meaning
(``farm.check``), which are also looked for in records of which some other field cannot be used.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final

from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.plain import plain_of, read_record
from quailsched.farm.plain_values import Words, fault_at, shown
from quailsched.farm.records import Acceptance, Batch, Farm, FigureChoice, Person, Place, Settings, Trial, farm_of
from quailsched.store.json_text import plain_from_text
from quailsched.store.published import Published, PublishedEntry, published_of
from quailsched.store.sections import ReadRecord, identity_faults, meaning_faults, read_all, read_one

FORMAT: Final = "quailsched farm"
VERSION: Final = 2
SECTIONS: Final = ("places", "people", "batches", "figures", "accepted", "trials", "published")
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
    read: list[ReadRecord[Any]] = [
        read_one(Settings, plain["farm"], "farm", faults)
        if "farm" in plain
        else ReadRecord(Settings("farm", "farm"), "farm", frozenset({"id", "name"})),
        *read_all(Place, "places", plain["places"], faults),
        *read_all(Person, "people", plain["people"], faults),
        *read_all(Batch, "batches", plain["batches"], faults),
        *read_all(FigureChoice, "figures", plain["figures"], faults),
        *read_all(Acceptance, "accepted", plain["accepted"], faults),
        *read_all(Trial, "trials", plain["trials"], faults),
    ]
    published = _published(plain["published"], faults)
    faults += identity_faults(read)
    faults += meaning_faults(read)
    if faults:
        raise FarmError(faults)
    return Document(farm_of([one.record for one in read]), published)


def _top_level(plain: object, faults: list[Fault]) -> dict[str, Any]:
    """The sections by name, an empty list for each that cannot be used.

    Raises FarmError at once if this is no document of ours: its other faults would say nothing.
    """
    if not isinstance(plain, dict) or plain.get("format") != FORMAT:
        found = plain.get("format", Words("a missing field")) if isinstance(plain, dict) else plain
        where = "document, format" if isinstance(plain, dict) else "document"
        raise FarmError([Fault(where, shown(found), f"an exported farm, with format “{FORMAT}”, is accepted")])
    version = plain.get("version", Words("a missing field"))
    if type(version) is not int or version != VERSION:
        is_newer = type(version) is int and version > VERSION
        why = "it was exported by a newer Quailsched; this one reads" if is_newer else "this Quailsched reads"
        raise FarmError([Fault("document, version", shown(version), f"{why} version {VERSION}")])
    for name in plain:
        if name not in _TOP:
            accepted = f"there is no such field here, only {', '.join(_TOP)}"
            faults.append(fault_at(("document", str(shown(name))), plain[name], accepted))
    if "farm" not in plain:
        faults.append(Fault("document, farm", Words("a missing field"), "the farm's own fields are needed"))
    sections = {name: _items(plain, name, faults) for name in SECTIONS}
    return {**({"farm": plain["farm"]} if "farm" in plain else {}), **sections}


def _items(plain: dict[str, Any], section: str, faults: list[Fault]) -> list[Any]:
    items = plain.get(section, Words("a missing field"))
    if isinstance(items, list):
        return items
    accepted = "a list in square brackets is accepted, [] for none"
    faults.append(Fault(f"document, {section}", shown(items), accepted))
    return []


def _published(items: list[Any], faults: list[Fault]) -> tuple[Published, ...]:
    entries = []
    seen: set[str] = set()
    for place, item in enumerate(items, 1):
        words = f"published, item {place}"
        reading = read_record(Published, item, (words,), faults)
        entry = reading.record
        if "uid" not in reading.broken and entry.uid in seen:
            faults.append(Fault(f"{words}, uid", entry.uid, "an entry has it already, each needs its own", "uid"))
        if entry.sequence < 0:
            faults.append(Fault(f"{words}, sequence", entry.sequence, "a number from 0 is accepted", "sequence"))
        seen.add(entry.uid)
        entries.append(entry)
    return tuple(entries)
