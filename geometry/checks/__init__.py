"""What is wrong with a layout: snags, each with where, how much, how much is needed, and what cures it.

To add a check:

1. Give it a key, a title and a sentence in kinds.py.
2. Write `snags(scene) -> Iterable[Snag]` in a file of its own (or add to the family it belongs to).
3. Take what you need from the scene: `scene.items` (everything with drillings), `scene.openings` (slots),
   `scene.outline`, `scene.layout`.
4. Put the work into pure functions and call them through `scene.memo.of(function, *arguments)`: what they read
   are their arguments and nothing else, so that LiveCheck may keep their results.
5. Leave far things alone by a cheap lower bound; measure near ones exactly; compare with snags.short().
6. Say it with words.py. Give the advice for when no single move does it, and the `push` that would clear it by the
   nearest way; the moves themselves are sought and tried in geometry.cures.
7. Add the module to FAMILIES in live.py.
8. Add a case to tests/geometry/checks: one in which it appears with a value worked out by hand, and one that
   touches the margin exactly, in which it does not.
"""

from geometry.checks.kinds import KINDS, Kind
from geometry.checks.live import FAMILIES, LiveCheck, check
from geometry.checks.snags import GRADES, CheckResult, Counts, Grade, Snag

__all__ = ["FAMILIES", "GRADES", "KINDS", "CheckResult", "Counts", "Grade", "Kind", "LiveCheck", "Snag", "check"]
