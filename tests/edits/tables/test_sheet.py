"""What a table is found to be: its delimiter, headings, columns, order of days, decimals; any letters."""

import csv
import io

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from quailsched.edits.tables.cells import DayOrder
from quailsched.edits.tables.headings import Column, meaning, plain
from quailsched.edits.tables.letters import text_of
from quailsched.edits.tables.sheet import Log, Options, sheet_of
from quailsched.farm.faults import FarmError

HATCHES = "batch,set on,eggs set,clear,quit,hatched\nClover,2026-10-03,120,12,8,84\n"


@pytest.mark.parametrize(("heading", "column", "grams"), [
    ("Eggs set", Column.NUMBER_SET, None), ("  EGGS  SET: ", Column.NUMBER_SET, None),
    ("Eingelegt am", Column.SET_DAY, None), ("geschlüpft", Column.HATCHED, None),
    ("geschlu\u0308pft", Column.HATCHED, None), ("Küken", Column.HATCHED, None), ("Geschluepft", Column.HATCHED, None),
    ("Infertile", Column.CLEAR, None), ("blood rings", Column.QUIT, None), ("Gehege", Column.PLACE, None),
    ("Feed (kg)", Column.FED, 1000.0), ("Futter in kg", Column.FED, 1000.0), ("Futter [g]", Column.FED, 1.0),
    ("weight/oz", Column.WEIGHT, pytest.approx(28.3495, abs=1e-4)), ("Hatched %", None, None),
    ("Schlupfquote", None, None), ("hatch rate", None, None), ("moon", None, None), ("", None, None),
    ("kg", None, None),
])  # fmt: skip
def test_headings_in_the_words_that_people_use(heading: str, column: Column | None, grams: float | None) -> None:
    assert meaning(heading) == (column, grams)


def test_every_column_is_read_under_the_heading_it_is_given_out_with() -> None:
    assert [meaning(column) for column in Column] == [(column, None) for column in Column]


@pytest.mark.parametrize("mark", [",", ";", "\t", "|"])
def test_the_delimiter_is_found(mark: str) -> None:
    sheet = sheet_of(HATCHES.replace(",", mark))
    assert (sheet.grid.delimiter, sheet.log, len(sheet.columns)) == (mark, Log.HATCHES, 6)


def test_a_first_line_of_a_spreadsheet_that_names_the_delimiter_still_counts_as_a_row() -> None:
    sheet = sheet_of("sep=;\n" + HATCHES.replace(",", ";"))
    assert [line.number for line in sheet.grid.lines] == [3]


def test_titles_before_the_headings_and_blank_rows_are_passed_over_but_counted() -> None:
    sheet = sheet_of(f"My hatches\n\n{HATCHES}\n,,,,,\nDill,2026-11-03,60,,,\n")
    assert [line.number for line in sheet.grid.lines] == [4, 7]


def test_quoted_cells_may_hold_delimiters_lines_and_marks() -> None:
    sheet = sheet_of('day,place,eggs,note\n2027-03-01,"Pen, big",3,"he said ""so""\nand went"\n2027-03-02,Run,4,\n')
    first, second = sheet.grid.lines
    assert first.cells == ("2027-03-01", "Pen, big", "3", 'he said "so"\nand went')
    assert second.number == 3


def test_a_mark_that_is_never_closed_swallows_no_rows() -> None:
    sheet = sheet_of('day,place,eggs\n2027-03-01,"Pen,3\n2027-03-02,"Run",4\n')
    assert [line.cells for line in sheet.grid.lines] == [("2027-03-01", '"Pen', "3"), ("2027-03-02", "Run", "4")]


def test_date_and_eggs_mean_the_setting_in_a_hatch_log_and_the_lay_in_an_egg_log() -> None:
    assert set(sheet_of("Date,Eggs,Hatched\n2026-10-03,9,3\n").columns) == {
        Column.SET_DAY, Column.NUMBER_SET, Column.HATCHED}  # fmt: skip
    assert set(sheet_of("Date,Eggs\n2026-10-03,9\n").columns) == {Column.DAY, Column.LAID}
    as_told = sheet_of("Date,Eggs\n2026-10-03,9\n", Options(log=Log.HATCHES))
    assert set(as_told.columns) == {Column.SET_DAY, Column.NUMBER_SET}


