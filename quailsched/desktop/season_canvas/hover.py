"""What the pointer tells about a day in a place or of a batch. No Qt."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from quailsched.desktop.season_canvas.lanes import FactMark
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.farm.records import Batch, Place
from quailsched.farm.units import area_text, count_text, named_day_text
from quailsched.report.clashes import told_sentence
from quailsched.season.footprint import Run
from quailsched.season.occupancy import Presence, Slice, room_of
from quailsched.season.season import Season
from quailsched.words import number_text, say


def hover_text(season: Season, place: Place, day: date, hit: Picked, marks: Iterable[FactMark] = ()) -> str:
    """Day, eggs or birds with their age, what of ``marks`` happened there on another day than was planned, need and
    have; how grave a clash is and its sentence."""
    lines = [f"{named_day_text(day)} {day.year} · {place.name}"]
    piece = season.slice_on(place, day)
    lines += [_who(season, share.presence, share.run, day) for share in piece.shares] if piece is not None else []
    lines += [f"{season.farm.batch(mark.batch_id).name}: {mark.words}" for mark in _on(marks, day)]
    lines.append(_room(season, place, piece))
    if hit.clash is not None:
        lines.append(told_sentence(season.farm, hit.clash))
    return "\n".join(lines)


def hover_text_of_batch(season: Season, batch: Batch, day: date, hit: Picked, marks: Iterable[FactMark] = ()) -> str:
    """Day, where the birds of ``batch`` are and how many, how full it is there, and what of ``marks`` happened then."""
    lines = [f"{named_day_text(day)} {day.year} · {batch.name}"]
    for place, presence in season.stays_of(batch):
        run = presence.run_on(day) if presence.start <= day < presence.end else None
        if run is not None:
            room = _room(season, place, season.slice_on(place, day))
            lines.append(
                say(
                    "{who}, in {place} ({room})",
                    who=_who(season, presence, run, day),
                    place=place.name,
                    room=room,
                )
            )
    if len(lines) == 1:
        lines.append(say("not on the farm"))
    lines += [mark.words for mark in _on(marks, day)]
    if hit.clash is not None:
        lines.append(told_sentence(season.farm, hit.clash))
    return "\n".join(lines)


def _on(marks: Iterable[FactMark], day: date) -> list[FactMark]:
    """Those that the pointer is at: from the day of the plan to that of the fact."""
    return [mark for mark in marks if min(mark.day, mark.plan) <= day <= max(mark.day, mark.plan)]


def _who(season: Season, presence: Presence, run: Run, day: date) -> str:
    batch = presence.batch
    age = (day - batch.start).days - season.days(batch).hatch
    stage = season.stage(presence, day)
    if run.birds and age >= 0:
        known = season.lived(batch).known_to
        is_counted = known is not None and (day - batch.start).days <= known
        return say(
            "{batch}: {birds} counted, {age} old, {stage}" if is_counted else "{batch}: {birds}, {age} old, {stage}",
            batch=batch.name,
            birds=count_text(run.birds, "bird"),
            age=count_text(age, "day"),
            stage=say(stage),
        )
    number = (day - batch.start).days
    return say(
        "{batch}: {eggs}, day {number}, {stage}",
        batch=batch.name,
        eggs=count_text(run.eggs, "egg"),
        number=number,
        stage=say(stage),
    )


def _room(season: Season, place: Place, piece: Slice | None) -> str:
    if piece is None:
        return say("empty")
    units, taken, room = season.farm.settings.units, piece.taken(place), room_of(place)
    if place.role.holds_eggs:
        return say("{taken} of {places} taken", taken=number_text(taken), places=count_text(room, "egg place"))
    most = max(taken, room)
    return say("need {need}, have {have}", need=area_text(taken, units, most), have=area_text(room, units, most))
