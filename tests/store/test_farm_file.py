"""The farm file: what was saved stays saved, what cannot be opened is left as it is."""

import os
import signal
import sqlite3
import subprocess
import sys
import time
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from quailsched.edits.batches import shift
from quailsched.edits.change import apply
from quailsched.edits.records import put, remove
from quailsched.farm.records import Farm, Person
from quailsched.store.errors import StoreError
from quailsched.store.farm_file import FarmFile
from quailsched.store.published import Published
from tests.builders import BROODER, HATCHER, SETTER, eggs, farm, stay
from tests.strategies import farms

NOW = datetime(2027, 4, 6, 8, 0, tzinfo=UTC)
ROOT = Path(__file__).parent.parent.parent
SAMPLES = Path(__file__).parent / "samples"


def life() -> Farm:
    return farm(
        eggs("Aster", 60, stay(SETTER, 0, 15), stay(HATCHER, 15, 18), stay(BROODER, 18, None)), Person("ann", "Ann")
    )


def shifted(file: FarmFile, days: int, at: datetime = NOW) -> None:
    change = shift(file.farm, "aster", days)
    file.save(change, apply(file.farm, change), at)


@pytest.fixture
def file(tmp_path: Path) -> FarmFile:
    return FarmFile.create(tmp_path / "x.quail", life())


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow], max_examples=40)
@given(one=farms())
def test_a_farm_comes_back_as_it_went_in(one: Farm, tmp_path_factory: pytest.TempPathFactory) -> None:
    path = tmp_path_factory.mktemp("farm") / "x.quail"
    FarmFile.create(path, one)
    assert FarmFile.open(path).farm == one
    assert [p.name for p in path.parent.iterdir()] == ["x.quail"]


class Life(RuleBasedStateMachine):
    """Changes, undo, redo and reopening against a plain list of farms."""

    @initialize(one=farms(most_batches=3))
    def begin(self, one: Farm) -> None:
        import tempfile

        self.folder = tempfile.TemporaryDirectory()
        self.file = FarmFile.create(Path(self.folder.name) / "x.quail", one)
        self.past: list[Farm] = [one]
        self.future: list[Farm] = []
        self.clock = NOW

    def save(self, change: object) -> None:
        self.clock += timedelta(seconds=5)
        after = apply(self.file.farm, change)  # type: ignore[arg-type]
        if after == self.file.farm:
            return
        self.file.save(change, after, self.clock)  # type: ignore[arg-type]
        self.past.append(after)
        self.future = []

    @precondition(lambda self: self.file.farm.batches)
    @rule(days=st.integers(-30, 30), data=st.data())
    def move(self, days: int, data: st.DataObject) -> None:
        batch = data.draw(st.sampled_from(self.file.farm.batches))
        self.save(shift(self.file.farm, batch.id, days))

    @rule(
        number=st.integers(0, 4),
        note=st.text(st.characters(codec="utf-8", exclude_categories=["Cs", "Cc"]), max_size=5),
    )
    def put_person(self, number: int, note: str) -> None:
        self.save(put(self.file.farm, Person(f"new {number}", f"New {number}", note=note)))

    @precondition(lambda self: self.file.farm.people)
    @rule(data=st.data())
    def remove_person(self, data: st.DataObject) -> None:
        self.save(remove(self.file.farm, data.draw(st.sampled_from(self.file.farm.people)).id))

    @precondition(lambda self: len(self.past) > 1)
    @rule()
    def undo(self) -> None:
        self.file.undo()
        self.future.append(self.past.pop())

    @precondition(lambda self: self.future)
    @rule()
    def redo(self) -> None:
        self.file.redo()
        self.past.append(self.future.pop())

    @rule()
    def reopen(self) -> None:
        self.file = FarmFile.open(self.file.path)

    @invariant()
    def is_as_it_should_be(self) -> None:
        if not hasattr(self, "file"):
            return
        assert self.file.farm == self.past[-1]
        assert (self.file.undo_label is None) == (len(self.past) == 1)
        assert (self.file.redo_label is None) == (not self.future)
        assert len(self.file.history()) == len(self.past) - 1 + len(self.future)

    def teardown(self) -> None:
        if hasattr(self, "folder"):
            self.folder.cleanup()


