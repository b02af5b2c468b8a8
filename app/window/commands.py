"""What each action does. One method an action, looked up by its key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, get_args

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from app.formats.errors import FormatError
from app.window import ask, texts
from app.window.history_buttons import unseen
from app.window.input.clipboard import Clipboard
from app.window.input.setting_out import SettingOut
from app.window.input.typed_text import take_typed
from geometry import edits  # and not its names: an edit is loaded when it is made
from geometry.checks.words import few
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.main import MainWindow


MOST_NAMED = 3
"""Things that the name of a step tells one by one: it stands in a menu."""
NOT_ON_THE_LAYOUT = frozenset({
    "new", "open", "import", "trace", "new window", "open beside", "close", "quit", "next part", "part before", "fit", "zoom in",
    "zoom out", "grid", "snap", "solid", "chances", "mm", "in", "in64", "keys", "safety", "about"})
"""Actions that may be done before the front page. Any other brings the layout to the front first, so that it is seen."""
ON_HELD = frozenset({
    "remove", "duplicate", "cut", "copy", "level", "in line", "spread line", "spread edge", "row on a line",
    "row along the edge", "offset", "fillet"})
"""Actions on what is held."""


class Commands(QObject):
    """Carries out actions on the window's document."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._w = window
        self.doing = ""
        """the action that runs, or that broke off with an error"""
        clipboard, keyboard = Clipboard(window), window.keyboard
        self._do: dict[str, Callable[[], object]] = {
            "new": window.front.show, "open": self._open, "save": window.files.save, "save as": window.files.save_as,
            "before": window.files.open_before,
            "import": self._import, "write sheets": self._write_sheets,
            "print": self._print, "correct": self._correct, "close": window.close, "quit": window.windows.quit,
            "new window": window.windows.empty, "open beside": window.files.open_beside,
            "undo": self._undo, "redo": self._redo, "changes": window.changes.show,
            "next thing": partial(keyboard.thing, 1), "thing before": partial(keyboard.thing, -1),
            "next snag": partial(keyboard.snag, 1), "snag before": partial(keyboard.snag, -1),
            "next part": partial(keyboard.part, 1), "part before": partial(keyboard.part, -1),
            "panel wider": partial(keyboard.widen_panel, 1), "panel narrower": partial(keyboard.widen_panel, -1),
            "lists taller": partial(keyboard.raise_lists, 1), "lists lower": partial(keyboard.raise_lists, -1),
            "remove": self._remove, "duplicate": self._duplicate,
            "hold all": self._hold_all, "symmetric": self._symmetric,
            "copy": clipboard.copy, "cut": clipboard.cut, "paste": clipboard.paste,
            "turn over": self._turn_over, "propose pins": self._propose_pins,
            "truss rod pocket": self._truss_rod_pocket, "fit": self._fit,
            "zoom in": partial(window.canvas.view.zoom, 1.25), "zoom out": partial(window.canvas.view.zoom, 0.8),
            "grid": self._grid, "snap": self._snap, "chances": self._chances, "hold": window.rooms.chances.ask,
            "solid": self._solid, "panel": self._panel, **{unit: partial(window.set_unit, unit) for unit in get_args(LengthUnit)},
            "keys": self._keys, "safety": self._safety, "about": self._about, "rack": self._rack,
            "note": window.book_watch.pin, "write book": self._write_book,
            **window.pictures.commands, **SettingOut(window).commands}

    # ---- ways in --------------------------------------------------------
    def triggered(self) -> None:
        """Slot of every menu action."""
        self.run(self.sender().data())

    def run(self, key: str) -> None:
        """Carry out the action of that key; what cannot be done is said in the foot of the window."""
        self._w.rooms.let_load()
        if key not in ("undo", "redo"):  # a step back is not made by making one
            take_typed(self._w)
        if key not in NOT_ON_THE_LAYOUT:
            self._w.front.leave()
        action = self._w.actions_.get(key)
        self.doing = action.text().replace("&", "") if action is not None else key
        try:
            if key not in ON_HELD or not self._in_hand(key):
                self._do[key]()
        except (GeometryError, FormatError) as error:
            self._w.foot.refuse(str(error))
        self.doing = ""

    def _in_hand(self, key: str) -> bool:
        """Whether what is held is only in hand, so that the layout does not have it as it is on show, or not at all: it is not
        taken for a thing set down. To remove it is to put it back, of a line being drawn its last node."""
        window = self._w
        if key == "remove" and window.hand.take_back():
            return True
        if not window.hand.busy or window.document.shown is window.document.layout:
            return False
        if key == "remove":
            window.hand.cancel()
            window.say(say("Put back"))
        else:
            window.say(texts.IN_HAND)
        return True

    def nudge(self, dx: float, dy: float) -> None:
        """Move what is held by steps of 1 mm times (dx, dy)."""
        held, node = self._w.document.held, self._w.node
        if node is not None and len(held) == 1:
            mirrored, nodes = self._w.chooser.options.mirrored, self._w.nodes
            self._apply(say("Nudge the node") if len(nodes) == 1 else say("Nudge {n} nodes", n=len(nodes)),
                        lambda layout: edits.move_nodes(layout, held[0], nodes, (dx, dy), mirrored))
            self._w.hold_nodes(node, nodes)
        elif held:
            self._edit(say("Nudge"), lambda layout: edits.move_features(layout, held, (dx, dy)))

    # ---- layout ---------------------------------------------------------
    def _open(self) -> None:
        if self._w.files.open():
            self._fit()

    def _import(self) -> None:
        from app.window.importing.importing import import_drawing
        import_drawing(self._w)

    def _write_sheets(self) -> None:
        from app.window.rooms.sheets import write_sheets
        write_sheets(self._w)

    def _print(self) -> None:
        if self._w.stage != "sheets":
            self._w.set_stage("sheets")
            self._w.say(say("These are the pages: print them with Ctrl+P."))
        else:
            self._w.rooms["sheets"].print()

    def _correct(self) -> None:
        self._w.rooms["sheets"].correct()

    def _write_book(self) -> None:
        self._w.set_stage("book")
        self._w.rooms["book"].write()

    def _rack(self) -> None:
        self._w.set_stage("router")
        self._w.rooms["router"].open_rack()

    # ---- edit -----------------------------------------------------------
    def _apply(self, name: str, edit: Callable[[Headstock], Headstock],
               follow: Callable[[str, Headstock], object] | None = None) -> None:
        def work() -> None:
            with speaking(self._w.unit):
                made = edit(self._w.document.layout)
            (follow or self._w.document.apply)(name, made)
        self._w.foot.can(work)

    def _edit(self, name: str, edit: Callable[[Headstock], Headstock]) -> None:
        """As _apply, the twins of what is held included while Mirrored is on."""
        self._apply(name, edit, self.follow_mirrored)

    def edited(self, what: str, layout: Headstock) -> None:
        """Make what was typed or pressed in the panel the next step. The panel tells of what is on show: with something in hand
        its numbers are those of a layout that may never be, and a number taken from there would set it down unasked."""
        document = self._w.document
        if self._w.hand.busy and document.shown is not document.layout:
            self._w.say(say("What is in hand is not set down yet: set it down, or put it back with Esc, and change its numbers then."))
            self._w.held_page.show()  # with the numbers that hold
            return
        self._w.foot.refuse("")
        before, from_panel = document.layout, self._in_panel
        self.follow_mirrored(what, layout)
        if from_panel and not self._in_panel:
            self._w.canvas.view.setFocus()  # else the keyboard would go on to Undo with the page of what is no more
        if document.layout is before:  # nothing came of it, and the fields show what was typed
            self._w.held_page.show()

    @property
    def _in_panel(self) -> bool:
        now = QApplication.focusWidget()
        return now is not None and self._w.side.isAncestorOf(now)

    def follow_mirrored(self, name: str, layout: Headstock) -> None:
        """Make an edited layout the next step; with Mirrored on, the twins of what is held follow."""
        window, document = self._w, self._w.document
        before, held = document.layout, document.held
        if window.chooser.options.mirrored:
            from geometry.edits.mirrored import echo_edit

            self._apply(name, lambda before: echo_edit(before, layout, document.held, window.node))
        else:
            document.apply(name, layout)
        if document.held or document.layout is before:
            return
        new = edits.new_ids(before, document.layout)
        if held or any(slot.there for slot in document.layout.slots if slot.id in new):
            # What was held has given way to something else; a new pocket wants the measures of the maker's own.
            document.hold(new)

    def _undo(self) -> None:
        if self._w.hand.take_back():
            return
        if self._w.hand.begun:
            self._w.hand.cancel()
            self._w.say(say("Put back"))
            return
        if self._leaves_unseen(self._w.document.history.undo_name):
            return
        before = self._w.document.history.at
        name = self._w.document.undo()
        words = say("Undone: {name}", name=name) if name else say("Nothing to undo")
        words += self._drilled(before)
        if self._w.stage == "book" and not name:
            words += " " + say("(entries of the book have a button of their own)")
        self._w.say(words)

    def _redo(self) -> None:
        if self._leaves_unseen(self._w.document.history.redo_name):
            return
        before = self._w.document.history.at
        name = self._w.document.redo()
        self._w.say((say("Done again: {name}", name=name) if name else say("Nothing to do again")) + self._drilled(before))

    def _drilled(self, before: int) -> str:
        from app.window.drilled_words import drawn_otherwise  # here, as in `changes`: a start takes nothing back
        return drawn_otherwise(self._w.document.history, before)

    def _leaves_unseen(self, name: str | None) -> bool:
        """Whether a step is left alone because its stage does not show what it changes, and says so."""
        if not unseen(self._w, name):
            return False
        self._w.say(say("The drawing stays as it is, for it is not seen here: undo and redo its steps on another stage. What was "
                        "written into the book is taken back by “Take the last entry back”."))
        return True

    def _remove(self) -> None:
        held = self._w.document.held
        if self._w.node is not None and len(held) == 1:
            node, ref, nodes = self._w.node, held[0], self._w.nodes
            if len(nodes) > 1:
                self._apply(say("Remove {n} nodes", n=len(nodes)), lambda layout: edits.remove_nodes(
                    layout, ref, nodes, self._w.chooser.options.mirrored))
                self._w.hold_nodes(None, ())
                return
            self._edit(say("Remove the node"), lambda layout: edits.remove_node(layout, ref, node))
            self._w.node = None
            self._w.show_held()
        elif held:
            self._edit(say("Remove {held}", held=few(held, MOST_NAMED)), lambda layout: edits.remove_features(layout, held))

    def _duplicate(self) -> None:
        held = self._w.document.held
        if held:
            before = self._w.document.layout
            self._apply(say("Duplicate"), lambda layout: edits.duplicate(layout, held))
            self._w.document.hold(edits.new_ids(before, self._w.document.layout) or held)

    def _hold_all(self) -> None:
        tuners = tuple(tuner.id for tuner in self._w.document.layout.tuners)
        if tuners:
            self._w.document.hold(tuners)
        else:
            self._w.say(say("There is no tuner yet: place one, or hold holes that are meant for tuners and choose their hardware."))

    def _symmetric(self) -> None:
        self._apply(say("Make the outline symmetric"), edits.make_symmetric)

    def _propose_pins(self) -> None:
        if self._w.pins is None:
            from app.window.rooms.pin_proposal import PinProposal
            self._w.pins = PinProposal(self._w)
        self._w.pins.start()

    def _truss_rod_pocket(self) -> None:
        self._w.set_stage("slots")
        self._w.document.hold(())
        self.follow_mirrored(say("Add a truss rod pocket"), edits.add_truss_rod_pocket(self._w.document.layout, unit=self._w.unit))

    def _turn_over(self) -> None:
        from geometry.strings.hands import thick_on_treble  # here: a start needs nothing of strings

        before = self._w.document.layout
        self._apply(say("Left-handed mirror"), edits.mirror_layout)
        if self._w.document.layout is not before and thick_on_treble(self._w.document.layout.strings):
            self._w.say(say("Mirrored. The left edge is still called bass, the right one treble: the thick strings run on the "
                            "treble side now."))

    # ---- view -----------------------------------------------------------
    def _fit(self) -> None:
        self._w.canvas.fit(self._w.document.shown)

    def _grid(self) -> None:
        self._w.canvas.set_grid_visible(self._w.actions_["grid"].isChecked())

    def _snap(self) -> None:
        self._w.chooser.options.snapping = self._w.actions_["snap"].isChecked()

    def _chances(self) -> None:
        shown = self._w.actions_["chances"].isChecked()
        self._w.rooms.chances.show_on_canvas(shown)
        self._w.say(say("Thin: under its margin. Spoiled: no wood left.") if shown else "")

    def _solid(self) -> None:
        self._w.show_solid(self._w.actions_["solid"].isChecked())

    def _panel(self) -> None:
        self._w.show_panel(self._w.actions_["panel"].isChecked())

    # ---- help -----------------------------------------------------------
    def _keys(self) -> None:
        from app.help.window import HelpWindow
        window = HelpWindow(list(self._w.actions_.values()), texts.HAND_KEYS, self._w)
        window.exec()
        chosen = window.chosen
        window.deleteLater()
        if chosen is not None:
            chosen.action.trigger()

    def _safety(self) -> None:
        ask.tell(self._w, say("Safety"), texts.safety_text())

    def _about(self) -> None:
        from app.window.dialogs.about import AboutDialog
        dialog = AboutDialog(self._w)
        dialog.exec()
        dialog.deleteLater()
