"""Edits: every change to a layout, as a function from one layout to the next.

Each takes a Headstock and returns a new one that is valid and can be saved, or
raises GeometryError with one sentence for the maker. None changes its input.
What an edit adds comes last in its group; new_ids(before, after) names it.
"""

from geometry.edits.adding import add_hole, add_pin, add_tuner, duplicate, remove_features
from geometry.edits.copying import copy_side, mirror_copies, mirror_layout, side_features
from geometry.edits.fields import GROUPS, get_field, rename, set_field
from geometry.edits.fillet import fillet, largest_fillet
from geometry.edits.moving import align, move_features, nudge, plan_point
from geometry.edits.nodes import bend_edge, move_handle, move_node, move_nodes, node_at, set_smooth
from geometry.edits.parts import OUTLINE, loop_at, new_ids
from geometry.edits.rows import make_row, set_row_spacing, spread
from geometry.edits.several_nodes import align_nodes, remove_nodes
from geometry.edits.shape import add_node, remove_node, set_bulge, set_edge, set_edge_length, set_radius
from geometry.edits.slots import (
    add_drawn_slot,
    add_straight_slot,
    move_slot_end,
    set_slot_length,
    set_slot_width,
    to_drawn,
)
from geometry.edits.symmetry import is_symmetric, make_symmetric, mirrored_loop
from geometry.edits.tuners import (
    along_edge,
    free_from_row,
    move_tuner,
    set_axis_depth,
    set_pattern,
    set_place,
    set_turn,
    slide_tuner,
)
from geometry.edits.twin_features import echo_features, twin_feature
from geometry.edits.whole import move_loop, replace_loop, replace_outline, transform_loop

__all__ = [
    "GROUPS", "OUTLINE", "add_drawn_slot", "add_hole", "add_node", "add_pin", "add_straight_slot", "add_tuner",
    "align", "align_nodes", "along_edge", "bend_edge", "copy_side", "duplicate", "echo_features", "fillet", "free_from_row",
    "get_field", "is_symmetric", "largest_fillet", "loop_at", "make_row", "make_symmetric", "mirror_copies",
    "mirror_layout", "mirrored_loop", "move_features", "move_handle", "move_loop", "move_node",
    "move_nodes", "move_slot_end", "move_tuner", "new_ids", "node_at", "nudge",
    "plan_point", "remove_features", "remove_node", "remove_nodes", "rename", "replace_loop", "replace_outline",
    "set_axis_depth", "set_bulge", "set_edge", "set_edge_length", "set_field", "set_pattern",
    "set_place", "set_radius", "set_row_spacing", "set_slot_length", "set_slot_width",
    "set_smooth", "set_turn", "side_features", "slide_tuner", "spread", "to_drawn", "transform_loop",
    "twin_feature",
]
