"""The small changes that are tried against a clash: of days, numbers and whole places; all the others are put in here.

Splits and fittings are in ``moves_of_places``, people in ``moves_of_people``, birds that are parted or leave in
``moves_of_groups``; what a move is and how its cost is weighed stands in ``move``.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from functools import partial

from quailsched.edits.batches import change_place, end_stay, shift
from quailsched.edits.proposals import clean_out, ready_on, set_number
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Part, Place
from quailsched.farm.units import count_text, day_text
from quailsched.planner.move import Move, on_end, on_number, on_place, on_start, who_text
from quailsched.planner.moves_of_groups import group_moves
from quailsched.planner.moves_of_people import person_moves
from quailsched.planner.moves_of_places import fitting_moves, split_moves
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.words import marked, number_text, say

MOST_DAYS = 21  # a batch is moved by three weeks at most: further it is another plan
_ON_ANY_DAY = ("young", "nowhere", "cocks", "overdue")  # a batch breaks these rules whenever it starts
_FEWER = (0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.5, 0.4)


def moves(season: Season, clash: Clash, today: date) -> Iterator[Move]:
    """Every small change worth trying against ``clash``; nothing that lies before ``today`` is changed."""
    for batch_id in clash.batch_ids:
        batch = season.farm.batch(batch_id)
        if batch.start >= today:
            if clash.kind not in _ON_ANY_DAY:
                yield from _starts(batch, today)
            yield from _fewer(season, batch)
        yield from _stays(season, batch, clash, today)
    yield from _place(season.farm, clash, today)
    yield from fitting_moves(season, clash)
    yield from person_moves(season.farm, clash, today)


def _starts(batch: Batch, today: date) -> Iterator[Move]:
    for days in range(1, MOST_DAYS + 1):
        for word, step in (("later", days), ("earlier", -days)):
            start = batch.start + timedelta(days=step)
            if start < today:
                continue
            sentence = _start_text(batch, step, day_text(start))
            edit = partial(shift, batch_id=batch.id, days=step)
            yield Move(edit, f"start {batch.id} {word}", days, sentence, rests_on=partial(on_start, batch_id=batch.id))


def _start_text(batch: Batch, step: int, day: str) -> str:
    words = {"batch": batch.name, "days": count_text(abs(step), "day"), "day": day}
    if batch.origin.is_eggs:
        if step > 0:
            return say("Set {batch} {days} later, on {day}; all of its days move along.", **words)
        return say("Set {batch} {days} earlier, on {day}; all of its days move along.", **words)
    if step > 0:
        return say("Bring in {batch} {days} later, on {day}; all of its days move along.", **words)
    return say("Bring in {batch} {days} earlier, on {day}; all of its days move along.", **words)


def _fewer(season: Season, batch: Batch) -> Iterator[Move]:
    first = batch.start + timedelta(days=max(season.days(batch).hatch, 0))
    for share in _FEWER:
        number = round(batch.number * share)
        if not 0 < number < batch.number:
            continue
        lost = season.birds(batch, first) - season.birds(replace(batch, number=number), first)
        words = {"batch": batch.name, "number": number_text(number), "old": number_text(batch.number)}
        if batch.origin.is_eggs:
            form = marked("Take {number} eggs for {batch} instead of {old}: {lost} fewer.")
            sentence = say(form, lost=count_text(lost, "chick"), **words)
        else:
            form = marked("Take {number} birds for {batch} instead of {old}: {lost} fewer.")
            sentence = say(form, lost=count_text(lost, "bird"), **words)
        edit = partial(set_number, batch_id=batch.id, number=number)
        rests_on = partial(on_number, batch_id=batch.id)
        yield Move(edit, f"fewer {batch.id}", lost * 0.5 + 1, sentence, rests_on=rests_on)


def _stays(season: Season, batch: Batch, clash: Clash, today: date) -> Iterator[Move]:
    for leg in season.footprint(batch).legs:
        start = batch.start + timedelta(days=leg.start)
        end = batch.start + timedelta(days=leg.end)
        if leg.stay.place_id != clash.place_id or start > clash.last or end < clash.first or end <= today:
            continue
        if start >= today:
            yield from _elsewhere(season.farm, batch, leg.index)
        yield from _ends(season.farm, batch, leg.index, today)
        before = _before(batch, leg.index)
        if before is not None and start >= today:
            yield from _ends(season.farm, batch, before, today)
        yield from group_moves(season, batch, leg, clash, today)
        yield from split_moves(season, batch, leg, clash, today)


def _before(batch: Batch, index: int) -> int | None:
    """The stay that the birds of stay ``index`` come from; None for those that come to the farm with it."""
    stay = batch.stays[index]
    parts = (stay.part, Part.ALL)
    before = (i for i, s in enumerate(batch.stays[:index]) if s.to_day == stay.from_day and s.part in parts)
    return max(before, default=None)


def _elsewhere(farm: Farm, batch: Batch, index: int) -> Iterator[Move]:
    """The same days in another place of the same use."""
    here = farm.place(batch.stays[index].place_id)
    for place in farm.places:
        fits = place.role.holds_eggs is here.role.holds_eggs and place.role.is_pen is here.role.is_pen
        if place.id != here.id and fits:
            who = who_text(batch, batch.stays[index].part)
            sentence = say(
                "Give {who} {new} instead of {old}; the days stay as they are.",
                who=who,
                new=place.name,
                old=here.name,
            )
            edit = partial(change_place, batch_id=batch.id, index=index, place_id=place.id)
            rests_on = partial(on_place, batch_id=batch.id, index=index)
            yield Move(edit, f"place {batch.id} {place.id}", 2, sentence, rests_on=rests_on)


def _ends(farm: Farm, batch: Batch, index: int, today: date) -> Iterator[Move]:
    """Out of a place some days earlier or later; those who follow on begin there."""
    stay = batch.stays[index]
    if stay.to_day is None:
        return
    place = farm.place(stay.place_id).name
    who = who_text(batch, stay.part)
    for days in range(1, 15):
        for word, step in (("earlier", -days), ("later", days)):
            day = batch.start + timedelta(days=stay.to_day + step)
            if day < today or stay.to_day + step <= stay.from_day:
                continue
            words = {"who": who, "place": place, "days": count_text(days, "day"), "day": day_text(day)}
            sentence = (
                say("Take {who} out of {place} {days} later, on {day}.", **words)
                if step > 0
                else say("Take {who} out of {place} {days} earlier, on {day}.", **words)
            )
            edit = partial(end_stay, batch_id=batch.id, index=index, to_day=stay.to_day + step)
            rests_on = partial(on_end, batch_id=batch.id, index=index)
            yield Move(edit, f"end {batch.id} {index} {word}", days + 0.5, sentence, rests_on=rests_on)


def _place(farm: Farm, clash: Clash, today: date) -> Iterator[Move]:
    """Changes of the place itself: a shorter clean-out, a pen finished sooner."""
    place = farm.place(clash.place_id)
    if clash.kind == "cleanout":
        yield from _shorter_clean_out(farm, place, clash)
    if clash.kind == "notready" and place.ready_on is not None and today < clash.first < place.ready_on:
        days = (place.ready_on - clash.first).days
        sentence = say(
            "Finish {place} {days} sooner, by {day}.",
            place=place.name,
            days=count_text(days, "day"),
            day=day_text(clash.first),
        )
        yield Move(partial(ready_on, place_id=place.id, day=clash.first), "build", days * 2, sentence)


def _shorter_clean_out(farm: Farm, place: Place, clash: Clash) -> Iterator[Move]:
    """Down to the days that there are, but not below the least of the figure clean_out_days."""
    kinds = [kind_in(farm, farm.batch(batch_id).kind) for batch_id in clash.batch_ids]
    least = max(int(kind.figures["clean_out_days"].low) for kind in kinds)
    days = int(clash.have)
    if least <= days < place.clean_out_days:
        sentence = say(
            "Clean out {place} in {days} instead of {old}, each time.",
            place=place.name,
            days=count_text(days, "day"),
            old=place.clean_out_days,
        )
        cost = 3 * (place.clean_out_days - days)
        yield Move(partial(clean_out, place_id=place.id, days=days), "clean", cost, sentence)
