"""What the core tells people goes through the table of words, letter by letter: seen in a made-up language."""

from __future__ import annotations

import inspect
import pkgutil
from collections.abc import Callable, Iterator
from dataclasses import fields, replace
from datetime import date, timedelta
from importlib import import_module
from itertools import count
from pathlib import Path

import pytest

import quailsched.edits
import quailsched.edits.counts as counts
from quailsched.calendars.entry import entries_of, quiet_entry
from quailsched.calendars.errors import CalendarError
from quailsched.calendars.write import write_calendar
from quailsched.chores.work_out import chores_between
from quailsched.edits.acceptances import accept, take_back
from quailsched.edits.batches import change_place, end_stay, shift, start_on
from quailsched.edits.change import Change, apply
from quailsched.edits.counts import correct, odd_about, record
from quailsched.edits.groups import join, odd_about_joining, part_off
from quailsched.edits.marks import give, leave_out, put_off, put_own, tick, untick
from quailsched.edits.parting import leave_on, part_and_leave, part_cocks
from quailsched.edits.people import build_for, home_on, stand_in
from quailsched.edits.proposals import (
    clean_out,
    fit_drinker,
    fit_feeder,
    fit_heat,
    fit_lamps,
    leave_sold,
    ready_on,
    set_number,
)
from quailsched.edits.records import put, remove, sound
from quailsched.edits.splits import split_batch
from quailsched.edits.trials import change_in_trial, drop_trial, fitted, keep_trial, rename_trial, start_trial
from quailsched.farm.check import faults_of
from quailsched.farm.example import example_farm
from quailsched.farm.facts import Cause, ChoreMark, Count, OwnChore, Sort
from quailsched.farm.faults import FarmError, Fault
from quailsched.farm.ledger import FIELDS
from quailsched.farm.plain import RECORD_TAGS, plain_of, read_record, record_from_tagged
from quailsched.farm.records import (
    Acceptance,
    Batch,
    Farm,
    FigureChoice,
    Leaving,
    Origin,
    Part,
    Person,
    Place,
    Record,
    Role,
    Settings,
    Span,
    Stay,
    Trial,
    TrialRecord,
    Units,
)
from quailsched.farm.trial_text import write_text
from quailsched.husbandry.cautions import TOPICS, caution
from quailsched.husbandry.handbook import handbook
from quailsched.report.counts_told import told_counts
from quailsched.report.plan_and_fact import fact_days, ledger_rows, parentage_rows, plan_and_fact
from quailsched.season.clash import Clash
from quailsched.season.clashes import clashes_of
from quailsched.season.season import Season
from quailsched.season.severity import WATCHED
from quailsched.words import ENGLISH, use
from tests.builders import ARK, BROODER, CABINET, HATCHER, MONDAY, PEN, RUN, SETTER, bought, eggs, farm, on, stay
from tests.pseudo import PSEUDO, typed_in, unsaid
from tests.season.test_everything_breaks import CHILLY, everything
from tests.strategies import MOMENT

TODAY = date(2027, 4, 6)
FARM_ID = "6f1c9a52-0d0f-4e0f-9a55-0c3f6f2f7f11"
# Words of the JSON document, which are the same in every language.
IN_DOCUMENTS = {
    *RECORD_TAGS,
    *handbook(),
    *(field.name for cls in (*RECORD_TAGS.values(), Stay, Span, TrialRecord) for field in fields(cls)),
    *(str(value) for choice in (Role, Origin, Part, Leaving, Units, Sort, Cause) for value in choice),
    *("T", "null", "true"),
}


@pytest.fixture(autouse=True)
def _nobody_speaks_it() -> Iterator[None]:
    use(PSEUDO)
    yield
    use(ENGLISH)


def example() -> Farm:
    """Pebble Bank, made in English: its names are plain letters, as if they were typed."""
    use(ENGLISH)
    ids = count(1)
    made = example_farm(TODAY, lambda: f"00000000-0000-4000-8000-{next(ids):012}")
    use(PSEUDO)
    return made


def broken() -> Farm:
    return farm(*everything(), settings=CHILLY)


