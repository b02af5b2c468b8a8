"""What is wrong with a layout: snags, each with where, how much, how much is needed, and what cures it.

To add a check:

1. Give it a key, a title and a sentence in kinds.py.
2. Write `snags(scene) -> Iterable[Snag]` in a file of its own (or add to the family it belongs to).
3. Take what you need from the scene: `scene.items` (everything with drillings), `scene.sides` (of these the side tuners),
   `scene.openings` (slots), `scene.outline`, `scene.layout`.
4. Put the work into pure functions that read nothing but their arguments, so that LiveCheck may keep their results:
   `scene.memo.snags(function, scene.items, *arguments)` for each feature by itself, `snags_together` where numpy or the
   polygon library does all that are new at once, `pairs` for features near each other, `of` for anything else.
   What is no concern of a feature's neighbours must not be among the arguments. Cylinders near cylinders go to solid_pairs,
   what is told of one feature by itself to alone, what stands upright beside the outline or a slot to plan_walls.
5. Leave far things alone by a cheap lower bound; measure near ones exactly; compare with snags.short().
6. Say it with words.py; a sentence that begins with a name does so with `first`. Give the advice for when no single
   move does it, and the `push` that would clear it by the nearest way; the moves themselves are sought and tried in
   geometry.cures. What of the advice the real piece no longer allows is added by already.py.
7. Add the module to FAMILIES in live.py.
8. Add a case to a cases_*.py of tests/geometry/checks: one in which it appears with a value worked out by hand, and one that
   touches the margin exactly, in which it does not.
9. Name the kind in geometry/accuracy/told.py, unless the simulation measures it too; give its sentences their German
   (`python3 -m tests.languages`) and, where words fail, a drawing in app/help/snags.py.
"""

from geometry.checks.kinds import KINDS, Kind
from geometry.checks.live import FAMILIES, LiveCheck, check
from geometry.checks.snags import GRADES, CheckResult, Counts, Grade, Snag

__all__ = ["FAMILIES", "GRADES", "KINDS", "CheckResult", "Counts", "Grade", "Kind", "LiveCheck", "Snag", "check"]
