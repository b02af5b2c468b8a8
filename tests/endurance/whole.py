"""An invented layout in which every field of the file stands with a value of its own, and JSON with something in it exchanged."""

from __future__ import annotations

import base64
import io
import json
import random
from collections.abc import Iterator
from copy import deepcopy
from functools import cache

import msgspec
from PIL import Image

from app.formats import headstock
from app.window.demo import demo
from geometry.layout import Headstock

RECORDS = ("margins", "accuracy", "rates")
"""Records of numbers alone: each is made a little larger."""


@cache
def whole() -> Headstock:
    """The demo with everything that a maker may have added to it."""
    plain = json.loads(headstock.encode(demo()))
    for name in RECORDS:
        plain[name] = {key: round(1.25 * value, 3) for key, value in plain[name].items()}
    plain["blank"] |= {"hard_wood": True, "finish": True, "behind": 21.5, "face_veneer": 1.2, "back_veneer": 0.7, "scarf": 61.5}
    plain["nut"] |= {"spacing": "gaps", "width": 48.5, "spread": 40.2, "pair": 2.4, "height": 6.5, "pitch": 12.5, "scale_length": 650.5, "slant": 4.5}
    plain["ears"] = [{"id": "ear", "side": "treble", "width": 9.5, "start": 20.5, "end": 180.5}]
    plain["outline"]["nodes"][0]["smooth"] = True
    plain["strings"][0] |= {"note": "E2", "core": 0.4, "scale_length": 660.5}
    plain["slots"][0] |= {"ramp": {"length": 12.5, "depth": 3.5, "width": 9.5}, "depth": 14.5}
    plain["slots"][1]["shape"] = {"kind": "drawn", "loop": {"nodes": [
        {"at": [10, 40]}, {"at": [22, 40.5], "handles": [[24, 80], [24, 120]], "smooth": True}, {"at": [21, 160], "bulge": 0.9}, {"at": [11, 160]}]}}
    plain["slots"].append({"id": "a pocket", "there": True, "depth": 9.5, "shape": {
        "kind": "straight", "nut_end": [0.5, -6.5], "tip_end": [0.5, 20.5], "width": 11.5}})
    plain["patterns"][0] |= {"about": "a note", "least_wood": 9.5, "most_wood": 21.5}
    plain["patterns"][0]["bores"][0] |= {"reamed": 9.5, "taper": 25}
    plain["patterns"][0]["post"] |= {"winding": 6.5, "measured": "face"}
    side = next(one for one in plain["tuners"] if one["place"]["kind"] == "edge")
    side |= {"place": {"kind": "edge", "side": "bass", "along": 60.5, "depth": 7.5}, "held": True, "winds": "bass",
             "flat": {"shape": "spot", "size": 11.5, "depth": 0.7}}
    face = next(one for one in plain["tuners"] if "face" in one["id"])
    face["place"] = {"kind": "free", "at": [-18.5, 40.5], "turn": 170.5}
    plain["rows"][0]["run"] = {"kind": "straight", "start": [-28.5, 55.5], "heading": 88.5, "turn": 178.5}
    plain["holes"] = [{"id": "a hole", "at": [3.5, 170.5], "diameter": 4.5, "depth": 6.5, "surface": "back",
                       "retainer": {"height": 3.5, "width": 14.5}},
                      {"id": "an old hole", "at": [0.5, 60.5], "diameter": 5.5, "there": True},
                      {"id": "a plugged hole", "at": [1.5, 75.5], "diameter": 6.5, "there": True, "plugged": True}]
    plain["pins"][0]["diameter"] = 5.5
    plain["rack"] |= {"press": {"tilt": 40.5, "quill": 55.5, "throat": 110.5, "base": 120.5},
                      "router": {"base": 152.5, "plunge": 62.5, "speeds": [9000, 21000], "collets": [6, 8, 12.7]}}
    plain["rack"]["bits"][0] |= {"about": "new", "marked_speed": 24000, "bearing": "tip", "bearing_diameter": 6.5, "bearing_height": 4.5}
    plain["rack"]["drills"][0] |= {"point_angle": 118.5, "spur": 0.5}
    bit, bush = plain["rack"]["bits"][1]["id"], plain["rack"]["bushes"][0]["id"]
    plain["template"] = {"bit": bit, "bush": bush, "thickness": 9.5, "board": "blank"}
    plain["routes"] = [{"of": plain["slots"][0]["id"], "tools": [{"bit": bit, "bush": bush}]}]
    plain["notes"] = [{"on": plain["slots"][0]["id"], "text": "a note"}]
    plain["order"] = ["cut outline"]
    plain["book"] = _book(plain["slots"][0]["id"])
    plain["picture"] = _picture()
    return headstock.decode(json.dumps(plain).encode())


