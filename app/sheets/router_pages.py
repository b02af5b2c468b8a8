"""Router cards: for each slot and the outline the bit, the template, every pass with its section, and the waste holes."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace
from shapely.geometry.base import BaseGeometry

from app.formats.letters import text_width
from app.formats.mark_shapes import drawing_box, mapped
from app.formats.paper import Placed
from app.sheets.lay import BAND, TICKED, Block, drawing, of_marks, paragraph, space, tick, title_band, together
from app.sheets.lengths import card_number, length
from app.sheets.words import block, numbers
from app.sheets.work import SAME_OFFSET, Work
from geometry import vectors as v
from geometry.checks.words import listed
from geometry.curves import LYING, Matrix, shift
from geometry.curves.polygons import polygon
from geometry.drawing import Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.cards import scale_words
from geometry.drawing.grain import grain_marks
from geometry.drawing.heights import LEAST, READ
from geometry.drawing.room import Room
from geometry.drawing.router_marks import plan_marks
from geometry.drawing.router_picture import pass_picture
from geometry.drawing.shapes import straight
from geometry.errors import GeometryError
from geometry.layout import Headstock, Nut, Slot, loop_path, slot_path
from geometry.layout.names import OUTLINE
from geometry.routing import RoutPlan, SlotPlan, Waste
from geometry.routing.grain import GrainRisk, grain_risks
from geometry.routing.refusal import Refusal
from geometry.routing.words import with_bush
from geometry.saying import number_list, say
from geometry.sequence import Operation
from geometry.strings.square_line import base_words, square_line
from geometry.terms import term
from geometry.vectors import Box

ROUTS = ("rout", "rout outline")
"""Kinds of the steps that make the passes of a plan."""
GRAIN = 120.0
"""Room for the picture of the head with its grain, mm; words stand beside it."""
BETWEEN = 5.0
"""White between two pictures, mm."""
SEEN = 0.02
"""By how much two pictures of slots may differ and be the same one, mm."""
NAMED = 4.0
"""Room round the head with its grain for the numbers of its stretches, mm."""


def router_blocks(layout: Headstock, work: Work, first: int, width: float) -> list[Block]:
    """Cards in the order of the slots, then the outline, numbered from `first`; each tries to stay on one page.

    Slots that are cut alike share a card.
    """
    blocks: list[Block] = []
    for i, plans in enumerate(alike(work.plans)):
        number = f"{card_number(first + i)}, {work.plan_words}"
        done = work.mark(*(op.id for plan in plans for op in routed(work, plan.of))) == "done"
        blocks += _card(layout, work, plans, say("{card}, done", card=number) if done else number, width)
    return blocks


def alike(plans: Sequence[SlotPlan]) -> list[list[SlotPlan]]:
    """Plans in their order; those whose every sentence is the same but for the slot's name come together."""
    groups: dict[tuple, list[SlotPlan]] = {}
    for plan in plans:
        best = plan.best
        key = (plan.of,) if best is None else (plan.of == OUTLINE, *(_named(text, plan.of, "") for text in best.steps), *best.cautions)
        groups.setdefault(key, []).append(plan)
    return list(groups.values())


def routed(work: Work, of: str) -> list[Operation]:
    """The steps that a router card is of, for a slot or the outline, in the order of the work."""
    kinds = ("cut outline", "rout outline") if of == OUTLINE else ("waste holes", "saw", "rout", "ramp")
    return [op for op in work.steps if op.kind in kinds and op.features[0] == of]


def _named(text: str, of: str, name: str) -> str:
    """The sentence on the waste holes with another name for the slot."""
    return text.replace(f"{of}:", f"{name}:", 1)


def _card(layout: Headstock, work: Work, plans: list[SlotPlan], number: str, width: float) -> list[Block]:
    plan = plans[0]
    title = say("Rout the outline") if plan.of == OUTLINE else say("Rout {slots}", slots=say(", then ").join(
        one.of for one in plans))
    blocks = [_band(title, number, width), *_numbers(work, [one.of for one in plans], width)]
    best = plan.best
    if best is None:
        blocks.append(paragraph(plan.words, width))
    else:
        blocks += [_template(work, best, width),
                   *(paragraph(say("Mind: {text}", text=text), width) for text in (*_harms(work, [one.of for one in plans]), *best.cautions, *_cannot(work, [one.of for one in plans]))),
                   *_steps(work, best, [one.of for one in plans], width), *_pictures(best, width)]
    if plan.of != OUTLINE:
        blocks += [block for lying in lying_alike(layout, plans) for block in _holes(layout, lying, width)]
        if slanted := base_words(layout.nut):
            blocks.append(paragraph(slanted, width))
        blocks += [paragraph(say("Afterwards, by hand: {words}",
                                 words=op.words), width) for one in plans for op in work.ops
                   if op.kind == "ramp" and op.features[0] == one.of]
    elif best is not None:
        blocks += _grain(layout, best, width)
    head = _band(say("{title} (continued)", title=title), number, width)
    return [blocks[0], *(replace(one, head=head.placed, head_height=head.height) for one in together(blocks)[1:]), space(5.0)]


