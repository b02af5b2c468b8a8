"""The same closed forms in files written by the DXF library, in every version it writes, text and binary."""

import io
import math

import ezdxf
import pytest
from ezdxf.math import Matrix44

from tests.app.formats.drawing_in.reading import areas, read
from tests.app.formats.drawing_in.test_dxf_areas import FLAG, FLAG_AREA

VERSIONS = ["R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"]


def written(document, binary: bool = False) -> bytes:
    if binary:
        stream = io.BytesIO()
        document.write(stream, fmt="bin")
        return stream.getvalue()
    text = io.StringIO()
    document.write(text)
    return text.getvalue().encode(document.output_encoding)


def flag(layout, **attributes):
    """The flag as a polyline of the kind that the version knows."""
    if layout.doc.dxfversion == "AC1009":
        return layout.add_polyline2d(FLAG, format="xyb", close=True, dxfattribs=attributes)
    return layout.add_lwpolyline(FLAG, format="xyb", close=True, dxfattribs=attributes)


@pytest.mark.parametrize("binary", [False, True])
@pytest.mark.parametrize("version", VERSIONS)
def test_polyline_circle_and_mirrored_block_in_every_version(version, binary):
    document = ezdxf.new(version, units=4)
    space, block = document.modelspace(), document.blocks.new("FLAG", base_point=(5, 7))
    flag(block)
    space.add_blockref("FLAG", (0, 0), dxfattribs={"xscale": -1.5, "yscale": 0.5, "rotation": 25})
    space.add_circle((-200, 0), 12)
    found = read(written(document, binary), unit="mm")
    assert areas(found) == pytest.approx([0.75 * FLAG_AREA, 144 * math.pi], rel=1e-7)


@pytest.mark.parametrize("version", VERSIONS[1:])
def test_ellipse_and_splines_in_every_version_that_has_them(version):
    document = ezdxf.new(version, units=1)
    space = document.modelspace()
    space.add_ellipse((0, 0), (2.5, 1.0), 0.6)
    space.add_spline(degree=3).set_closed([(7, 1, 0), (6, 2, 0), (5, 1, 0), (6, 0, 0)])
    found = read(written(document))
    assert (found.unit, found.unit_source) == ("inch", "file")
    # Uniform cubic through a square of control points (half diagonal 1): symmetric, by Gauss quadrature of one quarter.
    assert areas(found)[0] == pytest.approx(math.pi * (2.5**2 + 1) * 0.6 * 25.4**2, rel=1e-7)
    assert areas(found)[1] == pytest.approx(quarter_of_a_square() * 4 * 25.4**2, rel=1e-9)


def quarter_of_a_square() -> float:
    """Area term of one piece of the uniform cubic B-spline round (1,0), (0,1), (-1,0), (0,-1), by the 5-point Gauss rule."""
    corners = [(1, 0), (0, 1), (-1, 0), (0, -1)]
    nodes = [(0.5, 0.5688888888888889), (0.5 - 0.5384693101056831 / 2, 0.47862867049936647), (0.5 + 0.5384693101056831 / 2, 0.47862867049936647),
             (0.5 - 0.906179845938664 / 2, 0.23692688505618908), (0.5 + 0.906179845938664 / 2, 0.23692688505618908)]
    total = 0.0
    for t, w in nodes:
        b = [(1 - t) ** 3 / 6, (3 * t**3 - 6 * t**2 + 4) / 6, (-3 * t**3 + 3 * t**2 + 3 * t + 1) / 6, t**3 / 6]
        d = [-((1 - t) ** 2) / 2, (9 * t**2 - 12 * t) / 6, (-9 * t**2 + 6 * t + 3) / 6, t**2 / 2]
        x, y = (sum(k * p[i] for k, p in zip(b, corners, strict=True)) for i in (0, 1))
        u, v = (sum(k * p[i] for k, p in zip(d, corners, strict=True)) for i in (0, 1))
        total += w / 2 * (x * v - y * u) / 2
    return total


def test_what_the_library_itself_transforms_agrees():
    document = ezdxf.new("R2010", units=4)
    moved = flag(document.modelspace())
    moved.transform(Matrix44.scale(-1, 1, 1) @ Matrix44.z_rotate(0.4) @ Matrix44.translate(30, -12, 0))
    assert areas(read(written(document))) == pytest.approx([FLAG_AREA], rel=1e-9)


def test_nested_tilted_and_flipped_blocks_agree_with_the_library():
    document = ezdxf.new("R2010", units=4)
    inner, outer = document.blocks.new("INNER"), document.blocks.new("OUTER")
    flag(inner, extrusion=(0, 0, -1))
    outer.add_blockref("INNER", (10, 5), dxfattribs={"rotation": 30, "yscale": -2, "extrusion": (0, 0, -1)})
    placed = document.modelspace().add_blockref("OUTER", (3, 4), dxfattribs={"rotation": -70, "xscale": 0.7, "yscale": 0.7})
    exploded = [e for inner_ref in placed.virtual_entities() for e in inner_ref.virtual_entities()]
    corners = [v for e in exploded for v in _corners(e)]
    assert len(corners) >= 3
    found = read(written(document), unit="mm")
    assert areas(found) == pytest.approx([FLAG_AREA * 2 * 0.49], rel=1e-7)
    assert all(found.loops[0].path.nearest((v.x, v.y)).distance < 1e-6 for v in corners)


def _corners(entity):
    """Corners in the drawing's plane of what the library unfolds a polyline into."""
    if entity.dxftype() == "LWPOLYLINE":
        return list(entity.vertices_in_wcs())
    if entity.dxftype() == "LINE":
        return [entity.dxf.start, entity.dxf.end]
    return []
