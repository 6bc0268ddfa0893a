"""When Python looks for garbage once a window is there."""

import gc
from collections.abc import Iterator
from weakref import ref

import pytest

from quailsched.desktop.garbage import settle


@pytest.fixture(autouse=True)
def as_before() -> Iterator[None]:
    before = gc.get_threshold()
    yield
    gc.unfreeze()
    gc.set_threshold(*before)


class Ring:
    """Garbage that only the collector finds."""

    def __init__(self) -> None:
        self.own = self


def test_what_is_there_is_not_looked_through_any_more() -> None:
    gc.collect()
    number = len(gc.get_objects())
    settle()
    assert gc.get_freeze_count() >= number - 100
    assert len(gc.get_objects()) < 100


def test_a_frame_is_not_looked_through_but_what_a_drag_leaves_is_collected() -> None:
    settle()
    looks: list[str] = []
    gc.callbacks.append(note := lambda phase, _info: looks.append(phase))
    try:
        frame = [[number] for number in range(5_000)]
        del frame
        assert looks == []
        left = ref(ring := Ring())
        del ring
        kept = [[number] for number in range(25_000)]
        assert looks[:2] == ["start", "stop"]
        assert left() is None
        del kept
    finally:
        gc.callbacks.remove(note)
