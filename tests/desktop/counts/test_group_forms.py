"""Birds that part from their batch or join another, by forms; where eggs come from, in the form of a batch."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from quailsched.desktop.counts.group_forms import JoinForm, PartForm
from quailsched.desktop.forms.batch_form import BatchForm
from quailsched.edits.counts import record
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch, Origin, Part
from quailsched.session.open_farm import OpenFarm
from tests.desktop.test_forms import faults_shown, shown_form

NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)
MAY = date(2027, 5, 10)


def named(opened: OpenFarm, name: str) -> Batch:
    return next(batch for batch in opened.plan.batches if batch.name == name)


@pytest.fixture
def aster(opened: OpenFarm) -> Batch:
    """Asters of which 60 hatched, and 80 Brackens three weeks later."""
    for name, day, number in (("Aster", date(2027, 3, 18), 60), ("Bracken", date(2027, 4, 8), 80)):
        count = Count(f"hatch {name}", Sort.HATCHED, day, NOW, number, named(opened, name).id)
        opened.apply_to_plan(record(opened.plan, count, MAY))
    return named(opened, "Aster")


def test_a_part_becomes_a_batch_with_a_proposed_name(opened: OpenFarm, aster: Batch, qtbot: QtBot) -> None:
    form = shown_form(PartForm(None, opened, MAY, aster, opened.apply_to_plan), qtbot)
    assert form.name.text() == "Aster 2"
    assert [form.place.itemText(i) for i in range(form.place.count())] == [
        "Tub brooder", "Shed brooder", "Long run", "Grass ark",
    ]  # fmt: skip
    form.part.setCurrentIndex(form.part.findData(Part.COCKS))
    alive = opened.plan_season.birds(aster, MAY, Part.COCKS)
    assert form.alive.text() == f"Aster has {alive} birds on 10 May (surplus cocks)"
    form.place.setCurrentIndex(3)
    form.number.setValue(10)
    form.name.selectAll()
    qtbot.keyClicks(form.name, "Cocks")
    qtbot.keyClick(form.name, Qt.Key.Key_Return)
    cocks = named(opened, "Cocks")
    assert (cocks.number, cocks.origin, cocks.from_ids) == (10, Origin.PARTED, (aster.id,))
    assert form.saved_id == cocks.id  # it is picked then


def test_what_cannot_part_stands_beside_its_field(opened: OpenFarm, aster: Batch, qtbot: QtBot) -> None:
    form = shown_form(PartForm(None, opened, MAY, aster, opened.apply_to_plan), qtbot)
    before = opened.plan
    form.number.setValue(61)
    form.name.setText("Bracken")
    form.save()
    assert any("Aster had 60 birds by then" in text for text in faults_shown(form))
    form.number.setValue(10)
    form.save()
    assert any("another batch has it already" in text for text in faults_shown(form))
    assert opened.plan == before


def test_joining_warns_of_the_gap_before_it_is_saved(opened: OpenFarm, aster: Batch, qtbot: QtBot) -> None:
    form = shown_form(JoinForm(None, opened, MAY, aster, opened.apply_to_plan), qtbot)
    assert [form.other.itemText(i) for i in range(form.other.count())] == ["Bracken", "Clover"]
    # Clover: set on 12 April, out on the 29th by the plan. Dill is in the setter still.
    assert "21 days apart in age" in form.warning.text()  # 18 March and 8 April
    assert "fight" in form.warning.text()  # Aster is 53 days old
    form.number.setValue(5)
    form.save()
    assert form.saved_id == named(opened, "Bracken").id
    (joined,) = [count for count in opened.plan.counts if count.sort is Sort.JOINED]
    assert (joined.number, joined.batch_id, joined.to_batch_id) == (5, aster.id, form.saved_id)


def test_where_no_other_batch_lives_the_form_says_so(opened: OpenFarm, aster: Batch, qtbot: QtBot) -> None:
    form = shown_form(JoinForm(None, opened, date(2027, 4, 1), aster, opened.apply_to_plan), qtbot)
    assert form.warning.text() == "No other batch of its kind lives on this day."
    form.save()
    assert faults_shown(form)
    form.day.setDate(QDate(2027, 5, 1))
    assert form.other.currentText() == "Bracken"


def test_eggs_are_told_from_several_batches(opened: OpenFarm, qtbot: QtBot) -> None:
    # Dill is set on 3 May; Aster's first eggs come 44 days after its hatch on 18 March, on 1 May; Bracken's on 22 May.
    dill = named(opened, "Dill")
    form = shown_form(BatchForm(None, opened, MAY, dill), qtbot)
    assert not form.mothers.isHidden()
    assert [action.text() for action in form.mothers.menu.actions()] == ["Aster"]
    form.start.setDate(QDate(2027, 6, 1))
    assert [action.text() for action in form.mothers.menu.actions()] == ["Aster", "Bracken"]
    for action in form.mothers.menu.actions():  # the menu itself would grab the keyboard, which there is none of here
        form.mothers.menu.setActiveAction(action)
        qtbot.keyClick(form.mothers.menu, Qt.Key.Key_Space)
    assert form.mothers.open.text() == "Aster and Bracken"
    assert "Aster and Bracken" in form.mothers.open.accessibleName()
    form.save()
    assert named(opened, "Dill").from_ids == (named(opened, "Aster").id, named(opened, "Bracken").id)


def test_only_own_eggs_are_of_batches_here(opened: OpenFarm, qtbot: QtBot) -> None:
    form = shown_form(BatchForm(None, opened, MAY, named(opened, "Dill")), qtbot)
    form.origin.setCurrentIndex(1)
    assert form.mothers.isHidden()
    form = shown_form(BatchForm(None, opened, MAY, named(opened, "Aster")), qtbot)
    assert form.mothers.isHidden()  # no hens laid before it


def test_a_parted_batch_opens_in_its_form_and_stays_as_it_is(opened: OpenFarm, aster: Batch, qtbot: QtBot) -> None:
    part = PartForm(None, opened, MAY, aster, opened.apply_to_plan)
    qtbot.addWidget(part)
    part.number.setValue(10)
    part.save()
    cocks = named(opened, "Aster 2")
    form = shown_form(BatchForm(None, opened, MAY, cocks), qtbot)
    assert form.record() == cocks
    assert not form.origin.isEnabled()
    assert not any(label.text() == "&Set on" for label in form.findChildren(QLabel))
