"""What the Router stage tells of a slot, as data."""

import pytest
from msgspec.structs import replace

from app.panels.router.rout_sheet import rout_sheets, template_notes
from geometry.edits.rack import choose_route, set_template_tool
from geometry.layout.generic import RACK
from geometry.lengths import speaking
from geometry.routing import plan_routing
from tests.geometry.routing.specimens import BRAD, bit, drawn, head, straight, with_rack
from tests.geometry.routing.test_search import sixty

BEARING = bit("bearing 12", cutter=12, cutting=16, bearing="shank", high=5, out=38)


def sheets(layout, unit="mm"):
    with speaking(unit):
        return rout_sheets(layout, plan_routing(layout))


def facts(sheet):
    return {label: words for label, words, _ in sheet.facts}


def test_every_slot_and_the_outline_have_a_sheet():
    first, last = sheets(with_rack(head(straight()), BEARING, drills=(BRAD,)))
    assert (first.of, last.of, last.title) == ("slot", "outline", "Outline")
    assert first.able and len(first.pictures) == len(first.passes) == 1
    assert facts(first)["Narrowest: the largest cutter"] == "13 mm"
    assert facts(first)["Depth"] == "16 mm, through" and facts(first)["Left to pare by hand"] == "nothing"
    assert first.speeds == (("bearing 12", tuple((t, f"{3.141592653589793 * 12 * t / 60000:.0f} m/s", True)
                                                 for t in (10000, 13000, 16000, 19000, 22000, 24000))),)


def test_wood_left_in_numbers():
    """Four corners of 6 mm radius: (4 - pi) 36 = 30.9 mm2 in all, 6 (sqrt 2 - 1) = 2.5 mm deep."""
    sheet = sheets(with_rack(head(drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0))), BEARING, drills=(BRAD,)))[0]
    assert facts(sheet)["Left to pare by hand"] == "30.9 mm² in 4 places, up to 2.5 mm deep"
    assert facts(sheet)["Corners"] == "sharp: every cutter leaves wood"


def test_cautions_stand_even_where_nothing_can_be_routed():
    sheet = sheets(head(straight(width=3.0), rack=RACK))[0]
    assert not sheet.able and sheet.steps == sheet.pictures == () and sheet.would
    assert sheet.cautions[0].startswith("Inside an opening feed clockwise") and "Unplug" in sheet.cautions[-1]
    assert {name for name, _ in sheet.rejected} == {one.id for one in RACK.bits}


def test_every_bit_that_can_is_on_offer_and_can_be_chosen():
    layout = head(straight(), rack=sixty())
    sheet = sheets(layout)[0]
    assert len(sheet.choices) + len(sheet.rejected) >= 60
    tools, _ = sheet.choices[-1]
    chosen = sheets(choose_route(layout, "slot", tools))[0]
    assert chosen.chosen and chosen.choices[0][0] == tools


def test_what_the_exported_template_has_to_do_with_the_plan():
    layout = with_rack(head(straight()), BEARING, bit("ring", cutter=10, cutting=12, bearing="shank", ring=13.0, high=5),
                       drills=(BRAD,))
    none = sheets(layout)[0]
    assert not none.agrees and none.template.startswith("No bit is chosen") and none.tool == ("bearing 12", None)
    same = sheets(set_template_tool(layout, "bearing 12", None))[0]
    assert same.agrees
    other = sheets(choose_route(set_template_tool(layout, "ring", None), "slot", (("bearing 12", None),)))[0]
    assert not other.agrees and "with an offset of 1.5 mm; this plan needs 0 mm." in other.template


def test_notes_of_the_template_board():
    layout = set_template_tool(with_rack(head(straight(x=-6.0, id="a"), straight(x=12.0, id="b")), BEARING, drills=(BRAD,)),
                               "bearing 12", None)
    notes = template_notes(layout, plan_routing(layout))
    assert any("Only 5 mm of template is left between a and b" in note.words for note in notes)
    assert template_notes(replace(layout, rack=replace(layout.rack, bits=()), template=replace(layout.template, bit=None)),
                          plan_routing(replace(layout, rack=replace(layout.rack, bits=())))) == ()


@pytest.mark.parametrize("unit", ["in", "in64"])
def test_no_sentence_mixes_units(unit):
    layout = with_rack(head(straight(), drawn((20.0, 40.0), (34.0, 40.0), (34.0, 140.0), (20.0, 140.0), id="square")), *RACK.bits,
                       bushes=RACK.bushes, drills=RACK.drills)
    for sheet in sheets(layout, unit):
        words = [sheet.headline, sheet.template, *sheet.steps, *sheet.passes, *sheet.would, *sheet.cautions,
                 *(w for _, w, _ in sheet.facts), *(reason for _, reason in sheet.rejected)]
        assert not [text for text in words if " mm" in text or "m/s" in text]
