"""Eggs or birds that the plan leaves without a place."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from quailsched.farm.records import Batch, Part
from quailsched.farm.units import count_text, day_text
from quailsched.season.clash import Clash
from quailsched.season.footprint import Leg
from quailsched.season.season import Season
from quailsched.words import marked, number_text, say

_NO_PLACE_TO_GO_TO = {
    Part.ALL: marked("{birds} birds of {batch} leave {place} on {day} and have no place to go to."),
    Part.HENS: marked(
        "{birds} birds of the laying group of {batch} leave {place} on {day} and have no place to go to."
    ),
    Part.COCKS: marked("{birds} surplus cocks of {batch} leave {place} on {day} and have no place to go to."),
}


def nowhere(season: Season, batch: Batch) -> Iterator[Clash]:
    """No place after the last stay, none for chicks after the hatch, none for eggs before it, none for a part."""
    legs = season.footprint(batch).legs
    for leg in legs:
        place = season.farm.place(leg.stay.place_id)
        if place.role.holds_eggs:
            yield from _kept_in_hatcher(season, batch, leg, place.name)
        else:
            yield from _eggs_on_floor(season, batch, leg, place.name)
    yield from _loose_ends(season, batch, legs)


def _clash(batch: Batch, place_id: str, first: date, last: date, many: int, what: str, sentence: str) -> Clash:
    birds = many if what == "birds" else 0
    return Clash("nowhere", place_id, (batch.id,), first, max(first, last), first, many, 0, what, birds, sentence)


def _kept_in_hatcher(season: Season, batch: Batch, leg: Leg, place: str) -> Iterator[Clash]:
    days = season.days(batch)
    start = max(leg.start, days.too_long_in_hatcher)
    if start >= leg.end:
        return
    birds = season.birds(batch, batch.start + timedelta(days=start), leg.stay.part)
    if not birds:
        return
    first, last = batch.start + timedelta(days=start), batch.start + timedelta(days=leg.end - 1)
    sentence = say(
        "The chicks of {batch} hatch on {day} and have no brooder: {chicks} would sit in {place} until {until}.",
        batch=batch.name,
        day=day_text(batch.start + timedelta(days=days.hatch)),
        chicks=count_text(birds, "chick"),
        place=place,
        until=day_text(last),
    )
    yield _clash(batch, leg.stay.place_id, first, last, birds, "birds", sentence)


def _eggs_on_floor(season: Season, batch: Batch, leg: Leg, place: str) -> Iterator[Clash]:
    end = min(leg.end, season.days(batch).dry)
    if not batch.origin.is_eggs or leg.start >= end:
        return
    first, last = batch.start + timedelta(days=leg.start), batch.start + timedelta(days=end - 1)
    sentence = say(
        "{eggs} of {batch} would be in {place} from {day}, before the chicks are hatched and dry on {dry}: they need "
        "egg places.",
        eggs=count_text(batch.number, "egg"),
        batch=batch.name,
        place=place,
        day=day_text(first),
        dry=day_text(batch.start + timedelta(days=season.days(batch).dry)),
    )
    yield _clash(batch, leg.stay.place_id, first, last, batch.number, "eggs", sentence)


def _loose_ends(season: Season, batch: Batch, legs: tuple[Leg, ...]) -> Iterator[Clash]:
    """Chains that stop without leaving, and a part that the split leaves without a stay."""
    parts = {leg.stay.part for leg in legs} - {Part.ALL}
    chains = [[leg for leg in legs if leg.stay.part is part] for part in sorted(parts)] or [list(legs)]
    ends = [(chain[-1], chain[-1].stay.part, chain[-1].end) for chain in chains
            if chain[-1].stay.to_day is not None and chain[-1].stay.leaving is None]  # fmt: skip
    together = [leg for leg in legs if leg.stay.part is Part.ALL]
    if parts and together:
        ends += [(together[-1], part, together[-1].end) for part in (Part.HENS, Part.COCKS) if part not in parts]
    for leg, part, end in ends:
        yield from _loose_end(season, batch, leg, part, end)


def _loose_end(season: Season, batch: Batch, leg: Leg, part: Part, end: int) -> Iterator[Clash]:
    days = season.days(batch)
    first = batch.start + timedelta(days=end)
    place = season.farm.place(leg.stay.place_id).name
    if end < days.hatch:
        last = batch.start + timedelta(days=days.hatch)
        text = say(
            "{eggs} of {batch} have no place after {place} on {day}.",
            eggs=count_text(batch.number, "egg"),
            batch=batch.name,
            place=place,
            day=day_text(first),
        )
        yield _clash(batch, leg.stay.place_id, first, last, batch.number, "eggs", text)
        return
    birds = season.birds(batch, first, part)
    if not birds:
        return
    goal = days.process if part is Part.COCKS else days.replaced
    told = {"birds": number_text(birds), "batch": batch.name, "place": place, "day": day_text(first)}
    sentence = say(_NO_PLACE_TO_GO_TO[part], **told)
    yield _clash(batch, leg.stay.place_id, first, batch.start + timedelta(days=goal), birds, "birds", sentence)
