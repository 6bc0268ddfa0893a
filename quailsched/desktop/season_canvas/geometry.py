"""Where lanes lie on the canvas: heights from the contents and the room there is. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from quailsched.desktop.season_canvas.lanes import LaneContent
from quailsched.farm.records import Role

# Heights in units of the font's height: a place that fills slowly needs more to show its steps.
_BODY = {
    Role.SETTER: 2.5,
    Role.HATCHER: 2.3,
    Role.CABINET: 2.3,
    Role.BROODER: 4.6,
    Role.PEN: 5.2,
    Role.GRASS_PEN: 3.2,
}
_LABEL = 1.5  # room above the line for a clash's days
_MARK = 0.95  # one row of clash marks below the lane
_BELOW = 0.5
_MOST_OVER = 0.9  # overflow is shown to this share of the body; more is cut, the label says how much
_LEAST_FACTOR, _MOST_FACTOR = 0.55, 1.6


@dataclass(frozen=True, slots=True)
class Lane:
    """A lane in pixels from the top of the lanes: ``line_y`` is full, ``base_y`` empty."""

    content: LaneContent
    top: float
    line_y: float
    base_y: float
    bottom: float
    mark_height: float

    def y(self, load: int) -> float:
        """The height at which ``load`` ends; never above the lane's own room for overflow."""
        share = load / self.content.room if self.content.room else 0.0
        return self.base_y - min(share, 1 + _MOST_OVER) * (self.base_y - self.line_y)

    def mark_y(self, row: int) -> float:
        return self.base_y + 2 + row * self.mark_height


def place_lanes(contents: Sequence[LaneContent], font_height: float, height: float) -> tuple[Lane, ...]:
    """Lanes below each other, stretched or squeezed to ``height`` as far as they stay readable."""
    fixed = sum(_LABEL + content.mark_rows * _MARK for content in contents) * font_height
    supple = sum(_over(content) + _BODY[content.place.role] + _BELOW for content in contents) * font_height
    factor = max(min((height - fixed) / supple, _MOST_FACTOR), _LEAST_FACTOR) if supple else 1.0
    unit = font_height * factor
    lanes: list[Lane] = []
    top = 0.0
    for content in contents:
        line_y = top + font_height * _LABEL + _over(content) * unit
        base_y = line_y + _BODY[content.place.role] * unit
        bottom = base_y + content.mark_rows * _MARK * font_height + _BELOW * unit
        lanes.append(Lane(content, top, line_y, base_y, bottom, _MARK * font_height))
        top = bottom
    return tuple(lanes)


def _over(content: LaneContent) -> float:
    over = min(max(content.peak / content.room - 1, 0.0), _MOST_OVER) if content.room else 0.0
    return over * _BODY[content.place.role]
