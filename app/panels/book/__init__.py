"""The Job book stage's tables and panel, and the readings."""
