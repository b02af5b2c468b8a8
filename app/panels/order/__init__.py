"""The Order stage's panel: steps to drag, the page of one step, the hours."""