TestLife = Life.TestCase
TestLife.settings = settings(
    max_examples=15, stateful_step_count=20, deadline=None, suppress_health_check=list(HealthCheck)
)


def test_undo_survives_closing(file: FarmFile) -> None:
    before = file.farm
    shifted(file, 3)
    again = FarmFile.open(file.path)
    assert again.undo_label == "Set Aster on 4 Mar"
    again.undo()
    assert FarmFile.open(file.path).farm == before
    assert FarmFile.open(file.path).redo_label == "Set Aster on 4 Mar"


def test_nudges_within_a_second_are_one_step(file: FarmFile) -> None:
    before = file.farm
    for number in range(3):
        shifted(file, 1, NOW + timedelta(milliseconds=300 * number))
    assert [entry.label for entry in file.history()] == ["Set Aster on 4 Mar"]
    shifted(file, 1, NOW + timedelta(seconds=9))
    assert len(file.history()) == 2
    file.undo()
    file.undo()
    assert file.farm == before


def test_a_new_step_drops_those_that_were_undone(file: FarmFile) -> None:
    shifted(file, 3)
    file.undo()
    shifted(file, 5, NOW + timedelta(minutes=1))
    assert file.redo_label is None
    assert [entry.label for entry in file.history()] == ["Set Aster on 6 Mar"]


def test_published_entries_are_kept(file: FarmFile) -> None:
    entries = [Published("u1", "abc", 0, NOW), Published("u2", "def", 3, NOW)]
    file.save_published(entries)
    assert list(FarmFile.open(file.path).published().values()) == entries
    file.save_published(entries[1:])
    assert list(FarmFile.open(file.path).published()) == ["u2"]


def test_a_change_from_elsewhere_is_not_overwritten(file: FarmFile) -> None:
    other = FarmFile.open(file.path)
    shifted(other, 2)
    saved = file.path.read_bytes()
    before = file.farm
    with pytest.raises(StoreError, match=r"x\.quail"):
        shifted(file, 5)
    assert file.farm == before
    assert file.path.read_bytes() == saved


