"""A trial beside the plan: which clashes come and go, and what the two bring."""

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.batches import start_on
from quailsched.edits.change import apply
from quailsched.edits.records import remove
from quailsched.edits.trials import change_in_trial, start_trial
from quailsched.farm.records import Farm, Leaving, Part
from quailsched.planner.compare import clash_changes, compare
from quailsched.planner.totals import first_eggs_on, hens_in_lay, totals_of
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, SETTER, bought, eggs, farm, stay
from tests.strategies import days, farms


def clash(kind: str, first: int, last: int, need: float = 10, batches: tuple[str, ...] = ("aster",)) -> Clash:
    """A clash in the brooder on days ``first`` to ``last`` of March 2027; need 10 where 8 are."""
    start, end = date(2027, 3, first), date(2027, 3, last)
    return Clash(kind, "brooder", batches, start, end, start, need, 8, "birds", 0, f"{kind} {first} {last} {need}")


def test_each_clash_is_told_by_what_becomes_of_it() -> None:
    stays = clash("floor", 1, 3)
    goes = clash("cleanout", 5, 5)
    grows, grown = clash("crowd", 7, 9, need=12), clash("crowd", 7, 11, need=15)
    shrinks, shrunk = clash("calm", 10, 14, need=12), clash("calm", 11, 13, need=10)
    comes = clash("ages", 20, 22)
    moves, moved = clash("cold", 15, 16), clash("cold", 18, 19)
    found = clash_changes((stays, goes, grows, shrinks, moves), (stays, grown, shrunk, comes, moved))
    assert (found.gone, found.new, found.worse, found.eased) == ((goes,), (comes,), (grown,), (shrunk,))
    assert (found.before, found.after, found.same) == (5, 5, 2)  # one stays, one moves along


def test_a_clash_in_pieces_is_none_that_is_new() -> None:
    whole, pieces = clash("floor", 1, 9), (clash("floor", 1, 3), clash("floor", 6, 9))
    found = clash_changes((whole,), pieces)
    assert (found.new, found.worse, found.gone) == ((), (), ())
    assert found.eased == pieces[:1]  # what the whole has become; the other piece counts as one that stays
    back = clash_changes(pieces, (whole,))
    assert (back.worse, back.new, back.gone) == ((whole,), (), ())


def test_a_clash_of_other_batches_is_another_clash() -> None:
    found = clash_changes((clash("floor", 1, 3),), (clash("floor", 1, 3, batches=("fern",)),))
    assert len(found.gone) == len(found.new) == 1


@given(farms(), farms())
def test_every_clash_is_counted_once(one: Farm, other: Farm) -> None:
    before, after = clashes_of(Season(one)), clashes_of(Season(other))
    found = clash_changes(before, after)
    assert set(found.gone) <= set(before) - set(after)
    touched = [*found.new, *found.worse, *found.eased]
    assert len(touched) == len(set(touched))
    assert set(touched) <= set(after) - set(before)
    assert found.same >= len(set(before) & set(after))
    same = clash_changes(before, before)
    assert (same.gone, same.new, same.worse, same.eased, same.same) == ((), (), (), (), len(before))


@given(farms(), st.data())
def test_what_the_plan_has_otherwise_is_what_was_changed(one: Farm, data: st.DataObject) -> None:
    plan = apply(one, start_trial(replace(one, trials=()), "T", "trial")) if not one.trials else one
    trial_id = plan.trials[0].id
    if plan is not one and one.batches:
        batch = data.draw(st.sampled_from(one.batches))
        change = data.draw(st.sampled_from([start_on(one, batch.id, data.draw(days())), remove(one, batch.id)]))
        plan = apply(plan, change_in_trial(plan, trial_id, change))
        expected = {touch.record_id for touch in change.touches if touch.before != touch.after}
        assert {(pair.plan or pair.trial).id for pair in compare(plan, trial_id, MONDAY).records} == expected  # type: ignore[union-attr]
    else:
        compare(plan, trial_id, MONDAY)  # any trial can be compared


def laying_farm() -> Farm:
    """60 chicks of Aster hatch on 18 March (day 17), all live; hens stay in the pen, surplus cocks go on day 73."""
    return farm(
        eggs(
            "Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 59),
            stay(PEN, 59, None, Part.HENS), stay(ARK, 59, 73, Part.COCKS, Leaving.PROCESSED),
        ),
        bought("Dill", 20, 30, stay(PEN, 0, 10, leaving=Leaving.SOLD), start=date(2027, 4, 1)),
    )  # fmt: skip


def test_what_a_plan_brings_by_hand() -> None:
    season = Season(laying_farm())
    found = totals_of(season, date(2027, 3, 10))
    # Of 60, 30 are hens; one cock for each 3 hens is kept: 10, so 20 are surplus.
    per = season.kind(season.farm.batch("aster")).value("hens_per_cock")
    assert per == 3
    assert (found.hatched, found.brought_in, found.sold, found.processed) == (60, 20, 20, 20)
    # Hatched on day 17, first egg at 43 days (figure first_egg_day): day 60 = 1 March + 60 days = 30 April.
    assert season.kind(season.farm.batch("aster")).days("first_egg_day") == 43
    assert found.first_eggs == {"aster": date(2027, 4, 30)}
    assert [day.isoformat() for day in found.hens_in_lay][:3] == ["2027-04-01", "2027-05-01", "2027-06-01"]
    assert len(found.hens_in_lay) == 12
    assert hens_in_lay(season, date(2027, 4, 29)) == 0
    assert hens_in_lay(season, date(2027, 4, 30)) == 30  # without the 10 cocks that are kept with them
    assert found.hens_in_lay[date(2027, 4, 1)] == 0
    assert found.hens_in_lay[date(2027, 5, 1)] == 30


def test_what_lies_before_the_day_does_not_count() -> None:
    season = Season(laying_farm())
    found = totals_of(season, date(2027, 5, 14))  # the day after the cocks went: 1 March + 73 days = 13 May
    assert (found.hatched, found.brought_in, found.sold, found.processed) == (0, 0, 0, 0)
    assert found.first_eggs == {}
    assert totals_of(season, date(2027, 5, 13)).processed == 20


def test_birds_that_leave_before_they_lay_have_no_first_eggs() -> None:
    one = farm(eggs("Fern", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46)))
    season = Season(one)
    assert first_eggs_on(season, one.batch("fern")) is None
    assert all(number == 0 for number in totals_of(season, MONDAY).hens_in_lay.values())


@given(farms(), days(), st.integers(0, 400))
def test_hens_are_never_more_than_birds(one: Farm, day: date, later: int) -> None:
    season, day = Season(one), day + timedelta(days=later)
    alive = sum(season.birds(batch, day) for batch in one.batches)
    assert 0 <= hens_in_lay(season, day) <= alive
