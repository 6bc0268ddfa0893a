"""Accepting a clash by real keys: asked for, given, told, taken back; what is accepted is quiet."""

from datetime import date

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from quailsched.desktop.acceptance_box import AcceptanceBox
from quailsched.desktop.forms.batch_outlook import clashes_text
from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.hover import hover_text
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.theme import DARK, LIGHT, show_theme
from quailsched.edits.acceptances import accept
from quailsched.edits.records import put
from quailsched.farm.records import Batch, Leaving, Origin, Place, Role, Stay
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.severity import Severity, open_clashes, severity_of
from quailsched.session.open_farm import OpenFarm

TODAY = date(2027, 4, 6)
ACCEPT = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


def the(window: MainWindow, kind: str) -> Clash:
    return next(clash for clash in clashes_of(window.opened.season, TODAY) if clash.kind == kind)


def words_of(window: MainWindow) -> list[str]:
    """What the panel beside the season says, from top to bottom."""
    QApplication.processEvents()
    panel = window.season.inspector
    shown: list[QLabel | QPushButton] = [*panel.findChildren(QLabel), *panel.findChildren(QPushButton)]
    placed = sorted(shown, key=lambda one: one.mapTo(window, QPoint(0, 0)).y())
    return [one.text() for one in placed if one.isVisible()]


def box_of(window: MainWindow) -> AcceptanceBox:
    box = window.season.inspector.acceptance
    assert box is not None
    return box


def lived_with(window: MainWindow, kind: str, reason: str = "Low cover") -> Clash:
    clash = the(window, kind)
    window.opened.apply(accept(window.opened.farm, clash, reason, lambda: f"accepted {kind}"))
    return clash


def ask_by_key(window: MainWindow, qtbot: QtBot, clash: Clash) -> AcceptanceBox:
    window.season.canvas.show_clash(clash)
    window.season.canvas.setFocus()
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_A, ACCEPT)
    return box_of(window)


def test_a_watched_clash_is_accepted_by_keys_and_undo_takes_it_back(window: MainWindow, qtbot: QtBot) -> None:
    before = window.opened.farm
    assert window.top.clashes.text() == "18 clashes ahead"
    clash = the(window, "crowd")
    box = ask_by_key(window, qtbot, clash)
    assert QApplication.focusWidget() is box.reason
    qtbot.keyClicks(box.reason, "Low cover")
    qtbot.keyClick(box.reason, Qt.Key.Key_Return)
    assert [(one.kind, one.reason) for one in window.opened.farm.acceptances] == [("crowd", "Low cover")]
    assert window.top.clashes.text() == "17 clashes ahead"
    assert "1 accepted clash" in window.top.clashes.toolTip()
    assert window.season.picked == Picked(clash=clash)
    assert "Low cover" in words_of(window)
    assert "Take acceptance back" in words_of(window)
    assert QApplication.focusWidget() is window.season.canvas
    assert window.opened.undo_label == (
        "Accept the clash of Aster and 3 more in Long run (Low cover)"  # Aster, Bracken, Clover and Dill
    )
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.opened.farm == before
    assert window.top.clashes.text() == "18 clashes ahead"
    assert "Accept…" in words_of(window)


def test_escape_leaves_it_as_it_was(window: MainWindow, qtbot: QtBot) -> None:
    before = window.opened.farm
    box = ask_by_key(window, qtbot, the(window, "cocks"))
    qtbot.keyClicks(box.reason, "Not now")
    qtbot.keyClick(box.reason, Qt.Key.Key_Escape)
    assert not box.reason.isVisible()
    assert QApplication.focusWidget() is box.first
    assert window.season.picked.clash == the(window, "cocks")
    assert window.opened.farm == before
    qtbot.keyClick(box.first, Qt.Key.Key_Space)
    assert (QApplication.focusWidget(), box.reason.text()) == (box.reason, "")


def test_an_empty_reason_is_told_beside_its_field(window: MainWindow, qtbot: QtBot) -> None:
    box = ask_by_key(window, qtbot, the(window, "cocks"))
    qtbot.keyClicks(box.reason, "  ")
    qtbot.keyClick(box.reason, Qt.Key.Key_Return)
    assert any("a word of why you live with it is needed" in text for text in words_of(window))
    assert QApplication.focusWidget() is box.reason
    assert "a word of why" in box.reason.accessibleDescription()
    assert window.opened.farm.acceptances == ()


def test_the_line_for_the_reason_comes_into_view(window: MainWindow, qtbot: QtBot) -> None:
    window.resize(900, 480)
    box = ask_by_key(window, qtbot, the(window, "cocks"))
    area = window.season.inspector
    qtbot.waitUntil(lambda: area.rect().contains(box.accept.mapTo(area, box.accept.rect().bottomRight())))


