"""Everything that is not a single trip of a drill: marking, slots, outline, cleaning up."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import groupby

from geometry.curves.polygons import polygon
from geometry.layout import Headstock, Slot, loop_path, slot_path
from geometry.sequence.drill_ops import same_bore
from geometry.sequence.operation import LEVEL, Cut, Kind, Operation, Setup, WasteHoles
from geometry.sequence.plans import OUTLINE, RoutPlan, plain_outline_plan, plain_slot_plan
from geometry.sequence.shadows import pin_circle, pins_inside
from geometry.sequence.wishes import Wishes
from geometry.solids.drilling import Drilling, holes
from geometry.units import format_length
from geometry.vectors import Vec2

BENCH = Setup("bench")


def preparing(layout: Headstock) -> list[Operation]:
    """Ears, template, papers."""
    made = [Operation(
        f"glue ear {ear.id}", "glue ear", f"Glue {ear.id}",
        f"Glue {ear.id} to the {ear.side} side, let it dry, then plane face, back and edge flush and square.",
        BENCH, (ear.id,)) for ear in layout.ears]
    made.append(Operation(
        "template", "template", "Make the template",
        "Cut the template to its paper, true its edges, and mark centreline and nut line on both of its sides.", BENCH))
    from_back = any(d.surface == "back" for hole in holes(layout) for d in hole.drillings)
    back = ", the back paper to centreline and nut line squared round" if from_back else ""
    made.append(Operation(
        "mark", "mark", "Paste the papers and prick the centres",
        f"Paste the wrap paper round face and both square edges{back}, check it with a rule, and prick every centre.",
        BENCH))
    return made


def slot_operations(layout: Headstock, plans: Mapping[str, RoutPlan], wishes: Wishes) -> list[Operation]:
    """For each slot: waste holes and saw where its plan has them, then the router from each side."""
    made: list[Operation] = []
    for slot in layout.slots:
        plan = plans.get(slot.id) or plain_slot_plan(layout, slot)
        made += _waste(slot, plan, wishes)
        length = slot_path(slot).length
        made += _routs(layout, slot.id, "rout", plan, length, wishes, bool(layout.pins),
                       _pin_in_the_way(layout, slot))
    return made


def outline_operations(layout: Headstock, plans: Mapping[str, RoutPlan], wishes: Wishes) -> list[Operation]:
    """Saw outside the line, then the router along the template."""
    length = loop_path(layout.outline).length
    inside = bool(pins_inside(layout))
    saw = Operation(
        "cut outline", "cut outline", "Saw the outline",
        f"Stick the template to the face{' on its pins' if inside else ', on centreline and nut line,'} with tape that "
        f"stays on, and saw {format_length(2.0, wishes.unit, mark=True)} outside the outline.",
        Setup("band saw", None, None, "face"), (OUTLINE,), cut=Cut(0.0, layout.blank.thickness), amount=length)
    plan = plans.get(OUTLINE) or plain_outline_plan(layout)
    return [saw, *_routs(layout, OUTLINE, "rout outline", plan, length, wishes, inside)]


def finishing(layout: Headstock, wishes: Wishes) -> list[Operation]:
    """Clean up; with a finish also the finish and the final diameter of every bushing bore."""
    left = pins_to_plug(layout)
    plug = f", plug the pin {'hole' if len(left) == 1 else 'holes'} {' and '.join(left)}" if left else ""
    made = [Operation("clean up", "clean up", "Clean up",
                      f"Take off the papers{plug}, pare what the router left, break the edges and sand.", BENCH)]
    if wishes.finish:
        made.append(Operation("finish", "finish", "Finish", "Apply the finish and let it harden.", BENCH))
        made += [Operation(
            f"final diameter {d.id}", "final diameter", f"Final diameter {d.of}",
            f"Clear the finish out of the counterbore of {d.of} by hand until the bushing presses in at "
            f"{format_length(d.diameter, wishes.unit, mark=True)}.",
            Setup("bench", f"reamer {d.diameter:g}"), (d.of,), (d,)) for hole in holes(layout) for d in hole.drillings
            if d.role == "counterbore"]
    return made


def pins_to_plug(layout: Headstock) -> list[str]:
    """Pins whose holes stay in the finished head: inside the outline, in no slot and in no later hole."""
    every = [d for hole in holes(layout) for d in hole.drillings]
    area = polygon(loop_path(layout.outline))
    openings = [polygon(slot_path(slot)) for slot in layout.slots if slot.depth is None]
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
    area = polygon(slot_path(slot))
    inside = [pin.id for pin in layout.pins if area.intersects(pin_circle(pin))]
    return "" if not inside else (f"The pin {inside[0]} stands in the {slot.id}, in the way of the cutter that it is to "
                                  "guide: move the pin.")


def _waste(slot: Slot, plan: RoutPlan, wishes: Wishes) -> list[Operation]:
    row = plan.waste
    if row is None or not row.centres:
        return []
    centres = tuple(row.centres)
    through = slot.depth is None
    how = "through, on a spoil board" if through else f"{format_length(row.depth, wishes.unit, mark=True)} deep"
    made = [Operation(
        f"waste holes {slot.id}", "waste holes", f"Waste holes {slot.id}",
        f"Face up: drill {len(centres)} holes of {format_length(row.diameter, wishes.unit, mark=True)} {how} along the "
        f"{slot.id}.", Setup("drill press", row.drill, LEVEL, "face"), (slot.id,), stop=row.depth,
        waste_holes=WasteHoles(centres, row.diameter, row.depth), amount=float(len(centres)))]
    if through and len(centres) > 1:
        made.append(Operation(
            f"saw {slot.id}", "saw", f"Saw out the {slot.id}",
            f"Thread the blade through a waste hole and saw out the {slot.id}, "
            f"{format_length(1.5, wishes.unit, mark=True)} inside its line.",
            Setup("coping saw"), (slot.id,), amount=slot_path(slot).length))
    return made


def _routs(layout: Headstock, feature: str, kind: Kind, plan: RoutPlan, length: float, wishes: Wishes,
           pinned: bool, blocked: str = "") -> list[Operation]:
    """One operation for passes that follow each other with one bit from one side."""
    made: list[Operation] = []
    what = "the outline" if feature == OUTLINE else f"the {feature}"
    name = kind if feature == OUTLINE else f"{kind} {feature}"
    thick = layout.blank.thickness
    if plan.blocked or not plan.passes:
        trouble = plan.blocked or f"There is no router plan for {what}: choose a bit."
        return [Operation(name, kind, f"Rout {what}", trouble, Setup("router", None, None, "face"),
                          (feature,), cut=Cut(0.0, thick), amount=length, blocked=blocked or trouble)]
    groups = [list(group) for _, group in groupby(plan.passes, key=lambda p: (p.side, p.bit, p.bush))]
    for number, group in enumerate(groups, 1):
        first, last = group[0], group[-1]
        bit = first.bit if first.bush is None else f"{first.bit} in {first.bush}"
        deep = max(p.end for p in group)
        steps = "in one pass" if len(group) == 1 else f"in {len(group)} passes"
        words = (f"{first.side.capitalize()} up, template {'on its pins' if pinned else 'laid on the marks'}: rout {what} "
                 f"with the {bit} to {format_length(deep, wishes.unit, mark=True)} {steps}.")
        turned = first.side == "back"
        cut = Cut(thick - deep, thick - first.start) if turned else Cut(first.start, last.end)
        cautions = () if pinned or not turned else (
            "Without pins nothing brings the template back to the same place from the other side: add two.",)
        made.append(Operation(f"{name} {number}", kind, f"Rout {what} from the {first.side}", words,
                              Setup("router", bit, None, first.side), (feature,), cut=cut,
                              amount=length * len(group), cautions=cautions, blocked=blocked))
    return made
