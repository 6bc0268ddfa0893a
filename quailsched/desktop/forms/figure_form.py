"""Replacing a figure or a curve of a kind by the farm's own."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QLabel, QLineEdit, QWidget

from quailsched.desktop.forms.fields import NumberField
from quailsched.desktop.forms.figure_words import points_of, points_text
from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.desktop.labels import label
from quailsched.edits.change import Change
from quailsched.edits.records import remove
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import FigureChoice
from quailsched.husbandry.figure import Curve, Figure
from quailsched.husbandry.handbook import handbook
from quailsched.report.figures import unit_text, value_text
from quailsched.session.farms import new_id
from quailsched.session.faults import FarmError, Fault
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


class FigureForm(RecordForm):
    """What is published, with its source, and what this farm uses instead."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm, kind_id: str, key: str) -> None:
        kind = handbook()[kind_id]
        published = kind.figures.get(key) or kind.curves[key]
        super().__init__(parent, opened, f"{say(published.label)}, {say(kind.name)}")
        self._key, self._kind_id = key, kind_id
        self._choice = next((c for c in opened.farm.choices if (c.kind, c.key) == (kind_id, key)), None)
        self._is_curve = isinstance(published, Curve)
        heading = label(f"{say(published.label)}, {say(kind.name)}", "strong")
        heading.setWordWrap(True)
        self.add_line(heading)
        self.add_field("published", say("Published"), _words(_published_text(published)))
        self.add_field("source", say("Source"), _words(f"{published.source_text} – {say(published.confidence.value)}"))
        if published.note:
            self.add_field("note", say("Note"), _words(published.note))
        self._add_own(published)
        self.reason = QLineEdit(self._choice.reason if self._choice else "")
        self.add_field("reason", say("&Why"), self.reason)
        self.use_published = QCheckBox(say("Use the &published value again"))
        self.use_published.setVisible(self._choice is not None)
        self.add_line(self.use_published)
        self._shown = self._typed()

    def _add_own(self, published: Figure | Curve) -> None:
        now = kind_in(self.opened.farm, self._kind_id)
        self.own_value = NumberField(-1e6, 1e6, 4, f" {unit_text(published.unit)}".rstrip())
        self.own_points = QLineEdit()
        if self._is_curve:
            self.own_points.setText(points_text(now.curves[self._key].points))
            self.own_points.setPlaceholderText(say("age:value, such as 0:103 10:155 42:310"))
            self.add_field(
                "value", say("&Yours"), self.own_points, say("Age and value pairs, such as 0:103 10:155 42:310")
            )
        else:
            self.own_value.setValue(now.figures[self._key].value)
            self.add_field("value", say("&Yours"), self.own_value)

    def _typed(self) -> tuple[str, float, str]:
        return self.own_points.text(), self.own_value.value(), self.reason.text()

    def change(self) -> Change:
        """Back to what is published, the farm's own value, or nothing where nothing was typed."""
        if self._choice is not None and self.use_published.isChecked():
            return remove(self.opened.farm, self._choice.id)
        if self._choice is None and self._typed() == self._shown:
            return Change("", ())
        return super().change()

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
            return points_of(text)
        except ValueError:
            accepted = say("pairs of age and value are accepted, such as 0:103 10:155 42:310")
            raise FarmError([Fault(say("your curve"), text, accepted, "value")]) from None


def _published_text(published: Figure | Curve) -> str:
    if isinstance(published, Figure):
        return value_text(published)
    if not published.points:
        return say("a formula")
    return say("{points} {unit}, by age in days", points=points_text(published.points), unit=unit_text(published.unit))


def _words(text: str) -> QLabel:
    words = QLabel(text)
    words.setWordWrap(True)
    return words


def edit_figure(parent: QWidget | None, opened: OpenFarm, kind_id: str, key: str) -> str | None:
    """Ask for a farm's own figure; the id of the choice that was saved."""
    return ask(FigureForm(parent, opened, kind_id, key))
