"""What a place is fitted with, and the work left on it: the fields of the place form that may stay empty."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from quailsched.desktop.forms.dates import day_field, day_of, set_day
from quailsched.desktop.forms.fields import MaybeField, NumberField
from quailsched.desktop.forms.record_form import RecordForm
from quailsched.desktop.narrow import Beside, together
from quailsched.farm.check import MOST_EDGE_CM, MOST_HEAT_SOURCES, MOST_WORK_HOURS
from quailsched.farm.records import Place, Role, Units
from quailsched.farm.units import CM_PER_INCH
from quailsched.words import say


class Fittings:
    """Heat sources, feeder, drinker and lamps; what is left empty was not told, and is not checked."""

    def __init__(self, shown: Place, units: Units) -> None:
        self._unit_cm = CM_PER_INCH if units is Units.US else 1.0
        suffix = " in" if units is Units.US else " cm"
        most = MOST_EDGE_CM / self._unit_cm
        self.heat_sources = MaybeField(MOST_HEAT_SOURCES, 0)
        self.feeder = MaybeField(most, 1, suffix)
        self.drinker = MaybeField(most, 1, suffix)
        self.light = MaybeField(24, 1, say(" hours a day"))
        self.heat_sources.show_value(shown.heat_sources)
        self.feeder.show_value(None if shown.feeder_cm is None else shown.feeder_cm / self._unit_cm)
        self.drinker.show_value(None if shown.drinker_cm is None else shown.drinker_cm / self._unit_cm)
        self.light.show_value(shown.light_hours)
        self._light_before = shown.light_hours

    def add_to(self, form: RecordForm) -> None:
        empty = say("Empty if you do not want it checked")
        lamps = say("Hang lamps by a chain and a second cord, well away from bedding: they start fires.")
        form.add_field(
            "heat_sources",
            say("&Heat sources"),
            self.heat_sources,
            say("Lamps or plates. {empty}. {lamps}", empty=empty, lamps=lamps),
        )
        form.add_field(
            "feeder_cm",
            say("Fee&der space"),
            self.feeder,
            say("Where birds can eat, both sides counted. {empty}", empty=empty),
        )
        form.add_field(
            "drinker_cm",
            say("Drin&ker space"),
            self.drinker,
            say("Where birds can drink, all round. {empty}", empty=empty),
        )
        form.add_field(
            "light_hours", say("&Light by lamps"), self.light,
            say(
                "From the first to the last hour that lamps are on; what lies between counts as lit. "
                "Empty if none is told"
            ),
        )  # fmt: skip

    def show_fitting(self, form: RecordForm, role: Role) -> None:
        form.show_field("heat_sources", role is Role.BROODER)
        for name in ("feeder_cm", "drinker_cm", "light_hours"):
            form.show_field(name, not role.holds_eggs)

    def values(self, role: Role) -> tuple[int | None, int | None, int | None, float | None]:
        """Heat sources, feeder and drinker in cm, hours of light: those that a place of ``role`` can have."""
        for field in (self.heat_sources, self.feeder, self.drinker, self.light):
            field.interpretText()
        if role.holds_eggs:
            return None, None, None, None
        heat = self.heat_sources.value_or_none() if role is Role.BROODER else None
        return None if heat is None else round(heat), self._cm(self.feeder), self._cm(self.drinker), self._light()

    def _cm(self, field: MaybeField) -> int | None:
        shown = field.value_or_none()
        return None if shown is None else round(shown * self._unit_cm)

    def _light(self) -> float | None:
        """What the field says; the hours that were there if it still shows the same."""
        shown, before = self.light.value_or_none(), self._light_before
        return before if shown is not None and before is not None and abs(shown - before) < 0.051 else shown


class WorkField(QWidget):
    """Hours of building that are left, and the day on which they were counted: today, where they are changed."""

    def __init__(self, shown: Place, today: date) -> None:
        super().__init__()
        self._before, self._today = shown, today
        self.hours = NumberField(0, MOST_WORK_HOURS, 1, say(" hours"))
        self.hours.setValue(shown.work_hours)
        self.day = day_field(shown.work_from or today)
        self.day.setAccessibleName(say("Work counted on"))
        self.day.setEnabled(shown.work_hours > 0)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(Beside(self.hours, together(QLabel(say("counted on")), self.day), is_spread=False))
        self.setFocusProxy(self.hours)
        self.hours.valueChanged.connect(self._counted)

    def _counted(self, hours: float) -> None:
        self.day.setEnabled(hours > 0)
        if day_of(self.day) == self._before.work_from:
            set_day(self.day, self._today)

    def values(self) -> tuple[float, date | None]:
        for field in (self.hours, self.day):
            field.interpretText()
        hours = self.hours.value()
        if abs(hours - self._before.work_hours) < 0.051 and bool(hours) == bool(self._before.work_hours):
            hours = self._before.work_hours
        return hours, day_of(self.day) if hours else self._before.work_from
