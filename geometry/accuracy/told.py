"""Which snags the simulation has an answer for."""

from __future__ import annotations

from geometry.checks.snags import Snag

NOT_SIMULATED = frozenset({
    "seats-overlap", "seat-overhang", "seat-over-slot", "plate-rocks", "flat-too-small", "flat-rail", "plate-over-flat", "hole-to-flat",
    "post-to-post", "buttons", "button-to-wood", "no-mark", "ways-meet", "way-through-head",
    "blank-too-small", "blank-too-thick", "pin-to-blank", "hole-in-the-way", "few-pins", "pins-askew", "no-slot", "no-drill", "drill-size", "drill-short", "quill", "bit-too-wide",
    "bit-too-short", "wood-left", "template-lost", "glue-line", "glue-line-crossed", "ear-too-short", "feather-screw", "feather-edge", "post-not-through", "wood-for-tuner", "ream-short", "post-too-low",
    "string-past-post", "drill-point", "misses-wood", "drilled-otherwise", "drilled-and-gone", "cut-otherwise", "cut-and-gone", "marked-otherwise", "glued-otherwise",
    "ramp-to-pocket", "ramp-to-slot", "string-to-post", "string-to-screw", "retainer-bar", "string-to-face", "string-to-string", "string-to-wall", "string-to-nut-end", "string-to-ramp", "string-to-floor",
    "string-off-wood", "nut-step", "string-off-nut", "strings-in-nut"})
"""Kinds of snag that no Spec measures. Plates, flats, posts and buttons, blank and glue, pins and bores on their way through the waste, points of
drills, ramps beside pockets and slots, and strings may come out otherwise than drawn: how likely is not told. Rack, router and job book are as they are."""


def is_simulated(snag: Snag) -> bool:
    """Whether a snag is about a clearance that the simulation measures."""
    return snag.unit == "mm" and snag.measured is not None and snag.kind not in NOT_SIMULATED
