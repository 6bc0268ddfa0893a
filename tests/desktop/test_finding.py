"""A batch, a place or a day by a few letters. Today is Tuesday, 6 April 2027, in the pure part."""

from datetime import date
from itertools import count

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from quailsched.desktop.finding import matches
from quailsched.desktop.main_window import MainWindow
from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm
from quailsched.words import ENGLISH, Language, use

TODAY = date(2027, 4, 6)


@pytest.fixture(scope="module")
def farm() -> Farm:
    numbers = count(1)
    return example_farm(TODAY, lambda: str(next(numbers)))


def test_names_come_in_the_order_of_how_well_they_fit(farm: Farm) -> None:
    assert [match.text for match in matches(farm, "BROO", TODAY)] == ["Tub brooder", "Shed brooder"]
    (clover,) = matches(farm, "clo", TODAY)
    assert clover.batch_id == next(batch.id for batch in farm.batches if batch.name == "Clover")
    texts = [match.text for match in matches(farm, "e", TODAY)]
    assert texts[0].startswith("Elder")  # it begins with it, others only hold it


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("12 apr", date(2027, 4, 12)),
        ("12 April 2028", date(2028, 4, 12)),
        ("12.4.", date(2027, 4, 12)),
        ("12/4", date(2027, 4, 12)),
        ("2027-04-12", date(2027, 4, 12)),
        ("apr", date(2027, 4, 1)),
        ("today", TODAY),
        ("tomorrow", date(2027, 4, 7)),
        ("in 3 weeks", date(2027, 4, 27)),
        ("10 days", date(2027, 4, 16)),
        ("thu", date(2027, 4, 8)),
        ("tuesday", date(2027, 4, 13)),  # the next one, not today
        ("week 15", date(2027, 4, 12)),  # ISO 8601: 12 April 2027 is the Monday of week 15
        ("week 2", date(2028, 1, 10)),  # that of this year is over
    ],
)
def test_days_are_read_as_people_write_them(farm: Farm, typed: str, day: date) -> None:
    assert [match.day for match in matches(farm, typed, TODAY)] == [day]


def test_a_day_of_a_batch_is_counted_from_its_setting(farm: Farm) -> None:
    (match,) = matches(farm, "day 30 of clover", TODAY)
    clover = next(batch for batch in farm.batches if batch.name == "Clover")
    assert (match.batch_id, match.day) == (clover.id, date(2027, 5, 12))  # set on 12 April


@pytest.mark.parametrize(
    "typed", ["", "  ", "xyzzy", "31 feb", "99", "0", "week 60", "day 30 of nobody", "12.13.2027.4"]
)
def test_what_is_nothing_finds_nothing(farm: Farm, typed: str) -> None:
    assert matches(farm, typed, TODAY) == []


def test_days_are_found_in_the_language_of_the_window(farm: Farm) -> None:
    german = {
        "Apr": "Apr",
        "Dec": "Dez",
        "today": "heute",
        "week": "Woche",
        "weeks": "Wochen",
        "Thursday": "Donnerstag",
    }
    use(Language(translate=lambda text: german.get(text, text)))
    try:
        days = [matches(farm, typed, TODAY)[0].day for typed in ("heute", "in 3 wochen", "woche 15", "donn", "24. dez")]
    finally:
        use(ENGLISH)
    assert days == [TODAY, date(2027, 4, 27), date(2027, 4, 12), date(2027, 4, 8), date(2027, 12, 24)]


def test_typing_a_name_and_return_picks_the_batch(window: MainWindow, qtbot: QtBot) -> None:
    window.show_setup()
    window.actions_by_name["find_something"].trigger()
    assert window.find_box.hasFocus()
    qtbot.keyClicks(window.find_box, "fer")
    qtbot.keyClick(window.find_box, Qt.Key.Key_Return)
    fern = next(batch for batch in window.opened.farm.batches if batch.name == "Fern")
    assert window.season.picked.batch_id == fern.id
    assert window.season.canvas.hasFocus()
    scene = window.season.canvas.scene()
    assert scene.left <= scene.x(fern.start) <= scene.width
    assert window.find_box.text() == ""


def test_a_day_that_is_found_is_marked_until_something_is_picked(window: MainWindow, qtbot: QtBot) -> None:
    qtbot.keyClicks(window.find_box, "1 dec")
    qtbot.keyClick(window.find_box, Qt.Key.Key_Return)
    scene = window.season.canvas.scene()
    assert scene.marked_day == date(window.today.year, 12, 1)
    assert scene.left <= scene.x(scene.marked_day) <= scene.width
    window.season.canvas.next_clash()
    assert window.season.canvas.scene().marked_day is None


def test_escape_leaves_the_field_and_changes_nothing(window: MainWindow, qtbot: QtBot) -> None:
    window.season.canvas.setFocus()
    window.actions_by_name["go_to_day"].trigger()
    qtbot.keyClicks(window.find_box, "fern")
    qtbot.keyClick(window.find_box, Qt.Key.Key_Escape)
    assert window.season.picked.batch_id is None
    assert window.season.canvas.hasFocus()
