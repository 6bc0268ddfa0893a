"""Changing what there is one of: name, units, cold nights."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QComboBox, QDoubleSpinBox, QGridLayout, QLabel, QLineEdit, QWidget

from quailsched.desktop.forms.fields import NumberField, name_field
from quailsched.desktop.forms.record_form import RecordForm, ask
from quailsched.farm.records import Settings, Units
from quailsched.farm.units import MONTHS
from quailsched.session.open_farm import OpenFarm
from quailsched.words import say


class FarmForm(RecordForm):
    """The settings of a farm. Night lows are typed in the units that the farm has when the form opens."""

    def __init__(self, parent: QWidget | None, opened: OpenFarm) -> None:
        super().__init__(parent, opened, say("Farm"))
        shown = opened.farm.settings
        self._before = shown
        self._is_us = shown.units is Units.US
        self.name = name_field(shown.name)
        self.units = QComboBox()
        self.units.addItems([say("metres, grams, °C"), say("feet, ounces, °F")])
        self.units.setCurrentIndex(1 if self._is_us else 0)
        self.is_known = QCheckBox(say("I know how cold a cold night gets"))
        self.is_known.setChecked(bool(shown.night_lows_c))
        self.lows = self._low_fields(shown.night_lows_c)
        self.has_latitude = QCheckBox(say("I know my latitude"))
        self.has_latitude.setChecked(shown.latitude is not None)
        self.latitude = NumberField(-90, 90, 1, say("° north"))
        self.latitude.setValue(shown.latitude or 0.0)
        self.latitude.setEnabled(shown.latitude is not None)
        self.has_latitude.toggled.connect(self.latitude.setEnabled)
        self.sure = NumberField(0, 100, 0, say(" of 100 hatches"))  # the check says what is accepted
        self.sure.setValue(shown.sure_pct)
        self.note = QLineEdit(shown.note)
        self.add_field("name", say("&Name"), self.name)
        self.add_field("units", say("&Units"), self.units)
        self.add_field(
            "is_known", say("Ni&ghts"), self.is_known, say("Without them, moves into the cold cannot be seen")
        )
        self.add_field("night_lows_c", "", self.lows_box)
        self.add_field("has_latitude", "", self.has_latitude)
        self.add_field("latitude", say("&Latitude"), self.latitude, say("South of the equator is negative"))
        self.add_field(
            "sure_pct", say("How &sure"), self.sure, say("In so many the next set has room, and enough birds")
        )
        self.add_field("note", say("N&ote"), self.note)
        self.is_known.toggled.connect(self.lows_box.setEnabled)
        self.lows_box.setEnabled(self.is_known.isChecked())

    def _low_fields(self, lows_c: tuple[float, ...]) -> list[QDoubleSpinBox]:
        self.lows_box = QWidget()
        grid = QGridLayout(self.lows_box)
        grid.setContentsMargins(0, 0, 0, 0)
        fields: list[QDoubleSpinBox] = []
        many = min(max(self.screen().availableSize().width() // (self.fontMetrics().averageCharWidth() * 23), 1), 4)
        for number, month in enumerate(map(say, MONTHS)):
            low_c = lows_c[number] if lows_c else 0.0
            field = NumberField(-80, 105, 1, " °F" if self._is_us else " °C")
            field.setValue(low_c * 9 / 5 + 32 if self._is_us else low_c)
            field.setAccessibleName(say("A cold night in {month}", month=month))
            grid.addWidget(QLabel(month), number // many, 2 * (number % many))
            grid.addWidget(field, number // many, 2 * (number % many) + 1)
            fields.append(field)
        return fields

    def _low_c(self, number: int) -> float:
        """What the field says; the value that was there if it still shows the same."""
        shown = self.lows[number].value()
        before = self._before.night_lows_c
        if before:
            as_shown = before[number] * 9 / 5 + 32 if self._is_us else before[number]
            if abs(as_shown - shown) < 0.051:
                return before[number]
        return round((shown - 32) * 5 / 9, 2) if self._is_us else shown

    def record(self) -> Settings:
        for field in (*self.lows, self.latitude, self.sure):
            field.interpretText()
        return Settings(
            id=self._before.id,
            name=self.name.text().strip(),
            units=Units.US if self.units.currentIndex() else Units.METRIC,
            night_lows_c=tuple(self._low_c(n) for n in range(12)) if self.is_known.isChecked() else (),
            latitude=self.latitude.value() if self.has_latitude.isChecked() else None,
            note=self.note.text().strip(),
            sure_pct=round(self.sure.value()),
        )


def edit_farm(parent: QWidget | None, opened: OpenFarm) -> str | None:
    """Ask for the farm's settings; their id if they were saved."""
    return ask(FarmForm(parent, opened))
