"""Every edit there is with arguments by chance, many of them without sense: a layout that can be saved, or one sentence.

Nothing but the layout (never its job book) and the chance decides, so that a sequence can be done over again.
"""

from __future__ import annotations

import math
import random
from collections.abc import Callable

from msgspec.structs import replace

from geometry import edits
from geometry.checks.moves import AsCut, Change, Move, Ramped, Shift, Slide, Stretch, Swap, Wind
from geometry.cures.carry_out import carried_out
from geometry.curves import Matrix, Path, circle
from geometry.edits import clipping, hand_cuts, hardware, holes, imported, mirrored, offsetting, picture, string_count, strings
from geometry.edits import rack as rack_edits
from geometry.edits.imported_openings import with_more
from geometry.edits.nut_end import end_along_nut
from geometry.edits.retainers import add_retainer
from geometry.edits.straight_edge import straighten_edge
from geometry.layout import EdgePlace, FreePlace, Headstock, Picture, Ramp, RowPlace, StraightRun, StraightSlot, feature_ids
from geometry.layout.names import OUTLINE
from geometry.layout.outline import loop_path
from geometry.layout.slots import slot_path, straight_path
from geometry.solids.pins_along import pins_along
from geometry.strings import runs
from geometry.strings.sets import SETS
from geometry.terms import HOLE_THERE, POCKET
from geometry.vectors import Vec2
from tests.endurance.whole import jpeg

Edit = Callable[[Headstock, random.Random], Headstock]
SIDES = ("bass", "treble")
WORDS = ("", "a", "Slot 2", "bass slot", "outline", "no/such", "x" * 61, "x" * 60, "ä", "new.1", "\ud800", "-1", "post 1")


def far(chance: random.Random) -> float:
    """A length: small, on the head, absurd or broken."""
    return chance.choice((chance.uniform(-3, 3), chance.uniform(-60, 190), chance.uniform(-3, 3), chance.uniform(-60, 190),
                          0.0, chance.uniform(-6000, 6000), 1e-9, -0.0, 1e300, math.nan, math.inf))


def length(chance: random.Random) -> float:
    return chance.choice((chance.uniform(0.5, 30), chance.uniform(0.5, 30), chance.uniform(0.5, 30), far(chance)))


def place(chance: random.Random) -> Vec2:
    if chance.random() < 0.1:
        return far(chance), far(chance)
    return chance.uniform(-60, 60), chance.uniform(-20, 190)


def step(chance: random.Random) -> Vec2:
    return (chance.uniform(-6, 6), chance.uniform(-6, 6)) if chance.random() < 0.9 else (far(chance), far(chance))


def any_of(chance: random.Random, ids) -> str:
    ids = list(ids)
    return chance.choice(ids) if ids and chance.random() < 0.97 else chance.choice(WORDS)


def feature(layout: Headstock, chance: random.Random) -> str:
    return any_of(chance, feature_ids(layout))


def some(layout: Headstock, chance: random.Random, ids=None) -> list[str]:
    ids = list(feature_ids(layout) if ids is None else ids)
    return chance.sample(ids, min(len(ids), chance.randrange(0, 5)))


def tuner(layout: Headstock, chance: random.Random) -> str:
    return any_of(chance, [one.id for one in layout.tuners])


def alike(layout: Headstock, chance: random.Random) -> list[str]:
    """Tuners of one pattern on one side, mostly."""
    like = any_of(chance, [one.id for one in layout.tuners])[:-2]
    return some(layout, chance, [one.id for one in layout.tuners if one.id.startswith(like)])


def slot(layout: Headstock, chance: random.Random) -> str:
    return any_of(chance, [one.id for one in layout.slots])


def loop(layout: Headstock, chance: random.Random) -> tuple[str, int]:
    """A loop and a number of one of its nodes; now and then neither is there."""
    drawn = [one.id for one in layout.slots if not isinstance(one.shape, StraightSlot)]
    named = chance.choice([OUTLINE, OUTLINE, *drawn])
    ref = named if chance.random() < 0.92 else chance.choice((*WORDS, slot(layout, chance)))  # of a straight slot it is refused
    nodes = next((s.shape.loop.nodes for s in layout.slots if s.id == ref and s.id in drawn), layout.outline.nodes)
    return ref, chance.randrange(len(nodes)) if chance.random() < 0.95 else chance.choice((-1, -99, 99, len(nodes)))


