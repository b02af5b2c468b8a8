"""The rooms of the stages: what a stage brings into the window beside tools and rows."""
