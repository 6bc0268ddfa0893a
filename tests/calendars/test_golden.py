"""R4 over years: the golden files, whatever the library's version, the hash seed or the time zone."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.calendars.make_golden import GOLDEN, golden_files

ROOT = Path(__file__).parent.parent.parent


@pytest.mark.parametrize("name", sorted(golden_files()))
def test_r4_the_file_has_the_bytes_of_the_golden_one(name: str) -> None:
    assert golden_files()[name] == (GOLDEN / name).read_bytes()


@pytest.mark.parametrize(("seed", "zone"), [("1", "Pacific/Kiritimati"), ("2", "Etc/GMT+12")])
def test_r4_the_bytes_depend_on_neither_the_hash_seed_nor_the_time_zone(seed: str, zone: str) -> None:
    code = (
        "import sys; from tests.calendars.make_golden import golden_files; "
        "sys.stdout.buffer.write(golden_files()['calendar_alarms.ics'])"
    )
    environment = {**os.environ, "PYTHONHASHSEED": seed, "TZ": zone, "PYTHONPATH": str(ROOT)}
    ran = subprocess.run(
        [sys.executable, "-c", code], env=environment, cwd=ROOT, capture_output=True, check=True, timeout=60
    )
    assert ran.stdout == (GOLDEN / "calendar_alarms.ics").read_bytes()