def odd() -> Farm:
    """Each clash that is told in other words where it is another part of a batch, another machine or another cause."""
    birds, no_eggs = bought("Rue", 40, 50), eggs("Sage", 20)
    hens, cocks, out = Part.HENS, Part.COCKS, Leaving.SOLD
    slow = Place("slow", "Slow", Role.PEN, floor_cm2=60_000, work_hours=99.0, work_from=MONDAY)
    used = replace(slow, id="used", name="Used", work_from=on(2))
    bare = replace(slow, id="bare", name="Bare", work_hours=1.0, work_from=on(40))
    new = Place("new", "New", Role.BROODER, floor_cm2=60_000, ready_on=on(5), heat_sources=0, drinker_cm=0, feeder_cm=0)
    lit = Settings("farm", "Thistle Yard", latitude=60.0, night_lows_c=(8.0,) * 12)
    batches = (
        replace(no_eggs, id="1", name="Mint", stays=(stay(SETTER, 0, 20),)),  # in lockdown and turned; no place after
        replace(no_eggs, id="2", name="Dill", stays=(stay(HATCHER, 0, 18), stay(BROODER, 18, 30))),  # not turned
        replace(no_eggs, id="3", name="Iris", stays=(stay(SETTER, 0, 9),)),  # no place for eggs
        replace(no_eggs, id="4", name="Kale", stays=(stay(SETTER, 0, 9), stay(BROODER, 9, 30, leaving=out))),
        replace(no_eggs, id="5", name="Lime", stays=(stay(CABINET, 0, 40),)),  # chicks without a brooder
        replace(birds, id="6", name="Olive", stays=(stay(PEN, 0, 2), stay(PEN, 2, 9, hens), stay(PEN, 2, 9, cocks))),
        replace(
            birds, id="7", name="Poppy", stays=(stay(PEN, 0, 2), stay(RUN, 2, 900, hens, out))
        ),  # too old; cocks lost
        replace(birds, id="8", name="Thyme", stays=(stay(PEN, 0, 2), stay(ARK, 2, 90, cocks, out))),  # hens lost
        replace(birds, id="9", name="Vetch", stays=(stay(slow, 0, 9, leaving=out),), start=on(3)),
        replace(birds, id="10", name="Zinnia", stays=(stay(used, 0, 9, leaving=out),)),
        replace(birds, id="11", name="Balm", stays=(stay(new, 0, 30, leaving=out),), number=1, age_days=1),
        replace(birds, id="12", name="Elder", stays=(stay(slow, 0, 9, leaving=out),), start=on(3)),
        replace(birds, id="13", name="Fern", stays=(stay(used, 0, 9, leaving=out),)),
        replace(birds, id="14", name="Aster", stays=(stay(bare, 0, 1, leaving=out),), start=on(40)),
        replace(birds, id="15", name="Hazel", stays=(stay(PEN, 0, 1, leaving=out),), number=1, start=on(900)),
    )
    away = (Span(on(2), on(3)), Span(on(18), on(19)), Span(on(40), on(80)))
    return farm(slow, used, bare, new, Person("ann", "Ann", away=away, build_hours=1.0), *batches, settings=lit)


FARMS = pytest.mark.parametrize("make", [example, broken])


def _in_all_units(one: Farm) -> Iterator[Farm]:
    for units in Units:
        yield replace(one, settings=replace(one.settings, units=units))


def test_a_word_that_is_not_said_is_found_even_inside_a_said_one() -> None:
    assert unsaid("⟦ｅｇｇｓ ｏｆ Aster⟧ until, 3 cm²", ["Aster"]) == ["until"]
    assert unsaid("⟦two ｅｇｇｓ⟧") == ["two"]


@pytest.mark.parametrize("make", [example, broken, odd])
def test_every_clash_is_said(make: Callable[[], Farm]) -> None:
    for plan in _in_all_units(make()):
        for clash in clashes_of(Season(plan)):
            assert unsaid(clash.sentence, typed_in(plan)) == [], clash.sentence


@FARMS
def test_every_chore_is_said(make: Callable[[], Farm]) -> None:
    for plan in _in_all_units(make()):
        found = chores_between(Season(plan), TODAY - timedelta(days=90), TODAY + timedelta(days=700))
        assert len({chore.kind for chore in found}) > 15
        for chore in found:
            for text in (chore.title, chore.how, chore.caution):
                assert unsaid(text, typed_in(plan)) == [], text


