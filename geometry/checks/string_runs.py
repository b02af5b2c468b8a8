"""The strings of a scene with their tuners, remembered while nut, string and tuner stay the same."""

from __future__ import annotations

from geometry.checks.items import Item
from geometry.checks.memo import Memo, together
from geometry.layout.headstock import Headstock
from geometry.layout.slots import SingleHole
from geometry.layout.strings import Nut, String
from geometry.strings.nut import nut_places
from geometry.strings.runs import Run, carriers, run_to
from geometry.vectors import Vec2


def runs_of(layout: Headstock, items: tuple[Item, ...], memo: Memo) -> tuple[tuple[Run, Item], ...]:
    """(run, tuner in its place) of every string that has one, in the order of the tuners."""
    return memo.snags(_run, items, memo.of(places_of, layout.nut, layout.strings), layout.nut.height,
                      memo.of(together, *carriers(layout)))


def places_of(nut: Nut, strings: tuple[String, ...]) -> dict[str, tuple[String, Vec2]]:
    """Each string by its id, with its place on the nut line."""
    return {string.id: (string, nut.at(x)) for string, x in zip(strings, nut_places(nut, strings), strict=True)}


def _run(item: Item, places: dict[str, tuple[String, Vec2]], nut_height: float,
         retainers: tuple[SingleHole, ...]) -> tuple[tuple[Run, Item], ...]:
    if item.frame is None or item.tuner.string not in places:
        return ()
    string, nut = places[item.tuner.string]
    run = run_to(item.tuner, item.frame, item.pattern.post, string, nut, nut_height, retainers)
    return () if run is None else ((run, item),)
