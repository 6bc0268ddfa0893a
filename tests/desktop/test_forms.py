"""Forms by real keys: what is typed is saved, what is wrong is told beside its field, nothing is lost."""

import gc
import weakref
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from quailsched.desktop.forms.batch_form import BatchForm
from quailsched.desktop.forms.farm_form import FarmForm
from quailsched.desktop.forms.figure_form import FigureForm
from quailsched.desktop.forms.person_form import PersonForm
from quailsched.desktop.forms.place_form import PlaceForm
from quailsched.desktop.forms.record_form import RecordForm
from quailsched.edits.records import put
from quailsched.farm.kinds import kind_in
from quailsched.farm.records import Part, Role, Span, Units
from quailsched.session.open_farm import OpenFarm


def faults_shown(form: RecordForm) -> list[str]:
    labels = form.findChildren(QLabel, "fault")
    return [label.text() for label in labels if label.text() and label.isVisibleTo(form)]


def choose_role(form: PlaceForm, role: Role) -> None:
    form.role.setCurrentIndex(list(Role).index(role))


def test_a_place_a_person_and_a_batch_make_a_farm(empty: OpenFarm, today: date, qtbot: QtBot) -> None:
    for role, name in ((Role.CABINET, "Cabinet"), (Role.BROODER, "Tub"), (Role.PEN, "Run")):
        form = PlaceForm(None, empty, today)
        qtbot.addWidget(form)
        form.show()
        qtbot.keyClicks(form.name, name)
        choose_role(form, role)
        if role is Role.CABINET:
            form.egg_places.setValue(60)
        else:
            form.wide.setValue(100)
            form.long.setValue(130)  # 100 cm x 130 cm are 13,000 cm2
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
    form = PlaceForm(None, opened, today)
    qtbot.addWidget(form)
    form.show()
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
    assert place.floor.text() == "13.99 sq ft"  # 13,000 / 929.03
    assert place.record() == farm.places[3]


def test_moving_the_start_moves_the_route_and_an_end_moves_the_next_stay(
    opened: OpenFarm, today: date, qtbot: QtBot
) -> None:
    batch = opened.farm.batches[1]
    form = BatchForm(None, opened, today, batch)
    qtbot.addWidget(form)
    form.start.setDate(form.start.date().addDays(3))
    assert form.route.stays() == batch.stays
    brooder_out = form.route._rows[2][3]
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
    assert opened.farm.choices == ()


@pytest.mark.parametrize(
    ("points", "sentence"),
    [("0:100 x", "pairs of age and value are accepted"), ("10:100 5:120", "ages must rise"), ("0:-5", "is possible")],
)
def test_a_curve_that_makes_no_sense_is_refused_beside_its_field(
    opened: OpenFarm, qtbot: QtBot, points: str, sentence: str
) -> None:
    form = FigureForm(None, opened, "coturnix", "floor_cm2")
    qtbot.addWidget(form)
    form.show()
    form.own_points.setText(points)
    form.save()
    assert any(sentence in text for text in faults_shown(form))
    assert opened.farm.choices == ()


def test_a_farm_that_lacks_a_first_place_says_which_one_to_add(empty: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = BatchForm(None, empty, today)
    qtbot.addWidget(form)
    assert "add a setter or a cabinet first" in form.follows.text()
    form.show()
    form.save()
    assert any("at least the place of its first day is needed" in text for text in faults_shown(form))


def test_a_file_that_cannot_be_written_is_told_and_the_form_stays(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    # Another window changed the file meanwhile.
    from quailsched.session.farms import open_farm

    other = open_farm(opened.file.path)
    other.apply(put(other.farm, other.farm.people[0].__class__(id="p", name="Zoe")))
    form = PersonForm(None, opened, today)
    qtbot.addWidget(form)
    form.show()
    qtbot.keyClicks(form.name, "Mia")
    form.save()
    assert faults_shown(form)
    assert form.saved_id is None
    assert form.isVisible()


def test_forms_are_freed_when_they_are_gone(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = PersonForm(None, opened, today)
    seen = weakref.ref(form)
    form.show()
    form.reject()
    form.deleteLater()
    del form
    qtbot.wait(20)
    gc.collect()
    assert seen() is None
