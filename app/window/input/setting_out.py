"""Setting out: bringing things into line, spreading them evenly, offset copies, copies from side to side."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from geometry import edits  # and not its names: an edit is loaded when it is made
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


class SettingOut(QObject):
    """Carries out the actions of that menu on what a window holds."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self.commands: dict[str, Callable[[], None]] = {
            "level": partial(self._align, say("Bring to one height"), "y"),
            "in line": partial(self._align, say("Bring into line"), "x"),
            "spread line": partial(self._apply, say("Spread on a line"), lambda *of: edits.spread(*of, "line"), 3),
            "spread edge": partial(self._apply, say("Spread along the edge"), lambda *of: edits.spread(*of, "edge"), 3),
            "row on a line": partial(self._apply, say("Make a row on a line"), lambda *of: edits.make_row(*of, "straight")),
            "row along the edge": partial(self._apply, say("Make a row along the edge"), lambda *of: edits.make_row(*of, "edge")),
            "copy side": partial(self._copied, say("Copy treble to bass"), "treble", "bass"),
            "copy side back": partial(self._copied, say("Copy bass to treble"), "bass", "treble"),
            "offset": self._offset, "fillet": self._round}

    def _apply(self, name: str, edit: Callable[[Headstock, tuple[str, ...]], Headstock], least: int = 2) -> None:
        document = self._window.document
        if len(document.held) < least:
            raise GeometryError(say("Hold at least {n} things first: press with Shift, or pull a frame round them.",
                                    n=least))
        with speaking(self._window.unit):
            made = edit(document.layout, document.held)
        document.apply(name, made)
        self._window.say(name)

    def _align(self, name: str, axis: str) -> None:
        """Bring the nodes in hand into line where there are several, else what is held. What was taken first stays; the others come
        to it."""
        window = self._window
        node, nodes = window.node, window.nodes
        if len(nodes) < 2:
            self._apply(name, lambda *of: edits.align(*of, axis))
            return
        mirrored = window.chooser.options.mirrored
        window.document.apply(name, edits.align_nodes(window.document.layout, window.document.held[0], nodes, axis, mirrored))
        window.hold_nodes(node, nodes)
        window.say(name)

    def _copied(self, name: str, source: str, target: str) -> None:
        document = self._window.document
        document.apply(name, edits.copy_side(document.layout, source, target))
        self._window.say(name)

    def _round(self) -> None:
        window, document = self._window, self._window.document
        if window.node is None:
            raise GeometryError(say("Hold a corner first."))
        from app.window.dialogs.round_dialog import RoundDialog
        dialog = RoundDialog(window, document.held[0], window.node)
        taken, made = dialog.exec(), dialog.made
        dialog.deleteLater()
        if taken:
            window.hold_nodes(None, ())
            document.apply(say("Round the corner"), made)

    def _offset(self) -> None:
        window, document = self._window, self._window.document
        ref = next((id for id in document.held if id == "outline" or any(s.id == id for s in document.layout.slots)),
                   "outline" if window.stage == "outline" else "")
        if not ref:
            raise GeometryError(say("Hold the outline or a slot first."))
        from app.window.dialogs.offset_dialog import OffsetDialog
        dialog = OffsetDialog(window, ref)
        taken = dialog.exec()
        made, stays = dialog.made, dialog.keeps
        dialog.deleteLater()
        if not taken:
            return
        before = document.layout
        if stays:
            document.apply(say("Offset copy"), made)
            document.hold(edits.new_ids(before, document.layout))
        else:
            document.apply(say("Offset"), made)
            document.hold((ref,))
