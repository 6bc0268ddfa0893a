"""The heading of a person's column: the name, how many chores are left, and what the farm tells of the person."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QWidget

from quailsched.desktop.labels import label
from quailsched.desktop.today.page import Group
from quailsched.farm.units import count_text
from quailsched.words import say


class SectionHead(QWidget):
    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.name, self.more = label("", "panelHeading"), label("", "soft")
        self.name.setWordWrap(False)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(10)
        row.addWidget(self.name)
        row.addWidget(self.more, 1, Qt.AlignmentFlag.AlignVCenter)

    def show_group(self, group: Group, is_grouped: bool) -> None:
        """``is_grouped``: whether the farm names people at all."""
        self.name.setText(group.name if is_grouped else say("Everything"))
        number = count_text(len(group.chores), "chore")
        left = number
        if not group.left:
            left = say("{chores}, done", chores=number)
        elif group.left < len(group.chores):
            left = say("{chores}, {left} left", chores=number, left=group.left)
        self.more.setText(", ".join(part for part in (left, group.note) if part))
