"""What each word of the command line does. Each prints its answer and returns the exit code."""

from __future__ import annotations

import argparse
import json
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from quailsched.chores.work_out import chores_between
from quailsched.desktop.paper.papers import LEAST_WEEKS, usual_paper
from quailsched.edits.tables.cells import DayOrder
from quailsched.edits.tables.rows import Fate, Taking
from quailsched.edits.tables.sheet import Log, Options
from quailsched.farm.faults import FarmError, Fault, Finding
from quailsched.farm.kinds import kind_in
from quailsched.husbandry.handbook import handbook
from quailsched.outlook.batch_measures import Books
from quailsched.outlook.reaching import Aim
from quailsched.planner.compare import compare
from quailsched.planner.next_set import next_sets_of
from quailsched.planner.wanted import answer_to
from quailsched.planner.ways_out import look_for_ways_out
from quailsched.report.chores import chores_json, chores_text
from quailsched.report.clashes import clashes_json, clashes_text
from quailsched.report.figures import figures_json, figures_text
from quailsched.report.measures import measures_json, measures_text
from quailsched.report.next_set import next_set_json, next_set_text
from quailsched.report.places import places_json, places_text
from quailsched.report.taking import taking_json, taking_text
from quailsched.report.trials import trials_json, trials_text
from quailsched.report.wanted import wanted_json, wanted_text
from quailsched.report.ways_out import ways_out_json, ways_out_text
from quailsched.season.clashes import Checked
from quailsched.season.freeing import place_states
from quailsched.season.severity import acceptance_of, open_clashes
from quailsched.session.farms import export_farm, home_example, import_farm, make_example, open_farm
from quailsched.session.open_farm import OpenFarm
from quailsched.session.paths import data_dir
from quailsched.session.pictures import give_picture
from quailsched.session.sharing import give_calendar
from quailsched.session.tables import give_tables, look_at_table, read_table, take_table

_DAYS = 120  # of the next set


def _print_json(value: dict[str, Any]) -> None:
    print(json.dumps(value, ensure_ascii=False, indent=2))


def example(words: argparse.Namespace, today: date) -> int:
    make_example(words.file, words.since or today)
    print(f"The example farm Pebble Bank is in {words.file}.")
    return 0


def clashes(words: argparse.Namespace, today: date) -> int:
    """Exit code 1 if there are clashes that nobody has accepted, so that a script can ask."""
    opened, since = open_farm(words.file), words.since or today
    found = opened.checked.since(since)
    if words.json:
        _print_json(clashes_json(opened.farm, found, since))
    else:
        print(clashes_text(opened.farm, found, since))
    return 1 if open_clashes(opened.farm, found) else 0


def ways_out_(words: argparse.Namespace, today: date) -> int:
    """Exit code 1 if a clash that was asked for has no way out. Accepted clashes are looked at only by their number."""
    opened, since = open_farm(words.file), words.since or today
    found = list(enumerate(opened.checked.since(since), 1))
    accepted = [one for one in found if acceptance_of(opened.farm, one[1]) is not None]
    if words.clash is not None:
        if not 1 <= words.clash <= len(found):
            many = f"a number from 1 to {len(found)}" if found else "none, as there is no clash"
            raise FarmError([Fault("--clash", words.clash, f"{many} is accepted")])
        found = [found[words.clash - 1]]
    else:
        found = [one for one in found if one not in accepted]
    answers = [(number, clash, look_for_ways_out(opened.checked, clash, since)) for number, clash in found]
    if words.json:
        _print_json(ways_out_json(opened.farm, answers, since))
    else:
        print(ways_out_text(opened.farm, answers, since, len(accepted)))
    return 0 if all(looked.ways for _, _, looked in answers) else 1


def next_set(words: argparse.Namespace, today: date) -> int:
    opened, since = open_farm(words.file), words.since or today
    if words.want is not None or words.by is not None:
        return _wanted(words, opened.checked, since)
    if words.sure is not None:
        raise FarmError([Fault("--sure", words.sure, "it is accepted together with --want and --by")])
    found = next_sets_of(opened.checked, words.kind, since, words.days or _DAYS)
    if words.json:
        _print_json(next_set_json(opened.farm, found))
    else:
        print(next_set_text(opened.checked, found))
    return 0


