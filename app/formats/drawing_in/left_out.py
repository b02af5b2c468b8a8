"""Loops that were left out for where they lie, in the words of the maker."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from app.formats.drawing_in.result import Loop
from app.formats.drawing_in.roles import beside_edge, bodies, frames, is_hole, stacks, thin
from app.formats.drawing_in.units import sized
from geometry.saying import count, say

MOST_FRAMES = 3
"""Rectangles round the outline, and bodies, the smallest, of which each is told"""


def left_out_told(loops: Sequence[Loop]) -> Iterator[str]:
    """What was taken for a frame or a body, for the other side of the edge, for letters, and for rings about holes; one sentence each."""
    for frame in frames(loops)[-MOST_FRAMES:]:
        x0, y0, x1, y1 = frame.box
        yield say("A rectangle of {sized} round the outline was taken for the frame of the sheet or the edge of the blank.",
                  sized=sized(x1 - x0, y1 - y0))
    for body in bodies(loops)[-MOST_FRAMES:]:
        x0, y0, x1, y1 = body.box
        yield say("A shape of {sized} was left out: it is wider than any headstock, as a body or a board is.", sized=sized(x1 - x0, y1 - y0))
    if beside_edge(loops):
        yield say("A line goes round within the outline, near its edge, and was left out: see which of the two is the edge of the wood.")
    letters = sum(loops[i].role == "other" for i in thin(loops))
    if letters:
        yield count(letters, "{n} shape, as narrow as letters and inlaid lines are, was left out.",
                    "{n} shapes, as narrow as letters and inlaid lines are, were left out.")
    round_ones = [(i, loop) for i, loop in enumerate(loops) if loop.role == "hole" or loop.role == "other" and is_hole(loop.path)]
    kinds = [[loops[i].role for i in stack] for stack in stacks(round_ones)]
    rings = sum(roles.count("other") for roles in kinds if "hole" in roles)
    if rings:
        yield count(rings, "{n} round loop lies about the middle of a hole, as bushings, washers and posts are drawn, and was left out: see whether "
                    "the hole that was taken is the bore.",
                    "{n} round loops lie about the middles of holes, as bushings, washers and posts are drawn, and were left out: see whether "
                    "the holes that were taken are the bores.")
