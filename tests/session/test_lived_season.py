"""Forty weeks lived by a script: every number is conserved, all of it can be undone and done again, and a process that
is killed loses no more than the entry that it was writing."""

from __future__ import annotations

import random
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from quailsched.farm.check import faults_of
from quailsched.farm.facts import Sort
from quailsched.farm.ledger import standing, total
from quailsched.farm.records import Batch, Farm, Part
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from quailsched.session.farms import open_farm
from quailsched.session.open_farm import OpenFarm
from quailsched.store.document import export_document
from quailsched.store.farm_file import FarmFile
from tests.session.lived_season import Ids, empty_farm, live


@pytest.fixture(scope="module")
def lived(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, str, str]:
    """A file in which 40 weeks were lived, and the documents of its farm at the beginning and at the end."""
    path = tmp_path_factory.mktemp("season") / "farm.quail"
    opened = OpenFarm(FarmFile.create(path, empty_farm(Ids())))
    start = export_document(opened.plan)
    for _ in live(opened):
        pass
    return path, start, export_document(opened.plan)


def unaccounted(farm: Farm, batch: Batch) -> int:
    """Birds of ``batch`` that hatched, came or joined and are neither alive on its last count nor known to be gone."""
    counts = standing(farm.counts_of(batch.id))
    own = [count for count in counts if count.batch_id == batch.id]
    season = Season(farm)
    lived = season.lived(batch)
    came = total(own, Sort.HATCHED) if batch.origin.is_eggs else batch.number
    came += sum(one.number for one in counts if one.sort is Sort.JOINED and one.to_batch_id == batch.id)
    gone = total(own, Sort.DIED, Sort.SOLD, Sort.PROCESSED, Sort.PARTED, Sort.JOINED)
    last = season.days(batch).hatch if lived.known_to is None else lived.known_to
    alive = season.birds(batch, batch.start.fromordinal(batch.start.toordinal() + max(last, 0)))
    return came - gone - alive


def test_a_season_has_two_thousand_counts_and_every_bird_and_egg_is_accounted_for(lived: tuple[Path, str, str]) -> None:
    farm = open_farm(lived[0]).plan
    assert len(farm.counts) >= 2_000
    assert len({count.sort for count in farm.counts}) >= 14
    assert faults_of(farm) == []
    hatched = [b for b in farm.batches if Season(farm).lived(b).hatched is not None or not b.origin.is_eggs]
    assert len(hatched) >= 12
    assert {batch.name: unaccounted(farm, batch) for batch in hatched} == {batch.name: 0 for batch in hatched}
    for batch in hatched:
        own = [count for count in standing(farm.counts_of(batch.id)) if count.batch_id == batch.id]
        assert total(own, Sort.CLEAR, Sort.QUIT, Sort.HATCHED) <= batch.number
        parts = [stay.part for stay in batch.stays]
        if Part.HENS in parts and Part.COCKS in parts:
            season, day = Season(farm), max(count.day for count in own)
            both = season.birds(batch, day, Part.HENS) + season.birds(batch, day, Part.COCKS)
            assert both == season.birds(batch, day)


def test_what_was_looked_at_step_by_step_is_what_a_fresh_look_finds(
    lived: tuple[Path, str, str], tmp_path: Path
) -> None:
    copy = tmp_path / "copy.quail"
    shutil.copy(lived[0], copy)
    opened = open_farm(copy)
    opened.go_to(0)
    opened.checked.clashes  # noqa: B018 - looked at here, and then only again where something changes
    for step in range(1, 400):
        opened.go_to(step)
        if step % 40 == 0:
            assert opened.checked.clashes == checked(Season(opened.plan)).clashes


def test_all_of_it_is_undone_to_the_start_and_done_again_to_the_end(
    lived: tuple[Path, str, str], tmp_path: Path
) -> None:
    path, start, end = lived
    copy = tmp_path / "copy.quail"
    shutil.copy(path, copy)
    opened = open_farm(copy)
    steps = len(opened.history())
    assert steps > 2_000
    opened.go_to(0)
    assert export_document(open_farm(copy).plan) == start
    for _ in range(60):
        opened.redo()
    middle = export_document(opened.plan)
    opened.go_to(steps)
    assert export_document(open_farm(copy).plan) == end
    opened.go_to(120)
    for _ in range(60):
        opened.undo()
    assert export_document(open_farm(copy).plan) == middle


def test_a_killed_process_loses_at_most_the_entry_that_it_was_writing(
    lived: tuple[Path, str, str], tmp_path: Path
) -> None:
    copy = tmp_path / "reference.quail"
    shutil.copy(lived[0], copy)
    reference = open_farm(copy)
    chance = random.Random(11)
    for number in range(4):
        path = tmp_path / f"killed-{number}.quail"
        FarmFile.create(path, empty_farm(Ids()))
        command = [sys.executable, "-m", "tests.session.lived_season", str(path)]
        with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as process:
            assert process.stdout is not None
            process.stdout.readline()  # it has begun to write
            time.sleep(chance.uniform(0.2, 2.0))
            process.send_signal(signal.SIGKILL)
            told = [int(line) for line in process.stdout.read().split() if line.isdigit()]
        killed = open_farm(path)
        steps = len(killed.history())
        assert (told[-1] if told else 1) <= steps <= (told[-1] if told else 1) + 1
        reference.go_to(steps)
        assert export_document(killed.plan) == export_document(reference.plan)
