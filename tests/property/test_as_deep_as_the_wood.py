"""A slot as deep as the wood is thick is the through slot of the same shape: for the checks, the plans, the drawings and the odds."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.accuracy import simulate
from geometry.checks import check
from geometry.drawing.opened_out import opened_out_groups
from geometry.layout import Headstock
from geometry.routing import plan_routing
from geometry.sequence import operations
from geometry.sequence.shape_ops import pins_to_plug
from tests.property.layouts import SAMPLES

LAYOUTS = {path.name.removesuffix(".headstock.json"): read(path) for path in SAMPLES}
SLOTTED = [name for name, layout in LAYOUTS.items() if layout.slots]


def deep(layout: Headstock, more: float) -> Headstock:
    """Every through slot given the thickness of the wood for its depth, and so much more."""
    thick = layout.blank.thickness + more
    return replace(layout, slots=tuple(replace(slot, depth=thick) if slot.depth is None else slot for slot in layout.slots))


@pytest.mark.parametrize(("name", "more"), [*((name, 0.0) for name in SLOTTED), ("slotted-three-a-side", 2.0)])
def test_it_is_through(name: str, more: float) -> None:
    layout = LAYOUTS[name]
    other = deep(layout, more)
    assert check(other).snags == check(layout).snags
    assert pins_to_plug(other) == pins_to_plug(layout)
    assert opened_out_groups(other)["outline"] == opened_out_groups(layout)["outline"]
    assert [plan.words for plan in plan_routing(other).all] == [plan.words for plan in plan_routing(layout).all]
    assert [op.words for op in operations(other)] == [op.words for op in operations(layout)]
    assert simulate(other, 50) == simulate(layout, 50)


def test_a_tenth_less_has_a_floor() -> None:
    layout = LAYOUTS["slotted-three-a-side"]
    assert check(deep(layout, -0.1)).snags != check(layout).snags