@FARMS
def test_every_entry_of_a_calendar_is_said(make: Callable[[], Farm]) -> None:
    plan = make()
    found = chores_between(Season(plan), TODAY - timedelta(days=90), TODAY + timedelta(days=700))
    for entry in (*entries_of(FARM_ID, found), quiet_entry(FARM_ID, TODAY)):
        for text in (entry.summary, entry.description, entry.category):
            assert unsaid(text, typed_in(plan)) == [], text


def test_what_was_planned_and_what_was_counted_is_said() -> None:
    plan = example()
    at = {one.name: one.id for many in (plan.places, plan.batches) for one in many}
    aster, hatched, more = at["Aster"], TODAY - timedelta(days=18), {"place_id": at["Grass ark"], "part": Part.COCKS}
    lived = (
        Count("set", Sort.SET, TODAY - timedelta(days=36), MOMENT, 96, aster),
        Count("clear", Sort.CLEAR, TODAY - timedelta(days=29), MOMENT, 10, aster),
        Count("hatch", Sort.HATCHED, hatched, MOMENT, 60, aster, hour=14),
        Count("died", Sort.DIED, hatched + timedelta(days=3), MOMENT, 2, aster, cause=Cause.WEAK),
        Count("move", Sort.MOVED, hatched + timedelta(days=5), MOMENT, 58, aster, at["Tub brooder"]),
        Count("sexed", Sort.SEXED, TODAY, MOMENT, 57, aster, hens=20, cocks=30),
        Count("weighed", Sort.WEIGHED, TODAY, MOMENT, 10, aster, grams=900),
        Count("sold", Sort.SOLD, TODAY, MOMENT, 3, aster),
        Count("gone", Sort.PROCESSED, TODAY, MOMENT, 4, aster, grams=400, dressed_g=300),
        Count("bedding", Sort.BEDDING, TODAY, MOMENT, place_id=at["Tub brooder"]),
        Count("built", Sort.BUILT, TODAY, MOMENT, place_id=at["Long run"]),
        Count("hours", Sort.HOURS, TODAY, MOMENT, hours=2.5),
        Count("fed", Sort.FED, TODAY, MOMENT, grams=800),
    )
    for number, one in enumerate(lived):  # those of a day are taken in the order in which they were written down
        plan = apply(plan, record(plan, replace(one, entered=MOMENT + timedelta(minutes=number)), TODAY))
    later = MOMENT + timedelta(hours=1)
    part = Count("part", Sort.PARTED, TODAY, later, 9, aster, to_batch_id="cocks", **more)  # type: ignore[arg-type]
    plan = apply(plan, part_off(plan, part, "Rest", TODAY))
    plan = apply(plan, join(plan, Count("join", Sort.JOINED, TODAY, later, 2, "cocks", to_batch_id=aster), TODAY))
    plan = apply(plan, counts.take_back(plan, "sold", "back", later))
    texts = [text for row in told_counts(plan) for text in (row.of, row.what, row.state_words)]
    for batch in plan.batches:
        rows = plan_and_fact(plan, batch)
        texts += [text for row in rows for text in (row.what, row.plan, row.fact, row.difference)]
        texts += [fact.words for fact in fact_days(plan, batch)]
        texts += [text for row in ledger_rows(Season(plan), batch, TODAY) for text in row]
        texts += [text for row in parentage_rows(plan, batch) for text in row]
    assert len(texts) > 60
    for text in texts:
        assert unsaid(text, typed_in(plan)) == [], text


@pytest.mark.parametrize("topic", TOPICS)
def test_every_caution_is_said(topic: str) -> None:
    assert unsaid(caution(topic).text) == []


def test_a_calendar_that_cannot_be_written_is_told_of(tmp_path: Path) -> None:
    for path in (tmp_path, tmp_path / "none" / "chores.ics"):
        with pytest.raises(CalendarError) as told:
            write_calendar(path, b"")
        assert unsaid(str(told.value), [str(path), str(path.parent), "ics"]) == []
    with pytest.raises(CalendarError) as told:
        quiet_entry("no uuid", TODAY)
    assert unsaid(str(told.value), ["no uuid", FARM_ID]) == []


