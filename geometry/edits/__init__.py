"""Edits: every change to a layout, as a function from one layout to the next.

Each takes a Headstock and returns a new one that is valid and can be saved, or
raises GeometryError with one sentence for the maker. None changes its input.
What an edit adds comes last in its group; new_ids(before, after) names it.
"""

from geometry.at_need import fetched
from geometry.edits.fillet import fillet, largest_fillet  # here: one has the name of its file

_HOMES: dict[str, tuple[str, ...]] = {
    "adding": ("add_hole", "add_pin", "add_tuner", "duplicate", "remove_features"),
    "copying": ("copy_side", "mirror_copies", "mirror_layout", "side_features"),
    "fields": ("GROUPS", "get_field", "rename", "set_field"),
    "joined_slots": ("join_slots",),
    "moving": ("align", "move_features", "plan_point"),
    "nodes": ("bend_edge", "move_handle", "move_node", "move_nodes", "node_at", "set_smooth"),
    "other_hand": ("hand_for_edge", "is_handed", "set_hand_by_side", "take_other_hand"),
    "parts": ("loop_at", "new_ids"),
    "pockets": ("add_truss_rod_pocket", "set_slots_there"),
    "rows": ("make_row", "set_row_heading", "set_row_spacing", "spread", "square_row"),
    "several_nodes": ("align_nodes", "remove_nodes"),
    "shape": ("add_node", "remove_node", "set_bulge", "set_edge", "set_edge_length", "set_radius"),
    "slots": ("add_drawn_slot", "add_straight_slot", "move_slot_end", "set_slot_length", "set_slot_width", "to_drawn"),
    "symmetry": ("make_symmetric", "mirrored_loop"),
    "tuners": ("along_edge", "free_from_row", "move_tuner", "set_pattern", "set_place", "set_turn",
               "slide_tuner"),
    "twin_features": ("echo_features", "twin_feature"),
    "whole": ("move_loop", "replace_loop", "replace_outline", "transform_loop"),
}
"""File to the names that others may use."""

__all__ = sorted(("fillet", "largest_fillet", *(name for names in _HOMES.values() for name in names)))
__getattr__ = fetched(__name__, _HOMES)
