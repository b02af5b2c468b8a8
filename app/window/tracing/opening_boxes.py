"""The holes and slots that are seen in a picture, as boxes to tick: those of one size have one box."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget
from shapely.geometry import Point

from app.look.filled import filled
from app.look.paragraph import paragraph
from geometry import vectors as v
from geometry.curves import Path
from geometry.curves.polygons import polygon
from geometry.saying import count, say
from geometry.tracing.openings import Opening
from geometry.units import LengthUnit, format_close, format_size
from geometry.vectors import Vec2

MOST_BOXES = 8
"""Sizes that have a box; what else is seen is ticked in the picture."""
SAME = 1.0
"""mm by which the middle of an opening may move when it is found anew, as with another level of grey"""


class OpeningBoxes(QWidget):
    """What is seen, and what of it is ticked."""

    changed = Signal()

    def __init__(self, unit: LengthUnit, parent: QWidget) -> None:
        super().__init__(parent)
        self._unit = unit
        self.openings: tuple[Opening, ...] = ()
        self.ticked: set[int] = set()
        """numbers of the openings that are to be taken"""
        self.boxes: list[QCheckBox] = []
        self._groups: list[list[int]] = []
        self._rows = QVBoxLayout()
        words = paragraph(self, say("Seen in the head: tick what the layout is to take, here or by pressing on it in the picture. A slot or hole "
                                    "that the layout has there already is moved onto it, unless it is in the wood already."), "dim")
        filled(QVBoxLayout(self), words, self._rows, margins=(0, 0, 0, 0))
        self.hide()

    def show_openings(self, openings: Sequence[Opening]) -> None:
        """These in place of the ones before; what was ticked stays ticked where it is found again."""
        before = [(self.openings[i].role, _middle(self.openings[i].path)) for i in self.ticked]
        self.openings = tuple(openings)
        self.ticked = {i for i, one in enumerate(openings)
                       if any(role == one.role and v.distance(at, _middle(one.path)) <= SAME for role, at in before)}
        sizes: dict[tuple, list[int]] = {}
        for i, one in enumerate(openings):
            sizes.setdefault((one.role, *(round(side, 1) for side in one.size)), []).append(i)
        self._groups = list(sizes.values())[:MOST_BOXES]
        for box in self.boxes:
            self._rows.removeWidget(box)
            box.deleteLater()
        self.boxes = [QCheckBox(self._words(group), self, clicked=self._clicked) for group in self._groups]
        for box in self.boxes:
            self._rows.addWidget(box)
        self._show()
        self.setVisible(bool(openings))

    def toggle(self, at: Vec2) -> bool:
        """Tick the opening at a place (mm), or take its tick away; False where there is none."""
        found = next((i for i, one in enumerate(self.openings) if polygon(one.path).contains(Point(at))), None)
        if found is None:
            return False
        self.ticked ^= {found}
        self._show()
        return True

    def chosen(self) -> list[tuple[Path, str]]:
        """The openings that are ticked, with their roles."""
        return [(one.path, one.role) for i, one in enumerate(self.openings) if i in self.ticked]

    def _clicked(self) -> None:
        group = set(self._groups[self.boxes.index(self.sender())])
        self.ticked = self.ticked - group if group <= self.ticked else self.ticked | group
        self._show()

    def _show(self) -> None:
        for box, group in zip(self.boxes, self._groups, strict=True):
            n = len(self.ticked.intersection(group))
            box.setCheckState(Qt.CheckState.Unchecked if n == 0 else Qt.CheckState.Checked if n == len(group) else Qt.CheckState.PartiallyChecked)
        self.changed.emit()

    def _words(self, group: Sequence[int]) -> str:
        one = self.openings[group[0]]
        if one.role == "hole":
            return count(len(group), "{n} hole, {wide} wide", "{n} holes, {wide} wide", wide=format_close(one.size[0], self._unit, mark=True))
        return count(len(group), "{n} slot, {size}", "{n} slots, {size}", size=format_size(*one.size, self._unit))


def _middle(path: Path) -> Vec2:
    x0, y0, x1, y1 = path.box
    return v.middle((x0, y0), (x1, y1))
