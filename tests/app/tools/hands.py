"""A hand for the tests: runs a gesture and passes it pointers in mm."""

from app.tools import Done, Gesture, Pointer, Running, Shown
from geometry.layout import Headstock
from geometry.vectors import Vec2

PIXEL = 0.1
"""mm a pixel"""


class TestHand:
    """One gesture in hand."""

    __test__ = False

    def __init__(self, gesture: Gesture, layout: Headstock, mm_per_pixel: float = PIXEL) -> None:
        self.running = Running(gesture, layout)
        self.mm_per_pixel = mm_per_pixel
        self.at: Vec2 = (0.0, 0.0)

    def do(self, kind: str, at: Vec2 | None = None, **more: object) -> Shown | Done | None:
        self.at = self.at if at is None else at
        return self.running.send(Pointer(self.at, kind, mm_per_pixel=self.mm_per_pixel, **more))

    def press(self, *at: float, **more: object) -> Shown | Done | None:
        return self.do("press", at, **more)

    def move(self, *at: float, **more: object) -> Shown | Done | None:
        return self.do("move", at, **more)

    def release(self, **more: object) -> Shown | Done | None:
        return self.do("release", **more)

    def click(self, *at: float, **more: object) -> Shown | Done | None:
        """Press and let go on one spot; what the press gave when that ended the gesture."""
        answer = self.press(*at, **more)
        return answer if self.running.over else self.release(**more)

    def drag(self, a: Vec2, b: Vec2, **more: object) -> Done | None:
        """Press at a, move to b in two steps, let go."""
        self.press(*a, **more)
        self.move((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, **more)
        self.move(*b, **more)
        return self.release(**more)

    def type(self, text: str) -> Shown | Done | None:
        return self.do("key", typed=text)

    def key(self, key: str) -> Shown | Done | None:
        return self.do("key", key=key)
