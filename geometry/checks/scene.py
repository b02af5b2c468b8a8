"""A layout as the checks see it: everything derived once, unchanged parts taken from last time."""

from __future__ import annotations

import shapely
from msgspec import Struct
from msgspec.structs import replace

from geometry.by_size import of_loop, of_slot
from geometry.checks.drills import Drills
from geometry.checks.items import Item, Kinds, Seed, items_of
from geometry.checks.memo import Memo, together
from geometry.checks.string_runs import runs_of
from geometry.errors import GeometryError
from geometry.layout.headstock import Headstock
from geometry.layout.outline import Loop, loop_path
from geometry.layout.slots import SingleHole, Slot, StraightSlot, slot_path
from geometry.layout.strings import Nut
from geometry.layout.tuners import RowPlace
from geometry.solids.per_thread import remembered_per_thread
from geometry.solids.walls import Wall
from geometry.strings.runs import Run


class Opening(Struct, frozen=True, eq=False):
    """A slot and its wall; through where it is cut as deep as the wood is thick."""

    id: str
    slot: Slot
    wall: Wall

    @property
    def depth(self) -> float:
        """mm from the face; infinite for a through slot."""
        return float("inf") if self.slot.depth is None else self.slot.depth

    @property
    def there(self) -> bool:
        """Whether it is a pocket that is in the blank already."""
        return self.slot.there

    @property
    def crosses(self) -> bool:
        """Whether the wall crosses itself, which that of a straight slot never does."""
        return not isinstance(self.slot.shape, StraightSlot) and self.wall.crossing is not None

    @property
    def width(self) -> float | None:
        """mm between the walls of a straight slot, None for a drawn one."""
        return self.slot.shape.width if isinstance(self.slot.shape, StraightSlot) else None


class Scene(Struct, frozen=True, eq=False):
    """What every check starts from. `broken` lists (feature, sentence) for shapes that make no sense."""

    layout: Headstock
    outline: Wall
    openings: tuple[Opening, ...]
    """all slots, those that are there already too"""
    to_rout: tuple[Opening, ...]
    """without those that are there"""
    items: tuple[Item, ...]
    sides: tuple[Item, ...]
    """of these the side tuners; one object while none of them changes"""
    runs: tuple[tuple[Run, Item], ...]
    """every string that has a place, with its tuner"""
    broken: tuple[tuple[str, str], ...]
    drills: Drills
    memo: Memo


def scene_of(layout: Headstock, memo: Memo) -> Scene:
    """The scene of a layout. GeometryError only when the outline has no length at all."""
    outline = memo.of(outline_wall, layout.outline)
    made = memo.each(opening_of, layout.slots, layout.blank.thickness)
    openings = memo.of(together, *[opening for opening in made if isinstance(opening, Opening)])
    to_rout = openings if not any([o.there for o in openings]) else memo.of(together, *[o for o in openings if not o.there])
    broken = [(slot.id, trouble) for slot, trouble in zip(layout.slots, made, strict=True) if isinstance(trouble, str)]
    drills = memo.of(Drills, layout.rack.drills)
    items = memo.each_together(items_of, _seeds(layout, memo), layout.outline, layout.blank, memo.of(Kinds, layout.blank, drills))
    broken += [(item.id, item.trouble) for item in items if item.trouble]
    sides = memo.of(together, *[item for item in items if item.mount == "side"])
    return Scene(layout, outline, openings, to_rout, items, sides, runs_of(layout, items, memo), tuple(broken), drills, memo)


def _seeds(layout: Headstock, memo: Memo) -> tuple[Seed, ...]:
    """Every feature with the pattern and the row that it goes by; each the object that it was while all three are. A hole that is plugged
    is wood, and none."""
    patterns = {pattern.id: pattern for pattern in layout.patterns}
    rows = {row.id: row for row in layout.rows}
    known = {id(seed[0]): seed for seed in memo.seeds}
    made = []
    for tuner in layout.tuners:
        pattern = patterns[tuner.pattern]
        row = rows[tuner.place.row] if isinstance(tuner.place, RowPlace) else None
        seed = known.get(id(tuner))
        made.append(seed if seed and seed[1] is pattern and seed[2] is row else (tuner, pattern, row))
    made += [known.get(id(one)) or (one, None, None) for one in (*layout.holes, *layout.pins) if not (isinstance(one, SingleHole) and one.plugged)]
    if memo.changed(made, memo.seeds) != []:
        memo.seeds = tuple(made)
    return memo.seeds


def nut_line(slant: float) -> Nut:
    """A nut line by itself: nothing else of the nut matters to what is cut in the wood before it."""
    return Nut(slant=slant)


@remembered_per_thread(maxsize=8)
def slots_tree(openings: tuple[Opening, ...]) -> shapely.STRtree:
    """The areas of slots in a tree, by their numbers: which of them come near something."""
    return shapely.STRtree([opening.wall.area for opening in openings])


@remembered_per_thread(32, of_loop)
def outline_wall(loop: Loop) -> Wall:
    """The wall of an outline."""
    return Wall(loop_path(loop).counter_clockwise())


@remembered_per_thread(256, of_slot)
def opening_of(slot: Slot, thickness: float) -> Opening | str:
    """A slot in wood of that thickness (mm), or why its shape makes no sense."""
    # What is cut as deep as the wood is thick has no floor for anything to lie on.
    slot = replace(slot, depth=None) if slot.depth is not None and slot.through(thickness) else slot
    try:
        return Opening(slot.id, slot, Wall(slot_path(slot)))
    except GeometryError as error:
        return str(error)
