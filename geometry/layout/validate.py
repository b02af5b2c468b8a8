"""What a layout must hold beyond the type of each field: ids that are unique and that exist."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from decimal import Decimal
from operator import attrgetter, is_

from geometry.errors import GeometryError
from geometry.layout.book import Book
from geometry.layout.headstock import Headstock
from geometry.layout.heaps import hold_to_no_heap
from geometry.layout.outline import Loop
from geometry.layout.shop import Rack
from geometry.layout.tuners import EdgePlace, EdgeRun, FreePlace, RowPlace
from geometry.saying import number, say
from geometry.terms import term
from geometry.tracing.plane_map import PlaneMap

LEAST_CORE = 1.0
"""mm of wood between veneers: what is less is no head"""
LEAST_PITCH = 1.0
"""degrees at which a head may be scarfed: with less the joint is longer than any head"""


def validate(layout: Headstock) -> Headstock:
    """The layout itself, or GeometryError with the first thing that does not fit, and its place.

    What was let through last is not looked at again while it is the same object: an edit keeps every part that it does not touch.
    """
    for check, parts_of in _CHECKS:
        parts, known = parts_of(layout), _let_through.get(check)
        if known is None or not all(map(is_, parts, known)):
            check(layout)
            _let_through[check] = parts
    return layout


def _strings(layout: Headstock) -> None:
    strings = {string.id for string in layout.strings}
    for i, tuner in enumerate(layout.tuners):
        if tuner.string is not None and tuner.string not in strings:
            raise GeometryError(say("Tuner {tuner} names the string {string}, which the layout does not have.", tuner=tuner.id, string=tuner.string),
                                f"$.tuners[{i}].string")


def _template(layout: Headstock) -> None:
    bits = {bit.id for bit in layout.rack.bits}
    if layout.template.bit is not None and layout.template.bit not in bits:
        raise GeometryError(say("The template names the bit {bit}, which is not in the rack.", bit=layout.template.bit), "$.template.bit")
    bushes = {bush.id for bush in layout.rack.bushes}
    if layout.template.bush is not None and layout.template.bush not in bushes:
        raise GeometryError(say("The template names the guide bush {bush}, which is not in the rack.", bush=layout.template.bush), "$.template.bush")


def _picture(layout: Headstock) -> None:
    if layout.picture is None:
        return
    place = PlaneMap(layout.picture.place)
    try:
        if not place.sees(layout.picture.width, layout.picture.height):
            raise GeometryError(say("its horizon runs through it"))
        place.inverse()
    except GeometryError as error:
        raise GeometryError(say("The picture behind the drawing cannot be laid where it should: {error}.", error=str(error).rstrip('.')),
                            "$.picture.place") from error


def feature_ids(layout: Headstock) -> list[str]:
    """Ids of everything that a snag can point at: one id names one feature."""
    return [feature.id for group in (layout.ears, layout.slots, layout.tuners, layout.pins, layout.holes)
            for feature in group]


def _features(layout: Headstock) -> None:
    _each_once(feature_ids(layout), lambda: say("ears, slots, tuners, pins and holes"))


def _names(layout: Headstock) -> None:
    _each_once([p.id for p in layout.patterns], lambda: say("patterns"))
    _each_once([r.id for r in layout.rows], lambda: say("rows"))
    _each_once([s.id for s in layout.strings], lambda: say("strings"))
    _each_once([r.of for r in layout.routes], lambda: say("routes"))
    _each_once(layout.order, lambda: say("steps of the running order"))
    validate_rack(layout.rack)


def validate_rack(rack: Rack) -> Rack:
    """The rack itself, or GeometryError when two bits, bushes or drills share an id."""
    _each_once([b.id for b in rack.bits], lambda: say("bits"))
    _each_once([b.id for b in rack.bushes], lambda: say("bushes"))
    _each_once([d.id for d in rack.drills], lambda: say("drills"))
    return rack


MOST_MONEY = Decimal(10) ** 9
FINEST_MONEY = -6
"""Decimal places of a price at most."""


def validate_book(book: Book) -> Book:
    """The job book itself, or GeometryError: every price a plain number, each operation of a piece timed once."""
    for i, price in enumerate(book.prices):
        if not price.each.is_finite() or abs(price.each) > MOST_MONEY or price.each.as_tuple().exponent < FINEST_MONEY:
            raise GeometryError(say("The price of {part} is not an amount of money: write for example 12.50.", part=price.part),
                                f"$.book.prices[{i}].each")
    twice = [key for key, count in Counter((t.piece, t.task.operation) for t in book.times).items() if count > 1]
    if twice:
        raise GeometryError(say("The job book times {operation} of the {piece} piece more than once: keep one.",
                                operation=twice[0][1], piece=term(twice[0][0])), "$.book.times")
    return book


def _each_once(ids: Sequence[str], where: Callable[[], str]) -> None:
    if len(set(ids)) < len(ids):
        twice = next(id for id, count in Counter(ids).items() if count > 1)
        raise GeometryError(say("The name {id} is used more than once among the {where}: give each its own.", id=twice, where=where()))


def _patterns(layout: Headstock) -> None:
    for i, pattern in enumerate(layout.patterns):
        for k, bore in enumerate(pattern.bores):
            place = f"$.patterns[{i}].bores[{k}]"
            if bore.reamed is not None and bore.reamed < bore.diameter:
                raise GeometryError(say("Pattern {pattern} has a bore that is reamed to less than it is drilled.", pattern=pattern.id), place)
            if (bore.surface == "seat") == (pattern.mount == "side") and (bore.depth is not None or bore.surface != "seat"):
                continue
            if pattern.mount == "side" and bore.surface != "seat":
                raise GeometryError(say("Pattern {pattern} mounts through the side, so its bores start at the seat, "
                                        "not at the {surface}.",
                                        pattern=pattern.id, surface=term(bore.surface)), place)
            if pattern.mount == "face" and bore.surface == "seat":
                raise GeometryError(say("Pattern {pattern} mounts through the face, so its bores start at the face or "
                                        "the back, not at a seat.",
                                        pattern=pattern.id), place)
            if bore.surface == "seat" and bore.depth is None:
                raise GeometryError(say("Pattern {pattern} has a bore from the side without a depth.", pattern=pattern.id), place)


def _tuners(layout: Headstock) -> None:
    patterns = {pattern.id: pattern for pattern in layout.patterns}
    rows = {row.id: row for row in layout.rows}
    for i, tuner in enumerate(layout.tuners):
        place = f"$.tuners[{i}]"
        pattern = patterns.get(tuner.pattern)
        if pattern is None:
            raise GeometryError(say("Tuner {tuner} names the pattern {pattern}, which the layout does not have.",
                                    tuner=tuner.id, pattern=tuner.pattern), place)
        if isinstance(tuner.place, RowPlace):
            row = rows.get(tuner.place.row)
            if row is None:
                raise GeometryError(say("Tuner {tuner} stands in the row {row}, which the layout does not have.",
                                        tuner=tuner.id, row=tuner.place.row), place)
            if pattern.mount == "side" and not (isinstance(row.run, EdgeRun) and row.run.inset == 0):
                raise GeometryError(say("Tuner {tuner} mounts through the side, so its row must follow an edge, "
                                        "with no inset.", tuner=tuner.id), place)
        elif pattern.mount == "side" and not isinstance(tuner.place, EdgePlace):
            raise GeometryError(say("Tuner {tuner} mounts through the side, so its place is on an edge.", tuner=tuner.id), place)
        elif pattern.mount == "face" and not isinstance(tuner.place, FreePlace):
            raise GeometryError(say("Tuner {tuner} mounts through the face, so its place is a point or a row.", tuner=tuner.id), place)


def _pockets(layout: Headstock) -> None:
    for i, slot in enumerate(layout.slots):
        if slot.there and slot.ramp is not None:
            raise GeometryError(say("{slot} is there already and nothing is cut for it, so it has no ramp.", slot=slot.id), f"$.slots[{i}].ramp")


def _plugged(layout: Headstock) -> None:
    for i, hole in enumerate(layout.holes):
        if hole.plugged and (not hole.there or hole.retainer is not None):
            raise GeometryError(say("{hole} is plugged first, so it is one that is there already and carries no string retainer.",
                                    hole=hole.id), f"$.holes[{i}].plugged")


def _glued_up(layout: Headstock) -> None:
    blank = layout.blank
    if blank.veneers and blank.core < LEAST_CORE:
        raise GeometryError(say("The veneers leave less than {least} mm of wood between them: the thickness is measured from face "
                                "to back, veneers and all.", least=number(LEAST_CORE, "g")), "$.blank.thickness")
    if blank.scarf is not None and layout.nut.pitch < LEAST_PITCH:
        raise GeometryError(say("A scarf joint runs through the wood at the pitch of the head: that is {pitch} degrees here, and has to be {least} "
                                "or more.", pitch=number(layout.nut.pitch, "g"), least=number(LEAST_PITCH, "g")), "$.blank.scarf")


def _loops(layout: Headstock) -> None:
    from geometry.layout.outline import loop_path
    from geometry.layout.slots import slot_path
    _loop("$.outline", lambda: loop_path(layout.outline), layout.outline)
    for i, slot in enumerate(layout.slots):
        _loop(f"$.slots[{i}]", lambda slot=slot: slot_path(slot), getattr(slot.shape, "loop", None), of_slot=True)


def _loop(where: str, make: Callable[[], object], loop: Loop | None, of_slot: bool = False) -> None:
    """GeometryError with its place for a line of which no path can be made, or too long a one."""
    from geometry.layout.outline import hold_to_a_length, hold_to_few_corners, hold_to_few_crossings
    try:
        make()
        if loop is not None:
            hold_to_a_length(loop)
            hold_to_few_crossings(loop)
            if of_slot:
                hold_to_few_corners(loop)
    except GeometryError as error:
        error.place = where
        raise


def _book(layout: Headstock) -> None:
    from geometry.layout.slots import shape_path
    validate_book(layout.book)
    book = layout.book
    for where, one in (*((f"done[{i}]", one) for i, one in enumerate(book.done)), *((f"times[{i}]", one) for i, one in enumerate(book.times)), ("clock", book.clock)):
        if one is not None and one.cut is not None:
            _loop(f"$.book.{where}.cut", lambda shape=one.cut.shape: shape_path(shape), getattr(one.cut.shape, "loop", None))


_CHECKS: tuple[tuple[Callable[[Headstock], None], Callable[[Headstock], tuple]], ...] = (
    (_features, attrgetter("ears", "slots", "tuners", "pins", "holes")),
    (_names, attrgetter("patterns", "rows", "strings", "routes", "order", "rack")),
    (hold_to_no_heap, attrgetter("tuners", "slots", "pins", "holes", "patterns", "rows", "margins")),
    (_patterns, lambda layout: (layout.patterns,)),
    (_tuners, attrgetter("tuners", "patterns", "rows")),
    (_plugged, lambda layout: (layout.holes,)),
    (_glued_up, attrgetter("blank", "nut")),
    (_loops, attrgetter("outline", "slots")),
    (_pockets, lambda layout: (layout.slots,)),
    (_picture, lambda layout: (layout.picture,)),
    (_book, lambda layout: (layout.book,)),
    (_strings, attrgetter("strings", "tuners")),
    (_template, attrgetter("rack", "template")),
)
"""Each check of a layout, in the order in which they are told, with the fields that it reads."""
_let_through: dict[Callable[[Headstock], None], tuple] = {}
"""The fields that each of these let through last."""
