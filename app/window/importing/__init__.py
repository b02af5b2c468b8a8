"""Importing a drawing: read beside the window, asked what is what, placed, made the layout."""
