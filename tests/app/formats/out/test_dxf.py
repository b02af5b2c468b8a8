"""DXF read back by GDAL (through pyogrio), which shares no code with the writer, and group by group by hand."""

import math
from collections import Counter

import pyogrio
import pytest
import shapely

from app.formats.dxf_out import LAYERS, dxf_bytes
from geometry.curves import Arc, Line, Path
from geometry.drawing import STYLES, Disc, Label, Stroke
from geometry.drawing.shapes import chain
from tests.app.formats.out.specimens import DRAWING, OUTLINE


def groups(data: bytes) -> list[tuple[int, str]]:
    lines = data.decode("utf-8").splitlines()
    return [(int(code), value) for code, value in zip(lines[::2], lines[1::2], strict=True)]


def entities(data: bytes) -> list[dict[int, str]]:
    """The entities section as dictionaries of first values."""
    pairs = groups(data)
    start = next(i for i, pair in enumerate(pairs) if pair == (2, "ENTITIES"))
    found: list[dict[int, str]] = []
    for code, value in pairs[start + 1:]:
        if (code, value) == (0, "ENDSEC"):
            break
        if code == 0:
            found.append({0: value})
        else:
            found[-1].setdefault(code, value)
    return found


def header(data: bytes, name: str) -> str:
    pairs = groups(data)
    at = next(i for i, pair in enumerate(pairs) if pair == (9, name))
    return pairs[at + 1][1]


@pytest.fixture(scope="module")
def read(tmp_path_factory):
    """(layer, shapely geometry) of every entity, by GDAL."""
    path = tmp_path_factory.mktemp("dxf") / "out.dxf"
    path.write_bytes(dxf_bytes(DRAWING))
    meta, _, shapes, columns = pyogrio.raw.read(path, columns=["Layer"])
    assert list(meta["fields"]) == ["Layer"]
    return [(layer, shapely.from_wkb(shape)) for layer, shape in zip(columns[0], shapes, strict=True)]


def test_the_file_says_millimetres():
    data = dxf_bytes(DRAWING)
    assert header(data, "$INSUNITS").strip() == "4"
    assert header(data, "$MEASUREMENT").strip() == "1" and header(data, "$LUNITS").strip() == "2"
    assert header(data, "$ACADVER") == "AC1024"  # R2010


def point(data: bytes, name: str) -> tuple[float, ...]:
    """A header variable that is a point."""
    pairs = groups(data)
    at = pairs.index((9, name))
    return tuple(float(value) for code, value in pairs[at + 1:at + 4] if code in (10, 20))


def test_the_file_says_where_the_drawing_lies(read):
    """$EXTMIN, $EXTMAX and the limits hold everything that GDAL reads, to a hair: viewers fit the page to them."""
    data = dxf_bytes(DRAWING)
    x0, y0, x1, y1 = shapely.total_bounds([shape for _, shape in read])
    for low, high in (("$EXTMIN", "$EXTMAX"), ("$LIMMIN", "$LIMMAX")):
        assert point(data, low) == pytest.approx((x0, y0), abs=0.01)
        assert point(data, high) == pytest.approx((x1, y1), abs=0.01)
    alone = dxf_bytes([Disc((10.0, 20.0), 4.0, "post bore", "t")])
    assert [point(alone, name) for name in ("$EXTMIN", "$EXTMAX")] == [(6.0, 16.0), (14.0, 24.0)]


def records(data: bytes, kind: str) -> dict[str, list[tuple[int, str]]]:
    """Records of a table by their names."""
    pairs = groups(data)
    starts = [i for i, (code, _) in enumerate(pairs) if code == 0]
    found = [pairs[start:end] for start, end in zip(starts, starts[1:], strict=False) if pairs[start] == (0, kind)]
    return {dict(one)[2]: one for one in found}


def test_what_is_drilled_from_the_far_side_is_dashed():
    data = dxf_bytes([Disc((0.0, 0.0), 4.0, "post bore", "t"), Disc((9.0, 0.0), 4.0, "post bore", "t", hidden=True)])
    assert [circle.get(6, "CONTINUOUS").upper() for circle in entities(data)] == ["CONTINUOUS", "FAR SIDE"]
    lengths = [float(value) for code, value in records(data, "LTYPE")["FAR SIDE"] if code == 49]
    assert [length > 0 for length in lengths] == [True, False]


