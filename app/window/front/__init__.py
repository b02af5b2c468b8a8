"""The first minute: the page of an empty start, a layout from a few numbers, files dropped on the window."""