def _wanted(words: argparse.Namespace, now: Checked, since: date) -> int:
    if words.want is None or words.by is None:
        missing = "--want" if words.want is None else "--by"
        raise FarmError([Fault(missing, Finding("it is missing"), "--want and --by are accepted together")])
    if words.days is not None:
        raise FarmError([Fault("--days", words.days, "with --want every day from which --by can be reached is tried")])
    what, number = words.want
    answer = answer_to(
        now, words.kind, Aim(what, number, (words.sure or now.season.farm.settings.sure_pct) / 100), words.by, since
    )
    if words.json:
        _print_json(wanted_json(now, answer))
    else:
        print(wanted_text(now, answer, since))
    return 0 if answer.offers else 1


def trials(words: argparse.Namespace, today: date) -> int:
    opened, since = open_farm(words.file), words.since or today
    found = [(trial, compare(opened.plan, trial.id, since)) for trial in opened.plan.trials]
    if words.json:
        _print_json(trials_json(opened.plan, found, since))
    else:
        print(trials_text(opened.plan, found))
    return 0


def places(words: argparse.Namespace, today: date) -> int:
    opened, since = open_farm(words.file), words.since or today
    states = place_states(opened.season, since, words.weeks)
    if words.json:
        _print_json(places_json(opened.farm, states, since))
    else:
        print(places_text(opened.farm, states, since))
    return 0


def chores(words: argparse.Namespace, today: date) -> int:
    opened, since = open_farm(words.file), words.since or today
    found = chores_between(opened.season, since, since + timedelta(days=words.days))
    if words.json:
        _print_json(chores_json(opened.farm, found, since, words.days))
    else:
        print(chores_text(opened.farm, found, since, words.days))
    return 0


def calendar(words: argparse.Namespace, today: date) -> int:
    count = give_calendar(open_farm(words.file), words.out, words.since or today, alarms=words.alarms)
    print(f"{count} chores are in {words.out}.")
    return 0


def picture(words: argparse.Namespace, today: date) -> int:
    """The season, or its chores, as a file of the sort that the name ends in."""
    ending = words.out.suffix.lower()
    _require_together(words, ending)
    opened, since = open_farm(words.file), words.since or today
    from quailsched.desktop.paper.chore_sheet import ChoreSheet
    from quailsched.desktop.paper.give import season_file, without_window
    from quailsched.desktop.paper.pages import pdf_of
    from quailsched.desktop.paper.season_page import SeasonPage

    app = without_window()
    farm, paper = opened.farm, words.paper or usual_paper(opened.farm.settings.units)
    if words.chores:
        sheet = ChoreSheet(opened.season, since, today, words.weeks or LEAST_WEEKS)
        data, what = pdf_of(sheet, paper), f"{farm.settings.name}, {sheet.about},"
    else:
        page = SeasonPage(opened.checked, since, today)
        data, what = season_file(page, ending, paper, words.sharp or 1), page.title
    del app
    give_picture(words.out, data)
    print(f"{what} is in {words.out}.")
    return 0


def _require_together(words: argparse.Namespace, ending: str) -> None:
    """What is asked for goes together, or FarmError tells what does not."""
    faults = []
    if words.chores and ending != ".pdf":
        faults.append(Fault("--out", str(words.out), "with --chores a name that ends in .pdf is accepted"))
    if words.weeks is not None and not words.chores:
        faults.append(Fault("--weeks", words.weeks, "it is accepted together with --chores"))
    if words.paper is not None and ending != ".pdf":
        faults.append(Fault("--paper", str(words.paper), "it is accepted for a .pdf"))
    if words.sharp is not None and ending != ".png":
        faults.append(Fault("--sharp", words.sharp, "it is accepted for a .png"))
    if faults:
        raise FarmError(faults)


