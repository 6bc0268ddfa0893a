"""A trial beside the plan: clashes, batches and what the two bring. Words and tables: ``report.trials``."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from quailsched.edits.merging import Overridden
from quailsched.edits.trials import fitted
from quailsched.farm.faults import Fault
from quailsched.farm.records import Batch, Farm, Record
from quailsched.planner.checker import has_grown, is_same, new_ones
from quailsched.planner.totals import Totals, totals_of
from quailsched.quick import dataclass
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season


@dataclass(frozen=True, slots=True)
class ClashChanges:
    """The clashes of the plan and of the trial, sorted by what the trial does to them.

    ``worse`` and ``eased`` are as the trial has them. ``same`` counts those that stay, move along or break up.
    """

    before: int
    after: int
    gone: tuple[Clash, ...]
    new: tuple[Clash, ...]
    worse: tuple[Clash, ...]
    eased: tuple[Clash, ...]

    @property
    def same(self) -> int:
        return self.after - len(self.new) - len(self.worse) - len(self.eased)


@dataclass(frozen=True, slots=True)
class RecordPair:
    """A record as the plan has it and as the trial has it; None where it is not there."""

    plan: Record | None
    trial: Record | None

    @property
    def is_batch(self) -> bool:
        return isinstance(self.plan or self.trial, Batch)


@dataclass(frozen=True, slots=True)
class Comparison:
    """``misfits`` say what of the trial does not fit the plan of today and was left out, ``overridden`` what both have
    changed since: there the trial's holds."""

    plan: Farm
    trial: Farm
    records: tuple[RecordPair, ...]
    clashes: ClashChanges
    plan_totals: Totals
    trial_totals: Totals
    misfits: tuple[Fault, ...]
    overridden: tuple[Overridden, ...] = ()


def compare(plan: Farm, trial_id: str, since: date) -> Comparison:
    """The trial ``trial_id`` of ``plan`` beside it, from ``since`` on. Raises KeyError for an unknown trial."""
    fit = fitted(plan, trial_id)
    before, after = Season(plan), Season(fit.farm)
    return Comparison(
        plan=plan,
        trial=fit.farm,
        records=differing(plan, fit.farm),
        clashes=clash_changes(clashes_of(before, since), clashes_of(after, since)),
        plan_totals=totals_of(before, since),
        trial_totals=totals_of(after, since),
        misfits=fit.misfits,
        overridden=fit.overridden,
    )


def differing(plan: Farm, trial: Farm) -> tuple[RecordPair, ...]:
    """The records that the two do not have alike, in the order of the plan, then of the trial."""
    skipped = {one.id for one in plan.trials}
    ids = dict.fromkeys(record.id for record in (*plan.records(), *trial.records()) if record.id not in skipped)
    pairs = [RecordPair(plan.find(record_id), trial.find(record_id)) for record_id in ids]
    return tuple(pair for pair in pairs if pair.plan != pair.trial)


def clash_changes(before: Sequence[Clash], after: Sequence[Clash]) -> ClashChanges:
    """Which clashes a trial takes away and which it brings.

    The checker tells which of ``after`` nothing answers for: these are new, or an old one that has become worse.
    Read the other way round it tells which of ``before`` are gone, or have been eased.
    """
    kept = set(before) & set(after)
    left = [old for old in before if old not in kept]
    worse: list[Clash] = []
    new: list[Clash] = []
    for one in new_ones(before, after):
        was = _become(left, one)
        if was is None:
            new.append(one)
        else:
            left.remove(was)
            worse.append(one)
    lost = [old for old in new_ones(after, before) if old in left]
    easing = [one for one in after if one not in kept and one not in new and one not in worse]
    eased: list[Clash] = []
    gone: list[Clash] = []
    for old in lost:
        now = next((one for one in easing if is_same(old, one) and has_grown(one, old)), None)
        if now is None:
            gone.append(old)
        else:
            easing.remove(now)
            eased.append(now)
    return ClashChanges(len(before), len(after), tuple(gone), tuple(new), tuple(worse), tuple(eased))


def _become(left: Sequence[Clash], one: Clash) -> Clash | None:
    """The old clash that ``one`` has grown out of: the nearest in time that is about the same."""
    alike = [old for old in left if is_same(old, one) and old.first <= one.last and one.first <= old.last]
    return min(alike, key=lambda old: abs((old.first - one.first).days), default=None)
