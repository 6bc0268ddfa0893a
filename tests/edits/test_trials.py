"""Trials: what-if copies that follow the plan but for what they have otherwise."""

import json
from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from quailsched.edits.batches import change_place, shift, start_on
from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.counts import record
from quailsched.edits.proposals import set_number
from quailsched.edits.records import put, remove
from quailsched.edits.trials import (
    change_in_trial,
    drop_trial,
    farm_of_trial,
    fitted,
    keep_trial,
    rename_trial,
    start_trial,
    trial_in,
)
from quailsched.farm.check import faults_of
from quailsched.farm.facts import Count, OwnChore, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.plain import tagged
from quailsched.farm.records import Farm, Person, Place, Role, Trial, TrialRecord
from quailsched.report.trial_words import overridden_text
from tests.builders import BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, stay
from tests.strategies import days, farms


def two_batches(*more: Place) -> Farm:
    route = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 66))
    return farm(eggs("Elder", 60, *route), eggs("Fern", 40, *route, start=MONDAY + timedelta(days=70)), *more)


def started(one: Farm, name: str = "More ducks?") -> Farm:
    return apply(one, start_trial(one, name, "trial"))


def tried(one: Farm, *edits: object) -> Farm:
    """``one`` after edits of its trial; each edit makes a change of the farm that it is given."""
    for edit in edits:
        one = apply(one, change_in_trial(one, "trial", edit(farm_of_trial(one, "trial"))))  # type: ignore[operator]
    return one


@st.composite
def edits_of(draw: st.DrawFn, one: Farm) -> Change:
    """Some sound change of ``one``: a batch moved or removed, a person added or removed, a place renamed."""
    choices: list[Change] = [put(one, Person("new", "A new person"))]
    choices += [remove(one, person.id) for person in one.people]
    choices += [put(one, replace(place, note="another note")) for place in one.places]
    for batch in one.batches:
        choices += [start_on(one, batch.id, draw(days())), remove(one, batch.id), set_number(one, batch.id, 77)]
    return draw(st.sampled_from(choices))


def unnamed(one: Farm) -> Farm:
    """Without its trials: they may hold the name or the id that a test wants."""
    return replace(one, trials=())


@given(farms())
def test_starting_and_dropping_gives_back_the_farm(one: Farm) -> None:
    one = unnamed(one)
    after = started(one)
    assert faults_of(after) == []
    assert farm_of_trial(after, "trial") == one
    assert apply(after, drop_trial(after, "trial")) == one


@given(farms(), st.data())
def test_keeping_is_the_same_as_making_the_changes_in_the_plan(one: Farm, data: st.DataObject) -> None:
    plan, with_trial = unnamed(one), started(unnamed(one))
    for _ in range(data.draw(st.integers(0, 4))):
        change = data.draw(edits_of(plan))
        with_trial = apply(with_trial, change_in_trial(with_trial, "trial", change))
        plan = apply(plan, change)
        assert farm_of_trial(with_trial, "trial") == plan
        assert unnamed(with_trial) == unnamed(one)  # the plan itself stays as it is
    kept = keep_trial(with_trial, "trial")
    assert apply(with_trial, kept) == plan
    assert apply(apply(with_trial, kept), kept.inverse()) == with_trial


@given(farms(), st.data())
def test_a_change_and_its_inverse_inside_a_trial_leave_it_as_it_was(one: Farm, data: st.DataObject) -> None:
    before = started(unnamed(one))
    change = data.draw(edits_of(farm_of_trial(before, "trial")))
    after = apply(before, change_in_trial(before, "trial", change))
    back = apply(after, change_in_trial(after, "trial", change.inverse()))
    assert back == before  # what ends as the plan has it is no longer the trial's own
    assert apply(after, change_in_trial(before, "trial", change).inverse()) == before


@given(farms())
def test_the_farm_of_any_trial_is_sound_and_has_no_trials(one: Farm) -> None:
    for trial in one.trials:
        fit = fitted(one, trial.id)
        assert faults_of(fit.farm) == []
        assert fit.farm.trials == ()


