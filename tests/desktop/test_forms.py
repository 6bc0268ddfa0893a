"""Forms by real keys: what is typed is saved, what is wrong is told beside its field, nothing is lost."""

import gc
import weakref
from dataclasses import replace
from datetime import date, timedelta
from typing import TypeVar

import pytest
from PySide6.QtCore import QDate, QLocale, QPoint, QPointF, Qt, QTimer
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QDateEdit, QLabel, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from quailsched.desktop.forms.batch_form import BatchForm
from quailsched.desktop.forms.confirm import remove_record
from quailsched.desktop.forms.dates import day_field, day_of
from quailsched.desktop.forms.farm_form import FarmForm
from quailsched.desktop.forms.fields import NumberField
from quailsched.desktop.forms.figure_form import FigureForm
from quailsched.desktop.forms.person_form import PersonForm
from quailsched.desktop.forms.place_form import PlaceForm
from quailsched.desktop.forms.record_form import RecordForm
from quailsched.edits.records import put
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Batch, FigureChoice, Leaving, Origin, Part, Person, Role, Span, Stay, Units
from quailsched.session.farms import open_farm
from quailsched.session.open_farm import OpenFarm

_Shown = TypeVar("_Shown", bound=QWidget)


def shown_form(form: _Shown, qtbot: QtBot) -> _Shown:
    """``form`` (or one field) on the screen, with the keys going to it; freed after the test."""
    qtbot.addWidget(form)
    form.show()
    with qtbot.waitActive(form):
        form.activateWindow()
    return form


def faults_shown(form: RecordForm) -> list[str]:
    labels = form.findChildren(QLabel, "fault")
    return [label.text() for label in labels if label.text() and label.isVisibleTo(form)]


def choose_role(form: PlaceForm, role: Role) -> None:
    form.role.setCurrentIndex(list(Role).index(role))


def test_a_place_a_person_and_a_batch_make_a_farm(empty: OpenFarm, today: date, qtbot: QtBot) -> None:
    for role, name in ((Role.CABINET, "Cabinet"), (Role.BROODER, "Tub"), (Role.PEN, "Run")):
        form = shown_form(PlaceForm(None, empty, today), qtbot)
        qtbot.keyClicks(form.name, name)
        choose_role(form, role)
        if role is Role.CABINET:
            form.egg_places.setValue(60)
        else:
            form.floor.wide.setValue(100)
            form.floor.long.setValue(130)  # 100 cm x 130 cm are 13,000 cm2
        qtbot.keyClick(form.name, Qt.Key.Key_Return)
        assert form.saved_id is not None
    assert [(p.name, p.floor_cm2, p.egg_places) for p in empty.farm.places] == [
        ("Cabinet", 0, 60),
        ("Tub", 13_000, 0),
        ("Run", 13_000, 0),
    ]
    assert [p.clean_out_days for p in empty.farm.places] == [1, 3, 3]  # a hatch tray, and the figure clean_out_days
    batch = BatchForm(None, empty, today)
    qtbot.addWidget(batch)
    batch.number.setValue(40)
    batch.start.setDate(QDate(2027, 5, 3))
    # 40 eggs x 61.31 % = 24.5, 25 whole birds; hatch on day 17: 20 May.
    assert "about 25 of 40 should hatch on Thu 20 May" in batch.follows.text()
    batch.save()
    made = empty.farm.batches[0]
    assert made.start == date(2027, 5, 3)
    assert [(s.from_day, s.to_day, s.part) for s in made.stays] == [
        (0, 18, Part.ALL),
        (18, 52, Part.ALL),  # out at 35 days: 17 + 35
        (52, None, Part.HENS),
        (52, 59, Part.COCKS),  # finished until 42 days: 17 + 42
    ]


