"""Moves that use places otherwise: a part of a batch goes through another one, or a place gets better fittings."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import date, timedelta
from functools import partial

from quailsched.edits.proposals import fit_drinker, fit_feeder, fit_heat, fit_lamps
from quailsched.edits.splits import part_name, split_batch
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Part, Place, Role
from quailsched.farm.units import count_text, day_text, hours_text, length_text
from quailsched.planner.move import Move, on_all
from quailsched.season.clash import Clash
from quailsched.season.footprint import Leg
from quailsched.season.season import Season
from quailsched.words import marked, number_text, say

_OF_NUMBERS = ("eggs", "floor", "crowd", "heat", "water", "feeder")  # clashes that fewer in one place can remove
_EDGE_STEP_CM = 10
_WHAT = {
    Part.ALL: (marked("bird"), marked("birds")),
    Part.HENS: (marked("bird of the laying group"), marked("birds of the laying group")),
    Part.COCKS: (marked("surplus cock"), marked("surplus cocks")),
}


def split_moves(season: Season, batch: Batch, leg: Leg, clash: Clash, today: date) -> Iterator[Move]:
    """A part of ``batch`` through another place of the same use: the fewest that have to go, a third, a half.

    From the first day of the stay on if that is still ahead, or from the day that the clash begins.
    """
    here = season.farm.place(leg.stay.place_id)
    if clash.kind not in _OF_NUMBERS or batch.number < 2:
        return
    begins = (max(clash.first, today) - batch.start).days
    days = [leg.start] if batch.start + timedelta(days=leg.start) >= today else []
    if leg.start < begins < leg.end and not here.role.holds_eggs:
        days.append(begins)
    for place in season.farm.places:
        if place.id != here.id and _is_for_the_same(here.role, place.role):
            for number in _shares(season, batch, leg, clash):
                for extra, day in enumerate(days):
                    yield _split(season, batch, leg, place, number, day, extra)


def _is_for_the_same(here: Role, there: Role) -> bool:
    """Eggs that are turned do not go into a hatcher, those that lie still not into a setter."""
    if {here, there} == {Role.SETTER, Role.HATCHER}:
        return False
    return here.holds_eggs is there.holds_eggs and here.is_pen is there.is_pen


def _shares(season: Season, batch: Batch, leg: Leg, clash: Clash) -> list[int]:
    """How many eggs (or birds brought in) go into the part, each number worth a try once."""
    if clash.kind == "eggs":
        least = int(clash.need - clash.have)
    else:
        there = season.birds(batch, clash.worst, leg.stay.part)
        # One more: the two batches are rounded to whole birds each.
        least = math.ceil(batch.number * clash.birds_over / there) + 1 if there else 0
    shares = {least, math.ceil(batch.number / 3), batch.number // 2}
    return sorted(number for number in shares if 0 < number < batch.number and number >= min(least, batch.number // 3))


def _split(season: Season, batch: Batch, leg: Leg, place: Place, number: int, day: int, extra: int) -> Move:
    on = batch.start + timedelta(days=day)
    here = season.farm.place(leg.stay.place_id).name
    if place.role.holds_eggs:
        of = say("{number} of its {eggs}", number=number_text(number), eggs=count_text(batch.number, "egg"))
    else:
        run = leg.run_on(day)
        birds = run.birds if run else 0
        many = count_text(birds, *_WHAT[leg.stay.part])
        of = say("about {number} of its {birds}", number=number_text(round(birds * number / batch.number)), birds=many)
    sentence = say(
        "Split {batch}: {number} go to {new} instead of {old} on {day}, as “{name}”.",
        batch=batch.name,
        number=of,
        new=place.name,
        old=here,
        day=day_text(on),
        name=part_name(season.farm, batch),
    )
    edit = partial(split_batch, batch_id=batch.id, number=number, index=leg.index, from_day=day, place_id=place.id)
    cost = 4 + number / batch.number + extra / 2
    rests_on = partial(on_all, batch_id=batch.id)
    return Move(edit, f"split {batch.id} {place.id}", cost, sentence, splits=batch.id, rests_on=rests_on)


def fitting_moves(season: Season, clash: Clash) -> Iterator[Move]:
    """As much more heat, edge or light as ``clash`` is short of."""
    farm, place = season.farm, season.farm.place(clash.place_id)
    if clash.kind == "heat" and place.heat_sources is not None:
        yield _more_heat(farm, place, place.heat_sources, clash)
    if clash.kind in ("water", "feeder"):
        yield _more_edge(farm, place, clash)
    if clash.kind == "dark":
        yield _more_light(farm, place, clash)


def _more_heat(farm: Farm, place: Place, have: int, clash: Clash) -> Move:
    kinds = (kind_in(farm, farm.batch(batch_id).kind) for batch_id in clash.batch_ids)
    sources = math.ceil(clash.need / min(kind.value("heat_source_chicks") for kind in kinds))
    more = max(sources - have, 1)
    sentence = say(
        "Put {sources} into {place}: {new} instead of {old}.",
        sources=count_text(more, "more heat source"),
        place=place.name,
        new=have + more,
        old=have,
    )
    return Move(partial(fit_heat, place_id=place.id, sources=have + more), "fit heat", 1 + more, sentence)


def _more_edge(farm: Farm, place: Place, clash: Clash) -> Move:
    what, fit = ("drinker", fit_drinker) if clash.kind == "water" else ("feeder", fit_feeder)
    more = math.ceil((clash.need - clash.have) / _EDGE_STEP_CM) * _EDGE_STEP_CM
    edge = round(clash.have) + more
    units = farm.settings.units
    form = marked("Put {length} more of drinker space into {place}: {whole} in all.")
    if clash.kind == "feeder":
        form = marked("Put {length} more of feeder space into {place}: {whole} in all.")
    sentence = say(form, length=length_text(more, units), place=place.name, whole=length_text(edge, units))
    return Move(partial(fit, place_id=place.id, edge_cm=edge), f"fit {what}", 2, sentence)


def _more_light(farm: Farm, place: Place, clash: Clash) -> Move:
    kinds = (kind_in(farm, farm.batch(batch_id).kind) for batch_id in clash.batch_ids)
    hours = max(clash.need, *(kind.value("light_hours") for kind in kinds))
    sentence = say(
        "Let lamps in {place} fill the day up to {hours} of light, every day of the year.",
        place=place.name,
        hours=hours_text(hours),
    )
    return Move(partial(fit_lamps, place_id=place.id, hours_a_day=hours), "fit lamps", 3, sentence)
