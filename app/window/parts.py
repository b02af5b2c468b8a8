"""The parts of the window and where they stand: stages above, tools and drawing on the left, the panel on the right."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QSplitter, QVBoxLayout, QWidget

from app.canvas import Canvas
from app.look.calm import Calm
from app.panels.side import SidePanel
from app.window.beside import Beside
from app.window.foot import Foot
from app.window.front.front import Front
from app.window.rooms.rooms import Rooms
from app.window.stages import StageBar
from app.window.tool_bar import ToolBar

if TYPE_CHECKING:
    from app.window.main import MainWindow


def lay_out(window: MainWindow) -> None:
    """Make the parts of a window, as its attributes."""
    middle = QWidget(window)
    column = QVBoxLayout(middle)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    window.stages = StageBar(middle)
    window.tools = ToolBar(window.unit, middle)
    window.canvas = Canvas(window.theme, middle)
    window.side = SidePanel(window.theme, window.unit, middle)
    left = QWidget(middle)
    under = QVBoxLayout(left)
    under.setContentsMargins(0, 0, 0, 0)
    under.setSpacing(0)
    under.addWidget(window.tools)
    window.rooms = Rooms(window)
    window.beside = Beside(window.theme, left)
    window.paper = window.beside.paper
    window.paper.addWidget(window.canvas)
    under.addWidget(window.beside, 1)
    line = QFrame(left)
    line.setObjectName("rule")
    under.addWidget(line)
    window.foot = Foot(left)
    under.addWidget(Calm(window.foot, left))
    window.splitter = QSplitter(Qt.Orientation.Horizontal, middle)
    window.splitter.setChildrenCollapsible(False)
    window.splitter.addWidget(left)
    window.splitter.addWidget(window.side)
    window.splitter.setStretchFactor(0, 1)
    window.splitter.setSizes([940, 420])
    column.addWidget(window.stages)
    column.addWidget(window.splitter, 1)
    window.front = Front(window, middle)