@given(farms(), st.data())
def test_untouched_records_follow_the_plan(one: Farm, data: st.DataObject) -> None:
    one = started(unnamed(one))
    change = data.draw(edits_of(farm_of_trial(one, "trial")))
    one = apply(one, change_in_trial(one, "trial", change))
    touched = {touch.record_id for touch in change.touches}
    plan_edit = data.draw(edits_of(unnamed(one)).filter(lambda c: not touched & {t.record_id for t in c.touches}))
    moved_on = apply(one, plan_edit)
    shown = farm_of_trial(moved_on, "trial")
    for touch in plan_edit.touches:
        assert shown.find(touch.record_id) == touch.after


def test_nudges_in_a_trial_merge_as_they_do_in_the_plan_but_not_with_those_of_the_plan() -> None:
    one = started(two_batches())
    first = change_in_trial(one, "trial", shift(farm_of_trial(one, "trial"), "elder", 1))
    assert first.label == "Set Elder on 2 Mar (trial “More ducks?”)"
    assert first.merge_key == "trial trial start elder"
    after = apply(one, first)
    second = change_in_trial(after, "trial", shift(farm_of_trial(after, "trial"), "elder", -1))
    assert second.merge_key == first.merge_key
    assert apply(one, first.then(second)) == one  # there and back again: nothing is left
    assert change_in_trial(one, "trial", set_number(one, "elder", 50)).merge_key == ""


def test_two_trials_stand_side_by_side() -> None:
    one = tried(started(two_batches()), lambda f: shift(f, "elder", 6))
    one = apply(one, start_trial(one, "Without Fern", "other"))
    one = apply(one, change_in_trial(one, "other", remove(farm_of_trial(one, "other"), "fern")))
    assert farm_of_trial(one, "trial").batch("elder").start == MONDAY + timedelta(days=6)
    assert farm_of_trial(one, "other").batch("elder").start == MONDAY
    assert one.find("fern") is not None
    assert farm_of_trial(one, "other").find("fern") is None
    kept = apply(one, keep_trial(one, "other"))
    assert [trial.name for trial in kept.trials] == ["More ducks?"]
    assert farm_of_trial(kept, "trial").find("fern") is None  # it follows the plan


def test_a_trial_needs_a_name_of_its_own() -> None:
    one = started(two_batches())
    with pytest.raises(FarmError, match="trial, name: “more ducks\\?” cannot be used; another trial has it already"):
        start_trial(one, " more ducks?", "other")
    with pytest.raises(FarmError, match="at least one letter"):
        rename_trial(one, "trial", "  ")
    renamed = apply(one, rename_trial(one, "trial", "Fewer"))
    assert trial_in(renamed, "trial").name == "Fewer"
    with pytest.raises(KeyError):
        farm_of_trial(one, "elder")


def test_a_trial_whose_place_has_gone_is_shown_without_it_and_is_not_kept() -> None:
    spare = Place("spare", "Spare pen", Role.PEN, 7, floor_cm2=50_000)
    one = tried(
        started(two_batches(spare)), lambda f: change_place(f, "elder", 3, "spare"), lambda f: shift(f, "fern", 3)
    )
    one = apply(one, remove(one, "spare"))  # nobody in the plan uses it
    fit = fitted(one, "trial")
    told = (
        "batch Elder, place of a stay: “a place that the plan no longer has” cannot be used; "
        "change the batch anew in the trial, or drop the trial."
    )
    assert [fault.sentence() for fault in fit.misfits] == [told]
    assert fit.farm.batch("elder") == one.batch("elder")  # as in the plan
    assert fit.farm.batch("fern").start == one.batch("fern").start + timedelta(days=3)  # the rest as in the trial
    with pytest.raises(FarmError) as caught:
        keep_trial(one, "trial")
    assert str(caught.value) == told
    # A new change of the batch starts from what is shown, and then the trial fits again.
    mended = tried(one, lambda f: shift(f, "elder", 2))
    assert fitted(mended, "trial").misfits == ()
    assert apply(mended, keep_trial(mended, "trial")).batch("elder").start == MONDAY + timedelta(days=2)


