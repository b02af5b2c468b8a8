"""The start of the program on a bare machine: everything here needs the standard library alone."""
