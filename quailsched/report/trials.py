"""Trials beside the plan, in words, as rows of a table and as JSON.

Promises and money are left out: the program keeps neither yet, and ``LEFT_OUT`` says so.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from typing import Any

from quailsched.edits.merging import Overridden
from quailsched.farm.faults import Fault
from quailsched.farm.records import Batch, Farm, Trial
from quailsched.farm.units import count_text, day_text, span_text
from quailsched.planner.compare import Comparison
from quailsched.planner.totals import Totals
from quailsched.quick import dataclass
from quailsched.report.clashes import clash_json, title_of
from quailsched.report.trial_words import change_lines, overridden_text
from quailsched.season.clash import Clash
from quailsched.words import marked, number_text, say

LEFT_OUT = marked("Promises and money are not compared: the program does not keep them yet.")
_NONE = "–"


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the table: what it is, in the plan, in the trial."""

    what: str
    plan: str
    trial: str

    @property
    def differs(self) -> bool:
        return self.plan != self.trial


def table_rows(comparison: Comparison) -> list[Row]:
    """The two side by side. First eggs and hens in lay are told where they differ, or that they do not."""
    clashes, plan, trial = comparison.clashes, comparison.plan_totals, comparison.trial_totals
    rows = [
        Row(say("Clashes ahead"), number_text(clashes.before), number_text(clashes.after)),
        Row(say("Chicks expected"), number_text(plan.hatched), number_text(trial.hatched)),
    ]
    if plan.brought_in or trial.brought_in:
        rows.append(Row(say("Birds brought in"), number_text(plan.brought_in), number_text(trial.brought_in)))
    rows.append(Row(say("Birds sold"), number_text(plan.sold), number_text(trial.sold)))
    rows.append(Row(say("Birds processed"), number_text(plan.processed), number_text(trial.processed)))
    return [*rows, *_first_egg_rows(comparison), *_hen_rows(plan, trial)]


def _first_egg_rows(comparison: Comparison) -> Iterator[Row]:
    plan, trial, since = comparison.plan_totals, comparison.trial_totals, comparison.plan_totals.since
    for pair in comparison.records:
        record = pair.trial or pair.plan
        if not isinstance(record, Batch):
            continue
        days = [one.first_eggs.get(record.id) for one in (plan, trial)]
        if days[0] != days[1]:
            before, after = (day_text(day, since) if day else _NONE for day in days)
            yield Row(say("First eggs of {record}", record=record.name), before, after)


def _hen_rows(plan: Totals, trial: Totals) -> Iterator[Row]:
    differing = [day for day in plan.hens_in_lay if plan.hens_in_lay[day] != trial.hens_in_lay[day]]
    for day in differing:
        words = say("Hens in lay, {day}", day=day_text(day, plan.since))
        yield Row(words, number_text(plan.hens_in_lay[day]), number_text(trial.hens_in_lay[day]))
    if not differing:
        yield Row(
            say("Hens in lay, next {number} months", number=len(plan.hens_in_lay)), say("the same"), say("the same")
        )


def clash_lines(comparison: Comparison) -> list[tuple[str, Clash, str, str]]:
    """What the trial does to each clash that it touches: "Gone", the clash, its heading, its days."""
    since, clashes = comparison.plan_totals.since, comparison.clashes
    groups: list[tuple[str, tuple[Clash, ...], Farm]] = [
        (say("New"), clashes.new, comparison.trial),
        (say("Worse"), clashes.worse, comparison.trial),
        (say("Eased"), clashes.eased, comparison.trial),
        (say("Gone"), clashes.gone, comparison.plan),
    ]
    return [
        (word, clash, title_of(farm, clash), span_text(clash.first, clash.last, since))
        for word, found, farm in groups
        for clash in found
    ]


