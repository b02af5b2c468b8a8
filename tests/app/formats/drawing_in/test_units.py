"""Units: the table of the published DXF reference, guesses from the size, and the question to the maker."""

import pytest

from app.formats.drawing_in.command import outline_report, require_outline
from app.formats.drawing_in.units import INSUNITS, MM, Sides, guessed, refuse_doubtful_unit, unit_named, unit_question
from app.formats.errors import FormatError
from geometry.joining.placing import place
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import read, read_svg

# Published DXF reference, header variable $INSUNITS, and the definitions of the units; from memory, the first ten read
# in the project's table of published values.
TABLE = {1: 25.4, 2: 304.8, 3: 1609344, 4: 1, 5: 10, 6: 1000, 7: 1e6, 8: 25.4e-6, 9: 0.0254, 10: 914.4, 11: 1e-7, 12: 1e-6, 13: 1e-3,
         14: 100, 15: 1e4, 16: 1e5, 17: 1e12, 18: 149597870700e3, 19: 9460730472580800e3, 20: 3.0856775814913673e19,
         21: 304.8006096012192, 22: 25.400050800101603, 23: 914.4018288036576, 24: 1609347.2186944373}


def test_every_code_of_the_reference_has_its_size():
    assert {code: MM[name] for code, name in INSUNITS.items()} == pytest.approx(TABLE, rel=1e-12)


@pytest.mark.parametrize("code", [1, 2, 4, 5, 6, 10, 14, 21])
def test_the_unit_of_the_file_is_applied(code):
    size = 190 / TABLE[code]
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (size / 2, 0, 0), (size / 2, size, 0), (0, size, 0)]), units=code))
    assert (found.unit, found.unit_source, found.unit_certain) == (INSUNITS[code], "file", True)
    assert found.loops[0].path.area == pytest.approx(190 * 95)
    assert found.size_mm == pytest.approx((95, 190))


def half_as_wide(longest: float) -> Sides:
    return lambda mm: (longest * mm, longest * mm / 2)


@pytest.mark.parametrize("longest,unit", [(60, "mm"), (190, "mm"), (350, "mm"), (7.5, "inch"), (8, "inch"), (13, "cm"), (19, "cm"), (35, "cm"), (0.19, "m"),
                                          (0.6, "foot"), (2000, "mm"), (1e-9, "mm"), (45, "mm")])
def test_guesses_make_a_headstock_when_any_unit_does(longest, unit):
    assert guessed(half_as_wide(longest), None).name == unit


def test_the_files_own_hint_settles_a_draw():
    nine, seven = half_as_wide(9), half_as_wide(7)
    assert (guessed(nine, True).name, guessed(nine, False).name) == ("cm", "inch")
    # 7 is a head of 178 mm in inches and one of 70 mm in cm, whatever an idle "metric" in the file says.
    assert (guessed(seven, True).name, guessed(seven, False).name, guessed(half_as_wide(18), True).name) == ("inch", "inch", "cm")


@pytest.mark.parametrize("longest,unit", [(650, "mm"), (25.6, "inch"), (34, "inch"), (65, "cm"), (300, "mm"), (12, "inch"), (0.65, "m")])
def test_what_is_as_slim_as_a_neck_is_guessed_to_be_one(longest, unit):
    assert guessed(lambda mm: (longest * mm, longest * mm / 7), None).name == unit


@pytest.mark.parametrize("units", [None, 0, 99, -1])
def test_without_a_usable_unit_the_size_decides_and_that_is_said(units):
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (3.5, 0, 0), (3.5, 7.5, 0), (0, 7.5, 0)]), units=units))
    assert (found.unit, found.unit_source, found.unit_certain) == ("inch", "guess", False)
    assert "inch was guessed from its size, 88.9 x 190.5 mm (3.50 x 7.50 inch)" in found.warnings[0]
    refuse_doubtful_unit(found)


def test_the_outline_is_measured_and_not_what_lies_around_it():
    far_note = dxf.line((200, 200), (203, 201))
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (3.5, 0, 0), (3.5, 7.5, 0), (0, 7.5, 0)]) + far_note, units=0))
    assert found.unit == "inch"


