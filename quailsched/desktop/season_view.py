"""The Season view: canvas, inspector and the strip of free days, kept in step."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, timedelta
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, QTimer, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from quailsched.desktop.later import EmptyCard, EmptyStrip, take_place
from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.overview import Overview
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.sides import Sides
from quailsched.farm.units import count_text
from quailsched.season.clash import Clash
from quailsched.season.clashes import Checked
from quailsched.season.severity import open_clashes
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.compare_panel import ComparePanel
    from quailsched.desktop.frees_up import FreesUp
    from quailsched.desktop.inspector import Inspector
    from quailsched.desktop.season_canvas.ghosts import Ghost
    from quailsched.desktop.season_table import SeasonTable
    from quailsched.desktop.tasks import Run
    from quailsched.planner.compare import Comparison
    from quailsched.planner.ways_out import Looked, WayOut
    from quailsched.report.what_moved import Moved

_CHORES_MS, _CHORES_DAYS = 120, 14
_LOW_LINES, _LOWEST_LINES = 28, 20  # of text: a view of fewer than these is low, or has no room but for lanes
_LEAST_LETTERS = 40  # of the panel beside the lanes


class SeasonView(QWidget):
    """Shows a season; what its parts ask for is passed on by their own signals.

    The panel beside the lanes, the strip below them and the table are made when they are first asked for.
    """

    way_chosen = Signal(object)  # WayOut
    inspector_made = Signal(object)  # Inspector
    frees_up_made = Signal(object)  # FreesUp
    table_made = Signal(object)  # SeasonTable
    clashes_counted = Signal(int, int)  # how many are open and accepted: of the farm as it is, or of a preview

    def __init__(self, today: date, run: Run, parent: QWidget | None = None) -> None:
        """``run`` carries out slow work beside the window (``tasks``)."""
        super().__init__(parent)
        self.today = today
        self._run = run
        self.canvas = SeasonCanvas(today)
        self.overview = Overview(self.canvas)
        self._panel: Inspector | None = None  # until it is shown as ``inspector``
        self._comparison_wanted: object = None
        self._strip: EmptyStrip | FreesUp = EmptyStrip()  # until it is made as ``frees_up``
        self._now: Checked | None = None
        self._clashes: tuple[Clash, ...] = ()
        self._is_previewing = False
        self.first_grouping: Grouping | None = None  # of last time
        self._shown: Checked | None = None
        left = QWidget()
        column = self._column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        drawn = QWidget()
        lanes = QVBoxLayout(drawn)
        lanes.setContentsMargins(0, 0, 0, 0)
        lanes.addWidget(self.canvas, 1)
        lanes.addWidget(self.overview)
        self.ways_to_see = QStackedWidget()
        self.ways_to_see.addWidget(drawn)
        column.addWidget(self.ways_to_see, 1)
        column.addWidget(self._strip)
        self.side = QStackedWidget()
        self.side.addWidget(EmptyCard(_LEAST_LETTERS))
        self.splitter = Sides(left, self.side)
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 8, 14, 12)
        row.addWidget(self.splitter)
        self.canvas.picked.connect(self._show_side_of)
        self.canvas.picked.connect(self._show_picked)
        self.canvas.picked.connect(self._leave_comparison)
        self.canvas.previewed.connect(self._show_around)
        self._chores_timer = QTimer(self, singleShot=True, interval=_CHORES_MS)
        self._chores_timer.timeout.connect(self._count_chores)

    @cached_property
    def inspector(self) -> Inspector:
        """The panel that shows what is picked."""
        self.make_panel()
        made, self._panel = self._panel, None
        assert made is not None
        made.clash_chosen.connect(self.canvas.show_clash)
        made.batch_chosen.connect(self._pick_batch)
        made.back_asked.connect(self._pick_nothing)
        made.way_entered.connect(self._preview)
        made.way_left.connect(self._end_preview)
        made.way_chosen.connect(self.way_chosen)
        take_place(self.side, 0, made)
        self.inspector_made.emit(made)
        return made

    @cached_property
    def frees_up(self) -> FreesUp:
        """The strip that tells when each place is free."""
        from quailsched.desktop.frees_up import FreesUp

        made = FreesUp(self.today)
        made.place_wanted.connect(lambda: self.inspector.place_wanted.emit())
        empty, self._strip = self._strip, made
        if self._shown is not None:
            made.show_season(self._shown.season)
        self._column.replaceWidget(empty, made)
        empty.hide()
        empty.deleteLater()
        self._fit_strip()
        self.frees_up_made.emit(made)
        return made

    @property
    def strip_px(self) -> int:
        """How tall the strip is, to be given as ``keep_strip`` to the next window of its size: it is not made at once,
        and the lanes must not move when it is."""
        return self._strip.sizeHint().height()

    def keep_strip(self, tall: int) -> None:
        """Keep so much room for the strip until it is made."""
        if isinstance(self._strip, EmptyStrip):
            self._strip.keep(tall)

    def make_panel(self) -> None:
        """Make the panel, but do not show it yet."""
        from quailsched.desktop.inspector import Inspector

        if self._panel is None:
            self._panel = Inspector(self.today)
            if self._now is not None:
                self._panel.show_picked(self._now.season, self._clashes, self.picked)

    @cached_property
    def comparison(self) -> ComparePanel:
        """The panel that shows a trial beside the plan."""
        from quailsched.desktop.compare_panel import ComparePanel

        made = ComparePanel()
        made.clash_chosen.connect(self.canvas.show_clash)
        made.back_asked.connect(self.end_comparison)
        self.side.addWidget(made)
        return made

    @cached_property
    def table(self) -> SeasonTable:
        """The season in rows."""
        from quailsched.desktop.season_table import SeasonTable

        made = SeasonTable(self.today)
        made.batch_chosen.connect(self._pick_batch)
        made.place_asked.connect(lambda: self.inspector.place_wanted.emit())
        self.canvas.picked.connect(lambda picked: made.show_picked(picked.batch_id))
        self.ways_to_see.addWidget(made)
        self.table_made.emit(made)
        return made

    def _has(self, part: str) -> bool:
        """Whether a part has been made by now."""
        return part in self.__dict__

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self.window().focusWidget() is None:  # a window that has just opened: arrows work at once
            self.canvas.setFocus()

    def minimumSizeHint(self) -> QSize:
        """As small as it can be: the strip of free days goes on the way there."""
        hint = super().minimumSizeHint()
        gone = 0 if self._strip.isHidden() else self._strip.minimumHeight() + self._column.spacing()
        return QSize(hint.width(), hint.height() - gone)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_strip()

    def _fit_strip(self) -> None:
        lines = self.height() / self.fontMetrics().height()
        if not isinstance(self._strip, EmptyStrip):
            self._strip.show_low(lines < _LOW_LINES)
        self._strip.setVisible(lines >= _LOWEST_LINES)

    def show_season(self, now: Checked, clashes: tuple[Clash, ...], ghosts: tuple[Ghost, ...] = ()) -> None:
        """Show the season of ``now`` with those of its clashes that are ahead, and outlines of what is not in it."""
        self._now, self._clashes = now, clashes
        self._is_previewing = False
        self.canvas.show_ghosts(ghosts)
        self.canvas.show_season(now, clashes)
        self._show_around(None)
        self._show_picked(self.canvas.scene().picked)
        if self.is_table:
            self.table.show_season(now, clashes)

    def show_moved(self, moved: Sequence[Moved]) -> None:
        """Tell on the page of a batch what the step that was just taken has moved."""
        if self._now is not None:
            self.inspector.tell_moved(moved, self._now.season.farm)
            self._show_picked(self.picked)

    def _show_around(self, preview: Checked | None) -> None:
        """What stands around the canvas follows a preview too; ``preview`` is None for the farm as it is."""
        shown = preview or self._now
        if shown is None:
            return
        self._shown = shown
        if self._has("frees_up"):
            self.frees_up.show_season(shown.season, is_preview=preview is not None)
        clashes = shown.since(self.today) if preview else self._clashes
        still_open = open_clashes(shown.season.farm, clashes)
        self.overview.show_season(shown.season, still_open, is_preview=preview is not None)
        self.clashes_counted.emit(len(still_open), len(clashes) - len(still_open))
        self._chores_timer.start()

    def _count_chores(self) -> None:
        """Work takes a while on a large farm, so it is counted when a drag rests."""
        if self._shown is None:
            return
        from quailsched.chores.work_out import chores_between

        end = self.today + timedelta(days=_CHORES_DAYS)
        number = len(chores_between(self._shown.season, self.today, end))
        text = count_text(number, "chore")
        self.frees_up.show_chores(say("{chores} in the next {days} days", chores=text, days=_CHORES_DAYS))

    @property
    def is_table(self) -> bool:
        """Whether the season is shown as a table."""
        return self._has("table") and self.ways_to_see.currentWidget() is self.table

    def swap_table(self) -> None:
        """The season as a table in place of lanes, or back; what is picked stays picked."""
        if self.is_table:
            self.ways_to_see.setCurrentIndex(0)
        else:
            self.ways_to_see.setCurrentWidget(self.table)
        if self.is_table and self._now is not None:
            self.table.show_season(self._now, self._clashes)
            self.table.show_picked(self.picked.batch_id)
        self.take_focus()

    def take_focus(self) -> None:
        """The keys go to the season, as it is shown; where it is not, it comes in place of the details."""
        if not self.splitter.shows_main:
            self.splitter.show_side(False)
        self.table.take_focus() if self.is_table else self.canvas.setFocus()

    def begin(self) -> None:
        """Show the whole season of a farm that was opened; the first one in the lanes of last time."""
        if self.first_grouping is not None:
            self.canvas.group_by(self.first_grouping, is_told=False)
            self.first_grouping = None
        self.canvas.fit()
        if self._now is not None and not self._now.season.farm.batches:
            self.splitter.show_side(True)  # there stands how to begin

    def swap_side(self) -> None:
        """Tell of what is picked beside the season, or show the season alone."""
        self.splitter.show_side(not self.splitter.shows_side)
        focused = QApplication.focusWidget()
        if focused is None or not focused.isVisible() or not self.splitter.shows_side:
            self.take_focus()

    def move_picked(self) -> None:
        """Show as a menu what can be done by dragging the batch that is picked."""
        menu = self.canvas.menu()
        if menu is not None:
            menu.popup(self.mapToGlobal(self.rect().center()))

    def swap_grouping(self) -> None:
        """Lanes of batches in place of lanes of places, or back."""
        self.canvas.swap_grouping()

    @property
    def is_comparing(self) -> bool:
        """Whether the side shows a trial beside the plan, and not what is picked."""
        return self._has("comparison") and self.side.currentWidget() is self.comparison

    def show_comparison(self, name: str, work: Callable[[], Comparison]) -> None:
        """Show the trial ``name`` beside the plan, once ``work`` has compared the two."""
        self.splitter.show_side(True)
        if not self.is_comparing:
            self.comparison.show_waiting()
            self.side.setCurrentWidget(self.comparison)
        wanted = self._comparison_wanted = object()

        def show(comparison: Comparison) -> None:
            if wanted is self._comparison_wanted:  # else something has changed meanwhile
                self.comparison.show_comparison(name, comparison)

        self._run(work, show)

    def end_comparison(self) -> None:
        """Show what is picked again."""
        self._comparison_wanted = None
        if not self.is_comparing:
            return
        focused = QApplication.focusWidget()
        if focused is not None and self.comparison.isAncestorOf(focused):
            self.canvas.setFocus()  # else Qt hands it to the next button, which may be a way out
        self.side.setCurrentWidget(self.inspector)

    def _leave_comparison(self, picked: Picked) -> None:
        if picked != Picked():
            self.end_comparison()

    def pick(self, picked: Picked) -> None:
        self.canvas.pick(picked)

    @property
    def picked(self) -> Picked:
        return self.canvas.scene().picked

    def _show_side_of(self, picked: Picked) -> None:
        """Why there is a clash is what one goes to it for."""
        if picked.clash is not None:
            self.splitter.show_side(True)

    def _show_picked(self, picked: Picked) -> None:
        if self._now is None:
            return
        self._end_preview()
        if picked == Picked() and not self._has("inspector"):
            self._panel = None  # it will show this when it is made
            return
        self.inspector.show_picked(self._now.season, self._clashes, picked)
        if picked.clash is not None:
            self._find_ways(self._now, picked.clash)

    def _find_ways(self, now: Checked, clash: Clash) -> None:
        from quailsched.planner.ways_out import look_for_ways_out

        cards = self.inspector.cards

        def show(looked: Looked | None) -> None:
            if looked is not None and cards is not None and cards is self.inspector.cards:
                cards.show_ways(looked)  # else something else has been picked meanwhile

        def search() -> Looked | None:
            # Whoever walks through the clashes leaves searches behind that nobody waits for.
            return look_for_ways_out(now, clash, self.today) if cards is self.inspector.cards else None

        self._run(search, show)

    def _preview(self, way: WayOut) -> None:
        """Show the season as it would be; nothing is changed."""
        if self._now is None:
            return
        from quailsched.edits.change import apply

        after = self._now.after(apply(self._now.season.farm, way.change))
        self._is_previewing = True
        self.canvas.preview(after)

    def _end_preview(self) -> None:
        if self._is_previewing:
            self._is_previewing = False
            self.canvas.end_preview()

    def _pick_batch(self, batch_id: str) -> None:
        self.canvas.pick(Picked(batch_id=batch_id))

    def _pick_nothing(self) -> None:
        self.canvas.pick(Picked())
