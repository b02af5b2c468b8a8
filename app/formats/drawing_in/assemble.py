"""From a haul of strands to loops in mm with roles: unit, place, joining, and what to tell the maker."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Sequence

import shapely
from msgspec import Struct
from msgspec.structs import replace

from app.formats.drawing_in.bounds import hold_to_length, hold_to_scale
from app.formats.drawing_in.closing import open_is_larger
from app.formats.drawing_in.halves import halves_joined
from app.formats.drawing_in.haul import Haul, Strand
from app.formats.drawing_in.left_out import left_out_told
from app.formats.drawing_in.likeliest import outline_sides
from app.formats.drawing_in.marks import DIAMETER, crosses, hole_at, marked
from app.formats.drawing_in.open_head import open_head
from app.formats.drawing_in.own_frame import own_nut
from app.formats.drawing_in.pens import pens_apart
from app.formats.drawing_in.result import DrawingRead, Loop
from app.formats.drawing_in.roles import heads, is_ours, is_work, with_roles
from app.formats.drawing_in.scale_text import stated_scale
from app.formats.drawing_in.skipped import listed
from app.formats.drawing_in.units import MM, POINTS, Sides, Unit, is_certain, is_slim, may_be_cut, sized, taken_instead
from app.formats.drawing_in.whole_neck import with_head
from app.formats.errors import FormatError
from app.formats.layer_names import seen_from_behind
from geometry import vectors as v
from geometry.curves import MIRROR, Line, Matrix, Path
from geometry.errors import GeometryError
from geometry.joining import Chain, Gap, Joined, join
from geometry.joining.chains import meeting
from geometry.joining.loops import FAR_REACH
from geometry.joining.neck import neck_of
from geometry.joining.on_edge import closed_by_edges
from geometry.saying import count, say
from geometry.tolerance import FLAT, JOIN
from geometry.vectors import Box, Vec2, box_of_all

FAR_AWAY = 1e5
"""Distance from the origin (mm) beyond which the drawing is moved to it before anything is computed."""


MOST_PLACES = 5
"""Places that a sentence names."""


class _Closed(Struct, frozen=True):
    """Loops and open chains with their layers, and what the joining had to say."""

    loops: list[tuple[Path, str]]
    open: list[Path]
    gaps: tuple[Gap, ...]
    notes: list[str]
    nut: Line | None
    """the piece by which a loop was closed straight across where it runs into a neck, counter-clockwise about it"""
    lines: tuple[Line, ...]
    """all straight lines of the drawing"""
    crosses: list[Vec2]
    """middles of small crosses, which are none of the open chains"""


def assemble(haul: Haul, settle: Callable[[Sides], Unit], reach: float) -> DrawingRead:
    """The drawing read, in mm.

    `settle` names the unit by the sizes that what was drawn would have; `reach` (mm)
    closes gaps silently. A drawing of the back that is an export of ours is read as seen from the face. Raises FormatError when there
    is nothing to work on.
    """
    if not haul.strands:
        haul.skipped += Counter(points=len(haul.points))
        raise FormatError(_nothing(haul))
    layers = tuple(dict.fromkeys(strand.layer for strand in haul.strands))
    ours = is_ours(layers)
    if ours and any(map(seen_from_behind, layers)):
        haul = replace(haul, strands=[replace(strand, path=strand.path.mapped(MIRROR)) for strand in haul.strands])
    # Template lines, marks and axes of an export lie on its outline and slots: nobody means to cut them, and they tell of gaps.
    strands = [strand for strand in haul.strands if is_work(strand.layer)] if ours else haul.strands
    unit, closed, moved, to_mm = _in_unit(strands, settle, reach)
    loops = with_roles(closed.loops, layers)
    points = [] if ours else [to_mm(at) for at in haul.points]
    marks, missed = _marked([*points, *closed.crosses], loops, layers)
    if marks:
        loops = with_roles([*closed.loops, *((hole_at(at), "") for at in marks)], layers)
    haul.skipped += Counter(points=len(points) - len(set(points) & {*marks, *missed}))
    if not loops and not closed.open:
        why = " ".join([*haul.warnings, *closed.notes])
        raise FormatError(say("No line of the drawing can be used: draw or export the outline anew. {why}",
                              why=why).strip())
    outline = next((loop for loop in loops if loop.role == "outline"), None)
    neck = neck_of(outline.path, closed.lines) if outline is not None else None
    if outline is not None and neck is None and not ours and _is_within(outline.path, closed.open):
        outline, loops = None, tuple([replace(loop, role="other") for loop in loops])
    about = outline.path.box if outline is not None else _box([*(loop.path for loop in loops), *closed.open])
    size = (about[2] - about[0], about[3] - about[1])
    certain = is_certain(unit.source, size, neck is not None)
    warnings = [*haul.warnings, *_about_unit(unit, size, certain), *moved, *closed.notes, *left_out_told(loops), *_about_marks(marks, missed)]
    if ours:
        warnings.append(say("Pegwright has written this drawing: outline, slots, holes and what is there already are taken from it, "
                            "and no other line."))
    elif haul.skipped:
        warnings.append(say("Left out: {skipped}.", skipped=listed(haul.skipped)))
    nut = (closed.nut.start, closed.nut.end) if outline is not None and closed.nut in outline.path.segments else None
    own = own_nut(haul.strands, to_mm, outline.path) if ours and outline is not None else None
    nut, up = own or (nut, None)
    return with_head(DrawingRead(loops, tuple(closed.open), unit.name, unit.source, certain, tuple(warnings), size, unit.mm, closed.gaps,
                                 layers, nut, up, neck, None if ours else stated_scale(haul.texts), unit.instead))


def _in_unit(strands: Sequence[Strand], settle: Callable[[Sides], Unit], reach: float) -> tuple[Unit, _Closed, list[str], Matrix]:
    """The unit, settled by the sides of all that is drawn, then by those of what would be the outline; and what `_closed` gives at it."""
    whole = _box([s.path for s in strands])
    unit = settle(lambda mm: ((whole[2] - whole[0]) * mm, (whole[3] - whole[1]) * mm))
    found = _closed(strands, whole, unit.mm, reach)
    paths = [path for path, _ in found[0].loops]
    if unit.source == "option" or not paths or open_is_larger(found[0].open, paths):
        return unit, *found

    def sides(mm: float) -> tuple[float, float]:
        return outline_sides(paths, mm / unit.mm)
    again = settle(sides)
    if again.mm == unit.mm:
        return again, *found
    return (again, *_closed(strands, whole, again.mm, reach)) if max(sides(again.mm)) > 0 else (unit, *found)


def _is_within(loop: Path, open_lines: Sequence[Path]) -> bool:
    """Whether the largest loop, as small or as slim as bores and slots are, lies in an outline that is open; a straight line encloses nothing."""
    x0, y0, x1, y1 = loop.box
    size = (x1 - x0, y1 - y0)
    if not (is_slim(size) or not may_be_cut(size)) or not open_is_larger(open_lines, [loop]):
        return False
    around = [shapely.convex_hull(shapely.linestrings(line.flatten(FLAT))) for line in open_lines]
    around = [hull for hull in around if hull.area > abs(loop.area)]
    return bool(shapely.convex_hull(shapely.union_all(around)).covers(shapely.linestrings(loop.flatten(FLAT))))


def _marked(points: Sequence[Vec2], loops: Sequence[Loop], layers: Sequence[str]) -> tuple[list[Vec2], list[Vec2]]:
    """`marked` in the outline, and of what it misses in each head that may be chosen instead of it."""
    found, missed = marked(points, loops)
    for i in heads(loops) if missed else ():
        if loops[i].role != "outline":
            there, missed = marked(missed, with_roles([(loop.path, loop.layer) for loop in loops], layers, loops[i].path))
            found += there
    return found, missed


def _closed(strands: Sequence[Strand], whole: Box, mm: float, reach: float) -> tuple[_Closed, list[str], Matrix]:
    """Everything joined at a scale of `mm` per drawing unit, moved near the origin if it lies far away; what is told of that, and
    the map to mm."""
    hold_to_scale(whole, mm)
    x, y = max(whole[0], -whole[2], 0.0) * mm, max(whole[1], -whole[3], 0.0) * mm
    moved: list[str] = []
    dx, dy = 0.0, 0.0
    if max(x, y) > FAR_AWAY:
        dx, dy = -round(whole[0] * mm), -round(whole[1] * mm)
        moved.append(say("The drawing lay {x:.4g} mm from its origin; it was moved by ({dx:.0f}, {dy:.0f}) mm.",
                         x=max(x, y), dx=dx, dy=dy))
    to_mm = Matrix(mm, 0.0, 0.0, mm, dx, dy)
    scaled = [replace(s, path=s.path.mapped(to_mm)) for s in strands]
    hold_to_length(scaled, ((whole[2] - whole[0]) * mm, (whole[3] - whole[1]) * mm))
    try:
        return _joined(scaled, reach), moved, to_mm
    except GeometryError as error:
        raise FormatError(str(error)) from error


def _joined(strands: Sequence[Strand], reach: float) -> _Closed:
    """Pen by pen first, then layer by layer, so that lines of a colour or on a layer of their own cannot disturb the outline; then
    the rest together."""
    extent = _longest(_box([s.path for s in strands]))
    far = max(reach, min(max(FAR_REACH, 1e-6 * extent), 1e-3 * extent))
    reports: list[Joined] = []
    layers: dict[str, list[Strand]] = {}
    for strand in strands:
        layers.setdefault(strand.layer, []).append(strand)
    joined = []
    for members in layers.values():
        pens = [_together(pen, reach, far, reports) for pen in pens_apart(members, far)]
        joined.append(_all_together(pens, reach, far, reports))
    pool = _all_together(joined, reach, far, reports)
    made = [s for s in pool if s.path.closed]
    left = [s for s in pool if not s.path.closed]
    filled = [s for s in left if s.filled and s.path.start != s.path.end]
    shut = [Strand(_shut(s.path), s.layer) for s in filled]
    shut = [s for s in shut if abs(s.path.area) > 0 and shapely.is_simple(shapely.linestrings(s.path.flatten(FLAT)))]
    head = open_head([s.path for s in left if s not in filled], [s.path for s in [*made, *shut]])
    headed = [s for s in left if s.path is head]
    pockets = closed_by_edges([s.path for s in left], [*(s.path for s in made), *(_shut(s.path) for s in headed)], reach)
    made += [replace(left[i], path=ring) for i, ring in pockets.items()]
    taken = [*headed, *(left[i] for i in pockets)]
    crossing, still_open = crosses([s.path for s in left if s not in taken and not (shut and s in filled)])
    notes = _notes(reports, len(shut), len(pockets), still_open)
    for one in headed:
        notes.append(say("The outline is open over {wide:.1f} mm, as where it runs into a neck, and was closed straight across there: see "
                         "where the nut line comes to lie.", wide=math.dist(one.path.start, one.path.end)))
        shut.append(Strand(_shut(one.path), one.layer))
    gaps = reports[-1].gaps if still_open else ()
    loops = [(s.path.counter_clockwise(), s.layer) for s in [*made, *shut]]
    nut = loops[-1][0].segments[-1 if shut[-1].path.area >= 0 else 0] if headed else None
    loops, halves = halves_joined(loops)
    if halves:
        notes.append(say("Two halves of a head that meet in a straight edge were taken as one."))
    lines = tuple([segment for strand in strands for segment in strand.path.segments if isinstance(segment, Line)])
    return _Closed(loops, still_open, gaps, notes, nut, lines, crossing)


def _all_together(groups: Sequence[list[Strand]], reach: float, far: float, reports: list[Joined]) -> list[Strand]:
    """Groups, each joined by itself, joined with one another."""
    return groups[0] if len(groups) == 1 else _together([strand for group in groups for strand in group], reach, far, reports)


def _together(members: Sequence[Strand], reach: float, far: float, reports: list[Joined]) -> list[Strand]:
    """Strands joined; what was found on the way is added to the reports."""
    report = join([s.path for s in members], reach, far)
    reports.append(report)
    return [*(_pooled(c, members) for c in report.loops), *(_pooled(c, members) for c in report.open)]


def _pooled(chain: Chain, pool: Sequence[Strand]) -> Strand:
    """The chain on the layer, and of the pen, that it mostly came from."""
    longest = max(chain.sources, key=lambda i: pool[i].path.length)
    return replace(pool[longest], path=chain.path, filled=all(pool[i].filled for i in chain.sources))


def _shut(path: Path) -> Path:
    """A filled open shape, closed as it is seen: straight from its end to its start."""
    return meeting(path.segments, closed=True)


def _notes(reports: Sequence[Joined], shut: int, pockets: int, still_open: Sequence[Path]) -> list[str]:
    notes = []
    wide = [gap for report in reports for gap in report.bridged if gap.size > JOIN]
    if wide:
        worst = max(wide, key=lambda gap: gap.size)
        notes.append(count(len(wide), "{n} gap was closed: straight lines run on until they meet, all else is joined by a short straight piece. It was "
                           "{size:.3f} mm wide at ({x:.2f}, {y:.2f}).",
                           "{n} gaps were closed: straight lines run on until they meet, all else is joined by short straight pieces. The "
                           "widest was {size:.3f} mm at ({x:.2f}, {y:.2f}).",
                           size=worst.size, **_where(worst.place)))
    twice = sum(report.duplicates for report in reports)
    if twice:
        notes.append(count(twice, "{n} piece was drawn twice and counted once.",
                           "{n} pieces were drawn twice and counted once."))
    for place in [p for report in reports for p in report.crossed][:5]:
        notes.append(say("A closed line crosses itself at ({x:.2f}, {y:.2f}); it was taken apart there.",
                         **_where(place)))
    if sum(report.tangles for report in reports):
        notes.append(say("Lines touch or cross one another; the outer border of what they enclose was taken."))
    on_edge = pockets + sum(report.by_edge for report in reports)
    if on_edge:
        notes.append(count(on_edge, "{n} open line was closed by the straight edge of the outline on which it ends, as the nut line closes the "
                           "pocket of a truss rod.",
                           "{n} open lines were closed by the straight edge of the outline on which they end, as the nut line closes the "
                           "pocket of a truss rod."))
    dropped = sum(report.dropped_lines for report in reports)
    if dropped:
        notes.append(count(dropped, "{n} line that encloses nothing of its own was left out.",
                           "{n} lines that enclose nothing of their own were left out."))
    for bracket in [path for report in reports for path in report.brackets][:MOST_PLACES]:
        x0, y0, x1, y1 = bracket.box
        notes.append(say("Three lines of {sized} at ({x:.2f}, {y:.2f}) run from corner to corner of an outline, as a dimension does, and were "
                         "left out.", sized=sized(x1 - x0, y1 - y0), **_where(v.middle((x0, y0), (x1, y1)))))
    if sum(report.inexact for report in reports):
        notes.append(say("Some lines are so tangled that curves were replaced by short straight pieces."))
    if shut:
        notes.append(count(shut, "{n} filled shape was open and closed with a straight line.",
                           "{n} filled shapes were open and closed with a straight line."))
    if still_open:
        notes.append(_about_gaps(still_open, reports[-1].gaps))
    return notes


def _about_marks(marks: Sequence[Vec2], missed: Sequence[Vec2]) -> list[str]:
    """What was made of points and small crosses."""
    said = []
    if marks:
        said.append(count(len(marks), "{n} point or small cross was taken for the middle of a hole, {size:g} mm wide: give it its size, or "
                          "hardware, when it is imported.",
                          "{n} points or small crosses were taken for the middles of holes, {size:g} mm wide: give them their size, or "
                          "hardware, when they are imported.", size=DIAMETER))
    if missed:
        said.append(count(len(missed), "{n} point or small cross does not lie in the wood of the head, or too near its edge, and was left "
                          "out: at {places}.",
                          "{n} points or small crosses do not lie in the wood of the head, or too near its edge, and were left out: at "
                          "{places}.", places=_places([say("({x:.2f}, {y:.2f})", **_where(at)) for at in missed])))
    return said


def _places(told: Sequence[str]) -> str:
    """The first few of these places."""
    places = "; ".join(told[:MOST_PLACES])
    return say("{places} and {n} more", places=places, n=len(told) - MOST_PLACES) if len(told) > MOST_PLACES else places


def _where(place: Vec2) -> dict[str, float]:
    """The fields of a place in a sentence, in hundredths, nought without a sign."""
    return {"x": round(place[0], 2) + 0.0, "y": round(place[1], 2) + 0.0}


def _about_gaps(still_open: Sequence[Path], gaps: Sequence[Gap]) -> str:
    n = len(still_open)
    if not gaps:
        return count(n, "{n} line stays open: it belongs to no loop.", "{n} lines stay open: they belong to no loop.")
    places = _places([say("{size:.3f} mm at ({x:.2f}, {y:.2f})", size=gap.size, **_where(gap.place)) for gap in gaps])
    return count(n, "{n} line stays open; loose ends are apart by {places}: join them in the drawing, or import with a larger "
                 "gap.",
                 "{n} lines stay open; loose ends are apart by {places}: join them in the drawing, or import with a larger "
                 "gap.", places=places)


def _about_unit(unit: Unit, size: tuple[float, float], certain: bool) -> list[str]:
    if certain:
        return []
    if unit.instead is not None:
        return [taken_instead(unit.instead, (size[0] / unit.mm, size[1] / unit.mm), unit.name, size)]
    if unit.source == "guess" and unit.name in POINTS:
        others = {name: sized(*(side * MM[name] / unit.mm for side in size)) for name in POINTS if name != unit.name}
        (one, first), (other, second) = others.items()
        fields = {"n": POINTS[unit.name], "sized": sized(*size), "one": one, "first": first, "other": other, "second": second}
        if unit.name == "px":
            return [say("The drawing does not state its size; {n} units to the inch were assumed, which makes it {sized}. Some programs write "
                        "fewer: in {one} it is {first}, in {other} {second}.", **fields)]
        return [say("The drawing does not state its size; with {n} units to the inch its page is a usual sheet, which makes it {sized}. "
                    "In {one} it would be {first}, in {other} {second}.", **fields)]
    if unit.source == "guess":
        return [say("The drawing does not say its unit; {unit} was guessed from its size, {sized}.",
                    unit=unit.name, sized=sized(*size))]
    return [say("With the file's own unit, {unit}, the drawing is {sized}: no headstock is that size.",
                unit=unit.name, sized=sized(*size))]


def _nothing(haul: Haul) -> str:
    if haul.skipped["shapes on paper pages"]:
        return say("All that can be used of the drawing lies on its paper pages, where sizes are those on paper: copy the outline at full size into "
                   "the model, where the drawing itself belongs.")
    if haul.skipped:
        return say("The drawing holds no lines or curves that can be used, only {skipped}: export the outline as "
                   "lines, arcs or curves.",
                   skipped=listed(haul.skipped))
    return say("The drawing is empty: it holds no lines or curves.")


def _box(paths: Sequence[Path]) -> Box:
    return box_of_all(path.box for path in paths)


def _longest(box: Box) -> float:
    return max(box[2] - box[0], box[3] - box[1])
