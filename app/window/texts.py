"""Longer words of the window: safety, keys of the hand, about."""

from __future__ import annotations

SAFETY = (
    "Pegwright plans; it does not make a machine safe. The machine's manual, the rules where you work and "
    "qualified instruction come first.",
    "Drill press: clamp the work so that the drill cannot turn it, guard the chuck, take the key out before "
    "starting, wear eye protection and nothing loose, back the exit with a spoil board, expect the drill to grab "
    "as it breaks through. For a tilted bore fix table and work, start from a centre mark, feed slowly.",
    "Router: unplug before changing a bit, keep below the speed marked on it, secure the work, feed against the "
    "cutter's turning, take light passes, never shape small loose pieces, collect the dust.",
    "Check the 100 mm bars on the paper before you glue it, and try the plan on scrap before the blank.",
)

HAND_KEYS = (
    ("Arrow keys", "Nudge what is held by 1 mm; with Shift 10, with Alt 0.1"),
    ("Shift while dragging", "Keep one axis"), ("Alt while dragging", "Let go of snapping"),
    ("Esc", "Put back what the drag moved; again: hold nothing"),
    ("Wheel", "Zoom about the pointer"), ("Middle button, or Space and drag", "Pan"),
    ("Double click on an edge", "Add a node"), ("Alt+1 … Alt+9", "The stages along the top"),
    ("Alt+Up, Alt+Down", "In the running order: move the step that is picked"),
    ("Left, Right", "In the running order: the step before, the step after"),
    ("Tab, Shift+Tab", "From field to field as the window is read; F6 from part to part"),
    ("N, Shift+N", "On the drawing: hold the next thing, the thing before"),
    ("E, Shift+E", "The same, and what is held stays held"),
    ("K, Shift+K", "From node to node of the outline or the drawn slot that is held"),
    ("Insert", "A new node in the edge after the node that is held"),
    ("S, Shift+S", "The next snag, the snag before; Ctrl+Enter in the list makes the move that cures it"),
    ("Enter", "From the drawing into the first field of the panel; Esc comes back"),
    ("Arrow keys, with a tool in hand", "Move the pen by 1 mm; with Shift 10, with Alt 0.1"),
    ("Space, with the pen", "A press where the pen stands; a section line and a picture are pulled from one Space to the next"),
    ("Shift+Space, with the pen", "Put the pen down, or lift it: what is between is pulled, as the handle of a curve"),
    ("Digits, with a tool in hand", "Type a place such as 12.5; 40, a length or an angle; Enter takes it, Enter alone closes the line"),
    ("Ctrl and arrow keys", "Move the paper under the window"),
    ("Arrow keys, in the solid view", "Turn the head; + and - come closer or step back"),
    ("Page Up, Page Down, on a picture", "The mark before, the next mark; arrow keys move it"),
)


def safety_text() -> str:
    """The usual cautions, as rich text."""
    return "".join(f"<p>{line}</p>" for line in SAFETY)
