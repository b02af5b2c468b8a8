"""Undo and redo over immutable layouts: an undo only swaps which one is current."""

from __future__ import annotations

from msgspec import Struct, field

from geometry.layout import Headstock

MOST_STEPS = 500


class History(Struct):
    """Named steps. `past[i]` is (name of the step that followed it, layout before that step)."""

    current: Headstock
    past: list[tuple[str, Headstock]] = field(default_factory=list)
    future: list[tuple[str, Headstock]] = field(default_factory=list)
    dropped: int = 0
    """how many of the oldest steps were forgotten for want of room"""

    def push(self, name: str, layout: Headstock) -> bool:
        """Make `layout` current as a step called `name`; False when it changes nothing."""
        if layout == self.current:
            return False
        self.past.append((name, self.current))
        self.dropped += max(0, len(self.past) - MOST_STEPS)
        del self.past[:-MOST_STEPS]
        self.future.clear()
        self.current = layout
        return True

    def undo(self) -> str | None:
        """Step back; the name of what was undone, or None at the beginning."""
        return self._step(self.past, self.future)

    def redo(self) -> str | None:
        """Step forward again; the name of what was redone, or None at the end."""
        return self._step(self.future, self.past)

    def _step(self, off: list[tuple[str, Headstock]], on: list[tuple[str, Headstock]]) -> str | None:
        if not off:
            return None
        name, layout = off.pop()
        on.append((name, self.current))
        self.current = layout
        return name

    def put(self, layouts: list[Headstock]) -> None:
        """Other layouts in place of those there are (see `layouts`): no step, and it stays whatever is undone."""
        names, at = self.names, self.at
        self.current = layouts[at]
        self.past = list(zip(names[:at], layouts[:at], strict=True))
        self.future = list(zip(names[at:], layouts[at + 1:], strict=True))[::-1]

    # ---- the steps as one row ---------------------------------------------
    @property
    def at(self) -> int:
        """Number of the present step: 0 is the beginning, len(names) the last that can be done again."""
        return len(self.past)

    @property
    def names(self) -> list[str]:
        """Names of all steps, oldest first, those that were undone too: names[i] leads from layout i to layout i + 1."""
        return [name for name, _ in self.past] + [name for name, _ in reversed(self.future)]

    @property
    def layouts(self) -> list[Headstock]:
        """The layouts between the steps, oldest first: one more than there are names."""
        return [*(layout for _, layout in self.past), self.current, *(layout for _, layout in reversed(self.future))]

    def go(self, number: int) -> bool:
        """Undo or redo until step `number` is the present one; False when it is already, or when there is none such."""
        if number == self.at or not 0 <= number <= len(self.past) + len(self.future):
            return False
        while self.at > number:
            self.undo()
        while self.at < number:
            self.redo()
        return True

    @property
    def undo_name(self) -> str | None:
        return self.past[-1][0] if self.past else None

    @property
    def redo_name(self) -> str | None:
        return self.future[-1][0] if self.future else None