def wall(chance: random.Random):
    return straight_path(place(chance), place(chance), abs(length(chance)))


def fields(part: object, way: tuple = ()):
    """The way to every plain value of a layout, as set_field takes it."""
    for name in part.__struct_fields__:
        value = getattr(part, name)
        if hasattr(value, "__struct_fields__"):
            yield from fields(value, (*way, name))
        elif isinstance(value, tuple) and value and hasattr(value[0], "__struct_fields__"):
            for i, one in enumerate(value):
                yield from fields(one, (*way, name, i))
        elif name != "pegwright" and name != "jpeg":
            yield (*way, name), value


def kinds_of_fields(layout: Headstock) -> dict[tuple[str, str], list[tuple[tuple, object]]]:
    """The ways to all plain values (`fields`) by the kind of record and the field: many nodes are one kind of thing to set."""
    found: dict[tuple[str, str], list[tuple[tuple, object]]] = {}
    for way, value in fields(layout):
        part = layout
        for key in way[:-1]:
            part = part[key] if isinstance(key, int) else getattr(part, key)
        found.setdefault((type(part).__name__, way[-1]), []).append((way, value))
    return found


def set_field(layout: Headstock, chance: random.Random) -> Headstock:
    """A value of any kind of field, each kind as likely as another."""
    kinds = {kind: [one for one in ways if one[0][0] not in ("book", "order")] for kind, ways in kinds_of_fields(layout).items()}
    way, old = chance.choice(chance.choice([ways for ways in kinds.values() if ways]))
    near = old * chance.uniform(0.8, 1.25) if isinstance(old, float) else not old if isinstance(old, bool) else chance.choice(WORDS)
    return edits.set_field(layout, way, chance.choice((near, near, near, far(chance), None, chance.choice(WORDS), [], True)))


def set_place(layout: Headstock, chance: random.Random) -> Headstock:
    here = (FreePlace(at=place(chance), turn=chance.choice((None, chance.uniform(-180, 180)))) if chance.random() < 0.5 else
            EdgePlace(side=chance.choice(SIDES), along=chance.uniform(-20, 200)))
    return edits.set_place(layout, tuner(layout, chance), here)


def in_rack(layout: Headstock, chance: random.Random) -> Headstock:
    shelf = chance.choice(("bits", "bushes", "drills"))
    ids = [one.id for one in getattr(layout.rack, shelf)]
    id, rack = any_of(chance, ids), layout.rack
    what = chance.randrange(6)
    if what == 0:
        rack = rack_edits.add_entry(rack, shelf)
    elif what == 1:
        rack = rack_edits.copy_entry(rack, shelf, id)
    elif what == 2:
        rack = rack_edits.remove_entry(rack, shelf, id)
    elif what == 3:
        rack = rack_edits.sort_shelf(rack, shelf)
    elif what == 4:
        name = chance.choice(WORDS)
        return rack_edits.set_rack(layout, rack_edits.set_in_rack(rack, (shelf, id, "id"), name), (shelf, id, name))
    else:
        way, _ = chance.choice(list(fields(rack)))
        rack = rack_edits.set_in_rack(rack, way, length(chance))
    return rack_edits.set_rack(layout, rack)


def route(layout: Headstock, chance: random.Random) -> Headstock:
    bits = [bit.id for bit in layout.rack.bits]
    bushes = [None, *(bush.id for bush in layout.rack.bushes)]
    tools = tuple((any_of(chance, bits), chance.choice(bushes)) for _ in range(chance.randrange(0, 4)))
    return rack_edits.choose_route(layout, chance.choice((slot(layout, chance), OUTLINE)), tools)


def template(layout: Headstock, chance: random.Random) -> Headstock:
    bits, bushes = [bit.id for bit in layout.rack.bits], [bush.id for bush in layout.rack.bushes]
    return rack_edits.set_template_tool(layout, chance.choice((None, any_of(chance, bits))), chance.choice((None, any_of(chance, bushes))))


