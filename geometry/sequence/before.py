"""One edge of precedence: what comes before what, and why."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import Literal

from msgspec import Struct

from geometry.layout import Headstock
from geometry.sequence.operation import Operation

Grade = Literal["impossible", "unsafe", "unwise"]
"""impossible: it cannot be done any more; unsafe: it spoils wood or endangers the maker; unwise: harder to do well."""


class Before(Struct, frozen=True):
    """`first` comes before `then`."""

    first: str
    then: str
    reason: str
    """one sentence: what happens otherwise"""
    protects: str
    """the thing that must still be there, or be there already"""
    grade: Grade
    suffers: Literal["first", "then"]
    """which of the two is harmed when the order is reversed"""

    @property
    def hard(self) -> bool:
        """Whether no order may break it; the others give way when they must."""
        return self.grade != "unwise"

    @property
    def harmed(self) -> str:
        """Id of the operation that is harmed when the order is reversed."""
        return self.first if self.suffers == "first" else self.then


Rule = Callable[[Headstock, Sequence[Operation]], Iterator[Before]]
