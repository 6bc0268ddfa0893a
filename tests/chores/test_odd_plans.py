"""Plans off the usual road: birds bought old, gone early, moved twice, two batches that do all together."""

from dataclasses import replace
from datetime import date

from quailsched.chores.chore import Chore
from quailsched.chores.work_out import chores_between
from quailsched.farm.records import Farm, FigureChoice, Leaving, Part
from quailsched.season.season import Season
from tests.builders import ARK, BROODER, HATCHER, MONDAY, PEN, RUN, SETTER, bought, eggs, farm, stay

EGG_STAYS = (stay(SETTER, 0, 15), stay(HATCHER, 15, 18))


def chores_of(one: Farm) -> tuple[Chore, ...]:
    return chores_between(Season(one), date(2026, 1, 1), date(2029, 1, 1))


def of_kind(one: Farm, kind: str) -> list[tuple[int, str, str]]:
    return [((c.day - MONDAY).days, c.place, c.title) for c in chores_of(one) if c.kind == kind]


def test_nothing_is_due_before_bought_birds_have_come() -> None:
    # 40 days old: first eggs in three days, so the 18 days of longer light before them began before they came.
    one = farm(bought("Hazel", 30, 40, stay(PEN, 0, None)), plain=False)
    assert [day for day, _, _ in of_kind(one, "light")] == [0]
    assert min(chore.day for chore in chores_of(one)) == MONDAY


def test_quarantine_ends_where_the_birds_are_by_then() -> None:
    moved = farm(bought("Hazel", 30, 60, stay(PEN, 0, 20), stay(RUN, 20, 90, leaving=Leaving.SOLD)))
    assert [(day, place) for day, place, _ in of_kind(moved, "quarantine")] == [(30, "Run")]


def test_birds_that_are_gone_need_no_end_of_quarantine() -> None:
    gone = farm(bought("Hazel", 30, 60, stay(PEN, 0, 10, leaving=Leaving.SOLD)))
    assert of_kind(gone, "quarantine") == []


def test_surplus_cocks_that_move_on_are_told_apart_from_the_laying_group() -> None:
    # Of 60 birds 20 are surplus cocks: to the ark with the split on day 46, on to the run on day 60.
    one = farm(
        eggs(
            "Aster", 60, *EGG_STAYS, stay(BROODER, 18, 46), stay(PEN, 46, None, Part.HENS),
            stay(ARK, 46, 60, Part.COCKS), stay(RUN, 60, 73, Part.COCKS, Leaving.SOLD),
        )
    )  # fmt: skip
    assert of_kind(one, "cocks out") == [(46, "Ark", "Move 20 surplus cocks of Aster to Ark")]
    assert of_kind(one, "move out") == [(46, "Pen", "Move the laying group of Aster out to Pen")]
    assert of_kind(one, "move") == [(60, "Run", "Move the surplus cocks of Aster from Ark to Run")]


def test_eggs_that_leave_before_the_hatch_are_no_birds_for_a_buyer() -> None:
    assert of_kind(farm(eggs("Aster", 60, stay(SETTER, 0, 10, leaving=Leaving.SOLD))), "sold") == []


def test_eggs_turned_once_a_day() -> None:
    once = FigureChoice("once", "coturnix", "turns_per_day", 1.0)
    one = farm(eggs("Aster", 60, *EGG_STAYS, stay(BROODER, 18, 46, leaving=Leaving.SOLD)), once)
    assert {title for _, _, title in of_kind(one, "turn")} == {"Turn the eggs of Aster 1 time"}


def test_keys_do_not_hang_on_the_names_of_two_batches_that_come_and_go_together() -> None:
    aster = eggs("Aster", 40, *EGG_STAYS, stay(BROODER, 18, 46), stay(PEN, 46, 90, leaving=Leaving.SOLD))
    bracken = replace(aster, id="bracken", name="Bracken")
    before = farm(replace(BROODER, clean_out_days=3), replace(PEN, clean_out_days=7), aster, bracken)
    after = before.with_records(set(), (replace(aster, name="Zinnia"),))
    assert {c.key: c.day for c in chores_of(before)} == {c.key: c.day for c in chores_of(after)}