def _band(title: str, number: str, width: float) -> Block:
    return of_marks(title_band(title, number, width), BAND + 2.2, keep=True)


def _numbers(work: Work, of: list[str], width: float) -> list[Block]:
    """Which steps of the running order the card is for, slot by slot, and whose the boxes to tick are."""
    steps = {one: [work.number[op.id] for op in routed(work, one)] for one in of}
    said = [say("Steps {steps}.", steps=numbers(found)) if len(of) == 1 else say("{slot}: steps {steps}.", slot=one, steps=numbers(found))
            for one, found in steps.items() if len(found) > 1]
    said += [say("Step {step}.", step=found[0]) if len(of) == 1 else say("{slot}: step {step}.", slot=one, step=found[0])
             for one, found in steps.items() if len(found) == 1]
    if said and len(of) > 1:
        said.append(say("Boxes from the left: {slots}.", slots=", ".join(of)))
    return [paragraph(" ".join(said), width, keep=True)] if said else []


def _harms(work: Work, of: Sequence[str]) -> list[str]:
    """What is wrong with steps of these where they stand, or by what is done; each names its step."""
    return list(dict.fromkeys(text for one in of for op in routed(work, one) for text in work.harms(op)))


def _cannot(work: Work, of: Sequence[str]) -> list[str]:
    """Why steps of these cannot be done, each reason once; with the names of those it holds of, unless it holds of all."""
    found: dict[str, list[str]] = {}
    for one in of:
        for text in dict.fromkeys(filter(None, map(work.blocked, routed(work, one)))):
            found.setdefault(text, []).append(one)
    return [text if len(held) == len(of) else f"{listed(held)}: {text}" for text, held in found.items()]


def _template(work: Work, best: RoutPlan, width: float) -> Block:
    """What template this plan runs on, and whether it is the printed one."""
    text = best.template_words
    printed = work.template.offset
    if printed is None:
        text += " " + say("No template lines are printed: choose this plan's bit for the template first.")
    elif abs(printed - best.offset) > SAME_OFFSET:
        one = best.passes[0].follower
        tool = with_bush(one.bit.id, None if one.bush is None else one.bush.id)
        text += " " + say("The printed template is another: choose {tool} for the template and print it again, or none of "
                    "this fits.",
                    tool=tool)
    return paragraph(text, width, keep=True)


def _steps(work: Work, best: RoutPlan, of: list[str], width: float) -> list[Block]:
    """Every sentence with a box to tick for each slot of the card."""
    name = of[0] if len(of) == 1 else say("{slots}, each", slots=listed(of))
    left = TICKED * len(of)
    blocks = []
    for text, *marks in zip(best.steps[1:], *(_marks(work, best, one) for one in of), strict=True):
        lines, y = block(_named(text, of[0], name), (left, 0.0), READ, width - left)
        blocks.append(of_marks([*(one for i, mark in enumerate(marks) for one in tick(TICKED * i, -READ, READ, mark)), *lines], -y + 0.9))
    return blocks


def _marks(work: Work, best: RoutPlan, of: str) -> list[str]:
    """What is in the box of each sentence (see tick): of the waste by its steps, of the passes once all are made, of what is pared by hand
    once the head is cleaned up."""
    own = routed(work, of)
    cleared, passed = (work.mark(*(op.id for op in own if (op.kind in ROUTS) == passes and op.kind != "ramp")) for passes in (False, True))
    first = [cleared] if of == OUTLINE or best.waste is not None else []
    pared = [work.mark("clean up")] * len(best.paring)
    return [*first, *["done" if passed == "done" else ""] * (len(best.steps) - 1 - len(first) - len(pared)), *pared]


