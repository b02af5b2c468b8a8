"""Invented photos: a head of known outline on a sheet of paper, seen by a tilted camera in poor light."""

import io
import math

import numpy as np
from PIL import Image, ImageDraw, ImageFilter

from geometry.curves import Path

SHEET = (210.0, 297.0)
"""A4, mm (ISO 216)."""
POINT = 0.09
"""mm of a point of the plan that the camera looks at."""
TABLE, PAPER, WOOD, GRAIN = 118, 226, 96, 14


class Photo:
    """12 million points: perspective, uneven light, a soft lens, noise and JPEG blocks.

    The head lies on the sheet with its nut end 40 mm above the lower border. `corner(k)` is
    where sheet corner k (1 upper left, 2 upper right, 3, 4) is in the picture, `at` where a place
    of the head is; both are exact.
    """

    def __init__(self, path: Path, size: tuple[int, int] = (3000, 4000), tilt: float = 11.0, turn: float = 4.0,
                 away: float = 780.0, quality: int = 78, noise: float = 7.0) -> None:
        self.size = size
        w, h = 330.0, 420.0
        self._centre = (0.0, SHEET[1] / 2 - 40.0)
        self._camera = _camera(self._centre, math.radians(tilt), math.radians(turn), away, size)
        plan = Image.new("L", (int(w / POINT), int(h / POINT)), TABLE)
        draw = ImageDraw.Draw(plan)

        def on_plan(x: float, y: float) -> tuple[float, float]:
            return ((x - self._centre[0] + w / 2) / POINT - 0.5, (self._centre[1] + h / 2 - y) / POINT - 0.5)

        draw.polygon([on_plan(*self.sheet(k)) for k in "1234"], fill=PAPER)
        draw.polygon([on_plan(x, y) for x, y in path.flatten(0.005)], fill=WOOD)
        for k in range(14):  # streaks of the wood, which no level of grey may follow
            x = -24 + 3.6 * k
            draw.line([on_plan(x, 12), on_plan(x + 3 * math.sin(k), 140)], fill=WOOD + GRAIN, width=9)
        corners = np.array([on_plan(*p) for p in self._plan_corners(w, h)])
        seen = np.array([self.at(*p) for p in self._plan_corners(w, h)])
        flat = plan.transform(size, Image.Transform.PERSPECTIVE, _coefficients(seen, corners), Image.Resampling.BICUBIC,
                              fillcolor=TABLE)
        grey = np.asarray(flat.filter(ImageFilter.GaussianBlur(1.1)), np.float32)
        y, x = np.arange(size[1], dtype=np.float32)[:, None], np.arange(size[0], dtype=np.float32)
        light = 0.80 + 0.28 * x / size[0] - 0.10 * y / size[1] - 0.12 * ((x / size[0] - 0.5) ** 2 + (y / size[1] - 0.5) ** 2)
        grained = grey * light + np.random.default_rng(11).normal(0, noise, grey.shape).astype(np.float32)
        kept = io.BytesIO()
        Image.fromarray(np.clip(grained, 0, 255).astype(np.uint8)).convert("RGB").save(kept, "JPEG", quality=quality)
        self.jpeg = kept.getvalue()

    def sheet(self, corner: str) -> tuple[float, float]:
        """A corner of the sheet in the frame of the head, mm."""
        x, y = {"1": (-0.5, 0.5), "2": (0.5, 0.5), "3": (0.5, -0.5), "4": (-0.5, -0.5)}[corner]
        return (self._centre[0] + x * SHEET[0], self._centre[1] + y * SHEET[1])

    def corner(self, corner: str) -> tuple[float, float]:
        """A corner of the sheet in the picture."""
        return self.at(*self.sheet(corner))

    def at(self, x: float, y: float) -> tuple[float, float]:
        """A place of the head (mm) in the picture."""
        u, v, w = self._camera @ np.array([x, y, 1.0])
        return (float(u / w), float(v / w))

    def _plan_corners(self, w: float, h: float) -> list[tuple[float, float]]:
        cx, cy = self._centre
        return [(cx - w / 2, cy + h / 2), (cx + w / 2, cy + h / 2), (cx + w / 2, cy - h / 2), (cx - w / 2, cy - h / 2)]


def _camera(centre: tuple[float, float], tilt: float, turn: float, away: float, size: tuple[int, int]) -> np.ndarray:
    """The pinhole camera as a map of the plane z = 0 (mm) to points of the picture (any textbook of vision)."""
    ct, st, cr, sr = math.cos(tilt), math.sin(tilt), math.cos(turn), math.sin(turn)
    spin = np.array([[cr, -sr, 0], [sr, cr, 0], [0, 0, 1]])
    lean = np.array([[1, 0, 0], [0, ct, -st], [0, st, ct]])
    look = np.diag([1.0, -1.0, -1.0]) @ lean @ spin
    shift = np.array([0.0, 0.0, away]) - look @ np.array([centre[0], centre[1], 0.0])
    focal = 0.0024 * size[1] * away
    lens = np.array([[focal, 0, size[0] / 2], [0, focal, size[1] / 2], [0, 0, 1]])
    return lens @ np.column_stack([look[:, 0], look[:, 1], shift])


def _coefficients(seen: np.ndarray, plan: np.ndarray) -> list[float]:
    """The eight numbers that PIL wants: from points of the picture to points of the plan."""
    rows, values = [], []
    for (u, v), (x, y) in zip(seen, plan, strict=True):
        rows += [[u, v, 1, 0, 0, 0, -x * u, -x * v], [0, 0, 0, u, v, 1, -y * u, -y * v]]
        values += [x, y]
    return list(np.linalg.solve(np.array(rows, float), np.array(values, float)))
