"""The season as a widget: what is picked, opened, dragged and nudged in it.

It changes nothing by itself: what a drag asks for is tried on a copy, shown, and on release asked for once.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
)
from PySide6.QtWidgets import QToolTip, QWidget

from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.layout import layout_of
from quailsched.desktop.season_canvas.port import SeasonPort
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.farm.units import count_text
from quailsched.report.clashes import told_sentence
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.severity import open_clashes
from quailsched.words import say

if TYPE_CHECKING:
    from PySide6.QtWidgets import QMenu

    from quailsched.desktop.season_canvas.drag_session import DragSession
    from quailsched.edits.change import Change


class SeasonCanvas(SeasonPort):
    """Lanes over time that answer to the mouse and the keys. Shows what it is given with ``show_season``."""

    picked = Signal(object)  # Picked
    batch_opened = Signal(str)  # batch id
    place_opened = Signal(str)  # place id
    nudged = Signal(str, int)  # batch id, days
    change_asked = Signal(object)  # Change, from a drag or the menu
    remove_asked = Signal(str)  # batch id

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(today, parent)
        self._grabbed: tuple[QPointF, int, int] | None = None
        self._drag: DragSession | None = None  # not before something is taken hold of
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setMouseTracking(True)
        self.setAccessibleName(say("Season"))

    @property
    def is_held(self) -> bool:
        return self._drag is not None and self._drag.is_moving

    def show_season(self, now: Checked, clashes: tuple[Clash, ...]) -> None:
        """Show the season of ``now`` with ``clashes``; what is picked stays picked if it still exists."""
        self._let_go()
        self.show_real(now, clashes)
        if self._picked.batch_id is not None and now.season.farm.find(self._picked.batch_id) is None:
            self.pick(Picked())
        if self._picked.clash is not None:
            self.pick(Picked(clash=_same_clash(self._picked.clash, clashes)))
        self.setAccessibleDescription(self._spoken(self._picked))

    def group_by(self, grouping: Grouping, is_told: bool = True) -> None:
        """One lane for each place, or one for each batch; what is dragged is let go."""
        self.cancel_drag()
        super().group_by(grouping, is_told)

    def show_clash(self, clash: Clash) -> None:
        """Select ``clash`` and bring it into view."""
        self.pick(Picked(clash=clash))
        self.show_picked()

    def pick(self, picked: Picked) -> None:
        """Select a batch, a clash or nothing, and say so."""
        self.unmark()
        if picked == self._picked:
            return
        self._picked = picked
        spoken = self._spoken(picked)
        self.setAccessibleDescription(spoken)
        self.viewport().update()
        self.picked.emit(picked)
        from quailsched.desktop.season_canvas.heard import tell_picked

        tell_picked(self, spoken)

    def next_clash(self, step: int = 1) -> None:
        """Go to the next clash (or the one before) that is not accepted, round the end to the first."""
        still_open = self._open()
        here = self._clashes.index(self._picked.clash) if self._picked.clash in self._clashes else None
        at = here if here is not None else (-1 if step > 0 else 0)
        for _ in self._clashes:
            at = (at + step) % len(self._clashes)
            if self._clashes[at] in still_open:
                self.show_clash(self._clashes[at])
                return

    def _open(self) -> tuple[Clash, ...]:
        return open_clashes(self.season.farm, self._clashes) if self.season is not None else ()

    def clashes_in(self, batch_id: str, place_id: str) -> tuple[Clash, ...]:
        """Those of a batch in a place."""
        return tuple(c for c in self._clashes if c.place_id == place_id and batch_id in c.batch_ids)

    def _spoken(self, picked: Picked) -> str:
        """What a screen reader says of the selection."""
        if self.season is None:
            return ""
        if picked.clash is not None:
            return told_sentence(self.season.farm, picked.clash)
        if picked.batch_id is not None:
            batch = self.season.farm.batch(picked.batch_id)
            what = count_text(batch.number, "egg" if batch.origin.is_eggs else "bird")
            return say("Batch {batch}, {what}, {start}", batch=batch.name, what=what, start=batch.start)
        count = count_text(len(self._open()), "clash", "clashes")
        return say("{count}. Left and right go through batches, up and down through clashes.", count=count)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton or self._now is None:
            return
        scene, at = self.scene(), event.position()
        hit = scene.hit(at.x(), at.y())
        self.pick(hit)
        if hit == Picked():
            self._grabbed = (at, self.horizontalScrollBar().value(), self.verticalScrollBar().value())
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
        elif hit.batch_id is not None:
            self.take_hold(at)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._grabbed is not None:
            start, across, down = self._grabbed
            self.horizontalScrollBar().setValue(round(across - (at.x() - start.x())))
            self.verticalScrollBar().setValue(round(down - (at.y() - start.y())))
        elif event.buttons() & Qt.MouseButton.LeftButton:
            self.drag.move(at, bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        else:
            self._hover(at)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grabbed = None
        self.viewport().unsetCursor()
        if self.is_held:
            change = self.drag.release()
            self.end_preview()
            if change is not None:
                self.change_asked.emit(change)
        self._let_go()

    def take_hold(self, at: QPointF) -> bool:
        """Take the band under ``at``, to be dragged; whether there is one."""
        return self._now is not None and self.drag.press(at, self._now)

    def drag_begun(self, fits: tuple[tuple[date, date], ...]) -> None:
        """A band is on its way; on the days ``fits`` under the pointer its batch has room everywhere."""
        QToolTip.hideText()
        self._fits = fits
        self.viewport().update()
        self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    @property
    def drag(self) -> DragSession:
        if self._drag is None:
            from quailsched.desktop.season_canvas.drag_session import DragSession

            self._drag = DragSession(self, self.today)
        return self._drag

    def _let_go(self) -> bool:
        return self._drag is not None and self._drag.cancel()

    def cancel_drag(self) -> bool:
        """Let go of what is dragged without a change; whether anything was."""
        was_dragging = self._let_go()
        if was_dragging:
            self.viewport().unsetCursor()
            self.end_preview()
        return was_dragging

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        scene, at = self.scene(), event.position()
        hit = scene.hit(at.x(), at.y())
        lane = scene.lane_at(at.y())
        if hit.batch_id is not None:
            self.batch_opened.emit(hit.batch_id)
        elif at.x() < scene.left and lane is not None:
            (self.place_opened if lane.content.place is not None else self.batch_opened).emit(lane.content.id)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """By the right button of the mouse what is under it; by the key what is picked."""
        if event.reason() is QContextMenuEvent.Reason.Mouse:
            hit = self.scene().hit(event.pos().x(), event.pos().y())
            self.pick(hit if hit.batch_id is not None else self._picked)
        menu = self.menu()
        if menu is not None:
            menu.popup(event.globalPos())

    def menu(self) -> QMenu | None:
        """What can be done with the batch that is picked; None if none is."""
        batch_id = self._picked.batch_id
        if batch_id is None or self._now is None:
            return None
        from PySide6.QtWidgets import QMenu

        from quailsched.desktop.season_canvas.menu import fill

        made = QMenu(self)
        made.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        made.setToolTipsVisible(True)
        made.addAction(say("Change…"), lambda: self.batch_opened.emit(batch_id))
        made.addAction(say("Remove…"), lambda: self.remove_asked.emit(batch_id))
        made.addSeparator()
        bands = [band for lane in layout_of(self._now.season, (), Grouping.BATCHES).lanes if lane.id == batch_id
                 for band in lane.bands.items]  # fmt: skip
        fill(made, self._now, batch_id, bands, self.today, self.ask)
        return made

    def ask(self, change: Change) -> None:
        """Ask for a change that the keeper has chosen."""
        self.change_asked.emit(change)

    def leaveEvent(self, event: QEvent) -> None:
        self._set_hovered(Picked())

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.cancel_drag()
        self.viewport().update()

    def _set_hovered(self, hovered: Picked) -> None:
        if hovered != self._hovered:
            self._hovered = hovered
            self.viewport().update()

    def _hover(self, at: QPointF) -> None:
        from quailsched.desktop.season_canvas.hover import hover_text, hover_text_of_batch
        from quailsched.desktop.season_canvas.mouse import cursor_for, grab_at

        scene = self.scene()
        hit = scene.hit(at.x(), at.y())
        self._set_hovered(hit)
        shape = cursor_for(grab_at(scene, at)) if hit.batch_id is not None else None
        self.viewport().setCursor(shape) if shape is not None else self.viewport().unsetCursor()
        lane, season, text = scene.lane_at(at.y()), self.layout_shown.season, ""
        if season is not None and lane is not None and at.x() >= scene.left and at.y() > scene.head:
            place, day = lane.content.place, scene.day(at.x())
            if place is not None:
                text = hover_text(season, place, day, hit, lane.content.facts.items)
            else:
                batch = season.farm.batch(lane.content.id)
                text = hover_text_of_batch(season, batch, day, hit, lane.content.facts.items)
        if text:
            QToolTip.showText(self.viewport().mapToGlobal(at.toPoint() + QPoint(14, 18)), text, self.viewport())
        else:
            QToolTip.hideText()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        from quailsched.desktop.season_canvas import keys

        if not keys.press(self, event):
            super().keyPressEvent(event)


def _same_clash(old: Clash, clashes: tuple[Clash, ...]) -> Clash | None:
    """The clash that ``old`` has become: of one kind and place, sharing a batch, nearest in time."""
    alike = [
        c for c in clashes if (c.kind, c.place_id) == (old.kind, old.place_id) and {*c.batch_ids} & {*old.batch_ids}
    ]
    return min(alike, key=lambda c: abs((c.first - old.first).days), default=None)
