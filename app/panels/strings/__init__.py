"""The Strings stage's table and panel."""
