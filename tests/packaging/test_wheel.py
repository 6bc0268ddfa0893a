"""The wheel: the program with its resources, and nothing else."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from zipfile import ZipFile

ROOT = Path(__file__).parents[2]


def test_the_wheel_holds_the_program_its_resources_and_nothing_else(tmp_path: Path) -> None:
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", tmp_path],
        cwd=ROOT,
        check=True,
        capture_output=True,
    )
    (wheel,) = tmp_path.glob("*.whl")
    names = set(ZipFile(wheel).namelist())
    folder = ROOT / "resources"
    resources = [path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()]
    assert resources
    assert {f"quailsched/resources_packed/{name}" for name in resources} <= names
    assert "quailsched/__init__.py" in names
    assert {name.split("/")[0].split("-")[0] for name in names} == {"quailsched"}
