"""The season of a farm: footprints and occupancy put together. Clashes and free days are worked out from it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cached_property

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.husbandry.kind import Kind
from quailsched.season.birds import birds_on
from quailsched.season.days import Days, Stage, days_of, stage_on
from quailsched.season.footprint import Footprint, footprint_of
from quailsched.season.occupancy import Emptying, Presence, Slice, emptyings_of, slices_of


@dataclass(frozen=True, eq=False)
class Season:
    """What follows from ``farm``. Nothing is worked out before it is asked for; nothing is stored."""

    farm: Farm

    @cached_property
    def _kinds(self) -> dict[str, Kind]:
        return {kind_id: kind_in(self.farm, kind_id) for kind_id in {batch.kind for batch in self.farm.batches}}

    @cached_property
    def _days(self) -> dict[str, Days]:
        return {batch.id: days_of(self.kind(batch), batch) for batch in self.farm.batches}

    def kind(self, batch: Batch) -> Kind:
        """The kind of a batch as this farm keeps it; the batch need not be of the farm (a batch being thought of)."""
        return self._kinds.get(batch.kind) or kind_in(self.farm, batch.kind)

    def days(self, batch: Batch) -> Days:
        known = self.farm.find(batch.id) is batch
        return self._days[batch.id] if known else days_of(self.kind(batch), batch)

    @cached_property
    def _egg_places(self) -> frozenset[str]:
        return frozenset(place.id for place in self.farm.places if place.role.holds_eggs)

    def footprint(self, batch: Batch) -> Footprint:
        return footprint_of(self.kind(batch), batch, self._egg_places)

    @cached_property
    def _presences_of_batches(self) -> dict[str, tuple[Presence, ...]]:
        return {batch.id: self._new_presences(batch) for batch in self.farm.batches}

    def _new_presences(self, batch: Batch) -> tuple[Presence, ...]:
        return tuple(
            Presence(batch, leg, batch.start + timedelta(days=leg.start), batch.start + timedelta(days=leg.end))
            for leg in self.footprint(batch).legs
        )

    def presences_of(self, batch: Batch) -> tuple[Presence, ...]:
        """Where ``batch`` is and when, in the order of its stays."""
        return self._presences_of_batches[batch.id]

    @cached_property
    def _presences(self) -> dict[str, list[Presence]]:
        found: dict[str, list[Presence]] = {place.id: [] for place in self.farm.places}
        for batch in self.farm.batches:
            for presence in self.presences_of(batch):
                found[presence.place_id].append(presence)
        return found

    def presences(self, place: Place) -> list[Presence]:
        """Who is in ``place`` and when, in no order."""
        return self._presences[place.id]

    @cached_property
    def _slices(self) -> dict[str, tuple[Slice, ...]]:
        return {}

    def slices(self, place: Place) -> tuple[Slice, ...]:
        if place.id not in self._slices:
            self._slices[place.id] = slices_of(self.presences(place))
        return self._slices[place.id]

    def emptyings(self, place: Place) -> tuple[Emptying, ...]:
        return emptyings_of(self.presences(place))

    def birds(self, batch: Batch, day: date, part: Part = Part.ALL) -> int:
        return birds_on(self.kind(batch), batch, (day - batch.start).days, part)

    def stage(self, presence: Presence, day: date) -> Stage:
        batch = presence.batch
        place = self.farm.place(presence.leg.stay.place_id)
        moves_out = presence.leg.end if self._next_is_pen(presence) else None
        return stage_on(
            self.days(batch),
            (day - batch.start).days,
            presence.part,
            in_brooder=not place.role.is_pen,
            leaves_brooder=moves_out,
            harden=self.kind(batch).days("harden_off_days"),
        )

    def _next_is_pen(self, presence: Presence) -> bool:
        follows = [s for s in presence.batch.stays if s.from_day == presence.leg.stay.to_day]
        return any(self.farm.place(stay.place_id).role.is_pen for stay in follows)

    def stays_of(self, batch: Batch) -> Iterator[tuple[Place, Presence]]:
        """Each place of a batch with its presence there, in the order of its stays."""
        for presence in self.presences_of(batch):
            yield self.farm.place(presence.place_id), presence
