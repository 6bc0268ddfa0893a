"""The core stands on the standard library alone, but for the days on which a chore of the keeper's own comes round;
import-linter's contracts can only name what they forbid."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

PACKAGE = Path(__file__).parents[2] / "quailsched"
CORE = ("husbandry", "farm", "season", "chores", "edits")
OWN = {*(f"quailsched.{name}" for name in CORE), "quailsched.quick", "quailsched.resources", "quailsched.words"}
ALLOWED = {"dateutil.rrule"}  # RFC 5545 recurrence: values in, days out
FILES = sorted(path for name in CORE for path in (PACKAGE / name).rglob("*.py"))


def _imported(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}, line {node.lineno}: imports are absolute here"
            module = node.module or ""
            if module == "quailsched":
                yield from (f"quailsched.{alias.name}" for alias in node.names)
            else:
                yield module


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(PACKAGE).as_posix())
def test_a_core_module_imports_the_standard_library_and_the_core_only(path: Path) -> None:
    strangers = [
        name
        for name in _imported(path)
        if name.split(".")[0] not in sys.stdlib_module_names and ".".join(name.split(".")[:2]) not in OWN | ALLOWED
    ]
    assert strangers == []
