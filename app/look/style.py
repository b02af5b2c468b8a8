"""The style sheet of every widget, made from a theme, and the palette that goes with it."""

from __future__ import annotations

from PySide6.QtGui import QColor, QPalette

from app.look.theme import Theme


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


def sheet(theme: Theme) -> str:
    """Qt style sheet text. Focus is always visible as a 2-pixel frame."""
    t = theme
    return f"""
    QMainWindow, QDialog {{ background: {t.panel}; }}
    QWidget {{ color: {t.ink}; font-size: 13px; }}
    QToolTip {{ color: {t.ink}; background: {t.card}; border: 1px solid {t.line}; padding: 4px; }}
    #bar, #foot {{ background: {t.bar}; }}
    #bar {{ border-bottom: 1px solid {t.line}; }}
    #foot {{ border-top: 1px solid {t.line}; }}
    #foot QLabel {{ color: {t.dim}; }}
    #tools {{ background: {t.paper}; border-bottom: 1px solid {t.line}; }}
    #name {{ font-size: 15px; font-weight: 600; }}
    #side, QWidget#page {{ background: {t.panel}; }}
    QToolButton#small {{ padding: 5px 7px; }}
    QToolButton#small:focus {{ padding: 4px 6px; }}
    QToolButton#fold {{ background: transparent; border: 1px solid transparent; padding: 3px 2px; font-weight: 600;
        text-align: left; }}
    QToolButton#fold:checked {{ background: transparent; color: {t.ink}; }}
    QToolButton#fold:hover {{ border-color: {t.line}; }}
    QToolButton#fold:focus {{ border: 2px solid {t.focus}; padding: 2px 1px; }}
    #side {{ border-left: 1px solid {t.line}; }}
    QLabel#title {{ font-size: 16px; font-weight: 600; }}
    QLabel#heading {{ font-size: 13px; font-weight: 600; }}
    QLabel#dim {{ color: {t.dim}; }}
    QLabel#warning {{ color: {t.spoils}; font-weight: 600; }}
    QFrame#rule {{ background: {t.line}; max-height: 1px; min-height: 1px; border: none; }}
    QScrollArea QWidget#words {{ background: {t.panel}; }}
    QSlider {{ min-height: 22px; }}
    QSlider::groove:horizontal {{ background: {t.line}; height: 4px; border-radius: 2px; }}
    QSlider::sub-page:horizontal {{ background: {t.focus}; height: 4px; border-radius: 2px; }}
    QSlider::handle:horizontal {{ background: {t.accent}; width: 14px; margin: -6px 0; border-radius: 7px; }}
    QSlider::handle:horizontal:focus {{ border: 2px solid {t.focus}; background: {t.accent_ink}; }}
    QPushButton, QToolButton {{ background: {t.card}; border: 1px solid {t.line}; border-radius: 6px;
        padding: 5px 12px; }}
    QPushButton:hover, QToolButton:hover {{ border-color: {t.dim}; }}
    QPushButton:pressed, QToolButton:pressed {{ background: {t.line}; }}
    QPushButton:checked, QToolButton:checked {{ background: {t.accent}; color: {t.accent_ink};
        border-color: {t.accent}; }}
    QPushButton:disabled, QToolButton:disabled {{ color: {t.dim}; background: transparent; }}
    QPushButton:focus, QToolButton:focus {{ border: 2px solid {t.focus}; padding: 4px 11px; }}
    QPushButton#main {{ background: {t.accent}; color: {t.accent_ink}; border-color: {t.accent}; }}
    #front {{ background: {t.paper}; }}
    #front QScrollArea, #front QScrollArea > QWidget, #front QScrollArea > QWidget > QWidget {{
        background: transparent; }}
    QLabel[objectName="front title"] {{ font-size: 20px; font-weight: 600; }}
    QPushButton#way {{ text-align: left; padding: 9px 14px; font-weight: 600; }}
    QPushButton#way:focus {{ padding: 8px 13px; }}
    QPushButton#card {{ border-radius: 8px; background: {t.panel}; }}
    QPushButton#link {{ background: transparent; border: 2px solid transparent; padding: 3px 4px; text-align: left;
        color: {t.note}; }}
    QPushButton#link:hover {{ text-decoration: underline; }}
    QPushButton#link:focus {{ border: 2px solid {t.focus}; padding: 3px 4px; }}
    QPushButton#stage {{ background: transparent; border: 2px solid transparent; border-radius: 14px;
        padding: 5px 14px; }}
    QPushButton#stage:hover {{ background: {t.card}; }}
    QPushButton#stage:checked {{ background: {t.accent}; color: {t.accent_ink}; }}
    QPushButton#stage:focus {{ border: 2px solid {t.focus}; }}
    QLineEdit, QComboBox, QPlainTextEdit {{ background: {t.paper}; border: 1px solid {t.line}; border-radius: 5px;
        padding: 3px 7px; selection-background-color: {t.focus}; selection-color: {t.panel}; }}
    QLineEdit:focus, QComboBox:focus, QPlainTextEdit:focus {{ border: 2px solid {t.focus}; padding: 2px 6px; }}
    QLineEdit[bad="true"] {{ border: 2px solid {t.spoils}; padding: 2px 6px; }}
    QComboBox::drop-down {{ border: none; width: 20px; }}
    QComboBox::down-arrow {{ image: none; width: 0; height: 0; margin-right: 6px; border-left: 4px solid {t.paper};
        border-right: 4px solid {t.paper}; border-top: 5px solid {t.dim}; }}
    QComboBox QAbstractItemView {{ background: {t.panel}; color: {t.ink}; border: 1px solid {t.line};
        selection-background-color: {t.accent}; selection-color: {t.accent_ink}; }}
    QCheckBox::indicator {{ width: 11px; height: 11px; border: 2px solid {t.ink}; border-radius: 3px;
        background: {t.panel}; }}
    QCheckBox::indicator:checked {{ background: {t.ink}; }}
    QRadioButton::indicator {{ width: 11px; height: 11px; border: 2px solid {t.ink}; border-radius: 7px;
        background: {t.panel}; }}
    QRadioButton::indicator:checked {{ background: qradialgradient(cx: 0.5, cy: 0.5, radius: 0.5, fx: 0.5, fy: 0.5,
        stop: 0 {t.ink}, stop: 0.55 {t.ink}, stop: 0.65 {t.panel}, stop: 1 {t.panel}); }}
    QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
    QCheckBox:focus, QRadioButton:focus {{ border: 2px solid {t.focus}; border-radius: 4px; }}
    QScrollArea, QAbstractScrollArea#plain {{ background: transparent; border: none; }}
    QListView {{ background: {t.panel}; border: none; outline: none; }}
    QListView::item:selected {{ background: {t.accent}; color: {t.accent_ink}; }}
    QListView:focus {{ border: 2px solid {t.focus}; border-radius: 6px; }}
    QTableView {{ background: {t.paper}; gridline-color: {t.line}; border: 1px solid {t.line}; border-radius: 5px; }}
    QTableView::item:selected {{ background: {t.accent}; color: {t.accent_ink}; }}
    QTableView#entries::item {{ padding: 0 6px; border-bottom: 1px solid {t.line}; }}
    QTableView:focus {{ border: 2px solid {t.focus}; }}
    QHeaderView::section {{ background: {t.card}; color: {t.dim}; border: none; border-bottom: 1px solid {t.line};
        padding: 4px; }}
    QMenuBar {{ background: {t.bar}; }}
    QMenuBar::item {{ padding: 4px 10px; background: transparent; }}
    QMenuBar::item:selected {{ background: {t.card}; }}
    QMenu {{ background: {t.panel}; border: 1px solid {t.line}; padding: 4px; }}
    QMenu::item {{ padding: 5px 26px 5px 18px; border-radius: 4px; }}
    QMenu::item:selected {{ background: {t.accent}; color: {t.accent_ink}; }}
    QMenu::item:disabled {{ color: {t.dim}; }}
    QMenu::separator {{ height: 1px; background: {t.line}; margin: 4px 8px; }}
    QScrollBar:vertical {{ background: transparent; width: 10px; margin: 0; }}
    QScrollBar::handle:vertical {{ background: {t.line}; border-radius: 5px; min-height: 28px; }}
    QScrollBar:horizontal {{ background: transparent; height: 10px; margin: 0; }}
    QScrollBar::handle:horizontal {{ background: {t.line}; border-radius: 5px; min-width: 28px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QSplitter::handle {{ background: {t.line}; }}
    QProgressBar {{ background: {t.card}; border: 1px solid {t.line}; border-radius: 5px; text-align: center; }}
    QProgressBar::chunk {{ background: {t.focus}; border-radius: 4px; }}
    """
