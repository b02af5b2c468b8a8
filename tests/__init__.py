"""The tests of Pegwright; `python3 -m tests` runs them all."""
