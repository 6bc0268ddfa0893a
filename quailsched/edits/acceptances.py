"""Living with a clash that is to be watched, and no longer living with it."""

from __future__ import annotations

from collections.abc import Callable

from quailsched.edits.change import Change, Touch
from quailsched.edits.records import sound
from quailsched.farm.faults import FarmError, Fault, Finding, field_of
from quailsched.farm.records import Acceptance, Farm, Place
from quailsched.farm.units import names_text
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from quailsched.season.severity import Severity, amount_of, days_of, holds, is_of, severity_of
from quailsched.words import say

MOST_REASON_LETTERS = 100
_MOST_TOLD = 40  # letters of a reason in a label


def accept(farm: Farm, clash: Clash, reason: str, new_id: Callable[[], str]) -> Change:
    """Live with ``clash`` as it is now, for ``reason``. What was accepted of it when it was smaller is replaced.

    Raises FarmError for a clash that stops the plan, and for a reason that is empty or too long.
    """
    if severity_of(clash.kind) is Severity.STOPS:
        where = {"batches": _who(farm, clash.batch_ids), "place": farm.place(clash.place_id).name}
        accepted = say("it stops the plan, and only a clash to watch can be accepted")
        raise FarmError([Fault(say("accept a clash"), say("{batches} in {place}", **where), accepted, "clash")])
    words = _reason(reason)
    old = _replaced(farm, clash)
    record = Acceptance(
        id=old[0].id if old else new_id(),
        kind=clash.kind,
        place_id=clash.place_id,
        batch_ids=clash.batch_ids,
        amount=amount_of(clash),
        birds=clash.birds_over,
        days=days_of(clash),
        reason=words,
    )
    touches = (Touch(old[0] if old else None, record), *(Touch(one, None) for one in old[1:]))
    return sound(farm, Change(say("Accept {clash}", clash=_what(farm, record)), touches))


def take_back(farm: Farm, *acceptance_ids: str) -> Change:
    """No longer live with what these records accept. Raises FarmError for the id of anything else."""
    found = []
    for acceptance_id in acceptance_ids:
        record = farm.find(acceptance_id)
        if not isinstance(record, Acceptance):
            accepted = say("the id of an accepted clash is accepted")
            raise FarmError([Fault(say("take acceptance back"), acceptance_id, accepted)])
        found.append(record)
    label = "; ".join(_what(farm, record) for record in found)
    return Change(say("No longer accept {clashes}", clashes=label), tuple(Touch(record, None) for record in found))


def _reason(text: str) -> str:
    """``text`` on one line. Raises FarmError if it is empty or too long."""
    words = " ".join(text.split())
    where = field_of(say("accept a clash"), say("reason"))
    if not words:
        accepted = say("a word of why you live with it is needed")
        raise FarmError([Fault(where, Finding(say("it is empty")), accepted, "reason")])
    if len(words) > MOST_REASON_LETTERS:
        accepted = say("a reason of up to {most} letters is accepted", most=MOST_REASON_LETTERS)
        raise FarmError([Fault(where, f"{words[:40]}…", accepted, "reason")])
    return words


def _replaced(farm: Farm, clash: Clash) -> list[Acceptance]:
    """What was accepted of ``clash`` before, but for what another clash of the place still rests on."""
    old = [one for one in farm.acceptances if is_of(one, clash)]
    others = [one for one in clashes_of(Season(farm)) if one != clash] if old else []
    return [one for one in old if not any(holds(one, other) for other in others)]


def _who(farm: Farm, batch_ids: tuple[str, ...]) -> str:
    """ "Aster", "Aster and Bracken", "Aster and 3 more": those that are still there; it ends up in a menu."""
    names = [batch.name for batch in farm.batches if batch.id in batch_ids]
    return (
        names_text(names) if len(names) < 3 else say("{name} and {number} more", name=names[0], number=len(names) - 1)
    )


def _what(farm: Farm, record: Acceptance) -> str:
    """ "the clash of Aster in Garden pen (only for a week)". Places and batches may have gone since."""
    place, who, reason = farm.find(record.place_id), _who(farm, record.batch_ids), record.reason
    short = reason if len(reason) <= _MOST_TOLD else f"{reason[:_MOST_TOLD].rstrip()}…"
    if not isinstance(place, Place):
        return say("the clash of {who} ({reason})" if who else "the clash ({reason})", who=who, reason=short)
    return say(
        "the clash of {who} in {place} ({reason})" if who else "the clash in {place} ({reason})",
        who=who,
        place=place.name,
        reason=short,
    )
