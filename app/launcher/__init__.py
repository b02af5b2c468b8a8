"""Pegwright in the menus of the desktop: a launcher, the kind of file, the pictures; put in and taken out again."""
