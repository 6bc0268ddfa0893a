"""Rows of a hatch log and of an egg log taken into a farm: what becomes of each, and of the farm."""

from datetime import UTC, date, datetime, timedelta
from itertools import count

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.change import apply
from quailsched.edits.counts import record
from quailsched.edits.tables.cells import DayOrder
from quailsched.edits.tables.headings import Column
from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.rows import Fate, Taking
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.farm.check import faults_of, faults_of_batch
from quailsched.farm.facts import Count, Sort
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.ledger import standing, total
from quailsched.farm.records import Batch, Farm
from tests.builders import ALL_PLACES, CABINET, PEN, RUN, bought, eggs, farm, hatch_route, on, stay

TODAY = date(2027, 12, 1)
EMPTY = farm(*ALL_PLACES)
AS_FOUND = Options()
NUMBERS = count(1)
THREE = """Brut;Eingelegt am;Eier eingelegt;klar;abgestorben;geschlüpft;Schlupftag
Eins;01.03.2027;120;12;8;84;18.03.2027
Zwei;08.03.2027;60;5;5;;
Drei;31.02.2027;60;5;5;40;
"""


def now(today: date = TODAY) -> Now:
    return Now(today, datetime(2027, 12, 1, 12, tzinfo=UTC), lambda: f"new-{next(NUMBERS)}")


def take(into: Farm, text: str, options: Options = AS_FOUND, today: date = TODAY) -> tuple[Taking, Farm]:
    taking = taking_of(into, text, options, now(today))
    after = into if taking.change is None else apply(into, taking.change)
    assert not faults_of(after)
    return taking, after


def fates(taking: Taking) -> list[tuple[int, Fate]]:
    return [(row.number, row.fate) for row in taking.rows]


def batch(of: Farm, name: str) -> Batch:
    return next(one for one in of.batches if one.name == name)


def counted(of: Farm, name: str) -> list[tuple[Sort, date, int]]:
    own = standing(of.counts_of(batch(of, name).id))
    return [(one.sort, one.day, one.number) for one in sorted(own, key=lambda one: list(Sort).index(one.sort))]


def test_a_hatch_log_makes_batches_with_their_counts_and_leaves_bad_rows_out_by_number() -> None:
    taking, after = take(EMPTY, THREE)
    assert fates(taking) == [(2, Fate.TAKEN), (3, Fate.TAKEN), (4, Fate.OUT)]
    assert "Eingelegt am: “31.02.2027” cannot be used" in taking.rows[2].words
    # Clear on day 7, when a Coturnix is candled, as the table tells no day for it; quit and hatched on its day.
    assert counted(after, "Eins") == [
        (Sort.SET, date(2027, 3, 1), 120), (Sort.CLEAR, date(2027, 3, 8), 12),
        (Sort.QUIT, date(2027, 3, 18), 8), (Sort.HATCHED, date(2027, 3, 18), 84),
    ]  # fmt: skip
    assert "12 clear, taken to be on 8 Mar 2027" in taking.rows[0].words
    assert "84 hatched on 18 Mar 2027" in taking.rows[0].words
    # Of the second nothing is known to have hatched: that is not the same as none.
    assert [sort for sort, _, _ in counted(after, "Zwei")] == [Sort.SET, Sort.CLEAR, Sort.QUIT]
    assert len(batch(after, "Eins").stays) > 2


def test_all_good_rows_are_one_step_that_its_inverse_takes_back() -> None:
    taking, after = take(EMPTY, THREE)
    assert taking.change is not None
    assert taking.change.label == "Take in 2 rows of a table (hatch log)"
    assert apply(after, taking.change.inverse()) == EMPTY


def test_the_same_file_again_changes_nothing() -> None:
    _, after = take(EMPTY, THREE)
    again, same = take(after, THREE)
    assert [fate for _, fate in fates(again)] == [Fate.THERE, Fate.THERE, Fate.OUT]
    assert again.change is None
    assert same == after


def test_what_became_known_later_is_taken_in_by_itself() -> None:
    _, after = take(EMPTY, THREE)
    more = THREE.replace("08.03.2027;60;5;5;;", "08.03.2027;60;5;5;41;26.03.2027")
    taking, after = take(after, more)
    assert [row.number for row in taking.of(Fate.TAKEN)] == [3]
    assert counted(after, "Zwei")[-1] == (Sort.HATCHED, date(2027, 3, 26), 41)


def test_what_the_farm_has_otherwise_is_left_out_and_stays() -> None:
    _, after = take(EMPTY, THREE)
    taking, same = take(after, THREE.replace("84;", "85;"))
    assert taking.rows[0].fate is Fate.OUT
    assert "the farm has 84 hatched" in taking.rows[0].words
    assert same == after


