"""Which gesture the tool in hand starts, with the choices of the tool strip."""

from __future__ import annotations

from collections import Counter

from app.document import Document
from app.document.history import History
from app.tools import Gesture, Options, Pointer
from app.window.tool_bar import ToolBar
from geometry.units import LengthUnit, usual_pin


class GestureChooser:
    """Starts gestures; running ones read `options`, so a choice changed on the way counts at once."""

    def __init__(self, document: Document, tools: ToolBar) -> None:
        self._document = document
        self._tools = tools
        self._history: History | None = None
        self.options = Options()

    def offer_hardware(self) -> None:
        """Offer the hardware of the layout of record, not of what hangs at the pointer, which may bring its mirror image and take it
        away again; of a layout just opened, what most of its tuners are, without any the first that it has."""
        layout = self._document.layout
        used = Counter(tuner.pattern for tuner in layout.tuners)
        self._tools.set_hardware([pattern.id for pattern in layout.patterns], used)
        if self._document.history is not self._history:
            self._history = self._document.history
            first = layout.patterns[0].id if layout.patterns else ""
            self._tools.hardware.setCurrentText(max(used, key=used.__getitem__, default=first))

    def refresh(self, unit: LengthUnit, grid: float, stage: str) -> None:
        """Take over the choices of the tool strip. In the stage of the outline nodes are taken hold of at once, in that of slots pins."""
        tools, options = self._tools, self.options
        options.unit = unit
        options.grid = grid
        options.shape, options.pins = stage == "outline", stage == "slots"
        options.mirrored = tools.mirrored.isChecked()
        options.kind = tools.edge.currentData()
        options.slot_width = tools.slot_width
        options.pin_diameter = options.hole_diameter = usual_pin(unit)
        options.pattern = tools.hardware.currentText()

    def start(self, pointer: Pointer) -> Gesture | None:
        """The gesture that this pointer starts, or None."""
        tool, layout = self._tools.tool, self._document.layout
        if tool == "hold":
            if pointer.kind not in ("press", "double"):
                return None
            from app.tools.hold import hold  # loaded as soon as the drawing is there, or by a press that comes before
            return hold(layout, self._document.held, self.options)
        if pointer.kind == "release":
            return None
        # Each of the others is loaded when it is first used, or beside the window once that rests.
        if tool in ("draw outline", "draw slot"):
            from app.tools.draw import draw
            return draw(layout, "outline" if tool == "draw outline" else "slot", self.options)
        if tool == "slot":
            from app.tools.slot import draw_slot
            return draw_slot(layout, self.options)
        if tool == "measure":
            from app.tools.measure import measure
            return measure(layout, self.options)
        if tool == "section":
            from app.tools.section import section
            return section(layout, self.options)
        if tool == "picture":
            from app.tools.picture import shove_picture
            return shove_picture(layout, self.options)
        if tool == "wind":
            from app.tools.wind import wind
            return wind(layout)
        from app.tools.place import place
        return place(layout, tool, self.options)
