"""Router and template: followers, offsets, fit."""

from geometry.routing.follower import Follower, follower, template_opening, template_outline

__all__ = ["Follower", "follower", "template_opening", "template_outline"]
