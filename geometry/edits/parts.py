"""What every edit shares: finding things by name, and refusing numbers out of range."""

from __future__ import annotations

import math
import re
from typing import TypeVar

import msgspec

from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Headstock, Loop, Node, SingleHole, Slot, feature_ids, validate
from geometry.layout.edges import edges
from geometry.layout.names import OUTLINE, RESERVED
from geometry.layout.parts import Part
from geometry.lengths import mm
from geometry.saying import number, say
from geometry.terms import field, term
from geometry.vectors import Vec2

FEATURE_GROUPS = ("ears", "slots", "tuners", "pins", "holes")
"""Fields of a layout that hold features: one id names one feature among all of them."""

ANGLES = ("pitch", "slant", "turn", "heading", "skate angle", "point angle", "tilt")
"""Fields of a layout and its shop that are in degrees, as `sentence` names them."""

Some = TypeVar("Some", bound=Part)


def checked(part: Some, about: str = "") -> Some:
    """The same record, after its numbers and words were held against the limits of their fields.

    `about` names it in the message, for example "Slot bass slot".
    """
    try:
        msgspec.convert(msgspec.to_builtins(part), type(part))
    except msgspec.ValidationError as error:
        raise GeometryError(sentence(error, about)) from error
    return part


def settled(layout: Headstock) -> Headstock:
    """The layout itself when its names fit together and its outline has two edges, else GeometryError."""
    edges(layout.outline)
    return validate(layout)


def point(p: Vec2) -> Vec2:
    """A point as two floats; GeometryError unless both are finite."""
    x, y = float(p[0]), float(p[1])
    if not (math.isfinite(x) and math.isfinite(y)):
        raise GeometryError(say("A place needs two finite numbers, x and y in mm."))
    return (x, y)


def group_of(layout: Headstock, id: str) -> str:
    """The field that holds the feature of that id; GeometryError when there is none."""
    return _found(layout, id)[0]


def feature(layout: Headstock, id: str) -> Part:
    """The ear, slot, tuner, pin or single hole of that id; GeometryError when there is none."""
    return _found(layout, id)[1]


def _found(layout: Headstock, id: str) -> tuple[str, Part]:
    for group in FEATURE_GROUPS:
        for one in getattr(layout, group):
            if one.id == id:
                return group, one
    if id in RESERVED:
        raise GeometryError(say("This can be done with ears, slots, tuners, pins and holes, but not with the {thing}.", thing=term(id)))
    raise GeometryError(say("The layout has no feature named {id}.", id=id))


def slot_of(layout: Headstock, id: str) -> Slot:
    """The slot of that id; GeometryError when there is none."""
    found = feature(layout, id)
    if not isinstance(found, Slot):
        raise GeometryError(say("{id} is no slot.", id=id))
    return found


def hole_of(layout: Headstock, id: str) -> SingleHole:
    """The single hole of that id; GeometryError when there is none."""
    found = feature(layout, id)
    if not isinstance(found, SingleHole):
        raise GeometryError(say("{id} is no single hole.", id=id))
    return found


def with_feature(layout: Headstock, new: Part) -> Headstock:
    """The layout with the feature of that name replaced, checked and validated."""
    return settled(put(layout, group_of(layout, new.id), checked(new, new.id)))


def put(layout: Headstock, group: str, new: Part) -> Headstock:
    """The layout with the member of that name of a tuple field replaced, nothing checked."""
    return msgspec.structs.replace(layout, **{group: tuple(new if one.id == new.id else one for one in getattr(layout, group))})


def appended(layout: Headstock, group: str, *new: Part) -> Headstock:
    """The layout with checked members added at the end of a tuple field, validated."""
    for part in new:
        checked(part, getattr(part, "id", ""))
    return settled(msgspec.structs.replace(layout, **{group: (*getattr(layout, group), *new)}))