def test_a_row_that_cannot_be_is_left_out_as_a_whole_and_the_others_stay() -> None:
    # 12 clear and 8 quit of 30 leave 10 eggs: 11 cannot hatch.
    text = "batch,set on,eggs set,clear,quit,hatched\nA,2027-03-01,30,12,8,11\nB,2027-03-01,30,12,8,10\n"
    taking, after = take(EMPTY, text)
    assert fates(taking) == [(2, Fate.OUT), (3, Fate.TAKEN)]
    assert "of 30 eggs set, 10 were left by then" in taking.rows[0].words
    assert [one.name for one in after.batches] == ["B"]


def test_a_batch_of_the_farm_gets_the_counts_and_its_plan_follows_them() -> None:
    planned = farm(*ALL_PLACES, eggs("Clover", 100, *hatch_route()))
    name = planned.batches[0].name
    text = f"batch,set on,eggs set,hatch date,hatched\n{name.upper()},{on(1).isoformat()},90,{on(19).isoformat()},70\n"
    taking, after = take(planned, text)
    assert fates(taking) == [(2, Fate.TAKEN)]
    assert (after.batches[0].start, after.batches[0].number) == (on(1), 90)
    assert counted(after, name) == [(Sort.SET, on(1), 90), (Sort.HATCHED, on(19), 70)]


def test_a_name_that_the_farm_has_for_another_season_is_not_taken_for_the_same() -> None:
    planned = farm(*ALL_PLACES, eggs("Clover", 100, *hatch_route()))
    text = f"batch,set on,eggs set\n{planned.batches[0].name},2026-03-01,90\n"
    taking, _ = take(planned, text)
    assert "a name of its own is accepted for another batch" in taking.rows[0].words


def test_rows_without_a_name_are_known_again_by_their_day_and_eggs() -> None:
    text = "set on,eggs set,hatched\n2027-03-01,50,30\n2027-03-01,50,31\n2027-03-02,50,30\n"
    taking, after = take(EMPTY, text)
    assert [one.name for one in after.batches] == [
        "Eggs of 1 Mar 2027", "Eggs of 1 Mar 2027 (2)", "Eggs of 2 Mar 2027"]  # fmt: skip
    again, _ = take(after, text)
    assert again.change is None
    assert len(again.of(Fate.THERE)) == 3
    assert len(taking.of(Fate.TAKEN)) == 3


def test_kind_and_machine_come_from_the_row_and_else_from_what_the_keeper_says() -> None:
    text = "batch,kind,incubator,set on,eggs set\nA,Bobwhite quail,Cabinet,2027-03-01,50\nB,,,2027-03-01,50\n"
    text = text.replace("Bobwhite quail", "bobwhite")
    _, after = take(EMPTY, text, Options(kind="button"))
    assert (batch(after, "A").kind, batch(after, "B").kind) == ("bobwhite", "button")
    assert batch(after, "A").stays[0].place_id == CABINET.id
    assert [after.place(one.place_id).role.holds_eggs for one in batch(after, "A").stays[:2]] == [True, False]


@pytest.mark.parametrize(("row", "part"), [
    ("A,moa,,2027-03-01,50,", "one of coturnix, coturnix-heavy, bobwhite, button is accepted"),
    ("A,,Moon,2027-03-01,50,", "one of Setter, Hatcher, Cabinet, Brooder, Pen, Run, Ark is accepted"),
    ("A,,Pen,2027-03-01,50,", "place: “Pen” cannot be used; eggs start where eggs are held"),
    ("A,,,2027-03-01,50.5,", "a whole number from 0 to 1,000,000 is accepted"),
    ("A,,,2027-03-01,,", "eggs set: it is missing; a new batch needs it; the farm has none called “A”"),
    ("A,,,,50,", "set on: it is missing"), ("A,,,2027-03-01,-5,", "“-5” cannot be used"),
    ("A,,,2028-03-01,50,", "today, 1 Dec, or a day before is accepted"),
    ("A,,,2027-11-25,50,20", "it is due on 12 Dec 2027: the day on which it hatched is needed"),
    ("A,,,2027-03-01,1000000,", "100,000"),
])  # fmt: skip
def test_a_bad_cell_is_told_with_its_heading_its_value_and_what_would_be_accepted(row: str, part: str) -> None:
    taking, after = take(EMPTY, f"batch,kind,place,set on,eggs set,hatched\n{row}\n")
    assert taking.rows[0].fate is Fate.OUT
    assert part in taking.rows[0].words
    assert after == EMPTY


