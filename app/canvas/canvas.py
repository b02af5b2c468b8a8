"""The canvas: rulers, the opened-out view, grips, guides and snags in one widget."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QFont, QPainter
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene, QGridLayout, QWidget

from app.canvas.chance_marks import ChanceLayer
from app.canvas.free_room import Box
from app.canvas.handles import GripLayer
from app.canvas.layer import MarkLayer
from app.canvas.pen import Pen
from app.canvas.picture import LEVEL, PictureLayer
from app.canvas.picture_cache import Kept
from app.canvas.rulers import THICK, Ruler
from app.canvas.snag_marks import SnagLayer
from app.canvas.tag import PointerTag
from app.canvas.under import LOWER, Under
from app.canvas.view import CanvasView, Grid, Words
from app.look.ground import cover
from app.look.sizes import keep, lettered
from app.look.theme import theme
from geometry.checks import Snag
from geometry.drawing import Drawing
from geometry.drawing.opened_out import OpenedOut
from geometry.layout import Headstock, Loop, loop_path
from geometry.units import LengthUnit
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from geometry.accuracy import Simulation


SMALL, CARDS = 11, 12
"""Letters of labels, and of the cards of snags, at 100 %, pixels."""
FAR = 20_000
"""mm from the middle of the nut to which the paper goes: a layout may be as large as half of that, with its edges folded out,
and have room beside it."""
BEHIND = 26.0
"""Least room behind the nut line that is brought into the window, mm: in it strings are named with their angles."""
RING = 2
"""Width of the frame that tells that the drawing has the keyboard, pixels."""


class _Scene(QGraphicsScene):
    """A scene that paints its own paper, and what lies lowest with it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.grid = Grid()
        self.scale = 3.0
        self.under = Under(self)

    def drawBackground(self, painter: QPainter, area: QRectF) -> None:
        self.grid.paint(painter, area, self.scale, QColor(theme().paper), QColor(theme().line))
        self.under.paint(painter)


