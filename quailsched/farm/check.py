"""Whether a farm is sound: every record makes sense by itself and beside the others.

Sound does not mean free of clashes: a plan may be bad, but it must be a plan. Document faults of form
(unknown fields, wrong types) are found in ``store.document``; these are faults of meaning.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from quailsched.farm.check_counts import chore_faults, correction_faults, count_faults, counts_faults_of, mark_faults
from quailsched.farm.check_values import EARLIEST as EARLIEST
from quailsched.farm.check_values import LATEST as LATEST
from quailsched.farm.check_values import MOST_NAME_LETTERS as MOST_NAME_LETTERS
from quailsched.farm.check_values import between_faults, date_faults, text_faults, whole_faults
from quailsched.farm.faults import FarmError, Fault, Finding, Words, field_of
from quailsched.farm.plain_values import shown
from quailsched.farm.records import (
    Acceptance,
    Batch,
    Farm,
    FigureChoice,
    Part,
    Person,
    Place,
    Record,
    Role,
    Settings,
    Span,
    Stay,
    Trial,
    TrialRecord,
)
from quailsched.farm.terms import named
from quailsched.farm.trial_text import read_text
from quailsched.farm.units import count_text
from quailsched.husbandry.bounds import order_faults
from quailsched.husbandry.handbook import handbook, kind_with
from quailsched.words import marked, number_text, say

MOST_EGGS = 100_000
MOST_FLOOR_CM2 = 100_000_000
MOST_DAYS = 3_650
MOST_CLEAN_OUT_DAYS = 90
MOST_HEAT_SOURCES = 1_000
MOST_EDGE_CM = 1_000_000
MOST_WORK_HOURS = 10_000
LEAST_SURE_PCT, MOST_SURE_PCT = 50, 99
HOURS_IN_A_DAY = 24
HOURS_IN_A_WEEK = 168
MOST_AMOUNT = 1_000_000_000
MOST_BIRDS = 1_000_000
MOST_CLASH_DAYS = 100_000


def faults_of(farm: Farm) -> list[Fault]:
    """Every fault of ``farm``, in the order of its records; empty if it is sound."""
    faults = list(_settings_faults(farm.settings))
    named: dict[str, Sequence[Place | Person | Batch | Trial]] = {
        "place": farm.places, "person": farm.people, "batch": farm.batches, "trial": farm.trials
    }  # fmt: skip
    for what, records in named.items():
        faults += faults_of_names(what, records)
    for place in farm.places:
        faults += _of(place, _place_faults(place))
    for person in farm.people:
        faults += _of(person, _person_faults(person))
    for batch in farm.batches:
        faults += faults_of_batch(farm, batch)
    faults += _choice_faults(farm.choices)
    for acceptance in farm.acceptances:
        faults += _of(acceptance, _acceptance_faults(farm, acceptance))
    for trial in farm.trials:
        faults += _of(trial, _trial_faults(trial))
    for count in farm.counts:
        faults += _of(count, count_faults(farm, count))
    faults += correction_faults(farm.counts)
    for mark in farm.marks:
        faults += _of(mark, mark_faults(farm, mark))
    for chore in farm.own_chores:
        faults += _of(chore, chore_faults(farm, chore))
    return faults


def faults_of_batch(farm: Farm, batch: Batch) -> list[Fault]:
    """The faults of one batch of ``farm``, but for those of its name beside other names."""
    own = _of(batch, batch_faults(farm, batch))
    return [*own, *(counts_faults_of(farm, batch) if farm.counts_of(batch.id) else ())]


def require_sound(farm: Farm) -> Farm:
    """``farm`` itself. Raises FarmError with every fault if it is not sound."""
    faults = faults_of(farm)
    if faults:
        raise FarmError(faults)
    return farm


def _of(record: Record, faults: Iterator[Fault]) -> Iterator[Fault]:
    return (replace(fault, record_id=record.id) for fault in faults)


def _settings_faults(settings: Settings) -> Iterator[Fault]:
    farm = say("farm")
    yield from text_faults(farm, settings.name)
    lows = settings.night_lows_c
    if len(lows) not in (0, 12):
        accepted = say("twelve night lows are needed, January to December, or none")
        found = Words(count_text(len(lows), "value"))
        yield Fault(field_of(farm, say("night lows")), found, accepted, "night_lows_c")
    for low in lows:
        if not -60 <= low <= 40:
            accepted = say("between -60 and 40 °C is accepted")
            yield Fault(field_of(farm, say("night lows")), low, accepted, "night_lows_c")
    if settings.latitude is not None and not -90 <= settings.latitude <= 90:
        accepted = say("between -90 and 90 degrees is accepted")
        yield Fault(field_of(farm, say("latitude")), settings.latitude, accepted, "latitude")
    sure = field_of(farm, say("how sure"))
    yield from whole_faults(sure, settings.sure_pct, LEAST_SURE_PCT, MOST_SURE_PCT, "sure_pct")


def faults_of_names(what: str, records: Sequence[Place | Person | Batch | Trial]) -> Iterator[Fault]:
    """Names that are none, or that two records of one sort have; ``what`` is the word for the sort, to be said."""
    seen: set[str] = set()
    for record in records:
        name = record.name.strip()
        yield from text_faults(say(what), record.name)
        if name and name.casefold() in seen:
            accepted = say("another {what} has it already, each needs its own", what=say(what))
            yield Fault(field_of(say(what), say("name")), name, accepted, "name")
        seen.add(name.casefold())


def _person_faults(person: Person) -> Iterator[Fault]:
    where = named(Person, person.name)
    yield from _span_faults(field_of(where, say("away")), person.away, "away")
    hours = field_of(where, say("hours of building a week"))
    yield from between_faults(hours, person.build_hours, 0, HOURS_IN_A_WEEK, "build_hours")


def _place_faults(place: Place) -> Iterator[Fault]:
    where = named(Place, place.name)
    yield from _room_faults(place, where)
    clean_out = field_of(where, say("clean-out days"))
    yield from whole_faults(clean_out, place.clean_out_days, 0, MOST_CLEAN_OUT_DAYS, "clean_out_days")
    if place.ready_on is not None:
        yield from date_faults(field_of(where, say("ready on")), place.ready_on, "ready_on")
    yield from _span_faults(field_of(where, say("out of use")), place.shut, "shut")
    yield from _fitting_faults(place, where)
    yield from between_faults(
        field_of(where, say("hours of work left")), place.work_hours, 0, MOST_WORK_HOURS, "work_hours"
    )
    counted_on = field_of(where, say("work counted on"))
    if place.work_from is not None:
        yield from date_faults(counted_on, place.work_from, "work_from")
    elif place.work_hours:
        accepted = say("the day on which the hours of work were counted is needed")
        yield Fault(counted_on, Finding(say("no day is given")), accepted, "work_from")


def _room_faults(place: Place, where: str) -> Iterator[Fault]:
    """Egg places or floor: what its role has, and nothing of the other."""
    egg_places = field_of(where, say("egg places"))
    if place.role.holds_eggs:
        yield from whole_faults(egg_places, place.egg_places, 1, MOST_EGGS, "egg_places")
        if place.floor_cm2:
            accepted = say("a {role} has egg places, no floor", role=say(place.role))
            yield Fault(field_of(where, say("floor")), place.floor_cm2, accepted, "floor_cm2")
        return
    yield from whole_faults(field_of(where, say("floor in cm²")), place.floor_cm2, 100, MOST_FLOOR_CM2, "floor_cm2")
    if place.egg_places:
        accepted = say("a {role} has floor, no egg places", role=say(place.role))
        yield Fault(egg_places, place.egg_places, accepted, "egg_places")


def _fitting_faults(place: Place, where: str) -> Iterator[Fault]:
    """Heat sources, feeders, drinkers and lamps; None is what was not told."""
    counts = (
        ("heat_sources", say("heat sources"), place.heat_sources, MOST_HEAT_SOURCES),
        ("feeder_cm", say("feeder space in cm"), place.feeder_cm, MOST_EDGE_CM),
        ("drinker_cm", say("drinker space in cm"), place.drinker_cm, MOST_EDGE_CM),
    )
    for field, words, count, most in counts:
        if count is not None:
            yield from whole_faults(field_of(where, words), count, 0, most, field)
            yield from _needless_faults(place, field_of(where, words), count, field)
    if place.light_hours is not None:
        words = field_of(where, say("hours of light a day"))
        yield from between_faults(words, place.light_hours, 0, HOURS_IN_A_DAY, "light_hours")
        yield from _needless_faults(place, words, place.light_hours, "light_hours")


def _needless_faults(place: Place, where: str, value: float, field: str) -> Iterator[Fault]:
    """Eggs need none of it, and feathered birds no heat."""
    if place.role.holds_eggs or (field == "heat_sources" and place.role is not Role.BROODER):
        accepted = say("a {role} has none, so it is left empty", role=say(place.role))
        yield Fault(where, value, accepted, field)


def _span_faults(where: str, spans: tuple[Span, ...], field: str) -> Iterator[Fault]:
    for span in spans:
        if span.end <= span.start:
            shown = say("{start} to {end}", start=span.start, end=span.end)
            yield Fault(where, shown, say("the end is the first day after, so it lies after the start"), field)
        yield from date_faults(where, span.start, field)
        yield from date_faults(where, span.end, field)


# Two fields of a route that others look for in a fault (``is_at``): to be said.
PLACE_OF_A_STAY = marked("place of a stay")
FIRST_PLACE = marked("first place")


def is_at(fault: Fault, field: str) -> bool:
    """Whether ``fault`` is one of the field with these words, not yet said."""
    return fault.where.endswith(field_of("", say(field)))


def batch_faults(farm: Farm, batch: Batch) -> Iterator[Fault]:
    """The faults of one batch, its route included."""
    where = named(Batch, batch.name)
    if batch.kind not in handbook():
        yield Fault(field_of(where, say("kind")), batch.kind, _one_of_kinds(), "kind")
    yield from date_faults(field_of(where, say("start")), batch.start, "start")
    what = say("eggs set") if batch.origin.is_eggs else say("birds brought in")
    yield from whole_faults(field_of(where, what), batch.number, 1, MOST_EGGS, "number")
    age, stored = field_of(where, say("age in days")), field_of(where, say("days the eggs were stored"))
    yield from whole_faults(age, batch.age_days, 0, 1_000, "age_days")
    yield from whole_faults(stored, batch.egg_age_days, 0, 60, "egg_age_days")
    if batch.origin.is_eggs and batch.age_days:
        yield Fault(age, batch.age_days, say("eggs have no age as birds: 0 is accepted"), "age_days")
    if not batch.origin.is_eggs and batch.egg_age_days:
        accepted = say("birds that were brought in have no stored eggs: 0 is accepted")
        yield Fault(stored, batch.egg_age_days, accepted, "egg_age_days")
    yield from _route_faults(farm, batch, where)


def _one_of_kinds() -> str:
    return say("one of {choices} is accepted", choices=", ".join(handbook()))


def _route_faults(farm: Farm, batch: Batch, where: str) -> Iterator[Fault]:
    if not batch.stays:
        accepted = say("at least the place of its first day is needed")
        yield Fault(field_of(where, say("stays")), Finding(say("there are none")), accepted, "stays")
        return
    for stay in batch.stays:
        if not isinstance(farm.find(stay.place_id), Place):
            accepted = say("the id of a place of this farm is accepted")
            yield Fault(field_of(where, say(PLACE_OF_A_STAY)), stay.place_id, accepted, "stays")
        if stay.to_day is not None and stay.to_day <= stay.from_day:
            shown = say("day {first} to day {last}", first=stay.from_day, last=stay.to_day)
            yield Fault(field_of(where, say("stay")), shown, say("a stay ends after the day it starts on"), "stays")
    first = batch.stays[0]
    place = farm.find(first.place_id)
    if isinstance(place, Place) and place.role.holds_eggs is not batch.origin.is_eggs:
        accepted = say("eggs start where eggs are held") if batch.origin.is_eggs else say("birds start on a floor")
        yield Fault(field_of(where, say(FIRST_PLACE)), place.name, accepted, "stays")
    yield from _chain_faults(batch, where)


def _chain_faults(batch: Batch, where: str) -> Iterator[Fault]:
    together = [s for s in batch.stays if s.part is Part.ALL]
    apart = [s for s in batch.stays if s.part is not Part.ALL]
    if list(batch.stays) != together + sorted(apart, key=lambda s: s.part is Part.COCKS):
        shown = ", ".join(say(s.part) for s in batch.stays)
        accepted = say("first the stays of all, then of the hens, then of the cocks")
        yield Fault(field_of(where, say("stays")), shown, accepted, "stays")
        return
    yield from _follow_faults(together, 0, where, is_last=not apart)
    split_day = together[-1].to_day if together else 0
    for part in (Part.HENS, Part.COCKS):
        chain = [s for s in apart if s.part is part]
        if chain and split_day is not None:
            yield from _follow_faults(chain, split_day, field_of(where, say(part)), is_last=True)


def _follow_faults(chain: list[Stay], start: int, where: str, is_last: bool) -> Iterator[Fault]:
    """Each stay starts where the one before it ends; only the last one may be open or end in leaving."""
    due: int | None = start
    for index, stay in enumerate(chain):
        ends_chain = is_last and index == len(chain) - 1
        if due is not None and stay.from_day != due:
            accepted = say(
                "it leaves a gap: day {day} is accepted"
                if stay.from_day > due
                else "it overlaps the one before: day {day} is accepted",
                day=due,
            )
            yield Fault(field_of(where, say("stay from day")), stay.from_day, accepted, "stays")
        to_day = field_of(where, say("stay to day"))
        if stay.to_day is None and not ends_chain:
            yield Fault(to_day, say("open"), say("only the last stay may be open: a day is needed"), "stays")
        if stay.to_day is not None and stay.to_day > MOST_DAYS:
            accepted = say("up to day {most} is accepted", most=number_text(MOST_DAYS))
            yield Fault(to_day, stay.to_day, accepted, "stays")
        if stay.leaving is not None and (not ends_chain or stay.to_day is None):
            accepted = say("only a last stay that ends may say where its birds go")
            yield Fault(field_of(where, say("leaving")), say(stay.leaving), accepted, "stays")
        due = stay.to_day


def _choice_faults(choices: tuple[FigureChoice, ...]) -> Iterator[Fault]:
    faults = list(_single_choice_faults(choices))
    yield from faults
    if faults:
        return
    for kind_id in sorted({choice.kind for choice in choices}):
        own = [choice for choice in choices if choice.kind == kind_id]
        figures = kind_with(handbook()[kind_id], tuple((c.key, c.value, c.points) for c in own)).figures
        for sentence in order_faults(figures):
            where = say("figures of {kind}", kind=kind_id)
            yield Fault(where, Finding(sentence.rstrip(".")), "", "value")


def _single_choice_faults(choices: tuple[FigureChoice, ...]) -> Iterator[Fault]:
    seen: set[tuple[str, str]] = set()
    for choice in choices:
        where = named(FigureChoice, f"{choice.kind} {choice.key}")
        if (choice.kind, choice.key) in seen:
            yield Fault(where, choice.key, say("a farm replaces each figure once"), "key")
        seen.add((choice.kind, choice.key))
        if choice.kind not in handbook():
            yield Fault(where, choice.kind, _one_of_kinds(), "kind")
            continue
        try:
            kind_with(handbook()[choice.kind], ((choice.key, choice.value, choice.points),))
        except (ValueError, KeyError) as error:
            yield Fault(where, Finding(str(error).strip("'\"").rstrip(".")), "", "value")


def acceptance_words(farm: Farm, acceptance: Acceptance) -> str:
    """The words for an accepted clash in a fault. It has no name, and its place may have gone."""
    place = farm.find(acceptance.place_id)
    if isinstance(place, Place):
        return say("accepted clash in {place}", place=place.name)
    return say("accepted clash in a place that has gone")


def _acceptance_faults(farm: Farm, acceptance: Acceptance) -> Iterator[Fault]:
    where = acceptance_words(farm, acceptance)
    if not acceptance.kind.strip():
        accepted = say("the word for a kind of clash is needed")
        yield Fault(field_of(where, say("kind")), acceptance.kind, accepted, "kind")
    if not acceptance.place_id.strip():
        accepted = say("the id of a place is needed")
        yield Fault(field_of(where, say("place")), acceptance.place_id, accepted, "place_id")
    batches = field_of(where, say("batches"))
    if not acceptance.batch_ids:
        accepted = say("the id of at least one batch is needed")
        yield Fault(batches, Finding(say("there are none")), accepted, "batch_ids")
    for batch_id in acceptance.batch_ids:
        if not batch_id.strip():
            yield Fault(batches, batch_id, say("the id of a batch is needed"), "batch_ids")
    yield from text_faults(where, acceptance.reason, "reason")
    yield from between_faults(field_of(where, say("amount")), acceptance.amount, 0, MOST_AMOUNT, "amount")
    yield from whole_faults(field_of(where, say("birds")), acceptance.birds, 0, MOST_BIRDS, "birds")
    yield from whole_faults(field_of(where, say("days")), acceptance.days, 1, MOST_CLASH_DAYS, "days")


def _trial_faults(trial: Trial) -> Iterator[Fault]:
    """The records of a trial can be read. Whether they fit the plan of today is asked when it is looked at."""
    where = field_of(named(Trial, trial.name), say("records"))
    ids = [one.record_id for one in trial.records]
    for record_id in sorted({one for one in ids if ids.count(one) > 1}):
        yield Fault(where, record_id, say("a trial has each record once"), "records")
    for one in trial.records:
        if not one.record_id.strip():
            yield Fault(where, one.record_id, say("the id of a record is needed"), "records")
        elif one.content and not _is_record(one):
            accepted = say("the JSON text of a record with this id is needed")
            found = Finding(say("its content is something else"))
            yield Fault(field_of(where, str(shown(one.record_id))), found, accepted, "records")


def _is_record(one: TrialRecord) -> bool:
    try:
        text = read_text(one.content)
    except (ValueError, RecursionError, FarmError):
        return False
    records = [record for record in (text.after, text.was) if record is not None]
    return all(record.id == one.record_id and not isinstance(record, Trial) for record in records)
