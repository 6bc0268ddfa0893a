"""The season as something to look at: what is drawn of it, scrolled, zoomed, previewed. No picking, no dragging.

``canvas`` adds the mouse and the keys.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from math import ceil
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QRect, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QPainter,
    QPaintEvent,
    QPalette,
    QRegion,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.geometry import Lane, in_lanes, place_lanes
from quailsched.desktop.season_canvas.grouping_switch import GroupingSwitch
from quailsched.desktop.season_canvas.labels import Ground, Label, Labels
from quailsched.desktop.season_canvas.lanes import Grouping, Timed
from quailsched.desktop.season_canvas.layout import SeasonLayout, fit_span, layout_of
from quailsched.desktop.season_canvas.mark_places import MarkPlace, MarkPlaces
from quailsched.desktop.season_canvas.paint import SeasonPainter
from quailsched.desktop.season_canvas.paint_frame import head_height, names_width
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.desktop.season_canvas.scene import Picked, Scene
from quailsched.desktop.theme import current
from quailsched.farm.records import Batch
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.season import Season

if TYPE_CHECKING:
    from quailsched.desktop.season_canvas.ghosts import Ghost
    from quailsched.desktop.season_canvas.morph import Morph

_EDGES_MS = 160
_LEAST_FIT_PX = 2.2  # pixels a day, below which names and dates have no room


class SeasonPort(QAbstractScrollArea):
    """Lanes of places, or of batches, over time."""

    previewed = Signal(object)  # Checked while another season is shown than that of ``show_real``; None at its end
    looked_at = Signal()  # other days are in view, or another season is drawn

    def __init__(self, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._make_viewport()
        self.today = today
        self._now: Checked | None = None
        self._clashes: tuple[Clash, ...] = ()
        self._real, self._shown = SeasonLayout(), SeasonLayout()  # of the farm as it is; what is drawn
        self._grouping = Grouping.PLACES
        self._lanes: tuple[Lane, ...] = ()
        self._ghosts: tuple[Ghost, ...] = ()
        self._fits: tuple[tuple[date, date], ...] = ()
        self._fonts, self._labels, self._marks = Fonts(self.font()), Labels(), MarkPlaces()
        self._left_px = 80.0
        self._scale = TimeScale(today, 5.0)
        self._picked, self._hovered = Picked(), Picked()
        self._marked_day: date | None = None
        self._marked_lane: str | None = None
        self._gone_to: tuple[date, ...] = ()  # days beyond the season that have been asked for
        self._is_fitted = True
        self._is_jumping = False
        self._rested_at = 0  # how far it was scrolled when it last lay still
        self._edges = QTimer(self, singleShot=True, interval=_EDGES_MS)
        self._edges.timeout.connect(self._mend_edges)
        self._morph: Morph | None = None
        self.switch = GroupingSwitch(self.viewport())
        self.switch.chosen.connect(lambda grouping: self.group_by(grouping))
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)  # the overview tells and does more
        self.setMinimumSize(QSize(240, 120))

    def _make_viewport(self) -> None:
        """As Qt makes one. To ask for Qt's takes 10 ms at the start: PySide makes every class that it might be of."""
        port = QWidget()
        port.setBackgroundRole(QPalette.ColorRole.Base)
        port.setAutoFillBackground(True)
        self.setViewport(port)

    @property
    def is_held(self) -> bool:
        """Whether a band is on its way: lanes stay where they are."""
        return False

    # what is shown

    @property
    def season(self) -> Season | None:
        """The season of the farm as it is, whatever is previewed."""
        return self._real.season

    @property
    def layout_shown(self) -> SeasonLayout:
        return self._shown

    @property
    def grouping(self) -> Grouping:
        return self._grouping

    def show_real(self, now: Checked, clashes: tuple[Clash, ...]) -> None:
        """Show the season of the farm as it is, with those of its clashes that are ahead."""
        self._now, self._clashes = now, clashes
        self._real = layout_of(now.season, clashes, self._grouping, self._real)
        self._labels.forget()
        self._marks.forget()
        self._show(self._real)
        self._hovered = Picked()
        if self._is_fitted:
            self.fit()

    def preview(self, other: Checked) -> None:
        """Draw another season until ``end_preview``; what is picked, and what the keys walk through, stays."""
        if other is self._now:
            self._show(self._real)
        else:
            self._show(layout_of(other.season, other.since(self.today), self._grouping, self._shown))
        self.previewed.emit(other)
        self.looked_at.emit()

    def end_preview(self) -> None:
        """Draw the season of ``show_season`` again."""
        self._fits = ()
        self.viewport().update(QRect(0, 0, self.viewport().width(), round(self._head())))
        if self._shown is not self._real:
            self._show(self._real)
        self.previewed.emit(None)
        self.looked_at.emit()

    def show_ghosts(self, ghosts: tuple[Ghost, ...]) -> None:
        """Draw these outlines with the season, until others are given. They cannot be picked."""
        if ghosts != self._ghosts:
            self._ghosts = ghosts
            self._lay_out()

    def group_by(self, grouping: Grouping, is_told: bool = True) -> None:
        """One lane for each place, or one for each batch; what is picked stays picked. ``is_told``: seen to change."""
        if grouping is self._grouping or self._now is None:
            return
        before = self.scene()
        self._grouping = grouping
        self.switch.show_chosen(grouping)
        self._real = layout_of(self._now.season, self._clashes, grouping, self._real)
        self._labels.forget()
        self._marks.forget()
        self._show(self._real)
        self.verticalScrollBar().setValue(0)
        self.show_picked()
        if is_told:
            from quailsched.desktop.season_canvas.morph import Morph

            self._morph = Morph(before, self.scene(), self.viewport(), self)
            self._morph.start()

    @property
    def is_changing(self) -> bool:
        """Whether bands are on their way from one grouping to the other."""
        return self._morph is not None and self._morph.is_running

    def swap_grouping(self) -> None:
        """The other of the two groupings."""
        self.group_by(Grouping.BATCHES if self._grouping is Grouping.PLACES else Grouping.PLACES)

    def _show(self, layout: SeasonLayout) -> None:
        """Draw ``layout``; as little as there is a difference, where it lies as the last one did."""
        before = self.scene()
        self._shown = layout
        self._place()
        is_first = before.layout.season is None
        if is_first or self._ranges() != self._shown_ranges() or self._scale.first != self.first_day():
            self._lay_out()
            return
        from quailsched.desktop.season_canvas.dirty import dirty_between

        dirty = dirty_between(before, self.scene(), self._names, self._mark_places)
        if dirty is None:
            self._lay_out()
        else:
            self.viewport().update(dirty)

    def _names(self, scene: Scene, lane: Lane) -> Timed[Label]:
        """Where the names of a lane stand."""
        ground = Ground(lane, scene.scale, scene.today, self._fonts)
        return self._labels.of(ground, scene.layout.label, *scene.days())

    def _mark_places(self, scene: Scene, lane: Lane) -> Sequence[MarkPlace]:
        """Where the marks of a lane stand."""
        return self._marks.of(scene, lane, self._fonts)

    # where it is looked at

    def fit(self) -> None:
        """Zoom so that the season fits the width, and keep it so until the keeper zooms."""
        self._is_fitted, self._gone_to = True, ()
        if not self.viewport().testAttribute(Qt.WidgetAttribute.WA_PendingResizeEvent):  # else it has no width yet
            self._fit()

    def _fit(self) -> None:
        self._place()  # the names of lanes take their part of the width
        start, end = fit_span(self._shown, self.today)
        width = max(self.viewport().width() - self._left_px, 100)
        fitting = width / (end - start).days
        self._set_scale(TimeScale(self.first_day(), 1.0).zoomed(max(fitting, _LEAST_FIT_PX)))
        self._jump(int(self._scale.x(start)))
        if fitting < _LEAST_FIT_PX:  # not all can be told apart at once: what is near comes first
            self.go_to(self.today)

    def zoom(self, factor: float, anchor_x: float | None = None) -> None:
        """Zoom about a point of the widget, the middle if none; the day under it stays under it."""
        self._is_fitted = False
        left = self._left_px
        anchor = anchor_x if anchor_x is not None else (left + self.viewport().width()) / 2
        bar = self.horizontalScrollBar()
        days = (anchor - left + bar.value()) / self._scale.day_px
        self._set_scale(self._scale.zoomed(factor))
        self._jump(round(days * self._scale.day_px - (anchor - left)))

    def look_from(self, day: date) -> None:
        """Scroll so that ``day`` stands at the left edge."""
        self._jump(ceil(self._scale.x(day)))  # rounded down, the day before would be at it

    def go_to(self, day: date) -> None:
        """Scroll so that ``day`` stands a third from the left, if it is not well in view."""
        scene = self.scene()
        if not scene.left + 40 <= scene.x(day) <= scene.width - 80:
            self._jump(round(self._scale.x(day) - (scene.width - scene.left) / 3))

    def _jump(self, x: int) -> None:
        """Scroll there at once: nobody sees it move, so that it lies still."""
        self._is_jumping = True
        self.horizontalScrollBar().setValue(x)
        self._is_jumping = False
        if self.is_scrolling:
            self._edges.stop()
            self.viewport().update()

    def show_days(self, number: int) -> None:
        """Zoom so that ``number`` days are in view: about what is picked, else about today, else about the middle."""
        scene, picked = self.scene(), self._picked
        batch = self.season.farm.find(picked.batch_id) if self.season and picked.batch_id else None
        days = [batch.start] if isinstance(batch, Batch) else [picked.clash.worst] if picked.clash else []
        xs = (scene.x(day) for day in (*days, self.today))
        width = max(scene.width - scene.left, 100)
        anchor = next((x for x in xs if scene.left <= x <= scene.width), None)
        self.zoom(width / number / scene.scale.day_px, anchor)

    def mark_day(self, day: date) -> None:
        """Bring ``day`` into view with a thin line at it, until something is picked. It may lie beyond the season:
        then there is paper up to it until the season is fitted again."""
        self.unmark()
        self._marked_day = day
        if not self.first_day() <= day < self.last_day():
            self._gone_to, self._is_fitted = (*self._gone_to, day), False
            self._lay_out()
        self.go_to(day)
        self.viewport().update()

    def unmark(self) -> None:
        """Take away what marks a day or a place that was found."""
        if self._marked_day is not None or self._marked_lane is not None:
            self._marked_day = self._marked_lane = None
            self.viewport().update()

    def show_place(self, place_id: str) -> None:
        """Bring the lane of a place into view, and mark it until something is picked."""
        self.group_by(Grouping.PLACES)
        self.unmark()
        lane = self.scene().lane_of(place_id)
        if lane is not None:
            self._marked_lane = place_id
            self._bring_up(lane)
            self.viewport().update()

    def go_to_batch(self, batch_id: str) -> None:
        """Bring the beginning of a batch into view."""
        found = [(band.start, lane) for lane in self._lanes for band in lane.content.bands.items
                 if band.batch_id == batch_id]  # fmt: skip
        if found:
            start, lane = min(found, key=lambda one: one[0])
            self.go_to(start)
            self._bring_up(lane)

    def show_picked(self) -> None:
        """Bring what is picked into view."""
        if self._picked.batch_id is not None:
            self.go_to_batch(self._picked.batch_id)
        clash = self._picked.clash
        if clash is not None:
            self.go_to(clash.first)
            lane = self.scene().lane_of(clash.place_id) or self.scene().lane_of(clash.batch_ids[0])
            if lane is not None:
                self._bring_up(lane)

    def _bring_up(self, lane: Lane) -> None:
        bar, page = self.verticalScrollBar(), self.viewport().height() - self._head()
        if not bar.value() <= lane.top or not lane.bottom <= bar.value() + page:
            bar.setValue(round(lane.top - 8))

    # geometry

    def colour_number(self, batch_id: str) -> int | None:
        """The number of a batch's colour in the theme."""
        return self.scene().layout.numbers.get(batch_id)

    def scene(self) -> Scene:
        port = self.viewport()
        return Scene(
            layout=self._shown,
            lanes=self._lanes,
            scale=self._scale,
            today=self.today,
            width=port.width(),
            height=port.height(),
            left=self._left_px,
            head=self._head(),
            dx=self.horizontalScrollBar().value(),
            dy=self.verticalScrollBar().value(),
            picked=self._picked,
            hovered=self._hovered,
            ghosts=self._ghosts,
            marked_day=self._marked_day,
            marked_lane=self._marked_lane,
            is_passing=self.is_scrolling,
            fits=self._fits if self.is_held else (),
        )

    def _span(self) -> tuple[date, date]:
        """The first day and the end of all that is drawn, and of the weeks around today."""
        spans = [(ghost.band.start, ghost.band.end) for ghost in self._ghosts]
        spans += [span for layout in (self._real, self._shown) if (span := layout.first_and_last()) is not None]
        spans += [(day, day) for day in self._gone_to]
        starts, ends = [start for start, _ in spans], [end for _, end in spans]
        return min([*starts, self.today]), max([*ends, self.today + timedelta(days=120)])

    def first_day(self) -> date:
        """The first day that can be scrolled to."""
        return self._span()[0] - timedelta(days=28)

    def last_day(self) -> date:
        """The end of the days that can be scrolled to."""
        return self._span()[1] + timedelta(days=14)

    def _head(self) -> float:
        return head_height(self._fonts)

    def _place(self) -> None:
        """Where the lanes lie; while a band is dragged, as they lay."""
        height = self.viewport().height() - self._head() - 4
        held = in_lanes(self._shown.lanes, self._lanes) if self.is_held else None
        if held is not None:
            self._lanes = held
            return
        self._lanes = place_lanes(self._shown.lanes, self._fonts.plain.height, height)
        room = self.switch.sizeHint()
        self._left_px = names_width(self._shown.season, self._shown.lanes, self._fonts, room.width() - 12.0)
        self.switch.setGeometry(4, round(self._head()) - room.height() - 4, room.width(), room.height())

    def _set_scale(self, scale: TimeScale) -> None:
        self._scale = TimeScale(self.first_day(), scale.day_px)
        self._lay_out()

    def _ranges(self) -> tuple[int, int]:
        """How far can be scrolled across and down."""
        page = round(self.viewport().width() - self._left_px)
        tall = round(self._lanes[-1].bottom) if self._lanes else 0
        room = round(self.viewport().height() - self._head())
        return max(round(self._scale.x(self.last_day())) - page, 0), max(tall - room, 0)

    def _shown_ranges(self) -> tuple[int, int]:
        return self.horizontalScrollBar().maximum(), self.verticalScrollBar().maximum()

    def _lay_out(self) -> None:
        """Place the lanes and set the ranges of the scroll bars after anything that changes sizes."""
        self._place()
        across, down = self.horizontalScrollBar(), self.verticalScrollBar()
        page = round(self.viewport().width() - self._left_px)
        if self._scale.first != self.first_day():
            at = self._scale.day(across.value())
            self._scale = TimeScale(self.first_day(), self._scale.day_px)
            across.setRange(0, self._ranges()[0])
            across.setValue(round(self._scale.x(at)))
        across.setPageStep(max(page, 1))
        across.setSingleStep(max(round(7 * self._scale.day_px), 1))
        down.setPageStep(max(round(self.viewport().height() - self._head()), 1))
        down.setSingleStep(24)
        for bar, most in zip((across, down), self._ranges(), strict=True):
            bar.setRange(0, most)
        self.looked_at.emit()
        self.viewport().update()

    # events

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fonts = Fonts(self.font())
            if self._is_fitted:
                self.fit()
            self._lay_out()

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        """Move the picture, and draw only what comes in and the head; words at the edges when it has come to rest."""
        self.looked_at.emit()
        port, left, head = self.viewport(), round(self._left_px), round(self._head())
        is_between_pixels = self.devicePixelRatioF() % 1 != 0
        if dy or self._is_jumping or is_between_pixels or abs(dx) > (port.width() - left) // 3:
            port.update()
            return
        lanes = QRect(left, head, port.width() - left, port.height() - head)
        port.scroll(dx, 0, lanes)
        port.update(QRect(0, 0, port.width(), head))
        come = QRect(left if dx > 0 else port.width() + dx - 3, head, abs(dx) + 3, lanes.height())
        gone = QRect(port.width() - 3 if dx > 0 else left, head, 3, lanes.height())  # its side of the frame
        port.update(QRegion(come) + gone)
        if not self.is_scrolling:
            self._rested_at = self.horizontalScrollBar().value() + dx
            self._draw_words_at([port.width() + dx if dx < 0 else left + dx])
        self._edges.start()

    @property
    def is_scrolling(self) -> bool:
        """Whether words still go with the picture, over its edges."""
        return self._edges.isActive()

    def _mend_edges(self) -> None:
        """Words at the edges of a picture that lies still are whole, and do not move with it: those at the edges where
        it has come to rest, and where it rested before, are drawn again."""
        scene = self.scene()
        gone = self._rested_at - scene.dx
        self._draw_words_at([x + by for x in (scene.left, scene.width) for by in (0, gone)])

    def _draw_words_at(self, edges: Sequence[float]) -> None:
        from quailsched.desktop.season_canvas.dirty import edges_of

        self.viewport().update(edges_of(self.scene(), self._fonts, edges))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._is_fitted:
            self._fit()
        self._lay_out()

    def paintEvent(self, event: QPaintEvent) -> None:
        season = self._shown.season
        if season is None:
            return
        dirty = [QRectF(rect) for rect in event.region()]  # type: ignore[attr-defined]  # missing in the stubs
        painter = QPainter(self.viewport())
        try:
            units = season.farm.settings.units
            pens = Pens(painter, self.scene(), current(), self._fonts, units, self.hasFocus(), dirty)
            if self._morph is not None and self.is_changing:
                self._morph.paint(pens)
            else:
                SeasonPainter(pens, self._labels, self._marks).paint()
        finally:
            painter.end()

    def viewportEvent(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.NativeGesture:
            from quailsched.desktop.season_canvas import wheel

            return wheel.pinch(self, event) or super().viewportEvent(event)
        return super().viewportEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        from quailsched.desktop.season_canvas import wheel

        wheel.turn(self, event)
        event.accept()
