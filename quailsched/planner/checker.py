"""Whether a changed plan is better: a clash is gone and no new one has come. Shares no code with the search."""

from __future__ import annotations

from collections.abc import Sequence

from quailsched.season.clash import Clash


def is_same(old: Clash, new: Clash) -> bool:
    """Whether ``new`` is what ``old`` has become: one rule, one place, a batch in common."""
    return old.kind == new.kind and old.place_id == new.place_id and bool({*old.batch_ids} & {*new.batch_ids})


def has_grown(old: Clash, new: Clash) -> bool:
    """Whether a clash is about more, or lasts longer, than it did."""
    more = abs(new.need - new.have) > abs(old.need - old.have) or new.birds_over > old.birds_over
    return more or (new.last - new.first) > (old.last - old.first)


def solves(clash: Clash, before: Sequence[Clash], after: Sequence[Clash]) -> bool:
    """Whether ``clash`` is gone and each clash of ``after`` was there before, no larger than it is now.

    A clash that broke up into two counts as grown only if one of them is larger than the whole was.
    """
    others = [old for old in before if old != clash]
    for new in after:
        if is_same(clash, new) and not any(old == new for old in others):
            return False
        if not any(is_same(old, new) and not has_grown(old, new) for old in others):
            return False
    return True


def eases(clash: Clash, before: Sequence[Clash], after: Sequence[Clash]) -> float | None:
    """How much of ``clash`` is left (less than 1) if it is smaller and no other has come; None otherwise."""
    left = [new for new in after if is_same(clash, new)]
    others = [new for new in after if not is_same(clash, new)]
    was = abs(clash.need - clash.have) * ((clash.last - clash.first).days + 1)
    now = sum(abs(new.need - new.have) * ((new.last - new.first).days + 1) for new in left)
    is_clean = all(any(is_same(old, new) and not has_grown(old, new) for old in before) for new in others)
    return now / was if is_clean and 0 < now < was else None
