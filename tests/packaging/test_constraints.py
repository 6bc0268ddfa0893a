"""The pins of constraints.txt: complete, inside the bounds of pyproject.toml, and free of this or that machine."""

from __future__ import annotations

import re
import tomllib
from importlib import metadata
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
LINES = [
    line
    for line in (ROOT / "packaging" / "constraints.txt").read_text(encoding="utf-8").splitlines()
    if line and not line.startswith("#")
]
PINS = {canonicalize_name(Requirement(line).name): Requirement(line) for line in LINES}


def _bounds() -> list[Requirement]:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    texts: list[str] = project["dependencies"] + project["optional-dependencies"]["check"]
    return [Requirement(text) for text in texts]


@pytest.mark.parametrize("bound", _bounds(), ids=str)
def test_every_dependency_is_pinned_inside_its_bounds(bound: Requirement) -> None:
    pin = PINS[canonicalize_name(bound.name)]
    (version,) = [spec.version for spec in pin.specifier if spec.operator == "=="]
    assert bound.specifier.contains(version)


def test_what_the_dependencies_need_is_pinned_too() -> None:
    names = {canonicalize_name(bound.name) for bound in _bounds()}
    waiting = list(names)
    while waiting:
        for text in metadata.requires(waiting.pop()) or []:
            needed = Requirement(text)
            name = canonicalize_name(needed.name)
            if name not in names and (needed.marker is None or needed.marker.evaluate({"extra": ""})):
                names.add(name)
                waiting.append(name)
    assert names <= PINS.keys()


@pytest.mark.parametrize("line", LINES)
def test_a_pin_is_a_name_and_a_version_and_names_no_host_or_path(line: str) -> None:
    assert re.fullmatch(r"[A-Za-z0-9._-]+==[0-9A-Za-z.]+", line)
