"""How often a chore of the keeper's own comes round, and the rule of RFC 5545 that says so. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from quailsched.farm.units import SHORT_WEEKDAYS, names_text
from quailsched.words import marked, say

_DAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")


class Often(StrEnum):
    """The ways in which a form asks for it."""

    ONCE = "once"
    DAILY = "every day"
    WEEKLY = "every week"
    MONTHLY = "every month"
    YEARLY = "every year"


OFTEN_WORDS = (
    *(marked("once"), marked("every day"), marked("every week"), marked("every month"), marked("every year")),
)
_STEPS = {Often.DAILY: "DAILY", Often.WEEKLY: "WEEKLY", Often.MONTHLY: "MONTHLY", Often.YEARLY: "YEARLY"}


@dataclass(frozen=True, slots=True)
class Repeat:
    """Every ``step`` days, weeks, months or years; of a week the ``days`` (Monday is 0), none for that of the first."""

    often: Often = Often.ONCE
    step: int = 1
    days: tuple[int, ...] = ()


def rule_of(repeat: Repeat, first: date) -> str:
    """The rule; "" for once. The 29th to the 31st of a month become its last day where it has no such."""
    if repeat.often is Often.ONCE:
        return ""
    parts = [f"FREQ={_STEPS[repeat.often]}"]
    if repeat.step > 1:
        parts.append(f"INTERVAL={repeat.step}")
    if repeat.often is Often.WEEKLY and repeat.days:
        parts.append(f"BYDAY={','.join(_DAYS[day] for day in sorted(set(repeat.days)))}")
    if repeat.often is Often.MONTHLY and first.day > 28:
        days = ",".join(str(day) for day in range(28, first.day + 1))
        parts += [f"BYMONTHDAY={days}", "BYSETPOS=-1"]
    return ";".join(parts)


def repeat_of(rule: str) -> Repeat | None:
    """What a rule says, as the form asks for it; None for one that the form cannot ask for."""
    if not rule:
        return Repeat()
    parts = dict(part.partition("=")[::2] for part in rule.upper().split(";"))
    often = next((one for one, step in _STEPS.items() if step == parts.get("FREQ")), None)
    names = parts.get("BYDAY", "").split(",") if "BYDAY" in parts else []
    step = parts.get("INTERVAL", "1")
    if often is None or not step.isdecimal() or any(name not in _DAYS for name in names):
        return None
    if parts.keys() - {"FREQ", "INTERVAL", "BYDAY", "BYMONTHDAY", "BYSETPOS"} or (names and often is not Often.WEEKLY):
        return None
    is_last = parts.get("BYSETPOS") == "-1" and parts.get("BYMONTHDAY", "").startswith("28,")
    if ("BYMONTHDAY" in parts or "BYSETPOS" in parts) and not (often is Often.MONTHLY and is_last):
        return None
    return Repeat(often, int(step), tuple(sorted(_DAYS.index(name) for name in names)))


def repeat_text(repeat: Repeat) -> str:
    """ "every 2 weeks on Mon and Thu"."""
    words = {
        Often.DAILY: marked("every {step} days"),
        Often.WEEKLY: marked("every {step} weeks"),
        Often.MONTHLY: marked("every {step} months"),
        Often.YEARLY: marked("every {step} years"),
    }
    text = say(repeat.often) if repeat.step == 1 else say(words[repeat.often], step=repeat.step)
    if not repeat.days:
        return text
    return say("{often} on {days}", often=text, days=_names(repeat.days))


def _names(days: Sequence[int]) -> str:
    return names_text([say(SHORT_WEEKDAYS[day]) for day in days])
