"""The words of the invented samples in the language in use: their files are English, and read so by every test."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec.structs import replace

from geometry.beginning.given_names import in_language, tools_in_language
from geometry.layout import Headstock
from geometry.layout.generic import PATTERNS as GENERIC
from geometry.saying import say

HEADS: Mapping[str, tuple[str, str]] = {
    "eight-strings": (
        say("Eight strings, four a side"),
        say("Invented for demonstration: eight tuners through the face, four to a side, and a truss rod's pocket that is there "
            "already.")),
    "four-string-bass": (
        say("Four strings, bass, in line"),
        say("Invented for demonstration: four wide posts in one row along the bass edge.")),
    "four-strings-small": (
        say("Four strings, small and slotted"),
        say("Invented for demonstration: four thin posts through the sides into one wide slot, as on a small fretted instrument.")),
    "mixed-one-slide-too-far": (
        say("Twelve strings, one slide too far"),
        say("Invented for demonstration: the mixed head with one tuner through the side slid 10 mm too far, and three deliberate "
            "snags from that one slide. A note in the job book tells what happened inside the wood.")),
    "six-in-line": (
        say("Six in line, through the face"),
        say("Invented for demonstration: six tuners in one row along the bass edge. One deliberate snag teaches: the locating pin "
            "near the tip stands too close to the outline.")),
    "slotted-snags-to-find": (
        say("Slotted, three snags to find"),
        say("Invented for demonstration: the slotted head with three deliberate snags. Each has a note in the job book that names "
            "it: find them, and cure them by dragging.")),
    "slotted-three-a-side": (
        say("Slotted, three a side"),
        say("Invented for demonstration: six rollers of 10 mm through the sides into two slots.")),
    "three-a-side": (
        say("Three a side, through the face"),
        say("Invented for demonstration: six tuners through the face, three to a side, a face veneer over a scarf "
            "joint.")),
    "twelve-all-face": (
        say("Twelve strings, all through the face"),
        say("Invented for demonstration: six tuners to a side, all through the face.")),
    "twelve-string-mixed": (
        say("Twelve strings, mixed"),
        say("Invented for demonstration: six tuners through the face, six through the sides into two slots.")),
}
"""Name of a sample and what it is about, by the name of its file."""

REMARKS: Mapping[str, tuple[str, ...]] = {
    "mixed-one-slide-too-far": (
        say("Deliberate: slid 10 mm towards the nut. Buttons close together: there is no room for fingers. Side bore meets screw: "
            "seen from the face they only seem to pass, in the wood the bore cuts the screw of treble face 2. Counterbore meets "
            "screw: the screw of the side plate runs into the counterbore. Slide it back, and all three go together."),),
    "six-in-line": (
        say("Deliberate: locating pin close to the outline. It leaves 2.2 mm of wood where 3 mm are wanted, and would tear out when "
            "the outline is routed. Drag it inward until the ring is gone, or press Do this on its card."),),
    "slotted-snags-to-find": (
        say("Deliberate: string beside the slot's wall. The slot was moved 1.5 mm outward, and the string of bass 3 now rubs on its "
            "wall. The wood still holds: what a slot has to clear is the string as well as the post."),
        say("Deliberate: hole meets slot. A screw hole for a cover stands 1.4 mm from the slot's wall where 3 mm are wanted. Only "
            "the web between the slots is free."),
        say("Deliberate: plates too close. The plate was slid 8 mm towards the nut, over its neighbour's. Make the three a row "
            "along the edge, and one spacing keeps them apart.")),
}
"""Notes in the job books, in the order in which they stand there."""

PATTERNS: Mapping[str, str] = {
    "face 10 bushing one screw mirrored": next(one.about for one in GENERIC if one.id == "face 10 bushing one screw"),
    "face 14 bushing four screws": say("Wide post in a bushing, large open gear on the back, four screws."),
    "side 6.4 short post": say("Short steel post through the side into a shared slot, a screw to either side."),
    "side 10 roller long post": say("Roller of 10 through the side, long enough to bear in the wood between the slots."),
}
"""Hardware that samples have of their own; the rest is the generic one."""


def said(stem: str, layout: Headstock) -> Headstock:
    """A sample, by the name of its file, with its words and names in the language in use."""
    if stem not in HEADS:
        return layout
    layout = in_language(layout)
    about = {pattern.id: pattern.about for pattern in GENERIC} | PATTERNS
    remarks, new = layout.book.remarks, REMARKS.get(stem, ())
    if len(new) == len(remarks):
        remarks = tuple(replace(remark, text=text) for remark, text in zip(remarks, new, strict=True))
    return tools_in_language(replace(
        layout, name=HEADS[stem][0], about=HEADS[stem][1], book=replace(layout.book, remarks=remarks),
        patterns=tuple(replace(pattern, about=about.get(pattern.id, pattern.about)) for pattern in layout.patterns)))
