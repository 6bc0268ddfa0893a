"""Birds that are wanted by a day, in words and as JSON."""

from __future__ import annotations

from datetime import date
from typing import Any

from quailsched.farm.units import count_text, named_day_text
from quailsched.outlook.reaching import MOST_EGGS_TRIED, Wanted
from quailsched.planner.next_set import NextSet, what_stops
from quailsched.planner.wanted import Answer
from quailsched.report.next_set import day_json, route_text
from quailsched.season.clashes import Checked

_WORDS = {Wanted.HENS: ("hen", " at lay"), Wanted.STARTED: ("started bird", ""), Wanted.CHICKS: ("chick", "")}
_MOST_SHOWN = 5


def wanted_text(now: Checked, answer: Answer, today: date) -> str:
    """Days and numbers, or the plain reason why not and what comes closest."""
    farm, aim = now.season.farm, answer.aim
    word, state = _WORDS[aim.what]
    goal = f"{count_text(aim.number, word)}{state} by {named_day_text(answer.by)} {answer.by.year}"
    lines = [f"{farm.settings.name}: {goal}, in {aim.sure:.0%} of hatches or more", ""]
    if answer.eggs is None:
        return "\n".join(
            [*lines, f"  Not even {MOST_EGGS_TRIED:,} eggs are that sure. Ask for fewer birds, or be less sure."]
        )
    takes = count_text(answer.eggs, "egg")
    lines.append(f"  That takes {takes}, set by {named_day_text(answer.latest)} at the latest.")
    if answer.latest < today:
        late = (today - answer.latest).days
        return "\n".join([*lines, f"  It is {count_text(late, 'day')} too late for that: eggs set today come later."])
    if answer.days:
        lines += ["", "  Days on which so many find room, the earliest first:"]
        lines += [
            f"    {named_day_text(one.day)}: {takes} (up to {one.eggs:,}), by way of {route_text(farm, one)}"
            for one in answer.days[:_MOST_SHOWN]
        ]
        if (more := len(answer.days) - _MOST_SHOWN) > 0:
            lines.append(f"    and {count_text(more, 'day')} more")
        return "\n".join(lines)
    if answer.closest is None:
        return "\n".join([*lines, "  There is no place for eggs. Add a setter or a cabinet first."])
    return "\n".join([*lines, *_closest(now, answer.closest, answer.chance)])


def _closest(now: Checked, one: NextSet, chance: float) -> list[str]:
    """Why not, and what comes closest."""
    clash = what_stops(now, one)
    why = clash.sentence if clash else "the egg places themselves"
    if not one.eggs:
        return ["  On no day until then can eggs be set without a new clash.", f"  On the first of them: {why}"]
    few = count_text(one.eggs, "egg")
    return [
        "  On no day until then do so many find room.",
        f"  Closest: {few} on {named_day_text(one.day)}, which reach it in {chance:.0%} of hatches.",
        f"  What stops more: {why}",
    ]


def wanted_json(now: Checked, answer: Answer) -> dict[str, Any]:
    """The document of ``quailsched next-set --want --json``; dates ISO, chances from 0 to 1."""
    farm, aim = now.season.farm, answer.aim
    return {
        "farm": farm.settings.name,
        "want": {"what": aim.what.value, "number": aim.number, "by": answer.by.isoformat(), "sure": aim.sure},
        "eggs": answer.eggs,
        "latest": answer.latest.isoformat(),
        "days": [day_json(farm, one) for one in answer.days],
        "closest": None if answer.closest is None else day_json(farm, answer.closest),
        "closest_chance": None if answer.closest is None else round(answer.chance, 4),
    }
