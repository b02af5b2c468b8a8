"""What an SVG refers to within itself, and how much there is once every reference is followed."""

from __future__ import annotations

import re
from itertools import islice

from app.formats.drawing_in.bounds import MOST_COPIES, MOST_NUMBERS, many_points
from app.formats.drawing_in.svg_tree import Node, Tree
from app.formats.errors import FormatError
from geometry.saying import say

MOST_SHAPES = 100_000
"""Elements drawn once every reference is followed."""

DEEPEST = 16
"""References within references."""

MOST_INSIDE = 500
"""Elements and references within each other; each takes a step of Python's own stack."""

NUMBER = re.compile(r"[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?")


def target_of(node: Node, tree: Tree) -> Node | None:
    """What a `use` refers to within the file; None for nothing or another file."""
    reference = node.get("href") or ""
    return tree.by_id.get(reference[1:]) if reference.startswith("#") else None


def check_references(tree: Tree) -> None:
    """FormatError for references that run in a circle or unfold without bounds, and for more points than anybody draws."""
    known: dict[int, tuple[int, int, int]] = {}
    written = [0]

    def unfolded(node: Node, inside: tuple[int, ...]) -> tuple[int, int, int]:
        if id(node) in known:
            return known[id(node)]
        if len(inside) > MOST_INSIDE:
            raise FormatError(_too_deep())
        if id(node) in inside:
            raise FormatError(say("The SVG file refers to a shape from inside that same shape: expand its clones in "
                                  "the program that drew it."))
        total, levels, numbers = 1, 0, _numbers(node, MOST_NUMBERS - written[0])
        written[0] += numbers
        for child in node.children:
            size, depth, more = unfolded(child, (*inside, id(node)))
            total, levels, numbers = total + size, max(levels, depth), numbers + more
        target = target_of(node, tree) if node.tag == "use" else None
        if target is not None:
            size, depth, more = unfolded(target, (*inside, id(node)))
            total, levels, numbers = total + size, max(levels, depth + 1), numbers + more
        if levels > DEEPEST:
            raise FormatError(_too_deep())
        known[id(node)] = (total, levels, numbers)
        return known[id(node)]

    shapes, _, numbers = unfolded(tree.root, ())
    if shapes > MOST_SHAPES:
        raise FormatError(say("The SVG file unfolds to more than {most_shapes:,} shapes: export only the outline, the "
                              "slots and the holes.",
                              most_shapes=MOST_SHAPES))
    if shapes - tree.written > MOST_COPIES:
        raise FormatError(say("The clones of the SVG file repeat to more than {most_copies:,} shapes that it does not write out: "
                              "export only the outline, the slots and the holes.", most_copies=MOST_COPIES))
    if numbers > MOST_NUMBERS:
        raise FormatError(many_points())


def _too_deep() -> str:
    return say("References are nested more than {deepest} deep in the SVG file: expand its clones in the program that drew it.",
               deepest=DEEPEST)


def _numbers(node: Node, most: int) -> int:
    """How many numbers the path or the corners of an element hold. FormatError for more than `most`, without counting on."""
    texts = [node.attributes[name] for name in ("d", "points") if name in node.attributes]
    found = sum(sum(1 for _ in islice(NUMBER.finditer(text), most + 1)) for text in texts)
    if found > most:
        raise FormatError(many_points())
    return found