def test_a_place_taken_away_in_a_trial_stays_if_the_plan_needs_it_meanwhile() -> None:
    spare = Place("spare", "Spare pen", Role.PEN, 7, floor_cm2=50_000)
    one = tried(started(two_batches(spare)), lambda f: remove(f, "spare"))
    assert farm_of_trial(one, "trial").find("spare") is None
    one = apply(one, change_place(one, "elder", 3, "spare"))
    fit = fitted(one, "trial")
    assert fit.farm.find("spare") == spare
    assert [fault.sentence() for fault in fit.misfits] == [
        "batch Elder, place of a stay: “Spare pen” cannot be used; "
        "the trial takes this place away, so the batch needs another one."
    ]


def test_a_batch_taken_away_in_a_trial_stays_if_things_were_counted_of_it_meanwhile() -> None:
    one = tried(started(two_batches()), lambda f: remove(f, "elder"))
    counted = Count("set", Sort.SET, MONDAY, number=60, batch_id="elder")
    one = apply(one, record(one, counted, MONDAY))
    fit = fitted(one, "trial")
    assert fit.farm.find("elder") == one.batch("elder")
    assert [fault.sentence() for fault in fit.misfits] == [
        "set on 1 Mar, batch: the trial takes Elder away; it is needed here by now: change it anew in the trial, or "
        "drop the trial."
    ]
    one = tried(one, lambda f: put(f, replace(f.batch("elder"), name="Elderberry")))
    assert fitted(one, "trial").misfits == ()


def test_a_chore_of_a_trial_whose_batch_the_plan_takes_away_is_told_of() -> None:
    chore = OwnChore("look", "Look in", MONDAY, batch_id="elder")
    one = tried(started(two_batches()), lambda f: put(f, chore))
    one = apply(one, remove(one, "elder"))
    assert [fault.sentence() for fault in fitted(one, "trial").misfits] == [
        "chore Look in, batch: the plan no longer has it; change this anew in the trial, or drop the trial."
    ]


def test_names_that_change_hands_fit_only_together() -> None:
    one = two_batches()
    one = tried(
        started(one),
        lambda f: put(f, replace(f.batch("elder"), name="Hazel")),
        lambda f: put(f, replace(f.batch("fern"), name="Elder")),
        lambda f: put(f, replace(f.batch("elder"), name="Fern")),
    )
    shown = farm_of_trial(one, "trial")
    assert (shown.batch("elder").name, shown.batch("fern").name) == ("Fern", "Elder")
    assert fitted(one, "trial").misfits == ()


def test_a_name_that_the_plan_has_given_away_is_told() -> None:
    one = tried(started(two_batches()), lambda f: put(f, eggs("Hazel", 10, stay(SETTER, 0, 15), stay(HATCHER, 15, 18))))
    one = apply(one, put(one, replace(one.batch("fern"), name="hazel")))
    (misfit,) = fitted(one, "trial").misfits
    assert misfit.sentence() in (
        "batch, name: “Hazel” cannot be used; another batch has it already, each needs its own.",
        "batch, name: “hazel” cannot be used; another batch has it already, each needs its own.",
    )


def eggs_of_elder(one: Farm, number: int) -> Farm:
    return apply(one, set_number(one, "elder", number))


def test_what_the_plan_has_changed_since_stays_where_the_trial_has_not_changed_it() -> None:
    # The trial sets Elder six days later. Then half of the 60 eggs turn out bad, and the note says so.
    one = tried(started(two_batches()), lambda f: shift(f, "elder", 6))
    one = eggs_of_elder(one, 30)
    one = apply(one, put(one, replace(one.batch("elder"), note="bad eggs")))
    fit = fitted(one, "trial")
    assert (fit.farm.batch("elder").number, fit.overridden) == (30, ())
    kept = apply(one, keep_trial(one, "trial")).batch("elder")
    assert (kept.start, kept.number, kept.note) == (MONDAY + timedelta(days=6), 30, "bad eggs")


