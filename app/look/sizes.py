"""Every size that follows the letters: one scale, in one place.

At 100 % the letters of the body are 13 pixels high in the em; all other sizes
are written for that and multiplied. The body grows with the letters of the
desktop and with what the maker chose for this program.
"""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct
from PySide6.QtCore import QSize
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QWidget

from app.look.descendants import below

BODY = 13.0
"""Em of the body's letters at 100 %, pixels."""
LARGEST = 39.0
"""Em beyond which the body does not grow, pixels: three times the plain one."""
FRAME = QSize(16, 44)
"""What a desktop puts round a window, at most, pixels; it tells only once the window is on show."""
CHOICES = (100, 125, 150, 175, 200)
"""Per cent that the maker may choose."""


class Sizes(Struct, frozen=True):
    """The scale: `body` is the em of plain text in pixels."""

    body: float = BODY

    @property
    def factor(self) -> float:
        """How many times larger than at 100 %."""
        return self.body / BODY

    def px(self, points: float) -> int:
        """A size that is `points` pixels at 100 %; grows with the letters."""
        return round(points * self.factor)

    def soft(self, points: float) -> int:
        """The same for room round words and for panels whose words wrap: grows half as fast, so that large letters fit."""
        return round(points * (1 + (self.factor - 1) / 2))

    def letters(self, points: float) -> int:
        """Em of letters that are `points` pixels at 100 %: 10 for rulers, 11 for small words, 13, 15, 16 and 20 for titles."""
        return max(1, round(points * self.factor))


_now = Sizes()
_desktop = BODY


def sizes() -> Sizes:
    """The scale in use, the same in every window."""
    return _now


def use(body: float) -> Sizes:
    """Take another em for the body, in pixels; it is kept between the plain one and LARGEST. Windows are told by `follow`."""
    global _now
    _now = Sizes(min(max(body, BODY), LARGEST))
    return _now


def desktop() -> float:
    """The em of the desktop's letters, pixels; BODY until `follow_desktop` was asked for."""
    return _desktop


def follow_desktop(font: QFont, dots_per_inch: float) -> None:
    """Take the desktop's letters as 100 % from the next `use` on."""
    global _desktop
    _desktop = body_of(font, dots_per_inch)


def body_of(font: QFont, dots_per_inch: float) -> float:
    """The em of the desktop's letters in pixels, never less than BODY; BODY for a font that does not tell its size."""
    if font.pixelSize() > 0:
        return max(BODY, float(font.pixelSize()))
    return max(BODY, font.pointSizeF() * dots_per_inch / 72) if font.pointSizeF() > 0 else BODY


def px(points: float) -> int:
    """A size of `points` pixels at 100 %, as it is now."""
    return _now.px(points)


def lettered(font: QFont, points: float) -> QFont:
    """The font with letters that are `points` pixels at 100 %."""
    made = QFont(font)
    made.setPixelSize(_now.letters(points))
    return made


# ---- widgets with sizes of their own ------------------------------------------
_WAYS: dict[str, Callable[[QWidget, Sizes, list], None]] = {
    "fixed_width": lambda widget, s, n: widget.setFixedWidth(s.px(n[0])),
    "fixed_height": lambda widget, s, n: widget.setFixedHeight(s.px(n[0])),
    "minimum_width": lambda widget, s, n: widget.setMinimumWidth(s.px(n[0])),
    "minimum_height": lambda widget, s, n: widget.setMinimumHeight(s.px(n[0])),
    "maximum_width": lambda widget, s, n: widget.setMaximumWidth(s.px(n[0])),
    "panel_width": lambda widget, s, n: widget.setMinimumWidth(s.soft(n[0])),
    "fixed_panel": lambda widget, s, n: widget.setFixedWidth(s.soft(n[0])),
    "fixed": lambda widget, s, n: widget.setFixedSize(s.px(n[0]), s.px(n[1])),
    "rows": lambda widget, s, n: _set_rows(widget, s.px(n[0])),
    "icons": lambda widget, s, n: _set_icons(widget, QSize(s.soft(n[0]), s.soft(n[1]))),
}
_KEPT = "kept sizes"


def keep(widget: QWidget, **points: float | tuple[float, float]) -> None:
    """Give a widget sizes that follow the letters: pixels at 100 %, by the words of _WAYS.

    KeyError for a word that is not one of them.
    """
    kept = {way: list(n) if isinstance(n, tuple) else [n] for way, n in points.items()}
    widget.setProperty(_KEPT, kept)
    _lay(widget, kept)


def open_at(window: QWidget, width: int, height: int) -> None:
    """Open a dialog at this size at 100 %, larger for larger letters, never larger than the screen has room for."""
    wanted = QSize(_now.soft(width), _now.soft(height))
    screen = window.screen()
    window.resize(wanted.boundedTo(screen.availableSize() - FRAME) if screen is not None else wanted)


def follow(root: QWidget) -> None:
    """Bring every widget below `root`, and itself, to the scale in use."""
    for widget in (root, *below(root)):
        kept = widget.property(_KEPT)
        if kept:
            _lay(widget, kept)
        if hasattr(widget, "follow_sizes"):
            widget.follow_sizes()


def _lay(widget: QWidget, kept: dict) -> None:
    for way, points in kept.items():
        _WAYS[way](widget, _now, points)


def _set_rows(widget: QWidget, height: int) -> None:
    from PySide6.QtWidgets import QTableView  # here, as in the next one: lists and tables come after the start

    if isinstance(widget, QTableView):
        widget.verticalHeader().setDefaultSectionSize(height)


def _set_icons(widget: QWidget, size: QSize) -> None:
    from PySide6.QtWidgets import QListView

    if isinstance(widget, QListView):
        widget.setIconSize(size)
