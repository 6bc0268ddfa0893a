"""Writes samples of the present version: a farm file with a history and published entries, and a document.

Run it once a version, before the next one comes, and add the farm to ``FIRST`` of ``test_history_samples``:

    python -m tests.store.samples.make_history_sample

A sample is never written anew: it is what keepers have on their disks.
"""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from quailsched.edits.change import Change, apply
from quailsched.store.document_file import write_document
from quailsched.store.farm_file import FarmFile
from quailsched.store.layout import SCHEMA_VERSION
from tests.store.sample import AT, PUBLISHED, later, renamed, small_farm

HERE = Path(__file__).parent


def main() -> None:
    """The small farm with two steps done, the last of them merged from two, and one undone; its document."""
    file = FarmFile.create(HERE / f"history_{SCHEMA_VERSION}.sample", small_farm(), PUBLISHED)
    save(file, renamed(file.farm, "Mill End"), 0)
    save(file, later(file.farm, 2, "nudge"), 60)
    save(file, later(file.farm, 3, "nudge"), 60)
    save(file, renamed(file.farm, "Mill Hill"), 120)
    file.undo()
    write_document(HERE / f"document_{SCHEMA_VERSION}.json", small_farm(), PUBLISHED)


def save(file: FarmFile, change: Change, seconds: int) -> None:
    file.save(change, apply(file.farm, change), AT + timedelta(seconds=seconds))


if __name__ == "__main__":
    main()
