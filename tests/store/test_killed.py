"""A process that is killed at any moment keeps every change that it was told is saved."""

from __future__ import annotations

import random
import signal
import sqlite3
import subprocess
import sys
import time
from contextlib import closing
from pathlib import Path

import pytest

from quailsched.edits.change import apply
from quailsched.store.farm_file import FarmFile
from tests.store.older import make_version_1
from tests.store.sample import AT, later, small_farm, small_farm_1

# Says the number of each change once it is saved, and goes on until it is killed.
_WRITER = """
import itertools, sys
from pathlib import Path
from quailsched.edits.change import apply
from quailsched.store.farm_file import FarmFile
from tests.store.sample import AT, later, renamed

file = FarmFile.open(Path(sys.argv[1]))
for number in itertools.count(len(file.history()) + 1):
    change = renamed(file.farm, f"farm {number} " + "x" * 20_000)
    file.save(change, apply(file.farm, change), AT)
    print(number, flush=True)
"""

# Dies by itself in the middle of a transaction: rows are out of memory and in the file, the journal beside it.
_DIES_INSIDE = """
import os, sys
from pathlib import Path
from quailsched.edits.change import apply
from quailsched.store.farm_file import FarmFile
from quailsched.store.writing import Transaction
from tests.store.sample import AT, renamed

def die(transaction, step, change):
    connection = transaction._session.connection()
    connection.exec_driver_sql("PRAGMA cache_size = 1")
    connection.exec_driver_sql("PRAGMA cache_spill = 1")
    connection.exec_driver_sql("CREATE TABLE filler (a)")
    for _ in range(200):
        connection.exec_driver_sql("INSERT INTO filler VALUES (randomblob(3000))")
    connection.exec_driver_sql("UPDATE batch SET number = 1, note = hex(randomblob(3000))")
    os._exit(9)

Transaction.write_step = die
file = FarmFile.open(Path(sys.argv[1]))
change = renamed(file.farm, "never")
file.save(change, apply(file.farm, change), AT)
"""


# A process for each statement of the first write to an older file, which dies before that statement. Little of the
# file stays in memory, so that the later ones leave it half written, with the journal that mends it.
_DIES_IN_THE_UPGRADE = """
import os, shutil, sys
from itertools import count
from pathlib import Path
from sqlalchemy import event
from sqlalchemy.engine import Engine
import quailsched.store.writing
from quailsched.edits.change import apply
from quailsched.store.farm_file import FarmFile
from tests.store.sample import AT, renamed

@event.listens_for(Engine, "connect")
def keep_little(database, _):
    database.execute("PRAGMA cache_size = 1")

def first_write(path, last):
    statements = count(1)

    @event.listens_for(Engine, "before_cursor_execute")
    def die(*_):
        if next(statements) == last:
            os._exit(9)

    file = FarmFile.open(path)
    change = renamed(file.farm, "Mill Hill")
    file.save(change, apply(file.farm, change), AT)
    os._exit(0)

old = Path(sys.argv[1])
for last in count(1):
    (old.parent / str(last)).mkdir()
    path = Path(shutil.copy(old, old.parent / str(last)))
    child = os.fork()
    if child == 0:
        first_write(path, last)
    if os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) != 9:
        break
print(last)
"""


def check_integrity(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        assert list(db.execute("PRAGMA integrity_check")) == [("ok",)]
        assert list(db.execute("PRAGMA foreign_key_check")) == []


@pytest.mark.skipif(sys.platform == "win32", reason="kill -9 is POSIX")
def test_a_killed_process_keeps_every_change_that_was_saved(tmp_path: Path) -> None:
    path = tmp_path / "farm.quail"
    FarmFile.create(path, small_farm())
    chance = random.Random(4)
    for _ in range(4):
        before = len(FarmFile.open(path).history())
        with subprocess.Popen([sys.executable, "-c", _WRITER, str(path)], stdout=subprocess.PIPE, text=True) as process:
            assert process.stdout is not None
            process.stdout.readline()
            time.sleep(chance.uniform(0.0, 0.15))
            process.send_signal(signal.SIGKILL)
            told = process.stdout.read().split()
        acknowledged = int(told[-1]) if told else before + 1
        file = FarmFile.open(path)
        steps = len(file.history())
        assert steps in (acknowledged, acknowledged + 1)  # the last one may be saved and not yet told
        assert file.farm.settings.name.startswith(f"farm {steps} ")
        assert file.farm.batches == small_farm().batches
        check_integrity(path)
    file = FarmFile.open(path)
    for _ in range(len(file.history())):
        file.undo()
    assert file.farm == small_farm()


def test_a_process_that_dies_inside_a_change_leaves_nothing_of_it(tmp_path: Path) -> None:
    path = tmp_path / "farm.quail"
    FarmFile.create(path, small_farm())
    whole = path.read_bytes()
    died = subprocess.run([sys.executable, "-c", _DIES_INSIDE, str(path)], capture_output=True, text=True, check=False)
    assert (died.returncode, died.stderr) == (9, "")
    assert path.read_bytes() != whole, "the change had not reached the file, so nothing was tried"
    assert path.with_name("farm.quail-journal").exists()
    assert FarmFile.open(path).farm == small_farm()
    assert path.read_bytes() == whole
    assert [item.name for item in tmp_path.iterdir()] == ["farm.quail"]
    check_integrity(path)


@pytest.mark.skipif(sys.platform == "win32", reason="fork is POSIX")
def test_a_process_that_dies_while_it_brings_an_older_file_up_loses_nothing(tmp_path: Path) -> None:
    old = tmp_path / "farm.quail"
    FarmFile.create(old, small_farm_1())
    make_version_1(old)
    whole = old.read_bytes()
    script = [sys.executable, "-c", _DIES_IN_THE_UPGRADE, str(old)]
    done = subprocess.run(script, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")

    half_written = 0
    for number in range(1, int(done.stdout) + 1):
        path = tmp_path / str(number) / "farm.quail"
        is_killed = number < int(done.stdout)
        half_written += is_killed and path.read_bytes() != whole
        file = FarmFile.open(path)
        if is_killed:
            assert path.read_bytes() == whole
            assert (file.farm, file.history()) == (small_farm_1(), [])
        else:
            assert (file.farm.settings.name, file.undo_label) == ("Mill Hill", "Call it Mill Hill")
        change = later(file.farm)
        file.save(change, apply(file.farm, change), AT)
        assert FarmFile.open(path).farm == file.farm
        copies = [item for item in path.parent.iterdir() if item.suffix == ".quail" and item != path]
        assert [copy.read_bytes() for copy in copies] == [whole]
        check_integrity(path)
    assert half_written > 5, "too few had reached the file, so little was tried"
