"""The whole season as one scene of a given size, nothing picked and nothing scrolled away. No painting."""

from __future__ import annotations

from dataclasses import fields
from datetime import date
from typing import Final

from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.geometry import place_lanes
from quailsched.desktop.season_canvas.lanes import Band, Grouping
from quailsched.desktop.season_canvas.layout import SeasonLayout, fit_span, layout_of
from quailsched.desktop.season_canvas.paint_frame import head_height, names_width
from quailsched.desktop.season_canvas.scale import TimeScale
from quailsched.desktop.season_canvas.scene import Picked, Scene
from quailsched.season.clashes import Checked

_FOR_NAMES: Final = 0.2  # of the width; longer names take two lines
_MOST_LETTERS: Final = 28  # on a band: there is no pointer that would tell what has no room
_BELOW: Final = 4.0


class PaperLayout(SeasonLayout):
    """A layout with names that find room on paper: a long one ends after a word, with three dots."""

    def label(self, band: Band) -> str:
        return brief(SeasonLayout.label(self, band))


def brief(name: str) -> str:
    """As many whole words of ``name`` as have room on a band; letters only of a first word that has none."""
    if len(name) <= _MOST_LETTERS:
        return name
    words = name[: _MOST_LETTERS - 1].rsplit(" ", 1)
    return f"{words[0]} …"


def paper_layout(now: Checked, today: date, grouping: Grouping) -> PaperLayout:
    """The layout of the season of ``now`` with the clashes that are ahead."""
    layout = layout_of(now.season, now.since(today), grouping)
    return PaperLayout(**{field.name: getattr(layout, field.name) for field in fields(layout)})


def lanes_height(layout: SeasonLayout, fonts: Fonts, room: float = 0.0) -> float:
    """Pixels from top to bottom if there are ``room`` of them; the least that can be read if that is more."""
    head = head_height(fonts)
    lanes = place_lanes(layout.lanes, fonts.plain.height, room - head - _BELOW)
    return head + (lanes[-1].bottom if lanes else 0.0) + _BELOW


def whole_scene(layout: SeasonLayout, fonts: Fonts, today: date, width: float, height: float) -> Scene:
    """The days of ``fit_span`` across ``width``, all lanes down ``height`` as far as they can be squeezed."""
    assert layout.season is not None
    head = head_height(fonts)
    left = min(float(names_width(layout.season, layout.lanes, fonts)), width * _FOR_NAMES)
    start, end = fit_span(layout, today)
    return Scene(
        layout=layout,
        lanes=place_lanes(layout.lanes, fonts.plain.height, height - head - _BELOW),
        scale=TimeScale(start, (width - left) / (end - start).days),
        today=today,
        width=width,
        height=height,
        left=left,
        head=head,
        dx=0.0,
        dy=0.0,
        picked=Picked(),
        hovered=Picked(),
    )
