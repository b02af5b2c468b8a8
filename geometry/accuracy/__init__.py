"""Shop accuracy: how likely a headstock comes out, why it may not, what to hold finer, and what to move instead."""

from geometry.accuracy.engine import PERCENTS, Input, Linear, Spread
from geometry.accuracy.needs import Need, Requirements
from geometry.accuracy.propagation import Propagated, propagate
from geometry.accuracy.proposal import Outlook, Proposal, propose_moves
from geometry.accuracy.requirements import requirements
from geometry.accuracy.simulation import Clearance, Simulation, simulate
from geometry.accuracy.sources import SOURCES, TITLES, UNITS, Share, Source
from geometry.accuracy.targets import Aim
from geometry.accuracy.told import is_simulated
from geometry.accuracy.words import (
    cause_words,
    chance_words,
    rise_words,
    share_words,
    short_chance_words,
    success_words,
)

__all__ = ["PERCENTS", "SOURCES", "TITLES", "UNITS", "Aim", "Clearance", "Input", "Linear", "Need", "Outlook",
           "Propagated", "Proposal", "Requirements", "Share", "Simulation", "Source", "Spread", "cause_words",
           "chance_words", "is_simulated", "propagate", "propose_moves", "requirements", "rise_words",
           "share_words", "short_chance_words", "simulate", "success_words"]
