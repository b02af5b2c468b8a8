"""Rules about ears, template, papers and cleaning up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shapely.geometry import LineString, Point, Polygon

from geometry.layout import Ear, Headstock
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.operation import Operation
from geometry.sequence.shadows import outline_pins, shadow, slot_pins

MARKED = ("pin hole", "counterbore", "bore", "side counterbore", "side bore", "pilot", "waste holes", "ramp", "cut outline")
"""Kinds that go by the papers."""
AFTER_ALL = ("clean up", "finish", "final diameter")


def of_kind(ops: Sequence[Operation], *kinds: str) -> list[Operation]:
    """The operations of some kinds, in their order."""
    return [op for op in ops if op.kind in kinds]


def guided(ops: Sequence[Operation]) -> list[Operation]:
    """The operations in which the router goes by the template."""
    return [op for op in ops if op.template]


def ears_before_marks(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The outer face of an ear is the square edge that carries the marks."""
    for ear in of_kind(ops, "glue ear"):
        for mark in of_kind(ops, "mark"):
            yield Before(ear.id, mark.id,
                         say("The wrap paper folds round the outer face of {feature}: without the ear there is no "
                             "edge to paste it on.",
                             feature=ear.features[0]),
                         say("the square edge of {feature}", feature=ear.features[0]), "impossible", "then")


def ears_before_what_crosses_them(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Drilling, routing and sawing that cross a glue line need the ear on and dry."""
    for ear_op in of_kind(ops, "glue ear"):
        ear = next(e for e in layout.ears if e.id == ear_op.features[0])
        strip = _ear_area(layout, ear)
        for op in ops:
            cut = shadow(layout, op)
            if cut is not None and cut.intersects(strip):
                yield Before(ear_op.id, op.id,
                             say("It runs through {ear} or its glue line: the ear must be on and dry.", ear=ear.id),
                             say("the glue line of {ear}", ear=ear.id), "impossible", "then")


def _ear_area(layout: Headstock, ear: Ear) -> Polygon:
    """The ear in plan with its glue line, 0.01 mm inside its outer border."""
    edge = layout.blank.edge_x(ear.side)
    x = layout.blank.glue_x(ear)
    glue = LineString([(x, ear.start), (x, ear.end)])
    corners = [*glue.coords, (edge, ear.end), (edge, ear.start)]
    return Polygon(corners) if ear.end != ear.start else Point(glue.coords[0]).buffer(0.01)


def template_first(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Pin holes go through template and blank together; the router and the band saw follow it."""
    for template in of_kind(ops, "template"):
        for op in of_kind(ops, "pin hole"):
            yield Before(template.id, op.id,
                         say("Pin holes are drilled through template and blank together: drilled apart they never "
                             "quite meet."),
                         say("the fit of the template on its pins"), "unsafe", "then")
        for op in [*guided(ops), *of_kind(ops, "cut outline")]:
            yield Before(template.id, op.id, say("There is no template to work along."), say("the template"),
                         "impossible", "then")


def marks_before_cuts(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """What goes by a mark needs the mark."""
    for mark in of_kind(ops, "mark"):
        for op in of_kind(ops, *MARKED):
            yield Before(mark.id, op.id, say("There is no mark to work from yet."), say("the pricked centres"),
                         "impossible", "then")
        for op in guided(ops):
            if slot_pins(layout) if op.kind == "rout" else outline_pins(layout):
                continue
            yield Before(mark.id, op.id,
                         say("Without pins the template is laid on the marks."), say("the pricked centres"),
                         "impossible", "then")


def clean_up_last(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Cleaning up takes the papers off and plugs the pin holes."""
    for clean in of_kind(ops, "clean up"):
        for op in ops:
            if op.kind in AFTER_ALL:
                continue
            if op.kind in MARKED or op.kind == "mark":
                yield Before(op.id, clean.id,
                             say("Cleaning up takes the papers off, and their marks with them."),
                             say("the pricked centres"), "impossible", "first")
            elif op.template and layout.pins:
                yield Before(op.id, clean.id,
                             say("Cleaning up plugs the pin holes that bring the template back."), say("the pin holes"),
                             "impossible", "first")
            else:
                yield Before(op.id, clean.id,
                             say("It would scratch and dent what has been sanded already."), say("the sanded surfaces"),
                             "unwise", "then")


def finish_last(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Finish on clean wood, final diameters through the finish."""
    for finish in of_kind(ops, "finish"):
        for op in of_kind(ops, "clean up"):
            yield Before(op.id, finish.id, say("Finish goes on sanded wood."), say("the finish"), "unsafe",
                         "then")
        for op in ops:
            if op.kind not in AFTER_ALL:
                yield Before(op.id, finish.id, say("Tools and clamps mark the finish."), say("the finish"),
                             "unwise", "then")
        for op in of_kind(ops, "final diameter"):
            if op.drillings[0].reamed:
                yield Before(finish.id, op.id, say("Finish builds up in the hole: the peg would no longer go in as far."), say("the fit of the peg"),
                             "unsafe", "first")
                continue
            yield Before(finish.id, op.id,
                         say("Finish builds up in the bore: brought to size before it, the tuner or its bushing no longer goes in "
                             "and chips the finish at the rim."),
                         say("the fit of {tuner}", tuner=op.drillings[0].of), "unsafe", "first")


def reamed_last(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A reamer follows a bore that is drilled, in a head that has its shape."""
    reaming = [op for op in of_kind(ops, "final diameter") if op.drillings[0].reamed]
    drilled = {d.id: op for op in ops if op.kind != "final diameter" for d in op.drillings} if reaming else {}
    for op in reaming:
        yield Before(drilled[op.drillings[0].id].id, op.id, say("The reamer is led by the drilled hole."), say("the reamed hole"), "impossible", "then")
        for clean in of_kind(ops, "clean up"):
            yield Before(clean.id, op.id, say("What is sanded off round the hole changes how far the peg goes in."), say("the fit of the peg"),
                         "unwise", "first")
