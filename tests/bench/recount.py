"""A plain recount: for each day all batches and all their stays are gone over afresh. Slow on purpose.

It knows nothing of footprints, spells or slices, and so is what the quick look is measured and judged against.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil, floor

from quailsched.farm.facts import Count, Sort
from quailsched.farm.kinds import kind_of
from quailsched.farm.records import Batch, Farm, Origin, Place, Role
from quailsched.husbandry.kind import Kind
from quailsched.season.birds import birds_on
from quailsched.season.clash import Clash
from quailsched.season.lived import Lived, lived_of

KINDS = ("eggs", "cabinet", "floor", "calm", "crowd", "heat", "water", "feeder", "ages", "quarantine")
Broken = tuple[str, str, date]  # kind of clash, place, day


@dataclass(frozen=True, slots=True)
class Here:
    """A batch in a place on one day, which is ``day`` of the batch; its birds are ``age`` days old."""

    batch: Batch
    kind: Kind
    day: int
    age: int
    eggs: int
    birds: int


@dataclass(frozen=True, slots=True)
class Known:
    """What holds of a batch on all days: its kind, its day of hatch, its counts that stand."""

    kind: Kind
    hatch: int
    counts: tuple[Count, ...]
    lived: Lived

    @property
    def replaced(self) -> int:
        return self.hatch + self.kind.days("first_egg_day") + self.kind.days("keep_lay_days")


def broken_days(farm: Farm) -> set[Broken]:
    """What is broken, where and on which day, of the rules in ``KINDS``."""
    if not farm.batches:
        return set()
    known = {batch.id: _known(farm, batch) for batch in farm.batches}
    ends = [batch.start + timedelta(days=_end(known[batch.id], batch)) for batch in farm.batches]
    day, end = min(batch.start for batch in farm.batches), max(ends)
    found: set[Broken] = set()
    while day < end:
        for place_id, here in _on(farm, known, day).items():
            place = farm.place(place_id)
            found.update((kind, place_id, day) for kind in _broken(place, here))
        day += timedelta(days=1)
    return found


def days_of_clashes(clashes: Sequence[Clash]) -> set[Broken]:
    """The same of clashes: those of ``KINDS`` day by day."""
    return {
        (clash.kind, clash.place_id, clash.first + timedelta(days=number))
        for clash in clashes
        if clash.kind in KINDS
        for number in range((clash.last - clash.first).days + 1)
    }


def _known(farm: Farm, batch: Batch) -> Known:
    kind = kind_of(farm, batch)
    gone = {count.corrects for count in farm.counts}
    counts = [count for count in farm.counts if count.id not in gone and not count.is_taken_back]
    own = tuple(sorted((c for c in counts if c.batch_id == batch.id), key=lambda count: count.day))
    return Known(kind, _hatch(kind, batch, own), own, lived_of(batch, farm.counts_of(batch.id)))


def _hatch(kind: Kind, batch: Batch, counts: Sequence[Count]) -> int:
    """The first day by which half of the chicks were out; of no chicks, the day of the last look; else as planned."""
    hatches = [count for count in counts if count.sort is Sort.HATCHED]
    many = sum(count.number for count in hatches)
    for count in hatches:
        out = sum(one.number for one in hatches if one.day <= count.day)
        if out and 2 * out >= many:
            return (count.day - batch.start).days
    if hatches:
        return (hatches[-1].day - batch.start).days
    return kind.days("incubation_days") if batch.origin.is_eggs else -batch.age_days


def _end(known: Known, batch: Batch) -> int:
    return max(max(known.replaced, s.from_day + 1) if s.to_day is None else s.to_day for s in batch.stays)


def _on(farm: Farm, known: dict[str, Known], day: date) -> dict[str, list[Here]]:
    """Who is where on ``day``, by place."""
    found: dict[str, list[Here]] = {}
    for batch in farm.batches:
        number = (day - batch.start).days
        for stay in batch.stays:
            if number < stay.from_day or (stay.to_day is not None and number >= stay.to_day):
                continue
            of = known[batch.id]
            if stay.to_day is None and number >= max(of.replaced, stay.from_day + 1):
                continue
            age = number - of.hatch
            are_eggs = batch.origin.is_eggs and (age < 0 or farm.place(stay.place_id).role.holds_eggs)
            out = sum(c.number for c in of.counts if c.sort in (Sort.CLEAR, Sort.QUIT) and c.day <= day)
            eggs = batch.number - out if are_eggs else 0
            birds = birds_on(of.kind, batch, number, stay.part, of.lived)
            found.setdefault(stay.place_id, []).append(Here(batch, of.kind, number, age, eggs, birds))
    return found


def _broken(place: Place, here: list[Here]) -> Iterator[str]:
    if place.role.holds_eggs:
        yield from _broken_eggs(place, here)
        return
    birds = sum(one.birds for one in here)
    if sum(one.birds * ceil(one.kind.at("floor_cm2", one.age)) for one in here if one.age >= 0) > place.floor_cm2:
        yield "floor"
    if birds > min(int(one.kind.value("crowd_birds")) for one in here):
        yield "crowd"
    if place.role.is_pen and 0 < birds < ceil(place.floor_cm2 / max(one.kind.value("calm_area_cm2") for one in here)):
        yield "calm"
    if place.role is Role.BROODER:
        yield from _broken_brooder(place, here)
    edge = sum(one.birds * one.kind.value("drinker_cm") for one in here)
    if place.drinker_cm is not None and round(edge, 6) > place.drinker_cm:
        yield "water"
    edge = sum(one.birds * one.kind.at("feeder_edge_cm", one.age) for one in here if one.birds)
    if place.feeder_cm is not None and round(edge, 6) > place.feeder_cm:
        yield "feeder"
    if any(_is_quarantined(one) for one in here) and len({one.batch.id for one in here if one.birds}) > 1:
        yield "quarantine"


def _is_quarantined(one: Here) -> bool:
    return bool(one.birds) and one.batch.origin is Origin.BOUGHT_BIRDS and one.day < one.kind.days("quarantine_days")


def _broken_eggs(place: Place, here: list[Here]) -> Iterator[str]:
    eggs = sum(one.eggs for one in here)
    still = sum(one.eggs for one in here if one.day >= one.kind.days("lockdown_day"))
    if eggs > place.egg_places:
        yield "eggs"
    wrong = {Role.SETTER: still, Role.HATCHER: eggs - still, Role.CABINET: min(still, eggs - still)}[place.role]
    if wrong:
        yield "cabinet"


def _broken_brooder(place: Place, here: list[Here]) -> Iterator[str]:
    young = [one for one in here if one.birds and one.age < one.kind.days("heat_off_day")]
    if place.heat_sources is not None and young:
        warmed = floor(place.heat_sources * min(one.kind.value("heat_source_chicks") for one in young))
        if sum(one.birds for one in young) > warmed:
            yield "heat"
    ages = [one.age for one in here if one.birds]
    if ages and max(ages) - min(ages) > min(one.kind.days("age_gap_days") for one in here):
        yield "ages"
