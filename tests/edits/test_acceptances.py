"""Accepting a clash and taking that back: steps that can be undone, refused with a sentence."""

from dataclasses import replace
from datetime import timedelta
from itertools import count

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from quailsched.edits.acceptances import accept, take_back
from quailsched.edits.change import Change, Touch, apply
from quailsched.edits.records import remove
from quailsched.farm.check import faults_of
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Acceptance, Farm
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from quailsched.season.severity import WATCHED, acceptance_of, open_clashes
from tests.builders import MONDAY, PEN, RUN, bought, farm, only, stay
from tests.strategies import clashes, farms, names

# A pen of 6 m2 is calm from 22 birds on (60,000 cm2 / 2,787), so ten are 12 too few.
FEW = bought("Aster", 10, 60, stay(PEN, 0, 10), stay(RUN, 10, 15), stay(PEN, 15, 30))
PLAN = farm(FEW)


def calm_in(one: Farm, place_id: str) -> list[Clash]:
    return [clash for clash in clashes_of(Season(one)) if (clash.kind, clash.place_id) == ("calm", place_id)]


def lived_with(one: Farm, clash: Clash, reason: str = "They are calm anyway", record_id: str = "a1") -> Farm:
    return apply(one, accept(one, clash, reason, lambda: record_id))


def test_an_accepted_clash_is_written_down_as_large_as_it_is() -> None:
    short, long = calm_in(PLAN, "pen")  # days 0 to 9, and 15 to 29
    assert lived_with(PLAN, short).acceptances == (
        Acceptance("a1", "calm", "pen", ("aster",), 12, 0, 10, "They are calm anyway"),
    )
    assert lived_with(PLAN, long).acceptances[0].days == 15


def test_the_label_reads_in_a_list() -> None:
    (clash,) = calm_in(PLAN, "run")
    change = accept(PLAN, clash, "  only a\nweek ", lambda: "a1")
    assert change.label == "Accept the clash of Aster in Run (only a week)"
    after = apply(PLAN, change)
    assert take_back(after, "a1").label == "No longer accept the clash of Aster in Run (only a week)"


def test_a_label_stays_short_whatever_it_is_about() -> None:
    crowd = [bought(f"B{number}", 3, 60, stay(PEN, 0, 10)) for number in range(5)]
    one = farm(*crowd)
    (clash,) = calm_in(one, "pen")
    reason = "They have low cover all along the north side, and the dog is away"
    assert accept(one, clash, reason, lambda: "a1").label == (
        "Accept the clash of B0 and 4 more in Pen (They have low cover all along the north…)"
    )


def test_a_clash_that_stops_the_plan_is_refused() -> None:
    one = farm(bought("Aster", 500, 60, stay(PEN, 0, 10)))  # 500 x 200 cm2 on 60,000 cm2
    with pytest.raises(FarmError, match="accept a clash: “Aster in Pen” cannot be used; it stops the plan, and only"):
        lived_with(one, only(clashes_of(Season(one)), "floor"))


@pytest.mark.parametrize("reason", ["", "   ", "\t\n"])
def test_a_reason_is_asked_for(reason: str) -> None:
    with pytest.raises(FarmError, match="reason: it is empty; a word of why you live with it is needed") as told:
        lived_with(PLAN, calm_in(PLAN, "run")[0], reason)
    assert [fault.field for fault in told.value.faults] == ["reason"]


def test_a_reason_fits_on_a_line() -> None:
    clash = calm_in(PLAN, "run")[0]
    assert lived_with(PLAN, clash, "x" * 100).acceptances[0].reason == "x" * 100
    with pytest.raises(FarmError, match=r"reason: “x{40}…” cannot be used; a reason of up to 100 letters is accepted"):
        lived_with(PLAN, clash, "x" * 101)


def test_accepting_a_grown_one_replaces_the_old_record() -> None:
    (small,) = calm_in(PLAN, "run")
    before = lived_with(PLAN, small)
    fewer = apply(before, Change("fewer", (Touch(FEW, replace(FEW, number=8)),)))
    (grown,) = calm_in(fewer, "run")  # 14 too few
    assert acceptance_of(fewer, grown) is None
    after = lived_with(fewer, grown, "Still calm", "a2")
    assert after.acceptances == (Acceptance("a1", "calm", "run", ("aster",), 14, 0, 5, "Still calm"),)


