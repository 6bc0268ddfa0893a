"""Where lanes lie on the canvas: heights from the contents and the room there is. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from quailsched.desktop.season_canvas.lanes import LaneContent
from quailsched.quick import dataclass

_LABEL = 1.5  # room above the line for a clash's days, in heights of the font
_PLAIN_LABEL = 0.5  # above a lane that nothing can stand over
_MARK = 0.95  # one row of clash marks below the lane
_BELOW = 0.5
_MOST_OVER = 0.9  # overflow is shown to this share of the body; more is cut, the label says how much
_LEAST_FACTOR, _MOST_FACTOR = 0.55, 1.6


@dataclass(frozen=True, slots=True)
class Room:
    """What a lane needs beside its body: ``over`` above the line, as a share of the body; rows of marks below it."""

    over: float
    mark_rows: int


@dataclass(frozen=True, slots=True)
class Lane:
    """A lane in pixels from the top of the lanes: ``line_y`` is full, ``base_y`` empty."""

    content: LaneContent
    room: Room
    top: float
    line_y: float
    base_y: float
    bottom: float
    mark_height: float

    def y(self, load: float) -> float:
        """The height at which ``load`` ends; never above the lane's own room for overflow."""
        share = load / self.content.room if self.content.room else 0.0
        return max(self.base_y - min(share, 1 + _MOST_OVER) * (self.base_y - self.line_y), self.top)

    def mark_y(self, row: int) -> float:
        """The top of a row of marks; what there is no row for, in a drag, shares the last one."""
        return self.base_y + 2 + min(row, max(self.room.mark_rows, 1) - 1) * self.mark_height

    @property
    def foot(self) -> float:
        """Where the last that is drawn of it ends: in a drag, marks may come for which there is no row."""
        return max(self.bottom, self.mark_y(0) + self.mark_height) if self.content.marks.items else self.bottom

    def is_like(self, other: Lane) -> bool:
        """Whether both lie at the same height, whatever they show."""
        return self is other or (self.top == other.top and self.is_as_high_as(other))

    def is_as_high_as(self, other: Lane) -> bool:
        """Whether line and base lie at the same heights in both, from the top of the lane."""
        return self is other or self._heights() == other._heights()

    def _heights(self) -> tuple[float, ...]:
        return tuple(round(y - self.top, 6) for y in (self.line_y, self.base_y, self.bottom))


def place_lanes(contents: Sequence[LaneContent], font_height: float, height: float) -> tuple[Lane, ...]:
    """Lanes below each other, stretched or squeezed to ``height`` as far as they stay readable."""
    rooms = [_room_beside(content) for content in contents]
    pairs = list(zip(contents, rooms, strict=True))
    unit = _unit(pairs, font_height, height)
    lanes: list[Lane] = []
    top = 0.0
    for content, room in pairs:
        line_y = top + font_height * _label(content) + room.over * content.body * unit
        base_y = line_y + content.body * unit
        bottom = base_y + room.mark_rows * _MARK * font_height + _BELOW * unit
        lanes.append(Lane(content, room, top, line_y, base_y, bottom, _MARK * font_height))
        top = bottom
    return tuple(lanes)


def in_lanes(contents: Sequence[LaneContent], lanes: Sequence[Lane]) -> tuple[Lane, ...] | None:
    """``contents`` in ``lanes`` as they lie: in a drag nothing jumps up and down. None if they are other lanes."""
    if [content.id for content in contents] != [lane.content.id for lane in lanes]:
        return None
    return tuple(
        lane if lane.content is content else replace(lane, content=content)
        for content, lane in zip(contents, lanes, strict=True)
    )


def _unit(pairs: Sequence[tuple[LaneContent, Room]], font_height: float, height: float) -> float:
    fixed = sum(_label(content) + room.mark_rows * _MARK for content, room in pairs) * font_height
    supple = sum((1 + room.over) * content.body + _BELOW for content, room in pairs) * font_height
    factor = max(min((height - fixed) / supple, _MOST_FACTOR), _LEAST_FACTOR) if supple else 1.0
    return font_height * factor


def _room_beside(content: LaneContent) -> Room:
    """What ``content`` needs above its line and below its base."""
    over = min(max(content.peak() / content.room - 1, 0.0), _MOST_OVER) if content.room else 0.0
    return Room(over, content.mark_rows())


def _label(content: LaneContent) -> float:
    return _LABEL if content.place is not None else _PLAIN_LABEL
