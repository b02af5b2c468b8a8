"""An SVG drawing as strands: a walk over what is drawn, and nothing else."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct
from msgspec.structs import replace

from app.formats.drawing_in.ellipse import EllipticArc
from app.formats.drawing_in.haul import Haul, Strand
from app.formats.drawing_in.svg_references import check_references, target_of
from app.formats.drawing_in.svg_shapes import SHAPES, shape
from app.formats.drawing_in.svg_style import Styles
from app.formats.drawing_in.svg_transform import transform
from app.formats.drawing_in.svg_tree import Node, Tree, parse
from app.formats.drawing_in.svg_units import Page, Viewport, fitted, length, page, view_box
from app.formats.drawing_in.units import Unit
from geometry.curves import Arc, Matrix, Segment
from geometry.errors import GeometryError
from geometry.saying import say

_NO_PAINT = ("none", "transparent", "rgba(0,0,0,0)", "#0000", "#00000000")
_WHITE = ("white", "#fff", "#ffffff", "rgb(255,255,255)", "rgb(100%,100%,100%)")


def read_svg(data: bytes) -> tuple[Haul, Unit | None, str]:
    """(strands in user units with y up, the file's own unit or None without a size, the unit that is likeliest then).

    Raises FormatError for files that are broken, hostile or no SVG.
    """
    tree = parse(data)
    about = page(tree.root)
    walk = _Walk(tree, about)
    check_references(tree)
    walk.inside(tree.root, _Place(about.to_up, about.viewport))
    return walk.finished(), about.unit, about.likeliest


class _Place(Struct, frozen=True):
    """Everything that an element inherits."""

    matrix: Matrix
    view: Viewport
    visible: bool = True
    fill: str = "black"
    stroke: str = "none"
    stroke_width: str = "1"
    fill_opacity: str = "1"
    stroke_opacity: str = "1"
    layer: str = ""


class _Walk:
    def __init__(self, tree: Tree, about: Page) -> None:
        self.tree = tree
        self.styles = Styles(tree.styles)
        self.haul = Haul(skipped=tree.skipped)
        for words in tree.texts:
            self.haul.text(words)
        self.unpainted: list[Strand] = []
        self.page = about
        self.backdrop: list[Strand] = []

    def finished(self) -> Haul:
        """What was drawn; shapes without paint only when there is nothing else."""
        haul = self.haul
        if self.backdrop:
            if haul.strands:
                haul.skipped["white page backgrounds"] += 1
            else:
                haul.strands = self.backdrop
        if self.unpainted:
            if haul.strands:
                haul.skipped["shapes without line or fill"] += len(self.unpainted)
            else:
                haul.strands = self.unpainted
                haul.warn(say("Nothing in the drawing has a line or a fill; its invisible shapes were taken."))
        return haul

    def inside(self, node: Node, place: _Place) -> None:
        """Draw the children of a container."""
        for child in self._drawn_children(node):
            self.element(child, place)

    def _drawn_children(self, node: Node) -> Iterator[Node]:
        if node.tag != "switch":
            yield from node.children
            return
        for child in node.children:
            language = child.get("systemLanguage")
            if child.get("requiredExtensions") or (language is not None and not language.startswith("en")):
                continue
            yield child
            return

    def element(self, node: Node, place: _Place) -> None:
        """Draw one element, if it is drawn at all."""
        if node.tag in ("defs", "symbol", "style"):
            return
        style = self.styles.of(node)
        if style.get("display", "").lower() == "none" or length(style.get("opacity"), 1.0, 1.0) <= 0:
            self.haul.skipped["hidden shapes"] += 1
            return
        if any(style.get(cut, "none") != "none" for cut in ("clip-path", "mask")):
            self.haul.warn(say("Some shapes are clipped in the drawing; they were read whole."))
        place = self._entered(node, style, place)
        if place is None:
            return
        if node.tag in SHAPES:
            self._take(node, style, place)
        elif node.tag == "use":
            self._use(node, place)
        elif node.tag == "svg":
            self._viewport(node, place, node.get("width"), node.get("height"))
        else:
            self.inside(node, place)

    def _entered(self, node: Node, style: dict[str, str], place: _Place) -> _Place | None:
        """What holds inside an element; None when its transform is useless."""
        matrix = place.matrix
        if style.get("transform"):
            own = transform(style["transform"])
            if own is None or own.determinant == 0:
                self.haul.skipped["shapes with a broken transform"] += 1
                return None
            matrix = matrix.after(own)

        def inherited(name: str, before: str) -> str:
            value = style.get(name, "inherit")
            return before if value == "inherit" else value

        visible = inherited("visibility", "visible" if place.visible else "hidden") == "visible"
        layer = place.layer
        if node.tag == "g":
            layer = node.get("ns:label") or layer or node.get("id") or layer
        return replace(place, matrix=matrix, visible=visible, layer=layer,
                       fill=inherited("fill", place.fill), stroke=inherited("stroke", place.stroke),
                       stroke_width=inherited("stroke-width", place.stroke_width),
                       fill_opacity=inherited("fill-opacity", place.fill_opacity),
                       stroke_opacity=inherited("stroke-opacity", place.stroke_opacity))

    def _use(self, node: Node, place: _Place) -> None:
        target = target_of(node, self.tree)
        if target is None:
            self.haul.skipped["references to what the file does not hold"] += 1
            return
        shift = Matrix(e=length(node.get("x"), place.view.width), f=length(node.get("y"), place.view.height))
        place = replace(place, matrix=place.matrix.after(shift))
        if target.tag == "symbol":
            style = self.styles.of(target)
            if style.get("display", "").lower() == "none":
                return
            entered = self._entered(target, style, place)
            if entered is not None:
                self._viewport(target, entered, node.get("width") or target.get("width"), node.get("height") or target.get("height"))
        elif target.tag == "svg":
            self._viewport(target, place, node.get("width") or target.get("width"), node.get("height") or target.get("height"))
        else:
            self.element(target, place)

    def _viewport(self, node: Node, place: _Place, width: str | None, height: str | None) -> None:
        """A nested svg or a symbol in use: a new viewport with its own user units."""
        w = length(width, place.view.width, default=place.view.width)
        h = length(height, place.view.height, default=place.view.height)
        if not (w > 0 and h > 0):
            return
        x = length(node.get("x"), place.view.width) if node.tag == "svg" else 0.0
        y = length(node.get("y"), place.view.height) if node.tag == "svg" else 0.0
        inner, view = fitted(node, w, h)
        self.inside(node, replace(place, matrix=place.matrix.after(Matrix(e=x, f=y)).after(inner), view=view))

    def _take(self, node: Node, style: dict[str, str], place: _Place) -> None:
        if not place.visible:
            self.haul.skipped["hidden shapes"] += 1
            return
        found, whole = shape(node, style, place.view)
        if not whole:
            self.haul.warn(say("The data of some shapes is damaged; they were drawn up to the damage, so compare the "
                               "outline with the drawing."))
        filled = _paints(place.fill, place.fill_opacity) and node.tag != "line"
        stroked = _paints(place.stroke, place.stroke_opacity) and length(place.stroke_width, place.view.diagonal, 1.0) > 0
        before = len(self.haul.strands)
        for sub in found:
            try:
                segments = [s for piece in sub.pieces for s in _mapped(piece, place.matrix)]
            except (GeometryError, OverflowError):
                self.haul.skipped["shapes with impossible coordinates"] += 1
                continue
            self.haul.add(segments, sub.closed, place.layer, filled, place.stroke.lower())
        made = self.haul.strands[before:]
        if not filled and not stroked:
            self.unpainted += made
            del self.haul.strands[before:]
        elif before == 0 and not self.backdrop and node.tag == "rect" and not stroked and self._is_backdrop(place, made):
            self.backdrop += made
            del self.haul.strands[before:]

    def _is_backdrop(self, place: _Place, made: list[Strand]) -> bool:
        """Whether a rectangle without a line is a white page: white, and at least as large as the page."""
        if place.fill.lower().replace(" ", "") not in _WHITE or not made:
            return False
        box = view_box(self.tree.root)
        w, h = (box[2], box[3]) if box else (self.page.viewport.width, self.page.viewport.height)
        x0, y0, x1, y1 = made[0].path.box
        return x1 - x0 >= 0.995 * w and y1 - y0 >= 0.995 * h * abs(self.page.to_up.d)


def _paints(paint: str, opacity: str) -> bool:
    return paint.lower().replace(" ", "") not in _NO_PAINT and length(opacity, 1.0, 1.0) > 0


def _mapped(piece: Segment | EllipticArc, matrix: Matrix) -> list[Segment]:
    if isinstance(piece, EllipticArc):
        return piece.under(matrix)
    assert not isinstance(piece, Arc)
    return [piece.mapped(matrix)]
