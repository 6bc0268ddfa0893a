"""Counts by real keys: fields that fit the sort, refusals beside their fields, what is odd asked first, photos."""

from __future__ import annotations

import os
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from quailsched.desktop.counts.count_form import CountForm
from quailsched.edits.counts import record
from quailsched.edits.trials import start_trial
from quailsched.farm.facts import Cause, Count, Sort
from quailsched.farm.ledger import FIELDS, standing
from quailsched.farm.records import Part
from quailsched.session.open_farm import OpenFarm
from quailsched.session.photos import photo_folder
from tests.desktop.test_forms import faults_shown, shown_form

NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)
HATCHED = date(2027, 3, 18)


def batch_id(opened: OpenFarm, name: str) -> str:
    return next(batch.id for batch in opened.plan.batches if batch.name == name)


def made(opened: OpenFarm, today: date, qtbot: QtBot, of_id: str, old: Count | None = None) -> CountForm:
    return shown_form(CountForm(None, opened, today, of_id, opened.apply_to_plan, old), qtbot)


def choose(form: CountForm, sort: Sort) -> None:
    form.sort.setCurrentIndex(form.sort.findData(sort))


def hatch(opened: OpenFarm, number: int = 60) -> str:
    """Asters counted at the hatch; the id of the batch."""
    aster = batch_id(opened, "Aster")
    count = Count("hatch", Sort.HATCHED, HATCHED, NOW, number, aster)
    opened.apply_to_plan(record(opened.plan, count, date(2027, 4, 6)))
    return aster


def counts(opened: OpenFarm, sort: Sort) -> list[Count]:
    return [count for count in standing(opened.plan.counts) if count.sort is sort]


