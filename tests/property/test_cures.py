"""A move that a snag proposes removes that snag."""

from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from geometry.checks import check
from geometry.errors import GeometryError
from tests.property.layouts import DEMO, carried_out, edited

_QUICK = (Phase.explicit, Phase.reuse, Phase.generate)
"""No shrinking: a drawn edit sequence is as readable as its shrunk kin, and shrinking takes minutes."""


@settings(phases=_QUICK, max_examples=25)
@given(st.data())
def test_the_proposed_move_removes_its_snag(data):
    layout = DEMO
    for _ in range(data.draw(st.integers(1, 4))):
        layout = data.draw(edited(layout))
    found = check(layout).snags
    movable = [snag for snag in found if snag.move is not None]
    for snag in movable[:3] + movable[3::7]:
        try:
            after = check(carried_out(layout, *snag.move))
        except GeometryError:
            continue
        same = [left for left in after.snags if left.kind == snag.kind and left.between == snag.between]
        before = [left for left in found if left.kind == snag.kind and left.between == snag.between]
        assert len(same) < len(before), (snag.text, snag.cure, [left.text for left in same])
