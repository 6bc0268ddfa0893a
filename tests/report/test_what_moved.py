"""What a count moves, told in words."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from uuid import uuid4

from quailsched.edits.change import apply
from quailsched.edits.counts import record
from quailsched.farm.example import example_farm
from quailsched.farm.facts import Count, Sort
from quailsched.farm.records import Batch, Farm, Part
from quailsched.report.what_moved import Moved, what_moved
from quailsched.season.clashes import Checked, checked
from quailsched.season.season import Season
from tests.builders import BROODER, PEN, RUN
from tests.edits.counted import clover, fact, known

TODAY = date(2027, 4, 6)
NOW = datetime(2027, 4, 6, 7, tzinfo=UTC)

HATCH = fact(Sort.HATCHED, 17, 70)


def example() -> Checked:
    return checked(Season(example_farm(TODAY, lambda: str(uuid4()))))


def named(farm: Farm, name: str) -> Batch:
    return next(batch for batch in farm.batches if batch.name == name)


def moved_by(before: Checked, count: Count) -> list[str]:
    return [one.sentence for one in told(before, count)]


def told(before: Checked, count: Count, since: date | None = None) -> tuple[Moved, ...]:
    farm = before.season.farm
    after = before.after(apply(farm, record(farm, count, count.day)))
    assert after.clashes == checked(Season(after.season.farm)).clashes
    return what_moved(before, after, since or count.day)


def test_a_hatch_a_day_early_moves_all_that_follows_by_a_day() -> None:
    before = example()
    bracken = named(before.season.farm, "Bracken")  # set on 22 March, to hatch on 8 April, into the brooder a day after
    count = Count("c", Sort.HATCHED, date(2027, 4, 7), NOW, 70, bracken.id)
    words = moved_by(before, count)
    assert words[:4] == [
        "Bracken: hatch on 7 Apr, not 8 Apr",
        "Bracken: feathered by 2 May, not 3 May",
        "Bracken: to Shed brooder on 8 Apr, not 9 Apr",
        "Bracken: to Long run on 6 May, not 7 May",
    ]
    assert any("chores on other days" in one for one in words)


def test_fewer_chicks_ease_a_clash_and_are_told() -> None:
    before = example()
    bracken = named(before.season.farm, "Bracken")
    expected = before.season.birds(bracken, date(2027, 4, 8))
    count = Count("c", Sort.HATCHED, date(2027, 4, 8), NOW, 30, bracken.id)
    found = told(before, count)
    assert found[0].sentence == f"Bracken: 30 birds, not {expected}"
    eased = [one for one in found if one.sentence.startswith(("less:", "no longer:"))]
    assert eased
    assert not any(one.is_clash for one in eased)


def test_a_pen_that_is_finished_a_week_late_keeps_its_birds_where_they_are() -> None:
    before = example()
    pen = next(place for place in before.season.farm.places if place.name == "Long run")
    assert pen.ready_on == date(2027, 4, 20)  # Aster was to go there on 16 April, for a clash
    found = told(before, Count("c", Sort.BUILT, date(2027, 4, 27), NOW, place_id=pen.id), TODAY)
    words = [one.sentence for one in found]
    assert words[0] == "Aster: to Long run on 27 Apr, not 16 Apr"
    assert "Long run is ready on 27 Apr" in words
    assert "no longer: Long run is not built in time" in words
    new = [one.sentence for one in found if one.is_clash]
    assert "new: Tub brooder is too small" in new  # Aster waits there, and grows


def test_what_changes_nothing_of_the_days_to_come_moves_nothing() -> None:
    before = example()
    aster = named(before.season.farm, "Aster")
    assert moved_by(before, Count("c", Sort.LAID, TODAY, NOW, 3, aster.id)) == []
    assert what_moved(before, before, TODAY + timedelta(days=1)) == ()


def test_birds_that_were_put_back_are_not_told_to_have_moved_by_the_next_count() -> None:
    put_back = known(clover(), HATCH, fact(Sort.MOVED, 40, place_id=RUN.id), fact(Sort.MOVED, 43, place_id=BROODER.id))
    words = moved_by(checked(Season(put_back)), fact(Sort.DIED, 44, 1))
    assert words[0] == "Clover: 69 birds, not 70"
    assert not any("to Brooder" in one for one in words)


def test_a_group_that_stays_where_all_were_is_not_told_to_go_there() -> None:
    # The hens go two days early, on 14 April; the cocks stay in the brooder until 16 April, as was planned.
    words = moved_by(checked(Season(known(clover(), HATCH))), fact(Sort.MOVED, 44, place_id=PEN.id, part=Part.HENS))
    assert words[0] == "Clover: laying group to Pen on 14 Apr, not 16 Apr"
    assert not any("to Brooder" in one for one in words)