def test_a_machine_that_holds_no_eggs_is_told_by_its_heading() -> None:
    taking, _ = take(EMPTY, "batch,incubator,set on,eggs set\nA,Pen,2027-03-01,50\n")
    assert taking.rows[0].words == "incubator: “Pen” cannot be used; eggs start where eggs are held."


def test_birds_that_came_as_birds_have_no_hatch_log() -> None:
    chicks = bought("Chicks", 40, 60, stay(PEN, 0, None))
    taking, _ = take(farm(*ALL_PLACES, chicks), f"batch,set on,eggs set\n{chicks.name},{on(0).isoformat()},40\n")
    assert "it has no eggs in a machine" in taking.rows[0].words


def test_an_open_order_of_days_is_asked_for_and_nothing_is_read_before() -> None:
    text = "day,place,eggs\n3/4/2027,Pen,4\n4/5/2027,Pen,5\n"
    with pytest.raises(FarmError, match="“3/4/2027” may be 3 Apr 2027 or 4 Mar 2027; say what comes first"):
        take(EMPTY, text)
    _, after = take(EMPTY, text, Options(day_order=DayOrder.MONTH_FIRST))
    assert [one.day for one in after.counts] == [date(2027, 3, 4), date(2027, 4, 5)]


HENS = farm(*ALL_PLACES, bought("Hens", 40, 60, stay(PEN, 0, None)))
LOG = 'Date,Pen,Eggs,Feed (kg),Died,Cracked\n2027-04-01,Pen,31,"1,5",,1\n2027-04-02,pen,29,"1,6",1,0\n'


def facts(of: Farm) -> list[tuple[Sort, date, int, int, str, str]]:
    return [(c.sort, c.day, c.number, c.grams, c.place_id, c.batch_id) for c in of.counts]


def test_an_egg_log_gives_counts_of_the_place_and_deaths_of_the_batch_that_is_there() -> None:
    taking, after = take(HENS, LOG)
    assert taking.sheet.decimal_mark == ","
    assert sorted(facts(after)) == sorted([
        (Sort.LAID, date(2027, 4, 1), 31, 0, "pen", ""), (Sort.FED, date(2027, 4, 1), 0, 1500, "pen", ""),
        (Sort.LAID, date(2027, 4, 2), 29, 0, "pen", ""), (Sort.FED, date(2027, 4, 2), 0, 1600, "pen", ""),
        (Sort.DIED, date(2027, 4, 2), 1, 0, "pen", "hens"),
    ])  # fmt: skip
    assert taking.rows[1].words == "Pen, 2 Apr 2027: 29 laid, 1 died and 1,600 g fed"
    again, _ = take(after, LOG)
    assert again.change is None
    assert [fate for _, fate in fates(again)] == [Fate.THERE, Fate.THERE]


def test_what_was_counted_by_hand_is_not_counted_twice() -> None:
    laid_by_hand = Count("h", Sort.LAID, date(2027, 4, 1), number=31, batch_id="hens", place_id="pen")
    dead = Count("d", Sort.DIED, date(2027, 4, 2), number=1, batch_id="hens")
    known = apply(HENS, record(HENS, laid_by_hand, TODAY))
    known = apply(known, record(known, dead, TODAY))
    _, after = take(known, LOG)
    assert total(after.counts, Sort.LAID) == 31 + 29
    assert total(after.counts, Sort.DIED) == 1


def by_hand(into: Farm, sort: Sort, number: int, batch: str = "", place: str = "") -> Farm:
    one = Count(f"h{next(NUMBERS)}", sort, date(2027, 4, 1), number=number, batch_id=batch, place_id=place)
    return apply(into, record(into, one, TODAY))


def laid(number: int) -> str:
    return f"day,place,eggs\n2027-04-01,Pen,{number}\n"


def test_several_counts_of_a_place_are_known_as_their_sum_beside_one_of_its_batch() -> None:
    known = by_hand(
        by_hand(by_hand(HENS, Sort.LAID, 12, place="pen"), Sort.LAID, 14, place="pen"), Sort.LAID, 5, "hens", "pen"
    )
    assert fates(take(known, laid(26))[0]) == [(2, Fate.THERE)]  # the two of the place
    assert fates(take(known, laid(31))[0]) == [(2, Fate.THERE)]  # all three
    assert fates(take(known, laid(17))[0]) == [(2, Fate.OUT)]


