"""A walk over the model space of a DXF, blocks unfolded, that keeps what a maker can cut."""

from __future__ import annotations

from collections.abc import Iterator

from ezdxf.document import Drawing
from ezdxf.entities import DXFEntity, Insert
from ezdxf.math import Matrix44, Vec3
from msgspec import Struct

from app.formats.drawing_in.bounds import MOST_COPIES, MOST_NUMBERS, many_points
from app.formats.drawing_in.dxf_areas import KINDS, corners, edges_of, plane_of
from app.formats.drawing_in.dxf_curves import READABLE, shape_of, tilted, width_of
from app.formats.drawing_in.haul import Haul, clean
from app.formats.drawing_in.skipped import damaged
from app.formats.errors import FormatError
from geometry.errors import GeometryError
from geometry.saying import say

MOST_SHAPES = 200_000
"""Shapes after unfolding all blocks; more is not an outline for a headstock."""

DEEPEST = 16
"""Blocks within blocks."""

_WORDS = {
    "TEXT": "texts", "MTEXT": "texts", "ATTRIB": "texts", "ATTDEF": "texts", "DIMENSION": "dimensions",
    "ARC_DIMENSION": "dimensions", "LARGE_RADIAL_DIMENSION": "dimensions", "LEADER": "leaders", "MULTILEADER": "leaders",
    "MLEADER": "leaders", "TOLERANCE": "dimensions", "HATCH": "hatches", "MPOLYGON": "hatches", "SOLID": "filled areas",
    "TRACE": "filled areas", "WIPEOUT": "filled areas", "POINT": "points", "XLINE": "unbounded lines", "RAY": "unbounded lines",
    "IMAGE": "pictures", "OLE2FRAME": "pictures", "VIEWPORT": "viewports", "3DFACE": "3-D faces", "MESH": "3-D faces",
    "3DSOLID": "solid bodies", "BODY": "solid bodies", "REGION": "regions", "SURFACE": "surfaces", "ACAD_TABLE": "tables",
}


class _Place(Struct):
    """Where a walk stands: the map to the drawing, the layer of the insert, and the blocks it is inside."""

    to_world: Matrix44
    layer: str | None
    inside: tuple[str, ...]


def collect(document: Drawing, haul: Haul) -> None:
    """Put every readable, visible shape of the model space into the haul.

    Raises FormatError for blocks that contain themselves or unfold without bounds.
    """
    space = document.modelspace()
    unfolded, _, points = _unfolded(document, space, (), {})
    if unfolded > MOST_SHAPES:
        raise FormatError(say("The drawing unfolds to more than {most_shapes:,} shapes: export only the outline, the "
                              "slots and the holes.",
                              most_shapes=MOST_SHAPES))
    written = sum(len(block) for block in document.blocks)  # the model space is among them
    if unfolded - written > MOST_COPIES + len(space):
        raise FormatError(say("The blocks of the drawing repeat to more than {most_copies:,} shapes that the file does not write "
                              "out: export only the outline, the slots and the holes.", most_copies=MOST_COPIES))
    if 2 * points > MOST_NUMBERS:
        raise FormatError(many_points())
    in_paper = sum(len(layout) for layout in document.layouts if not layout.is_modelspace)
    if in_paper:
        haul.skipped["shapes on paper pages"] += in_paper
    walk = _Walk(document, haul)
    walk.over(space, _Place(Matrix44(), None, ()))
    if not haul.strands:
        walk.take_areas()


