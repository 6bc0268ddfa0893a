"""Counts as a list that people read: each with what it says, when it was written down, and what it said before."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum, auto

from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.ledger import traces_in
from quailsched.farm.records import Batch, Farm, Part, Person, Place
from quailsched.quick import dataclass
from quailsched.words import marked, number_text, say

_PARTS = {Part.HENS: marked("laying group"), Part.COCKS: marked("surplus cocks")}


class State(Enum):
    """Whether a count holds."""

    HOLDS = auto()
    CORRECTED = auto()  # another stands in its place
    TAKEN_BACK = auto()  # nothing does


@dataclass(frozen=True, slots=True)
class ToldCount:
    """One row. ``of`` is the batch or place; ``state_words`` are "" for one that holds."""

    count: Count
    state: State
    of: str
    what: str

    @property
    def state_words(self) -> str:
        words = {State.CORRECTED: marked("corrected"), State.TAKEN_BACK: marked("taken back")}
        return say(words[self.state]) if self.state in words else ""


def told_counts(farm: Farm, of_id: str = "") -> list[ToldCount]:
    """The counts of a batch or a place, or of the whole farm: newest first, what one said before right below it."""
    counts = [one for one in farm.counts if not of_id or of_id in (one.batch_id, one.to_batch_id, one.place_id)]
    ids = {one.corrects for one in farm.counts}  # of all: what stands in its place may be of another place
    heads = sorted((one for one in counts if one.id not in ids), key=lambda one: (one.day, one.entered), reverse=True)
    trace_of = traces_in(farm.counts)
    return [row for head in heads for row in _with_trace(farm, head, trace_of(head))]


def _with_trace(farm: Farm, head: Count, trace: list[Count]) -> Iterator[ToldCount]:
    if head.is_taken_back:  # it repeats the one that it takes back
        yield _told(farm, head, State.TAKEN_BACK)
        trace = trace[1:]
    else:
        yield _told(farm, head, State.HOLDS)
    for before in trace:
        yield _told(farm, before, State.CORRECTED)


def _told(farm: Farm, count: Count, state: State) -> ToldCount:
    of = _name(farm, count.batch_id) or _name(farm, count.place_id) or say("the farm")
    return ToldCount(count, state, of, what_of(farm, count))


def what_of(farm: Farm, count: Count) -> str:
    """What a count says, without its day: "9 died: chilled, surplus cocks"."""
    details = [text for text in _details(farm, count) if text]
    head = _head(farm, count)
    if not details:
        return head
    is_listed = count.sort in (Sort.NOTE, Sort.PHOTO, Sort.SEXED)
    return say("{head}: {details}" if is_listed else "{head}, {details}", head=head, details=", ".join(details))


def _head(farm: Farm, count: Count) -> str:
    place, sort = _name(farm, count.place_id), say(count.sort)
    if count.sort is Sort.SET:
        return say("{number} set", number=number_text(count.number))
    if count.sort is Sort.MOVED:
        head = say("moved to {place}", place=place)
        return say("{number} {sort}", number=number_text(count.number), sort=head) if count.number else head
    if count.sort in (Sort.BEDDING, Sort.BUILT):
        is_built = count.sort is Sort.BUILT
        return say("{place} is finished" if is_built else "bedding changed in {place}", place=place)
    if count.sort in (Sort.FEED_BOUGHT, Sort.FED):
        return say("{grams} g {sort}", grams=number_text(count.grams), sort=sort)
    if count.sort is Sort.HOURS:
        return say("{hours} hours worked", hours=number_text(count.hours, 1))
    if count.sort is Sort.PARTED:
        return say("{number} parted as {batch}", number=number_text(count.number), batch=_name(farm, count.to_batch_id))
    if count.sort is Sort.JOINED:
        words = {"number": number_text(count.number), "batch": _name(farm, count.batch_id)}
        return say("{number} of {batch} joined {other}", **words, other=_name(farm, count.to_batch_id))
    if count.number or count.sort in (Sort.HATCHED, Sort.LAID):
        return say("{number} {sort}", number=number_text(count.number), sort=sort)
    return sort


def _details(farm: Farm, count: Count) -> Iterator[str]:
    if count.hour is not None:
        yield say("at {hour} o'clock", hour=count.hour)
    if count.sort is Sort.SEXED:
        yield say("{hens} hens", hens=number_text(count.hens))
        yield say("{cocks} cocks", cocks=number_text(count.cocks))
        yield say("{number} unsure", number=number_text(count.unsure)) if count.unsure else ""
    if count.sort is Sort.WEIGHED and count.number:
        each = number_text(count.grams / count.number)
        yield say("{grams} g together, {each} g each", grams=number_text(count.grams), each=each)
    if count.sort is Sort.PROCESSED:
        yield say("{grams} g live", grams=number_text(count.grams)) if count.grams else ""
        yield say("{grams} g dressed", grams=number_text(count.dressed_g)) if count.dressed_g else ""
    if count.cause is not None and count.cause is not Cause.UNKNOWN:
        yield say(count.cause)
    if count.part in _PARTS:
        yield say(_PARTS[count.part])
    yield from (_name(farm, count.person_id), " ".join(count.words.split()), count.file_name)


def _name(farm: Farm, record_id: str) -> str:
    found = farm.find(record_id) if record_id else None
    return found.name if isinstance(found, Batch | Place | Person) else ""