def _pictures(best: RoutPlan, width: float) -> list[Block]:
    """The section of each pass at full size, side by side; half size where one is wider than the page."""
    shown = [pass_picture(best, i) for i in range(len(best.passes))]
    boxes = [drawing_box(marks) for marks in shown]
    scale = next((s for s in (1.0, 0.5) if max(b[2] - b[0] for b in boxes) * s <= width), 0.2)
    blocks: list[Block] = []
    row: list[tuple[Drawing, Box]] = []
    used = 0.0
    for marks, box in zip(shown, boxes, strict=True):
        wide = (box[2] - box[0]) * scale
        if row and used + BETWEEN + wide > width:
            blocks.append(_picture_row(row, scale))
            row, used = [], 0.0
        used += wide + (BETWEEN if row else 0.0)
        row.append((marks, box))
    blocks.append(_picture_row(row, scale))
    note = (say("Sections across the edge, {scale_words}.", scale_words=scale_words(scale)) if best.job.width is None else
            say("Sections across the cut, {scale_words}. The cutter has done this pass at the left wall; at the right "
                "it is to come.",
                scale_words=scale_words(scale)))
    return [*blocks, paragraph(note, width, LEAST)]


def _picture_row(row: Sequence[tuple[Drawing, Box]], scale: float) -> Block:
    """Pictures with their wood surfaces on one line."""
    above = max(box[3] for _, box in row) * scale
    below = max(-box[1] for _, box in row) * scale
    placed: list[Placed] = []
    x = 0.0
    for marks, box in row:
        placed.append(drawing(marks, x - box[0] * scale, -above, scale))
        x += (box[2] - box[0]) * scale + BETWEEN
    return Block(tuple(placed), above + below + 1.5)


def lying_alike(layout: Headstock, plans: Sequence[SlotPlan]) -> list[list[SlotPlan]]:
    """The slots of a card; those that lie beside each other and are the same to what is seen, waste holes with them, come together."""
    groups: list[list[SlotPlan]] = []
    seen: list[tuple[BaseGeometry, list[float]]] = []
    for plan in plans:
        wall = slot_path(_slot(layout, plan))
        at = wall.box[0]
        row = plan.waste.centres if isinstance(plan.waste, Waste) else ()
        shape, along = polygon(wall.mapped(shift(-at, 0.0))), [n for x, y in row for n in (x - at, y)]
        same = next((i for i, (other, theirs) in enumerate(seen) if shape.hausdorff_distance(other) < SEEN and len(along) == len(theirs)
                     and all(abs(a - b) < SEEN for a, b in zip(along, theirs, strict=True))), None)
        if same is None:
            groups.append([plan])
            seen.append((shape, along))
        else:
            groups[same].append(plan)
    return groups


def _holes(layout: Headstock, plans: Sequence[SlotPlan], width: float) -> list[Block]:
    """A slot lying, with waste holes and what is left to pare, and the centres in numbers; once for all those that lie alike."""
    plan = plans[0]
    slot = _slot(layout, plan)
    marks: list[Mark] = [Area(slot_path(slot).mapped(LYING), "slot", slot.id)]
    marks += [mapped(mark, LYING) for mark in plan_marks(plan) if isinstance(mark, Disc | Cross | Area)]
    box = drawing_box(marks)
    scale = next((s for s in (1.0, 0.5, 0.2) if (box[2] - box[0]) * s <= width - 16.0 - text_width(term("tip"), READ)), 0.1)
    x = 12.0 - box[0] * scale
    wide, high = (box[2] - box[0]) * scale, (box[3] - box[1]) * scale
    shown, under = block(say("{slot} from the face, {scale}", slot=listed([one.of for one in plans]), scale=scale_words(scale)), (14.0, -high - 1.4), LEAST, width - 14.0, "dimension")
    words = [Label(term("nut"), (0.0, -high / 2 - READ / 2), READ, "note"), Label(term("tip"), (16.0 + wide, -high / 2 - READ / 2), READ, "note"), *shown]
    blocks = [Block((drawing(tuple(marks), x + 2.0, -high - box[1] * scale, scale), Placed(tuple(words))), 1.3 - under)]
    if isinstance(plan.waste, Waste):
        blocks.append(paragraph(centres_words([one.waste for one in plans], layout.nut), width))
    reasons = dict.fromkeys(one.waste.reason for one in plans if isinstance(one.waste, Refusal))
    return [*blocks, *(paragraph(say("No waste holes: {reason}", reason=reason), width) for reason in reasons)]


def _slot(layout: Headstock, plan: SlotPlan) -> Slot:
    return next(one for one in layout.slots if one.id == plan.of)


