"""Panels beside the canvas: fields of what is held, its section, the snags."""
