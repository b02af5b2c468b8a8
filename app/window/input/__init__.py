"""Pointer and keys on the drawing: gestures, the pen that arrow keys move, what a screen reader is told."""