def same_text(comparison: Comparison) -> str:
    """How many clashes the trial leaves as they are."""
    same = comparison.clashes.same
    if not same:
        return say("No clash stays.")
    clashes = count_text(same, "clash", "clashes")
    return say("{clashes} stays.", clashes=clashes) if same == 1 else say("{clashes} stay.", clashes=clashes)


def misfit_lines(misfits: Sequence[Fault], overridden: Sequence[Overridden]) -> list[str]:
    """Why something of the trial could not be put into the plan of today, and what of that it would undo."""
    left_out = [say("Left out – {sentence}", sentence=fault.sentence()) for fault in misfits]
    return [*left_out, *(say("Changed in both – {sentence}", sentence=overridden_text(one)) for one in overridden)]


def trials_text(plan: Farm, found: Sequence[tuple[Trial, Comparison]]) -> str:
    """Every trial with its comparison."""
    if not found:
        return say("{farm}: no trial. In the window, Trials › Start a trial begins one.", farm=plan.settings.name)
    lines = [say("{farm}: {trials} beside the plan", farm=plan.settings.name, trials=count_text(len(found), "trial"))]
    for trial, comparison in found:
        lines += ["", f"  {trial.name}"]
        lines += [f"    {line}" for line in (change_lines(comparison) or [say("Nothing otherwise than in the plan.")])]
        lines += [f"    {line}" for line in misfit_lines(comparison.misfits, comparison.overridden)]
        lines += ["", *_table_lines(table_rows(comparison)), ""]
        lines += [f"    {word}: {heading}, {when}" for word, _, heading, when in clash_lines(comparison)]
        lines.append(f"    {same_text(comparison)}")
    return "\n".join([*lines, "", f"  {say(LEFT_OUT)}"])


def _table_lines(rows: Sequence[Row]) -> list[str]:
    wide = max(len(row.what) for row in rows)
    column = max(len(text) for row in rows for text in (row.plan, row.trial, "trial"))
    head = f"    {'':<{wide}}  {say('plan'):>{column}}  {say('trial'):>{column}}"
    return [head, *(f"    {row.what:<{wide}}  {row.plan:>{column}}  {row.trial:>{column}}" for row in rows)]


def trials_json(plan: Farm, found: Sequence[tuple[Trial, Comparison]], since: date) -> dict[str, Any]:
    """The document of ``quailsched trials --json``; dates ISO, birds whole expected numbers."""
    return {
        "farm": plan.settings.name,
        "from": since.isoformat(),
        "trials": [_trial_json(trial, comparison) for trial, comparison in found],
        "not_compared": ["promises", "money"],
    }


def _trial_json(trial: Trial, comparison: Comparison) -> dict[str, Any]:
    clashes = comparison.clashes
    return {
        "trial": trial.name,
        "note": trial.note,
        "changes": change_lines(comparison),
        "left_out": [fault.sentence() for fault in comparison.misfits],
        "changed_in_both": [overridden_text(one) for one in comparison.overridden],
        "plan": _side_json(comparison.plan, comparison.plan_totals, clashes.before),
        "with_trial": _side_json(comparison.trial, comparison.trial_totals, clashes.after),
        "clashes": {
            "same": clashes.same,
            **{word: [clash_json(comparison.trial, clash) for clash in found]
               for word, found in (("new", clashes.new), ("worse", clashes.worse), ("eased", clashes.eased))},
            "gone": [clash_json(comparison.plan, clash) for clash in clashes.gone],
        },
    }  # fmt: skip


def _side_json(farm: Farm, totals: Totals, clashes: int) -> dict[str, Any]:
    return {
        "clashes": clashes,
        "chicks": totals.hatched,
        "brought_in": totals.brought_in,
        "sold": totals.sold,
        "processed": totals.processed,
        "first_eggs": [
            {"batch": farm.batch(batch_id).name, "day": day.isoformat()} for batch_id, day in totals.first_eggs.items()
        ],
        "hens_in_lay": {day.isoformat(): number for day, number in totals.hens_in_lay.items()},
    }
