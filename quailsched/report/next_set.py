"""When the next eggs can go in, in words and as JSON."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import Any

from quailsched.farm.records import Farm, Leaving, Part
from quailsched.farm.units import count_text, named_day_text, names_text, span_text
from quailsched.planner.next_set import NextSet, best_of, what_stops
from quailsched.season.clashes import Checked


def route_text(farm: Farm, one: NextSet) -> str:
    """The places of a route, each once: "Setter, Tub and Run", and whether all birds are sold at its end."""
    names = names_text(list(dict.fromkeys(farm.place(stay.place_id).name for stay in one.route)))
    last = one.route[-1]
    return f"{names}, then sold" if last.part is Part.ALL and last.leaving is Leaving.SOLD else names


def next_set_text(now: Checked, found: Sequence[NextSet]) -> str:
    """The best day first, then stretches of days with the same answer and what stops more."""
    farm = now.season.farm
    if not found:
        return f"{farm.settings.name}: there is no place for eggs. Add a setter or a cabinet first."
    first, last, sure = found[0].day, found[-1].day, farm.settings.sure_pct
    best = best_of(tuple(found))
    lines = [f"{farm.settings.name}: the next set, {span_text(first, last)}, without any new clash", ""]
    if best is None:
        lines.append("  On no day can eggs be set without a new clash. What stops them:")
    else:
        lines.append(f"  Best: up to {count_text(best.eggs, 'egg')} on {named_day_text(best.day)}")
        lines.append(
            f"  by way of {route_text(farm, best)}; hatch on {named_day_text(best.hatch)}, about "
            f"{count_text(best.expected, 'chick')} ({sure} of 100 hatches give {best.few:,} or more, and as many give "
            f"{best.many:,} or fewer)"
        )
    lines.append("")
    for start, end, eggs, why in _stretches(now, found):
        lines.append(f"  {span_text(start, end):<18} {eggs or 'none'}")
        if why:
            lines.append(f"  {'':<18} {why}")
    return "\n".join(lines)


def _stretches(now: Checked, found: Sequence[NextSet]) -> Iterator[tuple[date, date, str, str]]:
    """(first day, last day, eggs, what stops more) of days that follow each other under the same limit."""
    run: list[NextSet] = []
    for one in found:
        if run and _limit_key(run[-1]) != _limit_key(one):
            yield _told(now, run)
            run = []
        run.append(one)
    if run:
        yield _told(now, run)


def _limit_key(one: NextSet) -> tuple[object, ...]:
    limit = (one.limit.kind, one.limit.place_id) if one.limit else ()
    return one.eggs > 0, limit


def _told(now: Checked, run: list[NextSet]) -> tuple[date, date, str, str]:
    least, most = min(one.eggs for one in run), max(one.eggs for one in run)
    eggs = "" if not most else count_text(most, "egg") if least == most else f"{least:,} to {most:,} eggs"
    worst = min(run, key=lambda one: one.eggs)
    clash = what_stops(now, worst)
    why = clash.sentence if clash else "the egg places themselves"
    return run[0].day, run[-1].day, eggs, why


def next_set_json(farm: Farm, found: Sequence[NextSet]) -> dict[str, Any]:
    """The document of ``quailsched next-set --json``; dates ISO."""
    best = best_of(tuple(found))
    return {
        "farm": farm.settings.name,
        "days": [day_json(farm, one) for one in found],
        "best": None if best is None else day_json(farm, best),
    }


def day_json(farm: Farm, one: NextSet) -> dict[str, Any]:
    """One day of it."""
    limit = None
    if one.limit is not None:
        place = farm.place(one.limit.place_id).name
        limit = {"kind": one.limit.kind, "place": place, "from": one.limit.first.isoformat()}
    return {
        "date": one.day.isoformat(),
        "max_eggs": one.eggs,
        "limit": limit,
        "route": [
            {
                "place": farm.place(stay.place_id).name,
                "part": stay.part.value,
                "from": (one.day + timedelta(days=stay.from_day)).isoformat(),
                "to": None if stay.to_day is None else (one.day + timedelta(days=stay.to_day)).isoformat(),
            }
            for stay in one.route
        ],
        "expected_chicks": one.expected,
        "few_chicks": one.few,
        "many_chicks": one.many,
        "hatch_date": one.hatch.isoformat(),
    }