def test_layers_are_dashed_and_as_wide_as_on_paper():
    """Dashes are drawn where a length is above 0; widths are hundredths of a mm out of a fixed list (VALID_DXF_LINEWEIGHTS of ezdxf), which
    has 20 and 25."""
    data = dxf_bytes([Stroke(chain(((0.0, 0.0), (10.0, 0.0))), style) for style in ("centreline", "glue line", "slot", "nut line", "hole")])
    layers, kinds = records(data, "LAYER"), {name.upper(): kind for name, kind in records(data, "LTYPE").items()}

    def pattern(style: str) -> list[float]:
        return [float(value) for code, value in kinds[dict(layers[LAYERS[style]])[6].upper()] if code in (40, 49)]

    assert pattern("centreline") == pytest.approx([13.2, 9.0, -1.4, 1.4, -1.4])
    assert pattern("glue line") == pytest.approx([8.0, 4.0, -1.0, 0.5, -1.0, 0.5, -1.0])
    assert pattern("slot") == [0.0]
    assert [int(dict(layers[LAYERS[style]])[370]) for style in ("centreline", "hole", "slot", "nut line")] == [13, 20, 25, 50]


def test_curves_are_true_entities_on_trade_layers():
    found = Counter((e[0], e[8]) for e in entities(dxf_bytes(DRAWING)))
    assert found["CIRCLE", "post bores"] == 1 and found["CIRCLE", "screw pilots"] == 1
    assert found["LINE", "outline"] == 1 and found["ARC", "outline"] == 2 and found["SPLINE", "outline"] == 1
    assert found["LWPOLYLINE", "wood"] == 2
    assert found["LINE", "pricking marks"] == 2 and found["TEXT", "notes"] == 2


def test_a_cubic_is_a_spline_of_its_own_four_points():
    (spline,) = [e for e in entities(dxf_bytes(DRAWING)) if e[0] == "SPLINE"]
    assert (int(spline[71]), int(spline[72]), int(spline[73])) == (3, 8, 4)
    assert (float(spline[10]), float(spline[20]), float(spline[30])) == (20.0, 30.0, 0.0)


def test_circles_lie_where_they_are_drawn(read):
    (circle,) = [shape for layer, shape in read if layer == "post bores"]
    points = shapely.get_coordinates(circle)
    radii = [math.hypot(x + 10.0, y - 20.0) for x, y in points]
    assert radii == pytest.approx([3.25] * len(radii), abs=1e-6)


def test_the_outline_lies_on_the_drawn_curve_and_closes(read):
    pieces = [shape for layer, shape in read if layer == "outline"]
    ends = Counter((round(x, 6), round(y, 6)) for piece in pieces
                   for x, y in (piece.coords[0][:2], piece.coords[-1][:2]))
    assert set(ends.values()) == {2} and len(ends) == 4
    for piece in pieces:
        for x, y in shapely.get_coordinates(piece):
            assert OUTLINE.nearest((x, y)).distance < 1e-6
    # GDAL draws arcs in chords of 4 degrees: their area is short by (1 - sinc) of the round part only.
    ring = shapely.get_parts(shapely.polygonize([shapely.line_merge(shapely.union_all(
        [shapely.set_precision(piece, 1e-7) for piece in pieces]))]))[0]
    assert ring.area == pytest.approx(OUTLINE.area, rel=5e-4)


def test_arcs_over_a_half_turn_keep_their_long_way(read):
    (arc,) = [shape for layer, shape in read if layer == "axes"]
    assert arc.length == pytest.approx(1.7 * math.pi * 5.0, rel=1e-3)
    ends = sorted(point[:2] for point in (arc.coords[0], arc.coords[-1]))
    wanted = sorted((5 * math.cos(a), 60 + 5 * math.sin(a)) for a in (0.3, 0.3 + 1.7 * math.pi))
    assert ends == [pytest.approx(point, abs=1e-6) for point in wanted]


