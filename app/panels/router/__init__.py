"""The Router stage's panel: plans, passes, what fits, and the rack."""
