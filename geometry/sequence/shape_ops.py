"""Everything that is not a single trip of a drill: marking, slots, outline, cleaning up."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import groupby

from geometry.checks.words import listed
from geometry.curves.polygons import polygon
from geometry.layout import Headstock, Slot, loop_path, slot_path
from geometry.layout.names import OUTLINE
from geometry.layout.pin_pairs import mirrored
from geometry.routing.depth import LIGHT
from geometry.saying import count, say
from geometry.sequence.drill_ops import same_bore
from geometry.sequence.operation import BENCH, LEVEL, Cut, Kind, Operation, Setup, WasteHoles
from geometry.sequence.plans import Routing
from geometry.sequence.shadows import outline_pins, pin_circle, slot_pins
from geometry.sequence.wishes import Wishes
from geometry.solids.drilling import Drilling, holes, point_length, to_drill
from geometry.solids.slot_area import slot_area
from geometry.strings.square_line import slant_words, square_line
from geometry.terms import term
from geometry.vectors import Vec2


def preparing(layout: Headstock) -> list[Operation]:
    """Template, papers."""
    made = [Operation("template", "template", say("Make the template"), _template_words(layout), BENCH)]
    made.append(Operation("mark", "mark", say("Paste the papers and prick the centres"), marking_words(layout), BENCH))
    return made


def marking_words(layout: Headstock, sawn: bool = False) -> str:
    """How the papers are pasted on a square blank, or on a head that is `sawn` already."""
    from_back = any(d.surface == "back" for hole in to_drill(layout) for d in hole.drillings)
    back = say(", the back paper to centreline and {line} squared round", line=square_line(layout.nut)) if from_back else ""
    words = (say("The head is sawn already: cut the wrap paper along the outline, glue it on the face to centreline and {line}{back}, check it "
                 "with a rule, and prick every centre.", line=square_line(layout.nut), back=back) if sawn else
             say("Paste the wrap paper round face and both square edges{back}, check it with a rule, and prick every "
                 "centre.",
                 back=back))
    return f"{words} {slant_words(layout.nut)}".rstrip()


def _template_words(layout: Headstock) -> str:
    if layout.template.board != "blank" or not layout.to_rout:
        return say("Cut the template to its paper, true its edges, and mark centreline and {line} on both of its sides.",
                   line=square_line(layout.nut))
    words = say("Cut two templates to the paper: openings and pin holes in a board as large as the blank, and another along the "
                "outside line for the outline; true their edges, and mark centreline and {line} on both of their sides.",
                line=square_line(layout.nut))
    return words + (" " + say("Drill the holes of the pins that stand inside the outline through both boards at once.")
                    if outline_pins(layout) else "")


def slot_operations(layout: Headstock, plans: Mapping[str, Routing], wishes: Wishes) -> list[Operation]:
    """For each slot: waste holes and saw where its plan has them, then the router from each side."""
    made: list[Operation] = []
    for slot in layout.to_rout:
        plan = plans[slot.id]
        made += _waste(slot, plan, wishes)
        length = slot_path(slot).length
        made += _routs(layout, slot.id, "rout", plan, length, wishes, slot_pins(layout), _pin_in_the_way(layout, slot))
    return made


def outline_operations(layout: Headstock, plans: Mapping[str, Routing], wishes: Wishes) -> list[Operation]:
    """Saw outside the line, then the router along the template."""
    length = loop_path(layout.outline).length
    inside = outline_pins(layout)
    saw = Operation(
        "cut outline", "cut outline", say("Saw the outline"),
        say("Stick the template to the face on its pins with tape that stays on, and saw {outside} outside the outline.",
            outside=wishes.told(LIGHT)) if len(inside) > 1 else
        say("Stick the template to the face, on centreline and {line}, with tape that stays on, and saw {outside} "
            "outside the outline.",
            line=square_line(layout.nut), outside=wishes.told(LIGHT)),
        Setup("band saw", None, None, "face"), (OUTLINE,), cut=Cut(0.0, layout.blank.thickness), amount=length,
        cautions=(*((say("Stop at the nut line: the neck goes on behind it."),) if layout.blank.behind > 0 else ()),
                  say("Set the guard just above the wood, keep your fingers out of the line of the blade, and take a tight "
                      "curve in several cuts.")))
    plan = plans[OUTLINE]
    if plan.blocked:
        by_hand = Operation(
            "rout outline", "rout outline", say("Finish the outline by hand"),
            say("Clamp the head flat and work the edge square to the line with spokeshave, rasp and file."), BENCH,
            (OUTLINE,), cut=Cut(0.0, layout.blank.thickness), amount=length, cautions=(plan.blocked,))
        return [saw, by_hand]
    return [saw, *_routs(layout, OUTLINE, "rout outline", plan, length, wishes, inside)]


def finishing(layout: Headstock, wishes: Wishes) -> list[Operation]:
    """Clean up; with a finish also the finish, and what tuners sit in cleared of it. What is reamed is so at the very last."""
    left = pins_to_plug(layout)
    plug = count(len(left), ", plug the pin hole {pins}", ", plug the pin holes {pins}", pins=listed(left)) if left else ""
    made = [Operation("clean up", "clean up", say("Clean up"),
                      say("Take off the papers{plug}, pare what the router left, break the edges and sand.",
                          plug=plug), BENCH)]
    if layout.blank.finish:
        made.append(Operation("finish", "finish", say("Finish"), say("Apply the finish and let it harden."), BENCH))
        made += [_cleared(d, wishes) for hole in holes(layout) for d in _fitted(hole.drillings)]
    return made + [_reamed(d, wishes) for hole in to_drill(layout) for d in hole.drillings if d.reamed]


def _fitted(drillings: Sequence[Drilling]) -> list[Drilling]:
    """What a hole holds its tuner in, and no finish may narrow: the counterbore of a pressed-in bushing, else a post bore through the face."""
    fitted = [d for d in drillings if d.role == "counterbore"] or [d for d in drillings if d.role == "post" and d.surface in ("face", "back")]
    return [d for d in fitted if not d.reamed]


def _cleared(d: Drilling, wishes: Wishes) -> Operation:
    """To bring a bore back to its width once the finish is hard."""
    told = wishes.told(d.diameter, 2)
    words = (say("Clear the finish out of the counterbore of {of} by hand until the bushing presses in at {diameter}.", of=d.of, diameter=told)
             if d.role == "counterbore" else
             say("Clear the finish out of the {operation} of {of} by hand until it is {diameter} wide again and its tuner goes in.",
                 operation=term(d.operation), of=d.of, diameter=told))
    return Operation(f"final diameter {d.id}", "final diameter", say("Final diameter {of}", of=d.of), words,
                     Setup("bench", say("reamer {diameter}", diameter=told)), (d.of,), (d,))


def _reamed(d: Drilling, wishes: Wishes) -> Operation:
    """To open a bore for a peg that its taper holds; the last of all, as finish and shape of the head change how it sits."""
    sizes = {"wide": wishes.told(d.reamed, 2), "taper": d.taper, "surface": term(d.surface)}
    return Operation(
        f"final diameter {d.id}", "final diameter", say("Ream {of}", of=d.of),
        say("Ream the {operation} of {of} by hand, from the {surface}, taper 1:{taper:g}, until it is {wide} wide there: a few turns at a time, "
            "in the cutting direction alone, and try the peg often.", operation=term(d.operation), of=d.of, **sizes),
        Setup("bench", say("reamer 1:{taper:g}", taper=d.taper)), (d.of,), (d,))


def pins_to_plug(layout: Headstock) -> list[str]:
    """Pins whose holes stay in the finished head: inside the outline, in no slot and in no later hole."""
    every = [d for hole in to_drill(layout) for d in hole.drillings]
    area = polygon(loop_path(layout.outline))
    openings = [a for slot in layout.slots if slot.through(layout.blank.thickness) and (a := slot_area(slot)) is not None]
    left = []
    for pin in layout.pins:
        round_hole = pin_circle(pin)
        own = next(d for d in every if d.role == "locating" and d.of == pin.id)
        swallowed = same_bore(own, every) or any(holds(d, pin.at, pin.diameter) for d in every if d.role != "locating")
        if area.intersects(round_hole) and not swallowed and not any(o.contains(round_hole) for o in openings):
            left.append(pin.id)
    return left


def holds(d: Drilling, at: Vec2, diameter: float) -> bool:
    """Whether a through bore square to the face takes in the whole of a round hole (mm) at that point."""
    apart = ((d.start[0] - at[0]) ** 2 + (d.start[1] - at[1]) ** 2) ** 0.5
    return d.upright and d.through and apart + diameter / 2 <= d.radius + 1e-6


def _pin_in_the_way(layout: Headstock, slot: Slot) -> str:
    """Why the router cannot work: a pin where the cutter goes; empty when there is none."""
    area = slot_area(slot)
    if area is None:
        return ""  # its plan says that it crosses itself
    inside = [pin.id for pin in layout.pins if area.intersects(pin_circle(pin))]
    return "" if not inside else say("The pin {inside} stands in the way of the cutter that it is to guide: move the pin.",
                                     inside=inside[0])


def _askew(layout: Headstock, used: list[str]) -> str:
    """Why a template turned over on these pins misses its place; empty when it comes back to it."""
    pins = [pin for pin in layout.pins if pin.id in used]
    if mirrored(pins):
        return ""
    return say("Turned over on {used} the template does not come back to its place: they are not mirrored about the "
               "centreline. Move them, or have two pins proposed.",
               used=listed(used))


def _waste(slot: Slot, plan: Routing, wishes: Wishes) -> list[Operation]:
    row = plan.waste
    if row is None:
        return []
    how = say("through, on a spoil board") if row.through else say("{depth} deep", depth=wishes.told_down(row.stop, 2))
    many = count(len(row.centres), "one hole", "{n} holes")
    apart = say(", {spacing} from centre to centre", spacing=wishes.told_down(row.spacing, 2)) if row.spacing else ""
    chop = " " + say("Chop out what stands between them as far as it comes easily.") if row.saw and not row.through else ""
    made = [Operation(
        f"waste holes {slot.id}", "waste holes", say("Waste holes {slot}", slot=slot.id),
        say("Face up: along {slot} drill {many}, {diameter} wide, {how}{apart}.{chop}",
            slot=slot.id, many=many, diameter=wishes.told(row.drill.diameter, 2), how=how,
            apart=apart, chop=chop), Setup("drill press", row.drill.id, LEVEL, "face"), (slot.id,),
        stop=row.stop - point_length(row.drill) if row.through else row.stop,
        waste_holes=WasteHoles(row.centres, row.drill.diameter, row.stop), amount=float(len(row.centres)))]
    if row.through and row.saw:
        made.append(Operation(
            f"saw {slot.id}", "saw", say("Saw out {slot}", slot=slot.id),
            say("Thread the blade through a waste hole and saw out {slot} to within {light} of its line.",
                slot=slot.id, light=wishes.told(LIGHT)),
            Setup("coping saw"), (slot.id,), amount=slot_path(slot).length))
    return made


def _routs(layout: Headstock, feature: str, kind: Kind, plan: Routing, length: float, wishes: Wishes,
           used: list[str], blocked: str = "") -> list[Operation]:
    """One operation for trips that follow each other with one bit from one side; `used` are the pins that its template can use."""
    made: list[Operation] = []
    what = say("the outline", about="what is routed") if feature == OUTLINE else feature
    name = kind if feature == OUTLINE else f"{kind} {feature}"
    thick = layout.blank.thickness
    through = all(slot.through(thick) for slot in layout.slots if slot.id == feature)
    if plan.blocked:
        return [Operation(f"{name} 0", kind, say("Rout {what}", what=what), say("Rout {what} to its line.", what=what), Setup("router", None, None, "face"), (feature,),
                          cut=Cut(0.0, thick), amount=length, blocked=plan.blocked)]
    groups = [list(group) for _, group in groupby(plan.trips, key=lambda p: (p.side, p.bit, p.bush, p.template, p.corners))]
    for number, group in enumerate(groups, 1):
        first, deep = group[0], max(trip.ends for trip in group)
        alone = sum(other[0].side == first.side and not other[0].corners for other in groups) == 1
        bit = first.bit if first.bush is None else say("{bit} in {bush}", bit=first.bit, bush=first.bush)
        guide = (say("the wall already cut guides") if not first.template else
                 say("template on its pins") if len(used) > 1 else
                 say("template on its pin, turned to the marks") if used else say("template laid on the marks"))
        given = {"up": say("Back up") if first.side == "back" else say("Face up"), "guide": guide, "what": what, "bit": bit,
                 "deep": wishes.told(deep, 2) if through else wishes.told_down(deep, 2), "steps": count(len(group), "in one pass", "in {n} passes")}
        words = (say("{up}, {guide}: rout the corners of {what} with {bit} to {deep} {steps}.", **given) if first.corners else
                 say("{up}, {guide}: rout {what} with {bit} to {deep} {steps}.", **given))
        turned = first.side == "back"
        askew = _askew(layout, used) if turned and first.template and used else ""
        begins, ends = (thick - deep, thick - first.begins) if turned else (first.begins, deep)
        cautions = () if len(used) > 1 or not turned or not first.template else (
            say("One pin does not hold the template from turning: add another, so that it comes back to the same place from the other side.")
            if used else
            say("Without pins nothing brings the template back to the same place from the other side: add two."),)
        cautions += tuple(dict.fromkeys(trip.mind for trip in group if trip.mind))
        if plan.at_nut:
            cautions = (plan.at_nut, *cautions)
        made.append(Operation(f"{name} {number}", kind, _rout_title(feature, turned, first.corners, "" if alone else given["deep"]), words,
                              Setup("router", bit, None, first.side), (feature,), cut=Cut(begins, ends, first.corners, first.cutter),
                              amount=length * len(group),
                              template=first.template, cautions=cautions, blocked=blocked or askew))
    return made


def _rout_title(feature: str, turned: bool, corners: bool, deep: str) -> str:
    """`deep` is said where one side is routed in several steps, so that each of them has a title of its own."""
    if feature == OUTLINE:
        title = say("Rout the outline from the back") if turned else say("Rout the outline from the face")
    else:
        title = say("Rout {what} from the back", what=feature) if turned else say("Rout {what} from the face", what=feature)
    if corners:
        return say("{title}, its corners", title=title)
    return say("{title}, to {deep}", title=title, deep=deep) if deep else title
