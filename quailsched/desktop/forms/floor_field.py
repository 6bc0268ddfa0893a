"""The floor of a place: an area, or a width and a length that fill it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from quailsched.desktop.forms.fields import NumberField
from quailsched.desktop.narrow import Beside, together
from quailsched.farm.check import MOST_FLOOR_CM2
from quailsched.farm.records import Units
from quailsched.farm.units import CM2_PER_SQ_FT
from quailsched.words import say

_CM2_PER_M2 = 10_000


class FloorField(QWidget):
    """Typed in m² and cm, or in square feet and feet; given back in whole cm².

    An area that only passes through a coarser unit comes back as it was, to the square centimetre.
    """

    changed = Signal()

    def __init__(self, floor_cm2: int, units: Units) -> None:
        super().__init__()
        is_us = units is Units.US
        self._unit_cm2 = CM2_PER_SQ_FT if is_us else _CM2_PER_M2
        self._side_cm2 = CM2_PER_SQ_FT if is_us else 1.0
        most = MOST_FLOOR_CM2 / self._unit_cm2
        self.area = NumberField(0, most, 2 if is_us else 4, say(" sq ft") if is_us else " m²", fewest=2)
        self.area.setSingleStep(0.1)
        self.wide = NumberField(0, 100_000, 2 if is_us else 1, " ft" if is_us else " cm")
        self.long = NumberField(0, 100_000, 2 if is_us else 1, " ft" if is_us else " cm")
        self.wide.setAccessibleName(say("Width, fills the floor"))
        self.long.setAccessibleName(say("Length, fills the floor"))
        self._exact_cm2 = 0
        self._show(floor_cm2)
        wide, long = together(QLabel(say("or wide")), self.wide), together(QLabel(say("long")), self.long)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(Beside(self.area, wide, long))
        self.setFocusProxy(self.area)
        for side in (self.wide, self.long):
            side.valueChanged.connect(self._multiply)
        self.area.valueChanged.connect(self.changed)

    def floor_cm2(self) -> int:
        """The area that the field shows, in whole square centimetres."""
        if abs(self._exact_cm2 / self._unit_cm2 - self.area.value()) < 0.51 * 10 ** -self.area.decimals():
            return self._exact_cm2
        return round(self.area.value() * self._unit_cm2)

    def _show(self, floor_cm2: int) -> None:
        self._exact_cm2 = floor_cm2
        self.area.setValue(floor_cm2 / self._unit_cm2)

    def _multiply(self) -> None:
        floor_cm2 = round(self.wide.value() * self.long.value() * self._side_cm2)
        if floor_cm2:
            self._show(floor_cm2)
