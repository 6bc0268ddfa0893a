"""Random changes, undos, redos and restarts against a plain list of farms."""

from __future__ import annotations

import shutil
import tempfile
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from quailsched.edits.change import Change, Touch, apply
from quailsched.farm.check import faults_of
from quailsched.farm.records import Acceptance, Farm, Person, Place, Record, Settings, Trial
from quailsched.store.farm_file import FarmFile
from tests.store.sample import AT
from tests.strategies import acceptances, batches, farms, ids, names, people, places, settings_records, trials


class History(RuleBasedStateMachine):
    """``farms`` are those of every step from the start on, ``here`` the one that stands."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = Path(tempfile.mkdtemp())
        self.path = self.folder / "farm.quail"
        self.at = AT
        self.number = 1_000

    def teardown(self) -> None:
        shutil.rmtree(self.folder)

    @initialize(farm=farms(most_places=3, most_batches=2))
    def make(self, farm: Farm) -> None:
        self.file = FarmFile.create(self.path, farm)
        self.farms, self.labels, self.here = [farm], [""], 0

    @rule(data=st.data(), merges=st.booleans())
    def change(self, data: st.DataObject, merges: bool) -> None:
        farm = self.file.farm
        touches = tuple(
            touch for touch in [self._touch(data, farm) for _ in range(data.draw(st.integers(1, 2)))] if touch
        )
        if len({touch.record_id for touch in touches}) < len(touches):
            touches = touches[:1]
        change = Change(f"step {self.number}", touches, "nudge" if merges else "")
        self.number += 1
        after = apply(farm, change)
        if faults_of(after) or change.is_empty():
            return
        self.at += timedelta(seconds=2)
        self.file.save(change, after, self.at)
        self._stand(after, change.label)

    @rule(days=st.lists(st.integers(-3, 3).filter(bool), min_size=1, max_size=4), data=st.data())
    def nudge(self, days: list[int], data: st.DataObject) -> None:
        """Quick steps with one key are one step; if they lead back, none."""
        if not self.file.farm.batches:
            return
        batch_id = data.draw(st.sampled_from(self.file.farm.batches)).id
        before = self.file.farm
        self.at += timedelta(seconds=2)
        for step in days:
            batch = self.file.farm.batch(batch_id)
            moved = batch.moved_to(batch.start + timedelta(days=step))
            change = Change(f"nudge {self.number}", (Touch(batch, moved),), f"start {batch_id} {self.number}")
            self.file.save(change, apply(self.file.farm, change), self.at)
            self.at += timedelta(milliseconds=300)
        del self.farms[self.here + 1 :], self.labels[self.here + 1 :]
        # Steps that led back to the start left nothing to join, so the next one began anew.
        if self.file.farm != before:
            self._stand(self.file.farm, f"nudge {self.number}")
        self.number += 1

    def _stand(self, farm: Farm, label: str) -> None:
        self.farms[self.here + 1 :] = [farm]
        self.labels[self.here + 1 :] = [label]
        self.here += 1

    def _touch(self, data: st.DataObject, farm: Farm) -> Touch | None:
        """Something new, something changed or something gone."""
        before = data.draw(st.none() | st.sampled_from(farm.records()))
        if before is None:
            self.number += 1
            return Touch(None, data.draw(self._new(farm)))
        if isinstance(before, Settings):
            return Touch(before, data.draw(settings_records(before.id)))
        if data.draw(st.booleans()):
            return Touch(before, None)
        if isinstance(before, Place):
            return Touch(before, data.draw(places(before.id, before.name, (before.role,))))
        if isinstance(before, Person):
            return Touch(before, data.draw(people(before.id, before.name)))
        if isinstance(before, Trial):
            return Touch(before, data.draw(trials(before.id, before.name, farm.batches)))
        if isinstance(before, Acceptance):
            return Touch(before, replace(before, reason=data.draw(names()), days=before.days + 1))
        return Touch(before, replace(before, id=before.id, **self._other(data, before)))  # type: ignore[arg-type]

    def _new(self, farm: Farm) -> st.SearchStrategy[Record]:
        record_id, name = ids(self.number), f"no. {self.number}"
        new: list[st.SearchStrategy[Record]] = [
            places(record_id, name),
            people(record_id, name),
            trials(record_id, name, farm.batches),
        ]
        if farm.places:
            new.append(batches(record_id, name, farm.places))
        if farm.batches:
            new.append(acceptances(record_id, farm.places, farm.batches))
        return st.one_of(new)

    def _other(self, data: st.DataObject, record: Record) -> dict[str, object]:
        field = "reason" if hasattr(record, "reason") else "note"
        return {field: data.draw(st.text("ab“”\n", max_size=5))}

    @precondition(lambda self: self.here > 0)
    @rule()
    def undo(self) -> None:
        before = self.file.farm
        change = self.file.undo()
        self.here -= 1
        assert apply(before, change) == self.file.farm

    @precondition(lambda self: self.here < len(self.farms) - 1)
    @rule()
    def redo(self) -> None:
        before = self.file.farm
        change = self.file.redo()
        self.here += 1
        assert apply(before, change) == self.file.farm

    @rule()
    def reopen(self) -> None:
        self.file = FarmFile.open(self.path)

    @invariant()
    def stands_where_it_should(self) -> None:
        assert self.file.farm == self.farms[self.here]
        assert [entry.label for entry in self.file.history()] == self.labels[1:]
        assert [entry.is_undone for entry in self.file.history()].count(False) == self.here
        assert self.file.undo_label == (self.labels[self.here] or None)
        is_last = self.here == len(self.farms) - 1
        assert self.file.redo_label == (None if is_last else self.labels[self.here + 1])
        assert FarmFile.open(self.path).farm == self.file.farm


TestHistory = History.TestCase
TestHistory.settings = settings(max_examples=25, stateful_step_count=20, deadline=None)
