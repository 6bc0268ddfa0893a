"""Moves of groups of birds: surplus cocks are parted from the hens, or birds are sold or processed sooner."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from functools import partial

from quailsched.edits.parting import leave_on, part_and_leave, part_cocks
from quailsched.edits.proposals import leave_sold
from quailsched.farm.records import Batch, Leaving, Part
from quailsched.farm.units import count_text, day_text
from quailsched.planner.move import Move, on_all
from quailsched.season.clash import Clash
from quailsched.season.footprint import Leg
from quailsched.season.season import Season
from quailsched.words import marked, number_text, say


def group_moves(season: Season, batch: Batch, leg: Leg, clash: Clash, today: date) -> Iterator[Move]:
    """What can be done with the birds of one stay that ``clash`` is about."""
    if clash.kind == "overdue" and leg.stay.part is not Part.ALL:
        yield from _leave(season, batch, leg, clash, today)
    if clash.kind == "cocks" and leg.stay.part is Part.ALL:
        yield from _parted(season, batch, leg, clash, today)
    if clash.kind == "nowhere" and leg.end == (clash.first - batch.start).days:
        yield from _sold(season, batch, leg, leg.end)
    elif leg.stay.part is not Part.COCKS:
        for day in _days_to_sell(season, leg, clash, (max(clash.first, today) - batch.start).days):
            if batch.start + timedelta(days=day) >= today:
                yield from _sold(season, batch, leg, day)


def _days_to_sell(season: Season, leg: Leg, clash: Clash, number: int) -> Iterator[int]:
    """The day that the clash begins; so early that the place can be cleaned for the others; before they come here."""
    if leg.start < number < leg.end:
        yield number
        earlier = number - season.farm.place(clash.place_id).clean_out_days
        if len(clash.batch_ids) > 1 and leg.start < earlier < number:
            yield earlier
    elif number <= leg.start and leg.index and leg.stay.part is Part.ALL:
        yield leg.start


def _sold(season: Season, batch: Batch, leg: Leg, day: int) -> Iterator[Move]:
    """All of a stay's birds sold on ``day``, chicks not before they are dry; what would follow falls away."""
    part, days, on = leg.stay.part, season.days(batch), batch.start + timedelta(days=day)
    birds = season.birds(batch, on, part)
    if not birds or day < days.dry:
        return
    words = {
        "number": number_text(birds),
        "batch": batch.name,
        "day": day_text(on),
        "age": count_text(day - days.hatch, "day"),
    }
    if part is Part.HENS:
        sentence = say("Sell the {number} birds of the laying group of {batch} by {day}, at {age} old.", **words)
    elif part is Part.COCKS:
        sentence = say("Sell the {number} surplus cocks of {batch} by {day}, at {age} old.", **words)
    elif day >= days.first_egg:
        sentence = say("Sell the {number} birds of {batch} by {day}, at {age} old.", **words)
    elif day < days.feathered:
        sentence = say("Sell the {number} chicks of {batch} by {day}, at {age} old.", **words)
    else:
        sentence = say("Sell the {number} started birds of {batch} by {day}, at {age} old.", **words)
    edit = partial(leave_on, batch_id=batch.id, part=part, day=day, leaving=Leaving.SOLD)
    if leg.end == day:
        edit = partial(leave_sold, batch_id=batch.id, index=leg.index)
    in_lay = part is Part.HENS and day >= days.first_egg
    cost = 5 + birds * (1 if in_lay else 0.3)
    yield Move(edit, f"sold {batch.id}", cost, sentence, rests_on=partial(on_all, batch_id=batch.id))