def test_eggs_of_a_batch_are_those_of_the_place_where_it_is() -> None:
    assert fates(take(by_hand(HENS, Sort.LAID, 12, "hens"), laid(12))[0]) == [(2, Fate.THERE)]
    away = farm(*ALL_PLACES, bought("Hens", 40, 60, stay(RUN, 0, None)))
    taking, after = take(by_hand(away, Sort.LAID, 12, "hens"), laid(12))
    assert fates(taking) == [(2, Fate.TAKEN)]
    assert total(after.counts, Sort.LAID) == 24


def test_eggs_of_a_batch_before_it_came_are_left_out() -> None:
    taking, _ = take(HENS, "day,batch,eggs\n2027-02-28,Hens,12\n2027-03-01,Hens,12\n")
    assert fates(taking) == [(2, Fate.OUT), (3, Fate.TAKEN)]
    assert "Hens is of 1 Mar 2027 in the farm" in taking.rows[0].words


def test_deaths_of_one_batch_are_not_those_of_another() -> None:
    two = farm(*ALL_PLACES, *(bought(name, 40, 60, stay(PEN, 0, None)) for name in ("Hens", "More")))
    known = by_hand(two, Sort.DIED, 2, "hens")
    taking, after = take(known, "day,batch,died\n2027-04-01,More,2\n")
    assert fates(taking) == [(2, Fate.TAKEN)]
    assert total(after.counts, Sort.DIED) == 4


def test_another_number_for_the_same_day_and_place_is_left_out() -> None:
    _, after = take(HENS, LOG)
    taking, same = take(after, LOG.replace(",29,", ",30,"))
    assert fates(taking) == [(2, Fate.THERE), (3, Fate.OUT)]
    assert "Eggs: 30 cannot be used; the farm has 29" in taking.rows[1].words
    assert same == after


def test_two_rounds_on_a_day_are_two_counts_and_known_again_in_any_order() -> None:
    head, rows = "day,place,eggs\n", ["2027-04-01,Pen,12\n", "2027-04-01,Pen,14\n"]
    _, after = take(HENS, head + "".join(rows))
    assert total(after.counts, Sort.LAID) == 26
    again, _ = take(after, head + "".join(reversed(rows)))
    assert again.change is None
    together, _ = take(after, head + "2027-04-01,Pen,26\n")  # both rounds in one row
    assert fates(together) == [(2, Fate.THERE)]


def test_a_row_that_stands_there_twice_is_taken_once() -> None:
    taking, after = take(HENS, "day,place,eggs\n2027-04-01,Pen,12\n2027-04-01,Pen,12\n")
    assert taking.rows[1].words == "the same as row 2"
    assert total(after.counts, Sort.LAID) == 12


def test_deaths_where_two_batches_are_need_the_batch() -> None:
    two = farm(*ALL_PLACES, *(bought(name, 40, 60, stay(PEN, 0, None)) for name in ("Hens", "More")))
    taking, after = take(two, "day,place,eggs,died\n2027-04-01,Pen,12,2\n2027-04-02,Pen,12,\n")
    assert fates(taking) == [(2, Fate.OUT), (3, Fate.TAKEN)]
    assert "a column that names the batch is needed" in taking.rows[0].words
    assert total(after.counts, Sort.LAID) == 12  # nothing of the first row, its eggs neither


def test_more_dead_than_there_are_is_left_out_also_over_several_rows() -> None:
    name = HENS.batches[0].name
    text = f"day,batch,died\n2027-04-01,{name},30\n2027-04-02,{name},11\n2027-04-03,{name},10\n"
    taking, after = take(HENS, text)
    assert fates(taking) == [(2, Fate.TAKEN), (3, Fate.OUT), (4, Fate.TAKEN)]
    assert total(after.counts, Sort.DIED) == 40


def test_weights_together_and_each() -> None:
    name = HENS.batches[0].name
    text = f"day,batch,birds weighed,weight (g)\n2027-04-01,{name},10,2150\n2027-04-02,{name},,300\n"
    taking, after = take(HENS, text)
    assert [(c.number, c.grams) for c in after.counts] == [(10, 2150)]
    assert "the number of birds that were weighed together is needed" in taking.rows[1].words
    _, after = take(HENS, f"day,batch,weighed,average weight (oz)\n2027-04-01,{name},10,8\n")
    assert [(c.number, c.grams) for c in after.counts] == [(10, 2268)]  # 10 times 8 times 28.3495 g


def test_a_weight_without_a_unit_is_not_guessed() -> None:
    taking, _ = take(HENS, "day,place,feed\n2027-04-01,Pen,2.5\n2027-04-02,Pen,2.5 kg\n")
    assert fates(taking) == [(2, Fate.OUT), (3, Fate.TAKEN)]


