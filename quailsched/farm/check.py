"""Whether a farm is sound: every record makes sense by itself and beside the others.

Sound does not mean free of clashes: a plan may be bad, but it must be a plan. Document faults of form
(unknown fields, wrong types) are found in ``store.document``; these are faults of meaning.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Sequence
from datetime import date

from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.records import Batch, Farm, FigureChoice, Part, Person, Place, Settings, Span, Stay
from quailsched.husbandry.bounds import order_faults
from quailsched.husbandry.handbook import handbook, kind_with

EARLIEST, LATEST = date(1990, 1, 1), date(2199, 12, 31)
MOST_EGGS = 100_000
MOST_FLOOR_CM2 = 100_000_000
MOST_DAYS = 3_650
MOST_CLEAN_OUT_DAYS = 90
MOST_NAME_LETTERS = 100


def faults_of(farm: Farm) -> list[Fault]:
    """Every fault of ``farm``, in the order of its records; empty if it is sound."""
    faults = list(_settings_faults(farm.settings))
    for what, records in (("place", farm.places), ("person", farm.people), ("batch", farm.batches)):
        faults += _name_faults(what, records)
    for place in farm.places:
        faults += _place_faults(place)
    for person in farm.people:
        faults += _span_faults(f"person {person.name}, away", person.away, "away")
    for batch in farm.batches:
        faults += batch_faults(farm, batch)
    faults += _choice_faults(farm.choices)
    return faults


def require_sound(farm: Farm) -> Farm:
    """``farm`` itself. Raises FarmError with every fault if it is not sound."""
    faults = faults_of(farm)
    if faults:
        raise FarmError(faults)
    return farm


def _settings_faults(settings: Settings) -> Iterator[Fault]:
    yield from _text_faults("farm", settings.name)
    lows = settings.night_lows_c
    if len(lows) not in (0, 12):
        accepted = "twelve night lows are needed, January to December, or none"
        yield Fault("farm, night lows", f"{len(lows)} values", accepted, "night_lows_c")
    for low in lows:
        if not -60 <= low <= 40:
            yield Fault("farm, night lows", low, "between -60 and 40 °C is accepted", "night_lows_c")
    if settings.latitude is not None and not -90 <= settings.latitude <= 90:
        yield Fault("farm, latitude", settings.latitude, "between -90 and 90 degrees is accepted", "latitude")


def _name_faults(what: str, records: Sequence[Place | Person | Batch]) -> Iterator[Fault]:
    seen: set[str] = set()
    for record in records:
        name = record.name.strip()
        yield from _text_faults(what, record.name)
        if name and name.casefold() in seen:
            yield Fault(f"{what}, name", name, f"another {what} has it already, each needs its own", "name")
        seen.add(name.casefold())


def _text_faults(what: str, name: str) -> Iterator[Fault]:
    """Every list shows a name within one line, so it must fit there."""
    where = f"{what}, name"
    if not name.strip():
        yield Fault(where, name, "a name of at least one letter is needed", "name")
    elif len(name) > MOST_NAME_LETTERS:
        start = " ".join(name[:40].split())
        yield Fault(where, f"{start}…", f"a name of up to {MOST_NAME_LETTERS} letters is accepted", "name")
    elif any(unicodedata.category(letter) in ("Cc", "Zl", "Zp") for letter in name):
        shown = "".join(letter if letter.isprintable() else " " for letter in name)
        yield Fault(where, shown, "a name on one line, without tabs, is accepted", "name")


def _whole(where: str, value: int, least: int, most: int, field: str) -> Iterator[Fault]:
    if not least <= value <= most:
        yield Fault(where, value, f"a whole number from {least:,} to {most:,} is accepted", field)


def _place_faults(place: Place) -> Iterator[Fault]:
    where = f"place {place.name}"
    if place.role.holds_eggs:
        yield from _whole(f"{where}, egg places", place.egg_places, 1, MOST_EGGS, "egg_places")
        if place.floor_cm2:
            yield Fault(f"{where}, floor", place.floor_cm2, f"a {place.role} has egg places, no floor", "floor_cm2")
    else:
        yield from _whole(f"{where}, floor in cm²", place.floor_cm2, 100, MOST_FLOOR_CM2, "floor_cm2")
        if place.egg_places:
            accepted = f"a {place.role} has floor, no egg places"
            yield Fault(f"{where}, egg places", place.egg_places, accepted, "egg_places")
    yield from _whole(f"{where}, clean-out days", place.clean_out_days, 0, MOST_CLEAN_OUT_DAYS, "clean_out_days")
    if place.ready_on is not None:
        yield from _date_faults(f"{where}, ready on", place.ready_on, "ready_on")
    yield from _span_faults(f"{where}, out of use", place.shut, "shut")


def _date_faults(where: str, day: date, field: str) -> Iterator[Fault]:
    if not EARLIEST <= day <= LATEST:
        yield Fault(where, day.isoformat(), f"a day from {EARLIEST} to {LATEST} is accepted", field)


def _span_faults(where: str, spans: tuple[Span, ...], field: str) -> Iterator[Fault]:
    for span in spans:
        if span.end <= span.start:
            shown = f"{span.start} to {span.end}"
            yield Fault(where, shown, "the end is the first day after, so it lies after the start", field)
        yield from _date_faults(where, span.start, field)
        yield from _date_faults(where, span.end, field)


def batch_faults(farm: Farm, batch: Batch) -> Iterator[Fault]:
    """The faults of one batch, its route included."""
    where = f"batch {batch.name}"
    if batch.kind not in handbook():
        yield Fault(f"{where}, kind", batch.kind, f"one of {', '.join(handbook())} is accepted", "kind")
    yield from _date_faults(f"{where}, start", batch.start, "start")
    what = "eggs set" if batch.origin.is_eggs else "birds brought in"
    yield from _whole(f"{where}, {what}", batch.number, 1, MOST_EGGS, "number")
    yield from _whole(f"{where}, age in days", batch.age_days, 0, 1_000, "age_days")
    yield from _whole(f"{where}, days the eggs were stored", batch.egg_age_days, 0, 60, "egg_age_days")
    if batch.origin.is_eggs and batch.age_days:
        yield Fault(f"{where}, age in days", batch.age_days, "eggs have no age as birds: 0 is accepted", "age_days")
    if not batch.origin.is_eggs and batch.egg_age_days:
        accepted = "birds that were brought in have no stored eggs: 0 is accepted"
        yield Fault(f"{where}, days the eggs were stored", batch.egg_age_days, accepted, "egg_age_days")
    yield from _route_faults(farm, batch, where)


def _route_faults(farm: Farm, batch: Batch, where: str) -> Iterator[Fault]:
    if not batch.stays:
        yield Fault(f"{where}, stays", "none", "at least the place of its first day is needed", "stays")
        return
    for stay in batch.stays:
        if not isinstance(farm.find(stay.place_id), Place):
            yield Fault(
                f"{where}, place of a stay", stay.place_id, "the id of a place of this farm is accepted", "stays"
            )
        if stay.to_day is not None and stay.to_day <= stay.from_day:
            shown = f"day {stay.from_day} to day {stay.to_day}"
            yield Fault(f"{where}, stay", shown, "a stay ends after the day it starts on", "stays")
    first = batch.stays[0]
    place = farm.find(first.place_id)
    if isinstance(place, Place) and place.role.holds_eggs is not batch.origin.is_eggs:
        accepted = "eggs start where eggs are held" if batch.origin.is_eggs else "birds start on a floor"
        yield Fault(f"{where}, first place", place.name, accepted, "stays")
    yield from _chain_faults(batch, where)


def _chain_faults(batch: Batch, where: str) -> Iterator[Fault]:
    together = [s for s in batch.stays if s.part is Part.ALL]
    apart = [s for s in batch.stays if s.part is not Part.ALL]
    if list(batch.stays) != together + sorted(apart, key=lambda s: s.part is Part.COCKS):
        shown = ", ".join(s.part for s in batch.stays)
        yield Fault(f"{where}, stays", shown, "first the stays of all, then of the hens, then of the cocks", "stays")
        return
    yield from _follow_faults(together, 0, where, is_last=not apart)
    split_day = together[-1].to_day if together else 0
    for part in (Part.HENS, Part.COCKS):
        chain = [s for s in apart if s.part is part]
        if chain and split_day is not None:
            yield from _follow_faults(chain, split_day, f"{where}, {part}", is_last=True)


def _follow_faults(chain: list[Stay], start: int, where: str, is_last: bool) -> Iterator[Fault]:
    """Each stay starts where the one before it ends; only the last one may be open or end in leaving."""
    due: int | None = start
    for index, stay in enumerate(chain):
        ends_chain = is_last and index == len(chain) - 1
        if due is not None and stay.from_day != due:
            word = "leaves a gap" if stay.from_day > due else "overlaps the one before"
            accepted = f"it {word}: day {due} is accepted"
            yield Fault(f"{where}, stay from day", stay.from_day, accepted, "stays")
        if stay.to_day is None and not ends_chain:
            yield Fault(f"{where}, stay to day", "open", "only the last stay may be open: a day is needed", "stays")
        if stay.to_day is not None and stay.to_day > MOST_DAYS:
            yield Fault(f"{where}, stay to day", stay.to_day, f"up to day {MOST_DAYS:,} is accepted", "stays")
        if stay.leaving is not None and (not ends_chain or stay.to_day is None):
            accepted = "only a last stay that ends may say where its birds go"
            yield Fault(f"{where}, leaving", str(stay.leaving), accepted, "stays")
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
            yield Fault(f"figures of {kind_id}", ", ".join(c.key for c in own), sentence.rstrip("."), "value")


def _single_choice_faults(choices: tuple[FigureChoice, ...]) -> Iterator[Fault]:
    seen: set[tuple[str, str]] = set()
    for choice in choices:
        where = f"figure {choice.kind} {choice.key}"
        if (choice.kind, choice.key) in seen:
            yield Fault(where, choice.key, "a farm replaces each figure once", "key")
        seen.add((choice.kind, choice.key))
        if choice.kind not in handbook():
            yield Fault(where, choice.kind, f"one of {', '.join(handbook())} is accepted", "kind")
            continue
        shown = choice.value if choice.value is not None else "its points"
        try:
            kind_with(handbook()[choice.kind], ((choice.key, choice.value, choice.points),))
        except (ValueError, KeyError) as error:
            yield Fault(where, shown, str(error).strip("'\""), "value")