def _leave(season: Season, batch: Batch, leg: Leg, clash: Clash, today: date) -> Iterator[Move]:
    """The group leaves on its due day (today, where that is past), however many days sooner that is."""
    part, hatch = leg.stay.part, season.days(batch).hatch
    parted = min(stay.from_day for stay in batch.stays if stay.part is part)
    now = (today - batch.start).days
    day = max(hatch + int(clash.need), now)
    is_together_before = any(stay.part is Part.ALL for stay in batch.stays)
    if is_together_before and now < day <= parted:
        yield from _parted_to_leave(season, batch, part, clash, day)
        return
    day = max(day, parted + 1)
    for extra, leaving in enumerate((Leaving.PROCESSED, Leaving.SOLD)):
        edit = partial(leave_on, batch_id=batch.id, part=part, day=day, leaving=leaving)
        form = marked("Process the {birds} of {batch} on {day}, at {age} old.")
        if leaving is Leaving.SOLD:
            form = marked("Sell the {birds} of {batch} on {day}, at {age} old.")
        sentence = say(
            form,
            birds=_group_text(clash.birds_over, part),
            batch=batch.name,
            day=day_text(batch.start + timedelta(days=day)),
            age=count_text(day - hatch, "day"),
        )
        rests_on = partial(on_all, batch_id=batch.id)
        yield Move(edit, f"leave {batch.id} {part}", 2 + extra / 2, sentence, rests_on=rests_on)


def _parted_to_leave(season: Season, batch: Batch, part: Part, clash: Clash, day: int) -> Iterator[Move]:
    """Birds that would be parted on the day ``day`` or later, on which they are due to leave, are parted on the day
    before it, into the place meant for them or within the one that they are in."""
    together = [stay.place_id for stay in batch.stays if stay.part is Part.ALL]
    meant = next(stay.place_id for stay in batch.stays if stay.part is part)
    on, before = (batch.start + timedelta(days=one) for one in (day, day - 1))
    for place_id in dict.fromkeys((meant, *together[-1:])):
        for extra, leaving in enumerate((Leaving.PROCESSED, Leaving.SOLD)):
            edit = partial(part_and_leave, batch_id=batch.id, part=part, day=day, leaving=leaving, place_id=place_id)
            form = marked("Part {batch} on {day} and process the {birds} out of {place} on {next_day}.")
            if leaving is Leaving.SOLD:
                form = marked("Part {batch} on {day} and sell the {birds} out of {place} on {next_day}.")
            sentence = say(
                form,
                batch=batch.name,
                day=day_text(before),
                birds=_group_text(clash.birds_over, part),
                place=season.farm.place(place_id).name,
                next_day=day_text(on),
            )
            rests_on = partial(on_all, batch_id=batch.id)
            yield Move(edit, f"leave {batch.id} {part}", 3 + extra / 2, sentence, rests_on=rests_on)


def _group_text(birds: int, part: Part) -> str:
    if part is Part.COCKS:
        return count_text(birds, "surplus cock")
    return count_text(birds, "bird of the laying group", "birds of the laying group")


def _parted(season: Season, batch: Batch, leg: Leg, clash: Clash, today: date) -> Iterator[Move]:
    """The surplus cocks go to a pen of their own when they mature, until the latest day to process or sell them; the
    day before it, where that comes first."""
    process = season.kind(batch).figures["process_day"]
    latest = season.days(batch).hatch + int(max(process.high, process.value))
    soonest = max((today - batch.start).days, leg.start)
    day = max(min((clash.first - batch.start).days, latest - 1), soonest)
    gone_on = max(latest, day + 1)
    on, gone = (batch.start + timedelta(days=one) for one in (day, gone_on))
    has_cocks = any(stay.part is Part.COCKS for stay in batch.stays)
    for pen in season.farm.places:
        if not pen.role.is_pen or pen.id == leg.stay.place_id:
            continue
        for extra, leaving in enumerate((Leaving.PROCESSED, Leaving.SOLD)):
            words = {
                "batch": batch.name,
                "day": day_text(on),
                "cocks": count_text(clash.birds_over, "surplus cock"),
                "pen": pen.name,
            }
            if has_cocks:
                sentence = say("Part {batch} on {day}: its {cocks} go to {pen}; the hens stay.", **words)
            else:
                form = marked(
                    "Part {batch} on {day}: its {cocks} go to {pen}, until they are {leaving} on {end}; the hens stay."
                )
                sentence = say(form, leaving=say(leaving), end=day_text(gone, on), **words)
            edit = partial(
                part_cocks, batch_id=batch.id, index=leg.index, day=day, pen_id=pen.id, gone_on=gone_on, leaving=leaving
            )
            rests_on = partial(on_all, batch_id=batch.id)
            yield Move(edit, f"part {batch.id} {pen.id}", 3 + extra / 2, sentence, rests_on=rests_on)
            if has_cocks:
                break