def test_rows_that_name_no_place_are_of_the_one_the_keeper_says() -> None:
    _, after = take(HENS, "day,eggs\n2027-04-01,12\n", Options(place_id="pen"))
    assert after.counts[0].place_id == "pen"
    _, after = take(HENS, "day,eggs\n2027-04-01,12\n")
    assert after.counts[0].place_id == ""


def test_a_note_stays_with_the_first_count_of_its_row() -> None:
    _, after = take(HENS, 'day,place,eggs,note\n2027-04-01,Pen,12,"wind, rain"\n')
    assert after.counts[0].words == "wind, rain"


@pytest.mark.parametrize(("row", "part"), [
    (",Pen,12", "day: it is missing; the day is needed"), ("2027-04-01,Moon,12", "“Moon” cannot be used; one of"),
    ("2027-04-01,Pen,a dozen", "“a dozen” cannot be used"), ("2028-04-01,Pen,12", "or a day before is accepted"),
])  # fmt: skip
def test_a_bad_row_of_an_egg_log_is_told(row: str, part: str) -> None:
    taking, after = take(HENS, f"day,place,eggs\n{row}\n")
    assert part in taking.rows[0].words
    assert after == HENS


def test_a_decimal_comma_that_was_taken_for_a_delimiter_is_told() -> None:
    taking, after = take(HENS, "day,place,eggs,feed (kg),died\n2027-04-01,Pen,12,1,5,2\n2027-04-02,Pen,12,,,\n")
    assert fates(taking) == [(2, Fate.OUT), (3, Fate.TAKEN)]
    assert taking.rows[0].words.startswith("it has 6 cells for 5 headings")
    assert total(after.counts, Sort.LAID) == 12


def test_a_day_of_which_nothing_is_told_changes_nothing() -> None:
    taking, _ = take(HENS, "day,place,eggs,feed (g)\n2027-04-01,Pen,-,\n")
    assert (taking.change, taking.rows[0].fate) == (None, Fate.THERE)


_DAYS = st.dates(date(2026, 12, 1), date(2028, 1, 31)).map(str) | st.sampled_from(["1/2/2027", "nope", ""])
_NAMES = st.sampled_from(["A", "B", "hens", "", "Pen", "cabinet"])
_NUMBERS = st.integers(-2, 130).map(str) | st.sampled_from(["", "1,5", "x", "12 kg", "1.000"])
_ROWS = st.lists(st.tuples(_DAYS, _DAYS, _NAMES, _NAMES, _NUMBERS, _NUMBERS, _NUMBERS, _NUMBERS), max_size=8)


@given(_ROWS, st.booleans())
def test_any_rows_leave_a_sound_farm_and_the_same_again_changes_nothing(
    rows: list[tuple[str, ...]], is_hatches: bool
) -> None:
    hatches = (Column.SET_DAY, Column.HATCH_DAY, Column.NAME, Column.PLACE, Column.NUMBER_SET, Column.CLEAR,
               Column.QUIT, Column.HATCHED)  # fmt: skip
    lays = (Column.DAY, "weather", Column.NAME, Column.PLACE, Column.LAID, Column.DIED, "feed (kg)", "weighed")
    text = "\n".join(";".join(row) for row in [hatches if is_hatches else lays, *rows])
    options = Options(day_order=DayOrder.DAY_FIRST)
    try:
        taking, after = take(HENS, text, options)  # which holds that the farm is sound
    except FarmError:
        assert not any(cell for row in rows for cell in row)
        return
    assert len(taking.rows) == sum(any(cell.strip() for cell in row) for row in rows)
    assert bool(taking.of(Fate.TAKEN)) == (taking.change is not None)
    again, same = take(after, text, options)
    assert not again.of(Fate.TAKEN)
    assert same == after


def test_a_thousand_rows_look_at_the_farm_a_few_times_only(monkeypatch: pytest.MonkeyPatch) -> None:
    seen: list[int] = []

    def looked_at(of: Farm, one: Batch) -> list[Fault]:
        seen.append(len(of.batches))
        return faults_of_batch(of, one)

    monkeypatch.setattr("quailsched.edits.records.faults_of_batch", looked_at)
    days = [date(2024, 1, 1) + timedelta(days=number) for number in range(300)]
    rows = "".join(f"B{number},{day},100,5,6,70\n" for number, day in enumerate(days))
    taking, after = take(EMPTY, "batch,set on,eggs set,clear,quit,hatched\n" + rows)
    assert len(taking.of(Fate.TAKEN)) == len(after.batches) == 300
    # Each row against its own batch alone; the whole farm once for every batch, when all is put together.
    assert sum(many > 2 for many in seen) == 300
