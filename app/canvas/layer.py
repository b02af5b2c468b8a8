"""The drawing on the canvas: one graphics item per feature and style, changed in place."""

from __future__ import annotations

from itertools import zip_longest

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QFont, QPainterPath, QTransform
from PySide6.QtWidgets import (
    QGraphicsItem,
    QGraphicsPathItem,
    QGraphicsPixmapItem,
    QGraphicsScene,
    QGraphicsSimpleTextItem,
)

from app.canvas.free_room import Box
from app.look.paths import add_mark, boxes_of, middle_of
from app.look.plates import plate
from app.look.styles import look_of, pen_and_brush, style_key
from app.look.theme import theme
from geometry.drawing import Drawing, Label

LEADING = 0.15
"""Of a line's height, what stays empty above its letters and below them: lines may come so near."""
GAP = 5.0
"""Least room between two labels beside each other, pixels."""


class _PlatedText(QGraphicsSimpleTextItem):
    """Text on a plate of its own, to be read over anything. The plate is a picture behind it, so no Python runs to paint."""

    def __init__(self) -> None:
        super().__init__()
        self._plate = QGraphicsPixmapItem(self)
        self._plate.setFlag(QGraphicsItem.GraphicsItemFlag.ItemStacksBehindParent)
        self._plate.setOffset(-4, -1)
        self.reach: Box = (0.0, 0.0, 0.0, 0.0)
        """what the words cover, in pixels from their place, y down"""

    def lay_plate(self, colour: str, grain: float) -> None:
        """Give the words the plate that they need now."""
        box = self.boundingRect()
        picture = plate(box.width() + 8, box.height() + 2, 3, grain, colour, 0.9)
        if picture.cacheKey() != self._plate.pixmap().cacheKey():
            self._plate.setPixmap(picture)


