"""Plan against fact, and what counts add up to, in words."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from uuid import uuid4

from quailsched.edits.change import apply
from quailsched.edits.counts import correct, record, take_back
from quailsched.edits.groups import join, part_off
from quailsched.farm.example import example_farm
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.records import Batch, Farm, Part
from quailsched.report.counts_told import State, told_counts
from quailsched.report.plan_and_fact import fact_days, ledger_rows, parentage_rows, plan_and_fact
from quailsched.season.season import Season

TODAY = date(2027, 4, 6)
NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)


def named(farm: Farm, name: str) -> Batch:
    return next(batch for batch in farm.batches if batch.name == name)


def example() -> Farm:
    return example_farm(TODAY, lambda: str(uuid4()))


def counted(farm: Farm, *counts: tuple[Sort, date, int, dict[str, object]], of: str = "Aster") -> Farm:
    for number, (sort, day, many, more) in enumerate(counts):
        count = Count(f"c{number}", sort, day, NOW, many, named(farm, of).id, **more)  # type: ignore[arg-type]
        farm = apply(farm, record(farm, count, TODAY))
    return farm


def lived() -> Farm:
    """Aster, 96 eggs set on 1 March to hatch on the 18th: 14 clear, 52 out a day late, 4 died."""
    return counted(
        example(),
        (Sort.SET, date(2027, 3, 1), 96, {}),
        (Sort.CLEAR, date(2027, 3, 8), 14, {}),
        (Sort.HATCHED, date(2027, 3, 19), 52, {}),
        (Sort.DIED, date(2027, 3, 24), 1, {"cause": Cause.WEAK}),
        (Sort.DIED, date(2027, 3, 28), 3, {"cause": Cause.CHILLED}),
    )


def test_a_batch_of_which_nothing_is_known_has_no_rows() -> None:
    farm = example()
    aster = named(farm, "Aster")
    assert plan_and_fact(farm, aster) == []
    assert fact_days(farm, aster) == []
    assert ledger_rows(Season(farm), aster, TODAY) == []


def test_plan_and_fact_stand_beside_each_other_with_what_differs_in_words() -> None:
    farm = lived()
    rows = [(one.what, one.plan, one.fact, one.difference) for one in plan_and_fact(farm, named(farm, "Aster"))]
    # Of 82 eggs that are not clear 71.5 % hatch by the figures: 58.6, 59 chicks; 52 did: 7 fewer.
    assert rows == [
        ("Set", "96 eggs on 1 Mar", "96 eggs on 1 Mar", "as planned"),
        ("Hatched", "59 chicks on 18 Mar", "52 chicks on 19 Mar", "a day later, 7 fewer"),
    ]


def test_a_second_lot_of_a_hatch_is_told_with_the_first() -> None:
    farm = counted(
        example(), (Sort.HATCHED, date(2027, 3, 17), 20, {}), (Sort.HATCHED, date(2027, 3, 18), 30, {})
    )  # half of the 50 are out on the 18th, the day of the plan; 96 x 61.31 % = 58.9
    (row,) = plan_and_fact(farm, named(farm, "Aster"))
    assert (row.plan, row.fact) == ("59 chicks on 18 Mar", "50 chicks on 18 Mar")
    assert row.difference == "9 fewer"


def test_a_head_count_is_held_against_what_was_expected() -> None:
    farm = lived()
    aster = named(farm, "Aster")
    expected = Season(farm).birds(aster, TODAY)  # of the 48 that lived on 28 March
    farm = apply(farm, record(farm, Count("s", Sort.SEXED, TODAY, NOW, 45, aster.id, hens=20, cocks=22), TODAY))
    row = plan_and_fact(farm, named(farm, "Aster"))[-1]
    assert (row.what, row.plan) == ("Sexed on 6 Apr", f"{expected} birds")
    assert row.fact == "45 birds: 20 hens, 22 cocks, 3 unsure"
    assert row.difference == f"{expected - 45} fewer"


def test_days_that_differ_from_the_plan_are_told_for_the_canvas() -> None:
    farm = lived()
    (only,) = fact_days(farm, named(farm, "Aster"))  # the eggs were set on the day of the plan
    assert (only.sort, only.day, only.plan) == (Sort.HATCHED, date(2027, 3, 19), date(2027, 3, 18))
    assert only.words == "hatched 19 Mar, planned 18 Mar"


def test_the_ledger_adds_up_eggs_and_birds() -> None:
    farm = lived()
    assert ledger_rows(Season(farm), named(farm, "Aster"), date(2027, 3, 28)) == [
        ("Eggs", "96 set, 14 clear, 52 hatched, 30 left"),
        ("Birds", "52 hatched"),
        ("Died", "4: 3 chilled, 1 weak"),
        ("Alive", "48 birds, counted"),
    ]
    alive = dict(ledger_rows(Season(farm), named(farm, "Aster"), TODAY))["Alive"]
    now = Season(farm).birds(named(farm, "Aster"), TODAY)
    assert alive == f"{now} birds expected, 48 counted on 28 Mar"


def test_the_ledger_leaves_out_days_to_come() -> None:
    farm = lived()
    rows = dict(ledger_rows(Season(farm), named(farm, "Aster"), date(2027, 3, 10)))
    assert rows == {"Eggs": "96 set, 14 clear, 82 left"}


def test_birds_that_part_and_join_stand_in_both_ledgers_and_in_the_parentage() -> None:
    farm = lived()
    aster, ark = named(farm, "Aster"), next(place.id for place in farm.places if place.name == "Grass ark")
    part = Count("p", Sort.PARTED, TODAY, NOW, 12, aster.id, ark, Part.COCKS, to_batch_id="cocks")
    farm = apply(farm, part_off(farm, part, "Aster cocks", TODAY))
    farm = apply(farm, join(farm, Count("j", Sort.JOINED, TODAY, NOW, 2, "cocks", to_batch_id=aster.id), TODAY))
    season = Season(farm)
    rows = dict(ledger_rows(season, farm.batch(aster.id), TODAY))
    assert rows["Left"] == "12 parted as Aster cocks"
    assert rows["Birds"] == "52 hatched, 2 joined from Aster cocks"
    cocks = dict(ledger_rows(season, farm.batch("cocks"), TODAY))
    assert (cocks["Birds"], cocks["Left"], cocks["Alive"]) == ("12 came", "2 to Aster", "10 birds, counted")
    assert parentage_rows(farm, farm.batch("cocks")) == [("From", "Aster")]
    assert parentage_rows(farm, farm.batch(aster.id)) == [("Parted from it", "Aster cocks")]


def test_eggs_are_told_with_the_batches_whose_hens_laid_them() -> None:
    farm = example()
    aster, bracken = named(farm, "Aster"), named(farm, "Bracken")
    dill = replace(named(farm, "Dill"), from_ids=(aster.id, bracken.id, "gone"))
    farm = farm.with_records(set(), (dill, replace(named(farm, "Clover"), from_ids=(aster.id,))))
    assert parentage_rows(farm, dill) == [("Eggs from", "Aster, Bracken and a batch that is gone")]
    assert parentage_rows(farm, farm.batch(aster.id)) == [("Its eggs", "Clover and Dill")]


def test_the_list_of_counts_tells_what_was_corrected_and_what_was_taken_back() -> None:
    farm = lived()
    better = replace(farm.find("c3"), id="better", number=2, entered=NOW)  # type: ignore[type-var]
    assert isinstance(better, Count)
    farm = apply(farm, correct(farm, "c3", better, TODAY))
    farm = apply(farm, take_back(farm, "c4", "back", NOW))
    rows = [(one.count.id, one.state, one.what) for one in told_counts(farm, named(farm, "Aster").id)]
    assert rows[:3] == [
        ("back", State.TAKEN_BACK, "3 died, chilled"),
        ("better", State.HOLDS, "2 died, weak"),
        ("c3", State.CORRECTED, "1 died, weak"),
    ]
    assert [row[2] for row in rows[3:]] == ["52 hatched", "14 clear", "96 set"]
