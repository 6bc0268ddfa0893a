"""Chores from the brooder to the first weeks in a pen."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import pairwise

from quailsched.chores.chore import Chore
from quailsched.chores.eggs import place_on
from quailsched.chores.make import chore_of, on_day
from quailsched.farm.records import Batch, Origin, Part, Role
from quailsched.farm.units import count_text, length_text, warmth_text
from quailsched.season.footprint import Leg
from quailsched.season.season import Season
from quailsched.words import marked, say, value_text

LAMP_HEIGHT_CM = 46  # 18 in from bedding: Livingston County emergency management, 2017 (row safe.lamp.dist)
_WHO = {
    Part.HENS: marked("the laying group of {batch}"),
    Part.COCKS: marked("the surplus cocks of {batch}"),
}


def chick_chores(season: Season, batch: Batch) -> Iterator[Chore]:
    """Into the brooder, heat, feed and water, hardening off, moving out, quarantine of bought birds."""
    legs = season.footprint(batch).legs
    for leg in legs:
        place = season.farm.place(leg.stay.place_id)
        if place.role is Role.BROODER:
            yield from _brooder(season, batch, leg)
    for before, after in _moves(legs):
        yield from _move(season, batch, before, after)
    if batch.origin is Origin.BOUGHT_BIRDS:
        yield from _brought_in(season, batch, legs[0])


def _moves(legs: tuple[Leg, ...]) -> Iterator[tuple[Leg, Leg]]:
    """Each leg with the one that it goes on from. That surplus cocks part from the rest is told in ``grown``."""
    yield from pairwise(leg for leg in legs if leg.stay.part is not Part.COCKS)
    yield from pairwise(leg for leg in legs if leg.stay.part is Part.COCKS)


def _who(batch: Batch, leg: Leg) -> str:
    return batch.name if leg.stay.part is Part.ALL else say(_WHO[leg.stay.part], batch=batch.name)


def _brooder(season: Season, batch: Batch, leg: Leg) -> Iterator[Chore]:
    kind, days, farm = season.kind(batch), season.days(batch), season.farm
    make = partial(chore_of, farm, batch=batch, place=farm.place(leg.stay.place_id), leg=leg.index)
    units = farm.settings.units
    week = 1
    while (age := 7 * week) < days.heat_off - days.hatch:
        if leg.start <= days.hatch + age < leg.end:
            warm = warmth_text(kind.at("heat_c", age), units)
            yield make(
                "heat", say("Heat down to {warm} for {batch}", warm=warm, batch=batch.name),
                say(
                    "Hang the lamp a little higher, at least {height} from the bedding. They should spread out, not "
                    "huddle (cold) or pant at the walls (hot).",
                    height=length_text(LAMP_HEIGHT_CM, units),
                ),
                day=on_day(batch, days.hatch + age), number=week, cautions=("heat_lamp",),
            )  # fmt: skip
        week += 1
    if leg.start <= days.heat_off < leg.end:
        yield make(
            "heat off", say("Heat off for {batch}", batch=batch.name),
            say("Feathered and warm enough by now; look again after dark."),
            day=on_day(batch, days.heat_off),
        )  # fmt: skip
    pebbles = days.hatch + kind.days("pebbles_days")
    if leg.start <= pebbles < leg.end and days.hatch >= 0:
        yield make(
            "pebbles", say("Pebbles out of the drinkers of {batch}", batch=batch.name),
            say("Big enough now not to drown in the lip."),
            day=on_day(batch, pebbles),
        )  # fmt: skip
    switch = days.hatch + kind.days("starter_until_day")
    if leg.start <= switch < leg.end:
        yield _feed_switch(season, batch, leg, switch)


def _feed_switch(season: Season, batch: Batch, leg: Leg, day: int) -> Chore:
    kind = season.kind(batch)
    return chore_of(
        season.farm, "feed switch", say("From starter to grower feed, {batch}", batch=batch.name),
        say(
            "Mix over three days; starter has {starter} % protein, grower {grower} %.",
            starter=value_text(kind.value("starter_protein_pct")),
            grower=value_text(kind.value("grower_protein_pct")),
        ),
        day=on_day(batch, day), batch=batch, place=season.farm.place(leg.stay.place_id), leg=leg.index,
    )  # fmt: skip


def _move(season: Season, batch: Batch, before: Leg, after: Leg) -> Iterator[Chore]:
    farm = season.farm
    old, new = farm.place(before.stay.place_id), farm.place(after.stay.place_id)
    if old.id == new.id:
        return
    day = on_day(batch, after.start)
    make = partial(chore_of, farm, batch=batch, leg=after.index, part=after.stay.part)
    if old.role.holds_eggs and not new.role.holds_eggs:
        units = farm.settings.units
        warm = warmth_text(season.kind(batch).at("heat_c", 0), units)
        yield make(
            "to brooder", say("Move the chicks of {batch} to {place}", batch=batch.name, place=new.name),
            say(
                "Dry and fluffy first. {warm} under the heat, pebbles in the drinkers; dip each beak in water, feed on "
                "rough paper. Lamp at least {height} from the bedding.",
                warm=warm, height=length_text(LAMP_HEIGHT_CM, units),
            ),
            day=day, place=new, cautions=("heat_lamp", "hands"), urgent=True,
        )  # fmt: skip
    elif new.role.is_pen and not old.role.is_pen:
        yield from _move_out(season, batch, before, after)
    elif not new.role.holds_eggs:
        yield make(
            "move", say("Move {who} from {old} to {new}", who=_who(batch, after), old=old.name, new=new.name),
            say("In the evening, calmly, in the dim."),
            day=day, place=new, cautions=("hands",),
        )  # fmt: skip


def _move_out(season: Season, batch: Batch, before: Leg, after: Leg) -> Iterator[Chore]:
    farm, kind = season.farm, season.kind(batch)
    old, new = farm.place(before.stay.place_id), farm.place(after.stay.place_id)
    make = partial(chore_of, farm, batch=batch, leg=after.index, part=after.stay.part)
    harden = kind.days("harden_off_days")
    if new.outdoors and after.start - harden >= before.start:
        yield make(
            "harden", say("Start hardening off {batch}", batch=batch.name),
            say("Heat off by day, cooler air each day, back on if they huddle; fully used to nights by the move."),
            day=on_day(batch, after.start - harden), place=old,
        )  # fmt: skip
    beside = kind.days("drinker_beside_days")
    yield make(
        "move out", say("Move {who} out to {place}", who=_who(batch, after), place=new.name),
        say(
            "In the morning, feed and water first. Keep the old drinker beside the new one for {days}; corners filled, "
            "low cover in.",
            days=count_text(beside, "day"),
        ),
        day=on_day(batch, after.start), place=new, cautions=("hands",), urgent=True,
    )  # fmt: skip
    if after.start + beside < after.end:
        yield make(
            "old drinker", say("Old drinker out, {batch}", batch=batch.name),
            say("Only if all of them drink from the new one."),
            day=on_day(batch, after.start + beside), place=new,
        )  # fmt: skip


def _brought_in(season: Season, batch: Batch, leg: Leg) -> Iterator[Chore]:
    make = partial(chore_of, season.farm, batch=batch)
    quarantine = season.kind(batch).days("quarantine_days")
    yield make(
        "arrive", say("{batch} comes: {birds}", batch=batch.name, birds=count_text(batch.number, "bird")),
        say(
            "Keep them apart from the flock for {days}, see to them last, water first.",
            days=count_text(quarantine, "day"),
        ),
        day=batch.start, place=season.farm.place(leg.stay.place_id), cautions=("bird_flu", "hands"), urgent=True,
    )  # fmt: skip
    home = place_on(season, batch, quarantine)
    if home is None:  # they are gone by then
        return
    yield make(
        "quarantine", say("Quarantine of {batch} ends", batch=batch.name),
        say("Only if none has been ill; else ask a vet first."),
        day=on_day(batch, quarantine), place=home, cautions=("sick",),
    )  # fmt: skip
