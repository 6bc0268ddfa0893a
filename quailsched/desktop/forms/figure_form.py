"""Replacing a figure or a curve of a kind by the farm's own."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QDoubleSpinBox, QLabel, QLineEdit, QWidget

from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.edits.records import remove
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import FigureChoice
from quailsched.husbandry.figure import Figure
from quailsched.husbandry.handbook import handbook
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError, Fault
from quailsched.session.open_farm import OpenFarm


class FigureForm(RecordForm):
    """What is published, with its source, and what this farm uses instead."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, kind_id: str, key: str) -> None:
        kind = handbook()[kind_id]
        published = kind.figures.get(key) or kind.curves[key]
        super().__init__(parent, opened, f"{published.label}, {kind.name}")
        self._key, self._kind_id = key, kind_id
        self._choice = next((c for c in opened.farm.choices if (c.kind, c.key) == (kind_id, key)), None)
        self._is_curve = not isinstance(published, Figure)
        if isinstance(published, Figure):
            told = f"{published.value:g} {published.unit} ({published.low:g} to {published.high:g})"
        else:
            told = (
                f"{_points_text(published.points)} {published.unit}, by age in days"
                if published.points
                else "a formula"
            )
        self.add_field("published", "Published", _words(told))
        self.add_field("source", "Source", _words(f"{published.source_text} – {published.confidence.value}"))
        if published.note:
            self.add_field("note", "Note", _words(published.note))
        now = kind_in(opened.farm, kind_id)
        self.own_value = QDoubleSpinBox(minimum=-1e6, maximum=1e6, decimals=3, suffix=f" {published.unit}")
        self.own_points = QLineEdit()
        if self._is_curve:
            self.own_points.setText(_points_text(now.curves[key].points))
            self.add_field("value", "&Yours", self.own_points, "Age and value pairs, such as 0:103 10:155 42:310")
        else:
            self.own_value.setValue(now.figures[key].value)
            self.add_field("value", "&Yours", self.own_value)
        self.reason = QLineEdit(self._choice.reason if self._choice else "")
        self.add_field("reason", "&Why", self.reason)
        self.use_published = QCheckBox("Use the published value again")
        self.use_published.setVisible(self._choice is not None)
        self.add_line(self.use_published)

    def save(self) -> None:
        if self.use_published.isChecked() and self._choice is not None:
            self.opened.apply(remove(self.opened.farm, self._choice.id))
            self.accept()
        else:
            super().save()

    def record(self) -> FigureChoice:
        self.own_value.interpretText()
        return FigureChoice(
            id=self._choice.id if self._choice else new_id(),
            kind=self._kind_id,
            key=self._key,
            value=None if self._is_curve else self.own_value.value(),
            points=self._points() if self._is_curve else (),
            reason=self.reason.text().strip(),
        )

    def _points(self) -> tuple[tuple[float, float], ...]:
        text = self.own_points.text()
        try:
            pairs = [part.split(":") for part in text.split()]
            return tuple((float(age), float(value)) for age, value in pairs)
        except ValueError:
            accepted = "pairs of age and value are accepted, such as 0:103 10:155 42:310"
            raise FarmError([Fault("your curve", text, accepted, "value")]) from None


def _points_text(points: tuple[tuple[float, float], ...]) -> str:
    return " ".join(f"{age:g}:{value:g}" for age, value in points)


def _words(text: str) -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    return label


def edit_figure(parent: QWidget | None, opened: OpenFarm, kind_id: str, key: str) -> str | None:
    """Ask for a farm's own figure; the id of the choice that was saved."""
    return ask(FigureForm(parent, opened, kind_id, key))
