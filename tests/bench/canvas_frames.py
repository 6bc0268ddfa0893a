"""Times of frames of the season canvas on the farm of ten years, as JSON: ``python -m tests.bench.canvas_frames``.

A process of its own, so that the scale of the screen (QT_SCALE_FACTOR) can be set from outside.
"""

from __future__ import annotations

import gc
import json
from collections.abc import Callable, Iterator
from datetime import date
from time import perf_counter

from PySide6.QtCore import QPointF
from PySide6.QtWidgets import QApplication

from quailsched.desktop.garbage import settle
from quailsched.desktop.season_canvas.canvas import SeasonCanvas
from quailsched.desktop.season_canvas.scene import Picked
from quailsched.desktop.theme import LIGHT, show_theme
from quailsched.farm.records import Batch
from quailsched.season.clashes import checked
from quailsched.season.season import Season
from tests.bench.big_farm import big_farm
from tests.bench.timing import floor

_TODAY = date(2029, 3, 5)
_SIZE = (1400, 900)  # logical pixels, as in the measurements of the technique
_DAY_PX = 4.0  # a year and a bit in view
_NEAR_DAYS = 60  # batches that begin this near to today are dragged
_STEP_PX, _STEPS, _SCROLLS = 5, 30, 400

Times = list[tuple[float, float]]  # milliseconds of the floor and of a frame


def main() -> None:
    app = QApplication([])
    show_theme(app, LIGHT)
    now = checked(Season(big_farm()))
    canvas = SeasonCanvas(_TODAY)
    canvas.resize(*_SIZE)
    canvas.show()
    canvas.show_season(now, now.since(_TODAY))
    canvas.zoom(_DAY_PX / canvas.scene().scale.day_px)
    canvas.go_to(_TODAY)
    app.processEvents()
    gc.collect()
    settle()
    print(json.dumps({"drag": _drags(app, canvas), "scroll": _scrolls(app, canvas)}))


def _timed(frames: Iterator[Callable[[], object]]) -> Times:
    times = []
    for frame in frames:
        times.append((_ms(floor), _ms(frame)))
    return times


def _ms(work: Callable[[], object]) -> float:
    start = perf_counter()
    work()
    return (perf_counter() - start) * 1000


def _drags(app: QApplication, canvas: SeasonCanvas) -> Times:
    """Batches near today, each taken in its brooder and moved on by a bit more than a day a frame."""
    assert canvas.season is not None
    times: Times = []
    for batch in canvas.season.farm.batches:
        if abs((batch.start - _TODAY).days) <= _NEAR_DAYS:
            times += _timed(_drag(app, canvas, batch))
    return times


def _drag(app: QApplication, canvas: SeasonCanvas, batch: Batch) -> Iterator[Callable[[], object]]:
    scene = canvas.scene()
    lane = scene.lane_of(batch.stays[2].place_id)
    assert lane is not None
    band = next(one for one in lane.content.bands.items if one.batch_id == batch.id)
    piece = band.pieces[len(band.pieces) // 2]
    left, top, right, bottom = scene.rect_of(lane, piece)
    at = QPointF((left + right) / 2, (top + bottom) / 2)
    canvas.pick(Picked(batch_id=batch.id))
    canvas.take_hold(at)
    canvas.drag.move(at + QPointF(_STEP_PX + 1, 0), weeks=False)  # on its way: what is worked out once is not a frame
    app.processEvents()

    def frame(step: int) -> Callable[[], object]:
        def draw() -> None:
            canvas.drag.move(at + QPointF(_STEP_PX * step, 0), weeks=False)
            app.processEvents()

        return draw

    for step in range(2, _STEPS):
        yield frame(step)
    canvas.cancel_drag()
    app.processEvents()


def _scrolls(app: QApplication, canvas: SeasonCanvas) -> Times:
    canvas.pick(Picked())
    app.processEvents()
    bar = canvas.horizontalScrollBar()

    def frame() -> None:
        bar.setValue(bar.value() + 4 * _STEP_PX)
        app.processEvents()

    bar.setValue(0)
    app.processEvents()
    return _timed(frame for _ in range(_SCROLLS))


if __name__ == "__main__":
    main()
