"""Which set of colours the window begins in."""

from __future__ import annotations

from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QGuiApplication

from app.look.theme import THEMES, Theme
from app.window import kept


def chosen_theme(settings: QSettings) -> Theme:
    """The maker's choice, else what the desktop is set to."""
    chosen = kept.one_of(settings, "theme", THEMES, "")
    if chosen:
        return THEMES[chosen]
    dark = QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark
    return THEMES["lamp" if dark else "day"]
