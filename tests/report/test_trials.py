"""Trials beside the plan in words, rows and JSON."""

import json
from dataclasses import replace
from datetime import date

import pytest

from quailsched.edits.batches import change_place, end_stay, shift
from quailsched.edits.change import Change, apply
from quailsched.edits.proposals import ready_on, set_number
from quailsched.edits.records import put, remove
from quailsched.edits.trials import change_in_trial, farm_of_trial, start_trial
from quailsched.farm.records import Farm, FigureChoice, Leaving, Part, Person, Place, Role
from quailsched.planner.compare import Comparison, compare
from quailsched.report.trial_words import change_lines
from quailsched.report.trials import LEFT_OUT, clash_lines, misfit_lines, table_rows, trials_json, trials_text
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, SETTER, eggs, farm, stay

SPARE = Place("spare", "Spare pen", Role.PEN, 7, floor_cm2=50_000)


def plan() -> Farm:
    grown = (
        stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 46), stay(PEN, 46, 59),
        stay(PEN, 59, None, Part.HENS), stay(ARK, 59, 73, Part.COCKS, Leaving.PROCESSED),
    )  # fmt: skip
    sold = (*grown[:3], stay(PEN, 46, 66, leaving=Leaving.SOLD))
    one = farm(eggs("Elder", 60, *grown), eggs("Fern", 40, *sold, start=date(2027, 6, 1)), SPARE, Person("p", "Mia"))
    return apply(one, start_trial(one, "More hens", "trial"))


def tried(one: Farm, *edits: object) -> Farm:
    for edit in edits:
        change: Change = edit(farm_of_trial(one, "trial"))  # type: ignore[operator]
        one = apply(one, change_in_trial(one, "trial", change))
    return one


def compared(*edits: object) -> Comparison:
    return compare(tried(plan(), *edits), "trial", MONDAY)


def test_a_pen_that_is_ready_sooner_is_told_with_both_days() -> None:
    one = plan()
    one = apply(one, ready_on(one, "spare", date(2027, 4, 20)))
    found = compare(tried(one, lambda f: ready_on(f, "spare", date(2027, 4, 15))), "trial", MONDAY)
    assert change_lines(found) == ["Spare pen: ready on 15 Apr instead of 20 Apr"]


@pytest.mark.parametrize(
    ("edit", "line"),
    [
        (lambda f: shift(f, "elder", 6), "Elder set 6 days later, on 7 Mar"),
        (lambda f: shift(f, "elder", -1), "Elder set 1 day earlier, on 28 Feb"),
        (lambda f: set_number(f, "elder", 48), "Elder 12 eggs fewer"),
        (lambda f: set_number(f, "elder", 61), "Elder 1 egg more"),
        (lambda f: remove(f, "fern"), "Fern gone"),
        (lambda f: put(f, eggs("Hazel", 50, stay(SETTER, 0, 15))), "Hazel added: 50 eggs on 1 Mar"),
        (lambda f: change_place(f, "fern", 3, "spare"), "Fern in Spare pen instead of Pen"),
        (lambda f: end_stay(f, "fern", 2, 44), "Fern out of Brooder 2 days earlier"),
        (lambda f: put(f, replace(f.batch("fern"), stays=f.batch("fern").stays[:3])), "Fern on another route"),
        (lambda f: put(f, replace(f.batch("fern"), name="Gorse")), "Fern called Gorse"),
        (lambda f: put(f, replace(f.batch("fern"), note="odd")), "Fern has another note"),
        (lambda f: put(f, replace(f.place("spare"), floor_cm2=40_000)), "Spare pen: another floor"),
        (lambda f: put(f, replace(f.place("spare"), clean_out_days=3)), "Spare pen: clean-out days 3 instead of 0"),
        (lambda f: ready_on(f, "spare", date(2027, 4, 1)), "Spare pen: another day on which it is ready"),
        (lambda f: put(f, replace(f.settings, latitude=50.0)), "Farm: another latitude"),
        (lambda f: remove(f, "p"), "Mia gone"),
        (
            lambda f: put(f, FigureChoice("x", "coturnix", "first_egg_day", 45.0)),
            "Own figure “Age at the first egg” added",
        ),
    ],
)
def test_what_is_otherwise_is_told_in_a_line(edit: object, line: str) -> None:
    assert change_lines(compared(edit)) == [line]


