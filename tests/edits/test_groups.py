"""Birds that part from their batch or join another: none is lost, none is counted twice."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from uuid import uuid4

import pytest

from quailsched.edits.change import apply
from quailsched.edits.counts import correct, record, take_back
from quailsched.edits.groups import join, odd_about_joining, part_off
from quailsched.farm.check import require_sound
from quailsched.farm.example import example_farm
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Batch, Farm, Origin, Part
from quailsched.season.season import Season

TODAY = date(2027, 5, 1)
NOW = datetime(2027, 5, 1, 7, tzinfo=UTC)
HATCHED = date(2027, 3, 18)  # Aster of the example: set on 1 March


def hatched_farm() -> tuple[Farm, Batch]:
    """The example with 60 Asters counted at the hatch, and it."""
    farm = example_farm(date(2027, 4, 6), lambda: str(uuid4()))
    aster = next(batch for batch in farm.batches if batch.name == "Aster")
    farm = apply(farm, record(farm, Count("hatch", Sort.HATCHED, HATCHED, NOW, 60, aster.id), TODAY))
    return farm, farm.batch(aster.id)


def ark(farm: Farm) -> str:
    return next(place.id for place in farm.places if place.name == "Grass ark")


def parted(farm: Farm, batch: Batch, number: int, day: date = TODAY) -> Farm:
    count = Count("part", Sort.PARTED, day, NOW, number, batch.id, ark(farm), Part.COCKS, to_batch_id="cocks")
    return apply(farm, part_off(farm, count, "Aster cocks", TODAY))


def test_half_of_the_cocks_become_a_batch_as_old_as_the_others() -> None:
    farm, aster = hatched_farm()
    after = require_sound(parted(farm, aster, 14))
    new = after.batch("cocks")
    assert (new.origin, new.number, new.age_days, new.from_ids) == (Origin.PARTED, 14, 44, (aster.id,))
    season = Season(after)
    assert (season.birds(aster, TODAY), season.birds(new, TODAY)) == (46, 14)
    assert [(stay.place_id, stay.from_day) for stay in new.stays] == [(ark(farm), 0)]


def test_those_that_parted_are_as_old_as_the_others_when_the_hatch_turns_out_otherwise() -> None:
    # 44 days on 1 May by the hatch on 18 March: 42 if it was on the 20th. Those that parted in turn are as old.
    farm, aster = hatched_farm()
    farm = parted(farm, aster, 14)
    again = Count("again", Sort.PARTED, TODAY, NOW, 4, "cocks", ark(farm), to_batch_id="few")
    farm = apply(farm, part_off(farm, again, "Few", TODAY))
    late = replace(farm.counts[0], id="late", day=HATCHED + timedelta(days=2))
    change = correct(farm, "hatch", late, TODAY)
    after = require_sound(apply(farm, change))
    assert [after.batch(one).age_days for one in ("cocks", "few")] == [42, 42]
    assert apply(after, change.inverse()) == farm
    # Of 44 again: nothing is known of the hatch, which was planned for the same 18 March.
    assert apply(after, take_back(after, "late", "gone", NOW)).batch("few").age_days == 44


def test_batches_that_parted_from_each_other_by_a_document_made_by_hand_end() -> None:
    farm, aster = hatched_farm()
    farm = parted(farm, aster, 14)
    odd = replace(farm.batch(aster.id), from_ids=("cocks",))
    farm = farm.with_records(set(), (odd, replace(farm.batch("cocks"), from_ids=(aster.id, "cocks"))))
    late = replace(farm.counts[0], id="late", day=HATCHED + timedelta(days=2))
    after = apply(farm, correct(farm, "hatch", late, TODAY))
    assert after.batch("cocks").age_days == 42


def test_parting_is_one_step_back() -> None:
    farm, aster = hatched_farm()
    count = Count("part", Sort.PARTED, TODAY, NOW, 14, aster.id, ark(farm), Part.COCKS, to_batch_id="cocks")
    change = part_off(farm, count, "Aster cocks", TODAY)
    assert change.label == "14 of Aster become Aster cocks, in Grass ark"
    assert apply(apply(farm, change), change.inverse()) == farm


@pytest.mark.parametrize(
    ("number", "day", "sentence"),
    [
        (61, TODAY, "Aster had 60 birds by then"),
        (0, TODAY, "parted needs it"),
        (5, HATCHED - timedelta(days=1), "it hatches on 18 Mar: then birds can part"),
        (5, TODAY + timedelta(days=1), "today, 1 May, or a day before is accepted"),
    ],
)
def test_what_cannot_part_is_refused_with_a_sentence(number: int, day: date, sentence: str) -> None:
    farm, aster = hatched_farm()
    with pytest.raises(FarmError, match=sentence):
        parted(farm, aster, number, day)


def test_birds_that_join_are_counted_with_the_others_from_that_day() -> None:
    farm, aster = hatched_farm()
    farm = parted(farm, aster, 14, TODAY - timedelta(days=3))
    count = Count("join", Sort.JOINED, TODAY, NOW, 6, "cocks", to_batch_id=aster.id)
    after = require_sound(apply(farm, join(farm, count, TODAY)))
    season, day_before = Season(after), TODAY - timedelta(days=1)
    assert (season.birds(aster, day_before), season.birds(after.batch("cocks"), day_before)) == (46, 14)
    assert (season.birds(aster, TODAY), season.birds(after.batch("cocks"), TODAY)) == (52, 8)


def test_a_batch_of_which_all_have_joined_another_is_gone_from_its_place() -> None:
    farm, aster = hatched_farm()
    farm = parted(farm, aster, 14, TODAY - timedelta(days=3))
    count = Count("join", Sort.JOINED, TODAY, NOW, 14, "cocks", to_batch_id=aster.id)
    after = apply(farm, join(farm, count, TODAY))
    assert Season(after).presences_of(after.batch("cocks"))[-1].end == TODAY


def test_birds_of_different_kinds_are_no_batch() -> None:
    farm, aster = hatched_farm()
    stay = replace(aster.stays[0], place_id=ark(farm), from_day=0, to_day=10)
    other = Batch("o", "Olive", "bobwhite", Origin.BOUGHT_BIRDS, TODAY, 5, (stay,), 20)
    farm = farm.with_records(set(), (other,))
    with pytest.raises(FarmError, match="a batch of the same kind, bobwhite, is accepted"):
        join(farm, Count("join", Sort.JOINED, TODAY, NOW, 5, "o", to_batch_id=aster.id), TODAY)


def test_the_gap_in_age_and_meeting_strangers_are_told_before() -> None:
    farm, aster = hatched_farm()
    bracken = next(batch for batch in farm.batches if batch.name == "Bracken")  # hatched on 8 April, 21 days later
    words = odd_about_joining(farm, bracken.id, aster.id, TODAY)
    assert words[0].startswith("They are 21 days apart in age; up to ")
    assert any("do not know each other fight" in one for one in words)


def test_birds_that_have_parted_cannot_be_taken_back_behind_the_back_of_their_new_batch() -> None:
    farm, aster = hatched_farm()
    farm = parted(farm, aster, 14)
    with pytest.raises(FarmError, match="undo the step in the history instead"):
        take_back(farm, "part", "x", NOW)
    better = Count("y", Sort.PARTED, TODAY, NOW, 3, aster.id, to_batch_id="cocks")
    with pytest.raises(FarmError, match="undo the step in the history instead"):
        correct(farm, "part", better, TODAY)
