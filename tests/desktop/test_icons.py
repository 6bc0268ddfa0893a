"""Icons are drawn in the inks of the theme, sharp on every screen, and follow when the theme changes."""

from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QIcon, QImage
from PySide6.QtWidgets import QApplication, QMenu, QPushButton, QToolButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.actions import COMMANDS
from quailsched.desktop.icons import icon, put_on
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.menu_icons import PICTURES
from quailsched.desktop.theme import DARK, LIGHT, Theme, show_theme
from quailsched.resources import ROOT

_THEMES = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])


def opaque_ink(image: QImage) -> str:
    """The colour of the points that are drawn without any softening at an edge."""
    points = [image.pixelColor(x, y) for x in range(image.width()) for y in range(image.height())]
    (colour,) = {point.name() for point in points if point.alpha() == 255}
    return colour


def ink_of(made: QIcon, mode: QIcon.Mode = QIcon.Mode.Normal) -> str:
    return opaque_ink(made.pixmap(QSize(48, 48), mode).toImage())


@_THEMES
def test_an_icon_has_the_ink_of_the_theme_and_is_paler_where_it_can_do_nothing(
    theme: Theme, qapp: QApplication
) -> None:
    show_theme(qapp, theme)
    made = icon("keep", 48)
    assert ink_of(made) == QColor(theme.ink).name()
    assert ink_of(made, QIcon.Mode.Disabled) == QColor(theme.soft).name()  # 4.5:1 on its ground: test_theme


@pytest.mark.parametrize("ratio", [1.0, 1.25, 1.5, 1.75, 2.0])
def test_an_icon_is_drawn_for_every_screen_and_not_stretched(ratio: float, qapp: QApplication) -> None:
    drawn = icon("undo", 20).pixmap(QSize(20, 20), ratio)
    assert drawn.size() == QSize(round(20 * ratio), round(20 * ratio))
    assert QSize(round(20 * ratio), round(20 * ratio)) in icon("undo", 20).availableSizes()


def test_an_icon_grows_with_the_letters_beside_it(qtbot: QtBot) -> None:
    sizes = []
    for points in (9, 13, 18):
        button = QPushButton("Undo")
        qtbot.addWidget(button)
        font = button.font()
        font.setPointSize(points)
        button.setFont(font)
        put_on(button, "undo")
        sizes.append(button.iconSize().width())
        assert abs(sizes[-1] - button.fontMetrics().height()) <= 3
    assert sizes == sorted(set(sizes))


def test_icons_follow_when_the_theme_changes(window: MainWindow) -> None:

    def inks() -> set[str]:
        for menu in window.menuBar().findChildren(QMenu):
            menu.aboutToShow.emit()
        actions = [one.icon() for one in window.actions_by_name.values() if not one.icon().isNull()]
        assert len(actions) == len(PICTURES)
        buttons = [*window.rail.findChildren(QToolButton), window.top.undo, window.top.redo, window.top.calendar]
        return {ink_of(one) for one in [*actions, *(button.icon() for button in buttons)]}

    assert inks() == {LIGHT.ink}
    window.actions_by_name["show_dark"].trigger()
    assert inks() == {DARK.ink}
    window.actions_by_name["show_light"].trigger()
    assert inks() == {LIGHT.ink}


def test_a_row_of_a_menu_that_is_lit_has_its_icon_in_the_colour_of_its_text(window: MainWindow) -> None:
    for name, theme in (("show_dark", DARK), ("show_light", LIGHT)):
        window.actions_by_name[name].trigger()
        for menu in window.menuBar().findChildren(QMenu):
            menu.aboutToShow.emit()
        assert ink_of(window.actions_by_name["undo"].icon(), QIcon.Mode.Active) == QColor(theme.on_good).name()


def test_the_menu_marks_the_colours_that_are_chosen(window: MainWindow) -> None:
    rows = [window.actions_by_name[name] for name in ("show_auto", "show_light", "show_dark")]
    (menu,) = (one for one in window.menuBar().findChildren(QMenu) if rows[0] in one.actions())
    for chosen in (rows[2], rows[1], rows[1], rows[0]):  # the same twice: it stays marked
        chosen.trigger()
        menu.aboutToShow.emit()
        assert [one.isChecked() for one in rows] == [one is chosen for one in rows]


def test_every_picture_belongs_to_something_and_is_there() -> None:
    assert set(PICTURES) <= {command.name for command in COMMANDS}
    files = {path.stem.removesuffix("-dark") for path in (ROOT / "icons").glob("*.svg")}
    assert set(PICTURES.values()) <= files
    desktop = Path(__file__).parents[2] / "quailsched" / "desktop"
    said = "".join(path.read_text(encoding="utf-8") for path in desktop.rglob("*.py"))
    assert {name for name in files if f'"{name}"' not in said} == set()
