"""DXF files as programs really write them: versions, headers, encodings, layers, damage."""

import io
import math
import re

import ezdxf
import pytest

from app.formats.errors import FormatError
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import areas, read
from tests.app.formats.drawing_in.test_dxf_areas import FLAG, FLAG_AREA, SQUARE

NEW_KINDS = dxf.polyline(FLAG, layer="H") + dxf.ellipse((40, 20), (8, 0), 0.5) + dxf.spline(
    3, [0, 0, 0, 0, 1, 1, 1, 1], [(10, 5), (10, 15), (30, 15), (30, 5)]) + dxf.line((10, 5), (30, 5))
NEW_AREAS = [FLAG_AREA, 3 / 20 * (20 * 10 + 20 * 10) + 3 / 10 * 20 * 10, math.pi * 8 * 4]


@pytest.mark.parametrize("version", [None, "AC1009", "AC1012", "AC1015", "AC1021", "AC1032"])
def test_closed_flags_and_degrees_survive_whatever_version_is_stated(version):
    found = read(dxf.drawing(NEW_KINDS, units=4, version=version))
    assert areas(found) == pytest.approx(sorted(NEW_AREAS, reverse=True), rel=1e-7)
    assert (found.unit, found.unit_source) == ("mm", "file")


def test_no_header_at_all_is_not_taken_for_metres():
    # The library assumes metres for a file without a header.
    found = read(dxf.drawing(NEW_KINDS, units=None, version=None))
    assert areas(found) == pytest.approx(sorted(NEW_AREAS, reverse=True), rel=1e-7)
    assert (found.unit, found.unit_source, found.unit_certain) == ("mm", "guess", False)
    assert "guessed" in found.warnings[0]


def test_a_fragment_without_any_section_is_read():
    assert areas(read(NEW_KINDS)) == pytest.approx(sorted(NEW_AREAS, reverse=True), rel=1e-7)
    assert areas(read(dxf.lines(SQUARE) + dxf.tags(0, "EOF"))) == pytest.approx([6000.0])


@pytest.mark.parametrize("version", [None, "AC1009", "AC1015"])
def test_entities_without_their_markers_are_read(version):
    text = dxf.drawing(NEW_KINDS, version=version)
    for marker in ("AcDbEntity", "AcDbPolyline", "AcDbEllipse", "AcDbSpline"):
        text = text.replace(f"100\n{marker}\n", "")
    assert areas(read(text)) == pytest.approx(sorted(NEW_AREAS, reverse=True), rel=1e-7)


def test_line_ends_leading_blanks_and_byte_order_marks_do_not_matter():
    text = dxf.drawing(NEW_KINDS)
    truth = pytest.approx(sorted(NEW_AREAS, reverse=True), rel=1e-7)
    assert areas(read(text.replace("\n", "\r\n"))) == truth
    assert areas(read(text.replace("\n", "\r"))) == truth
    assert areas(read(re.sub(r"(?m)^(?=[-\d.]+$)", "   ", text))) == truth
    assert areas(read(b"\xef\xbb\xbf" + text.encode())) == truth
    assert areas(read(b"\xff\xfe" + text.encode("utf-16-le"))) == truth
    assert areas(read(b"\xfe\xff" + text.encode("utf-16-be"))) == truth


def test_decimal_commas_are_understood():
    text = dxf.drawing(dxf.polyline([(0.5, 0.25, 0), (80.5, 0.25, 0), (80.5, 60.75, 0), (0.5, 60.75, 0)]))
    assert areas(read(text.replace(".", ","))) == pytest.approx([80 * 60.5])


def test_layer_names_in_an_old_code_page_do_not_stop_the_reading():
    found = read(dxf.drawing(dxf.polyline(FLAG, layer="Umriß")).encode("cp1252"))
    assert found.loops[0].layer == "Umriß"


def test_a_binary_file_gives_the_same_as_its_text():
    document = ezdxf.new("R2000", units=1)
    document.modelspace().add_lwpolyline([(x / 25.4, y / 25.4, b) for x, y, b in FLAG], format="xyb", close=True)
    stream = io.BytesIO()
    document.write(stream, fmt="bin")
    found = read(stream.getvalue())
    assert areas(found) == pytest.approx([FLAG_AREA])
    assert (found.unit, found.unit_source) == ("inch", "file")


def test_a_missing_end_is_said():
    found = read(dxf.drawing(dxf.polyline(FLAG), end=False))
    assert areas(found) == pytest.approx([FLAG_AREA])
    assert any("ends before its end mark" in w for w in found.warnings)


def test_a_file_cut_in_the_middle_is_mended_or_refused_in_one_sentence():
    text = dxf.drawing(dxf.polyline(FLAG) + dxf.lines(SQUARE) * 20)
    for cut in range(200, len(text), 241):
        try:
            found = read(text[:cut])
        except FormatError as error:
            assert str(error).endswith(".") and "\n" not in str(error)
        else:
            assert any("end mark" in w for w in found.warnings)


def test_what_lies_on_paper_pages_alone_is_refused_with_what_to_do():
    with pytest.raises(FormatError, match="on its paper pages.*copy the outline at full size"):
        read(dxf.drawing(dxf.line((0, 0), (900, 0)).replace("8\n0\n", "8\n0\n67\n1\n", 1)))


