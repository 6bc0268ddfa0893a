"""A farm of 500 batches over ten years and 12 places, to measure on: a batch a week, every eighth kept for lay."""

from __future__ import annotations

from datetime import date, timedelta
from random import Random

from quailsched.farm.records import Batch, Farm, Leaving, Origin, Part, Person, Place, Role, Settings, Span, Stay

FIRST_DAY = date(2027, 1, 4)
BATCHES = 500
YEARS = 10
_LOWS_C = (3.0, 3.0, 5.0, 7.0, 10.0, 13.0, 15.0, 15.0, 12.0, 9.0, 6.0, 4.0)


def big_farm(batches: int = BATCHES, seed: int = 1) -> Farm:
    """The same farm for the same ``seed``. Some batches clash, most do not."""
    rng = Random(seed)
    places = _places()
    return Farm(
        Settings("farm", "Ten Years", night_lows_c=_LOWS_C, latitude=51.0),
        places,
        (Person("ann", "Ann", away=_holidays()), Person("leo", "Leo", is_grown_up=False)),
        tuple(_batch(number, places, rng, batches) for number in range(batches)),
    )


def _places() -> tuple[Place, ...]:
    eggs = [("Setter A", Role.SETTER), ("Setter B", Role.SETTER), ("Hatcher", Role.HATCHER)]
    floors = [
        *[(f"Brooder {letter}", Role.BROODER, 30_000) for letter in "ABCD"],
        *[(f"Run {letter}", Role.PEN, 60_000) for letter in "ABC"],
        ("Hen house", Role.PEN, 160_000),
        ("Ark", Role.GRASS_PEN, 40_000),
    ]
    return (
        *(Place(name, name, role, n, egg_places=150, clean_out_days=0) for n, (name, role) in enumerate(eggs)),
        *(
            Place(name, name, role, n + 3, floor_cm2=room, clean_out_days=1, outdoors=role is Role.GRASS_PEN)
            for n, (name, role, room) in enumerate(floors)
        ),
    )


def _holidays() -> tuple[Span, ...]:
    return tuple(
        Span(date(FIRST_DAY.year + year, 8, 1), date(FIRST_DAY.year + year, 8, 4), "holiday") for year in range(YEARS)
    )


def _batch(number: int, places: tuple[Place, ...], rng: Random, batches: int) -> Batch:
    start = FIRST_DAY + timedelta(days=number * 365 * YEARS // batches + rng.randint(0, 1))
    setter, brooder, run = (f"Setter {'AB'[number % 2]}", f"Brooder {'ABCD'[number % 4]}", f"Run {'ABC'[number % 3]}")
    early = (Stay(setter, 0, 15), Stay("Hatcher", 15, 18), Stay(brooder, 18, 46))
    if number % 8:
        late: tuple[Stay, ...] = (Stay(run, 46, 59, leaving=Leaving.SOLD),)
    else:
        late = (
            Stay(run, 46, 59),
            Stay("Hen house", 59, None, Part.HENS),
            Stay("Ark", 59, 73, Part.COCKS, Leaving.PROCESSED),
        )
    return Batch(
        f"b{number}", f"Batch {number}", "coturnix", Origin.OWN_EGGS, start, rng.randint(60, 130), early + late
    )
