"""One kind of snag: a layout in which it appears, what is measured there, and one in which it does not."""

from dataclasses import dataclass

from geometry.layout import Headstock


@dataclass(frozen=True)
class Case:
    """`measured` was worked out by hand from the layout's numbers; `touching` meets the margin exactly or is mended."""

    kind: str
    layout: Headstock
    measured: float | None
    grade: str
    touching: Headstock
    between: tuple[str, ...] | None = None
    within: float = 1e-6