class MarkLayer:
    """Owns the items of a display list that is grouped by feature.

    `show` takes the whole list each time and touches only the features whose
    marks changed, so a drag repaints what moved and nothing else.
    """

    def __init__(self, scene: QGraphicsScene, font: QFont, raised: float = 0.0,
                 plated: bool = False, followed: bool = False) -> None:
        """`plated` puts labels on plates, for marks that lie over everything else. `followed`: somebody asks what has
        changed; else that is not kept, for it would be for good."""
        self._followed = followed
        self._text = _PlatedText if plated else QGraphicsSimpleTextItem
        self._scene = scene
        self._font = font
        self._raised = raised
        self._marks: dict[str, Drawing] = {}
        self._lines: dict[tuple[str, str], QGraphicsPathItem] = {}
        self._labels: dict[str, list[QGraphicsSimpleTextItem]] = {}
        self._said: dict[str, list[Label]] = {}
        """what each of these says"""
        self._parted: float | None = None
        """the zoom for which labels were put away that would lie over others; None in a layer where none are"""
        self._unparted = False
        """whether labels have changed since"""
        self.words: list[Box] = []
        """what those cover that were not put away, pixels of the zoomed drawing, y down"""
        self._states: dict[str, str] = {}
        self._reached: dict[str, tuple[Box, ...]] = {}
        """what the lines of an owner cover, as far as it was asked"""
        self._shaped: set[QGraphicsPathItem] = set()
        self._coloured: set[QGraphicsPathItem] = set()

    def show(self, groups: dict[str, Drawing]) -> None:
        """Make the items match the marks of each owner."""
        for owner in [known for known in self._marks if known not in groups]:
            self._drop(owner)
        for owner, marks in groups.items():
            before = self._marks.get(owner)
            if before is marks or before == marks:
                continue
            self._marks[owner] = marks
            self._rebuild(owner, marks)
        if self._unparted and self._parted is not None:
            self.part(self._parted)

    def set_states(self, states: dict[str, str]) -> bool:
        """Say which features are held or snagged (see styles.pen_and_brush); absent ones are plain. Whether any stands otherwise now."""
        if states == self._states:
            return False
        changed = {o for o in states.keys() | self._states.keys() if states.get(o, "") != self._states.get(o, "")}
        self._states = dict(states)
        for (owner, style), item in self._lines.items():
            if owner in changed:
                self._style(item, owner, style)
        return True

    def follow_theme(self) -> None:
        """Repaint everything in another set of colours."""
        for (owner, style), item in self._lines.items():
            self._style(item, owner, style)
        for owner, items in self._labels.items():
            for item, mark in zip(items, self._said[owner], strict=True):
                self._colour(item, mark)
                self._lay(item, mark)

    def set_font(self, font: QFont) -> None:
        """Write the labels in another font."""
        if font == self._font:
            return
        self._font = font
        for owner, items in self._labels.items():
            for item, mark in zip(items, self._said[owner], strict=True):
                item.setFont(font)
                self._lay(item, mark)

    def part(self, pixels_per_mm: float) -> None:
        """Put away labels that would lie over a longer one at this zoom, from now on; turned ones stand as they are."""
        self._parted, self._unparted = pixels_per_mm, False
        found = [(item, label) for owner, items in self._labels.items()
                 for item, label in zip(items, self._said[owner], strict=True)
                 if not label.angle]
        taken: list[QRectF] = []
        self.words = []
        for item, label in sorted(found, key=lambda pair: -len(pair[1].text)):
            box = item.boundingRect()
            x, y = middle_of(label)
            box.moveTo(x * pixels_per_mm - _before(label, box.width()), -y * pixels_per_mm - box.height() / 2)
            covered = any(box.intersects(other) for other in taken)
            item.setVisible(not covered)
            if not covered:
                taken.append(box.adjusted(-GAP, 0.0, GAP, 0.0))
                self.words.append((box.left(), box.right(), box.top(), box.bottom()))

    def beyond(self, turned: bool) -> dict[float, tuple[float, float]]:
        """How far the longest labels reach from their places, pixels: of those that are not turned to the left and right of each place
        across (mm) where some stand, of turned ones below and above each place along."""
        found: dict[float, tuple[float, float]] = {}
        for owner, items in self._labels.items():
            for item, label in zip(items, self._said[owner], strict=True):
                if bool(label.angle) == turned:
                    box = item.transform().mapRect(item.boundingRect())
                    at, less, more = (label.at[1], box.bottom(), -box.top()) if turned else (label.at[0], -box.left(), box.right())
                    one, other = found.get(at, (0.0, 0.0))
                    found[at] = max(one, less), max(other, more)
        return found

    def covered(self, pixels_per_mm: float) -> list[Box]:
        """Pixels of the zoomed drawing, y down, that words on plates cover."""
        found = []
        for owner, items in self._labels.items():
            for item, label in zip(items, self._said[owner], strict=True):
                if item.isVisible():
                    (x, y), (left, right, top, bottom) = middle_of(label), item.reach
                    x, y = x * pixels_per_mm, -y * pixels_per_mm
                    found.append((x + left, x + right, y + top, y + bottom))
        return found

    def reach(self, wanted: tuple[str, ...]) -> list[Box]:
        """(left, right, lower, upper) in mm of what small things cover, each as a whole, and of the lines of those wanted."""
        self._reached |= {owner: boxes_of(marks) for owner, marks in self._marks.items() if owner not in self._reached}
        return [box for owner, boxes in self._reached.items() if len(boxes) == 1 or owner in wanted for box in boxes]

    def part_turned(self, pixels_per_mm: float) -> None:
        """Show the turned labels of a group, and the lines that lead to them, only at a zoom at which none of them lies over
        another."""
        for owner, items in self._labels.items():
            boxes, turned = [], [(item, label) for item, label in zip(items, self._said[owner], strict=True) if label.angle]
            for item, label in turned:
                x, y = middle_of(label)
                box = item.boundingRect()
                spare = LEADING * box.height()
                boxes.append(item.transform().mapRect(box.adjusted(0.0, spare, 0.0, -spare)).translated(x * pixels_per_mm, -y * pixels_per_mm))
            free = not any(one.intersects(two) for i, one in enumerate(boxes) for two in boxes[i + 1:])
            led = {label.style for _, label in turned}
            for item in (*(item for item, _ in turned), *(line for (of, style), line in self._lines.items() if of == owner and style in led)):
                item.setVisible(free)

    @property
    def lines(self) -> list[QGraphicsPathItem]:
        """Every item but the labels, in the order in which they came."""
        return list(self._lines.values())

    def take_changed(self) -> tuple[set[QGraphicsPathItem], set[QGraphicsPathItem]]:
        """The lines that came, went or got another shape since this was asked last, and those that got other pens or fills."""
        shaped, coloured, self._shaped, self._coloured = self._shaped, self._coloured, set(), set()
        return shaped, coloured

    def clear(self) -> None:
        """Remove every item."""
        for owner in list(self._marks):
            self._drop(owner)

    def items_of(self, owner: str) -> list[QGraphicsItem]:
        """What shows one feature: its lines and its labels."""
        return [item for (of, _), item in self._lines.items() if of == owner] + self._labels.get(owner, [])

    # ---- inside ---------------------------------------------------------
    def _rebuild(self, owner: str, marks: Drawing) -> None:
        paths: dict[str, QPainterPath] = {}
        labels: list[Label] = []
        self._reached.pop(owner, None)
        for mark in marks:
            if isinstance(mark, Label):
                labels.append(mark)
                continue
            style = style_key(mark)
            if style not in paths:
                paths[style] = QPainterPath()
            add_mark(paths[style], mark)
        for key in [k for k in self._lines if k[0] == owner and k[1] not in paths]:
            self._remove(key)
        for style, path in paths.items():
            item = self._lines.get((owner, style))
            if item is None:
                item = QGraphicsPathItem()
                item.setZValue(look_of(style).z + self._raised)
                self._lines[owner, style] = item
                self._style(item, owner, style)
                self._scene.addItem(item)
                self._keep(self._shaped, item)
            if item.path() != path:
                item.setPath(path)
                self._keep(self._shaped, item)
        self._relabel(owner, labels)

    def _relabel(self, owner: str, labels: list[Label]) -> None:
        items = self._labels.setdefault(owner, [])
        while len(items) > len(labels):
            self._scene.removeItem(items.pop())
        while len(items) < len(labels):
            item = self._text()
            item.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
            item.setFont(self._font)
            item.setZValue(20 + self._raised)
            self._scene.addItem(item)
            items.append(item)
        before = self._said.get(owner, [])
        self._said[owner] = labels
        self._unparted = self._unparted or labels != before
        for item, label, old in zip_longest(items, labels, before[:len(labels)]):
            if old is None or label.style != old.style:
                self._colour(item, label)
            if old is None or (label.text, label.anchor, label.angle) != (old.text, old.anchor, old.angle):
                item.setText(label.text)
                self._lay(item, label)
            else:
                item.setPos(*middle_of(label))

    def _lay(self, item: QGraphicsSimpleTextItem, label: Label) -> None:
        """Place other words, or words in another font, on a plate of their size."""
        if isinstance(item, _PlatedText):
            item.lay_plate(theme().panel, self._scene.views()[0].devicePixelRatioF())
        place_label(item, label)
        if isinstance(item, _PlatedText):
            left, top, right, bottom = item.transform().mapRect(item.boundingRect()).getCoords()
            item.reach = left, right, top, bottom

    def _colour(self, item: QGraphicsSimpleTextItem, label: Label) -> None:
        plated = isinstance(item, _PlatedText)
        item.setBrush(QColor(theme().ink) if plated else pen_and_brush(label.style, theme(), "")[0].color())

    def _style(self, item: QGraphicsPathItem, owner: str, style: str) -> None:
        pen, brush = pen_and_brush(style, theme(), self._states.get(owner, ""))
        if item.pen() != pen or item.brush() != brush:
            item.setPen(pen)
            item.setBrush(brush)
            self._keep(self._coloured, item)

    def _keep(self, changed: set[QGraphicsPathItem], item: QGraphicsPathItem) -> None:
        if self._followed:
            changed.add(item)

    def _remove(self, key: tuple[str, str]) -> None:
        item = self._lines.pop(key)
        self._keep(self._shaped, item)
        self._scene.removeItem(item)

    def _drop(self, owner: str) -> None:
        del self._marks[owner]
        self._reached.pop(owner, None)
        for key in [k for k in self._lines if k[0] == owner]:
            self._remove(key)
        self._unparted = bool(self._said.pop(owner, None)) or self._unparted
        for item in self._labels.pop(owner, []):
            self._scene.removeItem(item)


def _before(label: Label, wide: float) -> float:
    """How much of a label's width lies before the place where it is anchored."""
    return {"left": 0.0, "middle": wide / 2, "right": wide}[label.anchor]


def place_label(item: QGraphicsSimpleTextItem, label: Label) -> None:
    """Put a text item where its label stands: text keeps its size on the screen, its place is in mm."""
    box = item.boundingRect()
    item.setPos(*middle_of(label))
    turned = QTransform()
    turned.rotateRadians(-label.angle)
    turned.translate(-_before(label, box.width()), -box.height() / 2)
    item.setTransform(turned)
