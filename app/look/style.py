"""The style sheet of every widget, made from a theme, and the palette that goes with it."""

from __future__ import annotations

from PySide6.QtGui import QColor, QPalette

from app.look.sizes import Sizes, sizes
from app.look.theme import Theme

PAD, LEAD = 8, 2
"""Room beside what is found, which is the least between words and keys too, and above and below it, at 100 %, pixels."""


def palette(theme: Theme) -> QPalette:
    """The Qt palette of a theme."""
    made = QPalette()
    roles = QPalette.ColorRole
    for role, colour in ((roles.Window, theme.panel), (roles.Base, theme.paper), (roles.AlternateBase, theme.card),
                         (roles.Text, theme.ink), (roles.WindowText, theme.ink), (roles.Button, theme.card),
                         (roles.ButtonText, theme.ink), (roles.Highlight, theme.focus),
                         (roles.HighlightedText, theme.panel), (roles.ToolTipBase, theme.card),
                         (roles.ToolTipText, theme.ink), (roles.PlaceholderText, theme.dim),
                         (roles.Link, theme.note), (roles.Mid, theme.line)):
        made.setColor(role, QColor(colour))
    for role in (roles.Text, roles.WindowText, roles.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(theme.dim))
    return made


def sheet(theme: Theme, scale: Sizes | None = None) -> str:
    """Qt style sheet text, for the scale in use when none is given. Focus is always visible as a 2-pixel frame.

    Letters grow with the scale, room round them half as fast; lines and frames do not grow.
    """
    t, z = theme, scale or sizes()
    letters, px, soft = z.letters, z.px, z.soft

    def pad(upright: int, across: int, frame: int = 1) -> str:
        """Room round words inside a frame of that width: with a frame of 2 nothing moves."""
        return f"padding: {soft(upright) + 1 - frame}px {soft(across) + 1 - frame}px;"

    return f"""
    QMainWindow, QDialog {{ background: {t.panel}; }}
    QWidget {{ color: {t.ink}; font-size: {letters(13)}px; }}
    QToolTip {{ color: {t.ink}; background: {t.card}; border: 1px solid {t.rim}; padding: 4px; }}
    #bar, #foot {{ background: {t.bar}; }}
    #bar {{ border-bottom: 1px solid {t.line}; }}
    #foot QLabel {{ color: {t.dim}; }}
    #foot #unkept {{ color: {t.ink}; font-weight: bold; }}
    #tools {{ background: {t.paper}; border-bottom: 1px solid {t.line}; }}
    #name {{ font-size: {letters(15)}px; font-weight: 600; }}
    QFrame#note {{ background: {t.card}; border: 1px solid {t.rim}; border-radius: 8px; }}
    #side, QWidget#page {{ background: {t.panel}; }}
    #side {{ border-left: 1px solid {t.line}; }}
    QLabel#title {{ font-size: {letters(16)}px; font-weight: 600; }}
    QLabel#heading {{ font-weight: 600; }}
    QLabel#dim {{ color: {t.dim}; }}
    QLabel#warning {{ color: {t.spoils}; font-weight: 600; }}
    QFrame#rule {{ background: {t.line}; max-height: 1px; min-height: 1px; border: none; }}
    QScrollArea QWidget#words {{ background: {t.panel}; }}
    QSlider {{ min-height: {px(22)}px; border: 2px solid transparent; border-radius: 6px; }}
    QSlider:focus {{ border-color: {t.ring}; }}
    QSlider::groove:horizontal {{ background: {t.rim}; height: {soft(4)}px; border-radius: 2px; }}
    QSlider::sub-page:horizontal {{ background: {t.focus}; height: {soft(4)}px; border-radius: 2px; }}
    QSlider::handle:horizontal {{ background: {t.accent}; width: {px(14)}px; margin: -{px(14) // 2 - 1}px 0;
        border-radius: {px(14) // 2}px; }}
    QSlider::handle:horizontal:focus {{ border: 2px solid {t.ring}; background: {t.accent_ink}; }}
    QSlider::handle:horizontal:disabled, QSlider::sub-page:horizontal:disabled {{ background: {t.rim}; }}
    QPushButton, QToolButton {{ background: {t.card}; border: 1px solid {t.line}; border-radius: 6px; {pad(5, 12)}
        outline: none; }}
    QPushButton:hover, QToolButton:hover {{ border-color: {t.dim}; }}
    QPushButton:pressed, QToolButton:pressed {{ background: {t.line}; }}
    QPushButton:checked, QToolButton:checked {{ background: {t.accent}; color: {t.accent_ink};
        border-color: {t.accent}; }}
    QPushButton:disabled, QToolButton:disabled {{ color: {t.dim}; background: transparent; }}
    QPushButton:focus, QToolButton:focus {{ border: 2px solid {t.ring}; {pad(5, 12, 2)} }}
    QPushButton#main {{ background: {t.accent}; color: {t.accent_ink}; border-color: {t.accent}; }}
    QPushButton#main:focus {{ border-color: {t.ring}; }}
    QToolButton#tiny {{ background: transparent; border: 1px solid transparent; {pad(2, 5)} }}
    QToolButton#tiny:hover {{ border-color: {t.dim}; }}
    QToolButton#tiny:checked {{ background: {t.accent}; border-color: {t.accent}; }}
    QToolButton#tiny:focus {{ border: 2px solid {t.ring}; {pad(2, 5, 2)} }}
    QPushButton#small {{ {pad(5, 5)} }}
    QPushButton#small:focus {{ {pad(5, 5, 2)} }}
    QToolButton#small {{ {pad(5, 7)} }}
    QToolButton#small:focus {{ {pad(5, 7, 2)} }}
    QToolButton#fold {{ background: transparent; border: 1px solid transparent; {pad(3, 2)} font-weight: 600;
        text-align: left; }}
    QToolButton#fold:checked {{ background: transparent; color: {t.ink}; }}
    QToolButton#fold:hover {{ border-color: {t.line}; }}
    QToolButton#fold:focus {{ border: 2px solid {t.ring}; {pad(3, 2, 2)} }}
    #front {{ background: {t.paper}; }}
    #front QScrollArea, #front QScrollArea > QWidget, #front QScrollArea > QWidget > QWidget {{
        background: transparent; }}
    QLabel#fronttitle {{ font-size: {letters(20)}px; font-weight: 600; }}
    QPushButton#way {{ text-align: left; {pad(9, 14)} font-weight: 600; }}
    QPushButton#way:focus {{ {pad(9, 14, 2)} }}
    QPushButton#card {{ border-radius: 8px; background: {t.panel}; }}
    QPushButton#link {{ background: transparent; border: 2px solid transparent; {pad(4, 5, 2)} text-align: left;
        color: {t.note}; }}
    QPushButton#link:hover {{ text-decoration: underline; }}
    QPushButton#link:focus {{ border: 2px solid {t.ring}; }}
    QPushButton#stage {{ background: transparent; border: 2px solid transparent; border-radius: {soft(14)}px;
        {pad(6, 15, 2)} }}
    QPushButton#stage:hover {{ background: {t.card}; }}
    QPushButton#stage:checked {{ background: {t.accent}; color: {t.accent_ink}; }}
    QPushButton#stage:focus {{ border: 2px solid {t.ring}; }}
    QLineEdit, QComboBox, QPlainTextEdit {{ background: {t.paper}; border: 1px solid {t.rim}; border-radius: 5px;
        {pad(3, 7)} selection-background-color: {t.focus}; selection-color: {t.panel}; }}
    QLineEdit:focus, QComboBox:focus, QPlainTextEdit:focus {{ border: 2px solid {t.ring}; {pad(3, 7, 2)} }}
    QLineEdit[bad="true"] {{ border: 2px solid {t.spoils}; {pad(3, 7, 2)} }}
    QLineEdit[bad="true"]:focus {{ border: 3px double {t.spoils}; {pad(3, 7, 3)} }}
    QLineEdit:disabled, QComboBox:disabled {{ color: {t.dim}; border-color: {t.line}; }}
    QTableView QLineEdit {{ padding: 0 2px; border-radius: 0; }}
    QComboBox::drop-down {{ border: none; width: {px(20)}px; }}
    QComboBox::down-arrow {{ image: none; width: 0; height: 0; margin-right: 6px;
        border-left: {px(4)}px solid {t.paper}; border-right: {px(4)}px solid {t.paper};
        border-top: {px(5)}px solid {t.dim}; }}
    QComboBox {{ combobox-popup: 0; }}
    QComboBox {{ padding-right: 1px; }}
    QComboBox:focus {{ padding-right: 0; }}
    QComboBox QAbstractItemView::item {{ min-height: {px(22)}px; padding: 0 {soft(6)}px; }}
    QComboBox QAbstractItemView {{ background: {t.panel}; color: {t.ink}; border: 1px solid {t.rim}; padding: 2px;
        selection-background-color: {t.accent}; selection-color: {t.accent_ink}; }}
    QCheckBox, QRadioButton {{ border: 2px solid transparent; border-radius: 4px; }}
    QCheckBox:focus, QRadioButton:focus {{ border-color: {t.ring}; }}
    QCheckBox::indicator {{ width: {px(11)}px; height: {px(11)}px; border: 2px solid {t.ink}; border-radius: 3px;
        background: {t.panel}; }}
    QCheckBox::indicator:checked {{ background: {t.ink}; }}
    QCheckBox::indicator:indeterminate {{ background: qlineargradient(x1: 0, y1: 0, x2: 0, y2: 1, stop: 0 {t.panel}, stop: 0.32 {t.panel},
        stop: 0.34 {t.ink}, stop: 0.66 {t.ink}, stop: 0.68 {t.panel}, stop: 1 {t.panel}); }}
    QRadioButton::indicator {{ width: {px(11)}px; height: {px(11)}px; border: 2px solid {t.ink};
        border-radius: {(px(11) + 3) // 2}px; background: {t.panel}; }}
    QRadioButton::indicator:checked {{ background: qradialgradient(cx: 0.5, cy: 0.5, radius: 0.5, fx: 0.5, fy: 0.5,
        stop: 0 {t.ink}, stop: 0.55 {t.ink}, stop: 0.65 {t.panel}, stop: 1 {t.panel}); }}
    QCheckBox:disabled, QRadioButton:disabled {{ color: {t.dim}; }}
    QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
    QScrollArea, QGraphicsView#ringed {{ background: transparent; border: 2px solid transparent; }}
    QScrollArea:focus, QGraphicsView#ringed:focus {{ border: 2px solid {t.ring}; }}
    #side QScrollArea, #side QScrollArea:focus {{ border-radius: 6px; }}
    QListView {{ background: {t.panel}; border: 2px solid transparent; border-radius: 6px; outline: none; }}
    QListView::item:selected {{ background: {t.accent}; color: {t.accent_ink}; }}
    QListView#found::item {{ padding: {px(LEAD)}px {px(PAD)}px; }}
    QListView:focus {{ border-color: {t.ring}; }}
    QTableView {{ background: {t.paper}; gridline-color: {t.line}; border: 1px solid {t.rim}; border-radius: 5px;
        padding: 1px; outline: none; }}
    QTableView::item:selected {{ background: {t.accent}; color: {t.accent_ink}; }}
    QTableView#entries::item {{ padding: 0 6px; border-bottom: 1px solid {t.line}; }}
    QTableView#entries::item:selected {{ padding: 0 4px 0 5px; border: 2px solid {t.ring}; background: {t.panel}; color: {t.ink}; }}
    QTableView:focus {{ border: 2px solid {t.ring}; padding: 0; }}
    QHeaderView {{ background: {t.card}; border: none; }}
    QHeaderView::section {{ background: {t.card}; color: {t.dim}; border: none; border-bottom: 1px solid {t.line};
        padding: 4px; }}
    QTableView#entries QHeaderView::section {{ padding: 4px 8px; }}
    QMenuBar {{ background: {t.bar}; }}
    QMenuBar QToolButton {{ background: transparent; border: none; padding: 0; }}
    QMenuBar::item {{ padding: {soft(4)}px {round(10 / z.factor)}px; background: transparent; }}
    QMenuBar::item:selected {{ background: {t.accent}; color: {t.accent_ink}; border-radius: 4px; }}
    QMenu {{ background: {t.panel}; border: 1px solid {t.rim}; padding: 4px; icon-size: {px(16)}px; }}
    QMenu::item {{ padding: {soft(5)}px {soft(26)}px {soft(5)}px {soft(18)}px; border-radius: 4px; }}
    QMenu::icon {{ margin-left: 8px; }}
    QMenu::indicator {{ width: {px(8)}px; height: {px(8)}px; margin-left: {soft(5)}px; }}
    QMenu::indicator:checked {{ background: {t.ink}; border-radius: 2px; }}
    QMenu::indicator:checked:selected {{ background: {t.accent_ink}; }}
    QMenu::right-arrow {{ width: {px(8)}px; height: {px(8)}px; }}
    QMenu::item:selected {{ background: {t.accent}; color: {t.accent_ink}; }}
    QMenu::item:disabled {{ color: {t.dim}; }}
    QMenu::separator {{ height: 1px; background: {t.line}; margin: 4px 8px; }}
    QScrollBar:vertical {{ background: transparent; width: {soft(10)}px; margin: 0; }}
    QScrollBar::handle:vertical {{ background: {t.rim}; border-radius: {soft(10) // 2}px; min-height: 28px; }}
    QScrollBar:horizontal {{ background: transparent; height: {soft(10)}px; margin: 0; }}
    QScrollBar::handle:horizontal {{ background: {t.rim}; border-radius: {soft(10) // 2}px; min-width: 28px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QAbstractScrollArea::corner {{ background: transparent; border: none; }}
    QFileDialog QToolButton, QFileDialog QToolButton:focus {{ padding: 0; }}
    QFileDialog QTreeView {{ background: {t.paper}; border: 1px solid {t.rim}; }}
    QSplitter::handle {{ background: {t.line}; }}
    QProgressBar {{ background: {t.card}; border: 1px solid {t.rim}; border-radius: 5px; text-align: center; }}
    QProgressBar::chunk {{ background: {t.focus}; border-radius: 4px; }}
    """
