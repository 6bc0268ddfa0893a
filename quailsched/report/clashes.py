"""Clashes in words and as JSON."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import Any

from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, span_text
from quailsched.season.clash import Clash
from quailsched.season.severity import Severity, acceptance_of, severity_of
from quailsched.words import marked, say

TITLES = {
    "eggs": marked("Too many eggs for {place}"),
    "cabinet": marked("Turning and lockdown in {place}"),
    "floor": marked("{place} is too small"),
    "cleanout": marked("No time to clean out {place}"),
    "notready": marked("{place} cannot be used"),
    "young": marked("Too young for {place}"),
    "cold": marked("Nights too cold in {place}"),
    "calm": marked("Too few birds in {place}"),
    "nowhere": marked("No place after {place}"),
    "stale": marked("Eggs too old for {place}"),
    "ages": marked("Two ages in {place}"),
    "crowd": marked("Too many together in {place}"),
    "cocks": marked("Too many cocks in {place}"),
    "quarantine": marked("Quarantine not over in {place}"),
    "hands": marked("Nobody home for {place}"),
    "heat": marked("Too little heat in {place}"),
    "water": marked("Too little drinker space in {place}"),
    "feeder": marked("Too little feeder space in {place}"),
    "overdue": marked("Past their day in {place}"),
    "build": marked("{place} is not built in time"),
    "dark": marked("Days too short in {place}"),
}

ACCEPTED = marked("Accepted")
_GROUPS = {
    Severity.STOPS.value: marked("Stop the plan"),
    Severity.WATCH.value: marked("To watch"),
    "accepted": ACCEPTED,
}


def title_of(farm: Farm, clash: Clash) -> str:
    """A heading of a few words: "Tub brooder is too small"."""
    return say(TITLES[clash.kind], place=farm.place(clash.place_id).name)


def said_severity(farm: Farm, clash: Clash) -> str:
    """How grave it is in a word or two: "stops the plan", "watch", or "accepted"."""
    return "accepted" if acceptance_of(farm, clash) is not None else severity_of(clash.kind).value


def told_sentence(farm: Farm, clash: Clash) -> str:
    """Its sentence after how grave it is, with the reason if it is accepted: "Watch: 19 birds are too few ..."."""
    acceptance = acceptance_of(farm, clash)
    if acceptance is not None:
        return say("Accepted ({reason}): {sentence}", reason=acceptance.reason, sentence=clash.sentence)
    said = say("Stops the plan") if severity_of(clash.kind) is Severity.STOPS else say("Watch")
    return f"{said}: {clash.sentence}"


def in_groups(farm: Farm, clashes: Iterable[Clash]) -> list[tuple[str, list[tuple[int, Clash]]]]:
    """Those that stop the plan, those to watch, those accepted: a heading, and clashes with their number in the list.

    The number counts from 1 through ``clashes``, whatever group a clash is in. Groups without a clash are left out.
    """
    groups: dict[str, list[tuple[int, Clash]]] = {said: [] for said in _GROUPS}
    for number, clash in enumerate(clashes, 1):
        groups[said_severity(farm, clash)].append((number, clash))
    return [(say(_GROUPS[said]), found) for said, found in groups.items() if found]


def clash_json(farm: Farm, clash: Clash) -> dict[str, Any]:
    """One clash; dates ISO and inclusive, areas in cm2; ``accepted`` is the reason why it is lived with, or null."""
    acceptance = acceptance_of(farm, clash)
    return {
        "kind": clash.kind,
        "place": farm.place(clash.place_id).name,
        "batches": [farm.batch(batch_id).name for batch_id in clash.batch_ids],
        "first": clash.first.isoformat(),
        "last": clash.last.isoformat(),
        "worst": clash.worst.isoformat(),
        "need": clash.need,
        "have": clash.have,
        "unit": clash.unit,
        "birds_over": clash.birds_over,
        "sentence": clash.sentence,
        "severity": severity_of(clash.kind).value,
        "accepted": acceptance.reason if acceptance is not None else None,
    }


def clashes_json(farm: Farm, clashes: tuple[Clash, ...], since: date) -> dict[str, Any]:
    """The document of ``quailsched clashes --json``."""
    return {
        "farm": farm.settings.name,
        "from": since.isoformat(),
        "clashes": [clash_json(farm, clash) for clash in clashes],
    }


def clashes_text(farm: Farm, clashes: tuple[Clash, ...], since: date) -> str:
    """Every clash as a heading with its days and one sentence, in groups of how grave they are."""
    if not clashes:
        return say("{farm}: no clash from {day} on.", farm=farm.settings.name, day=since.isoformat())
    count = count_text(len(clashes), "clash", "clashes")
    lines = [
        say(
            "{farm}: {clashes} from {day} on",
            farm=farm.settings.name,
            clashes=count,
            day=since.isoformat(),
        )
    ]
    width = max(len(span_text(c.first, c.last, since)) for c in clashes)
    for heading, found in in_groups(farm, clashes):
        lines += ["", f"{heading} ({len(found)})"]
        for number, clash in found:
            days = span_text(clash.first, clash.last, since)
            lines.append(f"  {number:>2}. {days:<{width}}  {title_of(farm, clash)}")
            lines.append(f"  {'':>3} {'':<{width}}  {clash.sentence}")
            acceptance = acceptance_of(farm, clash)
            if acceptance is not None:
                accepted = say("Accepted: {reason}", reason=acceptance.reason)
                lines.append(f"  {'':>3} {'':<{width}}  {accepted}")
    return "\n".join(lines)
