"""How every drilling of a layout turns out when the shop strays: which error acts where, and why.

Face bores, counterbores, screws of face tuners, single holes
    Each axis is marked from the paper on the surface where the drill goes in:
    the mark strays both ways, and the paper stretches about centreline and nut
    line. The table is not quite square to the face (two ways, each set-up its
    own: chips under the piece count too), and the drill wanders, more the
    deeper it goes. A counterbore stops at its stop. Face and back are two
    papers and two marks.
Side bores
    Marked on the square edge, so the table's tilt error turns the bore about
    that mark, in plan by the table and up or down by the vice; the drill
    wanders over the waste as well; the depth is set by the stop from the edge.
Screws of side tuners
    Drilled by hand through the plate with the post in its bore: they go where
    the bore went and where the outline came, with a mark error of their own.
Locating pins
    Drilled through template and blank together: they share the template's place.
Template
    Laid once on centreline and nut line; the pins bring it back to the same
    place, so that slots and outline share its shift. The follower then rides
    off or cuts in: each wall is grown or shrunk by an error of its own. It is
    cut from a paper of its own. A turn of the template is left out: the pins
    stand as far apart as the head is long.
Pockets and holes that are there
    In the wood before the shop begins: where they are, nothing of it strays. What is drilled, routed or sawn beside
    them does, and is measured from a pocket in the blank itself (Built.in_blank).
Ramps
    Filed by hand when the slot is open: see ramp_built.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct, field

from geometry.accuracy.rods import Array, Rod
from geometry.accuracy.sources import BACK, RAMP, TEMPLATE, WRAP, ErrorList, Source
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening, Scene
from geometry.layout.names import OUTLINE
from geometry.solids.drilling import Drilling
from geometry.solids.ramps import RampCut, ramp_cut
from geometry.vectors import Vec3

_BY_HAND = ("screw", "pin")


class Recipe(Struct, frozen=True):
    """A drilling and the rows of its errors in the matrix of draws; a hole that is there already has none."""

    drilling: Drilling
    paper: tuple[int, ...]
    """x and y stretch; none for pins and for screws drilled through a plate"""
    mark: tuple[int, ...]
    turn: tuple[int, ...]
    wander: tuple[int, ...]
    stop: int | None
    follows: int | None = None
    """index of the post bore whose plate guides this drilling"""

    @property
    def own(self) -> tuple[int, ...]:
        """All its rows, without those of what it follows."""
        return self.paper + self.mark + self.turn + self.wander + (() if self.stop is None else (self.stop,))


class TemplateErrors(Struct, frozen=True, eq=False):
    """Rows of the template's errors."""

    paper: tuple[int, int]
    place: tuple[int, int]
    outline: int
    slots: dict[str, int]
    floors: dict[str, int]
    """stop error of a blind slot's floor, by slot"""


class RampErrors(Struct, frozen=True, eq=False):
    """A ramp as meant, and the rows of its own errors and of its slot's."""

    opening: Opening
    cut: RampCut
    paper: tuple[int, int]
    mark: tuple[int, int]
    """along and across its axis"""
    stop: int
    follow: int


class Model(Struct, frozen=True, eq=False):
    """Every error of a layout, and where each acts."""

    scene: Scene
    errors: ErrorList
    recipes: tuple[Recipe, ...]
    owners: tuple[Item, ...]
    """the item of each drilling"""
    template: TemplateErrors
    ramps: dict[str, RampErrors] = field(default_factory=dict)
    """by slot"""

    def rows_of(self, index: int) -> tuple[int, ...]:
        """Rows of all errors that move a drilling."""
        recipe = self.recipes[index]
        if recipe.drilling.role == "locating":
            return recipe.own + self.template.paper + self.template.place
        if recipe.follows is None:
            return recipe.own
        stand = self.template.paper + self.template.place + (self.template.outline,)
        return recipe.own + self.recipes[recipe.follows].own + stand


