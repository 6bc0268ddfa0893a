"""One drag, from press to release: each move is tried on a copy, shown and told; only the last one is asked for."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF

from quailsched.desktop.season_canvas.drag import (
    Drop,
    Verdict,
    change_of,
    fitting_days,
    impossible,
    split_drop,
    verdict,
)
from quailsched.desktop.season_canvas.drag_label import DragLabel
from quailsched.desktop.season_canvas.mouse import Hold, drop_at, grab_at, moved
from quailsched.edits.change import Change, apply
from quailsched.farm.faults import FarmError
from quailsched.season.clashes import Checked

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.canvas import SeasonCanvas


class DragSession:
    """Belongs to a canvas. ``now`` is the season that the drag began with."""

    def __init__(self, canvas: SeasonCanvas, today: date) -> None:
        self._canvas, self._today = canvas, today
        self._hold: Hold | None = None
        self._now: Checked | None = None
        self._drop = Drop()
        self._change: Change | None = None
        self.label = DragLabel(canvas.viewport())

    @property
    def is_moving(self) -> bool:
        return self._hold is not None and self._hold.is_moving

    def press(self, at: QPointF, now: Checked) -> bool:
        """Take hold of the band under ``at``, if there is one; whether there is."""
        scene = self._canvas.scene()
        grab = grab_at(scene, at)
        self._hold = Hold(grab, at, scene) if grab is not None else None
        self._now, self._drop, self._change = now, Drop(), None
        return self._hold is not None

    def move(self, at: QPointF, weeks: bool) -> None:
        """The pointer has come to ``at``; ``weeks``: only whole weeks count."""
        if self._hold is None or self._now is None:
            return
        was_moving = self._hold.is_moving
        self._hold = moved(self._hold, at)
        if not self._hold.is_moving:
            return
        if not was_moving:
            held_on = self._hold.scene.day(self._hold.at.x())
            self._canvas.drag_begun(fitting_days(self._now.season, self._hold.grab, held_on))
        drop = drop_at(self._hold, self._canvas.scene(), at, weeks)
        if drop != self._drop or not was_moving:
            self._try(self._now, drop)
        self.label.stand_at(at.toPoint())

    def _try(self, now: Checked, drop: Drop) -> None:
        """Show what ``drop`` brings, or why it cannot be."""
        assert self._hold is not None
        farm, grab = now.season.farm, self._hold.grab
        self._drop, self._change = drop, None
        try:
            if drop.split:
                drop = split_drop(now, grab, drop.split, self._today)
            self._change = change_of(farm, grab, drop)
            after = now if self._change is None else now.after(apply(farm, self._change))
        except FarmError as error:
            self._change = None
            self._canvas.preview(now)
            self.label.tell(impossible(farm, grab, drop, error))
            return
        self._canvas.preview(after)
        self.label.tell(verdict(now, after, grab, drop, self._today))

    def release(self) -> Change | None:
        """Let go: the change that is asked for, None if it is none. The preview stays until it is ended."""
        change = self._change if self.is_moving else None
        self._forget()
        return change

    def cancel(self) -> bool:
        """Let go without a change; whether anything was being dragged."""
        was_moving = self.is_moving
        self._forget()
        return was_moving

    def told(self) -> Verdict | None:
        """What the label says; None if nothing is dragged."""
        return self.label.verdict if self.is_moving else None

    def _forget(self) -> None:
        self._hold = self._now = self._change = None
        self.label.hide()
