"""Colours of the program: paper and wood by day, the same shop by lamplight."""

from typing import NamedTuple


class Theme(NamedTuple):
    """One set of colours, as #rrggbb. Text colours keep 4.5:1 against what they stand on (tested)."""

    name: str
    paper: str
    panel: str
    card: str
    bar: str
    line: str
    ink: str
    dim: str
    accent: str
    accent_ink: str
    wood: str
    strip: str
    waste: str
    slot: str
    edge: str
    bore: str
    bore_fill: str
    metal: str
    string: str
    template: str
    spoils: str
    tight: str
    note: str
    focus: str
    ring: str
    """the frame of what has the keyboard: 3:1 against every ground and against the dark of a chosen button"""
    rim: str
    """frames of fields, scroll bars and grooves: 3:1 against what they stand on"""

    def of_grade(self, grade: str) -> str:
        """The colour of a snag's grade."""
        return self.spoils if grade == "spoils the work" else self.tight if grade == "tight" else self.note


DAY = Theme(
    name="day", paper="#F4EFE3", panel="#FBF8F1", card="#F3EDDF", bar="#ECE4D2", line="#D9CEB8", ink="#2A2823",
    dim="#5F5849", accent="#2D2B26", accent_ink="#FBF8F1", wood="#E7CFA7", strip="#EAD9B5", waste="#F0E2C4",
    slot="#FCF9F2", edge="#2A2823", bore="#27577C", bore_fill="#BFD0DA", metal="#736C5F", string="#776D58",
    template="#6B4E9B", spoils="#A93226", tight="#855800", note="#2B5F88", focus="#27577C",
    ring="#2A7AB4", rim="#857A64")

LAMP = Theme(
    name="lamp", paper="#1D1B18", panel="#262320", card="#302C27", bar="#2D2925", line="#4A443A", ink="#F0E9DB",
    dim="#BDB4A2", accent="#EADFC8", accent_ink="#262320", wood="#54432D", strip="#453825", waste="#342D24",
    slot="#1F1D1A", edge="#F0E9DB", bore="#9CC7E6", bore_fill="#3B5566", metal="#B0A795", string="#A89A80",
    template="#C3A8F0", spoils="#FF8F80", tight="#EDBB5A", note="#9CC7E6", focus="#9CC7E6",
    ring="#3B82BA", rim="#847B6B")

_now = DAY


def theme() -> Theme:
    """The colours in use, the same in every window: asked for by whoever paints, each time."""
    return _now


def use_theme(wanted: Theme) -> None:
    """Take other colours. Windows are told by `app/window/looks.py`."""
    global _now
    _now = wanted


THEMES = {theme.name: theme for theme in (DAY, LAMP)}
