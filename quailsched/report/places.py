"""When places free up, in words and as JSON."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Any

from quailsched.farm.records import Farm, Part, Place
from quailsched.farm.units import area_text, count_text, day_text, names_text
from quailsched.season.freeing import Occupant, PlaceState
from quailsched.season.occupancy import room_of
from quailsched.words import marked, say

_PART_WORDS = {Part.ALL: "", Part.HENS: marked(" (laying group)"), Part.COCKS: marked(" (surplus cocks)")}


def room_text(farm: Farm, place: Place, room: int) -> str:
    """Room in words: "180 egg places" or "1.30 m²"."""
    if place.role.holds_eggs:
        return count_text(room, "egg place")
    return area_text(room, farm.settings.units)


def occupant_text(occupant: Occupant) -> str:
    """ "70 birds of Clover (surplus cocks)"."""
    what = count_text(occupant.number, "egg") if occupant.unit == "eggs" else count_text(occupant.number, "bird")
    words = say("{birds} of {batch}", birds=what, batch=occupant.batch)
    return words + (say(_PART_WORDS[occupant.part]) if _PART_WORDS[occupant.part] else "")


def frees_text(state: PlaceState, today: date) -> str:
    """When the place is free, in a few words: "now", "free from 4 May"."""
    if state.free_on == today:
        return say("free now")
    return say("free from {day}", day=day_text(state.free_on, today))


def place_line(farm: Farm, state: PlaceState, today: date) -> str:
    """Who is in, until when, from when it is free and who comes next, in one line."""
    place = state.place
    parts = []
    if state.now:
        last = max(o.until for o in state.now)
        who = names_text([occupant_text(occupant) for occupant in state.now])
        parts.append(say("{who} until {day}", who=who, day=day_text(last, today)))
    elif place.ready_on is not None and today < place.ready_on:
        parts.append(say("being built, ready on {day}", day=day_text(place.ready_on, today)))
    clean = place.clean_out_days
    counted = say(" ({count} of clean-out counted)", count=count_text(clean, "day")) if state.now and clean else ""
    parts.append(frees_text(state, today) + counted)
    if state.next_day is not None:
        who = names_text(list(dict.fromkeys(state.next_in)))
        if state.next_day == state.free_on:
            parts.append(say("next in: {who} the same day", who=who))
        else:
            parts.append(say("next in: {who} on {day}", who=who, day=day_text(state.next_day, today)))
    return f"{place.name} ({room_text(farm, place, room_of(place))}): {'; '.join(parts)}"


def places_text(farm: Farm, states: tuple[PlaceState, ...], today: date, width: int = 100) -> str:
    """One line a place, then the room left in each week ahead, in lines of ``width`` where names allow."""
    lines = [say("{farm}: places on {day}", farm=farm.settings.name, day=today.isoformat()), ""]
    lines += [f"  {place_line(farm, state, today)}" for state in states]
    if states:
        lines += ["", say("Room left throughout each week from"), *_weeks_table(farm, states, today, width)]
    return "\n".join(lines)


def _weeks_table(farm: Farm, states: tuple[PlaceState, ...], today: date, width: int) -> Iterator[str]:
    """A column a week and a row a place, as many weeks below each other as the width asks for."""
    head = [day_text(week.start, today) for week in states[0].weeks]
    rows = [[_cell(farm, state.place, week.room) for week in state.weeks] for state in states]
    names = ["", *(state.place.name for state in states)]
    margin = max(len(name) for name in names) + 2
    lines = [f"  {name:<{margin - 2}}" for name in names]
    for cells in zip(head, *rows, strict=True):
        wide = max(len(cell) for cell in cells) + 2
        if margin < len(lines[0]) and len(lines[0]) + wide > width:
            yield from ("", *lines)
            lines = [line[:margin] for line in lines]
        lines = [line + cell.rjust(wide) for line, cell in zip(lines, cells, strict=True)]
    yield from ("", *lines)


def _cell(farm: Farm, place: Place, room: int) -> str:
    return f"{room:,}" if place.role.holds_eggs else area_text(room, farm.settings.units, place.floor_cm2)


def places_json(farm: Farm, states: tuple[PlaceState, ...], today: date) -> dict[str, Any]:
    """The document of ``quailsched places --json``: room in egg places or cm2, ``until`` and ``free_from``
    are the first day that the birds are gone and that the place can be used."""
    return {
        "farm": farm.settings.name,
        "from": today.isoformat(),
        "places": [
            {
                "place": state.place.name,
                "role": state.place.role.value,
                "room": room_of(state.place),
                "unit": "eggs" if state.place.role.holds_eggs else "cm2",
                "now": [
                    {"batch": o.batch, "part": o.part.value, "number": o.number, "unit": o.unit,
                     "until": o.until.isoformat()}
                    for o in state.now
                ],
                "free_from": state.free_on.isoformat(),
                "next": None if state.next_day is None else {
                    "day": state.next_day.isoformat(), "batches": list(dict.fromkeys(state.next_in))},
                "weeks": [{"start": w.start.isoformat(), "room_left": w.room} for w in state.weeks],
            }
            for state in states
        ],
    }  # fmt: skip