def _edits(plan: Farm) -> Iterator[Change]:
    """A change by every function that makes one, on Pebble Bank."""
    at = {one.name: one.id for many in (plan.places, plan.people, plan.batches) for one in many}
    aster, elder = at["Aster"], at["Elder"]
    yield start_on(plan, aster, TODAY)
    yield shift(plan, aster, 1)
    yield end_stay(plan, aster, 2, 47)
    yield change_place(plan, aster, 2, at["Shed brooder"])
    yield part_cocks(plan, at["Fern"], 2, 50, at["Grass ark"], 60, Leaving.PROCESSED)
    yield leave_on(plan, aster, Part.COCKS, 70, Leaving.SOLD)
    yield part_and_leave(plan, elder, Part.COCKS, 50, Leaving.SOLD, at["Grass ark"])
    yield home_on(plan, at["Ann"], next(p for p in plan.people if p.name == "Ann").away[0].start)
    yield (helped := stand_in(plan, TODAY))
    yield stand_in(apply(plan, helped), TODAY + timedelta(days=1))
    yield build_for(plan, at["Ann"], 1.5)
    yield set_number(plan, aster, 1)
    yield leave_sold(plan, at["Gorse"], 2)
    yield ready_on(plan, at["Long run"], TODAY)
    yield clean_out(plan, at["Long run"], 1)
    yield fit_heat(plan, at["Tub brooder"], 2)
    yield fit_drinker(plan, at["Tub brooder"], 70)
    yield fit_feeder(plan, at["Tub brooder"], 70)
    yield fit_lamps(plan, at["Long run"], 13.5)
    yield split_batch(plan, aster, 10, 2, 18, at["Shed brooder"])
    some: tuple[Record, ...] = (plan.settings, plan.places[0], plan.people[0], plan.batches[0], plan.choices[0])
    for one in some:
        yield put(plan, one)
    for fact in (Count("n", Sort.NOTE, TODAY, words="Zinnia"), ChoreMark("m", "key", TODAY)):
        yield put(plan, fact)
    yield put(plan, OwnChore("o", "Zinnia", TODAY))
    yield sound(plan, put(plan, Person("new", "Zinnia")))
    yield remove(plan, aster)
    yield from _acceptances(plan)
    yield from _trials(plan)
    yield from _counts(plan)
    yield from _marks(plan)


def _acceptances(plan: Farm) -> Iterator[Change]:
    aster, run = plan.batches[0].id, next(place.id for place in plan.places if place.name == "Long run")
    clash = Clash("calm", run, (aster,), TODAY, TODAY, TODAY, 20, 10, "birds", 0, "")
    for ids in ((aster,), tuple(batch.id for batch in plan.batches), ("gone",)):
        yield (change := accept(plan, replace(clash, batch_ids=ids), "Zinnia", lambda: "accepted"))
        after = apply(plan, change)
        yield take_back(after, "accepted")
        yield put(after, next(iter(after.acceptances)))
    lost = apply(plan, put(plan, Acceptance("lost", "calm", "lost", (aster,), 1, 1, 1, "Zinnia")))
    yield take_back(lost, "lost")
    yield take_back(apply(lost, put(lost, replace(lost.acceptances[0], batch_ids=("gone",)))), "lost")


def _trials(plan: Farm) -> Iterator[Change]:
    yield (start := start_trial(plan, "Zinnia", "trial"))
    trying = apply(plan, start)
    yield rename_trial(trying, "trial", "Zinnia 2")
    yield (change := change_in_trial(trying, "trial", shift(plan, plan.batches[0].id, 1)))
    yield drop_trial(apply(trying, change), "trial")
    yield keep_trial(apply(trying, change), "trial")


def _a_count(plan: Farm, sort: Sort) -> Count:
    """One of ``sort`` with all that its sort has, on Aster, today."""
    aster, tansy = plan.batches[0], plan.batches[1]
    needed = {field.removesuffix("!") for field in FIELDS[sort]}
    full = Count(
        "count", sort, TODAY, MOMENT, 2 if "number" in needed else 0, aster.id if sort.needs_batch else "",
        plan.places[5].id if "place_id" in needed else "",
    )  # fmt: skip
    if sort is Sort.SET:
        full = replace(full, day=aster.start, number=aster.number)
    if sort in (Sort.PARTED, Sort.JOINED):
        full = replace(full, to_batch_id=tansy.id)
    words, photo = "Zinnia" if sort is Sort.NOTE else "", "Zinnia" if sort is Sort.PHOTO else ""
    grams = 500 if "grams" in needed else 0
    return replace(full, grams=grams, hours=1.5 if sort is Sort.HOURS else 0.0, words=words, file_name=photo)


