"""A move that cures a snag, carried out as an edit: the snag is gone, nothing new spoils the work, nothing got worse."""

import re
import sys
from unittest.mock import patch

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from app.formats.headstock import read
from geometry.checks import check
from geometry.cures import apply_cure, curable, settle
from geometry.errors import GeometryError
from geometry.layout import SingleHole
from tests.geometry.checks.heads import head, loop
from tests.property.layouts import DEMO, SAMPLES, displaced, edited

_QUICK = (Phase.explicit, Phase.generate)
"""No shrinking: a drawn edit sequence is as readable as its shrunk kin, and shrinking takes minutes."""
SETTLING = sys.modules["geometry.cures.settle"]
_HEADS = [read(path) for path in SAMPLES]


def _lacking(snags):
    """{(kind, between): what is missing, worst first} of all snags that are more than notes."""
    found = {}
    for snag in snags:
        if snag.grade != "note":
            known = snag.measured is not None and snag.needed is not None
            found.setdefault((snag.kind, snag.between), []).append(abs(snag.needed - snag.measured) if known else 0.0)
    return {key: sorted(values, reverse=True) for key, values in found.items()}


def _cured(layout, pick):
    before = check(layout)
    seen = 0
    for snag in pick([snag for snag in before.snags if curable(snag)]):
        with patch.object(SETTLING, "MOST_TRIALS", 60):
            done = settle(layout, before, snag)
        assert done.cure.strip() and done.text == snag.text
        if done.move is None:
            continue
        seen += 1
        after = check(apply_cure(layout, done))
        own = (snag.kind, snag.between)
        then, now = _lacking(before.snags), _lacking(after.snags)
        assert len(now.get(own, [])) < len(then[own]), (snag.text, done.cure)
        for key, values in now.items():
            grown = [i for i, value in enumerate(values) if i < len(then.get(key, [])) and value > then[key][i] + 2e-4]
            assert not grown, (snag.text, done.cure, key)
        spoiling = {(s.kind, s.between) for s in before.snags if s.grade == "spoils the work"}
        new = [s.text for s in after.snags if s.grade == "spoils the work" and (s.kind, s.between) not in spoiling]
        assert not new, (snag.text, done.cure)
        if snag.grade != "spoils the work":
            assert now.keys() <= then.keys(), (snag.text, done.cure)
    return seen


@settings(phases=_QUICK, max_examples=20)
@given(st.data())
def test_displaced_samples(data):
    layout = data.draw(displaced(data.draw(st.sampled_from(_HEADS))))
    _cured(layout, lambda snags: snags[:1] + snags[2:5:3])


@settings(phases=_QUICK, max_examples=7)
@given(st.data())
def test_edited_layouts(data):
    layout = DEMO
    for _ in range(data.draw(st.integers(1, 3))):
        layout = data.draw(edited(layout))
    _cured(layout, lambda snags: snags[1:2] + snags[7:8])


def test_a_snag_without_a_move_cannot_be_applied():
    note = check(DEMO).snags[0]
    with pytest.raises(GeometryError, match="No single move"):
        apply_cure(DEMO, note)




def test_what_was_tried_in_vain_is_told_and_nothing_is_claimed_beyond_it():
    """A hole of 8 mm wants 8 + 2 * 4 = 16 mm of wood; the head is 14 mm wide from end to end."""
    narrow = head(outline=loop((-7.0, 0.0), (7.0, 0.0), (7.0, 180.0), (-7.0, 180.0)), pins=(),
                  holes=(SingleHole(id="h", at=(0.0, 90.0), diameter=8.0),))
    result = check(narrow)
    snag = next(s for s in result.snags if s.kind == "hole-to-outline")
    said = settle(narrow, result, snag)
    assert said.move is None
    told = re.match(r"Of (\d+) moves of one part that were tried, up to ([\d.]+) mm, none does it\.", said.cure)
    assert 4 <= int(told[1]) <= 300 and 1.0 <= float(told[2]) <= 15.0
    assert said.cure.endswith(snag.cure)
    # Fewer trials are told as fewer.
    with patch.object(SETTLING, "MOST_TRIALS", 1):
        assert settle(narrow, result, snag).cure.startswith("The one move that was tried does not do it.")
