"""Ways out of clashes in words and as JSON."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any

from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, names_text, span_text
from quailsched.planner.ways_out import Looked
from quailsched.report.clashes import clash_json, title_of
from quailsched.season.clash import Clash
from quailsched.words import marked, number_text, say

_MOST_REASONS = 3
BROUGHT = {
    "eggs": marked("too many eggs"),
    "cabinet": marked("turning and lockdown under one lid"),
    "floor": marked("too little floor"),
    "cleanout": marked("no time to clean out"),
    "notready": marked("a place that cannot be used"),
    "young": marked("birds too young for a pen"),
    "cold": marked("nights too cold"),
    "calm": marked("too few birds to be calm"),
    "nowhere": marked("birds without a place"),
    "stale": marked("eggs too old"),
    "ages": marked("two ages in one brooder"),
    "crowd": marked("too many birds together"),
    "cocks": marked("too many cocks"),
    "quarantine": marked("bought birds among others too early"),
    "hands": marked("nobody at home"),
    "heat": marked("too little heat"),
    "water": marked("too little drinker space"),
    "feeder": marked("too little feeder space"),
    "overdue": marked("birds past their day"),
    "build": marked("a place not built in time"),
    "dark": marked("days too short"),
}


def none_text(looked: Looked) -> str:
    """Why nothing is offered, as far as trying can tell: how many changes were tried, and what they would bring."""
    if not looked.singles:
        return say("There is no small change to try against it. Change the plan by hand.")
    singles = count_text(looked.singles, "small change")
    if looked.pairs:
        pairs = count_text(looked.pairs, "pair")
        tried = say("{changes} and {pairs} of them were tried, and none helps:", changes=singles, pairs=pairs)
    elif looked.singles == 1:
        tried = say("{changes} was tried, and none helps:", changes=singles)
    else:
        tried = say("{changes} were tried, and none helps:", changes=singles)
    if not looked.removed:
        return say("{tried} each leaves some of it. Change the plan by hand, or add room.", tried=tried)
    most = sorted(looked.brought.items(), key=lambda one: (-one[1], one[0]))[:_MOST_REASONS]
    return say(
        "{tried} {number} would remove it but bring another clash, mostly {reasons}; the others leave some of it. "
        "Change the plan by hand, or add room.",
        tried=tried,
        number=number_text(looked.removed),
        reasons=names_text([f"{say(BROUGHT[kind])} ({number_text(number)})" for kind, number in most]),
    )


Answer = tuple[int, Clash, Looked]


def ways_out_text(farm: Farm, answers: Sequence[Answer], since: date, accepted: int = 0) -> str:
    """Each clash with its number and the ways out of it, cheapest first; ``accepted`` clashes are left out."""
    if not answers:
        words = {"farm": farm.settings.name, "day": since.isoformat()}
        if accepted:
            return say("{farm}: no clash but accepted ones from {day} on, so no way out is needed.", **words)
        return say("{farm}: no clash from {day} on, so no way out is needed.", **words)
    lines = [say("{farm}: ways out, each re-checked over the whole farm", farm=farm.settings.name)]
    for number, clash, looked in answers:
        lines += ["", f"  {number}. {title_of(farm, clash)}, {span_text(clash.first, clash.last, since)}"]
        lines.append(f"     {clash.sentence}")
        lines += [f"       - {way.sentence}" for way in looked.ways] or [f"       {none_text(looked)}"]
    return "\n".join(lines)


def ways_out_json(farm: Farm, answers: Sequence[Answer], since: date) -> dict[str, Any]:
    """The document of ``quailsched ways-out --json``; costs are days of trouble (see ``planner.move``).

    Where nothing helps, ``against`` counts by kind the changes that would bring such a clash.
    """
    return {
        "farm": farm.settings.name,
        "from": since.isoformat(),
        "clashes": [
            {
                "number": number,
                **clash_json(farm, clash),
                "ways_out": [{"sentence": way.sentence, "cost": round(way.cost, 1)} for way in looked.ways],
                "tried": {"changes": looked.singles, "pairs": looked.pairs},
                "against": dict(sorted(looked.brought.items())),
            }
            for number, clash, looked in answers
        ],
    }
