"""Strings that run into the nut end of their slot: a ramp by hand comes before any bore that moves."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.checks import check
from geometry.checks.moves import Ramped
from geometry.cures import apply_cure, settle
from geometry.layout import Ramp
from tests.geometry.sequence.specimens import SAMPLES


@pytest.mark.parametrize("ramp, kind, words", [(Ramp(length=1.0, depth=0.3), "string-to-ramp", "Make the ramp of "), (None, "string-to-nut-end", "Give ")])
def test_a_ramp_frees_strings_before_a_tuner_moves(ramp, kind, words):
    good = read(SAMPLES / "slotted-three-a-side.headstock.json")
    layout = replace(good, slots=tuple(replace(slot, ramp=ramp) for slot in good.slots))
    result = check(layout)
    snag = settle(layout, result, next(one for one in result.snags if one.kind == kind), mirrored=True)
    assert isinstance(snag.move, Ramped) and snag.cure.startswith(words) and "and the other side alike" in snag.cure
    after = apply_cure(layout, snag, mirrored=True)
    assert not [one for one in check(after).snags if one.kind.startswith("string-to-")]
    assert after.tuners == layout.tuners
