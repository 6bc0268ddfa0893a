"""Chores that come round in a place as long as birds are in it, and the clean-out after them."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from quailsched.chores.chore import Chore
from quailsched.chores.make import chore_of
from quailsched.farm.records import Part, Place, Role
from quailsched.farm.units import count_text
from quailsched.husbandry.kind import Kind
from quailsched.quick import dataclass
from quailsched.season.occupancy import Presence
from quailsched.season.season import Season
from quailsched.words import marked, say


@dataclass(frozen=True, slots=True)
class Round:
    """A chore that comes round: every ``figure`` days in places of ``roles``, first after one such time.

    ``title`` and ``how`` are to be said.
    """

    kind: str
    figure: str
    roles: tuple[Role, ...]
    title: str
    how: str
    cautions: tuple[str, ...] = ()


_PENS = (Role.PEN, Role.GRASS_PEN)
_BEDDING = marked("Change the bedding in {place}")
ROUNDS = (
    Round(
        "bedding", "bedding_brooder_days", (Role.BROODER,), _BEDDING,
        marked("Dry and dust-poor shavings or sand, never cedar, no slick paper; damp spots out at once."),
        ("dust",),
    ),
    Round(
        "bedding", "bedding_pen_days", (Role.PEN,), _BEDDING,
        marked("Look and smell first: dry and sweet can wait, damp or sharp cannot."),
        ("dust",),
    ),
    Round(
        "dust bath", "dust_bath_days", _PENS, marked("Fresh dust bath in {place}"),
        marked("Dry sand with a little wood ash, a hand deep, under cover."),
        ("dust",),
    ),
    Round(
        "grass", "grass_move_days", (Role.GRASS_PEN,), marked("Move {place} to fresh grass"),
        marked("Walk it slowly with the birds in sight; look for legs under the edge, close gaps in the ground."),
    ),
    Round(
        "drain", "drain_water_days", (Role.BROODER, *_PENS), marked("Drain and scrub the water of {place}"),
        marked("Empty the barrel or drinkers, brush, rinse, fill; youngest birds first, hands washed between places."),
        ("hands",),
    ),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Occupied:
    """A run of days on which a place is not empty, named after the stay that opened it."""

    opened_by: str
    kind: Kind
    start: date
    end: date


def _name_of(presence: Presence) -> str:
    """A stay, by ids: the same batch may come to a place twice."""
    return f"{presence.batch.id}/{presence.leg.index}"


def occupied_runs(season: Season, presences: list[Presence]) -> list[Occupied]:
    """The unbroken runs of occupancy of one place, in order."""
    runs: list[Occupied] = []
    for p in sorted(presences, key=lambda p: (p.start, p.batch.id, p.leg.index)):
        if runs and p.start <= runs[-1].end:
            last = runs[-1]
            runs[-1] = Occupied(last.opened_by, last.kind, last.start, max(last.end, p.end))
        else:
            runs.append(Occupied(_name_of(p), season.kind(p.batch), p.start, p.end))
    return runs


def place_chores(season: Season, place: Place, start: date, end: date) -> Iterator[Chore]:
    """What comes round in ``place`` on the days from ``start`` to ``end`` (half-open), and its clean-outs."""
    for run in occupied_runs(season, season.presences(place)):
        for item in ROUNDS:
            if place.role in item.roles:
                yield from _rounds(season, place, run, item, start, end)
    yield from _collecting(season, place, start, end)
    if place.clean_out_days:
        yield from _clean_outs(season, place)


def _rounds(season: Season, place: Place, run: Occupied, item: Round, start: date, end: date) -> Iterator[Chore]:
    step = max(run.kind.days(item.figure), 1)
    number = max((start - run.start).days // step, 1)
    while (day := run.start + timedelta(days=step * number)) < min(run.end, end):
        yield chore_of(
            season.farm, item.kind, say(item.title, place=place.name), say(item.how),
            day=day, number=number, place=place, run_of=run.opened_by, cautions=item.cautions,
        )  # fmt: skip
        number += 1


def _collecting(season: Season, place: Place, start: date, end: date) -> Iterator[Chore]:
    """Eggs to collect each day on which hens of laying age are in the pen."""
    laying = []
    for p in season.presences(place):
        first = p.batch.start + timedelta(days=season.days(p.batch).first_egg)
        if place.role.is_pen and p.part is not Part.COCKS and first < p.end:
            laying.append(Presence(p.batch, p.leg, max(p.start, first), p.end))
    for run in occupied_runs(season, laying):
        day = max(run.start, start)
        while day < min(run.end, end):
            yield chore_of(
                season.farm, "collect", say("Collect the eggs of {place}", place=place.name),
                say("Twice on warm days, cracked ones out; write down how many."),
                day=day, number=(day - run.start).days, place=place, run_of=run.opened_by, cautions=("hands",),
            )  # fmt: skip
            day += timedelta(days=1)


def _clean_outs(season: Season, place: Place) -> Iterator[Chore]:
    for emptying in season.emptyings(place):
        yield chore_of(
            season.farm, "clean-out", say("Clean out {place}", place=place.name),
            say(
                "Shells and fluff out, wash, disinfect, dry and air for {days} before the next come in."
                if place.role.holds_eggs
                else "Bedding out, scrape, wash, disinfect, dry and air for {days} before the next come in.",
                days=count_text(place.clean_out_days, "day"),
            ),
            day=emptying.day, place=place, run_of=min(map(_name_of, emptying.left)), cautions=("dust", "hands"),
        )  # fmt: skip