def test_the_table_shows_both_sides_by_hand() -> None:
    rows = {row.what: (row.plan, row.trial, row.differs) for row in table_rows(compared(lambda f: remove(f, "fern")))}
    # All 60 and 40 chicks hatch and live; 40 are sold; 60 are 30 hens with 10 cocks (one for 3), and 20 surplus cocks.
    assert rows["Chicks expected"] == ("100", "60", True)
    assert rows["Birds sold"] == ("40", "0", True)
    assert rows["Birds processed"] == ("20", "20", False)
    # Fern: hatched on 1 June + 17, first egg at 43 days: day 60 = 31 July, and it stays to day 66.
    assert rows["First eggs of Fern"] == ("31 Jul", "–", True)
    assert rows["Hens in lay, 1 Aug"] == ("50", "30", True)
    assert "First eggs of Elder" not in rows
    assert "Birds brought in" not in rows


def test_a_trial_with_nothing_otherwise_says_so() -> None:
    found = compared()
    assert change_lines(found) == []
    assert not any(row.differs for row in table_rows(found))
    assert clash_lines(found) == []
    text = trials_text(found.plan, [(found.plan.trials[0], found)])
    assert "Nothing otherwise than in the plan." in text
    assert "Hens in lay, next 12 months  the same  the same" in text


def test_a_place_that_was_taken_away_keeps_its_name_in_the_clashes_that_go() -> None:
    # Spare pen is being built while Fern would be in it: "notready" in the plan, gone with Fern and pen.
    one = plan()
    one = apply(one, ready_on(one, "spare", date(2028, 1, 1)))
    one = apply(one, change_place(one, "fern", 3, "spare"))
    found = compare(tried(one, lambda f: remove(f, "fern"), lambda f: remove(f, "spare")), "trial", MONDAY)
    assert ("Gone", "Spare pen cannot be used") in [(word, heading) for word, _, heading, _ in clash_lines(found)]


def test_what_does_not_fit_is_told_in_words_and_in_json() -> None:
    one = tried(plan(), lambda f: change_place(f, "fern", 3, "spare"))
    one = apply(one, remove(one, "spare"))
    found = compare(one, "trial", MONDAY)
    (line,) = misfit_lines(found.misfits, found.overridden)
    assert line.startswith("Left out – batch Fern, place of a stay: “a place that the plan no longer has”")
    assert line in trials_text(one, [(one.trials[0], found)])
    assert trials_json(one, [(one.trials[0], found)], MONDAY)["trials"][0]["left_out"] == [line[len("Left out – ") :]]


def test_json_holds_what_the_words_say() -> None:
    found = compared(lambda f: shift(f, "elder", 6), lambda f: set_number(f, "fern", 30))
    document = json.loads(json.dumps(trials_json(found.plan, [(found.plan.trials[0], found)], MONDAY)))
    (trial,) = document["trials"]
    assert document["not_compared"] == ["promises", "money"]
    assert trial["trial"] == "More hens"
    assert trial["changes"] == change_lines(found)
    assert (trial["plan"]["chicks"], trial["with_trial"]["chicks"]) == (100, 90)
    # Elder: day 60 of 1 March is 30 April; six days later 6 May.
    assert {one["batch"]: one["day"] for one in trial["plan"]["first_eggs"]}["Elder"] == "2027-04-30"
    assert {one["batch"]: one["day"] for one in trial["with_trial"]["first_eggs"]}["Elder"] == "2027-05-06"
    assert trial["plan"]["clashes"] == found.clashes.before
    assert [c["sentence"] for c in trial["clashes"]["gone"]] == [c.sentence for c in found.clashes.gone]


def test_the_text_says_what_is_left_out() -> None:
    found = compared()
    assert LEFT_OUT in trials_text(found.plan, [(found.plan.trials[0], found)])
    assert trials_text(found.trial, []).startswith("Thistle Yard: no trial.")


def test_days_of_another_year_have_their_year() -> None:
    (line,) = change_lines(compared(lambda f: shift(f, "fern", 300)))
    assert line == "Fern set 300 days later, on 27 Mar 2028"
    # 1 June is day 152 of 2027; 152 + 300 - 365 = 87, and in a leap year day 87 is 27 March.