def measures(words: argparse.Namespace, today: date) -> int:
    books = Books(open_farm(words.file).plan_season, today)
    if words.json:
        _print_json(measures_json(books))
    else:
        print(measures_text(books))
    return 0


def figures(words: argparse.Namespace, today: date) -> int:
    ids = [words.kind] if words.kind else list(handbook())
    if words.farm is not None:
        farm = open_farm(words.farm).farm
        kinds = [kind_in(farm, kind_id) for kind_id in ids]
    else:
        kinds = [handbook()[kind_id] for kind_id in ids]
    if words.json:
        _print_json(figures_json(kinds))
    else:
        print(figures_text(kinds))
    return 0


def export(words: argparse.Namespace, today: date) -> int:
    export_farm(open_farm(words.file), words.document)
    print(f"Everything of {words.file} is in {words.document}.")
    return 0


def import_(words: argparse.Namespace, today: date) -> int:
    import_farm(words.document, words.file)
    print(f"The farm of {words.document} is in {words.file}.")
    return 0


def import_records(words: argparse.Namespace, today: date) -> int:
    """Exit code 1 if rows were left out, 2 if all of them were."""
    opened = open_farm(words.file)
    place_id = _place_id(opened, words.place)
    log = Log(words.sort) if words.sort else None
    order = DayOrder(words.day_order) if words.day_order else None
    options = Options(log, words.delimiter, order, words.decimal, words.kind, place_id)
    taking = _look_at_table(opened, read_table(words.table), options, today)
    if not words.preview:
        take_table(opened, taking)
    if words.json:
        _print_json(taking_json(taking, is_done=not words.preview))
    else:
        print(taking_text(taking, is_done=not words.preview))
    out = len(taking.of(Fate.OUT))
    return 2 if out == len(taking.rows) else 1 if out else 0


def _look_at_table(opened: OpenFarm, text: str, options: Options, today: date) -> Taking:
    """As in the session; where the order of days is open, the words that say it are named."""
    try:
        return look_at_table(opened, text, options, today)
    except FarmError as error:
        names = {"day_order": "--day-order day, month or year"}
        told = [replace(f, accepted=f"{f.accepted}: {names[f.field]}") if f.field in names else f for f in error.faults]
        raise FarmError(told) from None


def _place_id(opened: OpenFarm, name: str | None) -> str:
    """The id of the place with this name; "" for none. Raises FarmError for one that the farm does not have."""
    places = opened.plan.places
    found = [place.id for place in places if name and place.name.strip().casefold() == name.strip().casefold()]
    if name is not None and not found:
        choices = ", ".join(place.name for place in places) or "none, as the farm has no places,"
        raise FarmError([Fault("--place", name, f"one of {choices} is accepted")])
    return found[0] if found else ""


def records(words: argparse.Namespace, today: date) -> int:
    opened = open_farm(words.file)
    tables = give_tables(opened, words.out)
    rows = sum(len(table.rows) for table in tables)
    print(f"{rows:,} rows of {opened.plan.settings.name} are in {len(tables)} tables in {words.out}.")
    return 0


def in_words(opened: OpenFarm, today: date, calendar_to: Path) -> None:
    """The job of the window without a screen: clashes, free places, the next chores, the calendar file."""
    print(clashes_text(opened.farm, opened.checked.since(today), today), end="\n\n")
    print(places_text(opened.farm, place_states(opened.season, today, 8), today), end="\n\n")
    print(chores_text(opened.farm, chores_between(opened.season, today, today + timedelta(days=7)), today, 7))
    count = give_calendar(opened, calendar_to, today)
    print(f"\n{count} chores for a phone or desk calendar are in {calendar_to}.")


def no_screen(file: Path | None, today: date) -> int:
    """There is no screen to open a window on: say so, and do the same job in words."""
    print("There is no screen here, so no window can open; here is the farm in words.\n")
    opened = open_farm(file) if file else home_example(today)
    calendar_to = file.with_suffix(".ics") if file else data_dir() / "Pebble Bank.ics"
    if calendar_to == file:
        calendar_to = file.with_name(f"{file.name}.ics")
    in_words(opened, today, calendar_to)
    return 0
