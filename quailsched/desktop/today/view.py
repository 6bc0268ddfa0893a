"""The Today view put together: head, cards by person, what has moved, and beside them the days to come."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QSize, Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from quailsched.chores.asks import Ask, asks_of
from quailsched.desktop.forms.fields import tab_in_order
from quailsched.desktop.today.board import Board
from quailsched.desktop.today.card import ChoreCard
from quailsched.desktop.today.chore_menu import chore_menu, give_menu, put_off_menu
from quailsched.desktop.today.head import Head
from quailsched.desktop.today.moved_box import MovedBox
from quailsched.desktop.today.nothing import NothingDue
from quailsched.desktop.today.page import DayPage, Group, day_page
from quailsched.desktop.today.section_head import SectionHead
from quailsched.desktop.today.side import Side
from quailsched.desktop.today.steps import ChoreSteps
from quailsched.edits.change import Change
from quailsched.report.what_moved import Moved, what_moved
from quailsched.session.open_farm import Notice, OpenFarm
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.chores.chore import Chore

_SIDE_LETTERS = 40  # how wide the panel is
_WIDE_LETTERS = 112  # from here on it stands beside the cards
_TALL_LINES = 26  # from here on the head stays while cards are scrolled


class TodayView(QWidget):
    """Shows the plan, whatever is looked at. Its parts are made when it is first shown."""

    change_asked = Signal(object)  # Change of the plan
    undo_asked = Signal()
    print_asked = Signal()
    batch_wanted = Signal()
    status = Signal(str)

    def __init__(self, opened: OpenFarm, today: date, colour_of: Callable[[str], int | None]) -> None:
        """``colour_of`` gives the number of a batch's colour in the theme."""
        super().__init__()
        self.opened, self.today, self.day = opened, today, today
        self._colour_of = colour_of
        self._is_built = False
        self._is_filling = False
        self._has_moved: tuple[Moved, ...] = ()  # by the last step
        self._ticked_last: str | None = None  # the chore whose tick is the last step of the history
        self.page: DayPage | None = None
        self.cards: dict[str, ChoreCard] = {}
        self._heads: dict[str, SectionHead] = {}
        opened.listen(self._changed)

    # showing

    def set_farm(self, opened: OpenFarm) -> None:
        """Another farm was opened."""
        self.opened, self.day = opened, self.today
        self._ticked_last, self._has_moved = None, ()
        opened.listen(self._changed)
        if self._is_built:
            self.moved.show_moved(())
            self.page = None
            self.board.show_sections((), self.moved)  # it must hold none of the cards that go
            for card in self.cards.values():
                _free(card)
            self.cards.clear()
            self.head.record.begin("")

    def _changed(self, _notice: Notice) -> None:
        """After every change, of whatever; it is shown if the view is."""
        self._ticked_last, self._has_moved = None, ()
        if self._is_built:
            self.moved.show_moved(())
            if self.isVisible():
                self.show_now()

    def show_now(self) -> None:
        """Show the day as the plan is now."""
        if not self._is_built:
            self._build()
        season = self.opened.plan_season
        page = self.page = day_page(season, self.day, self.today)
        trial = self.opened.trial
        self._is_filling = True  # a new size on the way waits for the cards
        try:
            self.head.show_page(page, trial.name if trial is not None else "")
            self.head.record.look()
            self.side.show_page(page, self.today)
            self._show_cards(page)
        finally:
            self._is_filling = False
        self._arrange()

    def showEvent(self, event: QShowEvent) -> None:
        """The view is gone to: it shows what there is now, and takes the keys."""
        super().showEvent(event)
        if not event.spontaneous():
            self.show_now()
            self.take_focus()

    def show_day(self, day: date) -> None:
        """Look at another day: yesterday's chores can be ticked, tomorrow's be done ahead."""
        self.day = day
        self.show_now()

    def set_today(self, today: date) -> None:
        """Midnight has passed: whoever looked at today does so still."""
        if today == self.today:
            return
        was_today, self.today = self.day == self.today, today
        if was_today:
            self.day = today
        if self._is_built and self.isVisible():
            self.show_now()

    def go_today(self) -> None:
        self.show_day(self.today)

    def record(self, batch_id: str = "") -> None:
        """Take the keys for a count, of the batch ``batch_id`` where it names none."""
        self.head.record.begin(batch_id)
        self.head.record.take_focus()

    def take_focus(self) -> None:
        """The keys go to the first chore that is to be done, or else to the line for counts."""
        card = next((card for card in self._in_order() if card.chore.is_open), None)
        card.take_focus() if card is not None else self.head.record.take_focus()

    # building

    def _build(self) -> None:
        self._is_built = True
        self.head = Head(lambda: self.opened, lambda: self.day, lambda: self.today)
        self.board, self.moved, self.side, self.nothing = Board(), MovedBox(), Side(), NothingDue()
        self.moved.show_moved(self._has_moved)
        self.steps = ChoreSteps(self)
        self._page = QWidget()
        self._page.setObjectName("panel")
        self._column = QVBoxLayout(self._page)
        self._column.setContentsMargins(0, 0, 4, 0)
        self._column.setSpacing(12)
        self._column.addWidget(self.nothing)
        self._column.addWidget(self.board)
        self._column.addStretch(1)
        self._area, self._side_area = _area(self._page), _area(QWidget())
        self._left = QVBoxLayout()
        self._left.setSpacing(12)
        self._left.addWidget(self.head)
        self._left.addWidget(self._area, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(22, 14, 14, 12)
        row.setSpacing(16)
        row.addLayout(self._left, 1)
        row.addWidget(self._side_area)
        self._side_area.setWidget(self.side)
        self._side_area.setFixedWidth(self.fontMetrics().averageCharWidth() * _SIDE_LETTERS)
        self._connect()

    def _connect(self) -> None:
        self.head.day_asked.connect(self.show_day)
        self.head.record.change_asked.connect(self.take_counted)
        self.head.record.left.connect(self.take_focus)
        self.moved.undo_asked.connect(self.undo_asked)
        self.side.day_asked.connect(self.show_day)
        self.side.chore_asked.connect(self._go_to)
        self.side.print_asked.connect(self.print_asked)
        self.side.add_asked.connect(self.add_chore)
        self.nothing.add_asked.connect(self.add_chore)
        self.nothing.batch_wanted.connect(self.batch_wanted)
        for keys, days in (("Alt+Left", -1), ("Alt+Right", 1)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(lambda step=days: self.show_day(self.day + timedelta(days=step)))

    def _show_cards(self, page: DayPage) -> None:
        """A card stays as long as its chore does, with what was typed in it."""
        season = self.opened.plan_season
        told: set[str] = set()
        focused = next((key for key, card in self.cards.items() if card.isAncestorOf(self.focusWidget())), None)
        keys_before = list(self.cards)
        wanted = {chore.key: chore for chore in page.chores}
        for key in self.cards.keys() - wanted.keys():
            _free(self.cards.pop(key))
        for key, chore in wanted.items():
            asks = asks_of(season, chore)
            card = self.cards.get(key)
            if card is not None and card.asks != tuple(ask.name for ask in asks):
                _free(self.cards.pop(key))
                card = None
            if card is None:
                card = self.cards[key] = self._card(chore, asks)
            colour = self._colour_of(chore.batch_id) if chore.batch_id else None
            tells = not any(chore.caution in one for one in told)
            card.show_chore(chore, asks, self.today, colour, tells_caution=tells)
            if chore.is_open:
                told.add(chore.caution)
        is_grouped = bool(self.opened.plan.people)
        sections = [(self._section_head(group, is_grouped), [self.cards[c.key] for c in group.chores])
                    for group in page.groups]  # fmt: skip
        for name in self._heads.keys() - {group.name for group in page.groups}:
            _free(self._heads.pop(name))
        self.board.show_sections(sections, self.moved)
        for widget in (*self._heads.values(), *self.cards.values()):
            widget.show()
        self.nothing.show_page(page, self.opened.plan)
        if focused is not None and focused not in self.cards:
            self._pass_focus_on(keys_before.index(focused))

    def _pass_focus_on(self, at: int) -> None:
        """The keys go to the card that has come where another was."""
        cards = self._in_order()
        if cards:
            cards[min(at, len(cards) - 1)].take_focus()
        else:
            self.head.record.take_focus()

    def _card(self, chore: Chore, asks: Sequence[Ask]) -> ChoreCard:
        card = ChoreCard(chore, asks)
        card.setParent(self.board)
        card.tick_asked.connect(lambda one: self.steps.tick(one))
        card.menu_asked.connect(self._open_menu)
        card.key_pressed.connect(self._press)
        card.step_asked.connect(self._step)
        return card

    def _section_head(self, group: Group, is_grouped: bool) -> SectionHead:
        head = self._heads.get(group.name)
        if head is None:
            head = self._heads[group.name] = SectionHead(self.board)
        head.show_group(group, is_grouped)
        return head

    def _in_order(self) -> list[ChoreCard]:
        return [self.cards[chore.key] for chore in self.page.chores] if self.page is not None else []

    # room

    def hasHeightForWidth(self) -> bool:
        """It scrolls: how tall its texts are is no matter of the window."""
        return False

    def minimumSizeHint(self) -> QSize:
        """What it gets by with in one column; a wide one must not hold the window wide."""
        return QSize(self.fontMetrics().averageCharWidth() * 48, self.fontMetrics().height() * 9)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._is_built and not self._is_filling:
            self._arrange()

    def _arrange(self) -> None:
        """Where the window is narrow, the panel comes below the cards; where it is low, the head scrolls with them."""
        is_wide = self.width() >= self.fontMetrics().averageCharWidth() * _WIDE_LETTERS
        is_tall = self.height() >= self.fontMetrics().height() * _TALL_LINES
        if is_wide == (self._side_area.widget() is None):
            if is_wide:
                self._side_area.setWidget(self.side)
            else:
                self._side_area.takeWidget()
                self._column.insertWidget(self._column.count() - 1, self.side)
            self.side.show()
        self._side_area.setVisible(is_wide)
        if is_tall == (self._left.indexOf(self.head) < 0):
            self._left.insertWidget(0, self.head) if is_tall else self._column.insertWidget(0, self.head)
        stops: list[QWidget] = [self.head.back, self.head.earlier, self.head.later, self.head.record.line]
        for card in self._in_order():
            stops += [card.box, *(card.fields.fields.values() if card.fields is not None else ()), card.more]
        tab_in_order(self, [*stops, *self.side.stops()])

    # doing

    def take_change(self, change: Change) -> bool:
        """Ask for a step of the plan; whether it was taken."""
        before = self.opened.plan
        self.change_asked.emit(change)
        return self.opened.plan is not before

    def take_counted(self, change: Change) -> bool:
        """The same for a step with counts: what has moved by it is told."""
        before = self.opened.plan_checked
        if not self.take_change(change):
            return False
        self._has_moved = what_moved(before, self.opened.plan_checked, self.today)
        if self._is_built:
            self.moved.show_moved(self._has_moved)
        if self._has_moved and not self.isVisible():
            first, others = self._has_moved[0].sentence, len(self._has_moved) - 1
            more = say("; and {number} more, see Today", number=others) if others else ""
            self.status.emit(say("{label}. Moved by it: {what}{more}.", label=change.label, what=first, more=more))
        return True

    def ticked(self, key: str) -> None:
        """The last step was the tick of the chore ``key``."""
        self._ticked_last = key

    def is_last_step(self, key: str) -> bool:
        return self._ticked_last == key

    def add_chore(self, batch_id: str = "") -> None:
        """Ask for a chore of the keeper's own."""
        self.steps.add_own(self.day, batch_id if isinstance(batch_id, str) else "")

    def _open_menu(self, card: ChoreCard) -> None:
        chore_menu(self, self.steps, self.opened.plan, card.chore, self.today).popup(_below(card.more))

    def _press(self, card: ChoreCard, key: int) -> None:
        chore, is_open = card.chore, card.chore.is_open
        if key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._step(card, 1 if key == Qt.Key.Key_Down else -1)
        elif key == Qt.Key.Key_Menu:
            self._open_menu(card)
        elif key == Qt.Key.Key_P and is_open:
            self._popup(card, lambda menu: put_off_menu(menu, self.steps, chore, self.today))
        elif key == Qt.Key.Key_G and is_open and self.opened.plan.people:
            self._popup(card, lambda menu: give_menu(menu, self.steps, self.opened.plan, chore))
        elif key == Qt.Key.Key_L and is_open:
            self.steps.leave_out(chore)

    def _popup(self, card: ChoreCard, fill: Callable[..., object]) -> None:
        from PySide6.QtWidgets import QMenu

        menu = QMenu(self)
        menu.aboutToHide.connect(menu.deleteLater)
        fill(menu)
        menu.popup(_below(card.box))
        menu.setActiveAction(menu.actions()[0])

    def _step(self, card: ChoreCard, step: int) -> None:
        cards = self._in_order()
        at = cards.index(card) + step
        if 0 <= at < len(cards):
            cards[at].take_focus()
            self._area.ensureWidgetVisible(cards[at])
        elif at < 0:
            self.head.record.take_focus()

    def _go_to(self, key: str) -> None:
        card = self.cards.get(key)
        if card is not None:
            card.take_focus()
            self._area.ensureWidgetVisible(card)


def _below(widget: QWidget) -> QPoint:
    return widget.mapToGlobal(QPoint(0, widget.height()))


def _free(widget: QWidget) -> None:
    widget.hide()
    widget.setParent(None)
    widget.deleteLater()


def _area(inner: QWidget) -> QScrollArea:
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setWidget(inner)
    return area