def test_another_reason_for_an_accepted_one_is_the_same_record() -> None:
    (clash,) = calm_in(PLAN, "run")
    after = lived_with(lived_with(PLAN, clash), clash, "Low cover", "a2")
    assert [(one.id, one.reason) for one in after.acceptances] == [("a1", "Low cover")]


def test_what_another_clash_rests_on_is_not_replaced() -> None:
    short, long = calm_in(PLAN, "pen")
    both = lived_with(lived_with(PLAN, short, "Ten days only"), long, "Low cover", "a2")
    assert [acceptance_of(both, clash) is not None for clash in (short, long)] == [True, True]
    assert [one.reason for one in both.acceptances] == ["Ten days only", "Low cover"]


def test_taken_back_it_is_a_clash_like_any_other() -> None:
    (clash,) = calm_in(PLAN, "run")
    after = lived_with(PLAN, clash)
    assert clash not in open_clashes(after, clashes_of(Season(after)))
    assert apply(after, take_back(after, "a1")) == PLAN


def test_only_an_accepted_clash_can_be_taken_back() -> None:
    with pytest.raises(FarmError, match="take acceptance back: “aster” cannot be used; the id of an accepted clash"):
        take_back(PLAN, "aster")


def test_what_was_accepted_of_a_batch_goes_with_it_and_comes_back_with_it() -> None:
    other = bought("Clover", 10, 60, stay(PEN, 0, 10), start=MONDAY + timedelta(days=20))
    one = farm(FEW, other)
    shared = next(clash for clash in calm_in(one, "pen") if len(clash.batch_ids) > 1)
    (own,) = calm_in(one, "run")
    one = lived_with(lived_with(one, own), shared, "Low cover", "a2")
    change = remove(one, "aster")
    assert change.label == "Remove batch Aster"
    without = apply(one, change)
    assert [record.id for record in without.acceptances] == ["a2"]
    assert apply(without, change.inverse()) == one
    assert apply(without, remove(without, "clover")).acceptances == ()


def test_a_place_that_goes_leaves_what_was_accepted_there_without_harm() -> None:
    one = lived_with(PLAN, calm_in(PLAN, "run")[0])
    moved = apply(one, Change("stay", (Touch(FEW, replace(FEW, stays=(stay(PEN, 0, 30),))),)))
    after = apply(moved, remove(moved, "run"))
    assert [record.id for record in after.acceptances] == ["a1"]
    assert faults_of(after) == []
    assert take_back(after, "a1").label == "No longer accept the clash of Aster (They are calm anyway)"


@given(st.data())
def test_accepting_and_its_inverse_give_back_the_farm(data: st.DataObject) -> None:
    one = data.draw(farms())
    assume(one.batches)
    numbers = count(1)
    change = accept(one, data.draw(clashes(one, WATCHED)), data.draw(names()), lambda: f"new {next(numbers)}")
    after = apply(one, change)
    assert faults_of(after) == []
    assert apply(after, change.inverse()) == one
    back = take_back(after, *(record.id for record in after.acceptances))
    assert apply(apply(after, back), back.inverse()) == after


@given(st.data())
def test_a_removed_batch_and_its_inverse_give_back_the_farm_with_what_was_accepted(data: st.DataObject) -> None:
    one = data.draw(farms())
    assume(one.batches)
    one = apply(one, accept(one, data.draw(clashes(one, WATCHED)), "We manage", lambda: "new"))
    change = remove(one, data.draw(st.sampled_from(one.batches)).id)
    after = apply(one, change)
    assert apply(after, change.inverse()) == one
    there = {batch.id for batch in one.batches}
    removed = there - {batch.id for batch in after.batches}
    assert all(removed.isdisjoint(a.batch_ids) or there & {*a.batch_ids} - removed for a in after.acceptances)