def test_what_stops_the_plan_cannot_be_accepted_and_says_so(window: MainWindow, qtbot: QtBot) -> None:
    clash = the(window, "floor")
    window.season.canvas.show_clash(clash)
    window.season.canvas.setFocus()
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_A, ACCEPT)
    assert window.statusBar().currentMessage() == (
        "Tub brooder is too small: this stops the plan, so it cannot be accepted."
    )
    assert window.season.inspector.acceptance is None
    assert "Accept…" not in words_of(window)


def test_without_a_picked_clash_the_key_says_what_to_do(window: MainWindow, qtbot: QtBot) -> None:
    window.season.canvas.setFocus()
    qtbot.keyClick(window.season.canvas, Qt.Key.Key_A, ACCEPT)
    assert window.statusBar().currentMessage() == "Pick a clash first: F3 goes to the next one."


def test_an_acceptance_is_taken_back_by_its_button_in_one_step(window: MainWindow, qtbot: QtBot) -> None:
    before = window.opened.farm
    clash = lived_with(window, "crowd")
    box = ask_by_key(window, qtbot, clash)
    assert QApplication.focusWidget() is box.first
    qtbot.keyClick(box.first, Qt.Key.Key_Space)
    assert window.opened.farm == before
    assert window.opened.undo_label == "No longer accept the clash of Aster and 3 more in Long run (Low cover)"


def test_the_keys_for_the_next_clash_pass_accepted_ones_by(window: MainWindow, qtbot: QtBot) -> None:
    accepted = lived_with(window, "crowd")
    found = clashes_of(window.opened.season, TODAY)
    left = open_clashes(window.opened.farm, found)
    canvas = window.season.canvas
    canvas.setFocus()
    seen = []
    for _ in left:
        qtbot.keyClick(canvas, Qt.Key.Key_Down)
        seen.append(window.season.picked.clash)
    assert seen == list(left)
    at = found.index(accepted)
    canvas.show_clash(accepted)
    qtbot.keyClick(canvas, Qt.Key.Key_Down)
    assert window.season.picked.clash == found[at + 1]
    canvas.show_clash(accepted)
    qtbot.keyClick(canvas, Qt.Key.Key_Up)
    assert window.season.picked.clash == found[at - 1]


def test_the_list_of_clashes_ahead_is_in_groups(window: MainWindow, qtbot: QtBot) -> None:
    lived_with(window, "crowd", "Low cover all along the north side, and the dog is away")
    told = words_of(window)
    headings = [text for text in told if text.split(" (")[0] in ("Stop the plan", "To watch", "Accepted")]
    assert headings == ["Stop the plan (14)", "To watch (3)", "Accepted (1)"]
    assert told[0] == "17 clashes ahead"
    lines = told[-1].split("\n")
    assert lines[0] == "Too many together in Long run"
    assert lines[1].startswith("18 – 30 Jun")
    assert lines[-1] == "Low cover all along the north si…"
    clashes = clashes_of(window.opened.season, TODAY)
    stopping = sum(1 for clash in clashes if severity_of(clash.kind) is Severity.STOPS)
    assert told.index("To watch (3)") - told.index("Stop the plan (14)") == stopping + 1


def test_pointer_and_screen_reader_hear_how_grave_it_is(window: MainWindow) -> None:
    clash = the(window, "crowd")
    place = window.opened.farm.place(clash.place_id)
    assert f"Watch: {clash.sentence}" in hover_text(window.opened.season, place, clash.first, Picked(clash=clash))
    lived_with(window, "crowd")
    told = hover_text(window.opened.season, place, clash.first, Picked(clash=clash))
    assert told.endswith(f"Accepted (Low cover): {clash.sentence}")
    window.season.canvas.show_clash(the(window, "floor"))
    assert window.season.canvas.accessibleDescription().startswith("Stops the plan: 77 birds of Clover")


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_an_accepted_mark_is_not_red(window: MainWindow, qapp: QApplication, theme: object) -> None:
    show_theme(qapp, theme)  # type: ignore[arg-type]

    def reds() -> int:
        """How many pixels in and around the mark are rather red, which the grey of an accepted one is not."""
        canvas, clash = window.season.canvas, the(window, "crowd")
        scene = canvas.scene()
        lane = scene.lane_of(clash.place_id)
        assert lane is not None
        mark = next(mark for mark in lane.content.marks.items if mark.clash == clash)
        left, right = round(scene.x(clash.first)) - 1, round(scene.x(clash.last))
        top = round(scene.top(lane.mark_y(mark.row)))
        image = canvas.viewport().grab().toImage()
        pixels = [image.pixelColor(x, y) for x in range(left, right) for y in range(top, top + round(lane.mark_height))]
        return sum(pixel.red() - pixel.green() > 40 for pixel in pixels)

    assert reds() > 20
    lived_with(window, "crowd")
    assert reds() == 0


