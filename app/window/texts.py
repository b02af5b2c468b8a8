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
)


def safety_text() -> str:
    """The usual cautions, as rich text."""
    return "".join(f"<p>{line}</p>" for line in SAFETY)
