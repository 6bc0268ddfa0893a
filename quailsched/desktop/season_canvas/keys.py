"""The keyboard on the season: everything that the mouse does, and walking through batches and clashes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from quailsched.desktop.season_canvas.scale import ZOOM_STEP
from quailsched.desktop.season_canvas.scene import Picked

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.canvas import SeasonCanvas


def press(canvas: SeasonCanvas, event: QKeyEvent) -> bool:
    """Do what the key stands for; whether it stands for anything."""
    key, held, picked = Qt.Key(event.key()), event.modifiers(), canvas.scene().picked
    step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(key)
    if step and held & Qt.KeyboardModifier.AltModifier and picked.batch_id is not None:
        canvas.nudged.emit(picked.batch_id, 7 * step if held & Qt.KeyboardModifier.ShiftModifier else step)
    elif step:
        pick_along(canvas, step)
    elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
        canvas.next_clash(1 if key == Qt.Key.Key_Down else -1)
    elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and picked.batch_id is not None:
        canvas.batch_opened.emit(picked.batch_id)
    elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
        canvas.zoom(ZOOM_STEP)
    elif key == Qt.Key.Key_Minus:
        canvas.zoom(1 / ZOOM_STEP)
    elif key == Qt.Key.Key_Escape:
        if not canvas.cancel_drag():
            canvas.pick(Picked())
    elif key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
        is_down = held & Qt.KeyboardModifier.ShiftModifier
        bar = canvas.verticalScrollBar() if is_down else canvas.horizontalScrollBar()
        bar.setValue(bar.value() + (bar.pageStep() * (1 if key == Qt.Key.Key_PageDown else -1)) // 2)
    elif key == Qt.Key.Key_Home:
        canvas.go_to(canvas.today)
    else:
        return False
    return True


def pick_along(canvas: SeasonCanvas, step: int) -> None:
    """Pick the next batch in order of days, and bring its beginning into view."""
    season = canvas.season
    if season is None or not season.farm.batches:
        return
    ids = [batch.id for batch in season.farm.batches]
    picked = canvas.scene().picked.batch_id
    here = ids.index(picked) if picked in ids else (-1 if step > 0 else 0)
    batch_id = ids[(here + step) % len(ids)]
    canvas.pick(Picked(batch_id=batch_id))
    canvas.go_to_batch(batch_id)
