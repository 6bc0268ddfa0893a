"""Fertility and hatch of several batches together: of the eggs of one breeding group, or out of one incubator."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Farm, Place
from quailsched.outlook.batch_measures import HatchCounts, Measures, hatch_measures
from quailsched.season.season import Season


@dataclass(frozen=True, slots=True)
class HatchGroup:
    """``batches`` that have something in common: ``from_ids`` whose hens laid the eggs, or the place where they were
    set (``is_set``), hatched (``is_hatched``), or both."""

    batches: tuple[Batch, ...]
    measures: Measures
    from_ids: tuple[str, ...] = ()
    place: Place | None = None
    is_set: bool = False
    is_hatched: bool = False

    @property
    def eggs(self) -> int:
        return sum(batch.number for batch in self.batches)


def hatch_counts(farm: Farm, batch: Batch) -> HatchCounts | None:
    return HatchCounts.of(batch, [one for one in standing(farm.counts_of(batch.id)) if one.batch_id == batch.id])


def breeding_groups(farm: Farm) -> list[HatchGroup]:
    """By whose eggs they were, in the order of the first batch. Eggs of several groups are a group of their own: they
    cannot be told apart."""
    found: dict[tuple[str, ...], list[Batch]] = {}
    for batch in farm.batches:
        if batch.origin.is_eggs and batch.from_ids:
            found.setdefault(tuple(sorted(batch.from_ids)), []).append(batch)
    return [HatchGroup(tuple(one), _measures(farm, one), from_ids=ids) for ids, one in found.items()]


def incubators(season: Season) -> list[HatchGroup]:
    """By the place of the first stay, and by that of the hatch; one group where both have the same batches."""
    farm, found = season.farm, []
    set_in: dict[str, list[Batch]] = {}
    hatched_in: dict[str, list[Batch]] = {}
    for batch in farm.batches:
        if not batch.origin.is_eggs or not batch.stays:
            continue
        set_in.setdefault(batch.stays[0].place_id, []).append(batch)
        if (place_id := _hatch_place(season, batch)) is not None:
            hatched_in.setdefault(place_id, []).append(batch)
    for place in farm.places:
        if not place.role.holds_eggs:
            continue
        first, last = set_in.get(place.id, []), hatched_in.get(place.id, [])
        both = first == last
        if first:
            found.append(HatchGroup(tuple(first), _measures(farm, first), (), place, is_set=True, is_hatched=both))
        if last and not both:
            found.append(HatchGroup(tuple(last), _measures(farm, last), (), place, is_hatched=True))
    return found


def _hatch_place(season: Season, batch: Batch) -> str | None:
    """The last machine into which the eggs went before the hatch, or on its day; None if they went into none."""
    hatch = season.days(batch).hatch
    machines = [stay for stay in batch.stays if season.farm.place(stay.place_id).role.holds_eggs]
    there = [stay for stay in machines if stay.from_day <= hatch]
    return there[-1].place_id if there else None


def _measures(farm: Farm, batches: Iterable[Batch]) -> Measures:
    return hatch_measures(*(hatch_counts(farm, batch) for batch in batches))
