"""The strip under the stages: what the hand does next, for the stage on show."""

from __future__ import annotations

from collections.abc import Callable, Collection

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QLabel, QToolButton, QWidget

from app.formats.paper import PAPERS
from app.look.choice import Choice
from app.look.flow import Flow
from app.look.sizes import keep
from app.panels.forms.fields import LengthField
from app.tools.options import sound_width
from app.window.sign_button import SignButton
from geometry.errors import GeometryError
from geometry.lengths import speaking
from geometry.saying import say
from geometry.units import LengthUnit, usual_slot

WORDS: dict[str, tuple[str, str]] = {
    "hold": (say("Hold"), say("Press on a thing to hold it, drag it to move it. Shift keeps one axis, Alt lets go of snapping.")),
    "draw outline": (say("Draw"), say("Draw a new outline: press for each node, close it on the first.")),
    "picture": (say("Move picture"), say("Drag the picture behind the drawing, with Shift turn it about the middle of the nut.")),
    "slot": (say("New slot"), say("Press where the middle of its round nut end goes, then that of the tip end.")),
    "draw slot": (say("Drawn slot"), say("Draw a slot of any shape.")),
    "pin": (say("Pin"), say("Place a locating pin.")),
    "tuner": (say("Place"), say("Press where the post of the hardware chosen goes; a side tuner keeps to the edge.")),
    "hole": (say("Hole"), say("Place a hole that belongs to no tuner.")),
    "wind": (say("Other side"), say("Press on a post to lead its string past its other side.")),
    "section": (say("Section"), say("Lay a line across the head and see what it cuts; drag its ends or the whole line.")),
    "measure": (say("Measure"), say("Press on one thing, then on another: how far they are apart, bores from middle to middle.")),
}
"""Word and help of each tool, in the order in which they stand."""
TOOLS: dict[str, tuple[str, ...]] = {
    "blank": ("hold", "measure"),
    "outline": ("hold", "draw outline", "picture", "measure"),
    "slots": ("hold", "slot", "draw slot", "pin", "section", "measure"),
    "tuners": ("hold", "tuner", "hole", "section", "measure"),
    "strings": ("hold", "wind", "section", "measure"),
    "router": ("hold", "measure"),
    "order": (),
    "sheets": (),
    "book": (),
}
"""Tools of each stage."""
ACTIONS = {"outline": ("import", "fillet", "symmetric"), "slots": ("propose pins",),
           "router": ("propose pins",),
           "sheets": ("print", "correct", "write sheets")}
"""Actions that a stage offers beside its tools."""
WHEN_TAKEN = ("picture",)
"""Tools that a menu puts in hand; the strip shows them only meanwhile."""
ONCE = ("draw outline", "draw slot")
"""Tools that are laid down after use; others stay in hand until Esc."""

BY_TAB = Qt.FocusPolicy.TabFocus
"""Of tools and their choices: the mouse leaves the keyboard to the drawing, where what the tool asks for is typed."""


