"""What the pointer tells: day, birds, age, need and have, in both groupings."""

from datetime import timedelta

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication, QToolTip

from quailsched.desktop.main_window import MainWindow
from quailsched.desktop.season_canvas.hover import hover_text, hover_text_of_batch
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.edits.change import apply
from quailsched.edits.splits import split_batch
from quailsched.season.season import Season
from tests.builders import BROODER, HATCHER, OUT, SETTER, eggs, farm, on, stay
from tests.desktop.pointing import band_of, middle_of

# 20 eggs of which every chick hatches and lives, each on 200 cm2 of the 20,000 of the brooder; hatch on day 18
# (the hatcher is left that day).
ASTER = eggs("Aster", 20, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, 40, leaving=OUT))
SEASON = Season(farm(ASTER))
HATCH = SEASON.days(ASTER).hatch


def test_a_day_of_a_place_tells_who_how_old_need_and_have() -> None:
    age = 30 - HATCH
    lines = hover_text(SEASON, BROODER, on(30), Picked()).split("\n")
    assert lines[0] == "Wed 31 Mar 2027 · Brooder"  # 1 March and 30 days
    assert lines[1].startswith(f"Aster: 20 birds, {age} days old, ")
    assert lines[2] == "need 0.40 m², have 2.00 m²"  # 20 x 200 cm2 of 20,000


def test_a_day_of_eggs_tells_their_day_and_the_places() -> None:
    lines = hover_text(SEASON, SETTER, on(4), Picked()).split("\n")
    assert lines[1].startswith("Aster: 20 eggs, day 4, ")
    assert lines[2] == "20 of 100 egg places taken"
    assert hover_text(SEASON, SETTER, on(16), Picked()).split("\n")[1] == "empty"


def test_a_day_of_a_batch_tells_where_it_is_and_the_same() -> None:
    lines = hover_text_of_batch(SEASON, ASTER, on(30), Picked()).split("\n")
    assert lines[0] == "Wed 31 Mar 2027 · Aster"
    assert f"Aster: 20 birds, {30 - HATCH} days old" in lines[1]
    assert "in Brooder (need 0.40 m², have 2.00 m²)" in lines[1]
    assert hover_text_of_batch(SEASON, ASTER, on(41), Picked()).split("\n")[1] == "not on the farm"


def point_at(window: MainWindow, at: QPoint) -> str:
    port = window.season.canvas.viewport()
    none = Qt.MouseButton.NoButton
    event = QMouseEvent(
        QEvent.Type.MouseMove, QPointF(at), QPointF(port.mapToGlobal(at)), none, none, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(port, event)
    return QToolTip.text()


def test_the_pointer_tells_it_in_both_groupings(window: MainWindow) -> None:
    canvas = window.season.canvas
    told = point_at(window, middle_of(canvas, "Clover", "Tub brooder"))
    assert "Clover: " in told
    assert "have 1.30 m²" in told
    canvas.group_by(Grouping.BATCHES)
    QApplication.processEvents()
    lane, _ = band_of(canvas, "Clover", "Clover")
    tub = next(place for place in window.opened.farm.places if place.name == "Tub brooder")
    band = next(band for band in lane.content.bands.items if band.place_id == tub.id)
    piece, scene = band.pieces[0], canvas.scene()
    y = scene.top((lane.y(piece.low) + lane.y(piece.high)) / 2)
    told = point_at(window, QPoint(round(scene.x(piece.start) + 1), round(y)))
    assert "· Clover" in told
    assert "1 day old" in told
    assert "need" in told
    assert "have" in told
    QToolTip.hideText()


def test_a_batch_that_a_preview_makes_can_be_pointed_at(window: MainWindow) -> None:
    # A way out may split a batch: the new one is in the season that is shown, not in that of the farm.
    canvas, now = window.season.canvas, window.opened.checked
    clover = next(batch for batch in now.season.farm.batches if batch.name == "Clover")
    canvas.group_by(Grouping.BATCHES)
    QApplication.processEvents()
    farm_now = now.season.farm
    shed = next(place for place in farm_now.places if place.name == "Shed brooder")
    index = next(at for at, one in enumerate(clover.stays) if farm_now.place(one.place_id).name == "Tub brooder")
    first = clover.stays[index].from_day
    day = clover.start + timedelta(days=first + 4)
    after = now.after(apply(farm_now, split_batch(farm_now, clover.id, 40, index, first, shed.id)))
    canvas.preview(after)
    (new,) = {batch.id for batch in after.season.farm.batches} - {batch.id for batch in farm_now.batches}
    lane = canvas.scene().lane_of(new)
    assert lane is not None
    canvas.verticalScrollBar().setValue(round(lane.top))
    scene = canvas.scene()
    told = point_at(window, QPoint(round(scene.x(day) + 2), round(scene.top((lane.line_y + lane.base_y) / 2))))
    assert lane.content.title in told
    QToolTip.hideText()
    canvas.end_preview()
