"""A section across the cut for each pass: template, follower, cutter, wood, and what is cut so far.

x runs across the slot from its middle (for the outline: out of the wood from
the finished edge), y is up from the surface of the wood that is up, mm. The
cutter stands at the left wall and has done its pass there; at the right wall
it is still to come.
"""

from __future__ import annotations

from msgspec import Struct

from geometry.drawing.heights import LEAST
from geometry.drawing.marks import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.shapes import rectangle, straight
from geometry.lengths import deep, mm
from geometry.routing.depth import LIGHT, bearing_height
from geometry.routing.passes import Pass
from geometry.routing.plan import RoutPlan
from geometry.routing.words import with_bush
from geometry.saying import say
from geometry.terms import term

LETTER = LEAST
"""Capital height of the words, mm."""
BESIDE = 14.0
"""Wood and template shown beside the slot, mm."""
BASE = 4.0
"""Thickness that the router's base is drawn with, mm."""
ABOVE = 10.0
"""Shank shown above the base, mm."""


class _Scene(Struct, frozen=True):
    """One pass at its place: sizes in mm, heights above the surface that is up."""

    plan: RoutPlan
    one: Pass
    other: float
    """depth already cut from the side that is down"""

    @property
    def owner(self) -> str:
        return self.plan.of

    @property
    def slot(self) -> bool:
        return self.plan.job.width is not None

    @property
    def left(self) -> float:
        """x of the wall that the cutter stands at."""
        return -self.plan.job.width / 2 if self.slot else 0.0

    @property
    def right(self) -> float:
        """x of the wall across, or where the picture of the outline ends."""
        return -self.left if self.slot else max(self.one.follower.bit.cutter, self.one.follower.diameter) + 4.0

    @property
    def axis(self) -> float:
        return self.left + self.one.follower.bit.cutter / 2

    @property
    def floor(self) -> float:
        """Height where the uncut wood ends below: the seam with the cut from the other side, or a blind slot's floor."""
        job = self.plan.job
        return -(job.thickness - self.other) if job.through else -job.depth

    @property
    def on_top(self) -> bool:
        """Whether the template lies on top."""
        first = self.plan.passes[0]
        return self.one.rubs_on == "template" or (first.rubs_on == "template" and self.one.side == first.side)

    @property
    def rest(self) -> float:
        """Height that the router's base rests at."""
        return self.plan.job.template if self.on_top else 0.0


def pass_picture(plan: RoutPlan, index: int) -> Drawing:
    """The section at pass number `index` of a plan, 0 first. IndexError when there is no such pass."""
    if not 0 <= index < len(plan.passes):
        raise IndexError(f"the plan has {len(plan.passes)} passes, there is no number {index}")
    one = plan.passes[index]
    other = max((p.ends for p in plan.passes[:index] if p.side != one.side), default=0.0)
    scene = _Scene(plan, one, other)
    return tuple(_wood(scene) + _template(scene) + _router(scene) + _words(scene, index))


def _box(scene: _Scene, x0: float, y0: float, x1: float, y1: float, style: str) -> list[Mark]:
    """A rectangle, nothing when it has no size."""
    if x1 - x0 <= 1e-9 or y1 - y0 <= 1e-9:
        return []
    return [Area(rectangle(x0, y0, x1, y1), style, scene.owner)]


def _wood(scene: _Scene) -> list[Mark]:
    """Finished wood, the cuts so far, and what is still to go."""
    job, one = scene.plan.job, scene.one
    under = -job.thickness
    marks = _box(scene, scene.left - BESIDE, under, scene.left, 0.0, "wood")
    if scene.slot:
        marks += _box(scene, scene.right, under, scene.right + BESIDE, 0.0, "wood")
        marks += _box(scene, scene.left, -one.begins, scene.right, 0.0, "slot")
        marks += _box(scene, scene.left, under, scene.right, scene.floor, "slot" if job.through else "wood")
    if one.corners:
        wide = min(scene.plan.corner_wood, one.follower.bit.cutter)
        marks += _box(scene, scene.left, under if job.through else -job.depth, scene.right, 0.0, "slot") if scene.slot else []
        marks += _box(scene, scene.left, scene.floor, scene.left + wide, -one.ends, "waste")
        return marks + (_box(scene, scene.right - wide, scene.floor, scene.right, -one.begins, "waste") if scene.slot else [])
    drilled = scene.plan.waste is not None or not scene.slot
    cutter = min(scene.left + one.follower.bit.cutter, scene.right)
    if drilled and job.light:
        marks += _box(scene, scene.left, scene.floor, scene.left + LIGHT, -one.ends, "waste")
        if scene.slot:
            marks += _box(scene, scene.right - LIGHT, scene.floor, scene.right, -one.begins, "waste")
    else:
        marks += _box(scene, scene.left, scene.floor, cutter, -one.ends, "waste")
        marks += _box(scene, cutter, scene.floor, scene.right, -one.begins, "waste")
    return marks


