"""Shop accuracy: how likely a headstock comes out, why it may not, what to hold finer, and what to move instead."""

from geometry.at_need import fetched

_HOMES: dict[str, tuple[str, ...]] = {
    "engine": ("Linear", "Spread"),
    "needs": ("Need", "Requirements"),
    "proposal": ("Outlook", "Proposal", "propose_moves"),
    "required": ("requirements",),
    "simulation": ("Clearance", "Simulation", "simulate"),
    "sources": ("SOURCES", "TITLES", "UNITS", "Share", "Source"),
    "targets": ("Aim",),
    "told": ("is_simulated",),
    "words": ("cause_words", "chance_words", "place_words", "rise_words", "share_words", "short_chance_words",
              "short_success_words", "success_words"),
}
"""File to the names that others may use."""

__all__ = sorted(name for names in _HOMES.values() for name in names)
__getattr__ = fetched(__name__, _HOMES)
