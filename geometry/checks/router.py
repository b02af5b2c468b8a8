"""The chosen bit and its follower against every slot, asked of the slot at home: a slot that moves is not asked again."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec import Struct
from msgspec.structs import replace

from geometry.by_size import of_slot, remembered_by_size
from geometry.checks.memo import Memo, together
from geometry.checks.said import length
from geometry.checks.scene import Opening, Scene, opening_of
from geometry.checks.snags import NOTE, SPOILS, TEMPLATE, TIGHT, Snag, short
from geometry.checks.words import both, first, mm, size
from geometry.errors import GeometryError
from geometry.layout import Blank, Headstock, Loop, Node, Rack, Route, Slot, StraightSlot, Template
from geometry.layout.shop import Margins
from geometry.layout.slots import at_home
from geometry.lengths import marking
from geometry.routing.depth import Reach, reach_of
from geometry.routing.depth_of_slot import passes_for
from geometry.routing.fit import enters, narrowest, passes_below, template_spill, wood_left
from geometry.routing.follower import Follower, follower_of
from geometry.routing.passes import Pass, same_offset
from geometry.routing.refusal import Refusal
from geometry.routing.words import in_turn
from geometry.saying import say, within
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

OTHER_BIT = ("bit-too-wide", "bit-too-short", "bit-unguided")
"""Kinds that another bit of the rack may do away with."""
_NO_OUTLINE = Loop(nodes=(Node(at=(0.0, 0.0)), Node(at=(1.0, 0.0)), Node(at=(0.0, 1.0))))
"""A slot is planned without looking at the outline."""


class Work(Struct, frozen=True, eq=False):
    """All that a slot's snags with the bit depend on but the slot."""

    blank: Blank
    rack: Rack
    template: Template
    margins: Margins
    routes: tuple[Route, ...]


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of the template's bit with every slot."""
    layout, memo = scene.layout, scene.memo
    work = memo.of(Work, layout.blank, layout.rack, layout.template, layout.margins, layout.routes)
    return memo.whole(_all, scene.to_rout, work) if scene.to_rout else ()


def _all(memo: Memo, openings: tuple[Opening, ...], work: Work) -> tuple[Snag, ...]:
    chosen = work.template
    bit = next((b for b in work.rack.bits if b.id == chosen.bit), None)
    if bit is None:
        return (Snag("no-bit", NOTE, (TEMPLATE,), (0.0, 0.0, 0.0), None, None,
                     say("No bit is chosen for the template, so its size is unknown."), say("Choose a bit of the rack.")),)
    bush = next((b for b in work.rack.bushes if b.id == chosen.bush), None)
    try:
        with marking(length):
            guide = memo.of(follower_of, bit, bush)
    except GeometryError as error:
        return (Snag("bush-too-narrow", SPOILS, (TEMPLATE,), (0.0, 0.0, 0.0), None, None, str(error),
                     say("Choose another bit or guide bush.")),)
    placed = memo.each(_at_home, openings, work.blank.thickness)
    homes = memo.of(together, *[home for home, _ in placed])
    entering = memo.each(_entering, homes, guide)
    reaching = memo.each(_reaching, homes, guide, work.blank, work.rack, chosen, work.margins)
    return tuple([_brought(_other_bit(snag, home, guide, work) if snag.kind in OTHER_BIT and snag.grade != NOTE else snag, begins)
                  for (home, begins), one, two in zip(placed, entering, reaching, strict=True) for snag in (*one, *two)])


def _at_home(opening: Opening, thickness: float) -> tuple[Opening, Vec2]:
    """(a slot's opening at home, where it begins)."""
    slot, begins = at_home(opening.slot)
    return opening_of(slot, thickness), begins


def _brought(snag: Snag, begins: Vec2) -> Snag:
    """A snag of a slot at home, where the slot stands."""
    x, y, z = snag.where
    return replace(snag, where=(x + begins[0], y + begins[1], z))


def _other_bit(snag: Snag, opening: Opening, guide: Follower, work: Work) -> Snag:
    """The same snag as a note, when another bit of the rack does this slot: on the very same template, or as the maker chose."""
    if snag.kind == "bit-too-wide" and not any(bit.cutter <= snag.measured + TOUCH for bit in work.rack.bits):
        return snag
    passes = _best(opening.slot, work.blank, work.rack, work.template, work.margins, work.routes)
    if passes is None:
        return snag
    names = in_turn(tuple(dict.fromkeys(one.bit for one in passes)))
    if same_offset(passes[0].follower.offset, guide.offset):
        said = say("On the same template {names} does it.", names=names)
        advice = say("Change to {names} there.", names=names)
    elif any(route.of == opening.id for route in work.routes):
        said = say("Your choice {names} does it on another template.", names=names)
        advice = say("Write that template too, for {names}.", names=names)
    else:
        return snag
    return replace(snag, grade=NOTE, said=f"{snag.said} {said}", advice=advice)


def turns_over(opening: Opening, layout: Headstock) -> bool:
    """Whether the best plan for a slot runs along the template from the back too."""
    if opening.crosses:
        return False
    passes = _best(at_home(opening.slot)[0], layout.blank, layout.rack, layout.template, layout.margins, layout.routes)
    return any(one.side == "back" and one.rubs_on != "wall already cut" for one in passes or ())


