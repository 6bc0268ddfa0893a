"""The days of a batch, counted from its day 0, and the stage it is in.

Day 0 is the day of setting, so "day 15" begins 15 x 24 h after the eggs went in (the count of Romao et al.
2009, whose day 15 is hour 360). Bought birds have no setting: their day 0 is the day that they came.
"""

from __future__ import annotations

from enum import StrEnum
from functools import lru_cache
from itertools import groupby

from quailsched.farm.records import Batch, Part, Stay
from quailsched.husbandry.kind import Kind
from quailsched.quick import dataclass
from quailsched.season.lived import NOTHING, Lived
from quailsched.words import marked


class Stage(StrEnum):
    SETTING = "setting"
    LOCKDOWN = "lockdown"
    HATCHING = "hatching"
    BROODING = "brooding"
    HARDENING = "hardening off"
    GROWING = "growing"
    LAYING = "laying"
    FINISHING = "finishing"
    GONE = "gone"


STAGE_WORDS = (  # to be said where a stage is shown
    *(marked("setting"), marked("lockdown"), marked("hatching"), marked("brooding"), marked("hardening off")),
    *(marked("growing"), marked("laying"), marked("finishing"), marked("gone")),
)


@dataclass(frozen=True, slots=True)
class Days:
    """Day numbers of one batch. ``hatch`` is the day at which the birds' age is 0 (negative if bought)."""

    hatch: int
    lockdown: int  # first day without turning
    dry: int  # chicks go from the hatcher to the brooder
    too_long_in_hatcher: int  # first day on which chicks may not be in the hatcher any more
    feathered: int
    heat_off: int
    hardened: int  # cold nights count until here
    sex: int
    mature: int  # cocks fight from here
    process: int
    first_egg: int
    replaced: int  # the end of a stay that is left open

    @property
    def may_leave_brooder(self) -> int:
        """Feathered and off heat: the later of the two."""
        return max(self.feathered, self.heat_off)


@lru_cache(maxsize=4096)
def _days(kind: Kind, hatch: int, feathered: int | None) -> Days:
    hold = kind.figures["hatcher_hold_days"]
    longest_hold = hold.high if hold.high is not None else hold.value
    return Days(
        hatch=hatch,
        lockdown=kind.days("lockdown_day"),
        dry=hatch + kind.days("hatcher_hold_days"),
        too_long_in_hatcher=hatch + max(int(longest_hold), kind.days("hatcher_hold_days")) + 1,
        feathered=hatch + kind.days("feathered_day") if feathered is None else feathered,
        heat_off=hatch + kind.days("heat_off_day"),
        hardened=hatch + kind.days("hardened_day"),
        sex=hatch + kind.days("sex_day"),
        mature=hatch + kind.days("cocks_mature_day"),
        process=hatch + kind.days("process_day"),
        first_egg=hatch + kind.days("first_egg_day"),
        replaced=hatch + kind.days("first_egg_day") + kind.days("keep_lay_days"),
    )


def days_of(kind: Kind, batch: Batch, lived: Lived = NOTHING) -> Days:
    """The days of ``batch``: figures of ``kind``, but for what is known to have been otherwise."""
    hatch = kind.days("incubation_days") if batch.origin.is_eggs else -batch.age_days
    return _days(kind, hatch if lived.hatch is None else lived.hatch, lived.feathered)


def end_of(stay: Stay, days: Days) -> int:
    """The day on which a stay ends, half-open; an open one when its birds are replaced."""
    return stay.to_day if stay.to_day is not None else max(days.replaced, stay.from_day + 1)


def stage_on(days: Days, day: int, part: Part, in_brooder: bool, leaves_brooder: int | None, harden: int) -> Stage:
    """The stage on ``day``; ``leaves_brooder`` is the day of the move to a pen, ``harden`` its days before."""
    if day < days.hatch:
        return Stage.SETTING if day < days.lockdown else Stage.LOCKDOWN
    if day < days.dry and days.hatch >= 0:
        return Stage.HATCHING
    if in_brooder:
        is_hardening = leaves_brooder is not None and day >= leaves_brooder - harden
        return Stage.HARDENING if is_hardening else Stage.BROODING
    if part is Part.COCKS:
        return Stage.FINISHING
    return Stage.LAYING if day >= days.first_egg else Stage.GROWING


@lru_cache(maxsize=4096)
def stages_through(
    days: Days, start: int, end: int, part: Part, in_brooder: bool, leaves_brooder: int | None, harden: int
) -> tuple[tuple[int, int, Stage], ...]:
    """(first day, end, stage) of each stage from day ``start`` to ``end`` (half-open), in order; as ``stage_on``."""
    stages = [(day, stage_on(days, day, part, in_brooder, leaves_brooder, harden)) for day in range(start, end)]
    runs = [[day for day, _ in same] for _, same in groupby(stages, key=lambda one: one[1])]
    by_day = dict(stages)
    return tuple((run[0], run[-1] + 1, by_day[run[0]]) for run in runs)