def test_a_death_is_recorded_with_the_keys_alone(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    aster = hatch(opened)
    form = made(opened, today, qtbot, aster)
    assert form.sort.hasFocus()  # of which batch is known
    assert form.sort.currentData() == Sort.DIED
    qtbot.keyClick(form.sort, Qt.Key.Key_Tab)
    assert form.number.hasFocus()
    qtbot.keyClicks(form.number, "2")
    form.cause.setCurrentIndex(form.cause.findData(Cause.CHILLED))
    qtbot.keyClick(form.number, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    (died,) = counts(opened, Sort.DIED)
    assert (died.number, died.cause, died.day, died.batch_id) == (2, Cause.CHILLED, today, aster)
    assert form.saved_id == died.id


@pytest.mark.parametrize("sort", [sort for sort in Sort if sort not in (Sort.PARTED, Sort.JOINED, Sort.BUILT)])
def test_each_sort_has_the_fields_that_it_needs(sort: Sort, opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = made(opened, today, qtbot, batch_id(opened, "Aster"))
    choose(form, sort)
    shown = {name for name, (_, field, _) in form._fields.items() if field.isVisibleTo(form)}
    wanted = {name.rstrip("!") for name in FIELDS[sort]}
    assert shown == wanted | {"batch_id", "sort", "day", "person_id", "words"}
    for label in form.findChildren(QLabel):
        assert not label.isVisibleTo(form) or label.buddy() is None or label.buddy().isVisibleTo(form)
    assert all(field.accessibleName() for _, field, _ in form._fields.values())


def test_a_set_begins_with_the_eggs_of_the_plan(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    elder = batch_id(opened, "Elder")  # 58 eggs by the plan
    form = made(opened, today, qtbot, elder)
    choose(form, Sort.SET)
    assert form.number.value() == 58
    choose(form, Sort.CLEAR)
    assert form.number.value() == 0
    form.number.setValue(7)
    choose(form, Sort.SET)
    assert form.number.value() == 7  # it was typed


def test_parts_are_asked_for_only_where_there_are_some(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    aster, dill = batch_id(opened, "Aster"), batch_id(opened, "Dill")  # Dill is sold whole
    form = made(opened, today, qtbot, dill)
    choose(form, Sort.DIED)
    assert form.part.isHidden()
    form.of.setCurrentIndex(form.of.findData(aster))
    choose(form, Sort.DIED)
    assert not form.part.isHidden()


def test_what_is_refused_stands_beside_its_field(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    aster, before = hatch(opened), opened.plan
    form = made(opened, today, qtbot, aster)
    before = opened.plan
    form.number.setValue(61)
    form.save()
    assert faults_shown(form) == ["died on 6 Apr, Aster, number: 61 cannot be used; Aster had 60 birds by then."]
    assert form.number.hasFocus()
    assert form.number.accessibleDescription().endswith("Aster had 60 birds by then.")
    form.number.setValue(1)
    form.day.setDate(QDate(2027, 4, 7))
    form.save()
    assert any("today, 6 Apr, or a day before is accepted" in text for text in faults_shown(form))
    assert opened.plan == before
    assert form.isVisible()


def test_what_is_odd_is_asked_once_and_again_when_it_changes(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    aster = hatch(opened)
    form = made(opened, today, qtbot, aster)
    form.number.setValue(30)
    form.save()
    assert counts(opened, Sort.DIED) == []
    assert "30 of" in form._odd.text()
    assert "died in one day" in form._odd.text()
    assert form.save_button.text() == "Record it all the same"
    form.number.setValue(31)  # another number: asked anew
    assert not form._odd.isVisible()
    form.save()
    assert counts(opened, Sort.DIED) == []
    qtbot.keyClick(form.save_button, Qt.Key.Key_Space)
    assert [count.number for count in counts(opened, Sort.DIED)] == [31]


def test_feed_of_the_farm_and_bedding_of_a_place(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    form = made(opened, today, qtbot, "")
    choose(form, Sort.FEED_BOUGHT)
    form.grams.setValue(25_000)
    form.save()
    (bought,) = counts(opened, Sort.FEED_BOUGHT)
    assert (bought.grams, bought.batch_id, bought.place_id) == (25_000, "", "")
    tub = opened.plan.places[3]
    form = made(opened, today, qtbot, tub.id)
    choose(form, Sort.BEDDING)
    assert form.place.isHidden()  # it is of a place already
    form.save()
    assert [count.place_id for count in counts(opened, Sort.BEDDING)] == [tub.id]


def test_a_count_is_of_the_plan_while_a_trial_is_looked_at(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    aster = hatch(opened)
    opened.apply_to_plan(start_trial(opened.plan, "Later", "trial"))
    opened.look_at("trial")
    form = made(opened, today, qtbot, aster)
    assert any("happens to no trial" in label.text() for label in form.findChildren(QLabel))
    form.number.setValue(1)
    form.save()
    assert len(counts(opened, Sort.DIED)) == 1
    assert opened.plan.trials[0].records == ()


def test_a_correction_stands_in_the_place_of_the_other(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    aster = hatch(opened)
    old = replace(Count("d", Sort.DIED, today, NOW, 2, aster, cause=Cause.WEAK), person_id=opened.plan.people[0].id)
    opened.apply_to_plan(record(opened.plan, old, today))
    form = made(opened, today, qtbot, "", old)
    assert form.number.hasFocus()
    assert not form.of.isEnabled()
    assert not form.sort.isEnabled()
    form.number.setValue(3)
    form.save()
    (died,) = counts(opened, Sort.DIED)
    assert (died.number, died.cause, died.person_id, died.corrects) == (3, Cause.WEAK, old.person_id, "d")
    assert died.part is Part.ALL


def test_correcting_a_hatch_is_not_odd_for_standing_there_already(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    hatch(opened)
    old = opened.plan.find("hatch")
    assert isinstance(old, Count)
    form = made(opened, today, qtbot, "", old)
    form.number.setValue(58)
    form.save()
    assert [count.number for count in counts(opened, Sort.HATCHED)] == [58]


def test_a_photo_is_copied_beside_the_farm(opened: OpenFarm, today: date, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "hatch.jpg").write_bytes(b"a picture")
    form = made(opened, today, qtbot, batch_id(opened, "Aster"))
    choose(form, Sort.PHOTO)
    form.save()
    assert any("photo needs it" in text for text in faults_shown(form))
    form.photo.take(tmp_path / "hatch.jpg")
    form.day.setDate(QDate(2027, 4, 7))  # a day to come
    form.save()
    assert faults_shown(form)
    assert not photo_folder(opened.file.path).exists()
    form.day.setDate(QDate(2027, 4, 6))
    form.save()
    (photo,) = counts(opened, Sort.PHOTO)
    assert photo.file_name == "hatch.jpg"
    assert os.listdir(photo_folder(opened.file.path)) == ["hatch.jpg"]


def test_a_photo_that_cannot_be_read_is_told(opened: OpenFarm, today: date, qtbot: QtBot, tmp_path: Path) -> None:
    form = made(opened, today, qtbot, batch_id(opened, "Aster"))
    choose(form, Sort.PHOTO)
    form.photo.take(tmp_path / "gone.jpg")
    form.save()
    assert faults_shown(form) == ["gone.jpg cannot be read: there is no such file or folder."]
    assert counts(opened, Sort.PHOTO) == []


def test_the_hour_of_a_hatch_may_stay_open(opened: OpenFarm, today: date, qtbot: QtBot) -> None:
    bracken = batch_id(opened, "Bracken")  # lockdown began today: the hatch is what is counted next
    form = made(opened, today, qtbot, bracken)
    assert form.sort.currentData() == Sort.HATCHED
    form.number.setValue(80)
    form.day.setDate(QDate(2027, 4, 6))
    form.hour.setValue(14)
    form.save()
    assert [count.hour for count in counts(opened, Sort.HATCHED)] == [14]
    form = made(opened, today + timedelta(days=1), qtbot, batch_id(opened, "Aster"))
    choose(form, Sort.HATCHED)
    form.number.setValue(60)
    form.day.setDate(QDate(2027, 3, 18))
    form.save()
    assert [count.hour for count in counts(opened, Sort.HATCHED)] == [None, 14]
