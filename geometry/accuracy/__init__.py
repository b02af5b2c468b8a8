"""Shop accuracy."""