def centres_words(rows: Sequence[Waste], nut: Nut) -> str:
    """Where to prick for the waste holes: from the nut line or base line, and to which side of the centreline. Several rows are as far along
    as the first, and stand aside from it."""
    waste, drill, line = rows[0], rows[0].drill.id, square_line(nut)
    along = [length(y, 1) for _, y in waste.centres]
    if len({round(x, 2) for x, _ in waste.centres}) == 1:
        return say("Centres of {drill}, all {across}, from the {line}: {along}.", drill=drill, across=_aside(rows, 0), line=line,
                   along=number_list(along)) + " " + _pricked()
    each = "; ".join(f"{far} ({_aside(rows, i)})" for i, far in enumerate(along))
    return say("Centres of {drill}, from the {line} (and from the centreline): {each}.", drill=drill, line=line, each=each) + " " + _pricked()


def _aside(rows: Sequence[Waste], i: int) -> str:
    """To which side of the centreline a hole of each row lies."""
    return listed([_across(row.centres[i][0]) if len(rows) == 1 else f"{_across(row.centres[i][0])} ({row.slot})" for row in rows])


def _pricked() -> str:
    return say("They are on the wrap paper too.")


def _across(x: float) -> str:
    if abs(x) < 0.05:
        return say("on the centreline")
    return say("{by} to the treble side", by=length(abs(x), 1)) if x > 0 else say("{by} to the bass side", by=length(abs(x), 1))


def _grain(layout: Headstock, best: RoutPlan, width: float) -> list[Block]:
    """The head with the stretches that run against the grain, for each side that is up, and what to do there."""
    blocks: list[Block] = []
    for side in dict.fromkeys(one.side for one in best.passes):
        try:
            risks = grain_risks(layout, side)
            marks = grain_marks(layout, side)
        except GeometryError as error:
            blocks.append(paragraph(say("Where the outline runs against the grain, {side} up, is not known: {error}",
                                        side=term(side), error=error), width))
            continue
        if not risks:
            continue
        path = loop_path(layout.outline)
        x0, y0, x1, y1 = path.box
        scale = next((s for s in (0.5, 0.2) if max(x1 - x0, y1 - y0) * s <= GRAIN), 0.1)
        shown = (Stroke(path, "blank", "outline"), *(m for m in marks if not isinstance(m, Label)))
        wide, high = (y1 - y0) * scale + 2 * NAMED, (x1 - x0) * scale + 2 * NAMED
        down, top = (-scale, x0) if side == "face" else (scale, -x1)  # turned over, the bass side comes to lie below
        place = Matrix(a=0.0, b=down, c=scale, d=0.0, e=NAMED - y0 * scale, f=top * scale - NAMED)
        words: list[Mark] = []
        y = 0.0
        for i, risk in enumerate(risks, 1):
            lines, y = block(risk.words if len(risks) == 1 else f"{i}: {risk.words}", (wide + 4.0, y), READ, width - wide - 4.0)
            words += lines
            y -= 0.5
        words += _stretch_numbers(risks, shown, place) if len(risks) > 1 else ()
        under, below = block(say("{side} up, nut to the left, {scale}; dashed heavy: go carefully", side=term(side),
                                 scale=scale_words(scale)), (NAMED, -high), LEAST, wide, "dimension")
        blocks.append(Block((Placed(shown, place), Placed((*words, *under))), max(-below + 1.0, -y + 1.0)))
    return blocks


def _stretch_numbers(risks: Sequence[GrainRisk], shown: Drawing, place: Matrix) -> list[Mark]:
    """The number of each stretch of a picture, on paper: outside its middle, aside or farther out on a line where there is no room."""
    room = Room(mapped(mark, place) for mark in shown)
    return [mark for i, risk in enumerate(risks, 1) for mark in room.put([
        _number(risk, str(i), place, far, aside) for far in (2.4, 4.0, 5.6) for aside in (0.0, 0.8, -0.8)])]


def _number(risk: GrainRisk, text: str, place: Matrix, far: float, aside: float) -> list[Mark]:
    """The number so far (mm) from the middle of its stretch, `aside` (rad) of straight out."""
    along = risk.path.length / 2
    foot = risk.path.point_at(along)
    at = place(foot)
    out = v.turned(v.unit(v.sub(place(v.add(foot, v.right(risk.path.tangent_at(along)))), at)), aside)
    x, y = v.along(at, out, far)
    label = Label(text, (x, y - LEAST / 2), LEAST, "note", anchor="middle")
    return [label] if far < NAMED / 2 + LEAST / 2 else [label, Stroke(straight(v.along(at, out, 0.7), v.along(at, out, far - LEAST)), "dimension")]
