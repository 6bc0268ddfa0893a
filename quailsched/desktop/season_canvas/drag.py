"""What a drag asks for: a part of a band taken, a number of days, a place, a share of the birds. Pure; no Qt.

Each makes a ``Change`` by the same edits as forms and keys. What cannot be raises FarmError, whose sentence is told
while the mouse is still down.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from enum import StrEnum

from quailsched.desktop.season_canvas.lanes import Band
from quailsched.edits.batches import change_place, end_stay, start_on
from quailsched.edits.change import Change, apply
from quailsched.edits.splits import split_batch
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.records import Batch, Farm, Part, Place, Role
from quailsched.farm.units import count_text, day_text
from quailsched.planner.compare import clash_changes
from quailsched.quick import dataclass
from quailsched.report.clashes import title_of
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.fits import fitting_starts
from quailsched.season.season import Season
from quailsched.words import number_text, say


class Grip(StrEnum):
    """What of a band is held."""

    WHOLE = "whole"  # the batch moves in days, the stay to another place
    START = "start"  # the day that the batch comes into the place, and leaves the one before
    END = "end"  # the day that it leaves the place


@dataclass(frozen=True, slots=True)
class Grab:
    """A band held by ``grip``."""

    band: Band
    grip: Grip

    @property
    def batch_id(self) -> str:
        return self.band.batch_id


@dataclass(frozen=True, slots=True)
class Drop:
    """Where the pointer has brought it: by ``days``; into the place ``place_id``, None for its own; or ``split``
    birds (eggs) of it into that place."""

    days: int = 0
    place_id: str | None = None
    split: int = 0


def change_of(farm: Farm, grab: Grab, drop: Drop) -> Change | None:
    """The change that a drop makes; None if it changes nothing. Raises FarmError with the reason if it cannot be."""
    batch = farm.batch(grab.batch_id)
    if grab.grip is Grip.END:
        leg = grab.band.presences[-1].leg
        return end_stay(farm, batch.id, leg.index, leg.end + drop.days) if drop.days else None
    if grab.grip is Grip.START:
        return _come_later(farm, batch, grab, drop.days) if drop.days else None
    leg = grab.band.presences[0].leg
    if drop.split and drop.place_id is not None:
        return split_batch(farm, batch.id, drop.split, leg.index, leg.start, drop.place_id)
    change = start_on(farm, batch.id, batch.start + timedelta(days=drop.days)) if drop.days else None
    if drop.place_id is None or drop.place_id == grab.band.place_id:
        return change
    after = farm if change is None else apply(farm, change)
    there = _into(after, batch, grab, drop.place_id)
    return there if change is None else change.then(there)


def _into(farm: Farm, batch: Batch, grab: Grab, place_id: str) -> Change:
    """All stays that the band is made of go to another place, in one step."""
    own, other = farm.place(grab.band.place_id), farm.place(place_id)
    if own.role.holds_eggs != other.role.holds_eggs:
        accepted = (
            say("for eggs a setter, hatcher or cabinet is accepted")
            if own.role.holds_eggs
            else say("for birds a brooder or pen is accepted")
        )
        raise FarmError([Fault(say("{batch}, place", batch=batch.name), other.name, accepted, "place")])
    change: Change | None = None
    for presence in grab.band.presences:
        step = change_place(farm, batch.id, presence.leg.index, place_id)
        farm = apply(farm, step)
        change = step if change is None else change.then(step)
    assert change is not None
    return change


def _come_later(farm: Farm, batch: Batch, grab: Grab, days: int) -> Change:
    """The stay before ends ``days`` later, and this one begins."""
    stay = grab.band.presences[0].leg.stay
    for index, before in enumerate(batch.stays):
        if before.to_day == stay.from_day and before.part in (stay.part, Part.ALL) and before is not stay:
            return end_stay(farm, batch.id, index, stay.from_day + days)
    accepted = say("it begins with the batch: move the whole band")
    raise FarmError(
        [Fault(say("{batch}, first stay", batch=batch.name), say("its own beginning"), accepted, "from_day")]
    )


_FITS_BEFORE, _FITS_AFTER = timedelta(days=60), timedelta(days=400)


def fitting_days(season: Season, grab: Grab, held_on: date) -> tuple[tuple[date, date], ...]:
    """Runs of days, half-open, on which the pointer lets the batch fit in everywhere, if it holds the batch by the day
    ``held_on``. Only for a batch that is moved as a whole."""
    if grab.grip is not Grip.WHOLE:
        return ()
    batch = season.farm.batch(grab.batch_id)
    away, day = held_on - batch.start, timedelta(days=1)
    runs: list[tuple[date, date]] = []
    for start in fitting_starts(season, batch, batch.start - _FITS_BEFORE, batch.start + _FITS_AFTER):
        if runs and runs[-1][1] == start + away:
            runs[-1] = runs[-1][0], start + away + day
        else:
            runs.append((start + away, start + away + day))
    return tuple(runs)


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a drag brings: what the label beside the pointer says. ``better`` and ``worse`` are clashes that go and
    come, in words."""

    text: str
    better: tuple[str, ...] = ()
    worse: tuple[str, ...] = ()
    is_possible: bool = True