def test_a_wrong_value_is_told_beside_its_field_and_nothing_is_written(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    before = opened.farm
    form = shown_form(PlaceForm(None, opened, today), qtbot)
    qtbot.keyClicks(form.name, "tub BROODER")
    form.save()
    shown = faults_shown(form)
    assert any("another place has it already" in text for text in shown)
    assert any("floor in cm²" in text and "a whole number from 100" in text for text in shown)
    assert form.name.text() == "tub BROODER"
    assert opened.farm == before
    assert opened.undo_label is None


def test_undo_after_a_form_gives_back_the_farm(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    before = opened.farm
    form = PersonForm(None, opened, today)
    qtbot.addWidget(form)
    qtbot.keyClicks(form.name, "Mia")
    form.away.add()
    form.save()
    mia = next(person for person in opened.farm.people if person.name == "Mia")
    assert mia.away == (Span(today, today + timedelta(days=1)),)  # one day, its last day inclusive in the form
    opened.undo()
    assert opened.farm == before


def test_opening_and_saving_any_record_changes_nothing(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    farm = opened.farm
    forms: list[RecordForm] = [BatchForm(None, opened, today, batch) for batch in farm.batches]
    forms += [PlaceForm(None, opened, today, place) for place in farm.places]
    forms += [PersonForm(None, opened, today, person) for person in farm.people]
    forms.append(FarmForm(None, opened))
    for form in forms:
        qtbot.addWidget(form)
        assert form.record() == farm.find(form.record().id)
        form.save()
    assert opened.farm == farm
    assert opened.undo_label is None


def test_a_batch_that_was_parted_opens_and_stays_one_and_no_other_can_become_one(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    old, other = opened.farm.batches[:2]
    brooder = next(place for place in opened.farm.places if place.role is Role.BROODER)
    route = (Stay(brooder.id, 0, 30, leaving=Leaving.SOLD),)
    parted = Batch(
        "parted", "Old hands", "coturnix", Origin.PARTED, today, 12, route, age_days=9, from_ids=(old.id, "gone")
    )
    opened.apply(put(opened.farm, parted))
    form = BatchForm(None, opened, today, parted)
    qtbot.addWidget(form)
    assert [form.origin.itemText(n) for n in range(form.origin.count())] == ["birds of another batch"]
    form.note.setText("the rest")
    form.save()
    assert opened.farm.batch(parted.id) == replace(parted, note="the rest")
    for batch in (None, other):
        usual = BatchForm(None, opened, today, batch)
        qtbot.addWidget(usual)
        assert [Origin(usual.origin.itemData(n)) for n in range(usual.origin.count())] == list(Origin)[:3]


def test_changing_a_batch_keeps_where_its_eggs_come_from(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    old, batch = opened.farm.batches[:2]
    opened.apply(put(opened.farm, replace(batch, from_ids=(old.id,))))
    form = BatchForm(None, opened, today, opened.farm.batch(batch.id))
    qtbot.addWidget(form)
    form.note.setText("of the best hens")
    form.save()
    assert opened.farm.batch(batch.id) == replace(batch, from_ids=(old.id,), note="of the best hens")


def test_saving_in_feet_and_fahrenheit_keeps_what_was_not_touched(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = FarmForm(None, opened)
    qtbot.addWidget(form)
    form.units.setCurrentIndex(1)
    form.save()
    assert opened.farm.settings.units is Units.US
    farm = opened.farm
    again = FarmForm(None, opened)
    qtbot.addWidget(again)
    assert again.lows[0].text() == "37.4 °F"  # 3 °C x 9/5 + 32
    assert again.record() == farm.settings
    place = PlaceForm(None, opened, today, farm.places[3])
    qtbot.addWidget(place)
    assert place.floor.area.text() == "13.99 sq ft"  # 13,000 / 929.03
    assert place.record() == farm.places[3]


def test_moving_the_start_moves_the_route_and_an_end_moves_the_next_stay(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    batch = opened.farm.batches[1]
    form = BatchForm(None, opened, today, batch)
    qtbot.addWidget(form)
    form.start.setDate(form.start.date().addDays(3))
    assert form.route.stays() == batch.stays
    brooder_out = form.route._rows[2].out
    brooder_out.setDate(brooder_out.date().addDays(2))
    form.save()
    changed = opened.farm.batch(batch.id)
    assert changed.start == batch.start + timedelta(days=3)
    assert (changed.stays[2].to_day, changed.stays[3].from_day) == (48, 48)  # 46 and two days
    assert changed.stays[4:] == batch.stays[4:]


def test_the_form_says_which_clashes_the_batch_is_in(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    clover = next(b for b in opened.farm.batches if b.name == "Clover")
    form = BatchForm(None, opened, today, clover)
    qtbot.addWidget(form)
    assert "Tub brooder is too small" in form.brings.text()
    form.number.setValue(20)
    assert "Tub brooder is too small" not in form.brings.text()


def test_an_own_figure_replaces_the_published_one_and_back(opened: OpenFarm, qtbot: QtBot) -> None:
    form = FigureForm(None, opened, "coturnix", "lockdown_day")
    qtbot.addWidget(form)
    form.own_value.setValue(14)
    form.save()
    kind = kind_in(opened.farm, "coturnix")
    assert kind.days("lockdown_day") == 14
    assert kind.figures["lockdown_day"].is_replaced
    back = FigureForm(None, opened, "coturnix", "lockdown_day")
    qtbot.addWidget(back)
    back.use_published.setChecked(True)
    back.save()
    assert kind_in(opened.farm, "coturnix").days("lockdown_day") == 15
    assert [choice.key for choice in opened.farm.choices] == ["process_day"]  # the one of the example


@pytest.mark.parametrize(
    ("points", "sentence"),
    [("0:100 x", "pairs of age and value are accepted"), ("10:100 5:120", "ages must rise"), ("0:-5", "is possible")],
)
def test_a_curve_that_makes_no_sense_is_refused_beside_its_field(
    opened: OpenFarm, qtbot: QtBot, points: str, sentence: str
) -> None:
    form = shown_form(FigureForm(None, opened, "coturnix", "floor_cm2"), qtbot)
    form.own_points.setText(points)
    form.save()
    assert any(sentence in text for text in faults_shown(form))
    assert [choice.key for choice in opened.farm.choices] == ["process_day"]  # the one of the example


def test_a_farm_that_lacks_a_first_place_says_which_one_to_add(empty: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = BatchForm(None, empty, today)
    qtbot.addWidget(form)
    assert "add a setter or a cabinet first" in form.follows.text()
    form.show()
    form.save()
    assert any("at least the place of its first day is needed" in text for text in faults_shown(form))


def test_a_file_that_cannot_be_written_is_told_and_the_form_stays(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    # Another window changed the file meanwhile.
    other = open_farm(opened.file.path)
    other.apply(put(other.farm, Person("p", "Zoe")))
    form = shown_form(PersonForm(None, opened, today), qtbot)
    qtbot.keyClicks(form.name, "Mia")
    form.save()
    assert faults_shown(form)
    assert form.saved_id is None
    assert form.isVisible()


def test_a_day_can_be_typed_and_its_weekday_follows(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = shown_form(BatchForm(None, opened, today), qtbot)
    form.start.setFocus()
    form.start.setSelectedSection(QDateEdit.Section.YearSection)
    qtbot.keyClicks(form.start, "2028-05-28")
    assert form.record().start == date(2028, 5, 28)
    assert "Sun" in [label.text() for label in form.start.findChildren(QLabel)]  # 28 May 2028 is a Sunday
    out = form.route._rows[0].out
    assert out.date() == QDate(2028, 6, 12)  # day 15, its lockdown
    assert "Mon" in [label.text() for label in out.findChildren(QLabel)]


@pytest.mark.parametrize("before", [date(2027, 4, 6), date(2027, 1, 31), date(2028, 2, 29), date(2027, 12, 31)])
@pytest.mark.parametrize("typed", ["2028-12-31", "20281231", "2028/12/31", "2028.12.31", "2028 12 31"])
def test_any_day_can_be_typed_whatever_stood_there(before: date, typed: str, qtbot: QtBot) -> None:
    field = shown_form(day_field(before), qtbot)
    field.setFocus(Qt.FocusReason.TabFocusReason)
    field.setSelectedSection(QDateEdit.Section.YearSection)
    qtbot.keyClicks(field, typed)
    qtbot.keyClick(field, Qt.Key.Key_Tab)
    assert day_of(field) == date(2028, 12, 31)


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("2027-5-3", date(2027, 5, 3)),
        ("2027/4/1", date(2027, 4, 1)),
        ("2027-1-1", date(2027, 1, 1)),
        ("2027-1-9", date(2027, 1, 9)),
        ("2027-02-28", date(2027, 2, 28)),
        ("2028-02-29", date(2028, 2, 29)),
        ("2030-11-01", date(2030, 11, 1)),
    ],
)
def test_days_typed_with_one_figure_or_at_the_end_of_february(typed: str, day: date, qtbot: QtBot) -> None:
    field = shown_form(day_field(date(2027, 12, 31)), qtbot)
    field.setFocus(Qt.FocusReason.TabFocusReason)
    field.setSelectedSection(QDateEdit.Section.YearSection)
    qtbot.keyClicks(field, typed)
    qtbot.keyClick(field, Qt.Key.Key_Tab)
    assert day_of(field) == day


def test_a_key_that_saves_takes_the_lone_figure_that_was_typed_last(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    batch = opened.farm.batches[1]
    form = shown_form(BatchForm(None, opened, today, batch), qtbot)
    form.start.setFocus()
    form.start.setSelectedSection(QDateEdit.Section.YearSection)
    qtbot.keyClicks(form.start, "2027-5-3")
    qtbot.keyClick(form.start, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert opened.farm.batch(batch.id).start == date(2027, 5, 3)


def test_a_stay_in_the_middle_can_be_removed_and_the_next_takes_its_start(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    batch = opened.farm.batches[1]
    form = shown_form(BatchForm(None, opened, today, batch), qtbot)
    stays = batch.stays
    qtbot.mouseClick(form.route._rows[2].remove, Qt.MouseButton.LeftButton)
    left = form.route.stays()
    assert [s.place_id for s in left] == [s.place_id for s in stays[:2] + stays[3:]]
    assert left[2].from_day == stays[1].to_day
    assert form.route.touched
    form.reject()
    assert opened.farm.batch(batch.id) == batch


def tab_stops(form: RecordForm, qtbot: QtBot) -> list[str]:
    """The names that the Tab key comes to, once round, from the first field."""
    stops: list[str] = []
    while len(stops) < 200:
        widget = QApplication.focusWidget()
        assert widget is not None
        name = widget.accessibleName() or str(widget.property("text"))
        if name in stops and name != stops[-1]:
            break
        if not stops or name != stops[-1]:  # a day has a stop for each of its parts
            stops.append(name)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)
    return stops


def test_the_tab_key_goes_from_top_to_bottom(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    person = shown_form(PersonForm(None, opened, today, opened.farm.people[0]), qtbot)  # away twice
    assert tab_stops(person, qtbot) == [
        *("Name", "A grown-up: may do what needs knives"),
        *("First day, 1", "Last day, 1", "Reason, 1", "Remove the days 1"),
        *("First day, 2", "Last day, 2", "Reason, 2", "Remove the days 2"),
        *("Add days away", "Building", "Note", "Cancel", "Save"),
    ]
    batch = shown_form(BatchForm(None, opened, today), qtbot)
    batch.route.add_stay()
    qtbot.waitUntil(batch.route._rows[-1].place.isVisible)
    batch.name.setFocus()
    stops = tab_stops(batch, qtbot)
    assert stops.index("Birds, stay 1") == stops.index("Oldest egg stored") + 1
    assert stops.index("Remove, stay 6") == stops.index("Add a stay") - 1
    assert stops[-4:] == ["Usual route", "Note", "Cancel", "Save"]


def test_fittings_left_empty_are_not_told_and_kept_as_typed(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = PlaceForm(None, opened, today)
    qtbot.addWidget(form)
    form.show()
    qtbot.keyClicks(form.name, "Hut")
    form.floor.area.setValue(1.0)
    assert form.fittings.feeder.text() == "not told"
    for field, typed in (
        (form.fittings.feeder, "120"),
        (form.fittings.heat_sources, "2"),
        (form.fittings.light, "14.5"),
    ):
        field.setFocus()
        field.selectAll()
        qtbot.keyClicks(field, typed)
    hut = form.record()
    assert (hut.heat_sources, hut.feeder_cm, hut.drinker_cm, hut.light_hours) == (2, 120, None, 14.5)
    form.fittings.feeder.clear()
    assert form.record().feeder_cm is None


def test_fittings_are_asked_only_where_they_fit(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = PlaceForm(None, opened, today)
    qtbot.addWidget(form)
    for field in (form.fittings.heat_sources, form.fittings.drinker, form.fittings.light):
        field.setValue(4)
    shown = {}
    for role in Role:
        choose_role(form, role)
        one = form.record()
        fields = (form.fittings.heat_sources, form.fittings.drinker, form.fittings.light)
        shown[role] = [field.isVisibleTo(form) for field in fields]
        assert [value is not None for value in (one.heat_sources, one.drinker_cm, one.light_hours)] == shown[role]
    assert shown[Role.BROODER] == [True, True, True]
    assert shown[Role.PEN] == shown[Role.GRASS_PEN] == [False, True, True]
    assert shown[Role.SETTER] == shown[Role.HATCHER] == shown[Role.CABINET] == [False, False, False]


def test_edges_in_inches_come_back_as_they_were(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    opened.apply(put(opened.farm, replace(opened.farm.settings, units=Units.US)))
    place = next(place for place in opened.farm.places if place.feeder_cm)
    form = PlaceForm(None, opened, today, place)
    qtbot.addWidget(form)
    assert form.fittings.feeder.text() == "94.5 in"  # 240 / 2.54 = 94.49
    assert form.record() == place


def test_changed_hours_of_work_are_counted_today(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    run = next(place for place in opened.farm.places if place.work_hours)
    form = PlaceForm(None, opened, today, run)
    qtbot.addWidget(form)
    assert form.record() == run
    form.work.hours.setValue(10)
    assert (form.record().work_hours, form.record().work_from) == (10, today)
    fresh = PlaceForm(None, opened, today)
    qtbot.addWidget(fresh)
    assert (fresh.record().work_hours, fresh.record().work_from) == (0, None)


def test_width_times_length_is_kept_to_the_square_centimetre(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = PlaceForm(None, opened, today)
    qtbot.addWidget(form)
    form.floor.wide.setValue(96)
    form.floor.long.setValue(33)
    assert form.floor.area.text() == "0.3168 m²"
    assert form.record().floor_cm2 == 3168  # 96 x 33
    opened.apply(put(opened.farm, replace(opened.farm.settings, units=Units.US)))
    feet = PlaceForm(None, opened, today)
    qtbot.addWidget(feet)
    feet.floor.wide.setValue(8)
    feet.floor.long.setValue(12)
    assert feet.floor.area.text() == "96.00 sq ft"
    assert feet.record().floor_cm2 == 89_187  # 96 x 929.0304 = 89,186.9


def test_the_focus_goes_into_the_field_that_is_wrong_and_says_why(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = shown_form(PlaceForm(None, opened, today, opened.farm.places[0]), qtbot)
    form.shut.add()
    _, first, last, *_ = form.shut._rows[-1]
    last.setDate(first.date().addDays(-5))
    form.save()
    assert form.isVisible()
    assert first.hasFocus()
    assert "cannot be used" in form.shut.accessibleDescription()
    last.setDate(first.date())
    form.save()
    assert opened.farm.places[0].shut[-1] == Span(today, today + timedelta(days=1))


def test_the_wheel_changes_nothing_in_passing(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = shown_form(BatchForm(None, opened, today), qtbot)
    for field in (form.number, form.kind, form.start, form.route._rows[0].place):
        point = QPointF(field.rect().center())
        turn = QWheelEvent(
            point, QPointF(field.mapToGlobal(point)), QPoint(), QPoint(0, -120), Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(field, turn)
    assert form.number.value() == 50
    assert form.kind.currentIndex() == 0
    assert form.record().start == today
    assert not form.route.touched


def test_a_new_batch_makes_its_clashes_and_an_old_one_is_in_them(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    new = BatchForm(None, opened, today)
    qtbot.addWidget(new)
    new.number.setValue(140)
    assert new.brings.text().startswith("It makes ")
    assert "alive at the move out on" in new.follows.text()
    clover = next(b for b in opened.farm.batches if b.name == "Clover")
    old = BatchForm(None, opened, today, clover)
    qtbot.addWidget(old)
    assert old.brings.text().startswith("It is in ")
    assert "new" not in old.brings.text()


def test_a_new_batch_takes_the_usual_route_until_its_route_is_touched(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    form = BatchForm(None, opened, today)
    qtbot.addWidget(form)
    of_eggs = form.route.stays()
    form.origin.setCurrentIndex(2)
    form.age.setValue(40)
    of_birds = form.route.stays()
    assert of_birds != of_eggs
    assert opened.farm.place(of_birds[0].place_id).role.is_pen
    form.route._rows[0].place.setCurrentIndex(4)
    touched = form.route.stays()
    form.age.setValue(2)
    assert form.route.stays() == touched
    qtbot.mouseClick(form.route.usual_button, Qt.MouseButton.LeftButton)
    assert form.route.stays() != touched


def test_a_figure_that_was_only_looked_at_stays_the_published_one(opened: OpenFarm, qtbot: QtBot) -> None:
    for key in ("lockdown_day", "floor_cm2", "weight_g"):
        form = FigureForm(None, opened, "coturnix", key)
        qtbot.addWidget(form)
        form.save()
    assert [choice.key for choice in opened.farm.choices] == ["process_day"]  # the one of the example


def test_a_figure_that_cannot_be_written_is_told(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    opened.apply(put(opened.farm, FigureChoice("own", "coturnix", "lockdown_day", 14)))
    other = open_farm(opened.file.path)
    other.apply(put(other.farm, Person("p", "Zoe")))
    form = shown_form(FigureForm(None, opened, "coturnix", "lockdown_day"), qtbot)
    form.use_published.setChecked(True)
    form.save()
    assert faults_shown(form)
    assert form.isVisible()


def test_keys_save_and_escape_keeps_the_farm_as_it_is(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = shown_form(PersonForm(None, opened, today), qtbot)
    qtbot.keyClicks(form.note, "half")
    qtbot.keyClick(form.note, Qt.Key.Key_Escape)
    assert not form.isVisible()
    assert len(opened.farm.people) == 2
    again = shown_form(PersonForm(None, opened, today), qtbot)
    qtbot.keyClicks(again.name, "Mia")
    qtbot.keyClick(again.note, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert again.saved_id is not None
    assert len(opened.farm.people) == 3


@pytest.mark.parametrize(("button", "is_removed"), [("Remove", True), ("Keep", False)])
def test_removing_asks_first(opened: OpenFarm, qtbot: QtBot, button: str, is_removed: bool) -> None:
    leo = opened.farm.people[1]
    told: list[str] = []

    def answer() -> None:
        box = QApplication.activeModalWidget()
        assert isinstance(box, QMessageBox)
        told.append(f"{box.text()} {box.informativeText()}")
        wanted = next(one for one in box.buttons() if one.text() == button)
        qtbot.mouseClick(wanted, Qt.MouseButton.LeftButton)

    QTimer.singleShot(0, answer)
    assert remove_record(None, opened, leo.id) is is_removed
    assert told == ["Remove person Leo? Undo brings it back."]
    assert (opened.farm.find(leo.id) is None) is is_removed


@pytest.mark.parametrize("number", range(5))
@pytest.mark.parametrize("factor", [1.0, 2.0])
def test_no_form_is_wider_than_a_small_screen(
    opened: OpenFarm, today: date, qtbot: QtBot, qapp: QApplication, number: int, factor: float
) -> None:
    font, larger = qapp.font(), qapp.font()
    larger.setPointSizeF(font.pointSizeF() * factor)
    qapp.setFont(larger)
    try:
        form: RecordForm = (
            lambda: BatchForm(None, opened, today, opened.farm.batches[2]),
            lambda: PlaceForm(None, opened, today, opened.farm.places[5]),
            lambda: PersonForm(None, opened, today, opened.farm.people[0]),
            lambda: FarmForm(None, opened),
            lambda: FigureForm(None, opened, "coturnix", "floor_cm2"),
        )[number]()
        qtbot.addWidget(form)
        form.ensurePolished()
        assert form._page.minimumSizeHint().width() <= 1240
    finally:
        qapp.setFont(font)


def test_forms_do_not_scroll_sideways_on_the_smallest_screen(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    # 1280 pixels at 200 % are 640 of the program's own; a form leaves some at its sides.
    for form in (BatchForm(None, opened, today, opened.farm.batches[2]), FarmForm(None, opened)):
        shown_form(form, qtbot)
        form.resize(620, 340)
        QApplication.processEvents()  # the bars follow the new size
        assert form._area.horizontalScrollBar().maximum() == 0


@pytest.mark.parametrize("number", range(5))
def test_forms_are_freed_when_they_are_gone(opened: OpenFarm, today: date, qtbot: QtBot, number: int) -> None:
    form: RecordForm = (
        lambda: BatchForm(None, opened, today, opened.farm.batches[2]),
        lambda: PlaceForm(None, opened, today, opened.farm.places[5]),
        lambda: PersonForm(None, opened, today, opened.farm.people[0]),
        lambda: FarmForm(None, opened),
        lambda: FigureForm(None, opened, "coturnix", "floor_cm2"),
    )[number]()
    gone: list[bool] = []
    form.destroyed.connect(lambda: gone.append(True))
    seen = weakref.ref(form)
    form.show()
    form.reject()
    form.deleteLater()
    del form
    qtbot.waitUntil(lambda: gone == [True])
    gc.collect()
    assert seen() is None


@pytest.mark.parametrize("language", ["C", "en_US", "de_DE"])
@pytest.mark.parametrize(
    ("decimals", "typed", "value"),
    [
        (1, "1,5", 1.5),
        (1, "1.5", 1.5),
        (0, "13,000", 13_000),
        (0, "13.000", 13_000),
        (0, "1,5", 1),  # never fifteen
        (0, "999999", 20_000),  # the most: it stands there, to be seen
        (1, "-3", 0),
    ],
)
def test_a_typed_number_is_never_another_one(
    qtbot: QtBot, language: str, decimals: int, typed: str, value: float
) -> None:
    field = NumberField(0, 20_000, decimals, " cm")
    field.setLocale(QLocale(language))
    qtbot.addWidget(field)
    field.show()
    field.selectAll()
    qtbot.keyClicks(field, typed)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert field.value() == value
