"""The chore sheet: every chore once, by day and in walking order, on pages that stand alone."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import count

import pytest
from PySide6.QtGui import QColor, QImage, QPainter

from quailsched.chores.chore import Chore
from quailsched.chores.work_out import chores_between
from quailsched.desktop.paper.chore_rows import Row
from quailsched.desktop.paper.chore_sheet import ChorePage, ChoreSheet
from quailsched.desktop.paper.pages import pdf_of
from quailsched.desktop.paper.papers import Paper
from quailsched.desktop.paper.sheet import Sheet, page_layout, sheet_of
from quailsched.edits.change import apply
from quailsched.edits.marks import put_off, put_own, tick
from quailsched.farm.example import example_farm
from quailsched.farm.facts import OwnChore
from quailsched.farm.records import Farm, Place, Role, Settings
from quailsched.report.chores import able_text
from quailsched.season.season import Season
from tests.builders import MONDAY, OUT, bought, farm, stay
from tests.desktop.paper.reading import read, size_pt, words_of

TODAY = date(2027, 4, 6)
pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture(scope="module")
def season() -> Season:
    ids = map(str, count())
    return Season(example_farm(TODAY, lambda: next(ids)))


def sheet_for(season: Season, weeks: int = 4, today: date = TODAY) -> ChoreSheet:
    return ChoreSheet(season, today, today, weeks)


def a4() -> Sheet:
    return sheet_of(page_layout(Paper.A4, is_upright=True))


def rows_of(page: ChorePage, headings: bool) -> list[Row]:
    return [row for _, row in page.rows if row.is_heading is headings]


def text_of(row: Row) -> str:
    return " ".join(line.text for line in row.words.lines)


def due(season: Season, weeks: int, today: date = TODAY) -> tuple[Chore, ...]:
    return chores_between(season, today, today + timedelta(days=7 * weeks))


def crowded() -> Season:
    """Sixty pens that get their birds on one day: more chores on that day than a page holds."""
    pens = [Place(f"p{n}", f"Pen {n}", Role.PEN, n, floor_cm2=9_000) for n in range(60)]
    return Season(farm(*pens, *(bought(f"B{n}", 40, 50, stay(pens[n], 0, 60, leaving=OUT)) for n in range(60))))


# ISO 216: A4 is 210 mm by 297 mm, a point 1/72 in.
def test_it_is_printed_upright_on_as_many_pages_as_it_takes(season: Season) -> None:
    pdf = pdf_of(sheet_for(season), Paper.A4)
    assert size_pt(pdf) == (595, 842)
    assert len(read(pdf).pages) == len(sheet_for(season).pages(a4())) > 1


@pytest.mark.parametrize("weeks", [2, 3, 4])
def test_every_chore_of_the_weeks_stands_on_it_once_by_day_in_walking_order(season: Season, weeks: int) -> None:
    shown = [text_of(row) for page in sheet_for(season, weeks).pages(a4()) for row in rows_of(page, headings=False)]
    wanted = due(season, weeks)
    assert len(shown) == len(wanted)
    assert [text.startswith(chore.title) for text, chore in zip(shown, wanted, strict=True)] == [True] * len(wanted)
    assert all(chore.how in text for text, chore in zip(shown, wanted, strict=True))


def test_each_tells_where_and_who(season: Season) -> None:
    shown = [row for page in sheet_for(season).pages(a4()) for row in rows_of(page, headings=False)]
    for row, chore in zip(shown, due(season, 4), strict=True):
        assert text_of(row).endswith(f"{chore.place} {able_text(chore)}")
    assert {able_text(chore) for chore in due(season, 4)} >= {"Ann or Leo", "nobody at home"}


def test_each_day_with_chores_has_its_heading(season: Season) -> None:
    words = words_of(pdf_of(sheet_for(season), Paper.A4))
    days = sorted({chore.day for chore in due(season, 4)})
    assert days[0] == TODAY
    at = [words.index(f"{day:%A} {day.day} {day:%b}") for day in days]
    assert at == sorted(at)


def test_every_page_has_the_head_and_its_number(season: Season) -> None:
    pdf = pdf_of(sheet_for(season), Paper.A4)
    many = len(read(pdf).pages)
    for number in range(many):
        words = words_of(pdf, number)
        assert words.startswith("Pebble Bank chores 6 Apr – 3 May 2027 printed Tue 6 Apr 2027, ")
        assert f"page {number + 1} of {many}" in words


def test_nothing_stands_below_the_foot_of_a_page_and_no_heading_alone_at_it(season: Season) -> None:
    for height in range(400, 1200, 23):  # wherever the foot comes to be
        sheet = Sheet(700.0, float(height))
        for page in sheet_for(season).pages(sheet):
            head = page.of.head(sheet.width, page.number).height
            assert max(head + top + row.height for top, row in page.rows) <= sheet.height
            assert not page.rows[-1][1].is_heading


def test_a_day_that_goes_on_says_so_at_the_top_of_the_next_page() -> None:
    pages = sheet_for(crowded(), today=MONDAY).pages(a4())
    assert len(pages) > 2
    firsts = [text_of(page.rows[0][1]) for page in pages]
    assert "continued" not in firsts[0]
    assert any("continued" in first for first in firsts[1:])
    assert all(page.rows[0][1].is_heading for page in pages)


def test_a_caution_stands_with_the_first_chore_of_each_page_that_it_belongs_to(season: Season) -> None:
    wanted = iter(due(season, 4))
    for page in sheet_for(season).pages(a4()):
        told: list[str] = []
        for row in rows_of(page, headings=False):
            caution = next(wanted).caution
            is_new = bool(caution) and not any(caution in one for one in told)
            assert (f"Caution: {caution}" in text_of(row)) == is_new
            told.append(caution)
        assert any(told)


def test_a_box_to_tick_is_drawn_beside_each_chore_and_is_empty(season: Season) -> None:
    page = sheet_for(season).pages(a4())[0]
    image = QImage(round(a4().width), round(a4().height), QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    page.paint(painter, a4())
    painter.end()
    head = page.of.head(a4().width, page.number).height
    for top, row in page.rows:
        if not row.is_heading:
            edge = [image.pixelColor(8, y).lightness() for y in range(round(head + top), round(head + top + 12))]
            assert min(edge) < 120  # ink of the upper edge of the box
            assert image.pixelColor(8, round(head + top + 11)).lightness() == 255


def test_two_weeks_are_fourteen_days_with_today(season: Season) -> None:
    # From Tue 6 Apr on, fourteen days end with Mon 19 Apr.
    assert sheet_for(season, 2).about == "chores 6 – 19 Apr 2027"


def test_weeks_across_new_year_name_both_years() -> None:
    empty = Season(Farm(Settings("farm", "Thistle Yard")))
    assert sheet_for(empty, 2, date(2027, 12, 27)).about == "chores 27 Dec 2027 – 9 Jan 2028"


def test_a_farm_without_batches_gets_a_sheet_that_says_what_to_do() -> None:
    pdf = pdf_of(sheet_for(Season(Farm(Settings("farm", "Thistle Yard")))), Paper.A4)
    assert len(read(pdf).pages) == 1
    assert "Add one (Change › Add a batch)" in words_of(pdf)


def test_weeks_without_a_chore_say_that_nothing_is_due(season: Season) -> None:
    assert "Nothing is due on these days." in words_of(pdf_of(sheet_for(season, 2, date(2040, 1, 1)), Paper.A4))


def test_what_is_overdue_stands_first_with_the_day_on_which_it_was_due(season: Season) -> None:
    """Sharpen was asked for on Sunday, 4 April; the heading of Tuesday, 6 April, is one all the same."""
    late = Season(apply(season.farm, put_own(season.farm, OwnChore("s", "Sharpen", date(2027, 4, 4)))))
    page = sheet_for(late, 1).pages(a4())[0]
    rows = [text_of(row) for row in rows_of(page, headings=False)]
    assert "Sharpen Was due on Sunday, 4 Apr." in rows[0]
    headings = [text_of(row) for row in rows_of(page, headings=True)]
    assert [text for text in headings if text.startswith("Tuesday 6 Apr")] == headings[:1]
    assert len(rows) == len(due(season, 1)) + 1


def test_what_is_done_is_ticked_on_paper_and_what_was_put_off_says_from_when(season: Season) -> None:
    farm = season.farm
    (lockdown,) = chores_between(season, TODAY, TODAY + timedelta(days=1))
    heat = next(chore for chore in due(season, 1) if chore.kind == "heat")
    farm = apply(farm, tick(farm, lockdown.key, lockdown.day, lockdown.title, TODAY))
    farm = apply(farm, put_off(farm, heat.key, heat.day, heat.title, TODAY))
    page = sheet_for(Season(farm), 1).pages(a4())[0]
    rows = {text_of(row): row for row in rows_of(page, headings=False)}
    assert [row.is_done for text, row in rows.items() if text.startswith(lockdown.title)] == [True]
    moved = next(text for text in rows if text.startswith(heat.title))
    assert "Put off from 8 Apr. Hang the lamp" in moved
    assert not rows[moved].is_done
    ticked, empty = (box_of(next(row for row in rows.values() if row.is_done is done)) for done in (True, False))
    assert ticked > empty > 0


def box_of(row: Row) -> int:
    """How many dark pixels the box of a row has."""
    image = QImage(24, 24, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    row.paint(painter, 0.0, 600.0)
    painter.end()
    return sum(image.pixelColor(x, y).lightness() < 128 for x in range(17) for y in range(20))