def _template(scene: _Scene) -> list[Mark]:
    """The template on top or below, its edge one offset from the wall."""
    job, offset = scene.plan.job, scene.plan.offset
    if scene.one.rubs_on == "template below":
        low = -job.thickness - job.template
    elif scene.on_top:
        low = 0.0
    else:
        return []
    marks = _box(scene, scene.left - BESIDE, low, scene.left - offset, low + job.template, "template board")
    if scene.slot:
        marks += _box(scene, scene.right + offset, low, scene.right + BESIDE, low + job.template, "template board")
    return marks


def _router(scene: _Scene) -> list[Mark]:
    """Base, shank, cutter and follower."""
    one, axis, rest = scene.one, scene.axis, scene.rest
    follower, bit = one.follower, one.follower.bit
    tip, top = -one.ends, -one.ends + bit.cutting_length
    end = max(rest + BASE + ABOVE, top + 6.0)
    open_to = _open_to(scene)
    far = max(scene.right + (BESIDE if scene.slot else 6.0), axis + open_to + 6.0)
    marks = _box(scene, _leftmost(scene), rest, axis - open_to, rest + BASE, "router base")
    marks += _box(scene, axis + open_to, rest, far, rest + BASE, "router base")
    marks += _box(scene, axis - bit.shank / 2, top, axis + bit.shank / 2, end, "shank")
    marks += _box(scene, axis - bit.cutter / 2, tip, axis + bit.cutter / 2, top, "cutter")
    half = follower.diameter / 2
    if follower.bush is not None:
        inner, low = follower.bush.inner / 2, rest - follower.bush.length
        marks += _box(scene, axis - half, low, axis - inner, rest + BASE, "follower")
        marks += _box(scene, axis + inner, low, axis + half, rest + BASE, "follower")
    elif bit.bearing == "tip":
        marks += _box(scene, axis - half, tip - bearing_height(bit), axis + half, tip, "follower")
    elif bit.bearing == "shank":
        marks += _box(scene, axis - half, top, axis + half, top + bearing_height(bit), "follower")
    else:
        marks += _box(scene, axis - half, top, axis + half, max(rest, top), "follower")
    marks.append(Stroke(straight((axis, end + 2.0), (axis, _lowest(one) - 1.5)), "axis", scene.owner))
    return marks


def _open_to(scene: _Scene) -> float:
    """Half the opening of the base, mm."""
    follower = scene.one.follower
    return max(follower.bit.cutter, follower.bit.shank, follower.diameter) / 2 + 2.0


def _leftmost(scene: _Scene) -> float:
    """x where wood, template or base begin."""
    return min(scene.left - BESIDE, scene.axis - _open_to(scene) - 6.0)


def _lowest(one: Pass) -> float:
    """Height of the bit's lower end, bearing included."""
    bit = one.follower.bit
    return -one.ends - (bearing_height(bit) if bit.bearing == "tip" else 0.0)


def _words(scene: _Scene, index: int) -> list[Mark]:
    """How deep, how much rubs, and which pass this is."""
    job, one = scene.plan.job, scene.one
    edge = scene.right + (BESIDE if scene.slot else 6.0)
    x = edge + 4.0
    marks: list[Mark] = [Stroke(straight((scene.right, y), (x + 1.0, y)), "dimension", scene.owner)
                         for y in (0.0, -one.ends)]
    named = [(say("wood"), -min(3.0, job.thickness / 2)), (say("base"), scene.rest + BASE / 2)]
    if one.rubs_on == "template below":
        named.append((say("template"), -job.thickness - job.template / 2))
    elif scene.on_top:
        named.append((say("template"), job.template / 2))
    marks += [Label(text, (_leftmost(scene) - 1.5, y - LETTER / 2), LETTER, "note", scene.owner, anchor="right") for text, y in named]
    marks.append(Stroke(straight((x, 0.0), (x, -one.ends)), "dimension", scene.owner))
    marks.append(Label(deep(one.ends, job.through), (x + 1.2, -one.ends / 2 - LETTER / 2), LETTER, "dimension", scene.owner))
    wood = -job.thickness - (job.template if one.rubs_on == "template below" else 0.0)
    below = min(wood, _lowest(one) - 1.5) - 2.0 - LETTER
    what = {"guide bush": say("bush"), "bare shank": say("shank")}.get(one.follower.kind, say("bearing"))
    middle = (scene.left - BESIDE + edge) / 2
    lines = (say("pass {index} of {passes}, {side} up: {bit}",
                 index=index + 1, passes=len(scene.plan.passes), side=term(one.side), bit=with_bush(one.bit, one.bush))
             + (say(", in a corner") if one.corners else ""),
             say("{what} rubs {contact} on the {rubs_on}", what=what, contact=mm(one.contact), rubs_on=term(one.rubs_on)))
    marks += [Label(text, (middle, below - 1.75 * LETTER * row), LETTER, "note", scene.owner, anchor="middle")
              for row, text in enumerate(lines)]
    return marks
