"""Whether counts make sense: what they are of is there, their numbers can be, and no egg or bird is lost twice.

Also what the keeper has said about chores, and chores of the keeper's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import datetime, time

from quailsched.farm.check_values import date_faults, text_faults, whole_faults
from quailsched.farm.fact_words import count_words, field_words
from quailsched.farm.facts import ChoreMark, Count, OwnChore, Sort
from quailsched.farm.faults import Fault, Finding, Words, field_of
from quailsched.farm.ledger import FIELDS, Line, lines_of, standing, traces_in
from quailsched.farm.records import Batch, Farm, Part, Person, Place
from quailsched.farm.terms import named
from quailsched.farm.units import count_text, day_text
from quailsched.words import number_text, say

MOST_NUMBER = 1_000_000
MOST_GRAMS = 1_000_000_000
MOST_HOURS = 24.0
MOST_WORDS = 2_000
MOST_DAYS_BETWEEN = 3_660  # or weeks, months, years, of a chore that comes round


def count_faults(farm: Farm, count: Count) -> Iterator[Fault]:
    """The faults of one count by itself, and of what it names."""
    where = count_words(count)
    yield from date_faults(field_of(where, say("day")), count.day, "day")
    for field in ("number", "hens", "cocks"):
        yield from whole_faults(field_of(where, field_words(field)), getattr(count, field), 0, MOST_NUMBER, field)
    for field in ("grams", "dressed_g"):
        yield from whole_faults(field_of(where, field_words(field)), getattr(count, field), 0, MOST_GRAMS, field)
    if not 0 <= count.hours <= MOST_HOURS:
        accepted = say("a number from {least} to {most} is accepted", least=0, most=number_text(MOST_HOURS))
        yield Fault(field_of(where, field_words("hours")), count.hours, accepted, "hours")
    if count.hour is not None:
        yield from whole_faults(field_of(where, field_words("hour")), count.hour, 0, 23, "hour")
    if len(count.words) > MOST_WORDS:
        accepted = say("up to {most} letters are accepted", most=number_text(MOST_WORDS))
        yield Fault(field_of(where, field_words("words")), count.words[:40] + "…", accepted, "words")
    if not count.is_taken_back:
        yield from _missing_faults(count, where)
    yield from _reference_faults(farm, count, where)


def _missing_faults(count: Count, where: str) -> Iterator[Fault]:
    """What a count of this sort cannot do without; and parts that are more than the whole."""
    needed = [field[:-1] for field in FIELDS[count.sort] if field.endswith("!")]
    needed += ["batch_id"] if count.sort.needs_batch else []
    for field in needed:
        if not getattr(count, field):
            accepted = say("{sort} needs it", sort=say(count.sort))
            yield Fault(field_of(where, field_words(field)), Finding(say("it is missing")), accepted, field)
    if count.sort is Sort.SEXED and count.unsure < 0:
        both = number_text(count.hens + count.cocks)
        accepted = say("of {number} birds up to {number} are hens or cocks", number=number_text(count.number))
        yield Fault(field_of(where, say("hens and cocks")), both, accepted, "hens")
    if count.sort is Sort.PROCESSED and count.grams and count.dressed_g > count.grams:
        accepted = say("not more than the live weight of {grams} g is accepted", grams=number_text(count.grams))
        yield Fault(field_of(where, field_words("dressed_g")), count.dressed_g, accepted, "dressed_g")
    file_name = count.file_name
    if file_name and ("/" in file_name or "\\" in file_name or file_name in (".", "..")):
        accepted = say("the name of a file in the farm's folder of photos is accepted")
        yield Fault(field_of(where, field_words("file_name")), file_name, accepted, "file_name")


def _reference_faults(farm: Farm, count: Count, where: str) -> Iterator[Fault]:
    for field, cls in (("batch_id", Batch), ("to_batch_id", Batch), ("place_id", Place), ("person_id", Person)):
        record_id = getattr(count, field)
        if record_id and not isinstance(farm.find(record_id), cls):
            accepted = say("the id of a record of this farm is accepted")
            yield Fault(field_of(where, field_words(field)), record_id, accepted, field)
    corrected = farm.find(count.corrects) if count.corrects else None
    if count.corrects and not (
        isinstance(corrected, Count) and (corrected.sort, corrected.batch_id) == (count.sort, count.batch_id)
    ):
        accepted = say("the id of a count of the same sort, of the same batch, is accepted")
        yield Fault(field_of(where, say("corrects")), count.corrects, accepted, "corrects")
    if count.is_taken_back and not count.corrects:
        accepted = say("what is taken back is needed")
        yield Fault(field_of(where, say("corrects")), Finding(say("it is missing")), accepted, "corrects")
    if count.batch_id and count.batch_id == count.to_batch_id:
        accepted = say("another batch is accepted")
        yield Fault(field_of(where, field_words("to_batch_id")), count.to_batch_id, accepted, "to_batch_id")


def counts_faults_of(farm: Farm, batch: Batch) -> Iterator[Fault]:
    """The faults of the counts of ``batch`` together, each with the id of the count that is one too many."""
    for line in lines_of(batch, farm.counts_of(batch.id)):
        where = field_of(count_words(line.count), batch.name)
        for fault in (*_day_faults(batch, line, where), *_number_faults(batch, line, where)):
            yield replace(fault, record_id=line.count.id)
    yield from _plan_faults(farm, batch)


def _day_faults(batch: Batch, line: Line, where: str) -> Iterator[Fault]:
    count = line.count
    if count.sort.needs_batch and count.day < batch.start:
        accepted = say(
            "{batch} was set on {day}: that day or a later one is accepted"
            if batch.origin.is_eggs
            else "{batch} came on {day}: that day or a later one is accepted",
            batch=batch.name, day=day_text(batch.start, count.day),
        )  # fmt: skip
        yield Fault(field_of(where, say("day")), day_text(count.day, batch.start), accepted, "day")
    is_about_eggs = count.sort.is_of_eggs or count.sort is Sort.HATCHED
    if is_about_eggs and not batch.origin.is_eggs and count.batch_id == batch.id:
        accepted = say("{batch} came as birds: it has no eggs in a machine", batch=batch.name)
        yield Fault(field_of(where, say("sort")), say(count.sort), accepted, "sort")


def _number_faults(batch: Batch, line: Line, where: str) -> Iterator[Fault]:
    """More than there were. Birds that joined are counted with the batch that they left."""
    count = line.count
    if count.batch_id != batch.id:
        return
    number = field_of(where, field_words("number"))
    is_of_eggs = count.sort in (Sort.CLEAR, Sort.QUIT, Sort.PIPPED, Sort.HATCHED) and batch.origin.is_eggs
    if is_of_eggs and count.number > max(line.eggs, 0):
        accepted = say(
            "of {set} set, {left} were left by then", set=count_text(batch.number, "egg"), left=number_text(line.eggs)
        )
        yield Fault(number, count.number, accepted, "number")
    is_about_birds = count.sort.takes_birds or count.sort in (Sort.COUNTED, Sort.SEXED, Sort.WEIGHED, Sort.MOVED)
    if is_about_birds and count.number > max(line.birds, 0):
        accepted = say("{batch} had {birds} by then", batch=batch.name, birds=count_text(max(line.birds, 0), "bird"))
        yield Fault(number, count.number, accepted, "number")


def _plan_faults(farm: Farm, batch: Batch) -> Iterator[Fault]:
    """A plan that says otherwise than what happened: facts win."""
    for count in standing(farm.counts_of(batch.id)):
        if count.batch_id != batch.id:
            yield from _parted_faults(farm, batch, count)
            continue
        where = field_of(count_words(count), batch.name)
        if count.sort is Sort.SET and (count.day, count.number) != (batch.start, batch.number):
            accepted = say(
                "{eggs} were set on {day}; what happened stays, correct the count instead",
                eggs=count_text(count.number, "egg"), day=day_text(count.day),
            )  # fmt: skip
            planned = say("{eggs} on {day}", eggs=count_text(batch.number, "egg"), day=day_text(batch.start))
            yield Fault(where, Words(planned), accepted, "start", batch.id)
        if count.sort is Sort.MOVED and not _is_there(batch, count):
            place = farm.find(count.place_id)
            accepted = say(
                "it moved to {place} on {day}; what happened stays, correct the count instead",
                place=place.name if isinstance(place, Place) else count.place_id, day=day_text(count.day),
            )  # fmt: skip
            yield Fault(where, Finding(say("the plan says otherwise")), accepted, "stays", batch.id)


def _parted_faults(farm: Farm, batch: Batch, count: Count) -> Iterator[Fault]:
    """Birds that became ``batch`` are as many as left the other one, on that day."""
    if count.sort is not Sort.PARTED or (count.day, count.number) == (batch.start, batch.number):
        return
    other = farm.find(count.batch_id)
    accepted = say(
        "{birds} parted from {batch} on {day}; what happened stays",
        birds=count_text(count.number, "bird"), day=day_text(count.day),
        batch=other.name if isinstance(other, Batch) else count.batch_id,
    )  # fmt: skip
    planned = say("{birds} on {day}", birds=count_text(batch.number, "bird"), day=day_text(batch.start))
    is_start = count.day != batch.start
    yield Fault(field_of(count_words(count), batch.name), Words(planned), accepted, "start" if is_start else "number",
                batch.id)  # fmt: skip


def correction_faults(counts: Iterable[Count]) -> Iterator[Fault]:
    """Counts of which two stand in the place of one, or one in its own, so that none of them would hold."""
    counts = tuple(counts)
    seen: set[str] = set()
    trace_of = traces_in(counts)
    for count in counts:
        where = field_of(count_words(count), say("corrects"))
        if count.corrects and count.corrects in seen:
            accepted = say("another count corrects it already, each is corrected once")
            yield Fault(where, count.corrects, accepted, "corrects", count.id)
        elif count.corrects and any(before.id == count.id for before in trace_of(count)):
            accepted = say("it stands in the place of itself by that, the id of a count before it is accepted")
            yield Fault(where, count.corrects, accepted, "corrects", count.id)
        seen.add(count.corrects)


def _is_there(batch: Batch, count: Count) -> bool:
    """Whether a stay of the birds that moved begins where and when they did."""
    day = (count.day - batch.start).days
    parts = {count.part, Part.ALL} if count.part is not Part.ALL else set(Part)
    return any(s.place_id == count.place_id and s.from_day == day and s.part in parts for s in batch.stays)


def mark_faults(farm: Farm, mark: ChoreMark) -> Iterator[Fault]:
    where = say("chore mark")
    if not mark.key.strip():
        yield Fault(field_of(where, say("key")), mark.key, say("the key of a chore is needed"), "key")
    for day in (mark.day, mark.done_on, mark.moved_to):
        if day is not None:
            yield from date_faults(field_of(where, say("day")), day, "day")
    if mark.left_out:
        yield from text_faults(where, mark.left_out, "reason")
    if mark.person_id and not isinstance(farm.find(mark.person_id), Person):
        accepted = say("the id of a record of this farm is accepted")
        yield Fault(field_of(where, field_words("person_id")), mark.person_id, accepted, "person_id")


def chore_faults(farm: Farm, chore: OwnChore) -> Iterator[Fault]:
    """The faults of a chore of the keeper's own; its rule must be one that comes round by days at most."""
    yield from text_faults(say("chore"), chore.name)
    where = named(OwnChore, chore.name)
    yield from date_faults(field_of(where, say("first day")), chore.first, "first")
    if chore.repeat and not _is_rule(chore):
        accepted = say(
            "a rule of RFC 5545 by days, weeks, months or years, such as FREQ=WEEKLY;INTERVAL=2, is accepted"
        )
        yield Fault(field_of(where, say("repeat")), chore.repeat[:60], accepted, "repeat")
    for field, cls in (("batch_id", Batch), ("place_id", Place), ("person_id", Person)):
        record_id = getattr(chore, field)
        if record_id and not isinstance(farm.find(record_id), cls):
            accepted = say("the id of a record of this farm is accepted")
            yield Fault(field_of(where, field_words(field)), record_id, accepted, field)


def _is_rule(chore: OwnChore) -> bool:
    steps = ("FREQ=DAILY", "FREQ=WEEKLY", "FREQ=MONTHLY", "FREQ=YEARLY")
    parts = chore.repeat.upper().split(";")
    values = dict(part.partition("=")[::2] for part in parts)
    if len(chore.repeat) > 200 or len(chore.repeat.split()) != 1 or not any(step in parts for step in steps):
        return False
    if any(name in values for name in ("BYHOUR", "BYMINUTE", "BYSECOND", "DTSTART")):
        return False
    if not _is_step(values.get("INTERVAL", "1")):  # by 0 days at a time it would never end
        return False
    from dateutil.rrule import rrulestr  # here, for it takes a while to come in, and most farms need it never

    try:
        rrulestr(chore.repeat, dtstart=datetime.combine(chore.first, time()), ignoretz=True)
    except (ValueError, TypeError):
        return False
    return True


def _is_step(text: str) -> bool:
    return text.isascii() and text.isdigit() and 1 <= int(text[:6]) <= MOST_DAYS_BETWEEN