def test_setup_tells_the_clashes_of_a_batch_apart(window: MainWindow) -> None:
    lived_with(window, "crowd")
    window.show_setup()
    window.setup_view.tabs.setCurrentIndex(2)
    model = window.setup_view.pages[2].model
    cells = {model.index(row, 0).data(): model.index(row, 8).data() for row in range(model.rowCount())}
    assert cells["Dill"] == (
        "Stops the plan: Two ages in Shed brooder; Too little heat in Shed brooder; Shed brooder is too small. "
        "Accepted: Too many together in Long run"
    )
    assert cells["Gorse"] == "Stops the plan: No place after Shed brooder. Watch: No time to clean out Shed brooder"
    assert set(cells) == {batch.name for batch in window.opened.farm.batches}


def test_the_form_of_a_batch_tells_how_grave_each_clash_is(window: MainWindow) -> None:
    crowd, floor = lived_with(window, "crowd"), the(window, "floor")
    assert clashes_text(window.opened.farm, [crowd, floor], [floor], TODAY) == (
        "It is in 2 clashes, 1 of them new:\n"
        "• Tub brooder is too small, 11 – 26 May (stops the plan)\n"
        "• Too many together in Long run, 18 – 30 Jun (accepted)"
    )


def test_where_all_is_accepted_the_bar_is_calm_and_leads_to_the_list(
    window: MainWindow, empty: OpenFarm, qtbot: QtBot
) -> None:
    # Ten grown birds for five days in a pen that is calm from 22 on, 60,000 cm2 / 2,787.
    pen = Place("pen", "Pen", Role.PEN, floor_cm2=60_000)
    stays = (Stay("pen", 0, 5, leaving=Leaving.SOLD),)
    empty.apply(put(empty.farm, pen))
    empty.apply(put(empty.farm, Batch("b", "Aster", "coturnix", Origin.BOUGHT_BIRDS, TODAY, 10, stays, age_days=30)))
    window.show_farm(empty)
    clash = lived_with(window, "calm", "Sold on Sunday")
    assert window.top.clashes.text() == "1 accepted clash ahead"
    assert window.top.clashes.objectName() == "calm"
    window.season.canvas.show_clash(clash)
    qtbot.mouseClick(window.top.clashes, Qt.MouseButton.LeftButton)
    assert window.season.picked == Picked()
    assert words_of(window)[0] == "No clash ahead but accepted ones"
    assert "Accepted (1)" in words_of(window)


def button_of(window: MainWindow, start: str) -> QPushButton:
    QApplication.processEvents()
    panel = window.season.inspector
    return next(one for one in panel.findChildren(QPushButton) if one.text().startswith(start) and one.isVisible())


def test_keys_stay_in_the_panel_when_its_page_turns(window: MainWindow, qtbot: QtBot) -> None:
    before = window.opened.farm
    row = button_of(window, "Too many together")
    row.setFocus()
    qtbot.keyClick(row, Qt.Key.Key_Space)
    assert window.season.picked == Picked(clash=the(window, "crowd"))
    back = QApplication.focusWidget()
    assert isinstance(back, QPushButton)
    assert back.text() == "All clashes"
    qtbot.keyClick(back, Qt.Key.Key_Space)
    assert QApplication.focusWidget() is button_of(window, "Long run is not built")  # the first row
    dill = next(batch for batch in before.batches if batch.name == "Dill")
    window.season.pick(Picked(batch_id=dill.id))
    button_of(window, "A day later").setFocus()
    for _ in range(2):
        later = QApplication.focusWidget()
        assert later is button_of(window, "A day later")
        qtbot.keyClick(later, Qt.Key.Key_Space)
    assert (window.opened.farm.batch(dill.id).start - dill.start).days == 2


def test_each_batch_of_a_clash_is_a_press_away(window: MainWindow, qtbot: QtBot) -> None:
    window.season.canvas.show_clash(the(window, "crowd"))
    qtbot.mouseClick(button_of(window, "Show Clover"), Qt.MouseButton.LeftButton)
    clover = next(batch for batch in window.opened.farm.batches if batch.name == "Clover")
    assert window.season.picked == Picked(batch_id=clover.id)
