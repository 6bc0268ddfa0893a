"""The example farm "Pebble Bank". An invention: people, places and batches are nobody's.

It lies around any day that is asked for, so that it always has a past, a present and a season ahead. Its places and
notes are named in the language that is spoken when it is made.
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
from quailsched.words import say

# Cold nights by month of a mild coast, January first, invented; the other half of the earth has them half a
# year later. The example lies on the half that has its warm months ahead.
_NORTH_LOWS_C = (3.0, 3.0, 5.0, 7.0, 10.0, 13.0, 15.0, 15.0, 12.0, 9.0, 6.0, 4.0)
_SOUTH_LOWS_C = _NORTH_LOWS_C[6:] + _NORTH_LOWS_C[:6]

# The places by their positions.
_SETTER, _TRAY, _CABINET, _TUB, _SHED, _RUN, _ARK = range(7)


def first_day(today: date) -> date:
    """The day on which the example around ``today`` begins; it is the same for all days of a week."""
    return today - timedelta(days=35 + today.weekday())


def example_farm(today: date, new_id: Callable[[], str]) -> Farm:
    """Pebble Bank in its sixth week on ``today``; ids come from ``new_id``."""
    day_0 = first_day(today)
    places = _places(day_0, new_id)
    at = {place.position: place.id for place in places}
    is_north = _warmth_ahead(_NORTH_LOWS_C, today) >= _warmth_ahead(_SOUTH_LOWS_C, today)
    settings = Settings(
        id=new_id(),
        name="Pebble Bank",
        night_lows_c=_NORTH_LOWS_C if is_north else _SOUTH_LOWS_C,
        latitude=51.0 if is_north else -41.0,
        note=say("An example. Change what you like, or begin your own with Farm › New farm."),
    )
    people, batches = _people(day_0, new_id), _batches(day_0, at, new_id)
    reason = say("Two weeks on grass after the cocks are parted.")
    later = FigureChoice(new_id(), "coturnix", "process_day", 56.0, reason=reason)
    return Farm(settings, places, people, batches, (later,))


def _warmth_ahead(lows: tuple[float, ...], today: date) -> float:
    return sum(lows[(today + timedelta(days=30 * n)).month - 1] for n in range(1, 6))


def _places(day_0: date, new_id: Callable[[], str]) -> tuple[Place, ...]:
    return (
        Place(new_id(), say("Bench setter"), Role.SETTER, _SETTER, egg_places=180, turns_itself=True),
        Place(new_id(), say("Hatching tray"), Role.HATCHER, _TRAY, egg_places=150, clean_out_days=1),
        Place(new_id(), say("Old cabinet"), Role.CABINET, _CABINET, egg_places=60, clean_out_days=1),
        Place(
            new_id(), say("Tub brooder"), Role.BROODER, _TUB, floor_cm2=13_000, clean_out_days=3,
            heat_sources=1, feeder_cm=240, drinker_cm=60,
        ),
        Place(
            new_id(), say("Shed brooder"), Role.BROODER, _SHED, floor_cm2=22_000, clean_out_days=3,
            heat_sources=1, feeder_cm=360, drinker_cm=80,
        ),
        # 22.5 hours at 10.5 a week, which is what the people below have, take the 15 days to ready_on.
        Place(
            new_id(), say("Long run"), Role.PEN, _RUN, floor_cm2=68_000, clean_out_days=7, outdoors=True,
            ready_on=day_0 + timedelta(days=50),
            note=say("Roof and netting still to do; a lamp on a timer hangs already."),
            light_hours=14.0, work_hours=22.5, work_from=day_0 + timedelta(days=35),
        ),
        Place(new_id(), say("Grass ark"), Role.GRASS_PEN, _ARK, floor_cm2=12_000, clean_out_days=1, outdoors=True),
    )  # fmt: skip


def _people(day_0: date, new_id: Callable[[], str]) -> tuple[Person, ...]:
    def span(start: int, end: int, reason: str) -> Span:
        return Span(day_0 + timedelta(days=start), day_0 + timedelta(days=end), reason)

    return (
        Person(
            new_id(), "Ann", away=(span(58, 61, say("family visit")), span(117, 124, say("holiday"))), build_hours=7.0
        ),
        Person(
            new_id(), "Leo", is_grown_up=False, away=(span(56, 61, say("school trip")),),
            note=say("after school"), build_hours=3.5,
        ),
    )  # fmt: skip


def _batches(day_0: date, at: dict[int, str], new_id: Callable[[], str]) -> tuple[Batch, ...]:
    def batch(
        name: str, start: int, eggs: int, stays: tuple[Stay, ...], kind: str = "coturnix", egg_age_days: int = 0
    ) -> Batch:
        first = day_0 + timedelta(days=start)
        return Batch(new_id(), name, kind, Origin.OWN_EGGS, first, eggs, stays, egg_age_days=egg_age_days)

    def bench() -> tuple[Stay, ...]:
        return (Stay(at[_SETTER], 0, 15), Stay(at[_TRAY], 15, 18))

    def brooded(place: int, out: int) -> tuple[Stay, ...]:
        return (Stay(at[place], 18, out),)

    def grown(out: int) -> tuple[Stay, ...]:
        """In the run together until the cocks mature; then the hens stay and the cocks are finished on grass."""
        return (
            Stay(at[_RUN], out, 59),
            Stay(at[_RUN], 59, None, Part.HENS),
            Stay(at[_ARK], 59, 73, Part.COCKS, Leaving.PROCESSED),
        )

    started = (Stay(at[_RUN], 46, 59, leaving=Leaving.SOLD),)
    sold = (Stay(at[_RUN], 46, 66, leaving=Leaving.SOLD),)
    cabinet = (Stay(at[_CABINET], 0, 18),)
    return (
        batch("Aster", 0, 96, bench() + brooded(_TUB, 46) + grown(46)),
        batch("Bracken", 21, 132, bench() + brooded(_SHED, 46) + grown(46)),
        batch("Clover", 42, 140, bench() + brooded(_TUB, 45) + grown(45)),
        batch("Dill", 63, 148, bench() + brooded(_SHED, 46) + started, egg_age_days=5),
        batch("Elder", 84, 58, cabinet + brooded(_SHED, 46) + grown(46)),
        batch("Fern", 98, 54, cabinet + brooded(_TUB, 46) + sold),
        replace(
            batch("Gorse", 114, 60, bench() + brooded(_SHED, 42), kind="coturnix-heavy"),
            origin=Origin.SHIPPED_EGGS, note=say("A heavier strain, first try."),
        ),
    )  # fmt: skip
