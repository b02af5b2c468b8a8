"""Which set of colours and which size of letters the maker wants, as it is kept in the settings."""

from __future__ import annotations

from PySide6.QtCore import QSettings
from PySide6.QtGui import QGuiApplication

from app.look.theme import THEMES, Theme
from app.window import kept

SYSTEM = "system"
"""As the desktop is set, now and whenever that changes."""


def colour_choice(settings: QSettings) -> str:
    """`day`, `lamp` or `system`; what is not understood counts as `system`."""
    return kept.one_of(settings, "theme", THEMES, SYSTEM)


def chosen_theme(settings: QSettings) -> Theme:
    """The maker's choice, else what the desktop is set to."""
    chosen = colour_choice(settings)
    if chosen != SYSTEM:
        return THEMES[chosen]
    return THEMES["lamp" if desktop_is_dark() else "day"]


def card_theme(settings: QSettings) -> Theme:
    """As chosen_theme, for the card of a start: it goes by the palette that the desktop gave, without the toolkit's large
    table of names, which takes as long to load as the card to be painted."""
    chosen = colour_choice(settings)
    if chosen != SYSTEM:
        return THEMES[chosen]
    return THEMES["lamp" if QGuiApplication.palette().window().color().lightnessF() < 0.5 else "day"]


def desktop_is_dark() -> bool:
    """Whether the desktop asks for light letters on dark ground; False where it does not say."""
    from PySide6.QtCore import Qt
    return QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark


def letter_choice(settings: QSettings) -> int:
    """Per cent of the desktop's letters, one of sizes.CHOICES; 100 for what is not understood."""
    from app.look import sizes  # here, so that the card of a start needs no more than colours
    return int(kept.one_of(settings, "letters", [str(percent) for percent in sizes.CHOICES], "100"))


def take_letters(settings: QSettings) -> None:
    """Put the size of letters that is wanted in use, before widgets are made or before they are told of it."""
    from app.look import sizes
    sizes.use(sizes.desktop() * letter_choice(settings) / 100)