def _counts(plan: Farm) -> Iterator[Change]:
    old = plan.batches[0]
    aged = apply(plan, put(plan, replace(old, start=TODAY - timedelta(days=40))))
    for sort in Sort:
        a_count = _a_count(aged, sort)
        if sort is Sort.PARTED:
            continue  # see ``part_off`` below
        yield (change := record(aged, a_count, TODAY))
        yield counts.followed(aged, Change(change.label, change.touches[:1]), a_count)
        if sort not in (Sort.PARTED, Sort.JOINED):
            known = apply(aged, change)
            yield correct(known, "count", replace(a_count, id="better"), TODAY)
            yield counts.take_back(known, "count", "gone", MOMENT)
    birds = replace(_a_count(aged, Sort.PARTED), place_id=aged.places[5].id, to_batch_id="new")
    yield (change := part_off(aged, birds, "Zinnia", TODAY))
    yield join(apply(aged, change), replace(birds, id="join", number=1), TODAY)


def _marks(plan: Farm) -> Iterator[Change]:
    yield (change := tick(plan, "key", TODAY, "Zinnia", TODAY))
    yield untick(apply(plan, change), "key", TODAY, "Zinnia")
    yield leave_out(plan, "key", TODAY, "Zinnia", "Zinnia")
    yield put_off(plan, "key", TODAY, "Zinnia", TODAY + timedelta(days=2))
    yield give(plan, "key", TODAY, "Zinnia", plan.people[0].id)
    yield give(apply(plan, change), "key", TODAY, "Zinnia", "")
    yield put_own(plan, OwnChore("o", "Zinnia", TODAY))


@pytest.mark.parametrize("sort", Sort)
def test_what_is_odd_about_a_count_is_said(sort: Sort) -> None:
    plan = example()
    aster = replace(plan.batches[0], start=TODAY - timedelta(days=60), number=90)
    aged = apply(plan, put(plan, aster))
    hatch = replace(_a_count(aged, Sort.HATCHED), day=TODAY - timedelta(days=30), number=60, id="hatch")
    hatched = apply(aged, record(aged, hatch, TODAY))
    a_count = replace(_a_count(hatched, sort), number=40, grams=1)
    if sort is Sort.SET:
        a_count = replace(a_count, day=TODAY)
    for known in (aged, hatched, hatched.with_records(set(), (replace(a_count, id="same"),))):
        for sentence in odd_about(known, a_count):
            assert unsaid(sentence, typed_in(known)) == [], sentence


def test_what_is_odd_about_joining_is_said() -> None:
    plan = example()
    told = odd_about_joining(plan, plan.batches[0].id, plan.batches[-1].id, TODAY + timedelta(days=200))
    assert len(told) == 2
    assert [unsaid(sentence) for sentence in told] == [[], []]


def test_every_step_that_can_be_undone_is_said() -> None:
    plan = example()
    names = [*typed_in(plan), "Zinnia", *(key for kind in handbook().values() for key in kind.figures)]
    for change in _edits(plan):
        assert unsaid(change.label, names) == [], change.label


def test_every_function_that_makes_a_step_is_looked_at() -> None:
    modules = [import_module(f"quailsched.edits.{one.name}") for one in pkgutil.iter_modules(quailsched.edits.__path__)]
    made = {
        name
        for module in modules
        for name, function in inspect.getmembers(module, inspect.isfunction)
        if not name.startswith("_") and inspect.get_annotations(function).get("return") == "Change"
    }
    source = "".join(inspect.getsource(one) for one in (_edits, _acceptances, _trials, _counts, _marks))
    assert [name for name in sorted(made) if f"{name}(" not in source] == []


