"""Strings above the face: the lowest place of each between the nut and its post, or before it goes down into a slot."""

from __future__ import annotations

from collections.abc import Iterable

from geometry import vectors as v
from geometry.checks.depths import LEAST_OUT
from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.snags import FACE, TIGHT, Snag, short
from geometry.checks.words import clearance
from geometry.saying import say
from geometry.strings.runs import Run


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of strings that lie on the face, or nearly: no wood is lost, and the part that holds a string down can be changed."""
    return scene.memo.snags(_low, scene.runs, scene.layout.margins.string_air)


def _low(own: tuple[Run, Item], needed: float) -> tuple[Snag, ...]:
    run, item = own
    places = [(0.0, run.nut_height, "nut", run.tuner), *((one.far, one.height, "retainer", one.hole) for one in run.under)]
    if item.mount == "face" and not short(run.height, LEAST_OUT):  # else that is told of the post
        places.append((run.length, run.height, "post", run.tuner))
    far, height, at, of = min(places, key=lambda place: place[1])
    if at == "post":
        needed = 0.0  # how high a post brings strings is told by their middle: here only what lies in the wood
    measured = height - run.diameter / 2
    if not short(measured, needed):
        return ()
    if at == "nut":
        where = say("at the nut")
        cure = say("Raise the nut, or let the face lie deeper below it.")
    elif at == "post":
        where = say("at the post of {tuner}", tuner=run.tuner)
        cure = say("Choose hardware with a longer post, or plane the head thinner.")
    else:
        where = say("under the retainer on {hole}", hole=of)
        cure = say("Set the retainer higher.")
    text = clearance(measured, needed, "String {string} lies {measured} mm in the face {where}.",
                     "String {string} runs {a} mm above the face {where}; {b} mm wanted.", where=where, string=run.string)
    way = v.unit(v.sub(run.post, run.nut))
    return (Snag("string-to-face", TIGHT, (of, FACE), (*v.along(run.nut, way, far), -height), measured,
                 needed, text, cure),)
