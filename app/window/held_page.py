"""What the panel shows: the list of snags, and what is held. During a drag it follows the drawing at an eye's pace, not at the hand's."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from msgspec import Struct
from msgspec.structs import replace
from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QWidget

from geometry.layout import Headstock
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.panels.describe import Page
    from app.window.frame import Frame
    from geometry.checks import CheckResult

MOST_NOTES = 12
"""Notes that are shown with the thing they are pinned to, the last ones: each is a part of the page that is laid out."""
PART_MS = 10
"""From one part of the panel to the next (list, facts, fields, section): no frame of a drag has to wait for two of them."""
REST_MS = 100
"""From the last part to the first of the next round.

Words that change faster than that cannot be read; the drawing and the rings and numbers of its snags do not wait for them.
"""


class Step(Struct, frozen=True):
    """What a round shows. All its parts are filled from one step of a drag, though the hand goes on between them:
    numbers that stand side by side must belong together."""

    shown: Headstock
    held: tuple[str, ...]
    result: CheckResult
    node: int | None
    nodes: tuple[int, ...]


class HeldPage(QObject):
    """Fills the panel on the right with the page of what is held, or of the stage."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self._begun = False
        self._put_off = False
        self._listed: CheckResult | None = None
        self._page: Page | None = None
        self._parts = (self._list, self._facts, self._fields, self._section)
        self._turn = 0
        self._again = False
        self._step = self._now()
        self._due = QTimer(self, singleShot=True, timeout=self._beat)

    def begin(self) -> None:
        """Show it for the first time, once the window is built: each part of the building would fill the page anew."""
        self._begun = True
        self.follow()

    def begin_in_steps(self) -> Iterator[None]:
        """The same in steps, between which the window answers."""
        self._begun = True
        self._step = self._now()
        for part in self._parts:
            part()
            yield

    @contextmanager
    def once(self) -> Iterator[None]:
        """Show it at the end, however often it is asked for meanwhile."""
        self._put_off = True
        try:
            yield
        finally:
            self._put_off = False
        self.follow()

    def follow(self) -> None:
        """Show snags and what is held: at once, or in a round of its own while a gesture runs."""
        if not self._begun or self._put_off:
            return
        if not self._window.hand.busy:
            self.show()
        elif self._due.isActive():
            self._again = True
        else:
            self._due.start(PART_MS)

    def show(self) -> None:
        """Show it now."""
        self._due.stop()
        self._turn, self._again = 0, False
        self._step = self._now()
        for part in self._parts:
            part()

    def _now(self) -> Step:
        window = self._window
        document = window.document
        return Step(document.shown, document.held, document.result, window.node, window.nodes)

    def _beat(self) -> None:
        if self._turn == len(self._parts):
            self._turn = 0
            if not self._again:  # nothing changed since the round began
                return
        if self._turn == 0:
            self._step, self._again = self._now(), False
        self._parts[self._turn]()
        self._turn += 1
        self._due.start(PART_MS if self._turn < len(self._parts) else REST_MS)

    def _list(self) -> None:
        """The snags of the layout on show; cures that were found for them since are not undone."""
        result = self._step.result
        if result is not self._listed:
            self._listed = result
            self._window.side.inside.show_result(result)

    @property
    def _room(self) -> QWidget | None:
        """The panel of a stage that stands in the place of rows and section now."""
        room = self._window.room
        return room.panel if room is not None and room.panel is not None and room.takes(self._step.held) else None

    def _facts(self) -> None:
        from app.panels.describe import describe  # here and below: what fills the panel is loaded after the drawing
        from app.panels.several import several, several_nodes
        from app.window.stage_pages import stage_page

        self._page = None
        window, step = self._window, self._step
        shown, held = step.shown, step.held
        if window.laying:
            return
        panel = self._room
        window.side.inside.show_room(panel)
        if panel is not None:
            return
        if len(held) > 1:
            page = several(shown, held, window.unit)
        elif len(step.nodes) > 1:
            page = several_nodes(shown, held[0], step.nodes, window.chooser.options.mirrored)
        elif held:
            page = _with_notes(describe(shown, held[0], window.unit, step.node), shown, held[0])
        else:
            page = stage_page(window.stage, shown, window.unit, window.tools)
        self._page = page
        window.side.inside.show_facts(page)

    def _fields(self) -> None:
        if self._page is not None:
            self._window.side.inside.show_fields(self._page)

    def _section(self) -> None:
        from geometry.drawing.held_line import held_line
        from geometry.drawing.section_snags import snags_along_bore, snags_on_line
        from geometry.drawing.sections import section_along_bore

        window, title, section, signs = self._window, say("Section along the bore"), (), ()
        shown, held, result = self._step.shown, self._step.held, self._step.result
        if window.laying or self._room is not None:
            return
        if len(held) == 1 and len(self._step.nodes) < 2:
            if any(t.id == held[0] for t in shown.tuners):
                section = section_along_bore(shown, held[0], window.unit, result.holes)
                signs = snags_along_bore(shown, held[0], result.snags, result.holes)
            elif (line := held_line(shown, held[0])) is not None:
                from geometry.drawing.line_section import line_section  # here: it brings the whole running order
                title, section = say("Section through {name}", name=held[0]), line_section(shown, *line, window.unit)
                signs = snags_on_line(*line, result.snags)
        window.side.inside.show_section(title, section, signs, window.hand.busy)


def _with_notes(page: Page, layout: Headstock, id: str) -> Page:
    """The page of a thing with the notes of the job book that are pinned to it and not yet seen to."""
    from app.panels.forms.rows import FieldRow

    notes = [FieldRow(remark.text, "note") for remark in layout.book.remarks if remark.on == id and not remark.done]
    if not notes:
        return page
    more = len(notes) - MOST_NOTES
    if more > 0:
        notes = [*notes[more:], FieldRow(count(more, "{n} older note stands in the job book.", "{n} older notes stand in the job book."),
                                         "note")]
    return replace(page, fields=[FieldRow(say("Noted"), "heading"), *notes, *page.fields])
