"""Every record as a table: read back by Python's csv module, and logs taken in again by the program itself."""

import csv
import io
from collections.abc import Iterable
from dataclasses import replace
from datetime import UTC, date, datetime
from itertools import count

from hypothesis import given
from hypothesis import strategies as st

from quailsched.edits.change import apply
from quailsched.edits.counts import record
from quailsched.edits.tables.pieces import Now
from quailsched.edits.tables.rows import Fate
from quailsched.edits.tables.sheet import Options
from quailsched.edits.tables.taking import taking_of
from quailsched.farm.facts import Cause, ChoreMark, Count, OwnChore, Sort
from quailsched.farm.faults import FarmError
from quailsched.farm.records import Farm, Person, Span
from quailsched.report.record_tables import RecordTable, record_tables
from tests.builders import ALL_PLACES, PEN, bought, eggs, farm, hatch_route, on, stay
from tests.strategies import farms

TODAY = date(2027, 12, 1)
NUMBERS = count(1)


def told(sort: Sort, day: int, number: int = 0, grams: int = 0, batch: str = "", place: str = "") -> Count:
    entered = datetime(2027, 5, 1, tzinfo=UTC)
    return Count(f"c{next(NUMBERS)}", sort, on(day), entered, number, batch_id=batch, place_id=place, grams=grams)


def with_counts(of: Farm, counts: Iterable[Count]) -> Farm:
    for one in counts:
        of = apply(of, record(of, one, TODAY))
    return of


PLANNED = farm(*ALL_PLACES, eggs("Clover", 100, *hatch_route()), eggs("Dill", 60, *hatch_route(), start=on(30)))
LIVED = with_counts(PLANNED, [
    told(Sort.CLEAR, 7, 10, batch="clover"), told(Sort.CLEAR, 9, 2, batch="clover"),
    told(Sort.HATCHED, 17, 50, batch="clover"), told(Sort.HATCHED, 18, 20, batch="clover"),
    told(Sort.SET, 30, 60, batch="dill"), told(Sort.LAID, 60, 12, place="pen"), told(Sort.LAID, 60, 14, place="pen"),
    told(Sort.FED, 60, 0, 2500, place="pen"), told(Sort.DIED, 20, 2, batch="clover"),
    replace(told(Sort.DIED, 20, 1, batch="clover", place="brooder"), cause=Cause.CHILLED),
    told(Sort.WEIGHED, 40, 10, 1850, batch="clover"), told(Sort.FEED_BOUGHT, 40, 0, 25_000),
])  # fmt: skip


def table(of: Farm, name: str) -> RecordTable:
    return next(one for one in record_tables(of) if one.name == f"{name}.csv")


def rows(of: Farm, name: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(table(of, name).text(), newline="")))


def taken_into(of: Farm, text: str) -> tuple[list[Fate], Farm]:
    now = Now(TODAY, datetime(2027, 12, 1, tzinfo=UTC), lambda: f"t{next(NUMBERS)}")
    taking = taking_of(of, text, Options(), now)
    return [row.fate for row in taking.rows], of if taking.change is None else apply(of, taking.change)


def test_there_is_a_table_for_every_kind_of_record_and_every_sort_of_count() -> None:
    names = {one.name for one in record_tables(PLANNED)}
    assert {f"counts-{sort.replace(' ', '-')}.csv" for sort in Sort} < names
    assert {"farm.csv", "places.csv", "people.csv", "batches.csv", "stays.csv", "figures.csv", "accepted-clashes.csv",
            "trials.csv", "chore-marks.csv", "own-chores.csv", "hatch-log.csv", "egg-log.csv"} < names  # fmt: skip


