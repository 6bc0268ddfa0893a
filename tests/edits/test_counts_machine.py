"""Random plans, counts, corrections and undos: the farm is always sound, no bird or egg is lost or made."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta

from hypothesis import note
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from quailsched.edits.batches import change_place, end_stay, shift
from quailsched.edits.change import Change, apply
from quailsched.edits.counts import correct, record, take_back
from quailsched.edits.groups import join, part_off
from quailsched.edits.records import put, remove
from quailsched.edits.splits import split_batch
from quailsched.farm.check import faults_of
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.kinds import kind_of
from quailsched.farm.ledger import FIELDS, eggs_left, standing, total
from quailsched.farm.records import Batch, Farm, Part, farm_of
from quailsched.season.birds import birds_on, hatched
from quailsched.season.clashes import checked
from quailsched.season.days import days_of
from quailsched.season.lived import lived_of
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, RUN, SETTER, bought, eggs, farm, stay
from tests.edits.counted import ROUTE, TOGETHER

TODAY = MONDAY + timedelta(days=120)
NOW = datetime(2027, 3, 1, 7, tzinfo=UTC)
PLACES = [place.id for place in (SETTER, HATCHER, BROODER, PEN, RUN, ARK)]
# As often as a keeper counts them, or nearly.
SORTS = [
    *(Sort.SET, Sort.CLEAR, Sort.CLEAR, Sort.QUIT, Sort.PIPPED, Sort.FEATHERED, Sort.WEIGHED, Sort.LAID, Sort.NOTE),
    *(Sort.HATCHED, Sort.HATCHED, Sort.HATCHED, Sort.COUNTED, Sort.COUNTED, Sort.SEXED, Sort.BUILT),
    *(Sort.DIED, Sort.DIED, Sort.MOVED, Sort.MOVED, Sort.SOLD, Sort.SOLD, Sort.PROCESSED),
]


def begin() -> Farm:
    return farm(
        eggs("Clover", 60, *ROUTE),
        eggs("Dill", 40, *TOGETHER, start=MONDAY + timedelta(days=9)),
        bought("Rue", 12, 30, stay(PEN, 0, None)),
        *(RUN, ARK, PEN),
        replace(BROODER, ready_on=MONDAY + timedelta(days=20), work_hours=12.0, work_from=MONDAY),
        plain=False,
    )


class Counts(RuleBasedStateMachine):
    """``undone`` are the changes that can be done again, ``done`` those with the farm before each."""

    @initialize()
    def start(self) -> None:
        self.farm, self.done, self.undone, self.number = begin(), [], [], 0  # type: ignore[var-annotated]

    def do(self, step: Callable[[], Change], *, is_fact: bool = False) -> None:
        """A step that the farm may refuse with a sentence, and then is as it was. A fact is never refused because the
        plan says otherwise: it follows."""
        try:
            change = step()
        except FarmError as error:
            note(f"refused: {error}")
            if is_fact and all(fault.field in ("stays", "start") for fault in error.faults):
                raise AssertionError("a fact is refused for the plan's sake") from error
            return
        self.done.append((self.farm, change))
        self.farm = apply(self.farm, change)
        self.undone.clear()

    def a_batch(self, data: st.DataObject) -> Batch:
        return self.farm.batch(data.draw(st.sampled_from([batch.id for batch in self.farm.batches])))

    def a_standing(self, data: st.DataObject) -> Count:
        by_id = {one.id: one for one in standing(self.farm.counts)}
        return by_id[data.draw(st.sampled_from(list(by_id)))]

    def a_count(self, data: st.DataObject, sort: Sort, batch: Batch) -> Count:
        """One of ``sort``, most often one that can be."""
        self.number += 1
        kind, counts = kind_of(self.farm, batch), self.farm.counts_of(batch.id)
        lived = lived_of(batch, counts)
        day = data.draw(st.integers(0, 90) | st.sampled_from([15, 16, 17, 18, 46]))
        on = batch.start + timedelta(days=day)
        has = {field.removesuffix("!") for field in FIELDS[sort]}
        part = data.draw(st.sampled_from(Part)) if "part" in has else Part.ALL
        if sort.is_of_eggs or sort is Sort.HATCHED:
            most = eggs_left(batch, counts, TODAY)
        else:
            apart = any(one.part is not Part.ALL for one in batch.stays)
            most = birds_on(kind, batch, 10_000 if lived.known_to is None else lived.known_to,
                            part if apart else Part.ALL, lived)  # fmt: skip
        number = data.draw(st.integers(0, max(most, 0) + 1)) if "number" in has else 0
        hens = data.draw(st.integers(0, number)) if "hens" in has else 0
        cocks = data.draw(st.integers(0, number - hens)) if "cocks" in has else 0
        return Count(
            f"count {self.number}", sort, min(on, TODAY), NOW + timedelta(minutes=self.number), number,
            batch.id if sort.needs_batch else "",
            data.draw(st.sampled_from(PLACES)) if "place_id" in has else "", part, hens, cocks,
            grams=number * 150 if sort is Sort.WEIGHED else 0, words="seen" if sort is Sort.NOTE else "",
        )  # fmt: skip

    @rule(data=st.data(), sort=st.sampled_from(SORTS))
    def count(self, data: st.DataObject, sort: Sort) -> None:
        a_count = self.a_count(data, sort, self.a_batch(data))
        self.do(lambda: record(self.farm, a_count, TODAY), is_fact=sort not in (Sort.MOVED, Sort.SET))

    @rule(data=st.data())
    def hatch(self, data: st.DataObject) -> None:
        """Of the eggs that are left, as many as can be, on about their day: so that there are birds to lose."""
        batch = self.a_batch(data)
        left = eggs_left(batch, self.farm.counts_of(batch.id), TODAY)
        a_count = self.a_count(data, Sort.HATCHED, batch)
        day = batch.start + timedelta(days=data.draw(st.integers(15, 19)))
        self.do(lambda: record(self.farm, replace(a_count, number=left // 2, day=day), TODAY), is_fact=True)

    @precondition(lambda self: bool(standing(self.farm.counts)))
    @rule(data=st.data())
    def correct(self, data: st.DataObject) -> None:
        old = self.a_standing(data)
        batch = self.farm.find(old.batch_id)
        better = self.a_count(data, old.sort, batch if isinstance(batch, Batch) else self.farm.batches[0])
        better = replace(better, batch_id=old.batch_id, day=data.draw(st.sampled_from([old.day, better.day])))
        self.do(lambda: correct(self.farm, old.id, better, TODAY))

    @precondition(lambda self: bool(standing(self.farm.counts)))
    @rule(data=st.data())
    def take_back(self, data: st.DataObject) -> None:
        old = self.a_standing(data)
        self.number += 1
        new_id, at = f"count {self.number}", NOW + timedelta(minutes=self.number)
        self.do(lambda: take_back(self.farm, old.id, new_id, at))

    @precondition(lambda self: len(self.farm.batches) < 6)
    @rule(data=st.data(), place=st.sampled_from(PLACES[2:]))
    def part_off(self, data: st.DataObject, place: str) -> None:
        a_count = self.a_count(data, Sort.PARTED, self.a_batch(data))
        new = replace(a_count, place_id=place, to_batch_id=f"batch {self.number}")
        self.do(lambda: part_off(self.farm, new, f"Batch {self.number}", TODAY))

    @rule(data=st.data())
    def join(self, data: st.DataObject) -> None:
        a_count = self.a_count(data, Sort.JOINED, self.a_batch(data))
        other = replace(a_count, to_batch_id=self.a_batch(data).id)
        self.do(lambda: join(self.farm, other, TODAY))

    @rule(data=st.data(), days=st.integers(-5, 5), number=st.integers(1, 80), place=st.sampled_from(PLACES))
    def plan(self, data: st.DataObject, days: int, number: int, place: str) -> None:
        """Set on another day, more or fewer eggs, a border on another day, another place, two batches, none."""
        batch = self.a_batch(data)
        index = data.draw(st.integers(0, len(batch.stays) - 1))
        stay_of = batch.stays[index]
        end = (stay_of.to_day or 90) + days
        steps: list[Callable[[], Change]] = [
            lambda: shift(self.farm, batch.id, days),
            lambda: put(self.farm, replace(batch, number=number)),
            lambda: end_stay(self.farm, batch.id, index, end),
            lambda: change_place(self.farm, batch.id, index, place),
            lambda: split_batch(self.farm, batch.id, number, index, stay_of.from_day + 1, place),
            lambda: remove(self.farm, batch.id),
        ]
        if len(self.farm.batches) < 6 or len(self.farm.batches) > 2:
            self.do(data.draw(st.sampled_from(steps[: 6 if len(self.farm.batches) > 2 else 4])))

    @precondition(lambda self: self.done)
    @rule()
    def undo(self) -> None:
        before, change = self.done.pop()
        after, self.farm = self.farm, apply(self.farm, change.inverse())
        assert self.farm == before
        self.undone.append((after, change))

    @precondition(lambda self: self.undone)
    @rule()
    def redo(self) -> None:
        after, change = self.undone.pop()
        before, self.farm = self.farm, apply(self.farm, change)
        assert self.farm == after
        self.done.append((before, change))

    @invariant()
    def is_sound(self) -> None:
        assert faults_of(self.farm) == []
        fresh = farm_of(list(self.farm.records()))
        assert fresh == self.farm
        for batch in self.farm.batches:
            assert self.farm.counts_of(batch.id) == fresh.counts_of(batch.id)

    @invariant()
    def no_egg_is_lost(self) -> None:
        """Eggs set = clear + quit + hatched + left."""
        for batch in self.farm.batches:
            counts = [one for one in standing(self.farm.counts) if one.batch_id == batch.id]
            if batch.origin.is_eggs:
                left = eggs_left(batch, self.farm.counts_of(batch.id), TODAY)
                assert left >= 0
                assert batch.number == total(counts, Sort.CLEAR, Sort.QUIT, Sort.HATCHED) + left

    @invariant()
    def no_bird_is_lost(self) -> None:
        """Hatched or brought in + joined = alive on the last counted day + died + sold + processed + parted + gone
        over; and the groups are all of them."""
        for batch in self.farm.batches:
            kind, lived = kind_of(self.farm, batch), lived_of(batch, self.farm.counts_of(batch.id))
            all_counts = standing(self.farm.counts)
            counts = [one for one in all_counts if one.batch_id == batch.id]
            joined = total([one for one in all_counts if one.to_batch_id == batch.id], Sort.JOINED)
            if batch.origin.is_eggs and lived.hatched is None:
                continue
            came = total(counts, Sort.HATCHED) if batch.origin.is_eggs else batch.number
            assert hatched(kind, batch, lived) == came
            gone = total(counts, Sort.DIED, Sort.SOLD, Sort.PROCESSED, Sort.PARTED, Sort.JOINED)
            till = max(lived.known_to or 0, lived.hatch or 0)
            alive = birds_on(kind, batch, till, Part.ALL, lived)
            assert came + joined == alive + gone, batch.name
            if lived.known_to is not None and any(one.part is not Part.ALL for one in batch.stays):
                groups = [birds_on(kind, batch, till, part, lived) for part in (Part.HENS, Part.COCKS)]
                assert sum(groups) == alive

    @invariant()
    def never_fewer_than_none_and_never_more_by_themselves(self) -> None:
        for batch in self.farm.batches:
            kind, lived = kind_of(self.farm, batch), lived_of(batch, self.farm.counts_of(batch.id))
            known = max(lived.known_to or 0, days_of(kind, batch, lived).hatch)
            many = [birds_on(kind, batch, day, Part.ALL, lived) for day in range(known, known + 60, 7)]
            assert min(many) >= 0
            if lived.known_to is not None:
                assert many == sorted(many, reverse=True)

    def teardown(self) -> None:
        """All undone and done again; a look at only what changed by each step finds what a fresh look does."""
        if not hasattr(self, "farm"):
            return
        while self.done:
            self.undo()
        assert self.farm == begin()
        found = checked(Season(self.farm))
        while self.undone:
            self.redo()
            found = found.after(self.farm)
            assert found.clashes == checked(Season(self.farm)).clashes


TestCounts = Counts.TestCase
