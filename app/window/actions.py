"""Menus and their keys, as one table that the key list and the tests read too."""

from __future__ import annotations

from msgspec import Struct
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow

from app.look.icons import SHAPES, menu_icon
from geometry.saying import say


class Entry(Struct, frozen=True):
    """One action: its key in code, its word, its shortcuts and what it does in a sentence."""

    key: str
    word: str
    shortcuts: tuple[str, ...] = ()
    about: str = ""
    checkable: bool = False


RULE = Entry("", "")
TOOL_SIGNS = ("hold",)
"""Actions whose key is also that of a tool which does something else: the sign is the tool's."""
SUBMENUS = ("recent", "language", "colours", "letters")
"""Entries that are menus of their own, filled by whoever knows what is in them."""

MENUS: dict[str, tuple[Entry, ...]] = {
    say("&Layout"): (
        Entry("new", say("&New…"), ("Ctrl+N",), say("Begin from numbers, a sample, a drawing or a picture.")),
        Entry("open", say("&Open…"), ("Ctrl+O",), say("Open a layout.")),
        Entry("recent", say("Opened &lately")),
        RULE,
        Entry("new window", say("N&ew window"), ("Ctrl+Alt+N",), say("Begin another layout beside this one.")),
        Entry("open beside", say("Open in a new win&dow…"), ("Ctrl+Alt+O",), say("Open a layout beside this one.")),
        RULE,
        Entry("save", say("&Save"), ("Ctrl+S",), say("Save the layout.")),
        Entry("save as", say("Save &as…"), ("Ctrl+Shift+S",), say("Save the layout under another name.")),
        Entry("before", say("Open the version &before"), (), say("Bring back what the file held before it was saved last.")),
        RULE,
        Entry("import", say("&Import a drawing…"), ("Ctrl+I",), say("Read an outline from a DXF or SVG drawing.")),
        Entry("print", say("&Print the sheets…"), ("Ctrl+P",), say("Print at 100 %, corrected for the printer.")),
        Entry("write sheets", say("&Write the sheets…"), ("Ctrl+Shift+P",), say("Write DXF, SVG, PDF and tables to a "
                                                                           "folder.")),
        Entry("write book", say("Write the &job book…"), (), say("Write hours, money, notes and readings as a table (CSV).")),
        Entry("correct", say("&Correct a printer…"), (), say("Enter what the two 100 mm bars of a page measure.")),
        RULE,
        Entry("close", say("Close t&he window"), ("Ctrl+W",), say("Close this layout; unsaved work is asked about.")),
        Entry("quit", say("&Quit"), ("Ctrl+Q",), say("Close every window; unsaved work is asked about in each.")),
    ),
    say("&Edit"): (
        Entry("undo", say("&Undo"), ("Ctrl+Z",), say("Take the last step back.")),
        Entry("redo", say("&Redo"), ("Ctrl+Shift+Z", "Ctrl+Y"), say("Take the step again.")),
        Entry("changes", say("Chan&ges to this layout"), ("Ctrl+Shift+Y",), say("List what was done, and go back to any of "
                                                                           "it."),
              checkable=True),
        RULE,
        Entry("cut", say("Cu&t"), ("Ctrl+X",), say("Take out tuners, slots, pins and holes, to put them down elsewhere.")),
        Entry("copy", say("&Copy"), ("Ctrl+C",), say("Copy tuners, slots, pins and holes.")),
        Entry("paste", say("&Paste"), ("Ctrl+V",), say("Hang what was copied at the pointer; a press sets it down.")),
        RULE,
        Entry("remove", say("R&emove"), ("Delete", "Backspace"), say("Remove what is held.")),
        Entry("duplicate", say("&Duplicate"), ("Ctrl+D",), say("Make another of what is held.")),
        Entry("hold all", say("Hold &all tuners"), ("Ctrl+A",), say("Hold every tuner.")),
        RULE,
        Entry("symmetric", say("Make the outline s&ymmetric"), (), say("The bass side follows the treble side.")),
        Entry("turn over", say("&Left-handed mirror"), (), say("Mirror the whole layout about the centreline.")),
        Entry("propose pins", say("Propose p&ins"), (), say("Two locating pins where the wood allows them, to take or "
                                                            "leave.")),
        Entry("truss rod pocket", say("Add a truss r&od pocket"), (), say("One that the blank has already: everything keeps clear "
                                                                          "of it.")),
        Entry("fillet", say("Round the cor&ner…"), ("Ctrl+R",), say("Round the corner that is held.")),
        RULE,
        Entry("note", say("Note in the job &book…"), ("Ctrl+Shift+N",), say("Write what to do differently, pinned to "
                                                                            "what is held.")),
        Entry("rack", say("Rac&k: bits, drills, machines"), ("Ctrl+Shift+K",), say("What the shop has: every plan is made "
                                                                                   "with it.")),
        Entry("hold", say("What must I &hold?…"), ("Ctrl+Shift+H",), say("Which accuracy is needed where, and what to "
                                                                         "move.")),
    ),
    say("Set &out"): (
        Entry("level", say("Bring to one &height"), (), say("All that is held comes to the height of the first.")),
        Entry("in line", say("Bring into &line"), (), say("All that is held comes as far from the centreline as the first.")),
        RULE,
        Entry("spread line", say("&Spread on a line"), (), say("Equal steps on the line from the first tuner to the last.")),
        Entry("spread edge", say("Spread along the &edge"), (), say("Equal steps along the edge, measured on the curve.")),
        Entry("row on a line", say("&Row on a line"), (), say("Equal steps on a line, and they stay a row: one spacing for all.")),
        Entry("row along the edge", say("Row &along the edge"), (), say("Equal steps along the edge, and they stay a row: one spacing for all.")),
        RULE,
        Entry("offset", say("&Offset…"), ("Ctrl+Shift+O",), say("The outline or a slot set in or out evenly, or a slot "
                                                           "beside it.")),
        Entry("copy side", say("&Copy treble to bass"), (), say("Treble slots and tuners, mirrored to the bass side.")),
        Entry("copy side back", say("Copy &bass to treble"), (), say("Bass slots and tuners, mirrored to the treble side.")),
    ),
    say("&Picture"): (
        Entry("trace", say("Lay a &photo or scan behind the drawing…"), ("Ctrl+Shift+I",), say("Set to scale, straightened, on the "
                                                                                          "nut line.")),
        Entry("trace outline", say("&Trace the picture…"), ("Ctrl+T",), say("Propose an outline along the edge in the "
                                                                       "picture.")),
        Entry("move picture", say("&Move it by hand"), (), say("Drag the picture; with Shift turn it about the middle of "
                                                          "the nut.")),
        RULE,
        Entry("picture shown", say("&Shown"), ("Ctrl+Shift+T",), say("Show or hide the picture behind the drawing."), checkable=True),
        Entry("picture locked", say("&Locked"), (), say("A locked picture is not moved by the hand."), checkable=True),
        Entry("picture stronger", say("St&ronger"), (), say("Let the picture show more strongly.")),
        Entry("picture fainter", say("&Fainter"), (), say("Let the picture show more faintly.")),
        Entry("picture away", say("Take it &away"), (), say("Take the picture out of the layout.")),
    ),
    say("&View"): (
        Entry("fit", say("&Whole headstock"), ("Ctrl+0",), say("Show the whole opened-out view.")),
        Entry("zoom in", say("Zoom &in"), ("Ctrl++", "Ctrl+="), say("Look closer.")),
        Entry("zoom out", say("Zoom &out"), ("Ctrl+-",), say("Step back.")),
        RULE,
        Entry("solid", say("&Solid beside the drawing"), ("Ctrl+B",), say("The head in space, to be turned."), checkable=True),
        Entry("panel", say("&Panel beside the drawing"), ("F9",), say("Show the panel and the lists, or give the drawing their room."),
              checkable=True),
        Entry("grid", say("&Grid"), ("Ctrl+G",), say("Rule the paper."), checkable=True),
        Entry("snap", say("S&napping"), ("Ctrl+Shift+G",), say("Catch the grid, edges and neighbours while dragging."),
              checkable=True),
        Entry("chances", say("&Chances on the drawing"), ("Ctrl+H",), say("Ring the places where the shop's own errors do "
                                                                     "harm."),
              checkable=True),
        RULE,
        Entry("mm", say("&Millimetres"), (), say("Show lengths in mm."), checkable=True),
        Entry("in", say("Inches, &decimal"), (), say("Show lengths in decimal inches."), checkable=True),
        Entry("in64", say("Inches, &fractions"), (), say("Show lengths in inches down to 1/64."), checkable=True),
        RULE,
        Entry("colours", say("Colou&rs")),
        Entry("letters", say("Size of &letters")),
        Entry("language", say("Lang&uage")),
    ),
    say("&Go"): (
        Entry("next thing", say("&Next thing"), ("F3",), say("Hold the next thing of the drawing; N does it on the "
                                                             "drawing.")),
        Entry("thing before", say("Thing &before"), ("Shift+F3",), say("Hold the thing before; Shift+N does it on the "
                                                                       "drawing.")),
        Entry("next snag", say("Next &snag"), ("F4",), say("Go to the next snag and choose its card; S does it on the "
                                                           "drawing.")),
        Entry("snag before", say("Snag bef&ore"), ("Shift+F4",), say("Go to the snag before; Shift+S does it on the "
                                                                     "drawing.")),
        RULE,
        Entry("next part", say("Next &part of the window"), ("F6",), say("Stages, tools, drawing, panel, lists.")),
        Entry("part before", say("Part be&fore"), ("Shift+F6",), say("The same the other way round.")),
        RULE,
        Entry("panel wider", say("Panel &wider"), ("Ctrl+Alt+Left",), say("Move the border between the drawing and "
                                                                          "the panel.")),
        Entry("panel narrower", say("Panel na&rrower"), ("Ctrl+Alt+Right",), say("Move the border the other way.")),
        Entry("lists taller", say("Lists &taller"), ("Ctrl+Alt+Up",), say("Move the border between the panel and the "
                                                                          "lists below it.")),
        Entry("lists lower", say("Lists &lower"), ("Ctrl+Alt+Down",), say("Move the border the other way.")),
    ),
    say("&Help"): (
        Entry("keys", say("&Actions and words…"), ("F1",), say("Find any action, its keys, or a word of the trade.")),
        Entry("safety", say("&Safety"), (), say("Usual cautions at the drill press and the router.")),
        Entry("about", say("A&bout Pegwright"), (), say("Which version this is.")),
    ),
}


def build(window: QMainWindow, triggered) -> dict[str, QAction]:
    """Fill the menu bar; every action calls `triggered` (a bound method) and carries its key as data."""
    made: dict[str, QAction] = {}
    for title, entries in MENUS.items():
        menu = window.menuBar().addMenu(title)
        for entry in entries:
            if entry is RULE:
                menu.addSeparator()
                continue
            if entry.key in SUBMENUS:
                made[entry.key] = menu.addMenu(entry.word).menuAction()
                continue
            action = QAction(entry.word, window, statusTip=entry.about, checkable=entry.checkable, triggered=triggered)
            action.setData(entry.key)
            action.setShortcuts([QKeySequence(keys) for keys in entry.shortcuts])
            if entry.key in SHAPES and entry.key not in TOOL_SIGNS and not entry.checkable:
                action.setIcon(menu_icon(entry.key))
            menu.addAction(action)
            made[entry.key] = action
    return made
