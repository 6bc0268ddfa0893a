"""Chores from the eggs' arrival to the hatch."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from quailsched.chores.chore import Chore
from quailsched.chores.make import chore_of, on_day
from quailsched.farm.records import Batch, Origin, Place, Role
from quailsched.farm.units import count_text, warmth_text
from quailsched.season.season import Season
from quailsched.words import number_text, say, value_text


def place_on(season: Season, batch: Batch, day: int) -> Place | None:
    """Where all of the batch is on its day ``day``; None if it is split, gone or not there yet."""
    for leg in season.footprint(batch).legs:
        if leg.start <= day < leg.end:
            return season.farm.place(leg.stay.place_id)
    return None


def egg_chores(season: Season, batch: Batch) -> Iterator[Chore]:
    """Rest, set, turn, candle, lockdown, hatch watch. None for birds that were brought in."""
    if not batch.origin.is_eggs:
        return
    kind, days = season.kind(batch), season.days(batch)
    make = partial(chore_of, season.farm, batch=batch)
    setter = place_on(season, batch, 0)
    eggs = count_text(batch.number, "egg")
    rest = kind.days("egg_rest_days")
    if batch.origin is Origin.SHIPPED_EGGS and rest:
        yield make(
            "rest", say("Rest the shipped eggs of {batch}", batch=batch.name),
            say(
                "Stand {eggs} points down, still and cool, for {days} before setting.",
                eggs=eggs, days=count_text(rest, "day"),
            ),
            day=on_day(batch, -rest), place=setter,
        )  # fmt: skip
    units = season.farm.settings.units
    warm = warmth_text(kind.value("setter_temp_c"), units)
    yield make(
        "set", say("Set {eggs} of {batch}", eggs=eggs, batch=batch.name),
        say(
            "Machine steady at {warm} (forced air) and {humidity} % humidity. Points down, leave out cracked and dirty "
            "ones. This is day 0.",
            warm=warm, humidity=value_text(kind.value("setter_rh_pct")),
        ),
        day=batch.start, place=setter, cautions=("hands",), urgent=True,
    )  # fmt: skip
    yield from _turning(season, batch, days.lockdown)
    for number, key in enumerate(("candle_day", "candle_again_day")):
        day = kind.days(key)
        if day <= days.lockdown:
            yield make(
                "candle", say("Candle the eggs of {batch}", batch=batch.name),
                say("Take out the clear ones and those with a ring of blood; write down how many."),
                day=on_day(batch, day), number=number, place=place_on(season, batch, day),
            )  # fmt: skip
    yield from _lockdown_and_hatch(season, batch)


def _turning(season: Season, batch: Batch, lockdown: int) -> Iterator[Chore]:
    times = count_text(season.kind(batch).days("turns_per_day"), "time")
    for day in range(1, lockdown):
        place = place_on(season, batch, day)
        if place is not None and not place.turns_itself and place.role in (Role.SETTER, Role.CABINET):
            yield chore_of(
                season.farm, "turn", say("Turn the eggs of {batch} {times}", batch=batch.name, times=times),
                say("Evenly through the day, the other way each time; warm, clean hands."),
                day=on_day(batch, day), number=day, batch=batch, place=place,
            )  # fmt: skip


def _lockdown_and_hatch(season: Season, batch: Batch) -> Iterator[Chore]:
    kind, days = season.kind(batch), season.days(batch)
    make = partial(chore_of, season.farm, batch=batch)
    before, after = place_on(season, batch, days.lockdown - 1), place_on(season, batch, days.lockdown)
    moves_to = after.name if after and before and after.id != before.id else ""
    yield make(
        "lockdown", say("Stop turning the eggs of {batch}, raise humidity", batch=batch.name),
        say(
            "Move them to {place}. Lay them flat, humidity to {humidity} %, then keep the lid shut."
            if moves_to
            else "Lay them flat, humidity to {humidity} %, then keep the lid shut.",
            place=moves_to, humidity=value_text(kind.value("hatcher_rh_pct")),
        ),
        day=on_day(batch, days.lockdown), place=after or before, urgent=True,
    )  # fmt: skip
    early = kind.figures["incubation_days"].low
    watch = int(early) if early is not None else days.hatch
    yield make(
        "watch", say("Hatch watch, {batch}", batch=batch.name),
        say("First pips may show; look through the window, do not open. Brooder warm and dry by tonight."),
        day=on_day(batch, min(watch, days.hatch - 1)), place=place_on(season, batch, days.hatch - 1), urgent=True,
    )  # fmt: skip
    counted, expected = season.lived(batch).hatched, season.birds(batch, on_day(batch, days.hatch))
    chicks = number_text(expected if counted is None else counted)
    yield make(
        "hatch", say("Hatch day, {batch}", batch=batch.name),
        say(
            "About {number} chicks expected. Leave them in until dry and fluffy."
            if counted is None
            else "{number} chicks hatched. Leave them in until dry and fluffy.",
            number=chicks,
        ),
        day=on_day(batch, days.hatch), place=place_on(season, batch, days.hatch), cautions=("hands",), urgent=True,
    )  # fmt: skip
