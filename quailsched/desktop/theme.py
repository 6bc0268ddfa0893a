"""Colours by role, in light and dark. Every colour of the window stands here; the one red means clash."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from quailsched.resources import resource


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
    line: str  # hairlines and borders
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
    batches: tuple[BatchColour, ...]  # in an order in which neighbours are told apart by the colour-blind: tested

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
        BatchColour("#bc5929", "#ffffff"),
        BatchColour("#683a64", "#ffffff"),
        BatchColour("#6b5fac", "#ffffff"),
        BatchColour("#557795", "#ffffff"),
        BatchColour("#2e5722", "#ffffff"),
        BatchColour("#d19e3e", "#2b2622"),
        BatchColour("#886e50", "#ffffff"),
        BatchColour("#30837a", "#ffffff"),
    ),
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
        BatchColour("#c26d3e", "#1e1b18"),
        BatchColour("#a292da", "#1e1b18"),
        BatchColour("#ecbd5a", "#1e1b18"),
        BatchColour("#cebdaa", "#1e1b18"),
        BatchColour("#88ae5c", "#1e1b18"),
        BatchColour("#82b4d6", "#1e1b18"),
        BatchColour("#a97ca3", "#1e1b18"),
        BatchColour("#6ed2cc", "#1e1b18"),
    ),
)


def palette_of(theme: Theme) -> QPalette:
    """The theme as Qt's palette, so that every standard control follows it."""
    palette = QPalette()
    role = QPalette.ColorRole
    for names, colour in (
        ((role.Window,), theme.paper),
        ((role.Base, role.ToolTipBase), theme.card),
        ((role.AlternateBase,), theme.sunk),
        ((role.Button,), theme.sunk),
        ((role.WindowText, role.Text, role.ButtonText, role.ToolTipText), theme.ink),
        ((role.PlaceholderText,), theme.soft),
        ((role.Highlight, role.Link, role.Accent), theme.good),
        ((role.HighlightedText,), theme.on_good),
        ((role.Mid, role.Dark), theme.line),
    ):
        for name in names:
            palette.setColor(name, QColor(colour))
    for name in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, name, QColor(theme.soft))
    return palette


