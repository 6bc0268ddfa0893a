"""What is done with a chore of the page: each is one step of the plan, taken through the view."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMessageBox

from quailsched.chores.asks import counts_of
from quailsched.chores.chore import Chore
from quailsched.desktop.forms.record_form import ask
from quailsched.desktop.labels import as_it_is
from quailsched.desktop.today.card import ChoreCard
from quailsched.desktop.today.chore_forms import LeaveOutForm, PutOffForm, due_of
from quailsched.edits.change import Change
from quailsched.edits.counts import odd_about
from quailsched.edits.marks import give, put_off, tick, untick
from quailsched.edits.records import remove
from quailsched.farm.facts import OwnChore
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError
from quailsched.session.open_farm import utc_now
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.today.view import TodayView


class ChoreSteps:
    """The steps of one view."""

    def __init__(self, view: TodayView) -> None:
        self._view = view

    def tick(self, card: ChoreCard) -> None:
        """Done, with what was counted; or, if it is done, not done. What cannot be is told on the card."""
        if card.chore.done_on is not None:
            self._untick(card.chore)
            return
        view, chore = self._view, card.chore
        on = min(view.day, view.today)
        plan = view.opened.plan
        counts = counts_of(view.opened.plan_season, chore, card.answers(), on, utc_now(), new_id)
        try:
            change = tick(plan, chore.key, due_of(chore), chore.title, on, counts)
        except FarmError as error:  # what cannot be is not asked about
            card.tell(str(error))
            return
        odd = [sentence for count in counts for sentence in odd_about(plan, count)]
        asked = " ".join([*odd, say("Tick it once more to record it all the same.")])
        if odd and card.warning != asked:
            card.tell(asked, is_warning=True)
            return
        if view.take_counted(change) if counts else view.take_change(change):
            view.ticked(chore.key)

    def _untick(self, chore: Chore) -> None:
        """Right after the tick, what was counted with it goes too; later, counts stay."""
        view = self._view
        if view.is_last_step(chore.key):
            view.undo_asked.emit()
            return
        view.take_change(untick(view.opened.plan, chore.key, due_of(chore), chore.title))
        card = view.cards.get(chore.key)
        if card is not None and card.chore.done_on is not None:
            view.status.emit(say("A count says that it is done. Undo it, or take the count back, if it is not."))

    def put_off(self, chore: Chore, day: date | None) -> None:
        view = self._view
        if day is None:
            ask(PutOffForm(view.window(), view.opened, chore, view.today))
        else:
            self._attempt(lambda: put_off(view.opened.plan, chore.key, due_of(chore), chore.title, day))

    def leave_out(self, chore: Chore) -> None:
        ask(LeaveOutForm(self._view.window(), self._view.opened, chore))

    def take_up(self, chore: Chore) -> None:
        """A chore that was left out is to be done after all."""
        self._attempt(lambda: put_off(self._view.opened.plan, chore.key, due_of(chore), chore.title, chore.day))

    def give(self, chore: Chore, person_id: str) -> None:
        self._attempt(lambda: give(self._view.opened.plan, chore.key, due_of(chore), chore.title, person_id))

    def add_own(self, day: date, batch_id: str) -> None:
        from quailsched.desktop.today.own_chore_form import OwnChoreForm

        ask(OwnChoreForm(self._view.window(), self._view.opened, day, batch_id=batch_id))

    def change_own(self, chore: Chore) -> None:
        from quailsched.desktop.today.own_chore_form import OwnChoreForm

        own = self._own(chore)
        if own is not None:
            ask(OwnChoreForm(self._view.window(), self._view.opened, self._view.day, own))

    def remove_own(self, chore: Chore) -> None:
        """The chore with all of its days, if the keeper says so."""
        own = self._own(chore)
        if own is None:
            return
        change = remove(self._view.opened.plan, own.id)
        box = QMessageBox(QMessageBox.Icon.Question, "Quailsched", as_it_is(f"{change.label}?"), parent=self._view)
        box.setInformativeText(
            say("It goes with all of its days. Undo brings it back.") if own.repeat else say("Undo brings it back.")
        )
        yes = box.addButton(say("Remove"), QMessageBox.ButtonRole.AcceptRole)
        box.addButton(say("Keep"), QMessageBox.ButtonRole.RejectRole)
        box.exec()
        if box.clickedButton() is yes:
            self._view.take_change(change)
        box.deleteLater()

    def _own(self, chore: Chore) -> OwnChore | None:
        own = self._view.opened.plan.find(chore.key.split("/")[1]) if chore.kind == "own chore" else None
        return own if isinstance(own, OwnChore) else None

    def _attempt(self, step: Callable[[], Change]) -> None:
        try:
            self._view.take_change(step())
        except FarmError as error:
            QMessageBox.warning(self._view, "Quailsched", as_it_is(str(error)))
