"""The season on one page, read back from the PDF."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from itertools import count, pairwise

import pytest
from PySide6.QtCore import QLineF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from quailsched.desktop.paper.pages import pdf_of
from quailsched.desktop.paper.papers import Paper, usual_paper
from quailsched.desktop.paper.season_page import SeasonPage
from quailsched.desktop.paper.sheet import Sheet
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.theme import DARK, LIGHT, show_theme
from quailsched.edits.acceptances import accept
from quailsched.edits.change import apply
from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm, Place, Settings, Stay, Units
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from quailsched.season.severity import Severity, severity_of
from quailsched.words import ENGLISH, Language, use
from tests.bench.big_farm import big_farm
from tests.builders import ALL_PLACES, BROODER, HATCHER, MONDAY, OUT, SETTER, eggs, farm, stay
from tests.desktop.paper.reading import fonts_of, read, size_pt, without_dates, words_of

TODAY = date(2027, 4, 6)
pytestmark = pytest.mark.usefixtures("qapp")


def looked_at(of: Farm) -> Checked:
    return checked(Season(of))


def route(brooder: Place) -> tuple[Stay, ...]:
    """To day 24, when there is nothing yet to clash about."""
    return stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(brooder, 18, 24, leaving=OUT)


@pytest.fixture(scope="module")
def example() -> Checked:
    ids = map(str, count())
    return looked_at(example_farm(TODAY, lambda: next(ids)))


def page_of(now: Checked, today: date = TODAY, **changes: object) -> SeasonPage:
    return replace(SeasonPage(now, today, today), **changes)  # type: ignore[arg-type]


# ISO 216: A4 is 210 mm by 297 mm, A3 297 mm by 420 mm. ANSI/ASME Y14.1: A is 8.5 in by 11 in. A point is 1/72 in,
# an inch 25.4 mm, and PDF writers round to whole points: 297 mm = 841.9 pt.
@pytest.mark.parametrize(
    ("paper", "width", "height"), [(Paper.A4, 842, 595), (Paper.A3, 1191, 842), (Paper.LETTER, 792, 612)]
)
def test_the_season_is_one_page_of_the_paper_lengthwise(
    paper: Paper, width: int, height: int, example: Checked
) -> None:
    pdf = pdf_of(page_of(example), paper)
    assert len(read(pdf).pages) == 1
    assert size_pt(pdf) == (width, height)


@pytest.mark.parametrize("paper", list(Paper))
def test_every_batch_and_place_can_be_read_on_it(paper: Paper, example: Checked) -> None:
    words = words_of(pdf_of(page_of(example), paper))
    of = example.season.farm
    names = [*(batch.name for batch in of.batches), *(place.name for place in of.places)]
    assert len(names) == 14  # seven of each
    assert [name for name in names if name not in words] == []


def test_its_head_names_farm_season_and_the_date_of_printing(example: Checked) -> None:
    assert words_of(pdf_of(page_of(example), Paper.A4)).startswith("Pebble Bank season 2027 printed Tue 6 Apr 2027")


def test_a_page_for_another_day_names_both_days(example: Checked) -> None:
    page = page_of(example, printed=date(2027, 3, 30))
    assert "as on 6 Apr 2027, printed Tue 30 Mar 2027" in words_of(pdf_of(page, Paper.A4))


def test_a_trial_is_named_and_a_plan_is_not(example: Checked) -> None:
    assert "trial" not in words_of(pdf_of(page_of(example), Paper.A4))
    assert "season 2027, trial “two tubs”" in words_of(pdf_of(page_of(example, trial="two tubs"), Paper.A4))


def test_letters_are_in_the_document_and_nothing_is_a_picture(example: Checked) -> None:
    pdf = pdf_of(page_of(example), Paper.A3)
    assert fonts_of(pdf)
    assert all(fonts_of(pdf).values())
    assert len(read(pdf).pages[0].images) == 0


class Recording(QPainter):
    """Keeps how far the slanting lines of each hatch stand apart on the page, across, in its pixels."""

    def __init__(self, on: QImage) -> None:
        super().__init__(on)
        self.steps: list[float] = []

    def drawLines(self, lines: Sequence[QLineF]) -> None:  # type: ignore[override]  # one of its forms
        scale = self.transform().m11()
        self.steps += [
            (after.x1() - line.x1()) * scale
            for line, after in pairwise(lines)
            if line.dx() and abs(line.dx()) == abs(line.dy())
        ]
        super().drawLines(lines)


@pytest.mark.parametrize("is_big", [False, True])
def test_the_lines_of_hatches_are_two_millimetres_apart(is_big: bool, example: Checked) -> None:
    """Closer ones print grey, and made a file of 1.9 MB. A page of 96 pixels an inch of 25.4 mm has 7.56 in 2 mm."""
    image = QImage(10, 10, QImage.Format.Format_RGB32)
    painter = Recording(image)
    page = page_of(looked_at(big_farm()), date(2027, 2, 1)) if is_big else page_of(example)
    page.paint(painter, Sheet(900.0, 500.0))  # so small that the season is drawn smaller
    painter.end()
    assert painter.steps
    assert min(painter.steps) >= 7.56


def test_the_file_is_no_burden(example: Checked) -> None:
    assert len(pdf_of(page_of(example), Paper.A3)) < 100_000


def test_twice_the_same_differs_in_nothing_but_the_time(example: Checked) -> None:
    one, other = (without_dates(pdf_of(page_of(example), Paper.A4)) for _ in range(2))
    assert one == other


def test_a_dark_window_prints_light(example: Checked, qapp: QApplication) -> None:
    light = pdf_of(page_of(example), Paper.A4)
    show_theme(qapp, DARK)
    try:
        assert without_dates(pdf_of(page_of(example), Paper.A4)) == without_dates(light)
    finally:
        show_theme(qapp, LIGHT)


def test_where_there_is_room_each_clash_stands_in_a_sentence(example: Checked) -> None:
    words = words_of(pdf_of(page_of(example), Paper.A3))
    ahead = example.since(TODAY)
    assert f"{len(ahead)} clashes ahead" in words
    assert [clash.sentence for clash in ahead if clash.sentence not in words] == []


def test_on_less_paper_each_has_its_number_and_heading_the_grave_ones_first(example: Checked) -> None:
    words = words_of(pdf_of(page_of(example), Paper.A4))
    ahead = example.since(TODAY)
    numbers = [int(one) for one in re.findall(r"(\d+)\. \d", words.split("clashes ahead")[1])]
    grave = [n for n, clash in enumerate(ahead, 1) if severity_of(clash.kind) is Severity.STOPS]
    assert numbers == grave + [n for n in range(1, len(ahead) + 1) if n not in grave]


def test_what_is_accepted_is_counted_and_not_listed(example: Checked) -> None:
    watched = next(clash for clash in example.since(TODAY) if severity_of(clash.kind) is Severity.WATCH)
    after = example.after(apply(example.season.farm, accept(example.season.farm, watched, "it will do", lambda: "a1")))
    words = words_of(pdf_of(page_of(after), Paper.A3))
    assert f"{len(example.since(TODAY)) - 1} clashes ahead, 1 more accepted" in words
    assert watched.sentence not in words


def test_five_hundred_batches_are_one_page_too_and_what_has_no_room_in_words_is_counted() -> None:
    now = looked_at(big_farm())
    today = date(2027, 2, 1)
    pdf = pdf_of(page_of(now, today), Paper.A4)
    assert len(read(pdf).pages) == 1
    words = words_of(pdf)
    assert [place.name for place in now.season.farm.places if place.name not in words] == []
    many = len(now.since(today))
    chart, _, listed = words.partition(f"{many} clashes ahead")
    left_out = re.search(r"and (\d+) more$", listed)
    assert left_out is not None
    assert len(re.findall(r"(?<!\d)\d+\. \d", listed)) + int(left_out[1]) == many
    assert {"2028", "2036"} <= set(chart.split())  # the whole of the ten years


def test_an_empty_farm_gives_a_page_that_says_what_to_do() -> None:
    pdf = pdf_of(page_of(looked_at(Farm(Settings("farm", "Thistle Yard")))), Paper.A4)
    assert len(read(pdf).pages) == 1
    words = words_of(pdf)
    assert "Thistle Yard" in words
    assert "Add your places (Change › Add a place)" in words


@pytest.mark.parametrize("grouping", list(Grouping))
def test_places_without_a_batch_say_what_comes_next(grouping: Grouping) -> None:
    now = looked_at(Farm(Settings("farm", "Thistle Yard"), ALL_PLACES))
    words = words_of(pdf_of(page_of(now, grouping=grouping), Paper.A4))
    assert "No batch is planned yet. Add one (Change › Add a batch)" in words
    assert "clash" not in words


def test_a_farm_without_a_clash_says_so() -> None:
    now = looked_at(farm(eggs("Aster", 40, *route(BROODER))))
    assert "No clash ahead" in words_of(pdf_of(page_of(now, MONDAY), Paper.A4))


def test_lanes_by_batch_are_printed_as_the_window_shows_them(example: Checked) -> None:
    words = words_of(pdf_of(page_of(example, grouping=Grouping.BATCHES), Paper.A4))
    assert "Clover 140 eggs, 12 Apr" in words


def test_long_names_are_broken_between_words() -> None:
    long = "The long brooder with the green roof behind the third apple tree"
    shed = replace(BROODER, name=long)
    batch = "Eggs of the speckled hens which Ann and Leo have kept"
    name = "The quails of the family in the white house by the river below the mill with two oaks"
    now = looked_at(farm(shed, eggs(batch, 40, *route(shed)), settings=Settings("farm", name)))
    words = words_of(pdf_of(page_of(now, MONDAY), Paper.A4)).split("No clash ahead")[0]
    assert name in words
    known = {*long.split(), *batch.split(), *name.split()}
    ours = {"…", "E", "100", "egg", "places", "2.00", "m²"}  # three dots, a first letter where no word has room
    others = {"Setter", "Hatcher", "season", "printed", "Mon", "2027", "today", "March", "April", "February", "May"}
    cut = {w for w in words.split() if w not in known | ours | others and not w.isdigit() and w not in ("Mar", "Feb")}
    assert cut == set()


def test_a_farm_in_us_units_is_printed_on_letter_if_nobody_says_otherwise() -> None:
    assert usual_paper(Units.US) is Paper.LETTER
    assert usual_paper(Units.METRIC) is Paper.A4


def test_what_stands_on_it_is_said_in_the_language_of_the_window(example: Checked) -> None:
    german = {
        "season {year}": "Saison {year}",
        "printed {day}": "gedruckt {day}",
        "{clashes} ahead": "{clashes} voraus",
    }
    use(Language(lambda text: german.get(text, text)))
    try:
        words = words_of(pdf_of(page_of(example), Paper.A4))
    finally:
        use(ENGLISH)
    assert words.startswith("Pebble Bank Saison 2027 gedruckt ")
