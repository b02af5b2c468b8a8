"""Readings taken on a finished piece: how far it strays from the plan, what still fits, how true the shop works."""

from geometry.measured.fits import Joined, joined
from geometry.measured.readings import Off, at_square_edge, centre_distance, drillings, offs, planned_value, with_side
from geometry.measured.shop import Found, implied, interval, places, take_accuracy
from geometry.measured.stretch import Fit, Place, fit_places

__all__ = ["Fit", "Found", "Joined", "Off", "Place", "at_square_edge", "centre_distance", "drillings", "fit_places", "implied", "interval", "joined",
           "offs", "places", "planned_value", "take_accuracy", "with_side"]
