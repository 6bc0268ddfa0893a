"""Colours by role, in light and dark. Every colour of the window stands here; the one red means clash.

How Qt is told of them is in ``style_sheet``.
"""

from __future__ import annotations

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from quailsched.desktop.style_sheet import palette_of, sheet_of
from quailsched.quick import dataclass


@dataclass(frozen=True, slots=True)
class BatchColour:
    """A band's fill and the ink that reads on it."""

    fill: str
    ink: str


@dataclass(frozen=True, slots=True)
class Theme:
    is_dark: bool
    paper: str  # background
    top: str  # bar along the top
    rail: str  # views along the left
    rail_on: str  # the view that is shown
    card: str  # panels
    sunk: str  # quiet boxes in panels, fields
    lane: str  # background of a lane in the season
    line: str  # hairlines and borders that tell nothing by themselves
    edge: str  # the edge of a field or box to fill in
    ink: str
    soft: str  # secondary text
    clash: str  # means clash and nothing else
    clash_tint: str
    on_clash: str
    shut: str  # out of use
    shut_line: str
    good: str  # the way forward: main buttons, focus
    good_tint: str
    on_good: str
    batches: tuple[BatchColour, ...]  # rust, plum, violet, blue, green, ochre, stone, teal: told apart by all, tested

    faded: float  # the share of its colour that a batch keeps while another is picked, so that names on it still read

    def batch(self, number: int) -> BatchColour:
        return self.batches[number % len(self.batches)]


LIGHT = Theme(
    is_dark=False,
    paper="#fbf8f2",
    top="#efe7d8",
    rail="#f6f0e4",
    rail_on="#e7dbc4",
    card="#ffffff",
    sunk="#f7f2e8",
    lane="#f3ede1",
    line="#ddd3c1",
    edge="#8a7f6b",
    ink="#2b2622",
    soft="#695f52",
    clash="#a3212b",
    clash_tint="#f6dcd6",
    on_clash="#ffffff",
    shut="#efe9dc",
    shut_line="#cbbfa8",
    good="#4d7030",
    good_tint="#eef3e6",
    on_good="#ffffff",
    batches=(
        BatchColour("#b15b2d", "#ffffff"),
        BatchColour("#633355", "#ffffff"),
        BatchColour("#7269b4", "#ffffff"),
        BatchColour("#4b657b", "#ffffff"),
        BatchColour("#1b4e0b", "#ffffff"),
        BatchColour("#d19f49", "#2b2622"),
        BatchColour("#856f57", "#ffffff"),
        BatchColour("#3a817a", "#ffffff"),
    ),
    faded=0.5,
)

DARK = Theme(
    is_dark=True,
    paper="#1e1b18",
    top="#2a2521",
    rail="#25211d",
    rail_on="#41382d",
    card="#292521",
    sunk="#332e28",
    lane="#27231f",
    line="#4a4238",
    edge="#8c8070",
    ink="#f2ece2",
    soft="#b9ad9b",
    clash="#ff8086",
    clash_tint="#4d2626",
    on_clash="#1e1b18",
    shut="#302b25",
    shut_line="#5c5245",
    good="#a4c97f",
    good_tint="#2e3a26",
    on_good="#1e1b18",
    batches=(
        BatchColour("#b8742e", "#1e1b18"),
        BatchColour("#a87a9f", "#1e1b18"),
        BatchColour("#978bd9", "#1e1b18"),
        BatchColour("#8fb7d0", "#1e1b18"),
        BatchColour("#749b64", "#1e1b18"),
        BatchColour("#e8bc60", "#1e1b18"),
        BatchColour("#d2c3b4", "#1e1b18"),
        BatchColour("#8fe3e0", "#1e1b18"),
    ),
    faded=0.4,
)


_current = LIGHT


def current() -> Theme:
    """The theme that is shown."""
    return _current


def wanted_theme(choice: str = "auto") -> Theme:
    """The theme for "light", "dark", or "auto": as the desktop is set."""
    if choice in ("light", "dark"):
        return DARK if choice == "dark" else LIGHT
    from PySide6.QtCore import Qt

    is_dark = QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
    return DARK if is_dark else LIGHT


def use_colours(app: QApplication, theme: Theme) -> None:
    """Let what is made from now on have the colours of ``theme``; ``dress_app`` is to follow when it is made."""
    global _current
    _current = theme
    app.setPalette(palette_of(theme))


def dress_app(app: QApplication) -> None:
    """Put on the sheet of the theme that is shown. A window that is put together without one takes 15 ms less: while
    there is one, Qt dresses a widget again each time when it, or what it stands in, is put into another."""
    app.setStyleSheet(sheet_of(_current))


def show_theme(app: QApplication, theme: Theme) -> None:
    """Dress the whole program in ``theme``."""
    # Where one sheet takes the place of another, Qt dresses a widget again for each of its ancestors; where there is
    # none, once. So the old one goes first: 60 ms instead of 130 to 400, measured with 320 widgets.
    app.setStyleSheet("")
    use_colours(app, theme)
    dress_app(app)