def test_where_both_have_changed_the_same_the_trial_holds_and_it_is_told() -> None:
    one = tried(started(two_batches()), lambda f: set_number(f, "elder", 50))
    one = eggs_of_elder(one, 30)
    fit = fitted(one, "trial")
    assert fit.farm.batch("elder").number == 50
    (over,) = fit.overridden
    assert over.fields == ("number",)
    assert overridden_text(over) == "Elder: the plan has another number by now; kept, the trial brings its own."
    # To change another thing in the trial does not hide that, and does not make the plan's note the trial's.
    one = tried(apply(one, put(one, replace(one.batch("elder"), note="bad"))), lambda f: shift(f, "elder", 1))
    one = apply(one, put(one, replace(one.batch("elder"), note="good after all")))
    fit = fitted(one, "trial")
    assert [over.fields for over in fit.overridden] == [("number",)]
    assert fit.farm.batch("elder").note == "good after all"
    # The same number in both is no matter; another one typed in the trial is the keeper's last word.
    assert fitted(eggs_of_elder(one, 50), "trial").overridden == ()
    one = tried(one, lambda f: set_number(f, "elder", 40))
    assert fitted(one, "trial").overridden == ()
    assert apply(one, keep_trial(one, "trial")).batch("elder").number == 40


def test_a_record_that_one_has_changed_and_the_other_taken_away_is_told() -> None:
    one = tried(started(two_batches()), lambda f: remove(f, "fern"), lambda f: set_number(f, "elder", 50))
    one = apply(one, set_number(one, "fern", 20))
    one = apply(one, remove(one, "elder"))
    fit = fitted(one, "trial")
    assert fit.farm.find("fern") is None
    assert fit.farm.batch("elder").number == 50
    assert sorted(overridden_text(over) for over in fit.overridden) == [
        "Elder: the plan has taken it away by now; kept, the trial brings it back.",
        "Fern: the plan has changed it by now; kept, the trial takes it away.",
    ]


def test_a_trial_that_did_not_keep_what_was_holds_whole_records() -> None:
    bigger = replace(two_batches().batch("elder"), number=50)
    old = Trial("trial", "Old", (TrialRecord("elder", json.dumps(tagged(bigger))), TrialRecord("fern", "")))
    one = apply(two_batches(), Change("", (Touch(None, old),)))
    one = apply(one, put(one, replace(one.batch("elder"), note="bad eggs")))
    fit = fitted(one, "trial")
    assert (fit.farm.batch("elder"), fit.farm.find("fern"), fit.overridden) == (bigger, None, ())


@given(farms(), st.data())
def test_changes_of_different_fields_make_the_same_farm_in_either_order(one: Farm, data: st.DataObject) -> None:
    one = unnamed(one)
    assume(one.batches)
    batch = data.draw(st.sampled_from(one.batches))
    later = start_on(one, batch.id, data.draw(days()))
    fewer = set_number(one, batch.id, batch.number + 1)
    with_trial = apply(started(one), change_in_trial(started(one), "trial", later))
    moved_on = apply(with_trial, fewer)
    in_order = apply(one, later)
    in_order = apply(in_order, set_number(in_order, batch.id, batch.number + 1))
    assert apply(moved_on, keep_trial(moved_on, "trial")) == in_order


@pytest.mark.parametrize(
    ("record", "told"),
    [
        (TrialRecord("farm", ""), "record of the trial: “farm” cannot be used; a farm keeps its one settings record."),
        (TrialRecord("trial", ""), "record of the trial: “trial” cannot be used; a trial holds no trials."),
        (TrialRecord("x", "{}"), "record of the trial: “x” cannot be used; the JSON text of a record is accepted."),
        (TrialRecord("x", "]"), "record of the trial: “x” cannot be used; the JSON text of a record is accepted."),
        (TrialRecord("x", "7"), "record of the trial: “x” cannot be used; the JSON text of a record is accepted."),
    ],
)
def test_a_record_that_can_be_in_no_farm_is_told_and_left_out(record: TrialRecord, told: str) -> None:
    one = two_batches().with_records(set(), (Trial("trial", "Odd", (record,)),))
    fit = fitted(one, "trial")
    assert [fault.sentence() for fault in fit.misfits] == [told]
    assert fit.farm == two_batches()
    with pytest.raises(FarmError) as caught:
        keep_trial(one, "trial")
    assert str(caught.value) == told


def test_a_change_made_for_another_farm_is_refused() -> None:
    one = tried(started(two_batches()), lambda f: shift(f, "elder", 6))
    with pytest.raises(ValueError, match="does not fit this farm"):
        change_in_trial(one, "trial", start_on(one, "elder", date(2027, 5, 1)))  # made for the plan
