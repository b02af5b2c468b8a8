"""Menus and their keys, as one table that the key list and the tests read too."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow

from app.look.icons import SHAPES, menu_icon
from app.look.theme import Theme
from geometry.saying import say


@dataclass(frozen=True, slots=True)
class Entry:
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
    "&Layout": (
        Entry("new", "&New…", ("Ctrl+N",), "Begin from numbers, a sample, a drawing or a picture."),
        Entry("open", "&Open…", ("Ctrl+O",), "Open a layout."),
        Entry("recent", "Opened &lately"),
        RULE,
        Entry("new window", say("N&ew window"), ("Ctrl+Alt+N",), say("Begin another layout beside this one.")),
        Entry("open beside", say("Open in a new win&dow…"), ("Ctrl+Alt+O",), say("Open a layout beside this one.")),
        RULE,
        Entry("save", "&Save", ("Ctrl+S",), "Save the layout."),
        Entry("save as", "Save &as…", ("Ctrl+Shift+S",), "Save the layout under another name."),
        Entry("before", "Open the version &before", (), "Bring back what the file held before it was saved last."),
        RULE,
        Entry("import", "&Import a drawing…", ("Ctrl+I",), "Read an outline from a DXF or SVG drawing."),
        Entry("print", "&Print the sheets…", ("Ctrl+P",), "Print at 100 %, corrected for the printer."),
        Entry("write sheets", "&Write the sheets…", ("Ctrl+Shift+P",), "Write DXF, SVG, PDF and tables to a folder."),
        Entry("write book", "Write the &job book…", (), "Write hours, money, notes and readings as a table (CSV)."),
        Entry("correct", "&Correct a printer…", (), "Enter what the two 100 mm bars of a page measure."),
        RULE,
        Entry("close", say("Close t&he window"), ("Ctrl+W",), say("Close this layout; unsaved work is asked about.")),
        Entry("quit", say("&Quit"), ("Ctrl+Q",), say("Close every window; unsaved work is asked about in each.")),
    ),
    "&Edit": (
        Entry("undo", "&Undo", ("Ctrl+Z",), "Take the last step back."),
        Entry("redo", "&Redo", ("Ctrl+Shift+Z", "Ctrl+Y"), "Take the step again."),
        Entry("changes", "Chan&ges to this layout", ("Ctrl+Shift+Y",), "List what was done, and go back to any of it.",
              checkable=True),
        RULE,
        Entry("cut", "Cu&t", ("Ctrl+X",), "Take out tuners, slots, pins and holes, to put them down elsewhere."),
        Entry("copy", "&Copy", ("Ctrl+C",), "Copy tuners, slots, pins and holes."),
        Entry("paste", "&Paste", ("Ctrl+V",), "Hang what was copied at the pointer; a press sets it down."),
        RULE,
        Entry("remove", "R&emove", ("Delete", "Backspace"), "Remove what is held."),
        Entry("duplicate", "&Duplicate", ("Ctrl+D",), "Make another of what is held."),
        Entry("hold all", "Hold &all tuners", ("Ctrl+A",), "Hold every tuner."),
        RULE,
        Entry("symmetric", "Make the outline s&ymmetric", (), "The bass side follows the treble side."),
        Entry("turn over", "&Left-handed mirror", (), "Mirror the whole layout about the centreline."),
        Entry("propose pins", "Propose p&ins", (), "Two locating pins where the wood allows them, to take or leave."),
        Entry("fillet", "Round the cor&ner…", ("Ctrl+R",), "Round the corner that is held."),
        RULE,
        Entry("note", "Note in the job &book…", ("Ctrl+Shift+N",), "Write what to do differently, pinned to what is held."),
        Entry("rack", "Rac&k: bits, drills, machines", ("Ctrl+Shift+K",), "What the shop has: every plan is made with it."),
        Entry("hold", "What must I &hold?…", ("Ctrl+Shift+H",), "Which accuracy is needed where, and what to move."),
    ),
    "Set &out": (
        Entry("level", "Bring to one &height", (), "All that is held comes to the height of the first."),
        Entry("in line", "Bring into &line", (), "All that is held comes as far from the centreline as the first."),
        RULE,
        Entry("spread line", "&Spread on a line", (), "Equal steps on the line from the first tuner to the last."),
        Entry("spread edge", "Spread along the &edge", (), "Equal steps along the edge, measured on the curve."),
        Entry("row on a line", "&Row on a line", (), "As spread, and they stay a row: one spacing for all."),
        Entry("row along the edge", "Row &along the edge", (), "As spread along the edge, and they stay a row."),
        RULE,
        Entry("offset", "&Offset…", ("Ctrl+Shift+O",), "The outline or a slot set in or out evenly, or a slot beside it."),
        Entry("copy side", "&Copy treble to bass", (), "Treble slots and tuners, mirrored to the bass side."),
        Entry("copy side back", "Copy &bass to treble", (), "Bass slots and tuners, mirrored to the treble side."),
    ),
    "&Picture": (
        Entry("trace", "Lay a &photo or scan behind the drawing…", ("Ctrl+Shift+I",), "Set to scale, straightened, on the nut line."),
        Entry("trace outline", "&Trace the picture…", ("Ctrl+T",), "Propose an outline along the edge in the picture."),
        Entry("move picture", "&Move it by hand", (), "Drag the picture; with Shift turn it about the middle of the nut."),
        RULE,
        Entry("picture shown", "&Shown", ("Ctrl+Shift+T",), "Show or hide the picture behind the drawing.", checkable=True),
        Entry("picture locked", "&Locked", (), "A locked picture is not moved by the hand.", checkable=True),
        Entry("picture stronger", "St&ronger", (), "Let the picture show more strongly."),
        Entry("picture fainter", "&Fainter", (), "Let the picture show more faintly."),
        Entry("picture away", "Take it &away", (), "Take the picture out of the layout."),
    ),
    "&View": (
        Entry("fit", "&Whole headstock", ("Ctrl+0",), "Show the whole opened-out view."),
        Entry("zoom in", "Zoom &in", ("Ctrl++", "Ctrl+="), "Look closer."),
        Entry("zoom out", "Zoom &out", ("Ctrl+-",), "Step back."),
        RULE,
        Entry("solid", "&Solid beside the drawing", ("Ctrl+B",), "The head in space, to be turned.", checkable=True),
        Entry("grid", "&Grid", ("Ctrl+G",), "Rule the paper.", checkable=True),
        Entry("snap", "S&napping", ("Ctrl+Shift+G",), "Catch the grid, edges and neighbours while dragging.",
              checkable=True),
        Entry("chances", "&Chances on the drawing", ("Ctrl+H",), "Ring the places where the shop's own errors do harm.",
              checkable=True),
        RULE,
        Entry("mm", "&Millimetres", (), "Show lengths in mm.", checkable=True),
        Entry("in", "Inches, &decimal", (), "Show lengths in decimal inches.", checkable=True),
        Entry("in64", "Inches, &fractions", (), "Show lengths in inches down to 1/64.", checkable=True),
        RULE,
        Entry("colours", "Colou&rs"),
        Entry("letters", "Size of &letters"),
        Entry("language", "Lang&uage"),
    ),
    "&Go": (
        Entry("next thing", "&Next thing", ("F3",), "Hold the next thing of the drawing; N does it on the drawing."),
        Entry("thing before", "Thing &before", ("Shift+F3",), "Hold the thing before; Shift+N does it on the drawing."),
        Entry("next snag", "Next &snag", ("F4",), "Go to the next snag and choose its card; S does it on the drawing."),
        Entry("snag before", "Snag bef&ore", ("Shift+F4",), "Go to the snag before; Shift+S does it on the drawing."),
        RULE,
        Entry("next part", "Next &part of the window", ("F6",), "Stages, tools, drawing, panel, lists."),
        Entry("part before", "Part be&fore", ("Shift+F6",), "The same the other way round."),
        RULE,
        Entry("panel wider", "Panel &wider", ("Ctrl+Alt+Left",), "Move the border between the drawing and the panel."),
        Entry("panel narrower", "Panel na&rrower", ("Ctrl+Alt+Right",), "Move the border the other way."),
        Entry("lists taller", "Lists &taller", ("Ctrl+Alt+Up",), "Move the border between the panel and the lists below it."),
        Entry("lists lower", "Lists &lower", ("Ctrl+Alt+Down",), "Move the border the other way."),
    ),
    "&Help": (
        Entry("keys", "&Actions and words…", ("F1",), "Find any action, its keys, or a word of the trade."),
        Entry("safety", "&Safety", (), "Usual cautions at the drill press and the router."),
        Entry("about", "A&bout Pegwright", (), "Which version this is."),
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
            action = QAction(entry.word, window)
            action.setData(entry.key)
            action.setShortcuts([QKeySequence(keys) for keys in entry.shortcuts])
            action.setStatusTip(entry.about)
            action.setCheckable(entry.checkable)
            action.triggered.connect(triggered)
            menu.addAction(action)
            made[entry.key] = action
    return made


def set_theme(made: dict[str, QAction], theme: Theme) -> None:
    """Give the actions that have a sign theirs in the colours of a theme."""
    for key, action in made.items():
        if key in SHAPES and key not in TOOL_SIGNS and not action.isCheckable():
            action.setIcon(menu_icon(key, theme))
