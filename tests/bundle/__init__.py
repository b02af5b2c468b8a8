"""The program as one file that needs no Python: how it is made, and how it is looked at."""
