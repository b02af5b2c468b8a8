"""Capital heights of printed words, mm (common practice, no source)."""

READ = 2.2
"""Of what is read at the bench, at arm's length."""
LEAST = 1.8
"""Of what is read with the paper in the hand, and of words that have to find room between marks: nothing printed is smaller."""
