"""The usual route of a batch through a farm's places, from its kind's figures: what a new batch starts with."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, Farm, Leaving, Origin, Part, Place, Role, Stay
from quailsched.season.days import Days, days_of


def usual_route(farm: Farm, kind_id: str, origin: Origin, age_days: int = 0) -> tuple[Stay, ...]:
    """Stays for a batch of ``kind_id``: egg places, brooder, pen, surplus cocks apart; as far as places reach.

    Takes the first place of each role in lane order. A farm without a fitting place leaves the route
    short, and the season says so (clash "nowhere"). Empty if there is no place for the first day.
    """
    probe = Batch("", "", kind_id, origin, date(2000, 1, 1), 1, age_days=age_days)
    kind = kind_in(farm, kind_id)
    days = days_of(kind, probe)
    stays = _egg_stays(farm, days) if origin.is_eggs else ()
    if origin.is_eggs and not stays:
        return ()
    out = max(days.hatch + kind.days("out_day"), days.may_leave_brooder)
    longest = kind.figures["process_day"].high or kind.value("process_day")
    finish = max(days.hatch + int(longest), max(out, 0) + 7)
    return stays + _bird_stays(farm, days, stays[-1].to_day or 0 if stays else 0, max(out, 0), finish)


def _first(farm: Farm, *roles: Role) -> Place | None:
    return next((place for role in roles for place in farm.places if place.role is role), None)


def _egg_stays(farm: Farm, days: Days) -> tuple[Stay, ...]:
    setter = _first(farm, Role.SETTER, Role.CABINET)
    hatcher = _first(farm, Role.HATCHER, Role.CABINET)
    if setter is None:
        setter = hatcher
    if setter is None:
        return ()
    if hatcher is None or hatcher.id == setter.id:
        return (Stay(setter.id, 0, days.dry),)
    return (Stay(setter.id, 0, days.lockdown), Stay(hatcher.id, days.lockdown, days.dry))


def _bird_stays(farm: Farm, days: Days, start: int, out: int, finish: int) -> tuple[Stay, ...]:
    brooder = _first(farm, Role.BROODER)
    pen = _first(farm, Role.PEN, Role.GRASS_PEN)
    other = _first(farm, Role.GRASS_PEN) or pen
    if start < out and brooder is not None:
        to_brooder = Stay(brooder.id, start, out)
        if pen is None:
            return (to_brooder,)
        assert other is not None
        return (
            to_brooder,
            Stay(pen.id, out, None, Part.HENS),
            Stay(other.id, out, finish, Part.COCKS, Leaving.PROCESSED),
        )
    home = pen or brooder
    return (Stay(home.id, start, None),) if home is not None and start >= out else ()


def fit_route(farm: Farm, batch: Batch) -> Batch:
    """``batch`` with the usual route of its kind and origin."""
    return replace(batch, stays=usual_route(farm, batch.kind, batch.origin, batch.age_days))