def test_a_trial_and_a_batch_beside_others_get_a_said_part_of_their_name() -> None:
    plan = example()
    named = apply(plan, put(plan, replace(plan.batches[0], name="Zinnia 7")))
    after = apply(named, split_batch(named, plan.batches[0].id, 10, 2, 18, plan.batches[0].stays[2].place_id))
    (new,) = after.batches_not_in(named)[-1:]
    assert unsaid(new.name, ["Zinnia"]) == []
    helper = apply(plan, stand_in(plan, TODAY)).people[-1]
    assert unsaid(f"{helper.name} {helper.away[0].reason}") == []


def test_a_stand_in_is_the_same_person_in_every_language() -> None:
    plan = example()
    here = stand_in(plan, TODAY).touches[0].record_id
    use(ENGLISH)
    assert here == stand_in(plan, TODAY).touches[0].record_id


def _unsound() -> Farm:
    """Every fault of meaning that a farm can have, or nearly: what is wrong stands in each line."""
    early, long_name = date(1800, 1, 1), "Zinnias " * 30
    span = Span(MONDAY, MONDAY)
    choice = FigureChoice("c", "coturnix", "out_day", 40.0)
    batch = Batch("b", "Bracken", "coturnix", Origin.OWN_EGGS, MONDAY, 10)
    setter = Place("s", "Setter", Role.SETTER, egg_places=100)
    floor = Place("f", "Floor", Role.BROODER, floor_cm2=1000)
    all_day = Stay("s", 0, 15)
    hens, cocks = Stay("f", 15, 30, Part.HENS), Stay("f", 15, 30, Part.COCKS)
    accepted = Acceptance("a", "calm", "f", ("b",), 1, 1, 1, "Zinnia")
    return Farm(
        Settings("farm", " ", night_lows_c=(99.0,), latitude=99.0, sure_pct=1),
        places=(
            setter, floor,
            Place("1", "Setter", Role.SETTER, floor_cm2=5, heat_sources=1, light_hours=1.0),
            Place("2", long_name, Role.PEN, egg_places=5, heat_sources=-1, feeder_cm=-1, drinker_cm=-1),
            Place("3", "Zinnia\tZinnia", Role.GRASS_PEN, clean_out_days=-1, ready_on=early, shut=(span,)),
            Place("4", "Hatcher", Role.HATCHER, work_hours=-1.0),
            Place("5", "Cabinet", Role.CABINET, egg_places=5, light_hours=99.0, work_hours=1.0, work_from=early),
        ),
        people=(Person("p", "Ann", away=(span,), build_hours=999.0), Person("q", "Ann")),
        batches=(
            replace(batch, stays=(all_day,), kind="goose", start=early, number=0, age_days=5, egg_age_days=99),
            replace(batch, id="1", origin=Origin.BOUGHT_BIRDS, egg_age_days=1, stays=(all_day,)),
            replace(batch, id="2"),
            replace(batch, id="3", stays=(Stay("nowhere", 5, 5), Stay("f", 4, None), Stay("f", 9, 9_999))),
            replace(batch, id="4", stays=(replace(all_day, leaving=Leaving.SOLD), Stay("f", 15, 18))),
            replace(batch, id="5", stays=(cocks, hens, all_day)),
            replace(batch, id="6", stays=(all_day, replace(hens, from_day=16), replace(cocks, from_day=14))),
            replace(batch, id="7", stays=(Stay("f", 0, 15), hens, cocks)),
        ),
        choices=(choice, replace(choice, id="d"), replace(choice, id="e", kind="goose")),
        acceptances=(
            Acceptance("w", " ", " ", (), -1, -1, 0, " "),
            replace(accepted, id="x", batch_ids=(" ",), reason=long_name),
            replace(accepted, id="y", place_id="gone", reason="Zinnia\tZinnia", amount=-1),
        ),
        trials=(
            Trial("t", "Trial", (TrialRecord("bracken", "{}"), TrialRecord("bracken", ""), TrialRecord(" ", ""))),
        ),
        counts=_unsound_counts(),
        marks=(ChoreMark("m", " ", early, early, long_name, early, "nowhere"),),
        own_chores=(
            OwnChore("oo", " ", early, "nowhere", "", "nowhere", "nowhere", "nowhere"),
            OwnChore("op", "Zinnia", MONDAY, "nowhere"),
        ),
    )  # fmt: skip


