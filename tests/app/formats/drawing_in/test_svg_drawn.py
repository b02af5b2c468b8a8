"""What of an SVG is drawn at all, and where: references, viewports, units, style, visibility."""

import math

import pytest

from app.formats.drawing_in.units import unit_question
from app.formats.errors import FormatError
from tests.app.formats.drawing_in.reading import areas, read, read_svg

BASE = '<rect width="90" height="80"/>'
TRICK = '<rect x="-50" y="-50" width="300" height="300"'


@pytest.mark.parametrize("hidden", [
    TRICK + ' display="none"/>', TRICK + ' style="display:none"/>', TRICK + ' style="display : NONE ; x:1"/>', TRICK + ' visibility="hidden"/>',
    TRICK + ' style="visibility:collapse"/>', TRICK + ' stroke="none"/>', TRICK + ' style="stroke:none"/>', TRICK + ' stroke-width="0"/>',
    f'<g display="none">{TRICK}/></g>', f'<g visibility="hidden"><g>{TRICK}/></g></g>', f'<defs>{TRICK}/></defs>', f'<symbol id="s">{TRICK}/></symbol>',
    f'<marker id="m">{TRICK}/></marker>', f'<clipPath id="c">{TRICK}/></clipPath>', f'<mask id="k">{TRICK}/></mask>',
    f'<pattern id="p">{TRICK}/></pattern>', f'<foreignObject>{TRICK}/></foreignObject>', f'<text>{TRICK}/></text>', f'<metadata>{TRICK}/></metadata>',
    f'<x:thing xmlns:x="urn:x">{TRICK}/></x:thing>', '<x:rect xmlns:x="urn:x" width="300" height="300"/>', f'<title>{TRICK}/></title>',
    f'<style>.off {{display:none}}</style>{TRICK} class="on off"/>', f'<style>#a {{display:none}}</style>{TRICK} id="a"/>',
    f'<style>g rect.b {{visibility:hidden}}</style>{TRICK} class="b"/>', f'<style>/* x */ rect:hover{{}} g > .c, .q {{display:none}}</style>{TRICK} class="c"/>',
    f'<style>@media print {{ rect {{ display:inline }} }} .d{{display:none !important}}</style>{TRICK} class="d" style="display:inline"/>',
    f'<switch><circle r="1" requiredExtensions="urn:x"/><circle cx="20" cy="20" r="2"/>{TRICK}/></switch>',
    f'<switch>{TRICK} systemLanguage="fr"/></switch>', f'<svg width="0" height="10">{TRICK}/></svg>', '<rect width="-300" height="300"/>', '<circle r="-5"/>'])
def test_what_is_not_seen_is_not_taken(hidden):
    found = read_svg(BASE + hidden)
    assert areas(found)[0] == pytest.approx(7200)


@pytest.mark.parametrize("shown", [
    '<g visibility="hidden"><rect width="90" height="80" visibility="visible"/></g>', '<a><rect width="90" height="80"/></a>',
    '<g fill="none" stroke="none"><rect width="90" height="80" fill="red"/></g>', '<rect width="90" height="80" stroke="none" fill="#123456"/>',
    '<style>.w {width:90px; height:80px}</style><rect class="w" width="1"/>', '<g style="stroke:inherit"><rect width="90" height="80"/></g>',
    '<style>.off{display:none} #on{display:inline}</style><rect class="off" id="on" width="90" height="80"/>',
    '<switch><rect width="90" height="80" systemLanguage="en-GB"/></switch>', '<switch><rect width="90" height="80"/></switch>',
    '<g clip-path="url(#c)"><rect width="90" height="80"/></g>', '<g style="transform: translate(3px, 4px) rotate(90deg)"><rect width="90" height="80"/></g>'])
def test_what_is_seen_is_taken(shown):
    assert areas(read_svg(shown)) == pytest.approx([7200])


@pytest.mark.parametrize("cut", ['clip-path="url(#c)"', 'mask="url(#c)"', 'style="mask: url(#c)"'])
def test_what_is_clipped_or_masked_is_read_whole_and_told(cut):
    found = read_svg(f'<g {cut}><rect width="90" height="80"/></g>')
    assert areas(found) == pytest.approx([7200]) and found.warnings == ("Some shapes are clipped in the drawing; they were read whole.",)


