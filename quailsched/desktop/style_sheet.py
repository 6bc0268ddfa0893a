"""A theme as Qt takes it: the palette that standard controls follow, and the sheet for what a palette cannot say.

Which colour is which stands in ``theme``; sizes of letters in ``labels``.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QColor, QFontInfo, QGuiApplication, QPalette

from quailsched.resources import resource

if TYPE_CHECKING:
    from quailsched.desktop.theme import Theme


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
        ((role.Light, role.Midlight), theme.card),
        ((role.Mid, role.Dark), theme.line),
        ((role.Shadow,), theme.edge),
    ):
        for name in names:
            palette.setColor(name, QColor(colour))
    for name in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, name, QColor(theme.soft))
    return palette


def sheet_of(theme: Theme) -> str:
    """What the palette cannot say: borders that show in both themes, cards, the pills of the top bar."""
    t = theme
    tick, down, up = (_picture(name, theme) for name in ("tick", "arrow-down", "arrow-up"))
    box = QFontInfo(QGuiApplication.font()).pixelSize() // 2 * 2  # a radius of more than half draws a square
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
    QLabel#moved, QLabel:disabled {{ color: {t.soft}; }}
    QFrame#movedBox {{ background: {t.rail}; border: 1px solid {t.line}; border-radius: 12px; }}
    QLineEdit#record {{ border-radius: {box + 1}px; padding: {box // 2}px {box}px; border-color: {t.edge}; }}
    QLineEdit#record:focus {{ border-color: {t.good}; padding: {box // 2 - 1}px {box - 1}px; }}
    QLineEdit#number {{ background: {t.paper}; border-color: {t.edge}; font-weight: 700; }}
    QToolButton#more {{ background: transparent; border: 1px solid transparent; border-radius: 6px; color: {t.soft};
        padding: 0 5px; }}
    QToolButton#more:hover {{ background: {t.sunk}; color: {t.ink}; }}
    QToolButton#more:focus {{ border: 1px solid {t.good}; color: {t.ink}; }}
    QPushButton {{ background: {t.card}; color: {t.ink}; border: 1px solid {t.shut_line}; border-radius: 11px;
        padding: 4px 14px; min-height: 1.2em; }}
    QPushButton:hover {{ background: {t.sunk}; }}
    QPushButton:focus {{ border: 2px solid {t.good}; padding: 3px 13px; }}
    QPushButton:disabled {{ color: {t.soft}; border-color: {t.line}; }}
    QPushButton#main, QPushButton:default {{ background: {t.good}; color: {t.on_good}; border-color: {t.good};
        font-weight: 700; }}
    QPushButton:default {{ padding: 4px 8px; }}
    QPushButton#main:disabled {{ background: {t.sunk}; color: {t.soft}; border-color: {t.line}; }}
    QPushButton#main:focus, QPushButton:default:focus {{ border: 3px double {t.on_good}; padding: 2px 12px; }}
    QPushButton:default:focus, QPushButton#main:default:focus {{ padding: 2px 6px; }}
    QDialogButtonBox, QMessageBox {{ dialogbuttonbox-buttons-have-icons: 0; button-layout: 3; }}
    QPushButton#clashes {{ background: {t.clash}; color: {t.on_clash}; border-color: {t.clash}; font-weight: 700; }}
    QPushButton#clashes:focus {{ border: 3px double {t.on_clash}; padding: 2px 12px; }}
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
    QLineEdit, QAbstractSpinBox, QComboBox {{ background: {t.card}; color: {t.ink}; border: 1px solid {t.edge};
        border-radius: 5px; padding: 2px 6px; selection-background-color: {t.good}; selection-color: {t.on_good};
        placeholder-text-color: {t.soft}; }}
    QLineEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {{ border: 2px solid {t.good}; padding: 1px 5px; }}
    QSpinBox, QDoubleSpinBox {{ padding: 2px 0; }}
    QSpinBox:focus, QDoubleSpinBox:focus {{ padding: 1px 0; }}
    QLineEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled {{ background: {t.sunk}; color: {t.soft};
        border-color: {t.line}; }}
    QAbstractSpinBox QLineEdit, QComboBox QLineEdit {{ background: transparent; border: none; padding: 0; }}
    QAbstractSpinBox::up-button, QAbstractSpinBox::down-button, QComboBox::drop-down, QDateEdit::drop-down {{
        subcontrol-origin: border; width: 1.3em; border: none; background: transparent; }}
    QAbstractSpinBox::up-button {{ subcontrol-position: top right; margin: 1px 1px 0 0; }}
    QAbstractSpinBox::down-button {{ subcontrol-position: bottom right; margin: 0 1px 1px 0; }}
    QComboBox::drop-down, QDateEdit::drop-down {{ subcontrol-position: center right; }}
    QAbstractSpinBox::up-button:hover, QAbstractSpinBox::down-button:hover {{ background: {t.rail_on}; }}
    QAbstractSpinBox::up-arrow {{ image: url("{up}"); width: 0.7em; height: 0.7em; }}
    QAbstractSpinBox::down-arrow {{ image: url("{down}"); width: 0.7em; height: 0.7em; }}
    QComboBox::down-arrow, QDateEdit::down-arrow {{ image: url("{down}"); width: 0.8em; height: 0.8em; }}
    QComboBox QAbstractItemView {{ background: {t.card}; border: 1px solid {t.edge}; padding: 2px; outline: none;
        selection-background-color: {t.good}; selection-color: {t.on_good}; }}
    QTabWidget::pane {{ border: none; }}
    QTabBar {{ border: none; qproperty-drawBase: 0; }}
    QTabBar::tab {{ background: transparent; color: {t.soft}; padding: 6px 12px; border: 1px solid transparent;
        border-bottom: 3px solid transparent; }}
    QTabBar::tab:hover {{ color: {t.ink}; }}
    QTabBar::tab:selected {{ color: {t.ink}; border-bottom: 3px solid {t.good}; }}
    QTabBar::tab:selected:focus {{ border: 2px solid {t.good}; border-bottom: 3px solid {t.good};
        padding: 5px 11px 6px; }}
    QTableView {{ background: {t.card}; alternate-background-color: {t.sunk}; gridline-color: {t.line};
        border: 1px solid {t.line}; border-radius: 8px; outline: none; }}
    QTableView:focus {{ border-color: {t.good}; }}
    QTableView::item {{ padding: 0 5px; }}
    QTableView::item:selected {{ background: {t.good}; color: {t.on_good}; }}
    QTableView::item:selected:focus {{ border: 1px solid {t.on_good}; padding: 0 4px; }}
    QHeaderView::section {{ background: {t.sunk}; color: {t.soft}; border: none; border-bottom: 1px solid {t.line};
        padding: 5px 8px; }}
    QCheckBox::indicator, QRadioButton::indicator {{ width: {box}px; height: {box}px; border: 1px solid {t.edge};
        background: {t.card}; }}
    QCheckBox::indicator {{ border-radius: 3px; }}
    QRadioButton::indicator {{ border-radius: {box // 2 + 1}px; }}
    QCheckBox::indicator:checked, QRadioButton::indicator:checked {{ background: {t.good}; border-color: {t.good}; }}
    QCheckBox::indicator:checked {{ image: url("{tick}"); }}
    QCheckBox, QRadioButton {{ border: 2px solid transparent; border-radius: 5px; padding: 1px 3px; }}
    QCheckBox:focus, QRadioButton:focus, QTextBrowser:focus {{ border-color: {t.good}; }}
    QTextBrowser {{ border: 2px solid transparent; border-radius: 5px; }}
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


def _picture(name: str, theme: Theme) -> str:
    """Where the picture ``name`` for a sheet lies; pictures there cannot be drawn in another ink."""
    return resource("icons", f"{name}-dark.svg" if theme.is_dark else f"{name}.svg").as_posix()
