"""What the program can explain: its actions with their keys, and the words of the trade."""
