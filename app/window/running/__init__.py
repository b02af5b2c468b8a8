"""The running program: its start and the card over it, one program for all starts, what it keeps for the next, its faults."""
