"""Random layouts and random edits, each a valid layout."""

from pathlib import Path

from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.edits import (
    along_edge,
    free_from_row,
    move_features,
    set_field,
    set_row_spacing,
    set_slot_width,
    set_turn,
    slide_tuner,
)
from geometry.errors import GeometryError
from geometry.layout import (
    Ear,
    EdgePlace,
    FreePlace,
    Headstock,
    Margins,
    Pin,
    RowPlace,
    SingleHole,
    Slot,
    StraightSlot,
    Tuner,
    validate,
)

SAMPLES = sorted((Path(__file__).parents[2] / "samples").glob("*.headstock.json"))
DEMO = read(next(path for path in SAMPLES if path.name.startswith("twelve-string-mixed")))

_far = st.floats(-12.0, 12.0)
_steps = st.tuples(_far, _far)
_near = st.floats(-8.0, 8.0)


def _feature(draw, layout):
    groups = (layout.slots, layout.tuners, layout.pins, layout.holes)
    ids = [one.id for group in groups for one in group]
    return draw(st.sampled_from(ids)) if ids else None


@st.composite
def edited(draw, layout: Headstock) -> Headstock:
    """One random edit of a layout; the layout itself where the edit has no meaning."""
    try:
        return validate(draw(st.sampled_from(EDITS))(draw, layout))
    except GeometryError:
        return layout


def _move(draw, layout):
    id = _feature(draw, layout)
    return layout if id is None else move_features(layout, [id], draw(_steps))


def _slide(draw, layout):
    sides = [t.id for t in layout.tuners if along_edge(layout, t.id) is not None]
    return slide_tuner(layout, draw(st.sampled_from(sides)), draw(st.floats(0.0, 190.0))) if sides else layout


def _free(draw, layout):
    rows = [t.id for t in layout.tuners if isinstance(t.place, RowPlace)]
    return free_from_row(layout, draw(st.sampled_from(rows))) if rows else layout


def _node(draw, layout):
    i = draw(st.integers(0, len(layout.outline.nodes) - 1))
    dx, dy = draw(_steps)
    nodes = list(layout.outline.nodes)
    nodes[i] = replace(nodes[i], at=(nodes[i].at[0] + dx / 3, nodes[i].at[1] + dy / 3))
    return replace(layout, outline=replace(layout.outline, nodes=tuple(nodes)))


_veneers = st.just(0.0) | st.floats(0.3, 2.5)


def _margins(draw, layout):
    return replace(layout, margins=Margins(bore_bore=draw(st.floats(0, 12)), bore_slot=draw(st.floats(0, 12)),
                                           rail=draw(st.floats(0, 30)), button_gap=draw(st.floats(0, 20))))


def _thickness(draw, layout):
    return replace(layout, blank=replace(layout.blank, thickness=draw(st.floats(6, 30)), face_veneer=draw(_veneers), back_veneer=draw(_veneers),
                                         scarf=draw(st.none() | st.floats(0, 250))))


def _remove(draw, layout):
    kept = draw(st.integers(0, max(0, len(layout.tuners) - 1)))
    return replace(layout, tuners=layout.tuners[:kept] + layout.tuners[kept + 1:])


def _add(draw, layout):
    taken = {one.id for group in (layout.ears, layout.slots, layout.tuners, layout.pins, layout.holes) for one in group}
    id = next(f"new {n}" for n in range(1000) if f"new {n}" not in taken)
    # Off the centreline: a button there may turn to either side.
    at = (draw(st.floats(1, 60)) * draw(st.sampled_from([-1, 1])), draw(st.floats(-30, 220)))
    what = draw(st.sampled_from(["pin", "hole", "slot", "tuner"]))
    if what == "pin":
        return replace(layout, pins=(*layout.pins, Pin(id=id, at=at, diameter=draw(st.floats(1, 12)))))
    if what == "hole":
        hole = SingleHole(id=id, at=at, diameter=draw(st.floats(1, 30)), depth=draw(st.none() | st.floats(1, 40)))
        return replace(layout, holes=(*layout.holes, hole))
    if what == "slot":
        shape = StraightSlot(nut_end=at, tip_end=(at[0] + draw(_far), at[1] + draw(st.floats(0, 90))),
                             width=draw(st.floats(3, 25)))
        depth = draw(st.none() | st.floats(2, 15))
        return replace(layout, slots=(*layout.slots, Slot(id=id, shape=shape, depth=depth)))
    pattern = draw(st.sampled_from(layout.patterns))
    place = (FreePlace(at=at, turn=draw(st.none() | st.floats(-180, 180))) if pattern.mount == "face" else
             EdgePlace(side=draw(st.sampled_from(["bass", "treble"])), along=draw(st.floats(0, 190)),
                       depth=draw(st.none() | st.floats(1, 15))))
    return replace(layout, tuners=(*layout.tuners, Tuner(id=id, pattern=pattern.id, place=place)))


def _pattern(draw, layout):
    i = draw(st.integers(0, len(layout.patterns) - 1))
    old = layout.patterns[i]
    k = draw(st.integers(0, len(old.bores) - 1))
    bores = list(old.bores)
    bores[k] = replace(bores[k], diameter=draw(st.floats(0.5, 16)))
    patterns = list(layout.patterns)
    patterns[i] = replace(old, bores=tuple(bores), seat=replace(old.seat, before=draw(st.floats(1, 20))))
    return replace(layout, patterns=tuple(patterns))


def _bit(draw, layout):
    chosen = draw(st.none() | st.sampled_from([bit.id for bit in layout.rack.bits]))
    return replace(layout, template=replace(layout.template, bit=chosen))


def _slot_numbers(draw, layout):
    straight = [slot.id for slot in layout.slots if isinstance(slot.shape, StraightSlot)]
    if not straight:
        return layout
    id = draw(st.sampled_from(straight))
    if draw(st.booleans()):
        return set_slot_width(layout, id, draw(st.floats(4, 22)))
    return set_field(layout, ("slots", id, "depth"), draw(st.none() | st.floats(2, 14)))


def _ear(draw, layout):
    ear = Ear(id="ear", side=draw(st.sampled_from(["bass", "treble"])), width=draw(st.floats(2, 30)),
              start=draw(st.floats(0, 60)), end=draw(st.floats(70, 190)))
    return replace(layout, ears=() if layout.ears and draw(st.booleans()) else (ear,))


def _spacing(draw, layout):
    rows = [row.id for row in layout.rows]
    return set_row_spacing(layout, draw(st.sampled_from(rows)), draw(st.floats(8, 60))) if rows else layout


def _directions(draw, layout):
    faces = [t.id for t in layout.tuners if layout.pattern(t.pattern).mount == "face"]
    return set_turn(layout, draw(st.sampled_from(faces)), draw(st.none() | st.floats(-180, 180))) if faces else layout


EDITS = (_move, _move, _move, _slide, _free, _node, _margins, _thickness, _remove, _add, _pattern, _bit, _slot_numbers,
         _ear, _spacing, _directions)


@st.composite
def displaced(draw, layout: Headstock) -> Headstock:
    """A layout of which one to three features stand up to 8 mm off their place; members of a row leave it."""
    for _ in range(draw(st.integers(1, 3))):
        id = _feature(draw, layout)
        if any(tuner.id == id and isinstance(tuner.place, RowPlace) for tuner in layout.tuners):
            layout = free_from_row(layout, id)
        layout = move_features(layout, [id], (draw(_near), draw(_near)))
    return layout
