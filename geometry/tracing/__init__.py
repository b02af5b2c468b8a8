"""From a picture to an outline: plane perspective, the edge of a shape to a fraction of a point, smooth lines through it.

Picture coordinates are points of the picture with their corner at the upper
left of the first one, y down; the middle of the first point is (0.5, 0.5).
"""