def test_each_sort_of_count_has_its_own_columns_and_others_are_named() -> None:
    died = rows(LIVED, "counts-died")
    assert sorted((row["day"], row["batch"], row["place"], row["number"], row["cause"]) for row in died) == [
        ("2027-03-21", "Clover", "", "2", ""), ("2027-03-21", "Clover", "Brooder", "1", "chilled")]  # fmt: skip
    assert "cause" not in table(LIVED, "counts-laid").headings
    assert rows(LIVED, "counts-fed")[0]["grams"] == "2500"
    assert rows(LIVED, "counts-set")[0]["entered"] == "2027-05-01T00:00:00+00:00"


def test_stays_marks_and_own_chores_have_rows() -> None:
    mark = ChoreMark("m", "key", on(3), done_on=on(4))
    ann = Person("ann", 'Ann, "A"', away=(Span(on(5), on(8), "fair"),))
    chore = OwnChore("o", "Sweep", on(1), "FREQ=WEEKLY", "the yard\nand the path", person_id="ann")
    full = farm(*ALL_PLACES, eggs("Clover", 100, *hatch_route()), ann, mark, chore)
    assert [row["batch"] for row in rows(full, "stays")] == ["Clover"] * 3
    assert rows(full, "stays")[0]["place"] == "Setter"
    assert rows(full, "chore-marks")[0]["done on"] == "2027-03-05"
    assert rows(full, "own-chores")[0]["person"] == 'Ann, "A"'
    assert rows(full, "own-chores")[0]["words"] == "the yard\nand the path"
    assert rows(full, "people")[0]["away"] == "2027-03-06 to 2027-03-08 (fair)"  # the last day that counts


def test_lines_end_as_in_rfc_4180() -> None:
    """Section 2: lines end in CRLF, cells with marks, commas or lines stand in marks, which are doubled."""
    ann = Person("ann", 'Ann, "A"')
    text = table(farm(*ALL_PLACES, ann), "people").text()
    assert text.count("\r\n") == 2
    assert '"Ann, ""A"""' in text


def test_the_hatch_log_of_a_farm_is_there_already_and_makes_the_same_log_in_another() -> None:
    text = table(LIVED, "hatch-log").text()
    assert text.splitlines()[1] == "Clover,coturnix,Setter,2027-03-01,100,2027-03-10,12,,,2027-03-19,70,"
    fates, same = taken_into(LIVED, text)
    assert fates == [Fate.THERE, Fate.THERE]
    assert same == LIVED
    fates, other = taken_into(farm(*ALL_PLACES), text)
    assert fates == [Fate.TAKEN, Fate.TAKEN]
    assert table(other, "hatch-log").text() == text


def test_the_egg_log_of_a_farm_is_there_already_and_makes_the_same_log_in_another() -> None:
    text = table(LIVED, "egg-log").text()
    assert "2027-04-30,Pen,,26,,2500,,,\r\n" in text  # 12 and 14 eggs, day 60 after 1 March
    assert "2027-04-10,,Clover,,,,,10,1850\r\n" in text
    fates, same = taken_into(LIVED, text)
    assert set(fates) == {Fate.THERE}
    assert same == LIVED
    _, other = taken_into(farm(*ALL_PLACES), table(LIVED, "hatch-log").text())
    fates, other = taken_into(other, text)
    assert set(fates) == {Fate.TAKEN}
    assert sorted(table(other, "egg-log").text().splitlines()) == sorted(text.splitlines())


def test_a_log_of_nothing_says_so_when_it_is_taken_in() -> None:
    hens = farm(*ALL_PLACES, bought("Hens", 40, 60, stay(PEN, 0, None)))
    try:
        taken_into(hens, table(hens, "hatch-log").text())
    except FarmError as error:
        assert "rows below its headings are needed" in str(error)  # noqa: PT017


@given(farms(), st.data())
def test_the_csv_module_reads_back_every_row_of_any_farm(any_farm: Farm, data: st.DataObject) -> None:
    one = data.draw(st.sampled_from(record_tables(any_farm)))
    read = [tuple(row) for row in csv.reader(io.StringIO(one.text(), newline=""), strict=True)]
    assert read == [one.headings, *one.rows]
    assert all(len(row) == len(one.headings) for row in one.rows)