def corrupt(path: Path, how: str) -> None:
    data = path.read_bytes()
    if how == "newer":
        data = data[:60] + (7).to_bytes(4, "big") + data[64:]
    elif how == "half":
        data = data[: len(data) // 2]
    elif how == "head":
        data = data[:50]
    elif how == "empty":
        data = b""
    elif how == "text":
        data = b"Dear diary, " * 500
    elif how == "other":
        data = data[:68] + b"\0\0\0\0" + data[72:]
    elif how == "scribble":
        data = data[:4096] + b"\xff" * 8192 + data[4096 + 8192 :]
    path.write_bytes(data)


@pytest.mark.parametrize(
    ("how", "words"),
    [
        ("newer", "was written by a newer Quailsched (version 7, this one reads up to 1). It was left as it is."),
        ("half", "is damaged"),
        ("head", "is damaged"),
        ("empty", "is empty"),
        ("text", "is not a farm file"),
        ("other", "of another program"),
        ("scribble", "is damaged"),
    ],
)
def test_what_cannot_be_opened_is_said_and_left_as_it_is(file: FarmFile, how: str, words: str) -> None:
    corrupt(file.path, how)
    bytes_before, time_before = file.path.read_bytes(), file.path.stat().st_mtime_ns
    with pytest.raises(StoreError) as caught:
        FarmFile.open(file.path)
    assert words in str(caught.value)
    assert file.path.read_bytes() == bytes_before
    assert file.path.stat().st_mtime_ns == time_before
    assert [p.name for p in file.path.parent.iterdir()] == ["x.quail"]


def test_files_and_folders_that_are_not_there(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="there is no such file"):
        FarmFile.open(tmp_path / "none.quail")
    with pytest.raises(StoreError, match="not a file"):
        FarmFile.open(tmp_path)
    with pytest.raises(StoreError, match="cannot be made"):
        FarmFile.create(tmp_path / "no" / "folder" / "x.quail", life())
    assert list(tmp_path.iterdir()) == []


def test_a_file_that_is_there_is_never_replaced(file: FarmFile) -> None:
    before = file.path.read_bytes()
    with pytest.raises(StoreError, match="is there already and was left as it is"):
        FarmFile.create(file.path, life())
    assert file.path.read_bytes() == before


def test_a_write_that_fails_leaves_farm_history_and_file_unchanged(file: FarmFile) -> None:
    shifted(file, 3)
    with sqlite3.connect(file.path) as db:
        db.execute("CREATE TRIGGER no BEFORE INSERT ON journal BEGIN SELECT RAISE(ABORT, 'the disk is on fire'); END")
    db.close()
    fresh = FarmFile.open(file.path)
    saved, farm_before, history = fresh.path.read_bytes(), fresh.farm, fresh.history()
    with pytest.raises(StoreError, match="nothing was changed"):
        shifted(fresh, 5, NOW + timedelta(minutes=1))
    assert (fresh.farm, fresh.history()) == (farm_before, history)
    assert fresh.path.read_bytes() == saved


def test_a_locked_file_is_told_in_a_sentence(file: FarmFile, monkeypatch: pytest.MonkeyPatch) -> None:
    locker = sqlite3.connect(file.path, isolation_level=None)
    locker.execute("BEGIN EXCLUSIVE")
    try:
        with pytest.raises(StoreError, match="another program is writing"):
            shifted(file, 5)
    finally:
        locker.close()
    shifted(file, 5)


KILLED = """
import sys
from datetime import datetime, UTC, timedelta
from pathlib import Path
from quailsched.edits.batches import shift
from quailsched.edits.change import apply
from quailsched.store.farm_file import FarmFile
file = FarmFile.open(Path(sys.argv[1]))
at = datetime(2027, 4, 6, tzinfo=UTC)
for number in range(100000):
    change = shift(file.farm, "aster", 1)
    file.save(change, apply(file.farm, change), at + timedelta(minutes=number))
    print(number + 1, flush=True)
"""


@pytest.mark.skipif(os.name != "posix", reason="needs kill -9")
@pytest.mark.parametrize("wait", [0.05, 0.2, 0.45])
def test_a_killed_process_loses_nothing_that_it_had_acknowledged(file: FarmFile, wait: float) -> None:
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    start = file.farm.batch("aster").start
    with subprocess.Popen(
        [sys.executable, "-c", KILLED, str(file.path)], stdout=subprocess.PIPE, text=True, env=env
    ) as child:
        assert child.stdout is not None
        assert child.stdout.readline() == "1\n"
        time.sleep(wait)
        child.send_signal(signal.SIGKILL)
        said = [int(line) for line in child.stdout if line.endswith("\n")]
    acknowledged = said[-1] if said else 1
    after = FarmFile.open(file.path)
    moved = (after.farm.batch("aster").start - start).days
    assert moved in (acknowledged, acknowledged + 1)
    assert len(after.history()) == moved
    while after.undo_label is not None and moved:
        after.undo()
        moved -= 1
    assert after.farm == file.farm


def test_opening_needs_no_orm(file: FarmFile) -> None:
    code = (
        "import sys; from pathlib import Path; from quailsched.store.farm_file import FarmFile; "
        f"FarmFile.open(Path({str(file.path)!r})); print('sqlmodel' in sys.modules or 'sqlalchemy' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


@pytest.mark.parametrize("sample", sorted(SAMPLES.glob("*.quail")), ids=lambda path: path.name)
def test_a_file_of_every_schema_so_far_opens(sample: Path, tmp_path: Path) -> None:
    copy = tmp_path / sample.name
    copy.write_bytes(sample.read_bytes())
    opened = FarmFile.open(copy)
    assert [batch.name for batch in opened.farm.batches][:2] == ["Aster", "Bracken"]
    change = put(opened.farm, replace(opened.farm.people[0], note="changed"))
    opened.save(change, apply(opened.farm, change), NOW)
    assert FarmFile.open(copy).farm.people[0].note == "changed"


def test_there_is_a_sample_of_every_schema() -> None:
    from quailsched.store.layout import SCHEMA_VERSION

    assert [path.name for path in sorted(SAMPLES.glob("*.quail"))] == [
        f"schema_{n}.quail" for n in range(1, SCHEMA_VERSION + 1)
    ]