class ToolBar(QWidget):
    """Buttons for the tools of a stage, and their options."""

    chosen = Signal(str)
    action = Signal(str)
    option_changed = Signal()

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="tools")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._row = Flow(self, (18, 6, 14, 6), 6)
        self._group = QButtonGroup(self, exclusive=True)
        self._tools: dict[str, SignButton] = {}
        self._stage = ""
        self._strips: dict[str, QWidget] = {}
        for key, (word, about) in WORDS.items():
            self._add_tool(key, word, about)
        self._row.add_gap(10)
        self.mirrored = QToolButton(self, text=say("Mirrored"), toolTip=say("The other side follows whatever is done on one."), checkable=True,
                                    focusPolicy=BY_TAB)
        self.mirrored.toggled.connect(self.option_changed)
        self._row.addWidget(self.mirrored)
        self.slot_width_label = QLabel(say("Width"), self, objectName="dim")
        self.slot_width_field = LengthField(unit, parent=self, accessibleName=say("Width of the new slot"))
        keep(self.slot_width_field, fixed_width=90)
        self.slot_width_field.sent.connect(self._width)
        self.slot_width = usual_slot(unit)
        self.slot_width_field.show_value(self.slot_width)
        self.hardware = Choice(self, accessibleName=say("Hardware"), minimumContentsLength=16,
                               sizeAdjustPolicy=Choice.SizeAdjustPolicy.AdjustToContents)
        self._offered: list[str] = []
        self.hardware.setFocusPolicy(BY_TAB)
        self.hardware.currentTextChanged.connect(self.hardware.setToolTip)
        self.hardware.activated.connect(self.option_changed)
        self._row.addWidget(self.hardware, gives_way=True)
        self._actions: dict[str, SignButton] = {}
        for key, word, about in (
                ("import", say("Import…"), say("Read an outline from a DXF or SVG drawing.")),
                ("fillet", say("Round…"), say("Round the corner that is held.")),
                ("propose pins", say("Propose pins"),
                 say("Two locating pins where the wood allows them, to take or leave.")),
                ("symmetric", say("Symmetric"), say("The bass side follows the treble side.")),
                ("print", say("Print…"), say("At 100 %, corrected for the printer.")),
                ("correct", say("Correct a printer…"),
                 say("Enter what the two 100 mm bars of a printed page measure.")),
                ("write sheets", say("Write the sheets…"), say("DXF, SVG, PDF and the hole table."))):
            button = SignButton(key, word, about, self, clicked=self._acted)
            button.setProperty("action", key)
            self._actions[key] = button
            self._row.addWidget(button)
        self.paper = Choice(self, accessibleName=say("Paper"))
        self.paper.addItems(PAPERS)
        self.paper.activated.connect(self.option_changed)
        self._row.addWidget(self.paper)
        self.edge = Choice(self, choices=(("straight", say("Straight")), ("arc", say("Arc")), ("tangent arc", say("Tangent arc")),
                                          ("curve", say("Curve"))),
                           accessibleName=say("Kind of edge drawn next"), toolTip=say("Kind of edge drawn next"))
        self.edge.setFocusPolicy(BY_TAB)
        self.edge.activated.connect(self.option_changed)
        for widget in (self.edge, self.slot_width_label, self.slot_width_field):
            self._row.addWidget(widget)
        self._options: dict[str, tuple[QWidget, ...]] = {
            "draw outline": (self.edge,), "draw slot": (self.edge,), "slot": (self.slot_width_label, self.slot_width_field)}
        """what comes and goes with a tool: at the end, where it moves nothing else"""
        self._row.add_gap()
        self._tools["hold"].setChecked(True)
        self.set_stage("tuners")

    @property
    def about(self) -> str:
        """What the tool in hand does, in a sentence; "" where its word says all."""
        return self._tools[self.tool].accessibleDescription()

    def set_stage(self, stage: str) -> None:
        """Show the tools of a stage."""
        self._stage = stage
        self._show_what_fits()

    def set_tool(self, tool: str) -> None:
        """Mark a tool as the one in hand."""
        if not self._tools[tool].isChecked():
            self._tools[tool].setChecked(True)
            self._show_what_fits()

    @property
    def tool(self) -> str:
        return next((key for key, button in self._tools.items() if button.isChecked()), "hold")

    def add_strip(self, stage: str, strip: QWidget) -> None:
        """Take in more widgets of a stage, right of its tools; they are seen only in that stage."""
        strip.setVisible(False)
        self._row.insert_widget(self._row.indexOf(self.edge), strip)
        self._strips[stage] = strip

    def set_hardware(self, patterns: list[str], used: Collection[str] = ()) -> None:
        """Offer these patterns, keeping the one chosen, under its new name too. A copy just made is chosen, as it is to be changed;
        one that comes with a tuner (`used`) is a mirror image, and what was chosen stays."""
        if patterns == self._offered:
            return
        before, self._offered = self._offered, patterns
        row, now = self.hardware.currentIndex(), self.hardware.currentText()
        new, gone = [one for one in patterns if one not in before], [one for one in before if one not in patterns]
        if len(new) == 1 and (gone == [now] or not gone and new[0] not in used):
            now = new[0]
        self.hardware.clear()
        self.hardware.addItems(patterns)
        found = self.hardware.findText(now)
        self.hardware.setCurrentIndex(found if found >= 0 else max(0, min(row, len(patterns) - 1)))

    def show_edge_kind(self, kind: str) -> None:
        """Show the kind of edge that a key has chosen."""
        if self.edge.currentData() != kind:
            self.edge.setCurrentIndex(self.edge.findData(kind))

    def enable_action(self, key: str, on: bool) -> None:
        """Grey out what cannot be done now. The keyboard on it goes to the tool in hand, not to the next action."""
        if not on and self._actions[key].hasFocus() and self._tools[self.tool].isVisible():
            self._tools[self.tool].setFocus()
        self._actions[key].setEnabled(on)

    # ---- room for words ---------------------------------------------------
    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self._fit_words()

    def _fit_words(self) -> None:
        """Show words beside as many signs from the left as there is room for in one row: the actions, which the menus have too,
        stand last.

        Whatever tool is in hand, there is room for what any tool of the stage brings: no button moves as one is taken. Where
        even the signs alone have no room, the name of the hardware is shortened, or the row goes on below.
        """
        signs, wanted = self._wanted()
        words = next((n for n in range(len(signs), 0, -1) if wanted(n) <= self.width()), 0)
        for i, button in enumerate(signs):
            button.show_word(i < words)

    def _wanted(self) -> tuple[list[SignButton], Callable[[int], int]]:
        """The buttons on show from the left, and from how many of them have words to the width in points of all that is shown then.

        Each part is asked once for all of these: its answer is what takes long, at every step of the window's edge.
        """
        margins = self._row.contentsMargins()
        always = margins.left() + margins.right()
        others = max(([_room(one) for one in self._options.get(tool, ())] for tool in TOOLS[self._stage]), key=sum, default=[])
        options = {one for several in self._options.values() for one in several}
        signs, rooms = [], []
        for i in range(self._row.count()):
            item = self._row.itemAt(i)
            widget = item.widget()
            if widget is None:
                always += item.sizeHint().width()
            elif isinstance(widget, SignButton) and widget.isVisibleTo(self):
                signs.append(widget)
                rooms.append(widget.rooms())
            elif widget.isVisibleTo(self) and widget not in options:
                others.append(_room(widget))
        always += self._row.spacing() * (len(signs) + len(others)) + sum(others)
        strip = self._strips.get(self._stage)
        if strip is not None and always + sum(bare for bare, _ in rooms) > self.width():
            always -= _room(strip) + self._row.spacing()  # it has a row of its own

        def wanted(words: int) -> int:
            return always + sum(worded if i < words else bare for i, (bare, worded) in enumerate(rooms))

        return signs, wanted

    # ---- inside ---------------------------------------------------------
    def _add_tool(self, key: str, word: str, about: str) -> None:
        button = SignButton(key, word, about, self, checkable=True, focusPolicy=BY_TAB, clicked=self._picked)
        button.setProperty("tool", key)
        self._group.addButton(button)
        self._tools[key] = button
        self._row.addWidget(button)

    def _show_what_fits(self) -> None:
        """Show what the stage and the tool in hand have use for.

        What goes is hidden before what comes is shown: shown together they
        would make the window grow, and it would not shrink again.
        """
        stage, tool = self._stage, self.tool
        wanted = [(button, key in TOOLS[stage] and (key not in WHEN_TAKEN or key == tool)) for key, button in self._tools.items()]
        wanted += [(button, key in ACTIONS.get(stage, ()))
                   for key, button in self._actions.items()]
        wanted += [(strip, key == stage) for key, strip in self._strips.items()]
        wanted += [(self.mirrored, "hold" in TOOLS[stage]), (self.hardware, stage == "tuners"),
                   (self.paper, stage == "sheets")]
        now = self._options.get(tool, ())
        wanted += [(widget, widget in now) for widget in {one: None for several in self._options.values() for one in several}]
        for widget, shown in sorted(wanted, key=lambda pair: pair[1]):
            widget.setVisible(shown)
        self._fit_words()
        self.updateGeometry()

    def _picked(self) -> None:
        self._show_what_fits()
        self.chosen.emit(self.sender().property("tool"))

    def _acted(self) -> None:
        self.action.emit(self.sender().property("action"))

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit; a width that nobody has chosen is the usual one in that."""
        if self.slot_width == usual_slot(self.slot_width_field.unit):
            self.slot_width = usual_slot(unit)
            self.slot_width_field.show_value(self.slot_width)
        self.slot_width_field.set_unit(unit)

    def _width(self, value: float) -> None:
        try:
            with speaking(self.slot_width_field.unit):
                self.slot_width = sound_width(value)
        except GeometryError as error:
            self.slot_width_field.refuse(str(error))
            return
        self.slot_width_field.show_value(value)
        self.option_changed.emit()


def _room(widget: QWidget) -> int:
    """The width that a part likes best, pixels."""
    return max(widget.minimumSizeHint().width(), widget.minimumWidth(), min(widget.sizeHint().width(), widget.maximumWidth()))
