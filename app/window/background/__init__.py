"""Work beside the window: one thread a piece of work, how far it is, when it stands aside for the hand, how it ends."""
