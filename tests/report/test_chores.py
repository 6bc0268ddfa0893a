"""Chores in words and as JSON, with what the keeper has marked."""

from __future__ import annotations

from datetime import date, timedelta
from uuid import uuid4

from quailsched.chores.work_out import chores_between
from quailsched.edits.change import apply
from quailsched.edits.marks import give, put_off, tick
from quailsched.farm.example import example_farm
from quailsched.farm.records import Farm
from quailsched.report.chores import chores_json, chores_text
from quailsched.season.season import Season

TODAY = date(2027, 4, 8)
TOMORROW = TODAY + timedelta(days=1)


def marked_farm() -> Farm:
    """The hatch is done, the heat of the 8th is Leo's and put off to the 9th."""
    farm = example_farm(TODAY, lambda: str(uuid4()))
    due = {chore.kind: chore for chore in chores_between(Season(farm), TODAY, TOMORROW)}
    hatch, heat = due["hatch"], due["heat"]
    farm = apply(farm, tick(farm, hatch.key, TODAY, hatch.title, TODAY))
    farm = apply(farm, put_off(farm, heat.key, TODAY, heat.title, TOMORROW))
    return apply(farm, give(farm, heat.key, TODAY, heat.title, farm.people[1].id))


def test_marks_stand_in_the_list() -> None:
    farm = marked_farm()
    text = chores_text(farm, chores_between(Season(farm), TODAY, TODAY + timedelta(days=2)), TODAY, 2)
    assert "  [x] Hatch day, Bracken" in text
    assert "  [ ] Sex Aster by breast feathers" in text
    assert "  [ ] Heat down to 24.5 °C for Aster, Tub brooder – Leo, put off from 8 Apr" in text


def test_marks_stand_in_the_document() -> None:
    farm = marked_farm()
    found = chores_json(farm, chores_between(Season(farm), TODAY, TODAY + timedelta(days=2)), TODAY, 2)["chores"]
    by_kind = {one["kind"]: one for one in found}
    assert by_kind["hatch"]["done_on"] == "2027-04-08"
    heat = by_kind["heat"]
    assert (heat["day"], heat["put_off_from"], heat["given_to"]) == ("2027-04-09", "2027-04-08", "Leo")
    assert heat["done_on"] is None
