"""Commands about clashes: go to the next one, accept one, take that back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from quailsched.desktop.season_canvas.scene import Picked
from quailsched.edits.acceptances import accept, take_back
from quailsched.farm.faults import FarmError
from quailsched.report.clashes import title_of
from quailsched.season.clash import Clash
from quailsched.season.severity import Severity, acceptances_of, open_clashes, severity_of
from quailsched.session.farms import new_id
from quailsched.words import say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class ClashCommands:
    """What can be done about the clashes of one window."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def next_clash(self) -> None:
        self._go(1)

    def previous_clash(self) -> None:
        self._go(-1)

    def _go(self, step: int) -> None:
        """Go along the clashes that are not accepted; where there is none, to the list of what is ahead."""
        window = self._window
        window.show_season()
        if open_clashes(window.opened.farm, window.opened.checked.since(window.today)):
            window.season.canvas.next_clash(step)
        else:
            window.season.pick(Picked())

    def accept_picked(self) -> None:
        """Ask why the picked clash is lived with; or lead to what takes that back."""
        window, clash = self._window, self._window.season.picked.clash
        window.show_season()
        if clash is None:
            window.say(say("Pick a clash first: F3 goes to the next one."))
        elif severity_of(clash.kind) is Severity.STOPS:
            title = title_of(window.opened.farm, clash)
            window.say(say("{clash}: this stops the plan, so it cannot be accepted.", clash=title))
        else:
            window.season.inspector.begin_accepting()

    def accept(self, clash: Clash, reason: str) -> None:
        """Live with ``clash``; a reason that cannot be used is told beside its field."""
        window = self._window
        try:
            change = accept(window.opened.farm, clash, reason, new_id)
        except FarmError as error:
            window.season.inspector.tell_reason_fault(str(error))
            return
        window.take_change(change)
        window.season.canvas.setFocus()

    def take_back(self, clash: Clash) -> None:
        """No longer live with ``clash``."""
        window = self._window
        found = acceptances_of(window.opened.farm, clash)
        window.take_change(take_back(window.opened.farm, *(acceptance.id for acceptance in found)))
        window.season.canvas.setFocus()
