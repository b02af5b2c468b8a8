"""Drawing a closed line: the outline, or the wall of a slot."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct
from msgspec.structs import replace

from app.tools import guides, typed, words
from app.tools.chain import Chain
from app.tools.options import DrawKind, Options
from app.tools.pointer import Done, Gesture, Pointer, Shown
from app.tools.snap import LINE_REACH, POINT_REACH, Snap, Snapper, constrained, grid_words
from app.tools.snap_edges import on_ray
from geometry import vectors as v
from geometry.curves import MIRROR, Arc, Path, Segment
from geometry.drawing import Drawing
from geometry.edits.copying import ON_CENTRELINE, mirror_copies
from geometry.edits.parts import new_ids
from geometry.edits.slots import add_drawn_slot
from geometry.edits.whole import replace_loop, replace_outline
from geometry.errors import GeometryError
from geometry.layout import Headstock, Nut
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.terms import term
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

Into = Literal["outline", "slot"] | str

KEYS: dict[str, DrawKind] = {"s": "straight", "a": "arc", "t": "tangent arc", "c": "curve"}
"""Keys that choose the next edge while drawing."""


class _State(Struct, frozen=True):
    chain: Chain | None = None
    arc_end: Vec2 | None = None
    """end of a three-point arc that still wants a point on it"""
    pressed: Vec2 | None = None
    """a node of a curve whose handle is being pulled"""
    message: str = ""


def draw(layout: Headstock, into: Into, options: Options) -> Gesture:
    """Draw a closed line and make it the outline ("outline"), a new slot ("slot") or the wall of a drawn slot (its id).

    Press for each node. The next edge is `options.kind`, changed on the way by
    the keys s, a, t and c: straight; an arc by its end and a point on it; an
    arc that goes on without a corner; a curve, whose handle is pulled by
    dragging before letting go. A key between the end of an arc and the point on
    it has the edge to that end be another one. Pressing on the first node closes the line,
    Enter or a double click closes it straight. Backspace takes the last node
    back, Esc ends without a trace. Shift keeps level or in line with the last
    node, Alt switches snapping off. What the line takes the place of attracts nothing.

    Mirrored (outline): only one half is drawn; its mirror image follows, and
    reaching the centreline or Enter closes the whole line.

    Typed: a place; a length, an angle or both from the last node; for arcs a
    radius, which a bare number means there.
    """
    snapper = Snapper(layout, options, () if into == "slot" else (into,), shape=True)
    state = _State()
    pointer = yield Shown(layout, readout=say("press where the line begins"), follows=True)
    while True:
        snap = _snapped(snapper, state, pointer, options, into)
        before = replace(state, message="")
        try:
            state = _taken(before, snap, pointer, options)
            path = _finished(state, pointer, options, into)
            if path is not None:
                return _done(layout, into, options, path)
        except GeometryError as error:
            state = replace(before, message=str(error))
        if pointer.kind == "key":  # the pointer stays, and the line that it goes on with is another
            snap = _snapped(snapper, state, pointer, options, into)
        shown = replace(_shown(layout, state, snap, pointer, options, into), back=state.chain is not None,
                        follows=state.chain is None)
        pointer = yield shown.refusing(state.message) if pointer.typed and state.message else shown


def _mirrored(options: Options, into: Into) -> bool:
    return options.mirrored and into == OUTLINE


def _snapped(snapper: Snapper, state: _State, pointer: Pointer, options: Options, into: Into) -> Snap:
    """Where the pointer counts: on the first node to close, on the drawn side when mirrored."""
    chain, mpp = state.chain, pointer.mm_per_pixel
    if chain is None:
        return snapper.point(pointer.at, mpp, pointer.alt, walls=True)
    if chain.edges and state.arc_end is None and v.distance(pointer.at, chain.first) <= POINT_REACH * mpp:
        return Snap(chain.first, say("the first node: closes the line"), guides.ring(chain.first, POINT_REACH * mpp))
    to, axis = constrained(chain.last, pointer.at, pointer.shift)
    own = [(say("node {i} of this line", i=i + 1), p) for i, p in enumerate(chain.points)]
    ahead = chain.edges and options.kind == "straight" and axis is None
    snap = snapper.point(to, mpp, pointer.alt, axis, walls=True, own=own,
                         start=chain.last if options.kind == "straight" else None)
    if v.distance(snap.point, chain.last) <= TOUCH:
        return Snap(chain.last)  # nothing is drawn to the node just set, so it lies level with nothing either
    if ahead and options.snapping and not pointer.alt and snap.words in ("", grid_words(options)):
        way = chain.heading
        ray = on_ray(chain.last, ((way, say("straight on")), (v.left(way), say("square to the edge before"))), to,
                     LINE_REACH * mpp, options.grid)
        if ray is not None:
            snap = Snap(ray.at, ray.words, guides.line(chain.last, ray.at))
    if _mirrored(options, into):
        side = next((p[0] for p in chain.points if abs(p[0]) > TOUCH), 1.0)
        if snap.point[0] * side < 0 or abs(snap.point[0]) <= TOUCH:
            return Snap((0.0, snap.point[1]), say("centreline: closes the line"), snap.marks)
    return snap


def _taken(state: _State, snap: Snap, pointer: Pointer, options: Options) -> _State:
    """The state after one pointer."""
    if pointer.kind == "key":
        return _keyed(state, snap, pointer, options)
    if pointer.kind == "move" or (pointer.kind == "release" and state.pressed is None):
        return state
    if pointer.kind == "release":
        return _let_go(state, pointer)
    if state.chain is None:
        return replace(state, chain=Chain(snap.point), pressed=snap.point if options.kind == "curve" else None)
    if pointer.kind == "double":
        return state
    return _placed(state, snap.point, options)


def _placed(state: _State, at: Vec2, options: Options) -> _State:
    """A press, or a typed place."""
    chain = state.chain
    if state.arc_end is not None:
        return replace(state, chain=chain.with_edge(Arc.through(chain.last, at, state.arc_end)), arc_end=None)
    if options.kind == "arc":
        chain.straight(at)
        return replace(state, arc_end=at)
    if options.kind == "tangent arc":
        return replace(state, chain=chain.with_edge(chain.tangent_arc(at)))
    if options.kind == "curve":
        return replace(state, chain=chain.with_edge(chain.curve(at)), pressed=at)
    return replace(state, chain=chain.with_edge(chain.straight(at)))


def _let_go(state: _State, pointer: Pointer) -> _State:
    """The end of a pull: the handle becomes as long as the pull, the curve arrives by its mirror image."""
    chain, node = state.chain, state.pressed
    pulled = pointer.at if v.distance(pointer.at, node) > 4 * pointer.mm_per_pixel else None
    return replace(state, chain=_pulled(chain, node, pulled), pressed=None)


def _pulled(chain: Chain, node: Vec2, handle: Vec2 | None) -> Chain:
    if handle is None:
        return chain
    if not chain.edges:
        return replace(chain, pulled=handle)
    last = chain.edges[-1]
    if v.distance(last.end, node) > TOUCH:
        return chain
    shorter = replace(chain.shortened(), pulled=last.c0)
    return shorter.with_edge(shorter.curve(node, v.sub(v.scale(node, 2.0), handle)), handle)


def _keyed(state: _State, snap: Snap, pointer: Pointer, options: Options) -> _State:
    if pointer.typed:
        return _typed(state, snap, pointer, options)
    if pointer.key.lower() in KEYS:
        options.kind, end = KEYS[pointer.key.lower()], state.arc_end
        if end is None or options.kind == "arc":
            return state
        return replace(_placed(replace(state, arc_end=None), end, options), pressed=None)
    if pointer.key == "backspace":
        if state.arc_end is not None:
            return replace(state, arc_end=None)
        chain = state.chain.shortened() if state.chain else None
        return _State(chain)
    return state


def _typed(state: _State, snap: Snap, pointer: Pointer, options: Options) -> _State:
    text, unit, chain = pointer.typed, options.unit, state.chain
    if chain is None:
        return replace(state, chain=Chain(typed.placed(text, unit, None, pointer.at)))
    radius = _radius(state, text, options)
    if radius is not None and state.arc_end is not None:
        left = v.cross(v.sub(state.arc_end, chain.last), v.sub(pointer.at, chain.last)) > 0
        return replace(state, chain=chain.with_edge(chain.arc_of_radius(state.arc_end, radius, left)), arc_end=None)
    if radius is not None:
        return replace(state, chain=chain.with_edge(chain.turning(radius, pointer.at)))
    start = chain.last
    state = _placed(state, typed.placed(text, unit, start, snap.point), options)
    return replace(state, pressed=None)


def _radius(state: _State, text: str, options: Options) -> float | None:
    """The radius that was typed: by the word, or by a bare number where an arc wants one."""
    bare = state.arc_end is not None or options.kind == "tangent arc"
    if text.strip().lower().startswith("radius"):
        radius = typed.named(text, options.unit)["radius"]
    elif bare and typed.point(text, options.unit) is None and typed.polar(text, options.unit).keys() == {"length"}:
        radius = typed.polar(text, options.unit)["length"]
    else:
        return None
    if not radius > 0:
        raise GeometryError(say("A radius is above zero."))
    return radius


def _finished(state: _State, pointer: Pointer, options: Options, into: Into) -> Path | None:
    """The whole line when this pointer closed it."""
    chain = state.chain
    if chain is None or not chain.edges or state.arc_end is not None or state.pressed is not None:
        return None
    asked = pointer.kind == "double" or (pointer.kind == "key" and pointer.key == "enter" and not pointer.typed)
    if _mirrored(options, into):
        off = any(abs(p[0]) > TOUCH for p in chain.points)
        return chain.mirrored() if asked or (off and abs(chain.last[0]) <= TOUCH) else None
    if v.distance(chain.last, chain.first) <= TOUCH or asked:
        return chain.closed()
    return None


def _done(layout: Headstock, into: Into, options: Options, path: Path) -> Done:
    if into == OUTLINE:
        return Done(replace_outline(layout, path), say("Draw the outline"), (OUTLINE,))
    if into == "slot":
        made = add_drawn_slot(layout, path)
        ids = new_ids(layout, made)
        x0, _, x1, _ = path.box
        if options.mirrored and abs(x0 + x1) / 2 > ON_CENTRELINE:
            made = mirror_copies(made, ids)
        return Done(made, say("Draw {ids}", ids=ids[0]), new_ids(layout, made))
    return Done(replace_loop(layout, into, path), say("Draw {into}", into=term(into)), (into,))


def _shown(layout: Headstock, state: _State, snap: Snap, pointer: Pointer, options: Options, into: Into) -> Shown:
    style = "outline" if into == OUTLINE else "slot"
    chain, mpp, unit = state.chain, pointer.mm_per_pixel, options.unit
    if chain is None:
        return Shown(layout, snap.marks, state.message or words.place(snap.point, unit, layout.nut), snap.words,
                     takes=words.place_takes(snap.point, layout.nut))
    marks: Drawing = tuple(guides.cross(p, mpp) for p in chain.points)
    drawn = list(chain.edges)
    if state.pressed is not None:
        try:
            chain = _pulled(chain, state.pressed, pointer.at if v.distance(pointer.at, state.pressed) > 4 * mpp
                            else None)
            drawn = list(chain.edges)
        except GeometryError as error:
            return Shown(layout, marks, str(error))
        away = v.sub(v.scale(state.pressed, 2.0), pointer.at)
        marks += (*guides.line(away, pointer.at), *_strokes(drawn, style, options, into))
        return Shown(layout, marks, say("handle {step}", step=words.step(state.pressed, pointer.at, unit)))
    edge, readout = _next_edge(state, snap.point, options, layout.nut)
    marks += (*_strokes([*drawn, *((edge,) if edge else ())], style, options, into), *snap.marks)
    takes = words.next_takes(snap.point, layout.nut) if state.arc_end is None and options.kind != "tangent arc" else (("radius", say("radius")),)
    return Shown(layout, marks, state.message or readout, snap.words, takes=takes)


def _strokes(edges: list[Segment], style: str, options: Options, into: Into) -> Drawing:
    marks = guides.edges(edges, style)
    if edges and _mirrored(options, into):
        marks += guides.edges(list(Path(tuple(edges)).mapped(MIRROR).segments), style)
    return marks


def _next_edge(state: _State, at: Vec2, options: Options, nut: Nut) -> tuple[Segment | None, str]:
    """The edge that would come to the pointer, and its dimensions."""
    chain, unit = state.chain, options.unit
    try:
        if state.arc_end is not None:
            edge: Segment = Arc.through(chain.last, at, state.arc_end)
        elif options.kind == "tangent arc":
            edge = chain.tangent_arc(at)
        elif options.kind == "curve":
            edge = chain.curve(at)
        else:
            edge = chain.straight(at)
    except GeometryError:
        return None, words.place(at, unit, nut)  # nothing to draw yet: the pointer is on the last node or straight behind it
    if isinstance(edge, Arc):
        return edge, say("radius {radius}, length {length}", radius=words.length(edge.radius, unit),
                         length=words.length(edge.length(), unit))
    return edge, words.step(chain.last, at, unit)
