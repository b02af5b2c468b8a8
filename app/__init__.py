"""Pegwright, the program: set-up, commands, documents, formats, the window and the sheets."""

__version__ = "0.1.0"
