"""What a gesture takes and gives: the pointer in millimetres, what to show, and what came of it."""

from __future__ import annotations

from collections.abc import Generator
from typing import Literal

from msgspec import Struct
from msgspec.structs import replace

from geometry.drawing import Drawing
from geometry.layout import Headstock
from geometry.vectors import Vec2


class Pointer(Struct, frozen=True):
    """One event of the pointer or the keys over the opened-out view.

    `at` is in mm, y up. `typed` is a whole value typed while the gesture runs,
    sent with kind "key"; `key` is a single key: "enter", "backspace" or a
    letter.
    """

    at: Vec2
    kind: Literal["press", "move", "release", "double", "key"]
    shift: bool = False
    ctrl: bool = False
    alt: bool = False
    mm_per_pixel: float = 0.1
    key: str = ""
    typed: str = ""


Takes = tuple[str, str]
"""A value that can be typed: its word, as `typed.named` reads it, and what the maker reads beside it."""


class Shown(Struct, frozen=True):
    """What to show while a gesture runs."""

    layout: Headstock
    marks: Drawing = ()
    """temporary guides drawn above the layout"""
    readout: str = ""
    """the dimension of what is held"""
    snapped: str = ""
    """what it snapped to, in words"""
    held: tuple[str, ...] = ()
    node: int | None = None
    """the node in hand, of the outline or drawn slot that is held"""
    nodes: tuple[int, ...] = ()
    """all nodes in hand, when there are several"""
    line: tuple[Vec2, Vec2] | None = None
    """the ends of a section line in mm, while one is laid"""
    refused: bool = False
    """whether the readout says why what was typed was not taken, so that it can be mended"""
    back: bool = False
    """whether the key "backspace" takes back the last of what was pressed or typed"""
    takes: tuple[Takes, ...] | None = ()
    """values that can be typed now, in the order in which Tab leads through them; None where nothing is to be typed"""
    follows: bool = False
    """whether nothing was pressed or taken yet that could be put back: what is shown only follows the pointer"""

    def refusing(self, why: str) -> Shown:
        """The same, and why what was typed was not taken."""
        return replace(self, readout=why, snapped="", refused=True)


class Done(Struct, frozen=True):
    """A gesture came to its end. Nothing changed when `layout` is the one it began with (then `name` is "")."""

    layout: Headstock
    name: str = ""
    """what undo calls it"""
    held: tuple[str, ...] = ()
    node: int | None = None
    nodes: tuple[int, ...] = ()


Gesture = Generator[Shown, Pointer, "Done | None"]
"""Yields what to show, takes pointers, returns what came of it: None when it came to nothing."""


class Running:
    """One gesture under way. It knows the layout it began with, so that it can be put back exactly."""

    def __init__(self, gesture: Gesture, layout: Headstock) -> None:
        self._gesture = gesture
        self._layout = layout
        self._over = False
        try:
            self.shown: Shown | None = next(gesture)
        except StopIteration:
            self.shown, self._over = None, True

    @property
    def over(self) -> bool:
        """Whether the gesture has come to its end."""
        return self._over

    def send(self, pointer: Pointer) -> Shown | Done | None:
        """Pass a pointer on: what to show now, or what came of the gesture (None: nothing). None after its end."""
        if self._over:
            return None
        try:
            self.shown = self._gesture.send(pointer)
            return self.shown
        except StopIteration as end:
            self._over = True
            return end.value
        except BaseException:
            self._over = True
            raise

    def cancel(self) -> Headstock:
        """End the gesture and give back the very layout that it began with."""
        self._gesture.close()
        self._over = True
        return self._layout
