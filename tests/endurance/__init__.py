"""Tests that try to break the program: kills, hostile files, long sessions. A seeded share runs with the suite."""
