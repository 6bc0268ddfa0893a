"""What follows from a batch while it is typed, in words. No Qt."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from quailsched.farm.records import Batch, Farm, Origin
from quailsched.farm.units import count_text, day_text, named_day_text, span_text
from quailsched.report.clashes import said_severity, title_of
from quailsched.report.inspect import odds_text
from quailsched.season.clash import Clash
from quailsched.season.season import Season
from quailsched.words import number_text, say

_MOST_LISTED = 5


def follows_text(season: Season, batch: Batch) -> str:
    """Like: "Lockdown on Tue 6 Apr; about 81 of 132 should hatch on Thu 8 Apr; about 73 alive at the move out ..."."""
    days = season.days(batch)
    parts = []
    if batch.origin.is_eggs:
        hatch = batch.start + timedelta(days=days.hatch)
        lockdown = batch.start + timedelta(days=days.lockdown)
        parts = [
            say("lockdown on {day}", day=named_day_text(lockdown, batch.start)),
            say(
                "about {birds} of {number} should hatch on {day} ({odds})",
                birds=number_text(season.birds(batch, hatch)),
                number=number_text(batch.number),
                day=named_day_text(hatch, batch.start),
                odds=odds_text(season.kind(batch), batch.number),
            ),
        ]
    out = _move_out(season, batch)
    if out is not None:
        alive = count_text(season.birds(batch, out), "bird")
        parts.append(say("about {alive} alive at the move out on {day}", alive=alive, day=day_text(out, batch.start)))
    first_egg = batch.start + timedelta(days=days.first_egg)
    parts.append(say("first eggs about {day}", day=day_text(first_egg, batch.start)))
    text = "; ".join(parts)
    return f"{text[0].upper()}{text[1:]}."


def _move_out(season: Season, batch: Batch) -> date | None:
    """The day of the move from a brooder to a pen, if the route has one."""
    in_pens = [s.from_day for s in batch.stays if season.farm.place(s.place_id).role.is_pen]
    return batch.start + timedelta(days=min(in_pens)) if in_pens and min(in_pens) > 0 else None


def clashes_with(batch_id: str, before: Iterable[Clash], after: Iterable[Clash]) -> tuple[list[Clash], list[Clash]]:
    """(all clashes that the batch is in or has made, those of them that were not there before)."""
    known = list(before)
    listed, fresh = [], []
    for clash in after:
        is_new = not any(_holds(old, clash) for old in known)
        if is_new or batch_id in clash.batch_ids:
            listed.append(clash)
        if is_new:
            fresh.append(clash)
    return listed, fresh


def _holds(old: Clash, clash: Clash) -> bool:
    """Whether ``clash`` is what ``old`` was, or what is left of it."""
    is_same_rule = (old.kind, old.place_id) == (clash.kind, clash.place_id)
    return is_same_rule and set(clash.batch_ids) <= set(old.batch_ids)


def clashes_text(farm: Farm, listed: Sequence[Clash], fresh: Sequence[Clash], near: date) -> str:
    """A heading that counts, and a line for each of the first few."""
    if not listed:
        return say("It makes no clash.")
    if len(fresh) == len(listed):
        heading = say("It makes {count}", count=count_text(len(listed), "clash", "clashes"))
    else:
        heading = say("It is in {count}", count=count_text(len(listed), "clash", "clashes"))
        heading += say(", {number} of them new", number=len(fresh)) if fresh else ""
    ordered = [*fresh, *(clash for clash in listed if clash not in fresh)]
    lines = [
        f"• {title_of(farm, c)}, {span_text(c.first, c.last, near)} ({say(said_severity(farm, c))})"
        for c in ordered[:_MOST_LISTED]
    ]
    if len(ordered) > _MOST_LISTED:
        lines.append(say("• and {number} more", number=len(ordered) - _MOST_LISTED))
    return "\n".join([f"{heading}:", *lines])


def missing_text(farm: Farm, origin: Origin) -> str:
    """What a batch without a route lacks: a place that the farm has not, or only a stay."""
    fits = [place for place in farm.places if place.role.holds_eggs is origin.is_eggs]
    if fits:
        return say("Its route is empty: add a stay, or take the usual route.")
    what = say("a setter or a cabinet") if origin.is_eggs else say("a brooder or a pen")
    return say("There is no place for its first day: add {what} first.", what=what)
