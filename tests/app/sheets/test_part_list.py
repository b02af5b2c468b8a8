"""The list of parts: hardware and nut by the dimensions that are held against them."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from app.sheets import plan_work
from app.sheets.needs import drills, tuner_sizes, wares
from app.sheets.order_pages import summary
from tests.app.sheets.printed import SLOTTED, layout


@pytest.mark.parametrize("slant", [8.0, -8.0])
def test_a_slanted_nut_is_told_as_long_as_it_is_cut(slant):
    """48 mm square to the centreline are 48 / cos 8 degrees = 48.472 along the line."""
    head = layout("demo")
    sizes = {ware.name: ware.sizes for ware in wares(replace(head, nut=replace(head.nut, slant=slant)))}["nut"]
    assert sizes.startswith("48 wide") and sizes.endswith(f"the {'bass' if slant > 0 else 'treble'} end nearer the tip: 48.47 from end to end")


def test_heights_of_a_post_are_told_from_where_they_are_measured():
    head = layout("demo")
    face = next(p for p in head.patterns if p.mount == "face")
    assert "36 from the plate, string hole at 28" in tuner_sizes(face)
    fitted = replace(face, post=replace(face.post, length=20.0, string_hole=12.0, measured="face"))
    assert "20 above the face, string hole at 12" in tuner_sizes(fitted)
    assert "29 long, string hole at 28" in tuner_sizes(next(p for p in head.patterns if p.mount == "side"))



def test_hardware_is_told_by_its_dimensions():
    found = {(ware.name, ware.count): ware.sizes for ware in wares(layout("demo"))}
    sizes = found["tuner: side 6.4 post two screws", 6]
    assert sizes == ("through the side; post 6.4 x 30 deep; post 6.2, 29 long, string hole at 28; seat 24 x 10; button reaches 30")
    assert found["wood screw", 24] == "for a pilot of 1.6, 9 deep"
    assert found["locating pin", 2].startswith("6 steel or dowel") and ("string", 12) in found


def test_a_pin_hole_that_is_a_bore_is_drilled_once():
    """The bass has four post bores of 14 mm, of which two hold the pins, sixteen screw pilots and two for retainers."""
    bass = read(SLOTTED.with_name("four-string-bass.headstock.json"))
    made_work = plan_work(bass)
    assert {tool.name: tool.work.partition(",")[0] for tool in drills(bass, made_work)} == {"twist 2": "18 holes", "forstner 14": "4 holes"}
    assert "22 holes and 2 pins in 22 drillings" in summary(made_work)
