"""What the pointer tells about a day in a place. No Qt."""

from __future__ import annotations

from datetime import date

from quailsched.desktop.season_canvas.scene import Picked
from quailsched.farm.records import Place
from quailsched.farm.units import area_text, count_text, named_day_text
from quailsched.report.clashes import told_sentence
from quailsched.season.occupancy import room_of
from quailsched.season.season import Season


def hover_text(season: Season, place: Place, day: date, hit: Picked) -> str:
    """Day, eggs or birds with their age, need and have; how grave a clash is and its sentence."""
    units = season.farm.settings.units
    lines = [f"{named_day_text(day)} {day.year} · {place.name}"]
    piece = next((s for s in season.slices(place) if s.start <= day < s.end), None)
    for share in piece.shares if piece else ():
        batch = share.presence.batch
        age = (day - batch.start).days - season.days(batch).hatch
        stage = season.stage(share.presence, day)
        if share.run.birds and age >= 0:
            lines.append(f"{batch.name}: {count_text(share.run.birds, 'bird')}, {count_text(age, 'day')} old, {stage}")
        else:
            number = (day - batch.start).days
            lines.append(f"{batch.name}: {count_text(share.run.eggs, 'egg')}, day {number}, {stage}")
    if piece is not None:
        taken, room = piece.taken(place), room_of(place)
        if place.role.holds_eggs:
            lines.append(f"{taken:,} of {count_text(room, 'egg place')} taken")
        else:
            most = max(taken, room)
            lines.append(f"need {area_text(taken, units, most)}, have {area_text(room, units, most)}")
    else:
        lines.append("empty")
    if hit.clash is not None:
        lines.append(told_sentence(season.farm, hit.clash))
    return "\n".join(lines)
