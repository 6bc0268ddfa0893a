"""Commands about records: the forms that add and change them, and taking them away."""

from __future__ import annotations

from typing import TYPE_CHECKING

from quailsched.desktop.forms.batch_form import edit_batch
from quailsched.desktop.forms.confirm import remove_record
from quailsched.desktop.forms.farm_form import edit_farm
from quailsched.desktop.forms.person_form import edit_person
from quailsched.desktop.forms.place_form import edit_place
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.farm.records import Batch

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow


class RecordCommands:
    """Open the forms of one window. What is added or changed is what is picked then."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def add_batch(self) -> None:
        self._pick_new(edit_batch(self._window, self._window.opened, self._window.today))

    def add_place(self) -> None:
        edit_place(self._window, self._window.opened, self._window.today)

    def add_person(self) -> None:
        edit_person(self._window, self._window.opened, self._window.today)

    def change_batch(self, batch_id: str) -> None:
        batch = self._window.opened.farm.find(batch_id)
        if isinstance(batch, Batch):
            self._pick_new(edit_batch(self._window, self._window.opened, self._window.today, batch))

    def change_place(self, place_id: str) -> None:
        opened = self._window.opened
        edit_place(self._window, opened, self._window.today, opened.farm.place(place_id))

    def change_farm(self) -> None:
        edit_farm(self._window, self._window.opened)

    def change_picked(self) -> None:
        if self._window.season.picked.batch_id is not None:
            self.change_batch(self._window.season.picked.batch_id)

    def remove_picked(self) -> None:
        if self._window.season.picked.batch_id is not None:
            self.remove(self._window.season.picked.batch_id)

    def remove(self, record_id: str) -> None:
        remove_record(self._window, self._window.opened, record_id)

    def _pick_new(self, batch_id: str | None) -> None:
        if batch_id is not None:
            self._window.season.pick(Picked(batch_id=batch_id))
