"""Slots so small that nothing of them counts as an area: a layout read from a file may hold such, and is told of, not broken by them."""

import math

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.layout import DrawnSlot, Loop, Node, Ramp, Slot, StraightSlot
from tests.geometry.edits.heads import demo

IN_SLOT, IN_RAIL = (15.0, 90.0), (40.0, 110.0)


@pytest.mark.parametrize("at", [IN_SLOT, IN_RAIL])
@pytest.mark.parametrize("size", [1e-14, 1e-12, 1e-6])
@pytest.mark.parametrize("drawn", [False, True])
def test_a_slot_without_size_gets_snags(at: tuple[float, float], size: float, drawn: bool) -> None:
    x, y = at
    shape = (DrawnSlot(loop=Loop(nodes=(Node(at=at), Node(at=(x + size, y)), Node(at=(x, y + size))))) if drawn else
             StraightSlot(nut_end=at, tip_end=(x, y + size), width=size))
    head = demo()
    snags = check(replace(head, slots=(*head.slots, Slot(id="speck", shape=shape)))).snags
    told = {snag.kind for snag in snags if "speck" in snag.between}
    assert ("slots-overlap" if at == IN_SLOT else "rail") in told


@pytest.mark.parametrize("length", [5e-324, 1e-300, 1e-12, 1e-6])
@pytest.mark.parametrize("depth", [5e-324, 1.2, 5000.0])
def test_a_ramp_without_length_is_a_step(length: float, depth: float) -> None:
    """Its slope is a number: all snags are told, and with finite measures."""
    head = demo()
    stepped = replace(head, slots=tuple(replace(slot, ramp=Ramp(length=length, depth=depth)) for slot in head.slots))
    for snag in check(stepped).snags:
        assert snag.measured is None or math.isfinite(snag.measured), snag
