"""Threads beside the window: one piece of work in each, and no collecting of garbage in any of them."""
