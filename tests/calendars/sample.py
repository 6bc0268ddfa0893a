"""Chores of an invented farm, for the tests of the calendar. Days are in March and April 2027."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

from quailsched.calendars.publish import Published, publish
from quailsched.calendars.text import calendar_text
from quailsched.chores.chore import Chore

FARM_ID = "0b0e8f5c-58f1-4f0d-9a3e-6f3f0f6a2f11"
FARM_NAME = "Pebble Bank, Upper Field"
NOW = datetime(2027, 3, 1, 8, 30, tzinfo=UTC)
TODAY = date(2027, 3, 1)

CLOVER = "5f9a1f6e-7d7e-4c53-8f0b-9d2f3f1b7a01"
SORREL = "5f9a1f6e-7d7e-4c53-8f0b-9d2f3f1b7a02"
TUB = "8c4b2f0a-3c1d-4a6e-b1f7-2e8d5c9a4b03"


def chore(key: str, day: date, title: str = "Candle", **fields: object) -> Chore:
    """A chore of batch Clover in the Tub brooder, but for the ``fields`` given."""
    plain = Chore(
        key=key,
        kind="candle",
        day=day,
        title=title,
        how="Hold each egg to the light.",
        batch_id=CLOVER,
        batch="Clover",
        place_id=TUB,
        place="Tub brooder",
        able=("Ann", "Leo"),
    )
    return replace(plain, **fields)  # type: ignore[arg-type]


def batch_of_chores(batch_id: str, batch: str, start: date) -> list[Chore]:
    """A batch set on ``start``: its set, candling, chick move, three beddings and move out."""
    steps = (
        ("set", 0, "Set eggs", "Cabinet", True),
        ("candle", 7, "Candle", "Cabinet", False),
        ("chicks", 18, "Move chicks", "Tub brooder", True),
        ("bedding", 25, "Change bedding", "Tub brooder", False),
        ("bedding", 32, "Change bedding", "Tub brooder", False),
        ("out", 39, "Move out", "Grass pen; south, “Äcker”", True),
    )
    return [
        chore(
            f"{batch_id}/{kind}/{number}",
            start + timedelta(days=after),
            title,
            kind=kind,
            batch_id=batch_id,
            batch=batch,
            place=place,
            urgent=urgent,
            how="Water first, then feed; dip a beak or two.\nCount them as they go in.",
            caution="A heat lamp can start a fire: two ways of holding it, no bedding near." if urgent else "",
        )
        for number, (kind, after, title, place, urgent) in enumerate(steps)
    ]


def farm_chores() -> list[Chore]:
    """Two batches three days apart, a job for grown-ups alone, and a day on which nobody is at home."""
    alone = chore("x/clean/1", date(2027, 4, 2), "Clean out", batch_id=None, batch="", kind="clean-out", able=())
    knife = chore("x/process/1", date(2027, 4, 3), "Process cocks", batch="", able=(), kind="cocks")
    knife = replace(knife, batch_id=None, needs_grown_up=True)
    return [
        *batch_of_chores(CLOVER, "Clover", date(2027, 3, 4)),
        *batch_of_chores(SORREL, "Sorrel", date(2027, 3, 7)),
        alone,
        knife,
    ]


def published_text(
    chores: Sequence[Chore],
    before: dict[str, Published] | None = None,
    now: datetime = NOW,
    alarms_from: date | None = None,
    farm_name: str = FARM_NAME,
) -> tuple[bytes, dict[str, Published]]:
    """The calendar of ``chores`` published at ``now``, and what is to be remembered."""
    published = publish(FARM_ID, chores, before or {}, now, alarms_from=alarms_from)
    return calendar_text(FARM_ID, farm_name, chores, published, alarms_from=alarms_from), published