def test_columns_that_are_not_taken_in_are_told() -> None:
    assert sheet_of("Date,Eggs,Cracked,Weather\n2026-10-03,9,1,rain\n").unused == ("Cracked", "Weather")


def test_what_the_keeper_says_counts_before_what_is_found() -> None:
    sheet = sheet_of("Date,Eggs\n13/4/2026,9\n", Options(day_order=DayOrder.MONTH_FIRST, decimal_mark=","))
    assert (sheet.orders, sheet.decimal_mark) == ((DayOrder.MONTH_FIRST,), ",")


@pytest.mark.parametrize(("text", "part"), [
    ("", "it is empty"), ("\n\n", "it is empty"), ("hello\nworld\n", "“hello”"), ("eggs\n3\n", "an egg log needs"),
    ("hatched\n3\n", "a hatch log needs"), ("day,eggs\n", "rows below its headings"),
])  # fmt: skip
def test_what_is_no_table_is_told_with_what_would_be_accepted(text: str, part: str) -> None:
    with pytest.raises(FarmError, match=part):
        sheet_of(text)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
def test_letters_of_every_usual_encoding(encoding: str) -> None:
    text = "Tag;Gehege;Eier\r\n3.4.2027;Hühner – groß;12\r\n"
    assert text_of(text.encode(encoding)) == text


@pytest.mark.parametrize(
    "data", [b"PK\x03\x04rest", b"\xd0\xcf\x11\xe0old", b"SQLite format 3\0\x10\0\x01", b"a\x81\0b"]
)
def test_what_is_no_text_is_told(data: bytes) -> None:
    with pytest.raises(FarmError, match="saves it as CSV"):
        text_of(data)


@given(st.binary(max_size=300))
def test_any_bytes_are_a_table_or_a_told_fault(data: bytes) -> None:
    try:
        sheet = sheet_of(text_of(data))
    except FarmError:
        return
    assert sheet.grid.lines


_CELLS = st.text(max_size=12) | st.sampled_from(["2027-03-01", "1,5", '"', "Pen", "-3", "", "99999999999"])
_HEADINGS = st.lists(st.sampled_from([*Column, "Futter (kg)", "x"]), min_size=1, max_size=8)


@given(_HEADINGS, st.lists(st.lists(_CELLS, max_size=9), max_size=8), st.sampled_from(",;\t"))
@example(["day", "eggs"], [['"']], ",")
def test_any_table_is_read_or_a_told_fault(headings: list[str], rows: list[list[str]], mark: str) -> None:
    text = "\n".join(mark.join(row) for row in [headings, *rows])
    try:
        sheet = sheet_of(text)
    except FarmError:
        return
    assert sheet.grid.lines


_LETTERS = st.characters(exclude_characters="\r\0", exclude_categories=("Cs", "Cn"))


@given(st.lists(st.lists(st.text(_LETTERS, max_size=9), min_size=3, max_size=3), min_size=1, max_size=6))
def test_what_the_csv_module_writes_is_read_cell_by_cell(rows: list[list[str]]) -> None:
    written = io.StringIO(newline="")
    csv.writer(written).writerows([["day", "place", "eggs"], *rows])
    try:
        lines = sheet_of(written.getvalue(), Options(delimiter=",", log=Log.EGGS)).grid.lines
    except FarmError:
        assert not any(cell.strip() for row in rows for cell in row)
        return
    assert [list(line.cells) for line in lines] == [row for row in rows if any(cell.strip() for cell in row)]


@given(st.text(max_size=40))
def test_plain_words_stay_as_they_are(text: str) -> None:
    assert plain(plain(text)) == plain(text)