def test_a_headstock_of_107_metres_is_refused_with_what_each_unit_would_make_of_it():
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (60, 0, 0), (60, 107, 0), (0, 107, 0)]), units=6))
    assert (found.unit, found.unit_source, found.unit_certain, found.instead) == ("mm", "guess", False, ("m", 1000.0))
    with pytest.raises(FormatError) as caught:
        refuse_doubtful_unit(found)
    text = str(caught.value)
    assert "its unit is m, which makes it 60000 x 107000 mm" in text
    assert "--unit mm makes it 60.0 x 107.0 mm" in text and "--unit inch makes it 1524 x 2718 mm" in text and "--unit cm" in text


@pytest.mark.parametrize(("code", "numbers"), [(6, "mm"), (1, "mm"), (4, "inch"), (6, "inch"), (5, "mm")])
def test_a_head_whose_file_states_another_unit_than_its_numbers_are_in_is_read_and_asked_about(code, numbers):
    """178 m of fine curves are more than can be worked out: as the file states them nobody could even ask."""
    k = 1 / MM[numbers]
    corners = [(-21.5, 0), (21.5, 0), (42, 40), (42, 170), (-42, 170), (-42, 40)]
    body = dxf.polyline([(x * k, y * k, 0.02 * (n > 2)) for n, (x, y) in enumerate(corners)])
    found = read(dxf.drawing(body + dxf.circle((29 * k, 92 * k), 5 * k), units=code))
    assert (found.unit, found.unit_source, found.unit_certain, found.instead) == (numbers, "guess", False, (INSUNITS[code], MM[INSUNITS[code]]))
    assert found.outline.path.box[2] == pytest.approx(42, abs=3) and [loop.role for loop in found.loops] == ["outline", "hole"]
    assert unit_question(found).text.startswith(f"The drawing says that its unit is {INSUNITS[code]}") and found.warnings == (unit_question(found).text,)
    with pytest.raises(FormatError, match="give the unit"):
        refuse_doubtful_unit(found)
    assert read(dxf.drawing(body, units=code), unit=INSUNITS[code]).instead is None


@pytest.mark.parametrize(("code", "numbers"), [(4, "mm"), (1, "inch"), (0, "mm"), (0, "inch"), (6, "mm")])
def test_the_bores_in_an_outline_with_a_gap_tell_no_unit(code, numbers):
    k = 1 / MM[numbers]
    corners = [(0, 0), (60, 0), (60, 150), (0, 150), (0, 2)]
    body = dxf.lines([(x * k, y * k) for x, y in corners], closed=False) + dxf.circle((30 * k, 90 * k), 5 * k)
    found = read(dxf.drawing(body, units=code))
    assert (found.unit, found.loops[0].path.box[2]) == (numbers, pytest.approx(35))


@pytest.mark.parametrize(("unit", "size"), [("inch", (14.2, 41.4)), ("mm", (380, 1000)), ("m", (0.34, 1.15))])
def test_a_whole_instrument_is_guessed_to_be_one(unit, size):
    assert guessed(lambda mm: (size[0] * mm, size[1] * mm), None).name == unit


def test_the_window_can_ask_the_same():
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (60, 0, 0), (60, 107, 0), (0, 107, 0)]), units=6))
    question = unit_question(found)
    assert [(name, pytest.approx((w, h))) for name, w, h in question.choices] == [
        ("mm", (60, 107)), ("cm", (600, 1070)), ("inch", (1524, 2717.8))]
    assert unit_question(read(dxf.drawing(dxf.circle((0, 0), 50)))) is None


def test_a_unit_given_is_obeyed_whatever_comes_of_it():
    text = dxf.drawing(dxf.polyline([(0, 0, 0), (60, 0, 0), (60, 107, 0), (0, 107, 0)]), units=6)
    for unit, factor in (("mm", 1), ("cm", 10), ("inch", 25.4), ("m", 1000)):
        found = read(text, unit=unit)
        assert found.loops[0].path.area == pytest.approx(60 * 107 * factor**2)
        assert (found.unit, found.unit_source, found.unit_certain) == (unit, "option", True)
        refuse_doubtful_unit(found)


def test_a_guess_that_makes_no_headstock_is_refused():
    found = read(dxf.drawing(dxf.circle((0, 0), 20000), units=0))
    with pytest.raises(FormatError, match="does not say its unit; as mm it would be 40000 x 40000 mm"):
        refuse_doubtful_unit(found)