def test_hidden_frozen_and_paper_shapes_are_left_out_and_counted():
    tables = dxf.layer_table(("0", 0, 7), ("OFF", 0, -7), ("FROZEN", 1, 7))
    big = [(-50.0, -50.0, 0), (400.0, -50.0, 0), (400.0, 400.0, 0)]
    invisible = dxf.polyline(big).replace("8\n0\n", "8\n0\n60\n1\n", 1)
    on_paper = dxf.line((0, 0), (900, 0)).replace("8\n0\n", "8\n0\n67\n1\n", 1)
    entities = dxf.polyline(FLAG) + dxf.polyline(big, layer="off") + dxf.polyline(big, layer="FROZEN") + invisible + on_paper
    found = read(dxf.drawing(entities, tables=tables))
    assert areas(found) == pytest.approx([FLAG_AREA])
    assert "3 hidden shapes" in found.warnings[-1] and "1 shape on paper pages" in found.warnings[-1]


def test_layer_zero_inside_a_block_is_the_layer_of_the_insert():
    tables = dxf.layer_table(("0", 0, 7), ("OFF", 0, -7), ("FROZEN", 1, 7), ("ON", 0, 7))
    content = dxf.circle((0, 0), 5, "0") + dxf.circle((0, 0), 6, "ON")
    blocks = dxf.block("B", content)
    shown = read(dxf.drawing(dxf.polyline(FLAG) + dxf.insert("B", (60, 30), layer="OFF"), tables=tables, blocks=blocks))
    assert areas(shown) == pytest.approx([FLAG_AREA, math.pi * 36])
    frozen = read(dxf.drawing(dxf.polyline(FLAG) + dxf.insert("B", (60, 30), layer="FROZEN"), tables=tables, blocks=blocks))
    assert areas(frozen) == pytest.approx([FLAG_AREA])


def test_annotation_is_left_out_and_counted():
    text = dxf.tags(0, "TEXT", 8, "0", 10, 0, 20, 0, 40, 5, 1, "not wood")
    point = dxf.tags(0, "POINT", 8, "0", 10, 0, 20, 0)
    found = read(dxf.drawing(dxf.polyline(FLAG) + text * 2 + point))
    assert areas(found) == pytest.approx([FLAG_AREA])
    assert found.warnings[-1] == "Left out: 2 texts."
    assert "1 point or small cross does not lie in the wood of the head" in found.warnings[-2]


def test_nothing_but_annotation_is_refused_with_what_was_found():
    text = dxf.tags(0, "TEXT", 8, "0", 10, 0, 20, 0, 40, 5, 1, "not wood")
    with pytest.raises(FormatError, match="only 1 text:"):
        read(dxf.drawing(text))


def test_an_empty_drawing_is_refused():
    with pytest.raises(FormatError, match="is empty"):
        read(dxf.drawing(""))


def test_shapes_with_impossible_numbers_do_not_cost_the_others():
    bad = dxf.line((0, 0), (float("inf"), 3)) + dxf.line((float("nan"), 0), (1, 1)) + dxf.circle((1e300, 0), 5) + dxf.circle((0, 0), 0)
    found = read(dxf.drawing(dxf.polyline(FLAG) + bad))
    assert areas(found) == pytest.approx([FLAG_AREA])


def test_a_missing_block_is_counted():
    found = read(dxf.drawing(dxf.polyline(FLAG) + dxf.insert("NOWHERE")))
    assert areas(found) == pytest.approx([FLAG_AREA])
    assert "1 block that the file does not hold" in found.warnings[-1]


def test_tilted_shapes_are_said():
    tilted = dxf.circle((0, 0), 9) + dxf.tags(210, 0.6, 220, 0, 230, 0.8)
    found = read(dxf.drawing(dxf.polyline(FLAG) + tilted))
    assert any("tilted" in w for w in found.warnings)
    assert areas(found)[1] == pytest.approx(math.pi * 81 * 0.8)


def test_a_drawing_far_away_is_moved_before_anything_is_computed():
    far = [(x + 4.2e6, y - 7.7e7, b) for x, y, b in FLAG]
    found = read(dxf.drawing(dxf.polyline(far)))
    assert areas(found) == pytest.approx([FLAG_AREA], rel=1e-7)
    assert max(abs(c) for c in found.loops[0].path.box) < 200
    assert any("was moved by" in w for w in found.warnings)


def test_lines_on_a_layer_of_their_own_do_not_disturb_the_outline():
    entities = dxf.lines(SQUARE, layer="HEAD") + dxf.line((50, -20), (50, 90), layer="MIDDLE") + dxf.line((-20, 30), (150, 30), layer="MIDDLE")
    found = read(dxf.drawing(entities))
    assert areas(found) == pytest.approx([6000.0])
    assert found.loops[0].layer == "HEAD"


def test_an_outline_spread_over_two_layers_is_still_joined():
    entities = dxf.lines(SQUARE[:3], layer="BASS", closed=False) + dxf.lines([SQUARE[2], SQUARE[3], SQUARE[0]], layer="TREBLE", closed=False)
    assert areas(read(dxf.drawing(entities))) == pytest.approx([6000.0])


def test_roles_follow_size_place_and_roundness():
    """The circle of 24 about a hole is as large as a tuner's plate."""
    entities = (dxf.lines(SQUARE) + dxf.circle((20, 20), 4) + dxf.circle((60, 30), 12) + dxf.polyline([(5, 45, 0), (13, 45, 0), (13, 57, 0)])
                + dxf.circle((200, 20), 4) + dxf.circle((60, 30), 3) + dxf.polyline([(55, 22, 0), (65, 22, 0), (60, 24, 0)]))
    found = read(dxf.drawing(entities))
    roles = {(loop.role, round(loop.path.area, 2)) for loop in found.loops}
    assert roles == {("outline", 6000.0), ("hole", 50.27), ("other", 452.39), ("slot", 48.0), ("other", 50.27),
                     ("hole", 28.27), ("other", 10.0)}
