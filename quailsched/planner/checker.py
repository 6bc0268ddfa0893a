"""Whether a changed plan is better: a clash is gone and no new one has come. Shares no code with the search."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from quailsched.season.clash import Clash


def is_same(old: Clash, new: Clash) -> bool:
    """Whether ``new`` is what ``old`` has become: one rule, one place, a batch in common."""
    return old.kind == new.kind and old.place_id == new.place_id and bool({*old.batch_ids} & {*new.batch_ids})


def has_grown(old: Clash, new: Clash) -> bool:
    """Whether a clash is about more, or lasts longer, than it did."""
    more = abs(new.need - new.have) > abs(old.need - old.have) or new.birds_over > old.birds_over
    return more or (new.last - new.first) > (old.last - old.first)


def solves(clash: Clash, before: Sequence[Clash], after: Sequence[Clash]) -> bool:
    """Whether ``clash`` is gone and each clash of ``after`` was there before, no smaller than it is now.

    An old clash may stay as it is, break up into pieces of itself, or move along; it answers for one of the three.
    Where another that has changed lies on the days of ``clash`` now, that is not gone.
    """
    gone, come = differing(before, after)
    if any(is_same(clash, new) and new.first <= clash.last and clash.first <= new.last for new in come):
        return False
    return clash in gone and not _unanswered([old for old in gone if old != clash], come)


def laid_to(after: Sequence[Clash], origins: Mapping[str, str]) -> Sequence[Clash]:
    """``after`` with the clashes of batches that were split off laid to the batches that they come from.

    ``origins`` gives for the id of such a batch that of the other. They are the same birds: what they take along of
    an old clash is a piece of it, and a day without hands for both is one such day, as it was. In another place, or
    for more, it is new as ever.
    """
    if not origins:
        return after
    laid: dict[Clash, Clash] = {}
    for clash in after:
        ids = tuple(dict.fromkeys(origins.get(batch_id, batch_id) for batch_id in clash.batch_ids))
        one = clash if ids == clash.batch_ids else replace(clash, batch_ids=ids)
        kept = laid.setdefault(replace(one, sentence=""), one)
        if kept is not one and one is clash:  # of two that are alike, the one that was there before
            laid[replace(one, sentence="")] = one
    return list(laid.values())


def new_ones(before: Sequence[Clash], after: Sequence[Clash]) -> list[Clash]:
    """The clashes of ``after`` for which none of ``before`` answers: those that a change has brought."""
    return _unanswered(*differing(before, after))


def differing(before: Sequence[Clash], after: Sequence[Clash]) -> tuple[list[Clash], list[Clash]]:
    """The clashes of ``before`` that ``after`` has not, and those of ``after`` that were not there before.

    Most are the same objects in both, which costs no comparison.
    """
    were, are = set(map(id, before)), set(map(id, after))
    gone = [old for old in before if id(old) not in are]
    come = [new for new in after if id(new) not in were]
    return [old for old in gone if old not in come], [new for new in come if new not in gone]


def _unanswered(gone: Sequence[Clash], come: Sequence[Clash]) -> list[Clash]:
    found: list[Clash] = []
    answered: set[Clash] = set()
    moved: list[Clash] = []
    for one in come:
        whole = next((old for old in gone if is_piece(old, one)), None)
        if whole is None:
            moved.append(one)
        else:
            answered.add(whole)
    for one in moved:
        match = next(
            (old for old in gone if old not in answered and is_same(old, one) and not has_grown(old, one)), None
        )
        if match is None:
            found.append(one)
        else:
            answered.add(match)
    return found


def is_piece(old: Clash, new: Clash) -> bool:
    """Whether ``new`` lies within the days of ``old`` and is about no more."""
    return is_same(old, new) and old.first <= new.first and new.last <= old.last and not has_grown(old, new)


def eases(clash: Clash, before: Sequence[Clash], after: Sequence[Clash]) -> float | None:
    """How much of ``clash`` is left (less than 1) if it is smaller and no other has come; None otherwise."""
    gone, come = differing(before, after)
    if clash not in gone:
        return None
    left = [new for new in after if is_same(clash, new)]
    others = [new for new in come if not is_same(clash, new)]
    was = abs(clash.need - clash.have) * ((clash.last - clash.first).days + 1)
    now = sum(abs(new.need - new.have) * ((new.last - new.first).days + 1) for new in left)
    is_clean = all(any(is_same(old, new) and not has_grown(old, new) for old in gone) for new in others)
    return now / was if is_clean and 0 < now < was else None
