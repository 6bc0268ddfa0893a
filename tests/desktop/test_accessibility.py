"""Those who hear the window, and those who use it by keys: every control has a name, and shows that it has the keys."""

from collections import Counter
from datetime import date

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QAccessible, QImage
from PySide6.QtWidgets import QApplication, QComboBox, QScrollArea, QTabBar, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.theme import DARK, LIGHT, Theme, show_theme
from quailsched.session.open_farm import OpenFarm
from tests.desktop.colours import contrast
from tests.desktop.everything import controls, everything, settle

_LABEL = QAccessible.RelationFlag.Label
_VAGUE = ("Add…", "Change…", "Remove…", "Remove", "A day earlier", "A day later", "Season", "Farm")


def name_of(part: QWidget) -> str:
    """What Qt tells a screen reader of ``part`` as its name: of a choice that is what is chosen, so its label counts,
    or what is told of it beside."""
    heard = QAccessible.queryAccessibleInterface(part)
    if not isinstance(part, QComboBox):
        return heard.text(QAccessible.Text.Name)
    labels = [other.text(QAccessible.Text.Name) for other, how in heard.relations() if how & _LABEL]
    described = heard.text(QAccessible.Text.Description)
    return labels[0] if labels else described if described.startswith(part.accessibleName() or "?") else ""


def test_every_control_has_a_name_and_a_vague_one_tells_more(
    opened: OpenFarm, empty: OpenFarm, today: date, qtbot: QtBot
) -> None:
    bad, seen = set(), 0
    for where, root in everything(opened, empty, today, qtbot):
        for part in controls(root):
            name = name_of(part)
            description = QAccessible.queryAccessibleInterface(part).text(QAccessible.Text.Description)
            seen += 1
            if not name or (name in _VAGUE and not description):
                bad.add(f"{where}: {type(part).__name__} {part.objectName()} “{name}”")
    assert not bad, "\n".join(sorted(bad))
    assert seen > 300


def picture(root: QWidget, part: QRect) -> memoryview:
    """The pixels of ``part`` of ``root`` as it is shown, each as one number."""
    settle()
    image = root.grab(part).toImage().convertToFormat(QImage.Format.Format_RGB32)
    return memoryview(bytes(image.constBits())).cast("I")


def room_of(part: QWidget, root: QWidget) -> QRect:
    """What of ``part`` is seen in ``root``; of tabs the one that is on."""
    room = part.tabRect(part.currentIndex()) if isinstance(part, QTabBar) else part.rect()
    return room.translated(part.mapTo(root, QPoint(0, 0))) & root.rect()


def clearly_changed(before: memoryview, after: memoryview) -> int:
    """How many pixels have a colour now that differs by 3 to 1 from what was there (WCAG 2.2, 2.4.13 b)."""
    pairs = Counter((one, other) for one, other in zip(before, after, strict=True) if one != other)
    return sum(
        number
        for (one, other), number in pairs.items()
        if contrast(f"#{one & 0xFFFFFF:06x}", f"#{other & 0xFFFFFF:06x}") >= 3
    )


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_every_kind_of_control_shows_that_it_has_the_keys(
    opened: OpenFarm, empty: OpenFarm, today: date, qtbot: QtBot, qapp: QApplication, theme: Theme
) -> None:
    show_theme(qapp, theme)
    seen: set[tuple[str, str]] = set()
    faint = []
    for where, root in everything(opened, empty, today, qtbot):
        with qtbot.waitActive(root):
            root.activateWindow()
        parts = [part for part in controls(root) if part.isEnabled()]
        for part in parts:
            kind = type(part).__name__, part.objectName().partition("_")[0]
            if kind in seen or len(parts) < 2:
                continue
            for area in root.findChildren(QScrollArea):
                if area.isAncestorOf(part):
                    area.ensureWidgetVisible(part)
            parts[parts.index(part) - 1].setFocus()
            settle()
            room = room_of(part, root)
            before = picture(root, room)
            part.setFocus()
            changed = clearly_changed(before, picture(root, room))
            assert part.hasFocus()
            seen.add(kind)
            if changed < 0.7 * 2 * (room.width() + room.height()):  # most of a line round it
                faint.append(f"{where}: {kind} {changed} of {2 * (room.width() + room.height())}")
    assert not faint, "\n".join(faint)
    assert len(seen) > 25