def _unfolded(document: Drawing, entities, inside: tuple[str, ...], known: dict[str, tuple[int, int, int]]) -> tuple[int, int, int]:
    """(shapes once all blocks are unfolded, levels of blocks, points) of a layout or block, each block counted once."""
    total, levels, points = 0, 0, 0
    for entity in entities:
        if entity.dxftype() != "INSERT":
            total += 1
            points += _points(entity)
            continue
        name = entity.dxf.get("name", "").lower()
        copies = max(1, entity.dxf.get("row_count", 1)) * max(1, entity.dxf.get("column_count", 1))
        if name in inside:
            raise FormatError(say("The block '{clean}' contains itself: break it up in the program that drew it, and "
                                  "export again.",
                                  clean=clean(name)))
        if name not in known:
            block = document.blocks.get(name)
            known[name] = (0, 0, 0) if block is None else _unfolded(document, block, (*inside, name), known)
        total += copies * (1 + known[name][0])
        points += copies * known[name][2]
        levels = max(levels, 1 + known[name][1])
        if max(levels, len(inside)) > DEEPEST:
            raise FormatError(say("Blocks are nested more than {deepest} deep: break them up in the program that drew "
                                  "them, and export again.",
                                  deepest=DEEPEST))
    return total, levels, points


def _points(entity: DXFEntity) -> int:
    """The corners of a polyline or a filled area, the control points of a spline; the ends of everything else."""
    kind = entity.dxftype()
    if kind == "LWPOLYLINE":
        return len(entity)
    if kind == "POLYLINE":
        return len(entity.vertices)
    if kind in KINDS:
        return corners(entity)
    return len(entity.control_points) if kind == "SPLINE" else 2


DIMENSIONS_POINTS = "defpoints"
"""The layer of the points that dimensions hang on."""


class _Walk:
    def __init__(self, document: Drawing, haul: Haul) -> None:
        self.document = document
        self.haul = haul
        self.areas: list[tuple[DXFEntity, str, _Place]] = []
        self.off: dict[str, str] = {}
        for layer in document.layers:
            if layer.is_frozen():
                self.off[layer.dxf.name.lower()] = "frozen"
            elif layer.is_off():
                self.off[layer.dxf.name.lower()] = "off"

    def over(self, entities, place: _Place) -> None:
        """Take the entities of one layout or block at its place."""
        for entity in entities:
            layer = str(entity.dxf.layer) if entity.dxf.hasattr("layer") else "0"
            if place.layer is not None and layer == "0":
                layer = place.layer
            if entity.dxf.get("paperspace", 0):
                self.haul.skipped["shapes on paper pages"] += 1
            elif _hidden(entity) or self.off.get(layer.lower()) == "frozen":
                self.haul.skipped["hidden shapes"] += 1
            elif isinstance(entity, Insert):
                self.unfold(entity, layer, place)
            elif layer.lower() in self.off:
                self.haul.skipped["hidden shapes"] += 1
            else:
                self.take(entity, layer, place)

    def take(self, entity: DXFEntity, layer: str, place: _Place) -> None:
        """One shape into the haul, or into the count of what was skipped."""
        kind = entity.dxftype()
        if kind == "POINT" and layer.lower() != DIMENSIONS_POINTS:
            at = place.to_world.transform(entity.dxf.location)
            self.haul.point((at.x, at.y))
            return
        if kind in ("TEXT", "MTEXT", "ATTRIB"):
            self.haul.text(_words(entity))
        if kind in KINDS:
            self.areas.append((entity, layer, place))
        if kind not in READABLE or (kind == "POLYLINE" and (entity.is_polygon_mesh or entity.is_poly_face_mesh)):
            self.haul.skipped[_WORDS.get(kind, "3-D faces" if kind == "POLYLINE" else kind.lower())] += 1
            return
        try:
            segments, closed = shape_of(entity, place.to_world)
        except (GeometryError, ArithmeticError, ValueError, TypeError, AttributeError, IndexError):
            # A damaged entity must not cost the maker the rest of the drawing: it is counted and named.
            self.haul.skipped[damaged(kind)] += 1
            return
        if segments and width_of(entity) > 0:
            self.haul.warn(say("Some lines are drawn with a width: of discs that are filled by it the edge was taken, of all others the middle of "
                               "the line."))
        if segments and tilted(entity, place.to_world):
            self.haul.warn(say("Some shapes are tilted out of the drawing's plane; they were taken as seen from above."))
        self.haul.add(segments, closed, layer, pen=_pen(entity))

    def take_areas(self) -> None:
        """The edges of filled areas, of a drawing that has no lines."""
        for area, layer, place in self.areas:
            try:
                edges, plane = list(edges_of(area)), plane_of(area)
            except (ArithmeticError, ValueError, TypeError, IndexError):
                self.haul.skipped[damaged(area.dxftype())] += 1
                continue
            for edge in edges:
                self.take(edge, layer, _Place(plane * place.to_world, layer, place.inside))
        if self.haul.strands:
            del self.haul.skipped["hatches"]
            self.haul.warn(say("The drawing holds no lines, only filled areas: their edges were taken."))

    def unfold(self, insert: Insert, layer: str, place: _Place) -> None:
        """A block at its place, with its array, scale, turn and mirror."""
        name = insert.dxf.get("name", "")
        for attribute in insert.attribs:
            self.haul.text(_words(attribute))
        block = self.document.blocks.get(name)
        if block is None:
            self.haul.skipped["blocks that the file does not hold"] += 1
            return
        if block.block.dxf.get("flags", 0) & 12:
            self.haul.warn(say("The block '{clean}' lies in another file and was not read: bind it in the program "
                               "that drew it.",
                               clean=clean(name)))
            return
        if insert.dxf.get("zscale", 1.0) == 0:
            insert.dxf.zscale = 1.0  # no shape from above depends on it, but a zero breaks the map
        if insert.dxf.get("xscale", 1.0) == 0 or insert.dxf.get("yscale", 1.0) == 0:
            self.haul.skipped["blocks scaled to nothing"] += 1
            return
        if insert.has_extension_dict and "ACAD_FILTER" in insert.get_extension_dict():
            self.haul.warn(say("The block '{clean}' is clipped in the drawing; it was read whole.", clean=clean(name)))
        try:
            matrix, shifts = insert.matrix44(), list(_array(insert))
        except (ArithmeticError, ValueError):
            self.haul.skipped["damaged blocks"] += 1  # its extrusion has no direction: it lies in no plane
            return
        for shift in shifts:
            moved = matrix * Matrix44.translate(shift.x, shift.y, shift.z)
            self.over(block, _Place(moved * place.to_world, layer, (*place.inside, name)))


