"""Everything without a mouse: from part to part, from thing to thing, and the pen that the arrow keys move."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractButton, QApplication, QScrollArea, QSplitter, QWidget

from app.canvas.view import ARROWS
from app.look import walk
from app.look.sizes import px
from app.tools import Pointer
from app.window.input.hand import STARTS
from app.window.input.stepping import next_node, next_snag, next_thing, place_of
from app.window.stages import STAGES
from geometry.saying import say
from geometry.strings.square_line import square_line
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from app.window.frame import Frame

PULLED = ("section", "picture")
"""Tools that pull from a press to letting go: Space puts the pen down, and lifts it again."""
BORDER_STEP = 40
"""Pixels at 100 % that one press moves a border between two parts."""
LETTERED = ("draw outline", "draw slot")
"""Tools of which letters choose the kind of edge."""


class Keyboard(QObject):
    """Takes keys of the canvas, and those that lead through the window."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._w = window
        self.pen: Vec2 | None = None
        self._down = False
        window.canvas.view.keys = self.take
        window.canvas.view.claims = self.claims
        window.canvas.view.hovered.connect(self._mouse)
        QShortcut(QKeySequence("Esc"), window, activated=self.escape)
        for number, stage in enumerate(STAGES, 1):
            shortcut = QShortcut(QKeySequence(f"Alt+{number}"), window, activated=self._stage_key)
            shortcut.setProperty("stage", stage.key)

    # ---- through the window -----------------------------------------------
    def _stage_key(self) -> None:
        self._w.set_stage(self.sender().property("stage"))

    def escape(self) -> None:
        """Put back what was begun; else come back to the drawing; else take the holding tool; else hold nothing."""
        w = self._w
        self.put_pen_away()
        if w.front.shown:
            w.front.leave()
        elif w.hand.begun:
            w.hand.cancel()
            w.say(say("Put back"))
        elif w.canvas.isVisible() and not w.canvas.view.hasFocus() and QApplication.focusWidget() is not None:
            w.canvas.view.setFocus()
        elif w.tools.tool != "hold":
            w.set_tool("hold")
        else:
            w.node = None
            w.document.hold(())
            w.canvas.choose_snag(None)

    def home(self) -> None:
        """Give the keyboard to the drawing, or to what stands in its place; not while it is in the bars above."""
        w, now = self._w, QApplication.focusWidget()
        if now is not None and (w.stages.isAncestorOf(now) or w.tools.isAncestorOf(now)):
            return
        self._into(w.paper)

    def from_bars(self, event: QKeyEvent) -> bool:
        """Take a key that the stage or tool in use had no use for: Enter leads to what it is for, and so does the first sign of a
        value, which is typed there. False when it is not wanted."""
        w, now = self._w, QApplication.focusWidget()
        if not (isinstance(now, QAbstractButton) and now.isChecked() and (w.stages.isAncestorOf(now) or w.tools.isAncestorOf(now))):
            return False
        typed = bool(event.text()) and event.text() in STARTS and w.tools.tool != "hold"
        if not typed and event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return False
        self._into(w.paper)
        if typed and w.canvas.view.hasFocus():
            w.canvas.view.keyPressEvent(event)
        return True

    def leave(self) -> None:
        """Take the keyboard from what is about to go: Qt would look for the next stop through the whole window."""
        now = QApplication.focusWidget()
        if now is not None and (self._w.beside.isAncestorOf(now) or self._w.side.isAncestorOf(now)):
            self._w.beside.setFocus()

    def part(self, by: int) -> None:
        """Go to the next part of the window, or the one before with -1: stages, tools, drawing, panel, lists."""
        parts = [part for part in self._w.parts if part.isVisible() and (walk.stops(part) or part is self._w.paper)]
        now = QApplication.focusWidget()
        at = next((i for i, part in enumerate(parts) if now is part or now is not None and part.isAncestorOf(now)), -1)
        self._into(parts[(at + by) % len(parts)])

    def _into(self, part: QWidget) -> None:
        if part.isAncestorOf(self._w.canvas.view) and self._w.paper.currentWidget() is self._w.canvas:
            self._w.canvas.view.setFocus(Qt.FocusReason.TabFocusReason)
            return
        found = walk.stops(part)
        fields = [stop for stop in found if not isinstance(stop, QScrollArea)] or found
        if part is self._w.paper:
            fields = [stop for stop in fields if not isinstance(stop, QAbstractButton)] or fields
        if fields:
            walk.give_keyboard(fields[0])

    def widen_panel(self, way: int) -> None:
        """Give the panel some of the drawing's room, or with -1 the other way."""
        _shift(self._w.splitter, way * BORDER_STEP)

    def raise_lists(self, way: int) -> None:
        """Give the lists some of the panel's room, or with -1 the other way."""
        _shift(self._w.side.inside, way * BORDER_STEP)

    # ---- from thing to thing ------------------------------------------------
    def thing(self, by: int, also: bool = False) -> None:
        """Hold the next thing of the drawing, or the one before; `also` keeps what is held already."""
        w = self._w
        found = next_thing(w.document.layout, w.stage, w.document.held, by)
        if found is None:
            return
        w.node = None
        kept = tuple(id for id in w.document.held if id != found) if also else ()
        w.document.hold((*kept, found))
        at = place_of(w.document.layout, found)
        if at is not None:
            w.canvas.go_to(at)

    def snag(self, by: int) -> None:
        """Go to the next snag, or the one before, and choose its card."""
        from app.panels.forms.card_list import ROW  # here, as it comes with the panel

        w = self._w
        index = next_snag(w.side.inside.snags, by)
        if index is None:
            w.say(say("There is no snag."))
            return
        w.side.inside.snags.setCurrentIndex(index)
        w.side.inside.snags.scrollTo(index)
        w.go_to_snag(index.data(ROW))

    def _node(self, by: int) -> None:
        w = self._w
        found = next_node(w.document.layout, w.stage, w.document.held, w.node, by)
        if found is None:
            w.say(say("Hold the outline or a drawn slot first: then K leads from node to node."))
            return
        ref, w.node = found
        node = w.node
        w.document.hold((ref,))
        w.node = node
        w.show_held()

    def _add_node(self) -> None:
        w = self._w
        held = w.document.held
        if w.node is None or len(held) != 1:
            w.say(say("Hold a node first (K): the new one comes into the edge after it."))
            return
        from geometry.edits.shape import add_node  # here: a start makes no nodes

        node, mirrored = w.node, w.chooser.options.mirrored
        if w.foot.can(lambda: w.document.apply(say("Add a node"), add_node(w.document.layout, held[0], node, 0.5, mirrored))):
            w.node = node + 1
            w.show_held()

    # ---- keys of the canvas ---------------------------------------------------
    def claims(self, event: QKeyEvent) -> bool:
        """Whether a key that is a shortcut elsewhere is the gesture's: Backspace takes back what was typed or drawn last, and
        must not remove what is held."""
        return event.key() == Qt.Key.Key_Backspace and self._w.hand.busy

    def take(self, event: QKeyEvent) -> bool:
        """Take a key of the canvas before a gesture is asked. False when it is not wanted here."""
        keys = event.modifiers()
        shift = bool(keys & Qt.KeyboardModifier.ShiftModifier)
        if keys & Qt.KeyboardModifier.ControlModifier:
            return False
        if self._w.canvas.view.pressing:
            return event.key() in ARROWS
        drawing = self._w.tools.tool != "hold" or self._w.hand.busy
        if event.key() in ARROWS and drawing:
            size = 10.0 if shift else 0.1 if keys & Qt.KeyboardModifier.AltModifier else 1.0
            x, y = ARROWS[event.key()]
            self._move(x * size, y * size)
            return True
        if keys & Qt.KeyboardModifier.AltModifier:
            return False
        if event.key() == Qt.Key.Key_Space and self.pen is not None and not self._w.hand.entries:
            self._press(shift)
            return True
        tool, text = self._w.tools.tool, event.text()
        begins = bool(text) and (text in STARTS or tool in LETTERED and text.isalpha())
        if drawing and not self._w.hand.busy and begins:
            self._send("move")
            return self._w.hand.key("", text)
        return tool == "hold" and not self._w.hand.busy and self._thing_key(event, shift)

    def _thing_key(self, event: QKeyEvent, shift: bool) -> bool:
        key, by = event.key(), -1 if shift else 1
        if key == Qt.Key.Key_N:
            self.thing(by)
        elif key == Qt.Key.Key_E:
            self.thing(by, also=True)
        elif key == Qt.Key.Key_K:
            self._node(by)
        elif key == Qt.Key.Key_S:
            self.snag(by)
        elif key == Qt.Key.Key_Insert:
            self._add_node()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._w.show_panel(True)
            self._into(self._w.side.inside.upper)
        else:
            return False
        return True

    # ---- the pen ----------------------------------------------------------------
    def put_pen_away(self) -> None:
        """No cross any more; the mouse points, or nothing does."""
        self.pen, self._down = None, False
        self._w.canvas.pen.show_at(None)

    def _mouse(self, at: Vec2 | None) -> None:
        if at is not None and self.pen is not None:
            self.put_pen_away()

    def _move(self, dx: float, dy: float) -> None:
        at = self.pen or self._beginning()
        self.pen = (round(at[0] + dx, 6), round(at[1] + dy, 6)) if self.pen is not None else at
        self._w.canvas.go_to(self.pen)
        self._send("move")

    def _press(self, hold: bool) -> None:
        """A press and a letting go; one of them alone for tools that pull, and with Shift."""
        if hold or self._w.tools.tool in PULLED:
            self._down = not self._down
            self._send("press" if self._down else "release")
            return
        self._send("press")
        if self._w.hand.busy:
            self._send("release")

    def _send(self, kind: str) -> None:
        if self.pen is None:
            self.pen = self._beginning()
        at = self.pen
        self._w.hand.point(Pointer(at, kind, alt=True, mm_per_pixel=1 / self._w.canvas.view.pixels_per_mm))
        if self.pen is not None:
            self._w.canvas.pen.show_at(at, self._down)
            self._w.foot.show_place(at, self._w.unit, square_line(self._w.document.layout.nut))

    def _beginning(self) -> Vec2:
        """Where the pen begins: at what is held, else in the middle of what is seen, on a whole millimetre."""
        held = self._w.document.held
        at = place_of(self._w.document.layout, held[-1]) if held else None
        if at is None:
            at = self._w.canvas.view.middle
        return (float(round(at[0])), float(round(at[1])))


def _shift(splitter: QSplitter, by: int) -> None:
    """Make the second part, where it is on show, larger by so many pixels at 100 %, as far as the parts allow; to the splitter as
    if its border were dragged."""
    if splitter.widget(1).isVisible():
        splitter.moveSplitter(splitter.sizes()[0] - px(by), 1)