def _unsound_counts() -> tuple[Count, ...]:
    """One of each sort without what it needs, and those that are wrong in other ways; of eggs, of birds, of nothing."""
    bare = tuple(Count(f"n{n}", sort, MONDAY) for n, sort in enumerate(Sort))
    many = tuple(Count(f"m{n}", sort, on(-1), MOMENT, 500, "2", place_id="f") for n, sort in enumerate(Sort))
    of_birds = tuple(Count(f"o{n}", sort, on(-1), MOMENT, 500, "1", to_batch_id="1") for n, sort in enumerate(Sort))
    wrong = Count(
        "w", Sort.SEXED, date(1800, 1, 1), MOMENT, -1, "nowhere", "nowhere", Part.ALL, 5, 5, -1, -1, 99.0, 99, None,
        "nowhere", "nowhere", "Zinnias " * 300, "Zinnia/Zinnia", "nowhere", True,
    )  # fmt: skip
    dressed = Count("x", Sort.PROCESSED, on(1), MOMENT, 1, "1", grams=100, dressed_g=900)
    return (
        *bare, *many, *of_birds, wrong, replace(wrong, id="v", is_taken_back=False), dressed,
        replace(dressed, id="y", corrects="", is_taken_back=True),
    )  # fmt: skip


def _texts(faults: list[Fault]) -> Iterator[str]:
    return (fault.sentence() for fault in faults)


def test_every_fault_of_a_farm_is_said() -> None:
    plan = _unsound()
    names = [*typed_in(plan), *handbook(), "JSON", "nowhere", "goose", "out_day", "bracken", "Zinnia", "Zinnias"]
    assert len(faults_of(plan)) > 70
    for sentence in _texts(faults_of(plan)):
        assert unsaid(sentence, names) == [], sentence


@pytest.mark.parametrize(
    "choice",
    [
        FigureChoice("c", "coturnix", "out_day"),
        FigureChoice("c", "coturnix", "out_day", -5.0),
        FigureChoice("c", "coturnix", "no_such_key", 5.0),
        FigureChoice("c", "coturnix", "alive", 5.0),
        FigureChoice("c", "coturnix", "alive"),
        FigureChoice("c", "coturnix", "alive", None, ((-1.0, 1.0),)),
        FigureChoice("c", "coturnix", "alive", None, ((0.0, 5.0),)),
        FigureChoice("c", "coturnix", "alive", None, ((5.0, 1.0), (4.0, 1.0))),
        FigureChoice("c", "coturnix", "alive", None, ((0.0, 0.5), (4.0, 1.0))),
        FigureChoice("c", "coturnix", "incubation_days", 14.0),
        FigureChoice("c", "coturnix", "candle_day", 16.0),
    ],
)
def test_every_figure_that_cannot_be_is_told_of(choice: FigureChoice) -> None:
    found = faults_of(Farm(Settings("farm", "Thistle Yard"), choices=(choice,)))
    assert found
    for sentence in _texts(found):
        assert unsaid(sentence, [choice.kind, choice.key]) == [], sentence


@pytest.mark.parametrize("wrong", [None, 5, -0.5, True, "x", "2027-02-30", [], [5], {}, 10**70, "\0"])
def test_every_fault_of_form_is_said(wrong: object) -> None:
    for tag, cls in RECORD_TAGS.items():
        names = [*IN_DOCUMENTS, "Zinnia", "x"]
        whole = plain_of(_one_of(cls))
        faults: list[Fault] = []
        for plain in ({}, {"no_such_field": 1}, wrong, *({**whole, field: wrong} for field in whole)):
            read_record(cls, plain, ("Zinnia",), faults)
        assert faults
        for sentence in _texts(faults):
            assert unsaid(sentence, [*names, "no_such_field"]) == [], sentence
        for tagged in ({"record": wrong}, {"record": tag, "version": 99}):
            with pytest.raises(FarmError) as told:
                record_from_tagged(tagged)
            assert unsaid(str(told.value), names) == []


