"""A farm with one batch of which things are counted, in a line each."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

from quailsched.edits.change import apply
from quailsched.edits.counts import record
from quailsched.farm.check import require_sound
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch, Farm, Leaving, Part, Place, Record
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, PEN, RUN, SETTER, eggs, farm, on, stay

NOW = datetime(2027, 3, 1, 7, 30, tzinfo=UTC)
TODAY = on(400)
# Set on day 0, hatch on day 17; parted when they leave the brooder.
ROUTE = (
    stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, None, Part.HENS),
    stay(ARK, 46, 60, Part.COCKS, Leaving.PROCESSED),
)  # fmt: skip
# The same, but all stay together until they are sold.
TOGETHER = (
    *(stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46)),
    stay(PEN, 46, 90, leaving=Leaving.SOLD),
)


def clover(*records: Record, route: tuple[Any, ...] = ROUTE, number: int = 100, plain: bool = True) -> Farm:
    """Clover of 100 eggs. Where ``plain``, each egg hatches, every bird lives and takes 200 cm2."""
    used = {one.id for one in records}
    extra = [place for place in (RUN, ARK, PEN) if place.id not in used]
    return farm(eggs("Clover", number, *route), *extra, *records, plain=plain)


def fact(sort: Sort, day: int, number: int = 0, batch: str = "clover", hour: int = 0, **more: Any) -> Count:
    """A count of Clover on ``day`` from its setting; its id is what it is of and when. ``hour`` is that of writing."""
    entered = NOW + timedelta(days=day, hours=hour)
    where = more.get("place_id", "")
    part = str(more.get("part", ""))
    return Count(f"{sort}{part}{where}-{day}-{hour}", sort, on(day), entered, number, batch, **more)


def known(one: Farm, *facts: Count) -> Farm:
    """``one`` after these counts were recorded in turn."""
    for count in facts:
        one = require_sound(apply(one, record(one, count, TODAY)))
    return one


def birds(one: Farm, day: int, part: Part = Part.ALL, batch: str = "clover") -> int:
    return Season(one).birds(one.batch(batch), on(day), part)


def stays(one: Farm, batch: str = "clover") -> list[tuple[str, int, int | None, str]]:
    """Place, first day, end, and which birds."""
    return [(s.place_id, s.from_day, s.to_day, str(s.part)) for s in one.batch(batch).stays]


def eggs_in(one: Farm, place: Place, day: int) -> int:
    found = Season(one).slice_on(place, on(day))
    return 0 if found is None else found.eggs


def sized(place: Place, floor_cm2: int) -> Place:
    return replace(place, floor_cm2=floor_cm2)


def batch_of(one: Farm, batch: str = "clover") -> Batch:
    return one.batch(batch)
