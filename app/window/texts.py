"""Longer words of the window: safety, keys of the hand, about."""

from __future__ import annotations

from geometry.saying import say

SAFETY = (
    say("Pegwright plans; it does not make a machine safe. The machine's manual, the rules where you work and "
        "qualified instruction come first."),
    say("Drill press: clamp the work so that the drill cannot turn it, guard the chuck, take the key out before "
        "starting, wear eye protection and nothing loose, back the exit with a spoil board, expect the drill to grab "
        "as it breaks through. For a tilted bore fix table and work, start from a centre mark, feed slowly."),
    say("Router: unplug before changing a bit, keep below the speed marked on it, wear eye and ear protection, secure the work, "
        "feed against the cutter's turning, take light passes, never shape small loose pieces, collect the dust."),
    say("Band saw: set the guard just above the wood, keep your fingers out of the line of the blade, take a tight curve in "
        "several cuts, and wait until the blade stands before you clear it."),
    say("Check the 100 mm bars on the paper before you glue it, and try the plan on scrap before the blank."),
)

HAND_KEYS = (
    (say("Arrow keys"), say("Nudge what is held by 1 mm; with Shift 10, with Alt 0.1")),
    (say("Shift while dragging"), say("Keep one axis")), (say("Alt while dragging"), say("Let go of snapping")),
    (say("Esc"), say("Put back what the drag moved; again: hold nothing")),
    (say("Wheel"), say("Zoom about the pointer")), (say("Middle button, or Space and drag"), say("Pan")),
    (say("Double click on an edge"), say("Add a node")), (say("Alt+1 … Alt+9"), say("The stages along the top")),
    (say("Alt+Up, Alt+Down"), say("In the running order: move the step that is picked")),
    (say("Space"), say("In the running order: tick the step that is picked off as done, or open it again")),
    (say("Left, Right"), say("In the running order: the step before, the step after")),
    (say("Tab, Shift+Tab"), say("From field to field as the window is read; F6 from part to part")),
    (say("Enter, on a stage or a tool"), say("To the drawing, or to what stands in its place; a number typed there is for the tool")),
    (say("N, Shift+N"), say("On the drawing: hold the next thing, the thing before")),
    (say("E, Shift+E"), say("The same, and what is held stays held")),
    (say("K, Shift+K"), say("From node to node of the outline or the drawn slot that is held")),
    (say("Insert"), say("A new node in the edge after the node that is held")),
    (say("S, Shift+S"), say("The next snag, the snag before; Ctrl+Enter in the list makes the move that cures it")),
    (say("Enter"), say("From the drawing into the first field of the panel; Esc comes back")),
    (say("Arrow keys, with a tool in hand"), say("Move the pen by 1 mm; with Shift 10, with Alt 0.1")),
    (say("Space, with the pen"), say("A press where the pen stands; a section line and a picture are pulled from one Space "
                                "to the next")),
    (say("Shift+Space, with the pen"), say("Put the pen down, or lift it: what is between is pulled, as the handle of a "
                                      "curve")),
    (say("Shift and press"), say("Hold one more thing or node; a frame pulled on bare wood holds all that is in it")),
    (say("Digits while dragging"), say("Type what the card at the pointer asks for; Tab leads to the next value, Enter "
                                       "or letting go takes them")),
    (say("Digits, with a tool in hand"), say("Type a place such as 12.5; 40, a length or an angle; Enter takes it, Enter "
                                        "alone closes the line")),
    (say("Backspace, Ctrl+Z or Delete, while a line is drawn"), say("Take its last node back")),
    (say("Ctrl and arrow keys"), say("Move the paper under the window")),
    (say("Arrow keys, in the solid view"), say("Turn the head; + and - come closer or step back")),
    (say("Page Up, Page Down, on a picture"), say("The mark before, the next mark; arrow keys move it")),
)


IN_HAND = say("Something is in hand: put it down, or back with Esc, and ask again.")
"""Why what would be done to things that are held is not done meanwhile."""


def safety_text() -> str:
    """The usual cautions, as rich text."""
    return "".join(f"<p>{line}</p>" for line in SAFETY)
