"""The window: wires its parts (`frame`) to document, menus, commands and rooms. It decides nothing about headstocks."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from app.document.journal import Journal
from app.formats.paper import PAPERS, usual_paper
from app.look import walk
from app.look.descendants import tell
from app.panels.snags.snag_words import placed
from app.tools import Done, Shown
from app.window import actions, closing, kept, place
from app.window.background.aside import hand_works
from app.window.background.motion import Motion
from app.window.changes import Changes
from app.window.commands import Commands
from app.window.cures import Cures
from app.window.frame import Frame
from app.window.front.drops import Drops
from app.window.held_page import HeldPage
from app.window.history_buttons import HistoryButtons
from app.window.input.at_pointer import AtPointer
from app.window.input.keyboard import Keyboard
from app.window.input.typed_text import TypedText
from app.window.input.under_hand import UnderHand
from app.window.language_menu import LanguageMenu
from app.window.looks import Looks
from app.window.opening import Opening
from app.window.recent_menu import RecentMenu
from app.window.rooms.book_watch import BookWatch
from app.window.tool_bar import ONCE
from app.window.tracing.desk import PictureDesk
from geometry.drawing.same import Same
from geometry.edits.parts import shaped_loop
from geometry.layout import Headstock
from geometry.saying import say
from geometry.strings.square_line import square_line
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.windows import Windows

HELD_AS = {"nut line": "nut"}
"""What is held for what a snag calls by another name."""


class MainWindow(Frame):
    """One window with one layout."""

    def __init__(self, layout: Headstock, path: Path | None, windows: Windows, drawing_first: bool = False) -> None:
        """One of all `windows`. With `drawing_first` the panel on the right is filled after the drawing was painted
        (app/window/opening.py)."""
        self.windows = windows
        super().__init__(layout, path, windows.settings, windows)
        self.windows.add(self)
        self.asked = False
        """whether the maker has been asked about unsaved work already, as the whole program ends"""
        folder = self.windows.journal_folder
        self.journal = Journal(folder, self) if folder is not None else None
        self.pins = None
        self.lay_out()
        self.keyboard = Keyboard(self)
        self.held_page = HeldPage(self)
        self.tagged = AtPointer(self)
        self.under_hand = UnderHand(self)
        self.book_watch = BookWatch(self)
        self.pictures = PictureDesk(self)
        self.changes = Changes(self)
        TypedText(self)
        self.commands = Commands(self)
        self.actions_ = actions.build(self, self.commands.triggered)
        for key in ("panel", "grid", "snap"):
            self.actions_[key].setChecked(True)
        LanguageMenu(self)
        self.recent_menu = RecentMenu(self)
        self.history_buttons = HistoryButtons(self)
        self.looks = Looks(self)
        self.pictures.build()
        self._connect()
        self.cures = Cures(self)
        self.set_unit(self.unit)
        self.looks.paint()
        self._show()
        self.set_stage("tuners")
        if not drawing_first:
            self.held_page.begin()
        if kept.flag(self.settings, "solid"):
            self.show_solid(True)
        if not drawing_first:
            self.listen()
        self._history()
        self._file()
        # Last: until then each part that the window is given would be told to both.
        self.drops = Drops(self)
        self.motion = Motion(self)
        self.windows.watch(self)
        place.restore(self)
        self.opening = Opening(self) if drawing_first else None

    def listen(self) -> None:
        """Have what happens told to those who hear the window instead of seeing it."""
        from app.window.input.spoken import Spoken  # here, as it is not needed for the drawing

        self.spoken = Spoken(self)

    def _connect(self) -> None:
        document = self.document
        document.shown_changed.connect(self._show)
        document.held_changed.connect(self.show_held)
        document.history_changed.connect(self._history)
        document.file_changed.connect(self._file)
        document.book_changed.connect(self._book)
        if self.journal is not None:
            self.journal.troubled.connect(self.foot.show_unkept)
        self.canvas.view.pointed.connect(self.hand.point)
        self.canvas.view.looked.connect(self._looked)
        self.canvas.view.hovered.connect(self._hover)
        self.canvas.view.nudged.connect(self.commands.nudge)
        self.canvas.view.key_filter = self.hand.key
        self.drawing_wanted.connect(self.keyboard.home)
        self.hand.typed.connect(self.tagged.type)
        self.hand.shown.connect(self._gesture)
        self.hand.refused.connect(self.say)
        self.hand.finished.connect(self._finished)
        self.stages.chosen.connect(self.set_stage)
        self.tools.chosen.connect(self.set_tool)
        self.tools.action.connect(self.commands.run)
        self.tools.option_changed.connect(self._options)
        self.tools.paper.textActivated.connect(self._paper_chosen)
        self.tools.slot_width_field.refused.connect(self.say)
        self.side.edited.connect(self.commands.edited)
        self.side.refused.connect(self.foot.refuse)
        self.side.snag_chosen.connect(self.go_to_snag)

    # ---- showing --------------------------------------------------------
    def _show(self) -> None:
        shown, result = self.document.shown, self.document.result
        self.canvas.show_layout(shown, self.hand.busy)
        self.foot.show_counts(result)
        self.chooser.offer_hardware()
        room = self.room
        if room is not None:
            room.shown()
        self.show_held()

    def show_held(self) -> None:
        shown, held = self.document.shown, self.document.held
        self.canvas.show_snags(placed(Same(self.document.result.snags), self.unit), held)
        self.beside.show_layout(shown, self.document.result.snags, held)
        ref = held[0] if len(held) == 1 else ("outline" if self.stage == "outline" else "")
        loop = shaped_loop(shown, ref)
        if loop is None and self.stage == "outline":
            loop = shown.outline
        if loop is None or held != (ref,) or max(self.nodes, default=0) >= len(loop.nodes):  # an undo may have taken it away
            self.node = None
        self.canvas.show_grips(None if self.tools.tool in ONCE else loop, self.nodes)
        self.tools.enable_action("fillet", self.node is not None)
        self.held_page.follow()

    def _hover(self, at: tuple[float, float] | None) -> None:
        if at is None and self.keyboard.pen is None:
            self.hand.leave()
        self.foot.show_place(at, self.unit, square_line(self.document.layout.nut))

    def _looked(self) -> None:
        hand_works()
        if self.keyboard.pen is None:
            self._hover(self.canvas.view.under_pointer)

    def _gesture(self, shown: Shown | None) -> None:
        self.laying = shown is not None and shown.line is not None
        self.canvas.show_guides(() if shown is None else shown.marks)
        self.tagged.show(shown)
        if shown is None:
            return
        self.take_nodes(shown.node, shown.nodes)
        if self.laying:
            self.rooms.let_load()
            from app.window.line_page import show_line  # here: few lay a line
            show_line(self, shown)
        self.tools.show_edge_kind(self.chooser.options.kind)
        self.foot.follow(" · ".join(word for word in (shown.readout, shown.snapped) if word))

    def show_room(self) -> None:
        room = self.room
        self.paper.setCurrentWidget(self.canvas if room is None or room.centre is None else room.centre)
        self.canvas.show_more({} if room is None else room.marks())
        self.side.show_snags(room is None or room.with_snags)
        self.show_held()

    def show_solid(self, shown: bool) -> None:
        """Show the head in space beside the drawing, or put it away."""
        self.beside.show_solid(shown)
        self.actions_["solid"].setChecked(shown)
        self.settings.setValue("solid", shown)
        self.show_held()

    def _refresh_room(self) -> None:
        room = self.room
        if room is not None:
            room.refresh()
            self.canvas.show_more(room.marks())

    def _options(self) -> None:
        self._follow_options()
        self.show_held()

    def _follow_options(self) -> None:
        self._refresh_room()
        self.chooser.refresh(self.unit, 1.0 if self.unit == "mm" else 25.4 / 32, self.stage)

    def _finished(self, done: Done | None) -> None:
        self.take_nodes(*((done.node, done.nodes) if done is not None else (None,)))
        if done is not None and self.tools.tool in ONCE:
            self.set_tool("hold")
        self.say(done.name if done is not None else "")
        self.show_held()

    def _history(self) -> None:
        self.foot.refuse("")  # of another layout
        self._refresh_room()
        self.history_buttons.name_steps()
        self.pictures.follow()
        self._file()

    def _file(self) -> None:
        if self.journal is not None:
            self.journal.keep(self.document)
        name, unsaved = self.document.layout.name or say("Without a name"), self.document.unsaved
        self.stages.set_name(name, unsaved)
        self.setWindowTitle(f"{name}[*] – Pegwright")
        self.setWindowModified(unsaved)
        self.setWindowFilePath(str(self.document.path or ""))

    def _book(self) -> None:
        """Something was written into the job book: no step, but unsaved work that the journal keeps."""
        self.foot.refuse("")
        self._refresh_room()
        self.held_page.follow()  # notes are shown with what they are pinned to
        self._file()

    # ---- changing -------------------------------------------------------
    def set_stage(self, stage: str) -> None:
        self.front.leave()
        put_back = self._put_back()
        before = self.room
        if before is not None and stage != self.stage:
            before.leave()
        self.keyboard.leave()
        with self.held_page.once():
            self.stage = stage
            self.node = None
            self.stages.set_stage(stage)
            self.show_panel(True)
            room = self.room
            self.tools.set_stage(stage)
            if room is not None:
                room.enter()
            self._take("hold")
            self.document.hold(())
            self._follow_options()
            self.show_room()
        self.canvas.view.refit()
        self.history_buttons.name_steps()
        self.keyboard.home()
        if put_back:
            self.say(put_back)

    def do(self, key: str) -> None:
        self.commands.run(key)

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Tab leads through the window as it is read."""
        return walk.step(self, onward)

    def keyPressEvent(self, event) -> None:
        if not self.keyboard.from_bars(event):
            super().keyPressEvent(event)

    def set_tool(self, tool: str) -> None:
        put_back = self._put_back()
        self._take(tool)
        self._options()
        self.keyboard.home()
        if put_back:
            self.say(put_back)

    def _put_back(self) -> str:
        """Put back what is in hand; what to say of it, nothing for a hand that has not begun anything."""
        begun = self.hand.begun
        return say("What was in hand is put back.") if self.hand.cancel() and begun else ""

    def _take(self, tool: str) -> None:
        self.tools.set_tool(tool)
        self.canvas.view.set_tool_shape(Qt.CursorShape.ArrowCursor if tool == "hold" else Qt.CursorShape.CrossCursor)
        self.keyboard.put_pen_away()
        self.say("")

    def go_to_snag(self, snag) -> None:
        """Bring a snag into view and hold the first feature it is about."""
        self.canvas.choose_snag(snag)
        self.document.hold(tuple(HELD_AS.get(id, id) for id in snag.between[:1]))

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit everywhere."""
        self.unit = self.hand.unit = unit
        kept.note(self.settings, "unit", unit)
        self.side.set_unit(unit)
        self.tools.set_unit(unit)
        tell(self.paper, "set_unit", unit)
        self.tools.paper.setCurrentText(kept.one_of(self.settings, "paper", PAPERS, usual_paper(unit)))
        for key in ("mm", "in", "in64"):
            self.actions_[key].setChecked(key == unit)
        self._options()

    def _paper_chosen(self, name: str) -> None:
        self.settings.setValue("paper", name)  # for the next start too

    # ---- the window itself ----------------------------------------------
    def showEvent(self, event) -> None:
        super().showEvent(event)
        self.motion.watch(self.windowHandle())
        if not event.spontaneous():  # a window that comes back from the bar of tasks shows what it showed
            self.canvas.fit(self.document.shown)

    def may_close(self) -> bool:
        """Ask about unsaved work and see the sheets written; whether the window may go."""
        may = self.files.may_leave()
        if may and self.sheet_writer is not None:
            self.sheet_writer.finish()
        return may

    def closeEvent(self, event) -> None:
        from app.threads.waiting import waited_for  # here: a start waits for nothing

        event.ignore()
        if not waited_for(self) and (self.asked or self.may_close()):
            event.accept()
            closing.end(self)
