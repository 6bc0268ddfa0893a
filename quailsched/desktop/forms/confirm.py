"""Asking before something is removed."""

from __future__ import annotations

from PySide6.QtWidgets import QMessageBox, QWidget

from quailsched.desktop.labels import as_it_is
from quailsched.edits.records import remove
from quailsched.session.faults import FarmError, StoreError
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


def remove_record(parent: QWidget | None, opened: OpenFarm, record_id: str) -> bool:
    """Remove a record if the keeper says so; a refusal is shown in its own words."""
    try:
        change = remove(opened.farm, record_id)
        box = QMessageBox(QMessageBox.Icon.Question, "Quailsched", as_it_is(f"{change.label}?"), parent=parent)
        box.setInformativeText(say("Undo brings it back."))
        yes = box.addButton(say("Remove"), QMessageBox.ButtonRole.AcceptRole)
        box.addButton(say("Keep"), QMessageBox.ButtonRole.RejectRole)
        box.exec()
        is_wanted = box.clickedButton() is yes
        box.deleteLater()
        if not is_wanted:
            return False
        opened.apply(change)
    except (FarmError, StoreError) as error:
        QMessageBox.warning(parent, "Quailsched", as_it_is(str(error)))
        return False
    return True