def verdict(now: Checked, after: Checked, grab: Grab, drop: Drop, today: date) -> Verdict:
    """In words: the old day and the new, what gets better and what worse."""
    before, then = now.since(today), after.since(today)
    unlike = {*map(id, before)} ^ {*map(id, then)}  # of hundreds most are the very same
    changes = clash_changes([c for c in before if id(c) in unlike], [c for c in then if id(c) in unlike])
    old, new = now.season.farm, after.season.farm
    better = _in_words(old, changes.gone, "{}") + _in_words(new, changes.eased, say("{clash}, less", clash="{}"))
    worse = _in_words(new, changes.new, "{}") + _in_words(new, changes.worse, say("{clash}, more", clash="{}"))
    return Verdict(_what(old, grab, drop), better, worse)


def impossible(farm: Farm, grab: Grab, drop: Drop, error: FarmError) -> Verdict:
    """The reason why not, told before the mouse is let go."""
    reason = "; ".join(fault.accepted for fault in error.faults)
    return Verdict(say("{what}: not possible", what=_what(farm, grab, drop)), worse=(reason,), is_possible=False)


def _what(farm: Farm, grab: Grab, drop: Drop) -> str:
    batch, band = farm.batch(grab.batch_id), grab.band
    if drop.split and drop.place_id is None:
        return say("Split {batch}", batch=batch.name)
    if drop.split and drop.place_id is not None:
        what = "egg" if batch.origin.is_eggs else "bird"
        where = farm.place(drop.place_id).name
        return say(
            "Split {batch}: {count} of {number} go to {where}",
            batch=batch.name,
            count=count_text(drop.split, what),
            number=number_text(batch.number),
            where=where,
        )
    place = farm.place(band.place_id).name
    if grab.grip is Grip.END:
        return say(
            "{batch} leaves {place}: {end}", batch=batch.name, place=place, end=_days(band.presences[-1].end, drop.days)
        )
    if grab.grip is Grip.START:
        return say(
            "{batch} comes into {place}: {start}", batch=batch.name, place=place, start=_days(band.start, drop.days)
        )
    days = _days(batch.start, drop.days)
    said = say("set {days}", days=days) if batch.origin.is_eggs else say("comes {days}", days=days)
    texts = [said] if drop.days or drop.place_id is None else []
    if drop.place_id not in (None, band.place_id):
        texts.append(say("{new} in place of {old}", new=farm.place(drop.place_id or "").name, old=place))
    return f"{batch.name}: {', '.join(texts)}" if texts else batch.name


def _days(old: date, days: int) -> str:
    if not days:
        return day_text(old)
    words = {"old": day_text(old), "new": day_text(old + timedelta(days=days)), "days": count_text(abs(days), "day")}
    return say("{old} → {new}, {days} later", **words) if days > 0 else say("{old} → {new}, {days} earlier", **words)


_MOST_TOLD = 3


def _in_words(farm: Farm, clashes: Sequence[Clash], form: str) -> tuple[str, ...]:
    texts = list(dict.fromkeys(form.format(title_of(farm, clash)) for clash in clashes))
    if len(texts) > _MOST_TOLD:
        texts = [*texts[: _MOST_TOLD - 1], say("and {number} more", number=len(texts) - _MOST_TOLD + 1)]
    return tuple(texts)


def places_for_split(farm: Farm, place_id: str) -> list[Place]:
    """The other places that take the same: eggs, chicks under heat, or feathered birds."""
    own = farm.place(place_id)
    return [
        place
        for place in farm.places
        if place.id != place_id
        and place.role.holds_eggs == own.role.holds_eggs
        and place.role.is_pen == own.role.is_pen
        and (not own.role.holds_eggs or place.role in (own.role, Role.CABINET))
    ]


def split_drop(now: Checked, grab: Grab, number: int, today: date) -> Drop:
    """``number`` birds of the band into the other place in which they make the fewest clashes, the first of several.

    Raises FarmError if there is no other place for them, or the number makes no two batches.
    """
    farm = now.season.farm
    places = places_for_split(farm, grab.band.place_id)
    if not places:
        own = farm.place(grab.band.place_id)
        raise FarmError(
            [
                Fault(
                    say("split {place}", place=own.name),
                    number,
                    say("there is no other place of the kind to split over"),
                    "place",
                )
            ]
        )
    drops = [Drop(place_id=place.id, split=number) for place in places]
    if len(drops) == 1:
        return drops[0]
    return min(drops, key=lambda drop: _clashes_after(now, grab, drop, today))


def _clashes_after(now: Checked, grab: Grab, drop: Drop, today: date) -> int:
    change = change_of(now.season.farm, grab, drop)
    return len(now.after(apply(now.season.farm, change)).since(today)) if change is not None else 0
