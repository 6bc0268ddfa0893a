"""Counts: what cannot be is refused with a sentence, what was wrong is corrected with its trace."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest

from quailsched.edits.change import apply
from quailsched.edits.counts import correct, odd_about, record, take_back
from quailsched.edits.groups import part_off
from quailsched.edits.records import put
from quailsched.edits.splits import split_batch
from quailsched.farm.check import faults_of, require_sound
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.ledger import eggs_left, lines_of, standing, traces_in
from quailsched.farm.records import Farm, Part
from quailsched.report.counts_told import told_counts
from tests.builders import PEN, RUN, bought, farm, on, stay
from tests.edits.counted import NOW, TODAY, TOGETHER, birds, clover, fact, known, stays

HATCH = fact(Sort.HATCHED, 17, 70)


def refused(one: Farm, count: Count) -> str:
    with pytest.raises(FarmError) as told:
        record(one, count, TODAY)
    return str(told.value)


def test_more_eggs_out_than_are_left_are_refused() -> None:
    one = known(clover(), fact(Sort.CLEAR, 7, 20))
    assert refused(one, fact(Sort.QUIT, 14, 81)) == (
        "quit on 15 Mar, Clover, number: 81 cannot be used; of 100 eggs set, 80 were left by then."
    )


def test_more_hatched_than_are_left_are_refused() -> None:
    one = known(clover(), fact(Sort.CLEAR, 7, 20), fact(Sort.HATCHED, 17, 50))
    assert refused(one, fact(Sort.HATCHED, 18, 31)) == (
        "hatched on 19 Mar, Clover, number: 31 cannot be used; of 100 eggs set, 30 were left by then."
    )
    known(one, fact(Sort.HATCHED, 18, 30))
    assert refused(one, fact(Sort.PIPPED, 18, 31)).endswith("31 cannot be used; of 100 eggs set, 30 were left by then.")


def test_more_eggs_clear_than_were_left_by_then_are_refused_though_the_later_ones_hatched() -> None:
    # 70 of 100 hatched on day 17: no more than 30 can have been clear on day 7, written down afterwards.
    one = known(clover(), HATCH)
    told = refused(one, fact(Sort.CLEAR, 7, 31))
    assert "70 cannot be used; of 100 eggs set, 69 were left by then" in told
    known(one, fact(Sort.CLEAR, 7, 30))


@pytest.mark.parametrize("sort", [Sort.DIED, Sort.SOLD, Sort.PROCESSED, Sort.COUNTED, Sort.SEXED, Sort.WEIGHED])
def test_more_birds_than_lived_are_refused(sort: Sort) -> None:
    one = known(clover(), HATCH, fact(Sort.DIED, 20, 5))
    more: dict[str, Any] = {"grams": 700} if sort is Sort.WEIGHED else {}
    assert refused(one, fact(sort, 30, 66, **more)) == (
        f"{sort} on 31 Mar, Clover, number: 66 cannot be used; Clover had 65 birds by then."
    )
    known(one, fact(sort, 30, 65, **more))


def test_birds_that_died_later_count_too() -> None:
    # 5 died on day 40. On day 30 70 birds were there, but 66 sold by then leave no 5 for day 40.
    one = known(clover(), HATCH, fact(Sort.DIED, 40, 5))
    assert refused(one, fact(Sort.SOLD, 30, 66)) == (
        "died on 10 Apr, Clover, number: 5 cannot be used; Clover had 4 birds by then."
    )


def test_more_birds_moved_than_lived_are_refused() -> None:
    assert refused(known(clover(), HATCH), fact(Sort.MOVED, 46, 71, place_id=PEN.id)) == (
        "moved on 16 Apr, Clover, number: 71 cannot be used; Clover had 70 birds by then."
    )


def test_eggs_that_moved_are_no_birds_when_the_hatch_is_counted_after() -> None:
    # 98 eggs go to the hatcher on day 15, two days before the first bird.
    one = known(clover(), fact(Sort.CLEAR, 7, 2), fact(Sort.MOVED, 15, 98, place_id="hatcher"), HATCH)
    assert birds(one, 17) == 70
    assert "had 98 birds by then" in refused(
        known(clover(), fact(Sort.CLEAR, 7, 2)), fact(Sort.MOVED, 15, 99, place_id="hatcher")
    )


def test_chicks_can_be_moved_weighed_and_sold_on_the_day_of_their_hatch() -> None:
    one = known(
        clover(), HATCH, fact(Sort.MOVED, 17, 70, place_id="brooder"), fact(Sort.WEIGHED, 17, 10, grams=87),
        fact(Sort.SOLD, 17, 20),
    )  # fmt: skip
    assert birds(one, 17) == 50


@pytest.mark.parametrize("sort", [Sort.SET, Sort.CLEAR, Sort.HATCHED, Sort.DIED, Sort.MOVED, Sort.FEATHERED])
def test_a_day_before_setting_is_refused(sort: Sort) -> None:
    more: dict[str, Any] = {"place_id": PEN.id} if sort is Sort.MOVED else {}
    one = known(clover(), fact(Sort.CLEAR, 7, 1))  # so that setting is no plan any more
    if sort is Sort.SET:
        assert "clear on 8 Mar" in refused(one, replace(fact(sort, 9, 100)))  # it would be before its setting
        return
    told = refused(one, fact(sort, -1, 1, **more))
    assert told.startswith(f"{sort} on 28 Feb, Clover, day: “28 Feb” cannot be used; Clover was set on 1 Mar: that day")


def test_a_day_before_birds_came_is_refused() -> None:
    one = farm(bought("Rue", 10, 40, stay(PEN, 0, None)))
    told = refused(one, fact(Sort.DIED, -1, 1, "rue"))
    assert (
        told
        == "died on 28 Feb, Rue, day: “28 Feb” cannot be used; Rue came on 1 Mar: that day or a later one is accepted."
    )
    told = refused(one, fact(Sort.HATCHED, 3, 1, "rue"))
    assert (
        told == "hatched on 4 Mar, Rue, sort: “hatched” cannot be used; Rue came as birds: it has no eggs in a machine."
    )


def test_a_day_to_come_is_refused() -> None:
    with pytest.raises(FarmError) as told:
        record(clover(), HATCH, on(16))
    assert (
        str(told.value)
        == "hatched on 18 Mar, day: “18 Mar” cannot be used; today, 17 Mar, or a day before is accepted."
    )
    one = known(clover(), HATCH)
    with pytest.raises(FarmError, match="today, 17 Mar, or a day before is accepted"):
        correct(one, HATCH.id, replace(HATCH, id="better"), on(16))


def test_less_than_nothing_is_refused() -> None:
    assert refused(clover(), fact(Sort.CLEAR, 7, -1)) == (
        "clear on 8 Mar, number: -1 cannot be used; a whole number from 0 to 1,000,000 is accepted."
    )
    assert "a whole number from 0" in refused(clover(), fact(Sort.PROCESSED, 50, 1, grams=-5))
    assert "a number from 0 to 24 is accepted" in refused(clover(), fact(Sort.HOURS, 50, hours=-0.5))


def test_nothing_at_all_is_refused_where_a_number_is_needed() -> None:
    assert refused(clover(), fact(Sort.DIED, 20)) == "died on 21 Mar, number: it is missing; died needs it."
    assert known(clover(), fact(Sort.HATCHED, 17, 0)).counts[0].number == 0  # no chick is a fact


def test_what_is_not_there_is_refused() -> None:
    told = refused(clover(), fact(Sort.MOVED, 46, 5, place_id="barn"))
    assert told == "moved on 16 Apr, place: “barn” cannot be used; the id of a record of this farm is accepted."
    told = refused(clover(), fact(Sort.DIED, 20, 1, "dill"))
    assert told == "died on 21 Mar, batch: “dill” cannot be used; the id of a record of this farm is accepted."
    assert "person: “clover” cannot be used" in refused(clover(), fact(Sort.DIED, 20, 1, person_id="clover"))


def test_more_hens_and_cocks_than_birds_are_refused() -> None:
    told = refused(known(clover(), HATCH), fact(Sort.SEXED, 38, 60, hens=31, cocks=30))
    assert told == "sexed on 8 Apr, hens and cocks: “61” cannot be used; of 60 birds up to 60 are hens or cocks."


def test_birds_do_not_grow_when_they_are_dressed() -> None:
    told = refused(known(clover(), HATCH), fact(Sort.PROCESSED, 60, 3, grams=600, dressed_g=601))
    assert told.endswith("grams dressed: 601 cannot be used; not more than the live weight of 600 g is accepted.")


def test_a_photo_lies_in_the_folder_of_the_farm() -> None:
    told = refused(clover(), fact(Sort.PHOTO, 5, file_name="../secret.jpg"))
    assert told.endswith("the name of a file in the farm's folder of photos is accepted.")
    known(clover(), fact(Sort.PHOTO, 5, file_name="pen.jpg"))


def test_a_plan_that_says_otherwise_than_what_happened_is_refused() -> None:
    one = known(clover(), fact(Sort.SET, 0, 100), HATCH, fact(Sort.MOVED, 18, 70, place_id="brooder"))
    batch = one.batch("clover")
    later = replace(batch, start=batch.start + timedelta(days=1))
    with pytest.raises(FarmError, match="1 Mar stays, for counts were recorded since"):
        put(one, later)
    with pytest.raises(FarmError, match=r"100 eggs were set on 1 Mar; what happened stays, correct the count instead"):
        put(one, replace(batch, number=110))
    elsewhere = (*batch.stays[:2], replace(batch.stays[2], place_id=RUN.id), *batch.stays[3:])
    with pytest.raises(FarmError, match="it moved to Brooder on 19 Mar; what happened stays"):
        put(one, replace(batch, stays=elsewhere))


def test_fewer_eggs_than_hatched_cannot_be_planned_any_more() -> None:
    one = known(clover(), HATCH)
    with pytest.raises(FarmError, match="of 69 eggs set, 69 were left by then"):
        put(one, replace(one.batch("clover"), number=69))


def test_a_batch_that_has_been_counted_is_not_split_as_eggs() -> None:
    # Of which of the two the 30 chicks were, nobody has counted: birds would come from nothing.
    one = known(clover(), fact(Sort.HATCHED, 17, 30))
    with pytest.raises(FarmError, match="things were counted of it since: birds can part from it instead"):
        split_batch(one, "clover", 40, 2, 20, RUN.id)


def test_birds_that_parted_stay_as_many_as_they_were() -> None:
    one = known(clover(route=TOGETHER), HATCH)
    off = fact(Sort.PARTED, 40, 20, place_id=RUN.id, to_batch_id="dill")
    one = require_sound(apply(one, part_off(one, off, "Dill", TODAY)))
    with pytest.raises(FarmError, match="20 birds parted from Clover on 10 Apr; what happened stays"):
        put(one, replace(one.batch("dill"), number=30))
    put(one, replace(one.batch("dill"), name="Dill 2"))


# Corrections


def test_a_correction_stands_in_the_place_of_the_count_and_leaves_its_trace() -> None:
    one = known(clover(), HATCH)
    one = apply(one, correct(one, HATCH.id, replace(HATCH, id="second", number=60), TODAY))
    one = apply(one, correct(one, "second", replace(HATCH, id="third", number=65), TODAY))
    assert birds(one, 17) == 65
    (holds,) = standing(one.counts)
    assert holds.id == "third"
    assert [(count.id, count.number) for count in traces_in(one.counts)(holds)] == [("second", 60), (HATCH.id, 70)]
    assert holds.plan_number == 100  # what the plan had said before the first


def test_what_was_corrected_or_taken_back_cannot_be_corrected_again() -> None:
    one = known(clover(), HATCH)
    one = apply(one, correct(one, HATCH.id, replace(HATCH, id="second", number=60), TODAY))
    for step in (
        lambda: correct(one, HATCH.id, replace(HATCH, id="third"), TODAY),
        lambda: take_back(one, HATCH.id, "third", NOW),
        lambda: take_back(one, "never", "third", NOW),
    ):
        with pytest.raises(FarmError, match="this one was corrected or taken back already"):
            step()


def test_a_correction_that_cannot_be_is_refused() -> None:
    one = known(clover(), HATCH, fact(Sort.SOLD, 46, 60))
    with pytest.raises(FarmError, match="Clover had 59 birds by then"):
        correct(one, HATCH.id, replace(HATCH, id="second", number=59), TODAY)
    with pytest.raises(FarmError, match="Clover had 0 birds by then"):
        correct(one, HATCH.id, replace(HATCH, id="second", number=0), TODAY)


def test_a_count_of_the_wrong_batch_is_taken_back_and_recorded_anew() -> None:
    one = clover(bought("Rue", 10, 40, stay(PEN, 0, None)))
    one = known(one, HATCH, fact(Sort.DIED, 20, 3))
    with pytest.raises(FarmError, match="take it back and record it for the other batch"):
        correct(one, "died-20-0", fact(Sort.DIED, 20, 3, "rue", hour=1), TODAY)
    assert birds(one, 20) == 67


def test_two_corrections_of_one_count_are_no_farm() -> None:
    one = known(clover(), HATCH)
    second = replace(HATCH, id="second", corrects=HATCH.id, number=60)
    twice = one.with_records(set(), (second, replace(second, id="third")))
    assert {fault.field for fault in faults_of(twice)} == {"corrects", "number"}  # 120 of 100 eggs
    assert "another count corrects it already" in str(faults_of(twice)[-1].accepted)


def test_a_count_that_corrects_itself_is_no_farm() -> None:
    # It would hold no longer, with nothing in its place: 70 chicks would be gone without a word.
    one = known(clover(), HATCH)
    (fault,) = faults_of(one.with_records(set(), (replace(HATCH, corrects=HATCH.id),)))
    assert fault.sentence() == (
        f"hatched on 18 Mar, corrects: “{HATCH.id}” cannot be used; it stands in the place of itself by that, "
        "the id of a count before it is accepted."
    )
    assert fault.record_id == HATCH.id


def test_counts_that_correct_each_other_in_a_circle_are_no_farm() -> None:
    one = known(clover(), HATCH)
    ring = [replace(HATCH, id=f"ring {n}", corrects=f"ring {(n + 1) % 3}") for n in range(3)]
    beside = replace(HATCH, id="beside", number=5, corrects=HATCH.id)  # in no circle
    found = faults_of(one.with_records(set(), (*ring, beside)))
    assert {(fault.field, fault.record_id) for fault in found} == {("corrects", f"ring {n}") for n in range(3)}


class CountedId(str):
    """An id that tells how often it is looked up."""

    asked = 0

    def __hash__(self) -> int:
        CountedId.asked += 1
        return super().__hash__()


@pytest.mark.parametrize("look", [lambda one: lines_of(one.batch("clover"), one.counts), told_counts])
def test_a_correction_does_not_make_a_look_at_many_counts_slow(look: Callable[[Farm], Iterable[object]]) -> None:
    """Four times as many counts take about four times as many looks, not sixteen times."""
    looks = []
    for many in (100, 400):
        laid = [replace(fact(Sort.LAID, 60, 3), id=CountedId(n)) for n in range(many)]
        better = replace(laid[0], id=CountedId("better"), corrects=laid[0].id)
        one = clover().with_records(set(), (*laid, better))
        CountedId.asked = 0
        assert len(list(look(one))) >= many
        looks.append(CountedId.asked)
    assert looks[1] < 5 * looks[0]


def test_a_hatch_that_is_taken_back_is_expected_again() -> None:
    before = clover()
    one = known(before, fact(Sort.HATCHED, 19, 60))  # two days late
    assert stays(one)[2][:3] == ("brooder", 20, 48)
    one = require_sound(apply(one, take_back(one, "hatched-19-0", "gone", NOW)))
    assert stays(one) == stays(before)
    assert birds(one, 17) == 100


def test_deaths_that_are_taken_back_leave_the_birds_alive() -> None:
    one = known(clover(), HATCH, fact(Sort.DIED, 20, 5))
    assert birds(one, 20) == 65
    one = apply(one, take_back(one, "died-20-0", "gone", NOW))
    assert birds(one, 20) == 70
    (back,) = [count for count in one.counts if count.is_taken_back]
    assert (back.number, back.corrects, back.entered) == (5, "died-20-0", NOW)


def test_eggs_set_otherwise_and_taken_back_are_planned_as_before() -> None:
    before = clover()
    one = known(before, fact(Sort.SET, 2, 96))
    assert (one.batch("clover").start, one.batch("clover").number) == (on(2), 96)
    assert (one.counts[0].plan_day, one.counts[0].plan_number) == (on(0), 100)
    one = apply(one, take_back(one, "set-2-0", "gone", NOW))
    assert one.batches == before.batches


def test_setting_a_day_later_leaves_what_has_happened_since_on_its_days() -> None:
    # Moved to the hatcher on 16 March and hatched on the 18th; then it turns out that the eggs were set on 2 March.
    one = known(clover(), fact(Sort.MOVED, 15, 100, place_id="hatcher"), HATCH)
    one = known(one, fact(Sort.SET, 1, 100))
    assert [(place, day) for place, day, _, _ in stays(one)] == [
        *(("setter", 0), ("hatcher", 14), ("brooder", 17), ("pen", 45), ("ark", 45)),
    ]
    assert birds(one, 17) == 70


# Head counts


def test_birds_that_a_head_count_does_not_find_are_missing() -> None:
    one = known(clover(), HATCH, fact(Sort.COUNTED, 30, 66))
    (missing,) = [count for count in one.counts if count.sort is Sort.DIED]
    assert (missing.number, missing.cause, missing.day) == (4, Cause.MISSING, on(30))
    assert birds(one, 30) == 66
    assert next(count for count in one.counts if count.sort is Sort.COUNTED).plan_number == 70


def test_birds_that_died_the_same_day_before_the_head_count_are_not_missing_too() -> None:
    one = known(clover(), HATCH, fact(Sort.DIED, 30, 2, hour=1), fact(Sort.COUNTED, 30, 68, hour=2))
    assert birds(one, 30) == 68
    assert [count.cause for count in one.counts if count.sort is Sort.DIED] == [None]


def test_birds_can_die_after_the_head_count_of_the_same_day() -> None:
    one = known(clover(), HATCH, fact(Sort.COUNTED, 30, 70, hour=1), fact(Sort.DIED, 30, 2, hour=2))
    assert birds(one, 30) == 68


def test_a_death_that_is_corrected_stays_before_the_head_count() -> None:
    one = known(clover(), HATCH, fact(Sort.DIED, 30, 2, hour=1), fact(Sort.COUNTED, 30, 68, hour=2))
    better = replace(fact(Sort.DIED, 30, 3, hour=3), id="better")
    with pytest.raises(FarmError, match="Clover had 67 birds by then"):  # 68 were counted after they had died
        correct(one, "died-30-1", better, TODAY)


def test_correcting_a_head_count_corrects_the_missing_birds() -> None:
    counted = fact(Sort.COUNTED, 30, 66)
    one = known(clover(), HATCH, counted)
    for number, missing in ((68, 2), (70, 0), (61, 9)):
        last = next(count for count in standing(one.counts) if count.sort is Sort.COUNTED)
        better = replace(counted, id=f"counted {number}", number=number)
        change = correct(one, last.id, better, TODAY)
        after = require_sound(apply(one, change))
        assert birds(after, 30) == number
        assert sum(count.number for count in standing(after.counts) if count.sort is Sort.DIED) == missing
        assert apply(after, change.inverse()) == one
        one = after


def test_taking_a_head_count_back_gives_the_missing_birds_back() -> None:
    one = known(clover(), HATCH, fact(Sort.COUNTED, 30, 66))
    one = require_sound(apply(one, take_back(one, "counted-30-0", "gone", NOW)))
    assert birds(one, 30) == 70
    assert [count.sort for count in standing(one.counts)] == [Sort.HATCHED]


def test_a_head_count_of_one_group_finds_the_missing_of_that_group() -> None:
    # 70 birds: 35 cocks, of which 12 stay with 35 hens (one for each three): 47 and 23 surplus.
    one = known(clover(), HATCH)
    assert (birds(one, 50, Part.HENS), birds(one, 50, Part.COCKS)) == (47, 23)
    one = known(one, fact(Sort.COUNTED, 50, 20, part=Part.COCKS))
    assert (birds(one, 50, Part.HENS), birds(one, 50, Part.COCKS), birds(one, 50)) == (47, 20, 67)


# What is merely odd


def test_what_is_odd_is_asked_and_what_is_usual_is_not() -> None:
    one = known(clover(), fact(Sort.CLEAR, 7, 5))
    assert odd_about(one, fact(Sort.HATCHED, 21, 70)) == ["Clover was to hatch on 18 Mar."]
    assert odd_about(one, fact(Sort.HATCHED, 20, 70)) == []
    assert odd_about(one, fact(Sort.CLEAR, 7, 3, hour=1)) == [
        "Clover: 5 clear, 8 Mar stands there already: this one comes on top."
    ]
    one = known(one, HATCH)
    assert odd_about(one, fact(Sort.DIED, 20, 15)) == ["15 of 70 birds died in one day."]
    assert odd_about(one, fact(Sort.DIED, 20, 14)) == []
    # 70 birds of 42 days (25 after the hatch) weigh about 130 g each.
    assert odd_about(one, fact(Sort.WEIGHED, 42, 10, grams=300))[0].startswith("30 g each, where about 1")
    assert odd_about(one, fact(Sort.WEIGHED, 42, 10, grams=1300)) == []


def test_birds_before_the_hatch_are_asked_about() -> None:
    assert odd_about(clover(), fact(Sort.SOLD, 15, 1)) == ["Clover hatches on 18 Mar: there are no birds yet."]
    assert odd_about(clover(), fact(Sort.SOLD, 16, 1)) == []  # some are a day early


def test_a_move_of_some_only_is_asked_about() -> None:
    one = known(clover(), HATCH)
    assert odd_about(one, fact(Sort.MOVED, 40, 62, place_id=RUN.id)) == [
        "62 of 70 birds moved, but in the plan all of them do. For some only, part them from Clover."
    ]
    for usual in (63, 70, 0):
        assert odd_about(one, fact(Sort.MOVED, 40, usual, place_id=RUN.id)) == []
    # Of 23 surplus cocks.
    assert odd_about(one, fact(Sort.MOVED, 50, 23, place_id=RUN.id, part=Part.COCKS)) == []
    assert len(odd_about(one, fact(Sort.MOVED, 50, 10, place_id=RUN.id, part=Part.COCKS))) == 1


def test_the_question_tells_as_many_missing_as_would_be_written_down() -> None:
    # By the books all 70 live; by survival a few would be expected to have died by day 47.
    one = known(clover(plain=False), HATCH)
    assert birds(one, 47) < 66
    assert odd_about(one, fact(Sort.COUNTED, 47, 60)) == [
        "70 birds should be there: 10 would be written down as missing."
    ]
    after = known(one, fact(Sort.COUNTED, 47, 60))
    assert sum(count.number for count in after.counts if count.cause is Cause.MISSING) == 10
    assert odd_about(one, fact(Sort.COUNTED, 47, 70)) == []


def test_a_label_tells_what_was_counted_of_what_and_when() -> None:
    one = clover()
    assert record(one, HATCH, TODAY).label == "Clover: 70 hatched, 18 Mar"
    assert record(one, fact(Sort.MOVED, 46, 0, place_id=RUN.id), TODAY).label == "Clover: moved, Run, 16 Apr"
    assert record(one, fact(Sort.FED, 46, 0, "", grams=2500), TODAY).label == "2,500 g fed, 16 Apr"
    assert record(one, fact(Sort.NOTE, 46, 0, "", words="a\nhawk"), TODAY).label == "note: a hawk, 16 Apr"


def test_eggs_left_are_those_of_which_nothing_is_known() -> None:
    one = known(clover(), fact(Sort.CLEAR, 7, 10), fact(Sort.QUIT, 14, 5), HATCH, fact(Sort.QUIT, 19, 12))
    counts, batch = one.counts_of("clover"), one.batch("clover")
    assert [eggs_left(batch, counts, on(day)) for day in (0, 6, 7, 13, 14, 17, 18, 19)] == [
        100, 100, 90, 90, 85, 15, 15, 3,
    ]  # fmt: skip


def test_a_step_of_counts_is_taken_back_to_the_letter() -> None:
    one = clover()
    for count in (
        fact(Sort.SET, 1, 90),
        fact(Sort.HATCHED, 19, 70),
        fact(Sort.COUNTED, 30, 60),
        fact(Sort.SOLD, 50, 60),
    ):
        change = record(one, count, TODAY)
        after = apply(one, change)
        assert apply(after, change.inverse()) == one
        assert apply(apply(after, change.inverse()), change) == after
        one = after


def test_a_move_that_was_to_another_place_is_no_longer_told_of_the_first() -> None:
    move = fact(Sort.MOVED, 46, place_id=PEN.id, part=Part.HENS)
    one = known(clover(), fact(Sort.HATCHED, 17, 70), move)
    one = apply(one, correct(one, move.id, replace(move, id="better", place_id=RUN.id), TODAY))
    assert told_counts(one, PEN.id) == []
    assert [row.count.id for row in told_counts(one, RUN.id)] == ["better", move.id]