def _one_of(cls: type) -> object:
    plan = example()
    trial = Trial("t", "Trial", (TrialRecord("b", ""),))
    return next(
        record
        for record in (
            *(*plan.records(), Acceptance("a", "calm", "f", ("b",), 1, 1, 1, "Zinnia"), trial),
            *(Count("n", Sort.NOTE, TODAY), ChoreMark("m", "key", TODAY), OwnChore("o", "Zinnia", TODAY)),
        )
        if type(record) is cls
    )


def test_every_refusal_of_a_step_is_said() -> None:
    plan = apply(example(), stand_in(example(), TODAY))
    run, aster = plan.places[5].id, plan.batches[0].id
    clash = Clash("calm", run, (aster,), TODAY, TODAY, TODAY, 20, 10, "birds", 0, "")
    assert clash.kind in WATCHED
    aged = apply(example(), put(example(), replace(plan.batches[0], start=TODAY - timedelta(days=40))))
    joined = apply(aged, record(aged, _a_count(aged, Sort.JOINED), TODAY))
    built = apply(aged, record(aged, _a_count(aged, Sort.BUILT), TODAY))
    strange = apply(aged, put(aged, replace(aged.batch(_a_count(aged, Sort.JOINED).to_batch_id), kind="bobwhite")))
    refused: list[Callable[[], object]] = [
        lambda: accept(plan, replace(clash, kind="floor"), "Zinnia", str),
        lambda: accept(plan, clash, " ", str),
        lambda: accept(plan, clash, "Zinnias " * 30, str),
        lambda: take_back(plan, "nothing"),
        lambda: stand_in(plan, TODAY),
        lambda: remove(plan, "nothing"),
        lambda: remove(plan, plan.settings.id),
        lambda: remove(plan, run),
        lambda: record(plan, replace(_a_count(plan, Sort.DIED), day=TODAY + timedelta(days=1)), TODAY),
        lambda: record(plan, replace(_a_count(plan, Sort.DIED), number=999), TODAY),
        lambda: counts.take_back(plan, "nothing", "gone", MOMENT),
        lambda: counts.take_back(joined, "count", "gone", MOMENT),
        lambda: correct(built, "count", replace(built.counts[0], id="better", place_id=plan.places[4].id), TODAY),
        lambda: start_on(joined, aster, TODAY),
        lambda: part_off(plan, replace(_a_count(plan, Sort.PARTED), to_batch_id="new"), "Zinnia", TODAY),
        lambda: part_off(aged, replace(_a_count(aged, Sort.PARTED), to_batch_id="new"), "Zinnia", TODAY),
        lambda: part_off(aged, replace(_a_count(aged, Sort.PARTED), batch_id="nothing"), "Zinnia", TODAY),
        lambda: join(plan, _a_count(plan, Sort.JOINED), TODAY),
        lambda: join(strange, _a_count(strange, Sort.JOINED), TODAY),
        lambda: leave_out(plan, "key", TODAY, "Zinnia", " "),
        lambda: remove(joined, aster),
    ]
    for step in refused:
        with pytest.raises(FarmError) as told:
            step()
        assert unsaid(str(told.value), [*typed_in(plan), "nothing", "Zinnia", "Zinnias", "coturnix"]) == []


def test_what_does_not_fit_of_a_trial_is_said() -> None:
    plan = example()
    aster, run = plan.batches[0], plan.places[5]
    records = (
        TrialRecord("other", "{}"),
        TrialRecord("settings", '{"record":"trial","id":"u","name":"Zinnia","records":[],"note":"","version":2}'),
        TrialRecord(plan.settings.id, ""),
        TrialRecord(run.id, ""),
        TrialRecord(aster.id, ""),
        TrialRecord("own", write_text(OwnChore("own", "Zinnia", TODAY, batch_id="gone"), None)),
    )
    note = Count("note", Sort.NOTE, TODAY, batch_id=aster.id, words="Zinnia")
    trying = plan.with_records(set(), (note, Trial("trial", "Zinnia", records)))
    misfits = fitted(trying, "trial").misfits
    assert len(misfits) > 5
    for sentence in _texts(list(misfits)):
        assert unsaid(sentence, [*typed_in(plan), "other", "settings", "Zinnia"]) == [], sentence
    moved = change_in_trial(plan.with_records(set(), (Trial("trial", "Zinnia"),)), "trial", shift(plan, aster.id, 1))
    (touch,) = moved.touches
    assert touch.after is not None
