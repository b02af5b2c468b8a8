"""Pictures of outlines with known geometry, with the faults that scanners and cameras add."""

import io
from collections.abc import Sequence

import numpy as np
from PIL import Image, ImageDraw, ImageFilter

from geometry.curves import Path

MARGIN = 12.0
"""mm of background about the head."""
FINER = 4
"""The picture is drawn that much finer first, so that its edges are true grey."""


class Scan:
    """A head in dark grey on light grey: drawn, blurred, grained and squeezed as JPEG."""

    def __init__(self, path: Path, dpi: float, grain: float = 6.0, blur: float = 0.8, quality: int = 85, wood: int = 88,
                 openings: Sequence[tuple[Path, int]] = ()) -> None:
        self.per_mm = dpi / 25.4
        x0, y0, x1, y1 = path.box
        self._left, self._top = x0 - MARGIN, y1 + MARGIN
        size = (int((x1 - x0 + 2 * MARGIN) * self.per_mm), int((y1 - y0 + 2 * MARGIN) * self.per_mm))
        drawn = Image.new("L", (size[0] * FINER, size[1] * FINER), 232)
        k = self.per_mm * FINER
        # A point of the fine picture is filled when its middle lies inside, half a point from its corner.
        for shape, shade in ((path, wood), *openings):
            ImageDraw.Draw(drawn).polygon([((x - self._left) * k - 0.5, (self._top - y) * k - 0.5)
                                           for x, y in shape.flatten(0.005)], fill=shade)
        soft = drawn.resize(size, Image.Resampling.BOX).filter(ImageFilter.GaussianBlur(blur))
        grained = np.asarray(soft, float) + np.random.default_rng(3).normal(0, grain, (size[1], size[0]))
        kept = io.BytesIO()
        Image.fromarray(np.clip(grained, 0, 255).astype(np.uint8)).save(kept, "JPEG", quality=quality)
        self.jpeg = kept.getvalue()
        self.grey = np.asarray(Image.open(kept))

    def to_mm(self, line: np.ndarray) -> np.ndarray:
        """Picture coordinates in the frame of the head."""
        return np.stack([line[:, 0] / self.per_mm + self._left, self._top - line[:, 1] / self.per_mm], axis=1)

    def at(self, x: float, y: float) -> tuple[float, float]:
        """A place of the head in the picture."""
        return ((x - self._left) * self.per_mm, (self._top - y) * self.per_mm)