@pytest.mark.parametrize("body,area", [
    ('<defs><rect id="r" width="30" height="40"/></defs><use href="#r" x="5"/>', 1200),
    ('<defs><rect id="r" width="30" height="40"/></defs><use xlink:href="#r" transform="scale(2)"/>', 4800),
    ('<use href="#r" transform="scale(2)"/><defs><g id="r"><rect width="30" height="40"/></g></defs>', 4800),
    ('<symbol id="s" viewBox="0 0 10 10"><rect width="10" height="5"/></symbol><use href="#s" width="80" height="80"/>', 3200),
    ('<symbol id="s" viewBox="0 0 10 20"><rect width="10" height="20"/></symbol><use href="#s" width="80" height="80"/>', 3200),
    ('<symbol id="s" viewBox="0 0 10 20" preserveAspectRatio="none"><rect width="10" height="20"/></symbol><use href="#s" width="80" height="80"/>', 6400),
    ('<symbol id="s" viewBox="0 0 10 20" preserveAspectRatio="xMinYMin slice"><rect width="10" height="10"/></symbol><use href="#s" width="80" height="80"/>', 6400),
    ('<symbol id="s"><rect width="50%" height="50%"/></symbol><use href="#s" width="80" height="60"/>', 1200),
    ('<svg x="5" y="5" width="50" height="50" viewBox="0 0 5 5"><rect width="4" height="5"/></svg>', 2000),
    ('<svg width="50%" height="50%" viewBox="0 0 5 5"><rect width="4" height="5"/></svg>', 2000),
    ('<svg viewBox="0 0 10 10"><svg x="1" width="5" height="5" viewBox="0 0 1 1"><circle cx=".5" cy=".5" r=".4"/></svg></svg>', math.pi * 400),
    ('<g id="a"><rect id="b" width="20" height="10"/></g><use href="#a" transform="scale(3)"/>', 1800),
])
def test_references_and_nested_viewports(body, area):
    found = read_svg(body)
    assert areas(found)[0] == pytest.approx(area, rel=1e-9)


ROOTS = {
    # head, (mm per user unit across, down), unit, source
    'width="100mm" height="200mm" viewBox="0 0 100 200"': ((1, 1), "mm", "file"),
    'width="10cm" height="20cm" viewBox="0 0 50 100"': ((2, 2), "cm", "file"),
    'width="4in" height="8in" viewBox="0 0 100 200"': ((1.016, 1.016), "inch", "file"),
    'width="288pt" height="576pt" viewBox="0 0 100 200"': ((1.016, 1.016), "pt", "file"),
    'width="24pc" height="48pc" viewBox="0 0 100 200"': ((1.016, 1.016), "pc", "file"),
    'width="400Q" height="800Q" viewBox="0 0 100 200"': ((1, 1), "Q", "file"),
    'width="384" height="768" viewBox="0 0 100 200"': ((1.016, 1.016), "px", "file"),
    'width="384px" height="768px" viewBox="0 0 100 200"': ((1.016, 1.016), "px", "file"),
    'width="100mm" viewBox="0 0 100 200"': ((1, 1), "mm", "file"),
    'height="200mm" viewBox="0 0 100 200"': ((1, 1), "mm", "file"),
    'width="100mm" height="100%" viewBox="0 0 100 200"': ((1, 1), "mm", "file"),
    'width="100mm" height="100mm" viewBox="0 0 100 200"': ((0.5, 0.5), "mm", "file"),
    'width="100mm" height="100mm" viewBox="0 0 100 200" preserveAspectRatio="xMidYMid slice"': ((1, 1), "mm", "file"),
    'width="100mm" height="100mm" viewBox="0 0 100 200" preserveAspectRatio="none"': ((1, 0.5), "mm", "file"),
    'width="100mm" height="200mm" viewBox="-30 700 100 200"': ((1, 1), "mm", "file"),
    'width="100mm" height="200mm"': ((25.4 / 96, 25.4 / 96), "px", "file"),
    'width=" 1e2mm " height="2.0E+2mm" viewBox="0,0,100,200"': ((1, 1), "mm", "file"),
    'width="100MM" height="200MM" viewBox=" 0 0  100\n200 "': ((1, 1), "mm", "file"),
}


@pytest.mark.parametrize("head", ROOTS)
def test_the_root_gives_the_size_of_a_unit(head):
    (kx, ky), unit, source = ROOTS[head]
    found = read_svg('<rect width="160" height="320"/>', head)
    assert found.loops[0].path.area == pytest.approx(160 * 320 * kx * ky, rel=1e-9)
    assert (found.unit, found.unit_source) == (unit, source)


@pytest.mark.parametrize(("head", "unit"), [
    ('width="595.28" height="841.89" viewBox="0 0 595.28 841.89"', "pt"), ('viewBox="0 0 792 612"', "pt"), ('width="595px" height="842px"', "pt"),
    ('width="744.09448" height="1052.3622"', "1/90 inch"), ('viewBox="0 0 765 990"', "1/90 inch"),
    ('width="793.7" height="1122.52"', "px"), ('width="600" height="800"', "px")])
def test_a_page_that_is_a_usual_sheet_in_points_is_drawn_in_them(head, unit):
    """72 or 90 to the inch, as some programs write without saying so: asked about all the same."""
    found = read_svg('<rect width="220" height="500"/>', head)
    assert (found.unit, found.unit_source, found.unit_certain) == (unit, "guess", False)
    others = {"px", "pt", "1/90 inch"} - {unit}
    assert any(all(f"n {name} it" in text or f"in {name} " in text for name in others) for text in found.warnings)
    assert {name for name, *_ in unit_question(found).choices} >= {"mm", "inch", *others}