def sheet_of(theme: Theme) -> str:
    """What the palette cannot say: borders that show in both themes, cards, the pills of the top bar."""
    t = theme
    tick = resource("icons", "tick-dark.svg" if theme.is_dark else "tick.svg").as_posix()
    return f"""
    QToolTip {{ color: {t.ink}; background: {t.card}; border: 1px solid {t.line}; padding: 4px; }}
    QFrame#card {{ background: {t.card}; border: 1px solid {t.line}; border-radius: 12px; }}
    QFrame#best {{ background: {t.good_tint}; border: 1px solid {t.good}; border-radius: 10px; }}
    QFrame#quiet {{ background: {t.sunk}; border: none; border-radius: 10px; }}
    QFrame#trialBar {{ background: {t.sunk}; border: none; border-bottom: 2px dashed {t.ink}; }}
    QFrame#planStage {{ border: 2px solid transparent; }}
    QFrame#trialStage {{ border: 2px dashed {t.ink}; }}
    QWidget#topBar {{ background: {t.top}; }}
    QWidget#rail {{ background: {t.rail}; }}
    QLabel#clashHeading {{ color: {t.clash}; }}
    QLabel#soft, QLabel#source {{ color: {t.soft}; }}
    QLabel#fault {{ color: {t.clash}; }}
    QPushButton {{ background: {t.card}; color: {t.ink}; border: 1px solid {t.shut_line}; border-radius: 11px;
        padding: 4px 14px; min-height: 1.2em; }}
    QPushButton:hover {{ background: {t.sunk}; }}
    QPushButton:focus {{ border: 2px solid {t.good}; padding: 3px 13px; }}
    QPushButton:disabled {{ color: {t.soft}; border-color: {t.line}; }}
    QPushButton#main, QPushButton:default {{ background: {t.good}; color: {t.on_good}; border-color: {t.good};
        font-weight: 700; }}
    QPushButton#main:disabled {{ background: {t.sunk}; color: {t.soft}; border-color: {t.line}; }}
    QPushButton#main:focus {{ border: 2px solid {t.ink}; }}
    QPushButton#clashes {{ background: {t.clash}; color: {t.on_clash}; border-color: {t.clash}; font-weight: 700; }}
    QPushButton#calm {{ background: {t.good_tint}; color: {t.ink}; border-color: {t.good}; }}
    QPushButton#flat {{ background: transparent; border: 1px solid transparent; color: {t.ink}; padding: 4px 8px; }}
    QPushButton#flat:hover {{ background: {t.rail_on}; }}
    QPushButton#flat:focus {{ border: 1px solid {t.good}; }}
    QPushButton#flat:disabled {{ color: {t.soft}; }}
    QPushButton#row, QPushButton#quietRow {{ text-align: left; border-radius: 8px; background: {t.sunk};
        border: 1px solid {t.line}; padding: 7px 10px; }}
    QPushButton#row:hover {{ border-color: {t.clash}; }}
    QPushButton#quietRow:hover {{ border-color: {t.soft}; }}
    QPushButton#row:focus, QPushButton#quietRow:focus {{ border: 2px solid {t.good}; padding: 6px 9px; }}
    QPushButton#name {{ background: transparent; border: 1px solid transparent; padding: 0 2px 0 0; font-weight: 700;
        text-align: left; border-radius: 3px; }}
    QPushButton#name:hover {{ color: {t.good}; }}
    QPushButton#name:focus {{ border: 1px solid {t.good}; }}
    QToolButton#view {{ background: transparent; border: 1px solid transparent; border-radius: 10px; color: {t.ink};
        padding: 8px 2px; }}
    QToolButton#view:hover {{ background: {t.sunk}; }}
    QToolButton#view:checked {{ background: {t.rail_on}; font-weight: 700; }}
    QToolButton#view:focus {{ border: 1px solid {t.good}; }}
    QToolButton#grouping {{ background: transparent; border: 1px solid {t.line}; color: {t.soft}; padding: 1px 5px; }}
    QToolButton#grouping:checked {{ background: {t.rail_on}; color: {t.ink}; }}
    QToolButton#grouping:hover {{ color: {t.ink}; }}
    QToolButton#grouping:focus {{ border: 1px solid {t.good}; }}
    QTableView {{ background: {t.card}; alternate-background-color: {t.sunk}; gridline-color: {t.line};
        border: 1px solid {t.line}; border-radius: 8px; }}
    QTableView:focus {{ border-color: {t.good}; }}
    QHeaderView::section {{ background: {t.sunk}; color: {t.soft}; border: none; border-bottom: 1px solid {t.line};
        padding: 5px 8px; }}
    QCheckBox::indicator, QRadioButton::indicator {{ width: 1em; height: 1em; border: 1px solid {t.soft};
        background: {t.card}; }}
    QCheckBox::indicator {{ border-radius: 3px; }}
    QRadioButton::indicator {{ border-radius: 0.5em; }}
    QCheckBox::indicator:checked, QRadioButton::indicator:checked {{ background: {t.good}; border-color: {t.good}; }}
    QCheckBox::indicator:checked {{ image: url("{tick}"); }}
    QCheckBox::indicator:focus, QRadioButton::indicator:focus {{ border: 2px solid {t.good}; }}
    QScrollBar:horizontal {{ background: {t.paper}; height: 11px; margin: 0; border: none; }}
    QScrollBar:vertical {{ background: {t.paper}; width: 11px; margin: 0; border: none; }}
    QScrollBar::handle {{ background: {t.shut_line}; border-radius: 4px; margin: 2px; min-width: 30px;
        min-height: 30px; }}
    QScrollBar::handle:hover {{ background: {t.soft}; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QAbstractScrollArea::corner {{ background: transparent; border: none; }}
    QScrollArea, QScrollArea > QWidget > QWidget#panel {{ background: transparent; border: none; }}
    """


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


def show_theme(app: QApplication, theme: Theme) -> None:
    """Dress the whole program in ``theme``."""
    global _current
    _current = theme
    app.setStyle("Fusion")
    app.setPalette(palette_of(theme))
    app.setStyleSheet(sheet_of(theme))
