"""Birds that are wanted by a day, in words and as JSON."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Any

from quailsched.farm.units import count_text, named_day_text
from quailsched.outlook.reaching import MOST_EGGS_TRIED, Wanted
from quailsched.planner.next_set import SMALLEST_SET, NextSet, broken_by, what_stops
from quailsched.planner.wanted import Answer, Missing
from quailsched.report.next_set import day_json, route_text
from quailsched.season.clashes import Checked

_WORDS = {Wanted.HENS: ("hen", " in lay"), Wanted.STARTED: ("started bird", ""), Wanted.CHICKS: ("chick", "")}
_MISSING = {
    Missing.EGG_PLACES: "There is no place for eggs. Add a setter or a cabinet first.",
    Missing.BROODER: "There is no brooder, so no chicks can be reared to hens. Add one first.",
    Missing.PEN: "There is no pen to keep hens in. Add two: one for the laying group, one for the surplus cocks.",
    Missing.SECOND_PEN: "There is one pen only, and surplus cocks do not stay with their hens. Add another first.",
}
_MOST_SHOWN = 5


def wanted_text(now: Checked, answer: Answer, today: date) -> str:
    """Days and numbers, or the plain reason why not and what comes closest."""
    farm, aim = now.season.farm, answer.aim
    word, state = _WORDS[aim.what]
    goal = f"{count_text(aim.number, word)}{state} by {named_day_text(answer.by)} {answer.by.year}"
    lines = [f"{farm.settings.name}: {goal}, in {aim.sure:.0%} of hatches or more", ""]
    return "\n".join([*lines, *(f"  {line}" if line else "" for line in _answer_lines(now, answer, today))])


def _answer_lines(now: Checked, answer: Answer, today: date) -> list[str]:
    if answer.eggs is None:
        return [f"Not even {MOST_EGGS_TRIED:,} eggs are that sure. Ask for fewer birds, or be less sure."]
    half = " Hens are in lay from the age at which half of them are laying." if answer.aim.what is Wanted.HENS else ""
    lines = [
        f"That takes {count_text(answer.eggs, 'egg')}, set by {named_day_text(answer.latest)} at the latest.{half}"
    ]
    if answer.latest < today:
        late = (today - answer.latest).days
        return [*lines, f"It is {count_text(late, 'day')} too late for that: eggs set today come later."]
    if answer.missing is not None:
        return [*lines, _MISSING[answer.missing]]
    if answer.offers:
        return [*lines, "", *_offers(now, answer)]
    return [*lines, *(_closest(now, answer, answer.closest) if answer.closest is not None else ())]


def _offers(now: Checked, answer: Answer) -> Iterator[str]:
    """The days, and why some take more eggs than would be enough."""
    farm, shown = now.season.farm, answer.offers[:_MOST_SHOWN]
    yield "Days on which so many find room, the earliest first:"
    for offer in shown:
        one = offer.one
        yield (
            f"  {named_day_text(one.day)}: {count_text(offer.eggs, 'egg')} (up to {one.eggs:,}), by way of "
            f"{route_text(farm, one)}"
        )
    if (more := len(answer.offers) - _MOST_SHOWN) > 0:
        yield f"  and {count_text(more, 'day')} more"
    larger = next((offer for offer in shown if answer.eggs is not None and offer.eggs > answer.eggs), None)
    if larger is not None:
        one = larger.one
        clash = broken_by(now, one.kind_id, one.day, one.route, larger.eggs - 1)
        why = clash.sentence if clash else f"fewer than {count_text(SMALLEST_SET, 'egg')} are not worth a hatch."
        yield f"Why more than would be enough on {named_day_text(one.day)}: {why}"


def _closest(now: Checked, answer: Answer, one: NextSet) -> list[str]:
    """Why not, and what comes closest."""
    clash = what_stops(now, one)
    why = clash.sentence if clash else "the egg places themselves"
    until, later = "until then", ""
    if answer.last < answer.latest:
        until, later = f"until {named_day_text(answer.last)} {answer.last.year}", "; later days were not tried"
    if not one.eggs:
        return [f"On no day {until} can eggs be set without a new clash{later}.", f"On the first of them: {why}"]
    few = count_text(one.eggs, "egg")
    return [
        f"On no day {until} do so many find room{later}.",
        f"Closest: {few} on {named_day_text(one.day)}, which reach it in {answer.chance:.0%} of hatches.",
        f"What stops more: {why}",
    ]


def wanted_json(now: Checked, answer: Answer) -> dict[str, Any]:
    """The document of ``quailsched next-set --want --json``; dates ISO, chances from 0 to 1."""
    farm, aim = now.season.farm, answer.aim
    return {
        "farm": farm.settings.name,
        "want": {"what": aim.what.value, "number": aim.number, "by": answer.by.isoformat(), "sure": aim.sure},
        "eggs": answer.eggs,
        "latest": answer.latest.isoformat(),
        "searched_until": answer.last.isoformat(),
        "missing": None if answer.missing is None else answer.missing.value,
        "days": [{**day_json(farm, offer.one), "eggs": offer.eggs} for offer in answer.offers],
        "closest": None if answer.closest is None else day_json(farm, answer.closest),
        "closest_chance": None if answer.closest is None else round(answer.chance, 4),
    }