def _book(slot: str) -> dict:
    task = {"operation": f"rout {slot}", "title": "Rout it", "rate": "rout_100", "features": [slot], "planned": 9.5}
    return {"piece": "real", "currency": "EUR", "clock": {"piece": "real", "task": task, "since": 1.7e9} | _made(),
            "done": [{"piece": "real", "task": task, "number": 7}, _pasted(), _drilled(), _cut(slot)], "times": [{"piece": "real", "task": task, "minutes": 8.5} | _made()],
            "prices": [{"piece": "real", "part": "wood", "count": 2, "each": "12.50"}],
            "remarks": [{"piece": "real", "text": "too close", "on": slot, "task": task, "done": True}],
            "readings": [{"piece": "real", "drilling": "a hole", "what": "distance", "value": 3.5, "how": "over pins", "other": "nut pin",
                          "planned": 3.25}]}


def _pasted() -> dict:
    """The papers, pasted when the outline was another."""
    task = {"operation": "mark", "title": "Paste it", "rate": "mark", "planned": 4.5}
    return {"piece": "real", "task": task, "number": 2, "spots": [{"surface": "back", "at": [0.5, 61.5]}, {"surface": "bass edge", "at": [71.5, 8.5]}]}


def _drilled() -> dict:
    """The old hole, drilled elsewhere."""
    task = {"operation": "bore an old hole.1", "title": "Drill it", "rate": "hole", "features": ["an old hole"], "planned": 1.5}
    return {"piece": "real", "task": task, "number": 3, "hole": _made()["hole"]}


def _cut(slot: str) -> dict:
    """Its ramp, filed where it was drawn 2 mm nearer to the nut."""
    task = {"operation": f"ramp {slot}", "title": "File it", "rate": "ramp", "features": [slot], "planned": 6.5}
    return {"piece": "real", "task": task, "number": 5, "cut": _made()["cut"]}


def _made() -> dict:
    """A hole and a cut, of which a step has one at most."""
    shape = {"kind": "straight", "nut_end": [-14.9, 28.5], "tip_end": [-14.9, 161.5], "width": 13.5}
    return {"hole": {"at": [0.5, 61.5, 0], "end": [0.5, 61.5, 16], "diameter": 5.5, "through": True},
            "cut": {"shape": shape, "begins": 1.5, "ends": 14.5, "floor": True, "light": 0.5, "corners": True, "cutter": 9.5, "ramp": {"length": 12.5, "depth": 3.5, "width": 9.5}}}


@cache
def jpeg() -> bytes:
    """A small picture, 4 x 6 points."""
    out = io.BytesIO()
    Image.new("L", (4, 6), 90).save(out, "JPEG")
    return out.getvalue()


def _picture() -> dict:
    return {"name": "a.jpg", "jpeg": base64.b64encode(jpeg()).decode(), "width": 4, "height": 6,
            "place": [9.5, 0, -20, 0, -9.5, 50, 0, 0, 1], "opacity": 0.5, "hidden": True, "locked": False}


def records(part: object) -> Iterator[msgspec.Struct]:
    """A record and all that are in it."""
    if isinstance(part, msgspec.Struct):
        yield part
        for name in part.__struct_fields__:
            yield from records(getattr(part, name))
    elif isinstance(part, tuple):
        for one in part:
            yield from records(one)


# ---- JSON with something exchanged ---------------------------------------------
ODD = (None, True, False, 0, -1, 1, 0.5, 1e300, -1e300, 1e-300, 5000, 5000.5, -5000, 360, 2**63, 10**400, "", " ", "a", "outline", "bass", "treble",
       "face", "side", "none", "1e5", "NaN", "x" * 300, "a\nb", "\u202e", "\ud83c\udfb8", [], {}, [[]], [0, 0], [1, 2, 3], {"kind": "edge"})


def reworked(data: bytes, chance: random.Random) -> bytes:
    """Sound JSON in which one to four things are exchanged, left out, doubled or moved: still JSON, and nearly what it was."""
    record = json.loads(data)
    for _ in range(chance.choice((1, 1, 1, 2, 4))):
        _rework(record, chance)
    return json.dumps(record, ensure_ascii=chance.random() < 0.5).encode("utf-8", "replace")


def _rework(record: object, chance: random.Random) -> None:
    """Walk down by chance, every field as likely as any beside it, and do something there."""
    part = record
    while True:
        keys = list(part) if isinstance(part, dict) else range(len(part))
        if not keys:
            return
        key = chance.choice(keys)
        if not isinstance(part[key], dict | list) or not part[key] or chance.random() < 0.12:
            break
        part = part[key]
    what, old = chance.randrange(6), part[key]
    if what == 0:
        del part[key]
    elif what == 1 and isinstance(part, list):
        part.insert(chance.randrange(len(part) + 1), old)
    elif what == 2 and isinstance(part, list):
        other = chance.randrange(len(part))
        part[key], part[other] = part[other], part[key]
    elif what == 3 and isinstance(old, int | float) and abs(old) < 1e9:
        part[key] = chance.choice((-old, old * 1.5, old + 0.001, old / 1000, round(old), chance.uniform(-200, 200)))
    elif what == 4 and isinstance(part, dict):
        part[chance.choice((*part, "colour"))] = old
    else:
        part[key] = deepcopy(chance.choice(ODD))
