"""A small farm that the tests of the store change and break."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

from quailsched.edits.change import Change, Touch
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
    Units,
)
from quailsched.store.published import Published
from tests.strategies import ids

AT = datetime(2027, 3, 1, 7, 30, tzinfo=UTC)
CLOVER = ids(300)
PUBLISHED = (
    Published(ids(901), "a" * 64, 0, AT),
    Published(ids(902), "b" * 64, 3, AT.replace(microsecond=250_000)),
)


def small_farm() -> Farm:
    """Every type of record and every list in it at least once."""
    setter, brooder, pen = ids(100), ids(101), ids(102)
    route = (
        Stay(setter, 0, 18),
        Stay(brooder, 18, 45),
        Stay(pen, 45, None, Part.HENS),
        Stay(brooder, 45, 60, Part.COCKS, Leaving.PROCESSED),
    )
    return Farm(
        settings=Settings(ids(1), "Mill Lane", Units.US, tuple(float(low) for low in range(12)), 51.5, "“quoted”\n"),
        places=(
            Place(setter, "Setter", Role.CABINET, 0, egg_places=120, turns_itself=True),
            Place(brooder, "Tub", Role.BROODER, 1, floor_cm2=13_000, clean_out_days=3),
            Place(
                pen, "Run", Role.PEN, 2, floor_cm2=68_000, outdoors=True, ready_on=date(2027, 4, 1),
                shut=(Span(date(2027, 6, 1), date(2027, 6, 8), "new roof"), Span(date(2027, 8, 1), date(2027, 8, 2))),
            ),
        ),
        people=(Person(ids(200), "Ann", False, (Span(date(2027, 5, 1), date(2027, 5, 4), "away"),)),),
        batches=(
            Batch(CLOVER, "Clover", "coturnix", Origin.OWN_EGGS, date(2027, 3, 8), 96, route, egg_age_days=5),
            Batch(ids(301), "Dill", "button", Origin.BOUGHT_BIRDS, date(2027, 4, 2), 12, (Stay(pen, 0, 50),), 30),
        ),
        choices=(
            FigureChoice(ids(400), "coturnix", "clean_out_days", 4.0, (), "draughty"),
            FigureChoice(ids(401), "coturnix", "heat_c", None, ((0.0, 36.5), (28.0, 20.0)), ""),
        ),
    )  # fmt: skip


def later(farm: Farm, days: int = 1, merge_key: str = "") -> Change:
    """Clover set some days later."""
    batch = farm.batch(CLOVER)
    moved = batch.moved_to(date.fromordinal(batch.start.toordinal() + days))
    return Change(f"Set Clover {days} later", (Touch(batch, moved),), merge_key)


def renamed(farm: Farm, name: str) -> Change:
    """The farm with another name."""
    return Change(f"Call it {name}", (Touch(farm.settings, replace(farm.settings, name=name)),))