@pytest.mark.parametrize("head", ["", 'viewBox="0 0 800 800"', 'width="100%" height="100%" viewBox="0 0 800 800"', 'width="auto"', 'width="-5mm" height="0"'])
def test_without_a_size_a_unit_is_a_96th_of_an_inch_and_that_is_said(head):
    found = read_svg('<rect width="400" height="700"/>', head)
    assert areas(found) == pytest.approx([400 * 700 * (25.4 / 96) ** 2])
    assert (found.unit, found.unit_source, found.unit_certain) == ("px", "guess", False)
    # By hand: 400 x 700 points are 141.1 x 246.9 mm.
    assert "96 units to the inch were assumed" in found.warnings[0] and "in pt 141.1 x 246.9 mm" in found.warnings[0]
    assert [name for name, *_ in unit_question(found).choices] == ["mm", "cm", "inch", "1/90 inch", "pt"]


def test_without_a_size_millimetres_are_guessed_where_pixels_make_no_headstock():
    found = read_svg('<rect width="90" height="190"/>', 'viewBox="0 0 100 200"')
    assert areas(found) == pytest.approx([90 * 190])
    assert (found.unit, found.unit_source) == ("mm", "guess")


def test_a_unit_given_by_the_maker_is_that_of_the_numbers_in_the_drawing():
    found = read_svg('<rect width="4" height="7"/>', 'width="4mm" height="7mm" viewBox="0 0 4 7"', unit="inch")
    assert areas(found) == pytest.approx([28 * 25.4**2])
    assert (found.unit, found.unit_source, found.unit_certain) == ("inch", "option", True)


def test_a_white_page_is_no_outline():
    found = read_svg('<rect width="100" height="100" fill="#FFFFFF" stroke="none"/>' + BASE)
    assert areas(found) == pytest.approx([7200])
    assert "1 white page background" in found.warnings[-1]


def test_an_outline_that_fills_the_page_is_one():
    found = read_svg('<rect width="100" height="100" fill="none"/><circle cx="50" cy="50" r="4"/>')
    assert [loop.role for loop in found.loops] == ["outline", "hole"]


def test_invisible_shapes_are_taken_when_there_is_nothing_else():
    found = read_svg('<rect width="90" height="80" stroke="none"/>')
    assert areas(found) == pytest.approx([7200])
    assert any("invisible shapes were taken" in w for w in found.warnings)


def test_a_filled_open_shape_is_closed_as_it_is_seen():
    found = read_svg('<path d="M0 0H90V80" fill="black"/>')
    assert areas(found) == pytest.approx([3600])
    assert any("closed with a straight line" in w for w in found.warnings)


def test_two_filled_open_halves_are_joined_before_either_is_closed():
    found = read_svg('<path d="M0 0H90V80" fill="black"/><path d="M90 80H0V0" fill="black"/>')
    assert areas(found) == pytest.approx([7200])


def test_layers_are_named_after_their_groups():
    found = read_svg('<g id="cut"><g id="inner"><rect width="90" height="80"/></g></g>')
    assert found.loops[0].layer == "cut"


@pytest.mark.parametrize("text", [
    '<svg width="100mm" height="100mm" viewBox="0 0 100 100"><rect width="90" height="80"/></svg>',
    '<s:svg xmlns:s="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><s:rect width="90" height="80"/></s:svg>',
    '\n  <?xml version="1.0"?>\n<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">'
    '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><rect width="90" height="80"/></svg>',
    '<!DOCTYPE svg [<!ENTITY st "fill:none;stroke:black">]><svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" '
    'viewBox="0 0 100 100"><rect style="&st;" width="90" height="80"/></svg>',
    '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><use xlink:href="#r"/><defs><rect id="r" width="90" '
    'height="80"/></defs></svg>'])
def test_the_usual_ways_of_starting_a_file(text):
    assert areas(read(text, ".svg")) == pytest.approx([7200])


@pytest.mark.parametrize("encoding,declared", [("utf-16", "utf-16"), ("iso-8859-1", "ISO-8859-1"), ("cp1252", "windows-1252"), ("utf-8-sig", "utf-8"),
                                               ("cp1252", "utf-8")])
def test_encodings(encoding, declared):
    text = (f'<?xml version="1.0" encoding="{declared}"?><svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">'
            '<title>Umriß</title><rect width="90" height="80"/></svg>')
    assert areas(read(text.encode(encoding), ".svg")) == pytest.approx([7200])


@pytest.mark.parametrize("text,why", [
    ('<svg xmlns="http://www.w3.org/2000/svg"><rect width="9', "damaged at line 1"),
    ("<html><body/></html>", "first element is <html>"),
    ('<svg xmlns="http://www.w3.org/2000/svg"/>', "is empty"),
    ('<svg xmlns="http://www.w3.org/2000/svg"><text>x</text><image href="x.png"/></svg>', "only 1 text, 1 picture"),
    ("<", "damaged")])
def test_what_is_no_drawing_is_refused(text, why):
    with pytest.raises(FormatError, match=why):
        read(text, ".svg")