def test_an_unknown_unit_is_refused():
    with pytest.raises(FormatError, match="unit 'furlong' is not known: give mm, cm or inch"):
        unit_named("furlong")
    assert unit_named("in") == 25.4


@pytest.mark.parametrize("join", [0, -1, 6, float("nan")])
def test_a_senseless_gap_is_refused(join):
    with pytest.raises(FormatError, match="gap to close"):
        read(dxf.drawing(dxf.circle((0, 0), 50)), join=join)


def test_the_report_names_unit_loops_and_warnings():
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (60, 0, 0), (60, 107, 0), (0, 107, 0)], layer="HEAD") + dxf.circle((30, 50), 4)))
    report = outline_report(found, place(found.outline.path))
    assert report["nut"] == {"width_mm": 60.0, "slant_degrees": 0.0}
    assert (report["unit"], report["unit_source"], report["warnings"]) == ("mm", "file", [])
    assert report["loops"][0] == {"role": "outline", "area_mm2": 6420.0, "perimeter_mm": 334.0, "bbox_mm": [0.0, 0.0, 60.0, 107.0], "layer": "HEAD"}
    assert report["loops"][1]["role"] == "hole"
    require_outline(found)


def test_an_open_drawing_is_refused_with_the_gap():
    found = read(dxf.drawing(dxf.lines([(0, 0), (60, 0), (60, 107), (0, 107), (0, 0.7)], closed=False)))
    with pytest.raises(FormatError, match=r"no closed outline: loose ends are 0.700 mm apart at \(0.00, 0.35\) mm; join them"):
        require_outline(found)


@pytest.mark.parametrize(("size", "neck"), [((60, 640), True), ((500, 640), False), ((10, 4000), False)])
def test_a_drawing_as_long_as_a_neck_is_told_what_to_do(size, neck):
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (size[0], 0, 0), (*size, 0), (0, size[1], 0)]), units=4))
    assert ("cut the outline off at the nut line" in unit_question(found).text) == neck


@pytest.mark.parametrize("unit", ["mm", "inch", "cm"])
@pytest.mark.parametrize("sheet", [(400, 277), (574, 400), (287, 200)])
def test_the_frame_of_a_sheet_does_not_mislead_the_guess(unit, sheet):
    """A head of 190 x 88 mm within the frame of a sheet; without it every one of these is guessed right."""
    k = 1 / MM[unit]
    head = [(x * k, y * k, 0) for x, y in ((60, 5), (104, 5), (126, 60), (120, 195), (44, 195), (38, 60))]
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (sheet[0] * k, 0, 0), (sheet[0] * k, sheet[1] * k, 0), (0, sheet[1] * k, 0)])
                             + dxf.polyline(head) + dxf.circle((82 * k, 100 * k), 4 * k), units=0))
    assert (found.unit, found.unit_source) == (unit, "guess")
    assert found.size_mm == pytest.approx((88, 190))
    assert [loop.role for loop in found.loops] == ["other", "outline", "hole"]


def test_a_page_in_points_of_a_screen_says_no_length():
    """90 or 72 to the inch as well as 96: the maker is asked, and what the file says of lengths stands."""
    body = '<rect width="300" height="680"/>'
    for head, certain in (('width="800" height="900"', False), ('width="800px" height="900px" viewBox="0 0 800 900"', False),
                          ('width="8in" height="9in" viewBox="0 0 768 864"', True), ('width="800" height="900" viewBox="0 0 400 450"', True)):
        found = read_svg(body, head)
        assert found.unit_certain == certain, head
        assert found.unit == "px" or certain


@pytest.mark.parametrize(("scale", "unit"), [(1.0, "mm"), (96 / 25.4, "px")])
def test_an_svg_that_states_no_size_is_in_pixels_unless_that_makes_a_head_for_a_doll(scale, unit):
    """80 x 240 mm: in units of 1/96 inch it would be 63 mm long, which a head may be."""
    corners = " ".join(f"{x * scale:g},{y * scale:g}" for x, y in ((38, 280), (82, 280), (100, 240), (95, 40), (25, 40), (20, 240)))
    found = read_svg(f'<polygon points="{corners}"/>', head=f'viewBox="0 0 {120 * scale:g} {300 * scale:g}"')
    assert (found.unit, found.unit_source) == (unit, "guess") and found.size_mm == pytest.approx((80, 240), abs=0.01)
