"""Rows and columns as one expression that reads as they stand."""

from __future__ import annotations

from PySide6.QtWidgets import QLayout, QWidget

Part = QWidget | QLayout | int


def filled(layout: QLayout, *parts: Part | tuple, margins: tuple[int, int, int, int] | None = None,
           gap: int | None = None) -> QLayout:
    """The row or column itself, with its parts in their order: widgets, layouts, and numbers for room that takes such a share of
    what is left over. A part in a tuple has its own share behind it, and then how it stands in its room.

    `margins` (left, above, right, below) and the `gap` between two parts in pixels; as the style has them without.
    """
    if margins is not None:
        layout.setContentsMargins(*margins)
    if gap is not None:
        layout.setSpacing(gap)
    for part in parts:
        what, *how = part if isinstance(part, tuple) else (part,)
        add = layout.addStretch if isinstance(what, int) else layout.addLayout if isinstance(what, QLayout) else layout.addWidget
        add(what, *how)
    return layout


def keep_room(part: QWidget) -> QWidget:
    """The widget itself, whose room stays in its row or column while it is hidden: what is beside it does not move."""
    policy = part.sizePolicy()
    policy.setRetainSizeWhenHidden(True)
    part.setSizePolicy(policy)
    return part