class Canvas(QWidget):
    """Shows a layout and reports what the hand does on it. It changes nothing itself."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._moving = False
        self._held: tuple[str, ...] = ()
        self._kept = Kept()
        self._opened_out = OpenedOut()
        self._scene = _Scene(self)
        self._scene.setSceneRect(-FAR, -FAR, 2 * FAR, 2 * FAR)
        self._scene.setItemIndexMethod(QGraphicsScene.ItemIndexMethod.NoIndex)
        self.view = CanvasView(self._scene, self)
        self.view.looked.connect(self._looked)
        self.view.focused.connect(self.update)
        self._top = Ruler(self.view, False, self)
        self._left = Ruler(self.view, True, self)
        self._corner = QWidget(self)
        keep(self._corner, fixed=(THICK, THICK))
        self._corner.setAutoFillBackground(True)
        grid = QGridLayout(self)
        grid.setContentsMargins(RING, RING, RING, RING)
        grid.setSpacing(0)
        grid.addWidget(self._corner, 0, 0)
        grid.addWidget(self._top, 0, 1)
        grid.addWidget(self._left, 1, 0)
        grid.addWidget(self.view, 1, 1)
        small = lettered(self.font(), SMALL)
        self._marks = MarkLayer(self._scene, small, followed=True)
        self.view.words = self._words
        self.picture = PictureLayer(self._scene)
        self._more = MarkLayer(self._scene, small, raised=12.0)
        self._notes = MarkLayer(self._scene, small, raised=18.0)
        self._ghost = MarkLayer(self._scene, small, raised=24.0)
        # Over the drawing, but their words below the cards of snags: what is wrong is read whole while it is dragged past.
        self._guides = MarkLayer(self._scene, small, raised=19.0, plated=True)
        self._grips = GripLayer(self._scene)
        bold = _bold(self.font())
        self._snags = SnagLayer(self._scene, bold)
        self.pen = Pen(self._scene)
        self.tag = PointerTag(self._scene, self.view, small, self._seen)
        self.chances = ChanceLayer(self._scene, bold)
        self.follow_theme()

    def paintEvent(self, event) -> None:
        """The margin: plain, or the ring that tells that the drawing has the keyboard."""
        colour = theme().ring if self.view.hasFocus() else theme().bar
        cover(QPainter(self), self.rect(), QColor(colour))

    def sizeHint(self) -> QSize:
        return QSize(820, 760)

    # ---- what to show ---------------------------------------------------
    def show_layout(self, layout: Headstock, moving: bool = False) -> None:
        """Draw a layout; only what differs from the last one is touched. `moving`: it will differ again in a moment."""
        self._marks.show(self._opened_out.groups(layout))
        self.picture.show(layout.picture)
        self._moving = moving
        self._settle()

    @property
    def moving(self) -> bool:
        """Whether what is shown is on its way: something is being dragged."""
        return self._moving

    def show_snags(self, snags: list[tuple[Snag, str]], held: tuple[str, ...]) -> None:
        """Mark snags (with the text of their numbers) and colour the features they are about."""
        # Words that move stay as they were to the cards: else these would jump, and be laid anew in each frame.
        self._snags.show(snags, None if self._moving else self._marks.words)
        self._held = held
        if self._marks.set_states(feature_states([snag for snag, _ in snags], held)):
            self._settle()
        if self.chances.on_show:
            self.chances.keep_clear_of(self._snags.taken)

    def choose_snag(self, snag: Snag | None) -> None:
        """Go to a snag and ring it."""
        self._snags.choose(snag)
        if snag is not None:
            self.go_to(snag.where[:2])

    def go_to(self, at: Vec2) -> None:
        """Bring a place (mm) into view; nothing moves when it is."""
        if not self.view.shows(*at):
            self.view.look_at(*at)

    def show_chances(self, simulation: Simulation | None) -> None:
        """Mark the worst places of a simulation; None takes the marks away."""
        if simulation is None and not self.chances.on_show:
            return
        self.chances.keep_clear_of(self._snags.taken)
        self.chances.show(simulation)

    def items_of(self, feature: str) -> list[QGraphicsItem]:
        """What shows one feature of the layout on the canvas."""
        return self._marks.items_of(feature)

    def show_more(self, groups: dict[str, Drawing]) -> None:
        """Marks that a stage adds to the drawing, by group; an empty dict takes them away."""
        self._more.show(groups)
        self._more.part_turned(self.view.pixels_per_mm)

    def show_notes(self, groups: dict[str, Drawing]) -> None:
        """Signs where notes of the job book are pinned."""
        self._notes.show(groups)

    def show_ghost(self, marks: Drawing) -> None:
        """Where things would come to lie, over the drawing; none takes them away."""
        self._ghost.show({"ghost": marks} if marks else {})

    def show_guides(self, marks: Drawing) -> None:
        """Temporary marks above the drawing."""
        self._guides.show({"guides": marks} if marks else {})

    def _words(self) -> tuple[Words, Words]:
        return self._marks.beyond(turned=False), self._more.beyond(turned=True)

    def _seen(self) -> list[Box]:
        """What the card at the pointer keeps clear of: signs of snags, small things, and what is in hand with its guides and words."""
        scale = self.view.pixels_per_mm
        return self._snags.covered + self._guides.covered(scale) + [
            (left * scale, right * scale, -top * scale, -bottom * scale)
            for left, right, bottom, top in (*self._guides.reach(("guides",)), *self._marks.reach(self._held))]

    def show_grips(self, loop: Loop | None, nodes: tuple[int, ...] = ()) -> None:
        """Nodes and handles of the loop in hand."""
        self._grips.show_grips(loop, nodes)

    # ---- how to show it -------------------------------------------------
    def fit(self, layout: Headstock) -> None:
        """Bring the whole opened-out view into the window, with an outline that reaches beyond the blank."""
        b, (x0, y0, x1, y1) = layout.blank, loop_path(layout.outline).box
        left, right = min(x0, -b.bass - b.thickness), max(x1, b.treble + b.thickness)
        low, high = min(y0, -b.behind, -BEHIND), max(y1, b.tip)
        self.view.fit(QRectF(left - 12, low - 6, right - left + 24, high - low + 16))

    def set_unit(self, unit: LengthUnit) -> None:
        """Rule the paper in mm or inches, as the rulers do by themselves."""
        self._scene.grid.step_mm = 10.0 if unit == "mm" else 6.35
        self._repaper()

    def set_grid_visible(self, visible: bool) -> None:
        """Rule the paper or leave it plain."""
        self._scene.grid.visible = visible
        self._repaper()

    def follow_theme(self) -> None:
        """Repaint everything in another set of colours."""
        for layer in (self._marks, self._more, self._notes, self._ghost, self._guides, self._snags, self.chances):
            layer.follow_theme()
        self._settle()
        palette = self._corner.palette()
        palette.setColor(self._corner.backgroundRole(), QColor(theme().bar))
        self._corner.setPalette(palette)
        self._repaper()

    def follow_sizes(self) -> None:
        """Letters, signs and grips at the size in use."""
        small, bold = lettered(self.font(), SMALL), _bold(self.font())
        for layer in (self._marks, self._more, self._notes, self._ghost, self._guides):
            layer.set_font(small)
        for layer in (self._snags, self.chances):
            layer.set_font(bold)
        self.tag.set_font(small)
        self._looked()

    def _repaper(self) -> None:
        """Paint the paper anew: the view keeps a picture of it, which an invalid scene alone does not drop."""
        self.view.resetCachedContent()
        self._scene.invalidate()

    def _settle(self) -> None:
        """Paint what stays from pictures: with the paper what lies under the photo, or under all hardware without one."""
        lines, (shaped, coloured) = self._marks.lines, self._marks.take_changed()
        self._scene.under.lay(lines, shaped | coloured, self._moving, LOWER if self.picture.item is None else LEVEL)
        if self._moving:
            self._kept.begin(lines, self.devicePixelRatioF().is_integer())
            self._kept.draw(shaped)
        else:
            self._kept.end()

    def _looked(self) -> None:
        self._scene.scale = self.view.pixels_per_mm
        self._grips.look(self.view.pixels_per_mm)
        self._marks.part(self.view.pixels_per_mm)
        self._more.part_turned(self.view.pixels_per_mm)
        self._snags.look(self.view.pixels_per_mm, self._marks.words)
        self.chances.look(self.view.pixels_per_mm, self._snags.taken if self.chances.on_show else [])


def _bold(font: QFont) -> QFont:
    made = lettered(font, CARDS)
    made.setBold(True)
    return made


def feature_states(snags: list[Snag], held: tuple[str, ...]) -> dict[str, str]:
    """How each feature stands, as styles.pen_and_brush wants it: held, snagged or both. Notes leave it plain."""
    states: dict[str, str] = {}
    for snag in snags:
        if snag.grade == "note":
            continue
        word = "spoils" if snag.grade == "spoils the work" else "tight"
        for id in snag.between:
            if states.get(id) != "spoils":
                states[id] = word
    for id in held:
        states[id] = f"{states.get(id, '')} held".strip()
    return states
