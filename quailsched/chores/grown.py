"""Chores with grown birds: sexing, surplus cocks, light, first eggs, leaving."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from quailsched.chores.chore import Chore
from quailsched.chores.eggs import place_on
from quailsched.chores.make import chore_of, on_day
from quailsched.farm.records import Batch, Leaving, Part
from quailsched.farm.units import count_text
from quailsched.season.footprint import Leg
from quailsched.season.season import Season
from quailsched.words import number_text, say, value_text


def grown_chores(season: Season, batch: Batch) -> Iterator[Chore]:
    """Sexing, moving and processing surplus cocks, light to its hours, the first eggs."""
    kind, days = season.kind(batch), season.days(batch)
    make = partial(chore_of, season.farm, batch=batch)
    legs = season.footprint(batch).legs
    if (place := place_on(season, batch, days.sex)) is not None:
        yield make(
            "sex", say("Sex {batch} by breast feathers", batch=batch.name),
            say("Cocks rust-red, hens speckled (wild colour only); write down hens, cocks and unsure ones."),
            day=on_day(batch, days.sex), place=place, cautions=("hands",),
        )  # fmt: skip
    yield from _surplus(season, batch, legs)
    for leg in legs:
        if leg.stay.leaving is not None and season.birds(batch, on_day(batch, leg.end - 1), leg.stay.part):
            yield _leaving(season, batch, leg)
    laying = [leg for leg in legs if leg.stay.part is not Part.COCKS and leg.start <= days.first_egg < leg.end]
    for leg in laying[:1]:
        pen = season.farm.place(leg.stay.place_id)
        hours = kind.value("light_hours")
        lead = max(days.first_egg - kind.days("light_lead_days"), legs[0].start)  # not before they have come
        yield make(
            "light", say("Light to {hours} hours for {batch}", hours=value_text(hours), batch=batch.name),
            say("Daylight and lamp together, half an hour more each few days, on a timer; dusk dimmed."),
            day=on_day(batch, lead), place=place_on(season, batch, lead) or pen,
        )  # fmt: skip
        yield make(
            "first eggs", say("First eggs of {batch} about now", batch=batch.name),
            say(
                "Layer feed with {protein} % protein, grit and a quiet corner to lay in.",
                protein=value_text(kind.value("layer_protein_pct")),
            ),
            day=on_day(batch, days.first_egg), place=pen, cautions=("food_eggs",),
        )  # fmt: skip


def _surplus(season: Season, batch: Batch, legs: tuple[Leg, ...]) -> Iterator[Chore]:
    """The day on which the surplus cocks part from the rest."""
    apart = [leg for leg in legs if leg.stay.part is Part.COCKS]
    if not apart:
        return
    together = [leg for leg in legs if leg.stay.part is Part.ALL]
    first = apart[0]
    place = season.farm.place(first.stay.place_id)
    if together and together[-1].stay.place_id == place.id:
        return
    birds = season.birds(batch, on_day(batch, first.start), Part.COCKS)
    per = season.kind(batch).value("hens_per_cock")
    yield chore_of(
        season.farm, "cocks out",
        say(
            "Move {cocks} of {batch} to {place}",
            cocks=count_text(birds, "surplus cock"), batch=batch.name, place=place.name,
        ),
        say("Keep one cock for {hens} hens, the calm ones; the rest go before they fight.", hens=value_text(per)),
        day=on_day(batch, first.start), batch=batch, place=place, cautions=("hands",), urgent=True, part=Part.COCKS,
    )  # fmt: skip


def _leaving(season: Season, batch: Batch, leg: Leg) -> Chore:
    part, day = leg.stay.part, on_day(batch, leg.end)
    birds = season.birds(batch, on_day(batch, leg.end - 1), part)
    who = count_text(birds, "surplus cock") if part is Part.COCKS else count_text(birds, "bird")
    number = {Part.ALL: 0, Part.HENS: 1, Part.COCKS: 2}[part]
    place = season.farm.place(leg.stay.place_id)
    if leg.stay.leaving is Leaving.SOLD:
        return chore_of(
            season.farm, "sold", say("{birds} of {batch} go to their buyer", birds=who, batch=batch.name),
            say("Airy crates, not too full, dark and cool; a note on feed and age with them."),
            day=day, number=number, batch=batch, place=place, cautions=("hands",), urgent=True, part=part,
        )  # fmt: skip
    weight = season.kind(batch).at("weight_g", leg.end - season.days(batch).hatch)
    return chore_of(
        season.farm, "process", say("Process {birds} of {batch}", birds=who, batch=batch.name),
        say(
            "No feed the evening before, water until then; about {weight} g live each. Chill at once to 4 °C or below.",
            weight=number_text(weight),
        ),
        day=day, number=number, batch=batch, place=place,
        cautions=("processing", "food_meat"), urgent=True, needs_grown_up=True, part=part,
    )  # fmt: skip
