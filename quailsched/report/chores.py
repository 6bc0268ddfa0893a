"""Chores in words and as JSON."""

from __future__ import annotations

import textwrap
from datetime import date
from itertools import groupby
from typing import Any

from quailsched.chores.chore import Chore
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, day_text, weekday_text
from quailsched.words import say


def able_text(chore: Chore) -> str:
    """Who can do it: "Ann or Leo", or that nobody who can is at home; "" for a farm that names nobody."""
    if not chore.has_people:
        return ""
    if chore.able:
        *names, last = chore.able
        return say("{names} or {last}", names=", ".join(names), last=last) if names else last
    return say("no grown-up at home") if chore.needs_grown_up else say("nobody at home")


def chores_json(farm: Farm, chores: tuple[Chore, ...], start: date, days: int) -> dict[str, Any]:
    """The document of ``quailsched chores --json``."""
    return {
        "farm": farm.settings.name,
        "from": start.isoformat(),
        "days": days,
        "chores": [
            {
                "key": c.key,
                "kind": c.kind,
                "day": c.day.isoformat(),
                "title": c.title,
                "how": c.how,
                "batch": c.batch or None,
                "place": c.place or None,
                "who": list(c.able),
                "caution": c.caution or None,
                "urgent": c.urgent,
                "needs_grown_up": c.needs_grown_up,
                "done_on": c.done_on.isoformat() if c.done_on is not None else None,
                "put_off_from": c.put_off_from.isoformat() if c.put_off_from is not None else None,
                "given_to": c.given_to or None,
            }
            for c in chores
        ],
    }


def chores_text(farm: Farm, chores: tuple[Chore, ...], start: date, days: int, width: int = 100) -> str:
    """The chores by day, each with place and people, how, and its caution."""
    words = {"chores": count_text(len(chores), "chore"), "days": count_text(days, "day"), "day": start.isoformat()}
    lines = [say("{farm}: {chores} in {days} from {day}", farm=farm.settings.name, **words)]
    shown: set[str] = set()  # a caution is printed once, the same words at each chore would be skipped over
    for day, group in groupby(chores, key=lambda c: c.day):
        lines += ["", f"{weekday_text(day)} {day.isoformat()}"]
        for chore in group:
            where = f", {chore.place}" if chore.place and chore.place not in chore.title else ""
            who = f" – {able_text(chore)}" if able_text(chore) else ""
            box = "[x]" if chore.done_on is not None else "[ ]"
            lines.append(f"  {box} {chore.title}{where}{who}{_put_off_text(chore, day)}")
            lines += _indented(chore.how, width)
            if chore.caution and chore.caution not in shown:
                shown.add(chore.caution)
                lines += _indented(say("Caution: {caution}", caution=chore.caution), width)
    return "\n".join(lines)


def _put_off_text(chore: Chore, day: date) -> str:
    """ ", put off from 3 Apr"."""
    if chore.put_off_from is None:
        return ""
    return f", {say('put off from {day}', day=day_text(chore.put_off_from, day))}"


def _indented(text: str, width: int) -> list[str]:
    return textwrap.wrap(text, width, initial_indent="      ", subsequent_indent="      ")
