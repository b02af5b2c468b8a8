"""What a layout takes: wood, hardware, drills and bits, and what the rack lacks of them."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator

from msgspec import Struct

from app.sheets.lengths import length, marked
from app.sheets.work import Work
from geometry.drawing.glue_lines import veneer_start
from geometry.layout import OTHER, Bore, Headstock, Pattern, loop_path
from geometry.lengths import at_least, told_down
from geometry.saying import count, number_list, say
from geometry.solids import Drilling
from geometry.solids.drilling import drill_for, misfit, point_ahead, to_drill
from geometry.solids.scarf import scarf_of
from geometry.strings.square_line import square_line
from geometry.terms import term
from geometry.units import format_angle


class Piece(Struct, frozen=True):
    """A piece of wood or board to cut (mm); `length` runs along the grain."""

    name: str
    count: int
    length: float
    width: float
    thickness: float
    remark: str


class Tool(Struct, frozen=True):
    """A drill, reamer, bit or bush: how much there is to do with it, and whether the rack holds it."""

    name: str
    work: str
    held: bool
    remark: str = ""
    by_hand: bool = False
    """whether it is a hand tool, which stands in no rack"""


class Ware(Struct, frozen=True):
    """Hardware by its dimensions."""

    name: str
    count: int
    sizes: str
    on_paper: str = ""
    """what the page says in place of the sizes, where another table of it has them"""


def pieces(layout: Headstock, work: Work) -> list[Piece]:
    """Blank without its ears, or the head that is sawn of it already; ears, veneers, template boards, spoil board."""
    blank = layout.blank
    ears = {side: max((ear.width for ear in layout.ears if ear.side == side), default=0.0) for side in ("bass", "treble")}
    long, line = blank.tip + blank.behind, square_line(layout.nut)
    wide = blank.bass + blank.treble - sum(ears.values())
    behind = (say("{tip} from the {line} to the tip, {behind} behind it", line=line, tip=length(blank.tip), behind=length(blank.behind))
              if blank.behind else
              say("{tip} from the {line} to the tip; the neck goes on behind the nut line", line=line, tip=length(blank.tip)))
    core = say("{lengths}; {bass} to the bass side, {treble} to the treble side", lengths=behind,
               bass=length(blank.bass - ears["bass"]), treble=length(blank.treble - ears["treble"]))
    if names := [slot.id for slot in layout.slots if slot.there]:
        core = say("{core}; there already: {names}", core=core, names=", ".join(names))
    if blank.veneers:
        core = say("{core}; planed to this before the veneers, {whole} with them", core=core, whole=length(blank.thickness, 2))
    if blank.scarf is not None:
        core = f"{core}; {_joint_words(layout)}"
    found = [Piece(say("blank, already sawn to the outline") if work.sawn else say("blank, all edges square"), 1, long, wide, blank.core, core)]
    for ear in layout.ears:
        low, high = sorted((ear.start, ear.end))
        found.append(Piece(say("ear {ear}", ear=ear.id), 1, high - low, ear.width, blank.core,
                           say("{side} side, from {low} to {high} from the {line}", line=line,
                               side=term(ear.side), low=length(low), high=length(high))))
    start = min(veneer_start(blank, layout.nut, side) for side in OTHER)
    found += [Piece({"face": say("face veneer"), "back": say("back veneer")}[surface], 1, blank.tip - start, blank.bass + blank.treble, bottom - top,
                    say("from the nut line to the tip, over the whole width; trimmed with the outline")) for surface, top, bottom in blank.veneers]
    found += _templates(layout, work)
    if any(d.through for hole in to_drill(layout) for d in hole.drillings):
        found.append(Piece(say("spoil board"), 1, long, blank.bass + blank.treble, 10.0, say("any flat waste; goes under every through bore")))
    return found


def _joint_words(layout: Headstock) -> str:
    """What the two pieces of a scarf joint are cut to."""
    joint, pitch = scarf_of(layout.blank, layout.nut), format_angle(math.radians(layout.nut.pitch))
    if joint is None:
        return say("glued up with a scarf joint behind the nut line, sawn at {pitch}", pitch=pitch)
    return say("glued up with a scarf joint {long} long, sawn at {pitch}: the head piece reaches {head} from the tip on the back, and the neck is "
               "{neck} thick over it", long=length(joint.length, 1), pitch=pitch, head=length(layout.blank.tip - joint.back, 1), neck=length(joint.neck, 1))


def _templates(layout: Headstock, work: Work) -> list[Piece]:
    """One board for everything; or one as large as the blank for the slots, and another for the outline where it is routed. None where
    nothing is left to guide."""
    if work.no_template:
        return []
    blank, thick = layout.blank, layout.template.thickness
    x0, y0, x1, y1 = loop_path(layout.outline).box
    long, wide = y1 - y0 + 20.0, x1 - x0 + 20.0
    spare = marked(10.0)
    offsets = sorted({round(plan.best.offset, 3) for plan in work.plans if plan.best is not None})
    more = (say("; the plans need {n} of them, with offsets of {offsets}", n=len(offsets), offsets=number_list(length(o) for o in offsets))
            if len(offsets) > 1 else "")
    if layout.template.board == "outline":
        return [Piece(say("template board"), 1, long, wide, thick,
                      say("hardboard or plywood, {spare} to spare all round{more}", spare=spare, more=more))]
    found = [Piece(say("template board"), 1, blank.tip + blank.behind, blank.bass + blank.treble, thick,
                   say("hardboard or plywood, as large as the blank{more}", more=more))]
    if any(plan.of == "outline" and plan.best is not None for plan in work.plans):
        found.append(Piece(say("template board for the outline"), 1, long, wide, thick,
                           say("hardboard or plywood, {spare} to spare all round{more}", spare=spare, more="")))
    return found


def wares(layout: Headstock) -> list[Ware]:
    """Tuners by pattern, their screws and bushings, strings, locating pins."""
    return [*_tuners(layout), *_of_holes(layout), *_strings_and_nut(layout)]


def _tuners(layout: Headstock) -> Iterator[Ware]:
    """Tuners, and the screws of all of them."""
    used, screws = Counter(tuner.pattern for tuner in layout.tuners), Counter()
    for pattern in layout.patterns:
        if number := used[pattern.id]:
            yield Ware(say("tuner: {pattern}", pattern=pattern.id), number, tuner_sizes(pattern))
            for bore in pattern.bores:
                if bore.role == "screw":
                    screws[bore.diameter, bore.depth] += number
    for (diameter, depth), number in sorted(screws.items(), key=lambda item: (item[0][0], item[0][1] or 0.0)):
        yield Ware(say("wood screw"), number,
                   say("for a pilot of {diameter}, through", diameter=length(diameter)) if depth is None else
                   say("for a pilot of {diameter}, {depth} deep", diameter=length(diameter), depth=told_down(depth, 2)))


def _of_holes(layout: Headstock) -> Iterator[Ware]:
    """What goes into holes that belong to no tuner: retainers, locating pins, plugs."""
    carried = [hole for hole in layout.holes if hole.retainer is not None]
    for diameter in sorted({hole.diameter for hole in carried}):
        of = [hole for hole in carried if hole.diameter == diameter]
        yield Ware(say("string retainer"), len(of),
                   say("with a screw for a pilot of {diameter}; width and strings above the face: {sizes}", diameter=length(diameter),
                       sizes="; ".join(f"{hole.id} {length(hole.retainer.width)}, {length(hole.retainer.height)}" for hole in of)))
    for diameter, number in sorted(Counter(pin.diameter for pin in layout.pins).items()):
        yield Ware(term("locating pin"), number,
                   say("{diameter} steel or dowel, as long as blank and template are thick together", diameter=length(diameter)))
    plugs = [(hole.diameter, None if hole.through(layout.blank.thickness) else hole.depth) for hole in layout.holes if hole.plugged]
    for (diameter, depth), number in sorted(Counter(plugs).items(), key=lambda item: (item[0][0], item[0][1] or math.inf)):
        yield Ware(say("plug of wood"), number, say("{diameter}, through", diameter=length(diameter)) if depth is None else
                   say("{diameter}, {depth} deep", diameter=length(diameter), depth=length(depth)))


def _strings_and_nut(layout: Headstock) -> Iterator[Ware]:
    if layout.strings:
        sizes = number_list(f"{string.id}: {length(string.diameter, 3)}" for string in layout.strings)
        yield Ware(say("string"), len(layout.strings), say("name and diameter of each, {sizes}", sizes=sizes),
                   say("name and diameter of each: under Strings in the nut"))
    sizes = say("{width} wide, {height} high, {spread} from the first string to the last", width=length(layout.nut.width),
                height=length(layout.nut.height), spread=length(layout.nut.spread))
    if layout.nut.slant:
        slant = math.radians(abs(layout.nut.slant))
        sizes = say("{sizes}, measured square to the centreline; slanted by {slant}, the {side} end nearer the tip: {long} from end to end",
                    sizes=sizes, slant=format_angle(slant), side=term("bass" if layout.nut.slant > 0 else "treble"),
                    long=length(layout.nut.width / math.cos(slant)))
    yield Ware(term("nut"), 1, sizes)


def tuner_sizes(pattern: Pattern) -> str:
    """A tuner in its dimensions, so that it can be held against what lies in the box."""
    post, seat, button = pattern.post, pattern.seat, pattern.button
    bores = ", ".join(f"{term(bore.role)} {_bore_size(bore)}" for bore in pattern.bores if bore.role in ("post", "counterbore", "clearance"))
    of = {"mount": term(pattern.mount), "bores": bores, "diameter": length(post.diameter), "length": length(post.length),
          "string_hole": length(post.string_hole), "before": length(seat.before + seat.behind),
          "across": length(seat.across),
          "button": say("button {length} behind the post", length=length(button.length)) if pattern.mount == "face" and button.straight
          else say("button reaches {reach}", reach=length(button.reach))}
    if pattern.mount == "face" and post.measured == "plate":
        return say("through the {mount}; {bores}; post {diameter}, {length} from the plate, string hole at {string_hole}; seat "
                   "{before} x {across}; {button}", **of)
    if pattern.mount == "face":
        return say("through the {mount}; {bores}; post {diameter}, {length} above the face, string hole at {string_hole}; seat "
                   "{before} x {across}; {button}", **of)
    return say("through the {mount}; {bores}; post {diameter}, {length} long, string hole at {string_hole}; seat "
               "{before} x {across}; {button}", **of)


def _bore_size(bore: Bore) -> str:
    size = (say("{diameter} through", diameter=length(bore.diameter)) if bore.depth is None else
            say("{diameter} x {depth} deep", diameter=length(bore.diameter), depth=told_down(bore.depth, 2)))
    return size if bore.reamed is None else say("{depth}, reamed 1:{taper:g} to {reamed}", depth=size, taper=bore.taper,
                                                reamed=length(bore.reamed))


def drills(layout: Headstock, work: Work) -> list[Tool]:
    """Every drill that something is still drilled with, thinnest first, and how long of it goes in at least, its point and the
    template above a pin hole reckoned with."""
    made = [op for op in work.ops if op.drillings and op.kind != "final diameter"]
    stops = {d.id: op.stop for op in made if op.stop is not None for d in op.drillings}
    trips = {d.id: op.id for op in made for d in op.drillings}
    wanted: dict[tuple[float, str, str], list[Drilling]] = {}
    for hole in to_drill(layout):
        for d in hole.drillings:
            if work.ahead(trips.get(d.id, "")):
                drill = drill_for(layout, d)
                wanted.setdefault((d.diameter, drill.id, "") if drill else (d.diameter, "", d.drill), []).append(d)
    waste: dict[str, tuple[float, int, float]] = {}
    for op in work.steps:
        if op.waste_holes is not None and op.setup.bit is not None and work.ahead(op.id):
            row = op.waste_holes
            before = waste.get(op.setup.bit, (row.diameter, 0, 0.0))
            waste[op.setup.bit] = (row.diameter, before[1] + len(row.centres), max(before[2], row.depth))
    found: list[tuple[float, Tool]] = []
    for (diameter, id, _), group in wanted.items():
        drill = drill_for(layout, group[0])
        deep = max(stops.get(d.id, d.stop) + point_ahead(drill, d) for d in group)
        number, more = len({trips.get(d.id, d.id) for d in group}), ""  # a pin hole that is a bore too is drilled once
        if id in waste:
            number, deep = number + waste[id][1], max(deep, waste[id][2])
            more = say(", {n} of them waste holes", n=waste[id][1])
            del waste[id]
        words = say("{holes}{more}, deepest {deep} to the point", holes=_holes(number), more=more, deep=at_least(deep))
        kinds = sorted({d.drill for d in group})
        if drill is None:
            found.append((diameter, Tool(f"{term(kinds[0])} {length(diameter)}", words, False)))
        else:
            other = [] if drill.kind in kinds else [say("the pattern asks for {kind}", kind=term(kinds[0]))]
            if wider := misfit(drill, group[0]):
                by, wanted_size = length(abs(wider)), length(diameter)
                other.append(say("{by} wider than the {diameter} asked for", by=by, diameter=wanted_size) if wider > 0 else
                             say("{by} narrower than the {diameter} asked for", by=by, diameter=wanted_size))
            found.append((diameter, Tool(drill.id, words, True, "; ".join(other))))
    found += [(diameter, Tool(id, say("{holes} for the waste, deepest {deep} to the point",
                                      holes=_holes(number), deep=at_least(deep)), True))
              for id, (diameter, number, deep) in waste.items()]
    return [tool for _, tool in sorted(found, key=lambda item: (item[0], item[1].name))]


def reamers(work: Work) -> list[Tool]:
    """Every reamer for the holes of tapered pegs that are still to be reamed, and how wide it has to be at least, and what clears bores of
    finish: hand tools, which no rack holds."""
    wanted: dict[float, list[Drilling]] = {}
    cleared: Counter[str] = Counter()
    for op in work.ops:
        for d in op.drillings if op.kind == "final diameter" and work.ahead(op.id) else ():
            if d.reamed:
                wanted.setdefault(d.taper, []).append(d)
            else:
                cleared[op.setup.bit] += 1
    return [Tool(say("reamer 1:{taper:g}", taper=taper), say("{holes}, to {wide}", holes=_holes(len(group)), wide=at_least(max(d.reamed for d in group))),
                 True, by_hand=True) for taper, group in sorted(wanted.items())] + [Tool(name, _holes(n), True, by_hand=True) for name, n in sorted(cleared.items())]


def bits(work: Work) -> list[Tool]:
    """Router bits and bushes for what is still to be routed, and what the rack would need where the plans find none."""
    used: dict[str, list[str]] = {}
    lacking: list[Tool] = []
    ahead = {op.features[0] for op in work.ops if op.kind in ("rout", "rout outline") and work.ahead(op.id)}
    for plan in (one for one in work.plans if one.of in ahead):
        if plan.best is None:
            lacking.append(Tool(say("a bit for {what}", what=term(plan.of)), " ".join(plan.would) or plan.words, False))
            continue
        for one in plan.best.passes:
            for id in (one.bit, *((one.bush,) if one.bush else ())):
                if (of := term(plan.of)) not in used.setdefault(id, []):
                    used[id].append(of)
    return [Tool(id, ", ".join(of), True) for id, of in used.items()] + lacking


def lacks(tools: Iterable[Tool]) -> list[str]:
    """Names of what is not in the rack."""
    return [tool.name for tool in tools if not tool.held]


def _holes(n: int) -> str:
    return count(n, "{n} hole", "{n} holes")
