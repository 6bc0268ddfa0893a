"""The example farm "Pebble Bank". An invention: people, places and batches are nobody's.

It lies around any day that is asked for, so that it always has a past, a present and a season ahead.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta

from quailsched.farm.records import (
    Batch,
    Farm,
    FigureChoice,
    Leaving,
    Origin,
    Part,
    Person,
    Place,
    Role,
    Settings,
    Span,
    Stay,
)

# Cold nights by month of a mild coast, January first, invented; the other half of the earth has them half a
# year later. The example lies on the half that has its warm months ahead.
_NORTH_LOWS_C = (3.0, 3.0, 5.0, 7.0, 10.0, 13.0, 15.0, 15.0, 12.0, 9.0, 6.0, 4.0)
_SOUTH_LOWS_C = _NORTH_LOWS_C[6:] + _NORTH_LOWS_C[:6]


def example_farm(today: date, new_id: Callable[[], str]) -> Farm:
    """Pebble Bank in its sixth week on ``today``; ids come from ``new_id``."""
    day_0 = today - timedelta(days=35 + today.weekday())
    places = _places(day_0, new_id)
    at = {place.name: place.id for place in places}
    is_north = _warmth_ahead(_NORTH_LOWS_C, today) >= _warmth_ahead(_SOUTH_LOWS_C, today)
    settings = Settings(
        id=new_id(),
        name="Pebble Bank",
        night_lows_c=_NORTH_LOWS_C if is_north else _SOUTH_LOWS_C,
        latitude=51.0 if is_north else -41.0,
        note="An example. Change what you like, or begin your own with Farm › New farm.",
    )
    people, batches = _people(day_0, new_id), _batches(day_0, at, new_id)
    later = FigureChoice(
        new_id(), "coturnix", "process_day", 56.0, reason="Two weeks on grass after the cocks are parted."
    )
    return Farm(settings, places, people, batches, (later,))


def _warmth_ahead(lows: tuple[float, ...], today: date) -> float:
    return sum(lows[(today + timedelta(days=30 * n)).month - 1] for n in range(1, 6))


def _places(day_0: date, new_id: Callable[[], str]) -> tuple[Place, ...]:
    return (
        Place(new_id(), "Bench setter", Role.SETTER, 0, egg_places=180, turns_itself=True),
        Place(new_id(), "Hatching tray", Role.HATCHER, 1, egg_places=150, clean_out_days=1),
        Place(new_id(), "Old cabinet", Role.CABINET, 2, egg_places=60, clean_out_days=1),
        Place(
            new_id(), "Tub brooder", Role.BROODER, 3, floor_cm2=13_000, clean_out_days=3,
            heat_sources=1, feeder_cm=240, drinker_cm=60,
        ),
        Place(
            new_id(), "Shed brooder", Role.BROODER, 4, floor_cm2=22_000, clean_out_days=3,
            heat_sources=1, feeder_cm=360, drinker_cm=80,
        ),
        # 22.5 hours at 10.5 a week, which is what the people below have, take the 15 days to ready_on.
        Place(
            new_id(), "Long run", Role.PEN, 5, floor_cm2=68_000, clean_out_days=7, outdoors=True,
            ready_on=day_0 + timedelta(days=50), note="Roof and netting still to do; a lamp on a timer hangs already.",
            light_hours=14.0, work_hours=22.5, work_from=day_0 + timedelta(days=35),
        ),
        Place(new_id(), "Grass ark", Role.GRASS_PEN, 6, floor_cm2=12_000, clean_out_days=1, outdoors=True),
    )  # fmt: skip


def _people(day_0: date, new_id: Callable[[], str]) -> tuple[Person, ...]:
    def span(start: int, end: int, reason: str) -> Span:
        return Span(day_0 + timedelta(days=start), day_0 + timedelta(days=end), reason)

    return (
        Person(
            new_id(), "Ann", away=(span(58, 61, "family visit"), span(117, 124, "holiday")), build_hours=7.0
        ),
        Person(
            new_id(), "Leo", is_grown_up=False, away=(span(56, 61, "school trip"),), note="after school",
            build_hours=3.5,
        ),
    )  # fmt: skip


def _batches(day_0: date, at: dict[str, str], new_id: Callable[[], str]) -> tuple[Batch, ...]:
    def batch(
        name: str, start: int, eggs: int, stays: tuple[Stay, ...], kind: str = "coturnix", egg_age_days: int = 0
    ) -> Batch:
        first = day_0 + timedelta(days=start)
        return Batch(new_id(), name, kind, Origin.OWN_EGGS, first, eggs, stays, egg_age_days=egg_age_days)

    def bench() -> tuple[Stay, ...]:
        return (Stay(at["Bench setter"], 0, 15), Stay(at["Hatching tray"], 15, 18))

    def brooded(place: str, out: int) -> tuple[Stay, ...]:
        return (Stay(at[place], 18, out),)

    def grown(out: int) -> tuple[Stay, ...]:
        """In the run together until the cocks mature; then the hens stay and the cocks are finished on grass."""
        return (
            Stay(at["Long run"], out, 59),
            Stay(at["Long run"], 59, None, Part.HENS),
            Stay(at["Grass ark"], 59, 73, Part.COCKS, Leaving.PROCESSED),
        )

    started = (Stay(at["Long run"], 46, 59, leaving=Leaving.SOLD),)
    sold = (Stay(at["Long run"], 46, 66, leaving=Leaving.SOLD),)
    cabinet = (Stay(at["Old cabinet"], 0, 18),)
    return (
        batch("Aster", 0, 96, bench() + brooded("Tub brooder", 46) + grown(46)),
        batch("Bracken", 21, 132, bench() + brooded("Shed brooder", 46) + grown(46)),
        batch("Clover", 42, 140, bench() + brooded("Tub brooder", 45) + grown(45)),
        batch("Dill", 63, 148, bench() + brooded("Shed brooder", 46) + started, egg_age_days=5),
        batch("Elder", 84, 58, cabinet + brooded("Shed brooder", 46) + grown(46)),
        batch("Fern", 98, 54, cabinet + brooded("Tub brooder", 46) + sold),
        replace(
            batch("Gorse", 114, 60, bench() + brooded("Shed brooder", 42), kind="coturnix-heavy"),
            origin=Origin.SHIPPED_EGGS, note="A heavier strain, first try.",
        ),
    )  # fmt: skip
