"""Ways out of clashes in words and as JSON."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any, Protocol

from quailsched.farm.records import Farm
from quailsched.farm.units import span_text
from quailsched.report.clashes import clash_json, title_of
from quailsched.season.clash import Clash

NONE_TEXT = "No small change removes it without making another clash. Change the plan by hand, or add room."


class Way(Protocol):
    """What ``planner.ways_out`` proposes, as far as words go."""

    @property
    def cost(self) -> float: ...
    @property
    def sentence(self) -> str: ...


Answer = tuple[int, Clash, Sequence[Way]]


def ways_out_text(farm: Farm, answers: Sequence[Answer], since: date, accepted: int = 0) -> str:
    """Each clash with its number and the ways out of it, cheapest first; ``accepted`` clashes are left out."""
    if not answers:
        no_clash = "no clash but accepted ones" if accepted else "no clash"
        return f"{farm.settings.name}: {no_clash} from {since.isoformat()} on, so no way out is needed."
    lines = [f"{farm.settings.name}: ways out, each re-checked over the whole farm"]
    for number, clash, ways in answers:
        lines += ["", f"  {number}. {title_of(farm, clash)}, {span_text(clash.first, clash.last, since)}"]
        lines.append(f"     {clash.sentence}")
        lines += [f"       - {way.sentence}" for way in ways] or [f"       {NONE_TEXT}"]
    return "\n".join(lines)


def ways_out_json(farm: Farm, answers: Sequence[Answer], since: date) -> dict[str, Any]:
    """The document of ``quailsched ways-out --json``; costs are days of trouble (see ``planner.moves``)."""
    return {
        "farm": farm.settings.name,
        "from": since.isoformat(),
        "clashes": [
            {
                "number": number,
                **clash_json(farm, clash),
                "ways_out": [{"sentence": way.sentence, "cost": round(way.cost, 1)} for way in ways],
            }
            for number, clash, ways in answers
        ],
    }