def order(layout: Headstock, chance: random.Random) -> Headstock:
    """The running order as the list of steps keeps it: a permutation, of which some may no longer be asked for."""
    steps = list(layout.order) or [f"rout {one.id}" for one in layout.slots] + ["cut outline"]
    chance.shuffle(steps)
    return edits.set_field(layout, ("order",), steps[:chance.randrange(0, len(steps) + 1)])


def rename(layout: Headstock, chance: random.Random) -> Headstock:
    group = chance.choice(edits.GROUPS)
    members = getattr(layout.rack if group in ("bits", "bushes", "drills") else layout, group)
    new = chance.choice((*WORDS, feature(layout, chance), f"new {chance.randrange(99)}", f"new {chance.randrange(99)}"))
    return edits.rename(layout, group, any_of(chance, [one.id for one in members]), new)


def lay_picture(layout: Headstock, chance: random.Random) -> Headstock:
    numbers = (chance.uniform(2, 25), 0, -50, 0, chance.uniform(-25, -2), 150, chance.choice((0, 0, 0.01)), 0, 1)
    return picture.lay_picture(layout, chance.choice((None, Picture(
        name=chance.choice(("a", "b.jpg")), jpeg=jpeg(), width=4, height=6, place=tuple(map(float, numbers))))))


def in_picture(layout: Headstock, chance: random.Random) -> Headstock:
    if chance.random() < 0.5:
        return picture.move_picture(layout, step(chance), far(chance))
    return picture.set_picture(layout, **chance.choice(({"opacity": far(chance)}, {"hidden": True}, {"locked": False})))


def spread(layout: Headstock, chance: random.Random) -> Headstock:
    held = alike(layout, chance)
    for one in layout.tuners:
        if one.id in held and isinstance(one.place, RowPlace):
            layout = edits.free_from_row(layout, one.id)
    return edits.spread(layout, held, chance.choice(("edge", "line")))


def bore(layout: Headstock, chance: random.Random) -> Headstock:
    id = any_of(chance, [one.id for one in layout.patterns])
    return chance.choice((hardware.add_bore, hardware.copy_pattern, hardware.remove_pattern,
                          lambda l, i: hardware.remove_bore(l, i, chance.choice((0, 1, 9, -1)))))(layout, id)


def cut(layout: Headstock, chance: random.Random) -> Headstock:
    gone, size, depth = chance.random() < 0.2, length(chance), length(chance)
    return chance.choice((
        lambda: hand_cuts.set_ramp(layout, slot(layout, chance), gone, length=size, depth=depth),
        lambda: hand_cuts.propose_ramp(layout, slot(layout, chance)),
        lambda: hand_cuts.set_flat(layout, tuner(layout, chance), gone, size=size, depth=depth),
        lambda: hand_cuts.propose_flat(layout, tuner(layout, chance))))()


def sizes_hole(layout: Headstock, chance: random.Random) -> Headstock:
    return holes.tuners_for_holes(layout, some(layout, chance, [one.id for one in layout.holes]), any_of(chance, [p.id for p in layout.patterns]))


def there(layout: Headstock, chance: random.Random) -> Headstock:
    return holes.set_there(layout, some(layout, chance, [one.id for one in layout.holes]), chance.random() < 0.7, chance.random() < 0.5)


def pasted(layout: Headstock, chance: random.Random) -> Headstock:
    """What was copied lies in the clipboard as a file does, and its hardware may be another one's of the same name."""
    held = clipping.clip(layout, some(layout, chance))
    if held.patterns and chance.random() < 0.3:
        held = replace(held, patterns=tuple(replace(one, post=replace(one.post, diameter=5.5)) for one in held.patterns))
    return clipping.paste(layout, held)


def read_in(layout: Headstock, chance: random.Random) -> Headstock:
    """A drawing taken over: its outline, slots and holes."""
    def role(path: Path) -> tuple[Path, str]:
        return path, chance.choice(("slot", "hole", POCKET, HOLE_THERE, "other", "outline"))
    loops = [(loop_path(layout.outline), "outline"), *(role(slot_path(one)) for one in layout.slots[:3])]
    wide, high, by = chance.uniform(0.8, 1.25), chance.choice((chance.uniform(0.8, 1.25), -1.0, 40.0)), (chance.uniform(-6, 6), 0.0)
    return imported.with_shape(layout, loops, Matrix(wide, 0.0, 0.0, high, *by), chance.random() < 0.5)