def model_of(scene: Scene) -> Model:
    """The errors of a layout, in an order that depends on its features alone and not on where they lie."""
    errors = ErrorList()
    wrap, back, sheet = (errors.add("paper", where, 2) for where in (WRAP, BACK, TEMPLATE))
    template = TemplateErrors(sheet, errors.add("template", TEMPLATE, 2), errors.add("template", OUTLINE)[0],
                              {o.id: errors.add("template", o.id)[0] for o in scene.openings},
                              {o.id: errors.add("stop", o.id)[0] for o in scene.openings if o.slot.depth is not None})
    recipes: list[Recipe] = []
    owners: list[Item] = []
    for item in scene.items:
        setups: dict[tuple[str, str], tuple[tuple[int, ...], tuple[int, ...]]] = {}
        # The post bore guides the screws of its plate, wherever the hardware lists it.
        post = next((len(recipes) + k for k, d in enumerate(item.drillings) if d.role == "post" and not d.upright), None)
        for drilling in item.drillings:
            owners.append(item)
            if drilling.there:
                recipes.append(Recipe(drilling, (), (), (), (), None))
                continue
            by_hand = not drilling.upright and drilling.role in _BY_HAND and post is not None
            key = (drilling.hole, drilling.surface)
            if key not in setups:
                turn: Source = "square" if drilling.upright else "tilt"
                mark = () if drilling.role == "locating" else errors.add("mark", item.id, 2)
                setups[key] = mark, errors.add(turn, item.id, 2)
            mark, turn_rows = setups[key]
            paper = () if by_hand or drilling.role == "locating" else back if drilling.surface == "back" else wrap
            stop = None if drilling.through else errors.add("stop", item.id)[0]
            recipes.append(Recipe(drilling, paper, mark, turn_rows, errors.add("wander", item.id, 2), stop,
                                  post if by_hand else None))
    ramps = {o.id: RampErrors(o, ramp_cut(o.slot), wrap, errors.add("mark", RAMP + o.id, 2),
                              errors.add("stop", RAMP + o.id)[0], template.slots[o.id])
             for o in scene.openings if o.slot.ramp is not None}
    return Model(scene, errors, tuple(recipes), tuple(owners), template, ramps)


