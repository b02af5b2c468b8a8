"""Headstock geometry, checks and plans: millimetres and radians, no screen, no files.

Frame of the whole project: the origin lies on the face where the nut line
crosses the centreline; +x points to the treble side, +y to the tip, +z down
into the wood (face z = 0, back z = thickness).
"""
