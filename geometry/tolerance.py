"""Every tolerance of the project, named once. All lengths in millimetres, all angles in radians."""

import math

TOUCH = 1e-6
"""Two points nearer than this are one point; touching a margin to within this passes."""

FLAT = 0.002
"""Largest sagitta left when a curve is flattened for a polygon computation."""

ALONG_NUT = 0.1
"""How far from the nut line an end of the outline still lies along it: who draws a slanted one types tenths."""

JOIN = 0.01
"""Gap between loose drawing ends that is closed without asking."""

SAME_HOLE = 0.01
"""How far a hole that is drilled may be off the drawing's in place, depth and width and still be that hole; so of a line that is cut."""

PRICKED = 0.1
"""How far a mark on a pasted paper, a line of the template or a glue line may be off the drawing's and still be that one, mm: nobody pricks or cuts
along a paper more truly (common practice, no source)."""

ONE_WAY = 1e-3
"""rad: tuners turned farther apart than this share no plate."""

SAME_TILT = math.radians(0.05)
"""Tilts that differ by no more are set at the table as one (common practice, no source)."""

QUAD_SEGS = 64
"""Chords per quarter turn in a polygon offset (a 10 mm arc stays within 0.0008 mm)."""

SLIVER_AREA = 0.005
"""Area in square millimetres below which a leftover of a polygon operation is noise."""