class Built(Struct, eq=False):
    """The drillings and the template in n trials; each rod is made when it is first asked for."""

    model: Model
    draws: np.ndarray
    """(m, n) errors in mm, rad and plain ratios"""
    _rods: dict[int, Rod] = field(default_factory=dict)
    known: dict[object, object] = field(default_factory=dict)
    """what several clearances of the same trials share"""
    drilled: Built | None = None
    """the trials in which its drillings were made, where those are others"""

    @property
    def in_blank(self) -> Built:
        """The same drillings, with template and walls just as meant: how a pocket that is there sees them."""
        if "in blank" not in self.known:
            rows, draws = self.model.template, self.draws.copy()
            draws[[*rows.paper, *rows.place, rows.outline, *rows.slots.values(), *rows.floors.values()]] = 0.0
            self.known["in blank"] = Built(self.model, draws, drilled=self)
        return self.known["in blank"]

    @property
    def trials(self) -> int:
        return self.draws.shape[1]

    def rod(self, index: int) -> Rod:
        """A drilling as built."""
        if self.drilled is not None:
            return self.drilled.rod(index)
        if index not in self._rods:
            recipe = self.model.recipes[index]
            self._rods[index] = (self._still(recipe.drilling) if recipe.drilling.there else
                                 self._pin(recipe) if recipe.drilling.role == "locating" else
                                 self._upright(recipe) if recipe.drilling.upright else self._sideways(recipe))
        return self._rods[index]

    def on_template(self, x: Array, y: Array) -> tuple[Array, Array]:
        """Points of the wood (mm) as the template sees them, where slots and outline have their nominal shape."""
        (stretch_x, stretch_y), (shift_x, shift_y) = self._template()
        return (x - shift_x) / (1.0 + stretch_x), (y - shift_y) / (1.0 + stretch_y)

    def off_template(self, x: Array | float, y: Array | float) -> tuple[Array, Array]:
        """The other way round: where points of the template's nominal shape lie on the wood, mm."""
        (stretch_x, stretch_y), (shift_x, shift_y) = self._template()
        return x * (1.0 + stretch_x) + shift_x, y * (1.0 + stretch_y) + shift_y

    def row(self, index: int) -> Array:
        """One error."""
        return self.draws[index]

    def _template(self) -> tuple[tuple[Array, Array], tuple[Array, Array]]:
        rows = self.model.template
        return ((self.draws[rows.paper[0]], self.draws[rows.paper[1]]),
                (self.draws[rows.place[0]], self.draws[rows.place[1]]))

    def _lean(self, recipe: Recipe) -> tuple[Array, Array]:
        """Slopes of the axis across its direction, by set-up and wander."""
        return tuple(self.draws[a] + self.draws[b] for a, b in zip(recipe.turn, recipe.wander, strict=True))

    def _upright(self, recipe: Recipe, at: tuple[Array, Array] | None = None) -> Rod:
        d = recipe.drilling
        if at is None:
            at = tuple(c * (1.0 + self.draws[stretch]) + self.draws[mark]
                       for c, stretch, mark in zip(plan(d.start), recipe.paper, recipe.mark, strict=True))
        lean_x, lean_y = self._lean(recipe)
        size = np.sqrt(1.0 + lean_x * lean_x + lean_y * lean_y)
        flat = np.full(self.trials, d.start[2])
        length = d.depth * size if recipe.stop is None else np.maximum(d.depth + self.draws[recipe.stop], 0.01)
        return Rod((*at, flat), (lean_x / size, lean_y / size, d.direction[2] / size), length, d.radius)

    def _still(self, d: Drilling) -> Rod:
        ones = np.ones(self.trials)
        return Rod(tuple(c * ones for c in d.start), tuple(c * ones for c in d.direction), d.depth * ones, d.radius)

    def _pin(self, recipe: Recipe) -> Rod:
        stretch, shift = self._template()
        at = tuple(c * (1.0 + s) + p for c, s, p in zip(plan(recipe.drilling.start), stretch, shift, strict=True))
        return self._upright(recipe, at)

    def _sideways(self, recipe: Recipe) -> Rod:
        d = recipe.drilling
        aside = (-d.direction[1], d.direction[0], 0.0)
        in_plan, up = self._lean(recipe)
        size = np.sqrt(1.0 + in_plan * in_plan + up * up)
        axis = ((d.direction[0] + aside[0] * in_plan) / size, (d.direction[1] + aside[1] * in_plan) / size, up / size)
        stop = self.draws[recipe.stop]
        if recipe.follows is not None:
            start = self._guided(recipe, aside)
            return Rod(start, axis, np.maximum(d.depth + stop, 0.01), d.radius)
        mark, waste = (d.start, 0.0) if d.mark is None else (d.mark, d.stop - d.depth)
        stretch_x, stretch_y = (self.draws[row] for row in recipe.paper)
        along, down = (self.draws[row] for row in recipe.mark)
        first = (mark[0], mark[1] * (1.0 + stretch_y) + along, mark[2] * (1.0 + stretch_x) + down)
        start = tuple(f + a * waste for f, a in zip(first, axis, strict=True))
        return Rod(start, axis, np.maximum(d.depth + stop, 0.01), d.radius)

    def _guided(self, recipe: Recipe, aside: Vec3) -> tuple[Array, Array, Array]:
        """Where a screw starts that is drilled through the plate of a tuner whose post is in its bore."""
        d, post = recipe.drilling, self.rod(recipe.follows)
        home = self.model.recipes[recipe.follows].drilling.start
        drift = [p - h for p, h in zip(post.start, home, strict=True)]
        rows = self.model.template
        (stretch_x, stretch_y), (shift_x, shift_y) = self._template()
        along, down = (self.draws[row] for row in recipe.mark)
        moved = drift[0] * aside[0] + drift[1] * aside[1] + along
        # The plate lies on the edge: out or in with the outline, which grows against the drilling's direction.
        out = (self.draws[rows.outline] - d.direction[0] * (shift_x + stretch_x * d.start[0])
               - d.direction[1] * (shift_y + stretch_y * d.start[1]))
        return (d.start[0] + aside[0] * moved - d.direction[0] * out,
                d.start[1] + aside[1] * moved - d.direction[1] * out, d.start[2] + drift[2] + down)
