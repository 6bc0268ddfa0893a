"""Strict settings for every test: no screen, no settings of the person who runs them, no unexpected log."""

from __future__ import annotations

import logging
import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# Time limits are off: a busy machine is no fault of the code. The ci profile repeats the same examples.
settings.register_profile("dev", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.register_profile(
    "ci",
    deadline=None,
    derandomize=True,
    max_examples=200,
    print_blob=True,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.load_profile("ci" if os.environ.get("CI") else "dev")


@pytest.fixture(autouse=True)
def _own_settings(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Settings, data and caches of the program go to a folder of the test."""
    home = tmp_path_factory.mktemp("home")
    monkeypatch.setenv("HOME", str(home))
    for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CACHE_HOME"):
        monkeypatch.setenv(name, str(home / name.lower()))
    return home


@pytest.fixture(autouse=True)
def _no_unexpected_log(request: pytest.FixtureRequest, caplog: pytest.LogCaptureFixture) -> Iterator[None]:
    """A warning or error that the program logs fails the test, unless it is marked ``logs_expected``."""
    yield
    if request.node.get_closest_marker("logs_expected") is None:
        logged = [r.getMessage() for r in caplog.get_records("call") if r.levelno >= logging.WARNING]
        assert not logged, f"logged unexpectedly: {logged}"
