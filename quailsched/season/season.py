"""The season of a farm: footprints and occupancy put together. Clashes and free days are worked out from it."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cached_property
from operator import attrgetter

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.husbandry.kind import Kind
from quailsched.season.birds import birds_on
from quailsched.season.days import Days, Stage, days_of, stage_on, stages_through
from quailsched.season.footprint import Footprint, footprint_of
from quailsched.season.lived import NOTHING, Lived, lived_of
from quailsched.season.occupancy import Emptying, Presence, Slice, Spell, emptyings_of, spells_after, spells_of


@dataclass(frozen=True, eq=False)
class Season:
    """What follows from ``farm``. Nothing is worked out before it is asked for; nothing is stored."""

    farm: Farm

    @cached_property
    def _kinds(self) -> dict[str, Kind]:
        return {kind_id: kind_in(self.farm, kind_id) for kind_id in {batch.kind for batch in self.farm.batches}}

    @cached_property
    def _days(self) -> dict[str, Days]:
        return {batch.id: days_of(self.kind(batch), batch, self.lived(batch)) for batch in self.farm.batches}

    def kind(self, batch: Batch) -> Kind:
        """The kind of a batch as this farm keeps it; the batch need not be of the farm (a batch being thought of)."""
        return self._kinds.get(batch.kind) or kind_in(self.farm, batch.kind)

    @cached_property
    def _lived(self) -> dict[str, Lived]:
        """What was asked for before: to look it up by its counts costs as much as there are counts."""
        return {}

    def lived(self, batch: Batch) -> Lived:
        """What is known of a batch by its counts."""
        counts = self.farm.counts_of(batch.id)
        if not counts:
            return NOTHING
        if self.farm.find(batch.id) is not batch:
            return lived_of(batch, counts)
        found = self._lived.get(batch.id)
        if found is None:
            found = self._lived[batch.id] = lived_of(batch, counts)
        return found

    def days(self, batch: Batch) -> Days:
        known = self.farm.find(batch.id) is batch
        return self._days[batch.id] if known else days_of(self.kind(batch), batch, self.lived(batch))

    @cached_property
    def _footprints(self) -> dict[str, Footprint]:
        return {batch.id: self._new_footprint(batch) for batch in self.farm.batches}

    def _new_footprint(self, batch: Batch) -> Footprint:
        roles = tuple(self.farm.place(s.place_id).role for s in batch.stays)
        return footprint_of(self.kind(batch), batch, roles, self.lived(batch))

    def footprint(self, batch: Batch) -> Footprint:
        known = self.farm.find(batch.id) is batch
        return self._footprints[batch.id] if known else self._new_footprint(batch)

    @cached_property
    def _presences_of_batches(self) -> dict[str, tuple[Presence, ...]]:
        return {batch.id: self._new_presences(batch) for batch in self.farm.batches}

    def _new_presences(self, batch: Batch) -> tuple[Presence, ...]:
        day_0, day_of = batch.start.toordinal(), date.fromordinal
        legs = self._footprints[batch.id].legs
        return tuple([Presence(batch, leg, day_of(day_0 + leg.start), day_of(day_0 + leg.end)) for leg in legs])

    def presences_of(self, batch: Batch) -> tuple[Presence, ...]:
        """Where ``batch`` is and when, in the order of its stays."""
        return self._presences_of_batches[batch.id]

    @cached_property
    def _spells(self) -> dict[str, tuple[Spell, ...]]:
        found: dict[str, list[Presence]] = {place.id: [] for place in self.farm.places}
        for of_batch in self._presences_of_batches.values():
            for presence in of_batch:
                found[presence.place_id].append(presence)
        return {place_id: spells_of(presences) for place_id, presences in found.items()}

    def spells(self, place: Place) -> tuple[Spell, ...]:
        """Who is in ``place`` and when, in order of days."""
        return self._spells[place.id]

    def presences(self, place: Place) -> list[Presence]:
        """Who is in ``place`` at any time, in order of their first days."""
        return list(dict.fromkeys(presence for spell in self.spells(place) for presence in spell.presences))

    def slices(self, place: Place) -> tuple[Slice, ...]:
        return tuple(piece for spell in self.spells(place) for piece in spell.slices)

    def slice_on(self, place: Place, day: date) -> Slice | None:
        """What is taken in ``place`` on ``day``; None if nobody is there."""
        spells = self.spells(place)
        at = bisect_right(spells, day, key=attrgetter("start")) - 1
        if at < 0 or day >= spells[at].end:
            return None
        return next(piece for piece in spells[at].slices if piece.start <= day < piece.end)

    def emptyings(self, place: Place) -> tuple[Emptying, ...]:
        return tuple(emptyings_of(self.spells(place)))

    def after(self, farm: Farm, old: Sequence[Batch], new: Sequence[Batch]) -> Season:
        """The season of ``farm``, in which the batches ``new`` stand in the place of ``old`` and no others differ.

        Nothing else is worked out again, so the farms must be alike in what the rest follows from (``is_like``).
        """
        season = Season(farm)
        kept = {"_kinds": dict(self._kinds), "_days": dict(self._days), "_footprints": dict(self._footprints)}
        season.__dict__.update(kept, _presences_of_batches=dict(self._presences_of_batches))
        if farm.people is self.farm.people:
            season.__dict__["_at_home"] = self._at_home
        changed = {batch.id for batch in (*old, *new)}
        season.__dict__["_lived"] = {id_: lived for id_, lived in self._lived.items() if id_ not in changed}
        gone: dict[str, list[Presence]] = {}
        come: dict[str, list[Presence]] = {}
        for batch in old:
            for presence in self.presences_of(batch):
                gone.setdefault(presence.place_id, []).append(presence)
            for known in ("_days", "_footprints", "_presences_of_batches"):
                del season.__dict__[known][batch.id]
        for batch in new:
            season._take_in(batch)
            for presence in season.presences_of(batch):
                come.setdefault(presence.place_id, []).append(presence)
        spells = dict(self._spells)
        for place_id in gone.keys() | come.keys():
            spells[place_id] = spells_after(spells[place_id], gone.get(place_id, ()), come.get(place_id, ()))
        season.__dict__["_spells"] = spells
        return season

    def _take_in(self, batch: Batch) -> None:
        self._kinds.setdefault(batch.kind, kind_in(self.farm, batch.kind))
        self._footprints[batch.id] = footprint = self._new_footprint(batch)
        self._days[batch.id] = footprint.days
        self._presences_of_batches[batch.id] = self._new_presences(batch)

    @cached_property
    def _at_home(self) -> tuple[list[date], list[tuple[bool, bool]]]:
        """Days from each of which the same people are at home, and whether anybody is, and a grown-up."""
        people = self.farm.people
        borders = {day for person in people for span in person.away for day in (span.start, span.end)}
        days = sorted(borders | {date.min})
        at_home = [[person for person in people if person.is_home(day)] for day in days]
        return days, [(bool(home), any(person.is_grown_up for person in home)) for home in at_home]

    def has_hands(self, day: date, needs_grown_up: bool) -> bool:
        """Whether somebody is at home on ``day``, a grown-up if it takes one."""
        days, at_home = self._at_home
        return at_home[bisect_right(days, day) - 1][needs_grown_up]

    def birds(self, batch: Batch, day: date, part: Part = Part.ALL) -> int:
        return birds_on(self.kind(batch), batch, (day - batch.start).days, part, self.lived(batch))

    def stage(self, presence: Presence, day: date) -> Stage:
        number = (day - presence.batch.start).days
        return stage_on(self.days(presence.batch), number, *self._staging(presence))

    def stages(self, presence: Presence) -> list[tuple[date, date, Stage]]:
        """(first day, end, stage) of each stage of a batch in a place, in order of days."""
        days, leg, day_0 = self.days(presence.batch), presence.leg, presence.batch.start
        runs = stages_through(days, leg.start, leg.end, *self._staging(presence))
        return [(day_0 + timedelta(days=start), day_0 + timedelta(days=end), stage) for start, end, stage in runs]

    def _staging(self, presence: Presence) -> tuple[Part, bool, int | None, int]:
        """What a stage depends on beside the days: part, in a brooder, day of the move to a pen, days of hardening."""
        in_brooder = not self.farm.place(presence.place_id).role.is_pen
        moves_out = presence.leg.end if self._next_is_pen(presence) else None
        return presence.part, in_brooder, moves_out, self.kind(presence.batch).days("harden_off_days")

    def _next_is_pen(self, presence: Presence) -> bool:
        follows = [s for s in presence.batch.stays if s.from_day == presence.leg.stay.to_day]
        return any(self.farm.place(stay.place_id).role.is_pen for stay in follows)

    def stays_of(self, batch: Batch) -> list[tuple[Place, Presence]]:
        """Each place of a batch with its presence there, in the order of its stays."""
        return [(self.farm.place(presence.place_id), presence) for presence in self.presences_of(batch)]


def is_like(old: Farm, new: Farm) -> bool:
    """Whether kinds and roles are the same, so that footprints and presences of unchanged batches still hold."""
    if old.choices is not new.choices and old.choices != new.choices:
        return False
    return old.places is new.places or [(p.id, p.role) for p in old.places] == [(p.id, p.role) for p in new.places]
