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

_MOST_REASONS = 3
BROUGHT = {
    "eggs": "too many eggs",
    "cabinet": "turning and lockdown under one lid",
    "floor": "too little floor",
    "cleanout": "no time to clean out",
    "notready": "a place that cannot be used",
    "young": "birds too young for a pen",
    "cold": "nights too cold",
    "calm": "too few birds to be calm",
    "nowhere": "birds without a place",
    "stale": "eggs too old",
    "ages": "two ages in one brooder",
    "crowd": "too many birds together",
    "cocks": "too many cocks",
    "quarantine": "bought birds among others too early",
    "hands": "nobody at home",
    "heat": "too little heat",
    "water": "too little drinker space",
    "feeder": "too little feeder space",
    "overdue": "birds past their day",
    "build": "a place not built in time",
    "dark": "days too short",
}


def none_text(looked: Looked) -> str:
    """Why nothing is offered, as far as trying can tell: how many changes were tried, and what they would bring."""
    if not looked.singles:
        return "There is no small change to try against it. Change the plan by hand."
    pairs = f" and {count_text(looked.pairs, 'pair')} of them" if looked.pairs else ""
    were = "was" if looked.singles == 1 and not pairs else "were"
    tried = f"{count_text(looked.singles, 'small change')}{pairs} {were} tried, and none helps:"
    if not looked.removed:
        return f"{tried} each leaves some of it. Change the plan by hand, or add room."
    most = sorted(looked.brought.items(), key=lambda one: (-one[1], one[0]))[:_MOST_REASONS]
    reasons = names_text([f"{BROUGHT[kind]} ({number:,})" for kind, number in most])
    return (
        f"{tried} {looked.removed:,} would remove it but bring another clash, mostly {reasons}; the others leave some "
        "of it. Change the plan by hand, or add room."
    )


Answer = tuple[int, Clash, Looked]


def ways_out_text(farm: Farm, answers: Sequence[Answer], since: date, accepted: int = 0) -> str:
    """Each clash with its number and the ways out of it, cheapest first; ``accepted`` clashes are left out."""
    if not answers:
        no_clash = "no clash but accepted ones" if accepted else "no clash"
        return f"{farm.settings.name}: {no_clash} from {since.isoformat()} on, so no way out is needed."
    lines = [f"{farm.settings.name}: ways out, each re-checked over the whole farm"]
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
