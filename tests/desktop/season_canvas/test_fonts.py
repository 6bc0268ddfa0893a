"""Text in lines: broken between words where that can be."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QFont

from quailsched.desktop.paper.season_scene import brief
from quailsched.desktop.season_canvas.fonts import Face

pytestmark = pytest.mark.usefixtures("qapp")


def face() -> Face:
    font = QFont()
    font.setPixelSize(12)
    return Face(font)


def test_a_text_that_has_room_is_one_line() -> None:
    assert face().lines("Shed brooder", 1_000) == ["Shed brooder"]


def test_lines_end_between_words() -> None:
    room = face().width("The long brooder") + 1
    assert face().lines("The long brooder behind the shed", room) == ["The long brooder", "behind the shed"]


def test_what_is_left_over_is_three_dots_after_a_word() -> None:
    room = face().width("The long brooder") + 1
    assert face().lines("The long brooder behind the shed and more", room, most=2) == [
        "The long brooder",
        "behind the …",
    ]


def test_only_a_word_wider_than_a_line_is_broken_in_itself() -> None:
    lines = face().lines("A Donaudampfschifffahrt", face().width("Donaudampf") + 1)
    assert lines == ["A", "Donaudampf", "schifffahrt"] or "".join(lines[1:]) == "Donaudampfschifffahrt"


@given(st.text(st.characters(codec="ascii"), max_size=60), st.integers(20, 200))
def test_no_word_is_lost_and_no_line_too_wide(text: str, room: int) -> None:
    lines = face().lines(text, room)
    assert "".join("".join(lines).split()) == "".join(text.split())
    assert all(face().width(line) <= room for line in lines)


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("Clover", "Clover"),
        ("Eggs of the hens that Leo has", "Eggs of the hens that Leo …"),  # 29 letters; 28 have room
        ("Donaudampfschifffahrtsgesellschaft", "Donaudampfschifffahrtsgesel …"),
    ],
)
def test_a_long_name_on_a_band_ends_after_a_word(name: str, shown: str) -> None:
    assert brief(name) == shown
