"""The card in hand of a list that is shown anew: it goes with what it told, wherever that stands now."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from PySide6.QtWidgets import QListView

from geometry.vectors import Vec3, distance3


class Finding(Protocol):
    """What a card tells of: a kind, of what, and where."""

    @property
    def kind(self) -> str: ...
    @property
    def between(self) -> tuple[str, ...]: ...
    @property
    def where(self) -> Vec3: ...


def row_of(held: Finding, found: Sequence[Finding]) -> int | None:
    """The row of the same finding, the nearest of several; None when it is there no more."""
    same = [row for row, one in enumerate(found) if (one.kind, one.between) == (held.kind, held.between)]
    return min(same, key=lambda row: distance3(found[row].where, held.where), default=None)


def go_along(view: QListView, held: Finding | None, found: Sequence[Finding]) -> None:
    """Take in hand again what was in hand before the list was shown anew. What stands in its place when it is gone stays."""
    row = None if held is None else row_of(held, found)
    if row is not None and row != view.currentIndex().row():
        view.setCurrentIndex(view.model().index(row, 0))
