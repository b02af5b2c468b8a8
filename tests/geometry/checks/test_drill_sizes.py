"""A drill that is a little wider or narrower than the bore: told at the snags, in the running order and in the part list."""

import pytest
from msgspec.structs import replace

from app.sheets.needs import drills
from app.sheets.work import plan_work
from geometry.checks import check
from geometry.layout import Drill
from geometry.sequence import operations
from tests.geometry.checks.heads import bore, face, head, pattern

QUARTER = pattern("quarter", "face", bore(diameter=6.35))
"""A bore of 1/4 in."""


def with_drill(size):
    layout = head(tuners=tuple(face(name, x, 90.0, QUARTER) for name, x in (("a", -20.0), ("b", 20.0))), patterns=(QUARTER,))
    return replace(layout, rack=replace(layout.rack, drills=(*layout.rack.drills, Drill(id="brad", kind="brad", diameter=size, length=150.0))))


@pytest.mark.parametrize(("size", "way", "why"), [(6.4, "wider", "looser"), (6.3, "narrower", "may not go in")])
def test_which_drill_is_meant_and_how_far_off_it_is(size, way, why):
    layout = with_drill(size)
    snag, = [snag for snag in check(layout).snags if snag.kind == "drill-size"]
    assert snag.between == ("a", "b")
    assert snag.text == f"The nearest drill in the rack for a and b is brad: it drills 0.05 mm {way} than the 6.35 mm asked for."
    assert why in snag.cure and '0.002" ' + way + ' than the 0.25" asked for' in snag.text_in("in")
    bores = [op for op in operations(layout) if op.kind == "bore"]
    assert len(bores) == 2
    assert all(op.cautions == (f"The drill brad makes it 0.05 mm {way} than the 6.35 mm asked for: try the part in scrap first.",) for op in bores)
    brad, = [tool for tool in drills(layout, plan_work(layout)) if tool.name == "brad"]
    assert brad.remark == f"0.05 {way} than the 6.35 asked for"


def test_one_of_the_size_asked_for_is_not_told_of():
    layout = with_drill(6.36)
    assert not [snag for snag in check(layout).snags if snag.kind in ("drill-size", "no-drill")]
    assert not [op for op in operations(layout) if op.kind == "bore" and op.cautions]
    brad, = [tool for tool in drills(layout, plan_work(layout)) if tool.name == "brad"]
    assert brad.remark == ""
