"""A key for caches that must not hash a big record on every look-up."""

from __future__ import annotations

from typing import Generic, TypeVar

T = TypeVar("T")


class Same(Generic[T]):
    """Wraps a frozen record so that a cache finds it again in constant time.

    The hash is the record's identity, so an equal copy is a miss, never a
    wrong hit. Edits keep every record that they do not touch, so what stayed
    the same is found again. The cache holds the wrapper and so the record:
    its identity is not given to another while the entry lives.
    """

    __slots__ = ("value",)

    def __init__(self, value: T) -> None:
        self.value = value

    def __hash__(self) -> int:
        return id(self.value)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Same) and self.value is other.value