def _array(insert: Insert) -> Iterator[Vec3]:
    """The shift of each copy: rows and columns turn with the insert but do not scale with it."""
    dxf = insert.dxf
    rows, columns = max(1, dxf.get("row_count", 1)), max(1, dxf.get("column_count", 1))
    down, across = dxf.get("row_spacing", 0.0), dxf.get("column_spacing", 0.0)
    rows, columns = (rows if down else 1), (columns if across else 1)
    ocs = insert.ocs()
    for row in range(rows):
        for column in range(columns):
            yield Vec3(ocs.to_wcs(Vec3(column * across, row * down).rotate_deg(dxf.get("rotation", 0.0))))


def _words(text: DXFEntity) -> str:
    """What is written; nothing where its numbers are damaged."""
    try:
        return str(text.plain_text())
    except (ArithmeticError, ValueError, TypeError, AttributeError, IndexError):
        return ""


def _pen(entity: DXFEntity) -> str:
    """Its colour and linetype, as far as they are not those of its layer or block; damaged ones are none."""
    color, line = entity.dxf.get("true_color", entity.dxf.get("color", 256)), str(entity.dxf.get("linetype", "")).lower()
    return f"{'' if color in (0, 256) else color}{'' if line in ('bylayer', 'byblock', 'continuous') else line}"


def _hidden(entity: DXFEntity) -> bool:
    return bool(entity.dxf.invisible) if entity.dxf.hasattr("invisible") else False
