"""Strings that come too near each other between the nut and their posts, measured in space."""

from __future__ import annotations

from geometry import vectors as v
from geometry.checks.snags import NOTE, TIGHT, Snag, short
from geometry.checks.words import both, into
from geometry.saying import say
from geometry.strings.runs import Run, cross
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2, Vec3


def snag(one: Run, two: Run, measured: float, where: Vec3, needed: float) -> Snag:
    """The snag of two strings with `measured` mm between them where `needed` are wanted.

    A note while they do not touch: where they lie to less than a millimetre depends on how they are wound. And no more than
    tight where they do: no wood is lost, and strings can be led otherwise when the head is done.
    """
    words = {"one": one.string, "two": two.string, "tuner": one.tuner, "other": two.tuner}
    advice = say("Let the two posts change strings, lead one string past the other side of its post, or have all posts "
                 "served anew under Strings.")
    if not short(measured, needed):
        return Snag("string-to-string", NOTE, (one.tuner, two.tuner), (*_crossing(one, two), where[2]), None, None,
                    say("Strings {one} and {two} cross on their way to {tuner} and {other}.", **words), advice)
    a, b = both(measured, needed)
    if cross(one, two):
        text = (say("Strings {one} and {two} cross on their way to {tuner} and {other}, {measured} mm into each other.",
                    measured=into(measured), **words) if measured < 0 else
                say("Strings {one} and {two} cross on their way to {tuner} and {other} with {a} mm between them; {b} mm wanted.",
                    a=a, b=b, **words))
    else:
        text = (say("Strings {one} and {two} run {measured} mm into each other on their way to {tuner} and {other}.",
                    measured=into(measured), **words) if measured < 0 else
                say("Strings {one} and {two} come within {a} mm of each other on their way to {tuner} and {other}; {b} mm wanted.",
                    a=a, b=b, **words))
    return Snag("string-to-string", TIGHT if measured < -TOUCH else NOTE, (one.tuner, two.tuner), where, measured, needed, text, advice)


def _crossing(one: Run, two: Run) -> Vec2:
    """Where two strings that cross do so, as seen on the face."""
    way, other = v.sub(one.post, one.nut), v.sub(two.post, two.nut)
    return v.along(one.nut, way, v.cross(v.sub(two.nut, one.nut), other) / v.cross(way, other))
