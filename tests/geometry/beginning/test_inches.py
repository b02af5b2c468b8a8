"""A beginning in inches: bits, drills and bores in fractions that fit each other, and no snag that mm has not."""

from fractions import Fraction

import pytest
from msgspec.structs import replace

from app.formats.rack import starting_rack
from geometry.beginning import Numbers, begin, mended
from geometry.beginning.in_unit import blank_in_unit, cure_in_unit, hardware_in_unit, usual_numbers
from geometry.checks import check
from geometry.layout import validate
from geometry.layout.blank import Blank
from geometry.layout.generic import PATTERNS, RACK
from geometry.layout.generic_inch import PATTERNS_INCH, RACK_INCH, inch
from geometry.routing import plan_routing
from geometry.units import format_close

INCHES = usual_numbers("in64")

SIZES = [tool.diameter for tool in RACK_INCH.drills] + [bit.cutter for bit in RACK_INCH.bits]


def test_fractions_by_hand():
    """11/32 of 25.4 is 8.73125; 1 3/16 is 30.1625."""
    assert inch("11/32") == 8.73125 and inch("1 3/16") == 30.1625 and inch("4") == 101.6


def test_every_tool_is_named_by_its_size():
    for tool in (*RACK_INCH.drills, *RACK_INCH.bits):
        size = tool.diameter if hasattr(tool, "diameter") else tool.cutter
        named = next(word for word in tool.id.split() if word[0].isdigit())
        assert abs(float(Fraction(named)) * 25.4 - size) < 1e-9
        assert format_close(size, "in64") == named


@pytest.mark.parametrize(("mm", "inches"), list(zip(PATTERNS, PATTERNS_INCH, strict=True)), ids=lambda p: p.id)
def test_what_goes_in_still_goes_in(mm, inches):
    """A post turns in its bore; a bore for a pressed bushing is no more than 0.1 off, one for a barrel 0.3 (common practice, no source)."""
    assert [b.role for b in mm.bores] == [b.role for b in inches.bores] and mm.post == inches.post and mm.seat == inches.seat
    for one, two in zip(mm.bores, inches.bores, strict=True):
        assert two.at == one.at and (two.depth is None) == (one.depth is None)
        assert abs(two.diameter - one.diameter) <= (0.1 if one.role == "counterbore" else 0.3)
        assert two.depth is None or abs(two.depth - one.depth) < 0.5
        for bore, rack in ((one, RACK), (two, RACK_INCH)):
            assert any(drill.kind == bore.drill and drill.diameter == bore.diameter for drill in rack.drills)
        assert "/" in format_close(two.diameter, "in64")
        if one.role == "post":
            assert (two.reamed or two.diameter) > inches.post.diameter


@pytest.mark.parametrize("mount", ["face", "side", "mixed"])
@pytest.mark.parametrize("pitch", ["1 1/16", "1 3/16", "1 3/8"])
@pytest.mark.parametrize("count", [(3, 3), (6, 0), (6, 6)])
def test_a_layout_in_inches_has_no_snag_more_and_every_drill(mount, pitch, count):
    numbers = replace(INCHES, bass=count[0], treble=count[1], bass_mount=mount, treble_mount=mount, pitch=inch(pitch))
    _, made, _ = mended(numbers)
    begun = hardware_in_unit(made, "in64")
    validate(begun)
    before, after = ({(s.kind, s.between) for s in check(one).snags if s.grade != "note" or s.kind in ("no-drill", "no-bit")} for one in (made, begun))
    assert after <= before
    assert begun.rack == starting_rack("inch") and begun.template.bit in {bit.id for bit in RACK_INCH.bits}
    plans = plan_routing(begun).all
    assert {plan.best.tools for plan in plans} == {((begun.template.bit, None),)}, "one bit on one template does all"
    assert {len(plan.best.passes) for plan in plans} == {1}
    assert {t.pattern for t in begun.tuners} <= {p.id for p in PATTERNS_INCH}
    assert hardware_in_unit(begun, "in64") == begun


def test_usual_numbers_are_fractions_that_a_rule_shows():
    for key in ("pitch", "length", "width", "thickness", "nut_width", "scale"):
        size = getattr(usual_numbers("in64"), key)
        assert size / 25.4 * 16 == pytest.approx(round(size / 25.4 * 16)) and abs(size - getattr(Numbers(), key)) < 1.7
    assert usual_numbers("mm") == Numbers()


def test_a_blank_made_to_fit_is_whole_eighths_and_never_smaller():
    """53 mm are 2.087 inches: 2 1/8 is 53.975; 187 are 7.362: 7 3/8 is 187.325; 16 thick is nearest to 5/8."""
    _, made, _ = mended(Numbers())
    made = replace(made, blank=Blank(bass=53, treble=53, tip=187, behind=20, thickness=16))
    blank = blank_in_unit(made, "in").blank
    assert (blank.bass, blank.tip, blank.behind, blank.thickness) == pytest.approx((53.975, 187.325, 22.225, 15.875))
    assert blank_in_unit(made, "mm") is made and hardware_in_unit(made, "mm") is made


def test_what_would_do_is_a_fraction_too():
    """Six alternating tuners 1 3/16 apart ask for 9.035 inches: 9 1/16 does."""
    asked = replace(INCHES, bass=6, treble=6, bass_mount="mixed", treble_mount="mixed")
    cure, _, _ = mended(asked)
    inches = cure_in_unit(asked, cure, "in64")
    assert format_close(cure.length, "in", mark=True) == '9.035"' and format_close(inches.length, "in64", mark=True) == '9 1/16"'
    assert begin(inches).blank.tip == inches.length
    assert replace(inches, length=cure.length) == cure and cure_in_unit(asked, cure, "mm") is cure