def loop_at(layout: Headstock, ref: str) -> Loop:
    """The loop that `ref` names: "outline", or the id of a drawn slot."""
    if ref == OUTLINE:
        return layout.outline
    slot = next((slot for slot in layout.slots if slot.id == ref), None)
    if slot is None:
        raise GeometryError(say("The layout has no slot named {ref}.", ref=ref))
    if not isinstance(slot.shape, DrawnSlot):
        raise GeometryError(say("Slot {ref} has straight walls and no nodes: shape its wall freely first.",
                                ref=ref))
    return slot.shape.loop


def shaped_loop(layout: Headstock, id: str) -> Loop | None:
    """The loop of nodes of the outline or of a drawn slot, None for anything else."""
    if id == OUTLINE:
        return layout.outline
    return next((s.shape.loop for s in layout.slots if s.id == id and isinstance(s.shape, DrawnSlot)), None)


def with_loop(layout: Headstock, ref: str, nodes: list[Node] | tuple[Node, ...]) -> Headstock:
    """The layout with new nodes for the loop that `ref` names, checked and validated."""
    loop = checked(Loop(nodes=tuple(nodes)), say("The outline") if ref == OUTLINE else say("Slot {ref}", ref=ref))
    if ref == OUTLINE:
        return settled(msgspec.structs.replace(layout, outline=loop))
    return settled(put(layout, "slots", msgspec.structs.replace(feature(layout, ref), shape=DrawnSlot(loop=loop))))


def new_ids(before: Headstock, after: Headstock) -> tuple[str, ...]:
    """Ids of the features that `after` has and `before` has not, in their order."""
    old = set(feature_ids(before))
    return tuple(id for id in feature_ids(after) if id not in old)


def _bound(name: str, value: float) -> str:
    """A limit of a field with its sign: mm, degrees, or a bare number where it counts something."""
    if abs(value) == 5000 or value and name in ("diameter", "core"):
        return mm(value)
    return number(value, "g") + ("°" if name in ANGLES else "")


def sentence(error: msgspec.ValidationError, about: str = "") -> str:
    """One sentence for the maker from a refused value."""
    text = str(error)
    message, _, path = text.partition(" - at `")
    names = [name for name in re.findall(r"\.([A-Za-z]\w*)", path) if name not in ("nodes", "shape", "loop", "place")]
    name = names[-1].replace("_", " ") if names else "value"
    called = field(names[-1] if names else "value")
    head = f"{about[0].upper() + about[1:]}: {called}" if about else called[0].upper() + called[1:]
    limit = re.search(r"(<=|>=|<|>) (-?[\d.]+)$", message)
    if "matching regex" in message and "/" in message:
        return say("{head} begins with a letter or a digit and holds only letters, digits, spaces and _ . - / signs.",
                   head=head)
    if "matching regex" in message:
        return say("{head} begins with a letter or a digit and holds only letters, digits, spaces and _ . - signs.",
                   head=head)
    if "`str`" in message and limit:
        return say("{head} has at most {n} letters.", head=head, n=int(limit[2])) if limit[1] == "<=" else say("{head} needs a word.", head=head)
    if path.endswith("nodes`") and limit:
        line = about[0].upper() + about[1:] if about else say("A line")
        return (say("{line} has more than {n:,} nodes: draw it with fewer.", line=line, n=int(limit[2])) if limit[1] == "<=" else
                say("{line} needs at least {n} nodes.", line=line, n=int(limit[2])))
    if limit and "`array`" not in message:
        bound = _bound(name, float(limit[2]))
        return {"<=": say("{head} must be at most {number}.", head=head, number=bound),
                ">=": say("{head} must be at least {number}.", head=head, number=bound),
                "<": say("{head} must be below {number}.", head=head, number=bound),
                ">": say("{head} must be above {number}.", head=head, number=bound)}[limit[1]]
    type_name = re.match(r"Expected `(\w+)", message)
    kind = {"float": say("{head} must be a number.", head=head), "int": say("{head} must be a whole number.", head=head),
            "str": say("{head} must be words.", head=head), "bool": say("{head} must be yes or no.", head=head)}
    if type_name and type_name[1] in kind:
        return kind[type_name[1]]
    from geometry.wanted import wanted

    return f"{head}: {wanted(message)}."