def echoed(layout: Headstock, chance: random.Random) -> Headstock:
    """A typed or nudged change that the other side follows."""
    held, ref, index = some(layout, chance), *loop(layout, chance)
    what = chance.randrange(3)
    if what == 0:
        return mirrored.echo_edit(layout, edits.move_features(layout, held, step(chance)), held)
    if what == 1:
        return mirrored.echo_edit(layout, edits.remove_features(layout, held[:1]), held[:1])
    return mirrored.echo_edit(layout, edits.set_radius(layout, ref, index, far(chance)), [ref], index)


def a_string(layout: Headstock, chance: random.Random) -> str:
    return any_of(chance, [one.id for one in layout.strings])


def served(layout: Headstock, chance: random.Random) -> Headstock:
    """Strings on other posts, as a proposal has them."""
    now = runs(layout)
    posts = [run.tuner for run in now]
    chance.shuffle(posts)
    return strings.serve(layout, [replace(run, tuner=post) for run, post in zip(now, posts, strict=True)][:chance.choice((1, 3, 99))],
                         [chance.choice(("bass", "treble")) for _ in now])


def cured(layout: Headstock, chance: random.Random) -> Headstock:
    """A single move as a cure makes it."""
    way, old = chance.choice([one for one in fields(layout) if isinstance(one[1], float) and one[0][0] not in ("book", "order")])
    moves: tuple[Move, ...] = (Shift(feature(layout, chance), step(chance)), Slide(tuner(layout, chance), small(chance)), Wind(tuner(layout, chance)),
                               Stretch(slot(layout, chance), chance.choice(("nut", "tip")), small(chance)), Swap(tuner(layout, chance), tuner(layout, chance)),
                               Change(way, old, chance.choice((old * 1.01, far(chance)))), Ramped(slot(layout, chance), Ramp(length=length(chance), depth=length(chance))),
                               *(AsCut(chance.choice(layout.slots).id, one.shape, length(chance), one.ramp) for one in layout.slots[:1]))
    return carried_out(layout, chance.choice(moves), chance.random() < 0.3)


def with_its_pin(layout: Headstock, chance: random.Random) -> Headstock:
    """A tuner moved that has a pin in its bore."""
    one = tuner(layout, chance)
    before = replace(layout, pins=tuple(replace(pin, at=edits.plan_point(layout, one)) for pin in layout.pins))
    return pins_along(before, edits.move_features(before, [one], step(chance)))


def on_loop(function: Callable, *more: Callable) -> Edit:
    """An edit of a loop at one of its nodes, now and then with its mirror image."""
    def edit(layout: Headstock, chance: random.Random) -> Headstock:
        ref, index = loop(layout, chance)
        return function(layout, ref, index, *(one(chance) for one in more), mirrored=chance.random() < 0.3)
    return edit


def on_line(function: Callable[[Headstock, str, random.Random], Headstock]) -> Edit:
    """An edit of a straight row, mostly; of one made for it where there is none."""
    def edit(layout: Headstock, chance: random.Random) -> Headstock:
        if not any(isinstance(row.run, StraightRun) for row in layout.rows):
            layout = edits.make_row(layout, alike(layout, chance), "straight")
        rows = [row.id for row in layout.rows if isinstance(row.run, StraightRun) or chance.random() < 0.1]
        return function(layout, any_of(chance, rows), chance)
    return edit


def part(chance: random.Random) -> float:
    return chance.choice((chance.random(), chance.random(), 0.0, 1.0, far(chance)))


def small(chance: random.Random) -> float:
    return chance.choice((chance.uniform(-1, 1), chance.uniform(-1, 1), far(chance)))


def angle(chance: random.Random) -> float:
    return chance.choice((chance.uniform(-0.3, 0.3), far(chance)))


def scale(chance: random.Random) -> float:
    return chance.choice((chance.uniform(0.8, 1.25), chance.uniform(0.8, 1.25), -1.0, far(chance)))


