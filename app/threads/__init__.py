"""Threads beside the window: one piece of work in each, how one is waited for, and no collecting of garbage in any of them."""
