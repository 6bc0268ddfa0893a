"""Days without hands, and hours of building."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from quailsched.edits.change import apply
from quailsched.edits.people import build_for, home_on, person_in, stand_in
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Leaving, Part, Person, Span
from tests.builders import BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, stay
from tests.planner.judge import sentences

CHAIN = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46))
SOLD = (*CHAIN[:2], stay(BROODER, 18, 46, leaving=Leaving.SOLD))


def on(day: int) -> date:
    return MONDAY + timedelta(days=day)


def test_somebody_comes_or_stays_at_home_on_the_day_of_the_hatch() -> None:
    # Day 17 is Thursday 18 March; the eggs are in, so their day cannot be moved.
    ann = Person("ann", "Ann", away=(Span(on(16), on(18), "fair"),))
    leo = Person("leo", "Leo", is_grown_up=False, away=(Span(on(17), on(18)),))
    assert sentences(farm(eggs("Aster", 50, *SOLD), ann, leo), "hands", on(10)) == [
        "Ask somebody grown up to come on Thursday 18 Mar; nobody else's days change.",
        "Ann stays at home on Thursday 18 Mar and is away only on the other days (fair).",
        "Leo stays at home on Thursday 18 Mar after all.",
    ]


def test_a_minor_at_home_does_not_help_with_the_knife() -> None:
    # Processed on day 73, Thursday 13 May: both are away, and only Ann is grown up.
    chain = (*CHAIN, stay(PEN, 46, 73, leaving=Leaving.PROCESSED))
    away = (Span(on(73), on(74)),)
    people = (Person("ann", "Ann", away=away), Person("leo", "Leo", is_grown_up=False, away=away))
    found = sentences(farm(eggs("Aster", 50, *chain), *people), "hands", on(60))
    assert "Ann stays at home on Thursday 13 May after all." in found
    assert not any(sentence.startswith("Leo") for sentence in found)


def test_who_lives_elsewhere_is_not_asked_to_stay_at_home() -> None:
    mia = Person("mia", "Mia", away=(Span(on(-100), on(300)),))
    leo = Person("leo", "Leo", away=(Span(on(17), on(18)),))
    found = sentences(farm(eggs("Aster", 50, *SOLD), leo, mia), "hands", on(17))
    assert "Leo stays at home on Thursday 18 Mar after all." in found
    assert not any(sentence.startswith("Mia") for sentence in found)


def test_the_days_around_a_day_at_home_stay_away() -> None:
    ann = Person("ann", "Ann", away=(Span(on(1), on(4), "fair"), Span(on(9), on(10))))
    one = farm(ann)
    for day, left in ((2, [(1, 2), (3, 4), (9, 10)]), (1, [(2, 4), (9, 10)]), (3, [(1, 3), (9, 10)]), (9, [(1, 4)])):
        away = person_in(apply(one, home_on(one, "ann", on(day))), "ann").away
        assert [(span.start, span.end) for span in away] == [(on(start), on(end)) for start, end in left]
        assert all(span.reason == "fair" for span in away if span.start < on(9))


def test_a_stand_in_is_there_on_one_day_and_comes_once() -> None:
    one = farm(Person("ann", "Ann"))
    after = apply(one, stand_in(one, on(5)))
    (other,) = (person for person in after.people if person.id != "ann")
    assert [day for day in range(-400, 400) if other.is_home(on(day))] == [5]
    with pytest.raises(FarmError, match="one for each day"):
        stand_in(after, on(5))


def test_a_pen_that_is_late_is_built_with_more_hours_a_week() -> None:
    # 40 hours are left on day 30, Aster comes on day 46: 16 days at 7 hours a week are 16 hours. 24 (and the
    # rounding of a tenth) more in 16 days are 10.52 a week: 17.52 in all, in half hours 18. Leo, who has none yet and
    # is away for two of the days, needs 24.05 in 14: 12.03, so 12.5.
    built = replace(PEN, work_hours=40.0, work_from=on(30))
    people = (
        Person("ann", "Ann", build_hours=7.0),
        Person("leo", "Leo", is_grown_up=False, away=(Span(on(40), on(42)),)),
    )
    one = farm(built, eggs("Aster", 50, *CHAIN, stay(PEN, 46, 59, leaving=Leaving.SOLD)), *people)
    found = sentences(one, "build", on(30))
    assert "Ann builds 18 hours a week instead of 7, until Pen is done by 16 Apr." in found
    assert "Leo builds 12.5 hours a week, until Pen is done by 16 Apr." in found


def test_nobody_is_asked_for_more_than_forty_hours_a_week() -> None:
    # 100 hours in two days.
    built = replace(PEN, work_hours=100.0, work_from=on(44))
    one = farm(
        built,
        eggs("Aster", 50, *CHAIN, stay(PEN, 46, 59), stay(PEN, 59, 90, Part.HENS, Leaving.SOLD)),
        Person("ann", "Ann", build_hours=7.0),
    )
    assert not any("hours a week" in sentence for sentence in sentences(one, "build", on(44)))


def test_hours_of_building_are_checked() -> None:
    with pytest.raises(FarmError, match="hours of building"):
        build_for(farm(Person("ann", "Ann")), "ann", 200.0)
    with pytest.raises(KeyError):
        build_for(farm(Person("ann", "Ann")), "nobody", 2.0)