def set_hardware(layout: Headstock, chance: random.Random) -> Headstock:
    return edits.set_pattern(layout, tuner(layout, chance), any_of(chance, [one.id for one in layout.patterns]))


EDITS: dict[str, Edit] = {
    "add_drawn_slot": lambda l, c: edits.add_drawn_slot(l, wall(c), c.choice((None, length(c)))),
    "add_hole": lambda l, c: edits.add_hole(l, place(c), length(c)),
    "add_retainer": lambda l, c: add_retainer(l if c.random() < 0.5 else replace(l, nut=replace(l.nut, pitch=0.0, height=c.uniform(6.0, 12.0)))),
    "end_along_nut": lambda l, c: end_along_nut(replace(l, nut=replace(l.nut, slant=c.uniform(-20.0, 20.0)))),
    "straighten_edge": lambda l, c: straighten_edge(l, alike(l, c)),
    "set_retainer": lambda l, c: holes.set_retainer(l, some(l, c, [one.id for one in (*l.holes, *l.pins)]), c.random() < 0.6),
    "add_pin": lambda l, c: edits.add_pin(l, place(c), length(c)),
    "add_truss_rod_pocket": lambda l, c: edits.add_truss_rod_pocket(l, c.choice(("mm", "in", "in64"))),
    "set_slots_there": lambda l, c: edits.set_slots_there(l, some(l, c, [one.id for one in l.slots]), c.random() < 0.5),
    "add_straight_slot": lambda l, c: edits.add_straight_slot(l, place(c), place(c), length(c), c.choice((None, length(c)))),
    "add_tuner": lambda l, c: edits.add_tuner(l, any_of(c, [p.id for p in l.patterns]), place(c)),
    "add_node": on_loop(edits.add_node, part),
    "align": lambda l, c: edits.align(l, some(l, c), c.choice(("x", "y", "z"))),
    "bend_edge": on_loop(edits.bend_edge, part, place),
    "copy_side": lambda l, c: edits.copy_side(l, c.choice(SIDES), c.choice(SIDES)),
    "duplicate": lambda l, c: edits.duplicate(l, some(l, c)),
    "echo_features": lambda l, c: edits.echo_features(l, edits.move_features(l, (held := some(l, c)), step(c)), held),
    "fillet": on_loop(edits.fillet, length),
    "free_from_row": lambda l, c: edits.free_from_row(l, tuner(l, c)),
    "make_row": lambda l, c: edits.make_row(l, alike(l, c), c.choice(("straight", "edge"))),
    "make_symmetric": lambda l, c: edits.make_symmetric(l),
    "mirror_copies": lambda l, c: edits.mirror_copies(l, some(l, c)),
    "mirror_layout": lambda l, c: edits.mirror_layout(l),
    "move_features": lambda l, c: edits.move_features(l, some(l, c), step(c)),
    "move_handle": lambda l, c: edits.move_handle(l, *loop(l, c), c.choice((0, 1)), place(c), c.random() < 0.3),
    "move_loop": lambda l, c: edits.move_loop(l, loop(l, c)[0], step(c)),
    "move_node": on_loop(edits.move_node, place),
    "move_nodes": lambda l, c: edits.move_nodes(l, loop(l, c)[0], c.sample(range(6), c.randrange(5)), step(c), c.random() < 0.3),
    "move_slot_end": lambda l, c: edits.move_slot_end(l, slot(l, c), c.choice(("nut", "tip")), place(c)),
    "move_tuner": lambda l, c: edits.move_tuner(l, tuner(l, c), place(c)),
    "remove_features": lambda l, c: edits.remove_features(l, some(l, c)[:c.choice((1, 1, 4))]),
    "align_nodes": lambda l, c: edits.align_nodes(l, loop(l, c)[0], c.sample(range(6), c.randrange(5)), c.choice("xy"), c.random() < 0.3),
    "remove_node": lambda l, c: edits.remove_node(l, *loop(l, c)),
    "remove_nodes": lambda l, c: edits.remove_nodes(l, loop(l, c)[0], c.sample(range(6), c.randrange(3)), c.random() < 0.3),
    "rename": rename,
    "replace_loop": lambda l, c: edits.replace_loop(l, loop(l, c)[0], wall(c)),
    "replace_outline": lambda l, c: edits.replace_outline(l, c.choice((wall(c), loop_path(l.outline)))),
    "set_bulge": on_loop(edits.set_bulge, small),
    "set_hand_by_side": lambda l, c: edits.set_hand_by_side(l, some(l, c, [one.id for one in l.tuners]), any_of(c, [p.id for p in l.patterns])),
    "set_edge": on_loop(edits.set_edge, lambda c: c.choice(("straight", "arc", "curve"))),
    "set_edge_length": on_loop(edits.set_edge_length, length),
    "set_field": set_field,
    "set_pattern": set_hardware,
    "set_place": set_place,
    "set_radius": on_loop(edits.set_radius, far),
    "set_row_heading": on_line(lambda l, row, c: edits.set_row_heading(l, row, c.choice((c.uniform(-360, 360), far(c))))),
    "square_row": on_line(lambda l, row, c: edits.square_row(l, row)),
    "set_row_spacing": lambda l, c: edits.set_row_spacing(l, any_of(c, [r.id for r in l.rows]), length(c)),
    "set_slot_length": lambda l, c: edits.set_slot_length(l, slot(l, c), c.choice((length(c), 60.0)), c.choice(("nut", "tip"))),
    "set_slot_width": lambda l, c: edits.set_slot_width(l, slot(l, c), length(c)),
    "set_smooth": on_loop(edits.set_smooth, lambda c: c.random() < 0.5),
    "set_turn": lambda l, c: edits.set_turn(l, tuner(l, c), c.choice((None, angle(c), c.uniform(-180, 180)))),
    "slide_tuner": lambda l, c: edits.slide_tuner(l, tuner(l, c), far(c), c.choice((None, *SIDES))),
    "spread": spread,
    "take_other_hand": lambda l, c: edits.take_other_hand(set_hardware(l, c), [one.id for one in l.tuners if c.random() < 0.4]),
    "to_drawn": lambda l, c: edits.to_drawn(l, slot(l, c)),
    "transform_loop": lambda l, c: edits.transform_loop(l, loop(l, c)[0], Matrix(scale(c), angle(c), angle(c), scale(c), *step(c))),
    "with_more": lambda l, c: with_more(l, [*((slot_path(one), "slot") for one in l.slots[:c.randrange(3)]), (circle(place(c), length(c)), "hole")]),
    "rack": in_rack, "choose_route": route, "set_template_tool": template, "order": order,
    "lay_picture": lay_picture, "picture": in_picture, "hardware": bore, "hand cuts": cut,
    "add_ear": lambda l, c: hardware.add_ear(l, c.choice(SIDES)),
    "string_set": lambda l, c: strings.string_set(l, c.choice(SETS)),
    "add_string": lambda l, c: string_count.add_string(l, c.choice(SIDES)),
    "remove_string": lambda l, c: string_count.remove_string(l, a_string(l, c)),
    "pair_string": lambda l, c: (string_count.pair_string(l, a_string(l, c), c.random() < 0.6) if c.random() < 0.7 else
                                 string_count.pair_all(l, c.random() < 0.6)),
    "strings_for_posts": lambda l, c: string_count.strings_for_posts(l if c.random() < 0.5 else replace(
        l, strings=(), tuners=tuple(replace(one, string=None) for one in l.tuners))),
    "join_slots": lambda l, c: edits.join_slots(l, some(l, c, [one.id for one in l.slots])), "pins_along": with_its_pin,
    "serve": served, "paste": pasted, "tuners_for_holes": sizes_hole, "set_there": there, "with_shape": read_in, "echo_edit": echoed, "cure": cured,
    "offset_in_place": lambda l, c: offsetting.offset_in_place(l, loop(l, c)[0], small(c)),
    "offset_copy": lambda l, c: offsetting.offset_copy(l, loop(l, c)[0], small(c)),
    "set_post": lambda l, c: strings.set_post(l, any_of(c, [s.id for s in l.strings]), c.choice((None, tuner(l, c)))),
}
