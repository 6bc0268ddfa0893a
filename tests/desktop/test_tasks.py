"""Work beside the window: results come back on its thread, and no garbage is collected on another one."""

from __future__ import annotations

import gc
import threading

import pytest
from PySide6.QtCore import QThread
from pytestqt.qtbot import QtBot

from quailsched.desktop.tasks import Background


@pytest.fixture
def background(qapp: object) -> Background:
    return Background()


def test_a_result_comes_back_on_the_thread_of_the_window(background: Background, qtbot: QtBot) -> None:
    here, came = QThread.currentThread(), list[tuple[int, bool]]()
    background.run(lambda: 42, lambda result: came.append((result, QThread.currentThread() is here)))
    qtbot.waitUntil(lambda: bool(came))
    assert came == [(42, True)]


def test_garbage_of_the_window_is_not_collected_on_the_thread_of_the_work(background: Background, qtbot: QtBot) -> None:
    threads, done = set[int](), list[object]()

    def note(phase: str, _info: dict[str, int]) -> None:
        if phase == "start":
            threads.add(threading.get_ident())

    def work() -> int:
        return len([{"a": [n]} for n in range(200_000)])  # enough to set a collection off, many times over

    gc.callbacks.append(note)
    try:
        for _ in range(3):
            background.run(work, done.append)
        qtbot.waitUntil(lambda: len(done) == 3)
    finally:
        gc.callbacks.remove(note)
    assert threads <= {threading.get_ident()}
    assert gc.isenabled()


def test_garbage_is_collected_again_when_the_window_goes_with_work_still_running(background: Background) -> None:
    background.run(lambda: sum(range(100_000)), lambda _result: None)
    background.finish()
    assert gc.isenabled()
