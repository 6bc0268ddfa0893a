"""A season of 40 weeks as a keeper lives it: every day the chores of the day are done and what is counted is recorded.

A script with a fixed seed, so that it can be lived again to the last byte. Run as a program it lives on in the file
that it is given, and says the number of each step once it is saved.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from random import Random
from uuid import UUID

from quailsched.chores.asks import asks_of, counts_of
from quailsched.chores.chore import Chore
from quailsched.chores.work_out import chores_between
from quailsched.edits.change import Change
from quailsched.edits.counts import correct, record, take_back
from quailsched.edits.groups import join, part_off
from quailsched.edits.marks import leave_out, put_off, tick
from quailsched.edits.records import put
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.ledger import standing
from quailsched.farm.records import Batch, Farm, Origin, Part, Person, Place, Role, Settings
from quailsched.season.route import fit_route
from quailsched.season.season import Season
from quailsched.session.farms import open_farm
from quailsched.session.open_farm import OpenFarm

START = date(2027, 1, 4)
WEEKS = 40
NAMES = (
    "Alder",
    "Birch",
    "Cedar",
    "Damson",
    "Elm",
    "Fir",
    "Gorse",
    "Hazel",
    "Ivy",
    "Juniper",
    "Larch",
    "Maple",
    "Oak",
    "Pine",
)


class Ids:
    """Ids by number: UUIDs, the same in every life."""

    def __init__(self, first: int = 1) -> None:
        self._next = first

    def __call__(self) -> str:
        self._next += 1
        return str(UUID(int=self._next))


def empty_farm(new_id: Callable[[], str]) -> Farm:
    """A setter, a hatcher, two brooders and three pens of Pebble Bank, and two people."""
    return Farm(
        Settings(new_id(), "Pebble Bank"),
        places=(
            Place(new_id(), "Setter", Role.SETTER, 0, egg_places=300, turns_itself=True),
            Place(new_id(), "Hatcher", Role.HATCHER, 1, egg_places=200),
            Place(new_id(), "Brooder", Role.BROODER, 2, floor_cm2=60_000),
            Place(new_id(), "Pen", Role.PEN, 3, floor_cm2=400_000, outdoors=True),
            Place(new_id(), "Ark", Role.GRASS_PEN, 4, floor_cm2=120_000, outdoors=True),
        ),
        people=(Person(new_id(), "Ann"), Person(new_id(), "Leo", is_grown_up=False)),
    )


class Life:
    """The keeper. Each of ``steps`` is a change that was made for the farm as it is then, to be applied at once."""

    def __init__(self, farm: Callable[[], Season], new_id: Callable[[], str], seed: int = 7) -> None:
        self._season, self._new_id, self._random = farm, new_id, Random(seed)

    def steps(self, weeks: int = WEEKS) -> Iterator[Change]:
        for number in range(weeks * 7):
            day = START + timedelta(days=number)
            if number % 21 == 0:
                yield self._plan_batch(day + timedelta(days=2), number // 21)
            for chore in chores_between(self._season(), day, day + timedelta(days=1)):
                if chore.is_open and self._is_there(chore):
                    yield self._do(chore, day)
            yield from self._evening(day)

    @property
    def _farm(self) -> Farm:
        return self._season().farm

    def _plan_batch(self, day: date, number: int) -> Change:
        new = Batch(self._new_id(), NAMES[number], "coturnix", Origin.OWN_EGGS, day, self._random.randint(40, 90))
        hens = [batch.id for batch in self._farm.batches if self._alive(batch, day)]
        return put(self._farm, fit_route(self._farm, replace(new, from_ids=tuple(hens[:1]))))

    def _is_there(self, chore: Chore) -> bool:
        """A chore of a batch that a step before it on this day may have taken away is not done any more."""
        chores = chores_between(self._season(), chore.day, chore.day + timedelta(days=1))
        return any(one.key == chore.key and one.is_open for one in chores)

    def _do(self, chore: Chore, day: date) -> Change:
        luck, told = self._random.random(), (chore.key, chore.put_off_from or chore.day, chore.title)
        if chore.kind in ("bedding", "drain", "dust bath") and luck < 0.05:
            return leave_out(self._farm, *told, "dry and clean yet")
        if chore.kind in ("set", "bedding", "drain", "move") and luck < 0.15 and chore.put_off_from is None:
            return put_off(self._farm, *told, day + timedelta(days=1))
        asked = {ask.name: self._answer(ask.name, ask.expected, chore) for ask in asks_of(self._season(), chore)}
        answers = {name: value for name, value in asked.items() if value is not None}
        counts = counts_of(self._season(), chore, answers, day, self._at(day), self._new_id)
        return tick(self._farm, *told, day, counts)

    def _answer(self, name: str, expected: int | None, chore: Chore) -> int | None:
        batch = self._farm.find(chore.batch_id or "")
        alive = self._alive(batch, chore.day) if isinstance(batch, Batch) else 0
        if name in ("clear", "quit"):
            return self._random.randint(0, 4)
        if name == "hatched" and expected is not None:
            return max(expected - self._random.randint(0, 8), 1)
        if name == "left":
            return None
        if name in ("hens", "cocks"):
            return alive // 2
        if name == "unsure":
            return alive - 2 * (alive // 2)
        if name == "laid":
            return self._random.randint(0, 30)
        if name in ("grams", "dressed"):
            return (230 if name == "grams" else 160) * (expected or 1)
        return expected if expected is None else max(min(expected, alive or expected), 0)

    def _evening(self, day: date) -> Iterator[Change]:
        for batch in self._farm.batches:
            alive = self._alive(batch, day)
            if alive > 12 and self._random.random() < 0.04:
                cause = self._random.choice(list(Cause)[:-1])
                yield self._record(Sort.DIED, day, 1, batch, cause=cause)
            if alive > 5 and day.weekday() == 6:
                yield self._record(Sort.WEIGHED, day, 5, batch, grams=5 * self._random.randint(40, 260))
            if alive > 0 and day.weekday() in (0, 2, 4, 6):
                yield self._record(Sort.FED, day, 0, batch, grams=alive * self._random.randint(50, 80))
            if alive > 30 and day.day == 20:
                yield self._record(Sort.SOLD, day, self._random.randint(1, 5), batch)
        if self._random.random() < 0.7:
            yield self._record(Sort.HOURS, day, 0, None, hours=self._random.choice((0.5, 1.0, 2.5)),
                               person_id=self._farm.people[0].id)  # fmt: skip
        if day.day == 1:
            yield self._record(Sort.FEED_BOUGHT, day, 0, None, grams=40_000)
            yield self._record(Sort.NOTE, day, 0, None, words=f"Seen by the vet on {day}")
        yield from self._second_thoughts(day)

    def _second_thoughts(self, day: date) -> Iterator[Change]:
        """A wrong entry is corrected or taken back; cocks part from their batch, and some go back."""
        deaths = [count for count in standing(self._farm.counts) if count.sort is Sort.DIED and count.day == day]
        if deaths and self._random.random() < 0.3:
            old = deaths[0]
            if self._random.random() < 0.5:
                yield take_back(self._farm, old.id, self._new_id(), self._at(day))
            else:
                better = replace(old, id=self._new_id(), cause=Cause.HURT)
                yield correct(self._farm, old.id, better, day)
        large = [
            b for b in self._farm.batches if b.origin.is_eggs and self._alive(b, day) > 25 and self._age(b, day) > 40
        ]
        ark = next(place for place in self._farm.places if place.role is Role.GRASS_PEN)
        if large and day.day == 11:
            count = Count(self._new_id(), Sort.PARTED, day, self._at(day), 8, large[0].id, ark.id, Part.ALL,
                          to_batch_id=self._new_id())  # fmt: skip
            yield part_off(self._farm, count, f"{large[0].name} {day:%B}", day)
        parted = [b for b in self._farm.batches if b.origin is Origin.PARTED and self._alive(b, day) > 4]
        if parted and day.day == 25:
            home = self._farm.find(parted[0].from_ids[0])
            if isinstance(home, Batch) and self._alive(home, day):
                count = Count(self._new_id(), Sort.JOINED, day, self._at(day), 3, parted[0].id, to_batch_id=home.id)
                yield join(self._farm, count, day)

    def _record(
        self, sort: Sort, day: date, number: int, batch: Batch | None, *, grams: int = 0, hours: float = 0.0,
        cause: Cause | None = None, person_id: str = "", words: str = "",
    ) -> Change:  # fmt: skip
        batch_id = batch.id if batch is not None else ""
        count = Count(self._new_id(), sort, day, self._at(day), number, batch_id, grams=grams, hours=hours,
                      cause=cause, person_id=person_id, words=words)  # fmt: skip
        return record(self._farm, count, day)

    def _alive(self, batch: Batch, day: date) -> int:
        season = self._season()
        lived = season.lived(batch)
        is_counted = lived.hatched is not None or not batch.origin.is_eggs
        return season.birds(batch, day) if is_counted and batch.start <= day else 0

    def _age(self, batch: Batch, day: date) -> int:
        return (day - batch.start).days - self._season().days(batch).hatch

    def _at(self, day: date) -> datetime:
        return datetime.combine(day, time(19), UTC)


def live(opened: OpenFarm, weeks: int = WEEKS) -> Iterator[int]:
    """Live through ``weeks`` in ``opened``; yields the number of steps after each that is saved."""
    life = Life(lambda: opened.plan_season, Ids(1_000))
    for change in life.steps(weeks):
        opened.apply(change)
        yield len(opened.history())


if __name__ == "__main__":
    for step in live(open_farm(Path(sys.argv[1]))):
        print(step, flush=True)
