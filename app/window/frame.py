"""What a window holds and shows: its layout, its parts and where they stand, what is in hand, what the maker chose.

Whatever works in a window (a stage's room, a dialog, a menu, the proposals) takes a `Frame`, and can be understood without the
commands, the journal and the other windows: these are the business of `main`, which wires all of it.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, get_args

from PySide6.QtCore import QSettings, Qt, Signal
from PySide6.QtWidgets import QFrame, QMainWindow, QVBoxLayout, QWidget

from app.canvas import Canvas
from app.document import Document
from app.look.calm import Calm
from app.look.filled import filled
from app.look.theme import use_theme
from app.panels.side import SidePanel
from app.tools import Gesture, Pointer
from app.window import kept
from app.window.beside import Beside
from app.window.colours import chosen_theme, take_letters
from app.window.division import Division
from app.window.files import Files, Others
from app.window.foot import Foot
from app.window.front.front import Front
from app.window.input.gestures import GestureChooser
from app.window.input.hand import Hand
from app.window.rooms.room import StageRoom
from app.window.rooms.rooms import Rooms
from app.window.stages import StageBar
from app.window.tool_bar import ToolBar
from geometry.layout import Headstock
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from PySide6.QtGui import QAction

    from app.window.rooms.sheets import SheetWriter


class Frame(QMainWindow):
    """Stages above, tools and drawing on the left, the panel on the right."""

    drawing_wanted = Signal()
    """the keyboard is to go to the drawing, or to what stands in its place"""

    def __init__(self, layout: Headstock, path: Path | None, settings: QSettings, others: Others) -> None:
        """In the colours that the maker chose. The parts come with `lay_out`."""
        super().__init__()
        self.settings = settings
        self.unit: LengthUnit = kept.one_of(settings, "unit", get_args(LengthUnit), "mm")
        use_theme(chosen_theme(settings))
        take_letters(settings)
        self.document = Document(layout, path, self)
        self.files = Files(self.document, self, settings, others)
        self.stage = "tuners"
        self.node: int | None = None
        """the node in hand of the loop that is held"""
        self._nodes: tuple[int, ...] = ()
        self.laying = False
        """whether the gesture in hand lays a line, of which the panel tells instead of what is held"""
        self.actions_: dict[str, QAction] = {}
        """what is in the menus, by its key"""
        self.sheet_writer: SheetWriter | None = None
        """the last writing of sheets"""
        self.opens = False
        """whether the rest of the window has yet to come (`opening`): what only a window that rests asks for is put off until
        then. On a slow machine its time would be up before the drawing was painted, and the drawing would wait for it."""

    def lay_out(self) -> None:
        """Make the parts."""
        self.work = QWidget(self)
        self.stages = StageBar(self.work)
        self.tools = ToolBar(self.unit, self.work)
        self.canvas = Canvas(self.work)
        self.side = SidePanel(self.unit, self.work)
        left = QWidget(self.work)
        self.beside = Beside(left)
        self.paper = self.beside.paper
        self.paper.addWidget(self.canvas)
        line = QFrame(left, objectName="rule")
        self.foot = Foot(left)
        filled(QVBoxLayout(left), self.tools, (self.beside, 1), line, Calm(self.foot, left), margins=(0, 0, 0, 0), gap=0)
        self.splitter = Division(Qt.Orientation.Horizontal, self.work)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.addWidget(left)
        self.splitter.addWidget(self.side)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setSizes([940, 420])
        filled(QVBoxLayout(self.work), self.stages, (self.splitter, 1), margins=(0, 0, 0, 0), gap=0)
        self.chooser = GestureChooser(self.document, self.tools)
        self.hand = Hand(self.document, self._start, self)
        self.rooms = Rooms(self)
        self.front = Front(self, self.work)

    def _start(self, pointer: Pointer) -> Gesture | None:
        self.chooser.options.nodes = self.nodes
        return self.chooser.start(pointer)

    @property
    def nodes(self) -> tuple[int, ...]:
        """The nodes in hand: that of `node`, and those held with it."""
        if self.node is None:
            return ()
        return self._nodes if self.node in self._nodes else (self.node,)

    def take_nodes(self, node: int | None, nodes: tuple[int, ...] = ()) -> None:
        """Take nodes of the loop that is held in hand; `show_held` shows them."""
        self.node, self._nodes = node, nodes

    def hold_nodes(self, node: int | None, nodes: tuple[int, ...]) -> None:
        """Take nodes of the loop that is held in hand, and show them."""
        self.take_nodes(node, nodes)
        self.show_held()

    def show_panel(self, shown: bool) -> None:
        """Show the panel with its lists, or give the drawing their room until another stage, a field or one of the lists is asked for."""
        self.actions_["panel"].setChecked(shown)
        if shown == self.side.isHidden():
            now = self.focusWidget()
            self.side.setVisible(shown)
            if now is not None and self.side.isAncestorOf(now):
                self.drawing_wanted.emit()

    def say(self, text: str) -> None:
        """One sentence in the foot of the window."""
        self.foot.say(text)

    @property
    def folder(self) -> Path:
        """Where the file of the layout lies; the home folder while it has none."""
        path = self.document.path
        return Path.home() if path is None else path.parent

    @property
    def room(self) -> StageRoom | None:
        """The room of the stage on show, if it has one."""
        return self.rooms[self.stage]

    def take_in(self, room: StageRoom) -> None:
        """Place the widgets of a room that has just been made."""
        if room.centre is not None:
            self.paper.addWidget(room.centre)
        if room.panel is not None:
            self.side.add_room(room.panel)
        if room.strip is not None:
            self.tools.add_strip(room.key, room.strip)

    @property
    def parts(self) -> tuple[QWidget, ...]:
        """The parts of the window, as F6 leads through them."""
        return (self.stages, self.tools, self.beside, self.side.inside.upper, self.side.inside.lower)

    # ---- what may be asked of the whole window -------------------------------
    def set_stage(self, stage: str) -> None:
        """Show another stage of the work."""
        raise NotImplementedError

    def set_tool(self, tool: str) -> None:
        """Take another tool in hand."""
        raise NotImplementedError

    def do(self, key: str) -> None:
        """Carry out the action of that key, as its menu does."""
        raise NotImplementedError

    def show_held(self) -> None:
        """Show what is held, on the drawing and in the panel."""
        raise NotImplementedError

    def show_room(self) -> None:
        """Show what the room of the stage brings, as it is now."""
        raise NotImplementedError