def test_words_and_their_size_are_kept():
    texts = {e[1]: e for e in entities(dxf_bytes(DRAWING)) if e[0] == "TEXT"}
    assert float(texts["bass & <treble> 6.4°"][40]) == 2.0
    assert float(texts["up"][50]) == pytest.approx(90.0)


@pytest.mark.parametrize("sign", ["\0", "\x1a", "\x1b", "\x7f", "\n0\nEOF\n", "\r", "\x85", "\u2028", "\ufeff", "\u202e"])
def test_no_word_breaks_the_file_off(sign):
    """A zero ends a string for many readers, 26 was the end of a file: a layout may be called whatever is on the clipboard."""
    data = dxf_bytes((Label(f"left{sign}right", (1.0, 2.0), 2.0, "note"), *DRAWING))
    first = entities(data)[0]
    assert first[1].split()[0] == "left" and first[1].split()[-1] == "right" and first[1].isprintable()
    assert len(entities(data)) == len(entities(dxf_bytes(DRAWING))) + 1
    assert set(data) & set(range(32)) <= {10, 13}


def test_two_exports_are_the_same_bytes():
    assert dxf_bytes(DRAWING) == dxf_bytes(DRAWING)


def test_an_empty_drawing_is_a_valid_file(tmp_path):
    import ezdxf
    (tmp_path / "empty.dxf").write_bytes(dxf_bytes(()))
    assert not ezdxf.readfile(tmp_path / "empty.dxf").audit().errors


def test_the_auditor_finds_nothing(tmp_path):
    import ezdxf
    (tmp_path / "a.dxf").write_bytes(dxf_bytes(DRAWING))
    audit = ezdxf.readfile(tmp_path / "a.dxf").audit()
    assert not audit.errors and not audit.fixes


def test_every_style_has_a_layer_of_its_own():
    assert set(LAYERS) == set(STYLES)
    assert len(set(LAYERS.values())) == len(LAYERS)


def test_fine_chords_are_one_polyline():
    points = [(30 * math.cos(i / 20 * math.pi), 20 * math.sin(i / 20 * math.pi)) for i in range(40)]
    (found,) = entities(dxf_bytes((Stroke(chain(points, closed=True), "template"),)))
    assert found[0] == "LWPOLYLINE" and int(found[90]) == 40 and int(found[70]) == 1
    for pieces, kinds in ((24, ["LINE"] * 24), (25, ["LWPOLYLINE"])):
        assert [one[0] for one in entities(dxf_bytes((Stroke(chain(points[:pieces + 1]), "template"),)))] == kinds


def test_a_slot_is_one_closed_polyline_with_its_round_ends(tmp_path):
    """Read by GDAL: 10 wide, 60 between the middles of its ends, so 600 + 25 pi inside; a hair less, as GDAL flattens arcs."""
    slot = Path((Line((-5.0, 0.0), (-5.0, 60.0)), Arc.about((0.0, 60.0), 5.0, math.pi, -math.pi), Line((5.0, 60.0), (5.0, 0.0)),
                 Arc.about((0.0, 0.0), 5.0, 0.0, -math.pi)), True)
    (tmp_path / "slot.dxf").write_bytes(dxf_bytes((Stroke(slot, "slot"),)))
    _, _, geometry, _ = pyogrio.raw.read(tmp_path / "slot.dxf")
    (shape,) = shapely.from_wkb(geometry)
    assert shapely.Polygon(shape).area == pytest.approx(600 + 25 * math.pi, abs=0.1)
    assert shapely.get_coordinates(shape)[:, 1].max() == pytest.approx(65.0, abs=5e-3)


def test_arcs_that_turn_right_are_written_counter_clockwise():
    (arc,) = entities(dxf_bytes((Stroke(Path((Arc.about((0.0, 0.0), 5.0, 1.0, -0.5),)), "axis"),)))
    assert float(arc[50]) == pytest.approx(math.degrees(0.5)) and float(arc[51]) == pytest.approx(math.degrees(1.0))


def test_a_full_turn_is_a_circle():
    (found,) = entities(dxf_bytes((Stroke(Path((Arc.about((1.0, 2.0), 5.0, 0.4, 2 * math.pi),), True), "hole"),)))
    assert found[0] == "CIRCLE"