@remembered_by_size(64, of_slot)
def _best(slot: Slot, blank: Blank, rack: Rack, template: Template, margins: Margins, routes: tuple[Route, ...]) -> tuple[Pass, ...] | None:
    """The passes of the best plan for a slot, remembered by all that it depends on: moving a tuner asks for none anew."""
    from geometry.routing.first_plan import first_of_slot  # here: most layouts have a bit chosen that does, and ask for no plan

    alone = Headstock(name="", blank=blank, outline=_NO_OUTLINE, slots=(slot,), rack=rack, template=template, margins=margins,
                      routes=routes)
    try:
        return first_of_slot(slot, alone)
    except GeometryError:
        return None


def _entering(opening: Opening, guide: Follower) -> tuple[Snag, ...]:
    cutter = guide.bit.cutter
    straight = isinstance(opening.slot.shape, StraightSlot)
    if opening.crosses:
        return ()
    area = opening.wall.area
    places = enters(opening.slot, area, cutter)
    where = area.representative_point()
    if places != 1:
        width = narrowest(opening.slot)
        if width >= cutter:
            width = passes_below(opening.slot, cutter)
        a, b = both(width, cutter)
        text = (say("The {cutter} mm cutter does not enter {opening}, which is {a} mm wide.",
                    cutter=size(cutter), opening=opening.id, a=a) if places == 0 else
                say("The {cutter} mm cutter does not pass the narrowest place of {opening}, which is {a} mm wide.",
                    cutter=size(cutter), opening=opening.id, a=a))
        return (Snag("bit-too-wide", SPOILS, (opening.id, TEMPLATE), (where.x, where.y, 0.0), width, cutter, text,
                     say("Choose a bit of {width} mm or less, or widen {opening} to {b} mm.",
                         width=a, opening=opening.id, b=size(cutter))),)
    if straight:
        return ()
    found = []
    spill = template_spill(area, guide)
    if spill is not None:
        lost, place = spill
        found.append(Snag("template-lost", SPOILS, (opening.id, TEMPLATE), (*place, 0.0), lost, 0.0,
                          say("The template cannot hold a tongue of wood in {opening}: {lost} mm² of it would be cut.",
                              opening=opening.id, lost=mm(lost)),
                          say("Choose a follower nearer the cutter's size, or make the tongue wider."), "mm2"))
    left = wood_left(opening.slot, area, cutter)
    if left is not None:
        at = first(opening.id)
        found.append(Snag("wood-left", TIGHT if left.no_corner(cutter) else NOTE, (opening.id, TEMPLATE), (*left.places[0], 0.0), left.area, 0.0,
                          say("{at} keeps {area} mm² of wood in corners tighter than the {cutter} mm cutter, up to "
                              "{depth} mm deep.",
                              at=at, area=mm(left.area), cutter=size(cutter), depth=mm(left.depth)),
                          say("Pare it by hand, or choose a slimmer bit."), "mm2"))
    return tuple(found)


@remembered_by_size(64, of_slot)
def _from_one_side(slot: Slot, guide: Follower, blank: Blank, rack: Rack, template: Template, margins: Margins) -> bool:
    """Whether a bit does all of a slot without turning the template over; remembered by all that it depends on."""
    made, _ = passes_for(slot, guide, blank, rack, template, margins)
    return not isinstance(made, Refusal) and made[-1].side == made[0].side


def _reaching(opening: Opening, guide: Follower, blank: Blank, rack: Rack, template: Template,
              margins: Margins) -> tuple[Snag, ...]:
    """What the planner says to the template's own bit: through from the face, only turned over, or not at all."""
    slot = opening.slot
    if opening.crosses or _from_one_side(slot, guide, blank, rack, template, margins):
        return ()
    with marking(length):
        made, job = passes_for(slot, guide, blank, rack, template, margins)
    place = opening.wall.area.representative_point()
    where = (place.x, place.y, job.depth)
    bit = say("The {cutter} mm bit", cutter=size(guide.bit.cutter))
    reach = None if guide.bit.bearing == "tip" else reach_of(guide, job)
    if isinstance(reach, Reach) and short(reach.most, job.depth):
        measured = max(0.0, reach.most)
        a, b = both(measured, job.depth)
        said = say("{bit} reaches {a} of {b} mm in {opening}.", bit=bit, a=a, b=b, opening=opening.id)
        if isinstance(made, Refusal):
            return (Snag("bit-too-short", TIGHT, (opening.id, TEMPLATE), where, measured, job.depth, said,
                         say("Choose a longer bit or a thinner template.")),)
        return (Snag("bit-too-short", NOTE, (opening.id, TEMPLATE), where, measured, job.depth, said,
                     say("Turn the template over on its pins and finish from the back, or choose a longer bit.")),)
    if isinstance(made, Refusal):
        return (Snag("bit-unguided", TIGHT, (opening.id, TEMPLATE), where, None, None,
                     say("{bit} does not do {opening}: {reason}",
                         bit=bit, opening=opening.id, reason=within(made.reason)),
                     say("Choose another bit or follower, or another thickness of template.")),)
    return (Snag("bit-unguided", NOTE, (opening.id, TEMPLATE), where, None, None,
                 say("{bit} does {opening} only from both sides: it is not guided at every depth from the face.",
                     bit=bit, opening=opening.id),
                 say("Turn the template over on its pins, or choose another thickness of template.")),)
