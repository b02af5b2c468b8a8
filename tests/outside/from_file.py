"""A layout worked out anew from its file alone: the outline as points, every hole as a line in space.

Nothing of the program's curves, edges, frames or drillings is used. A curve is followed at DENSE points an edge; lengths
are sums of chords, a tangent is the difference of two points REACH mm to either side.
"""

import math
from dataclasses import dataclass

import numpy as np

DENSE, REACH = 3000, 0.02


def loop_points(nodes: list[dict], dense: int = DENSE) -> np.ndarray:
    """(n, 2) points along a closed loop of the file."""
    t = np.linspace(0.0, 1.0, dense, endpoint=False)[:, None]
    found = []
    for node, after in zip(nodes, [*nodes[1:], nodes[0]], strict=True):
        a, b = np.array(node["at"]), np.array(after["at"])
        if node.get("handles"):
            c, d = map(np.array, node["handles"])
            found.append((1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * c + 3 * (1 - t) * t * t * d + t ** 3 * b)
        elif node.get("bulge"):
            turn, chord = 4 * math.atan(node["bulge"]), b - a  # tan of a quarter of the sweep (DXF)
            half = np.hypot(*chord) / 2
            centre = (a + b) / 2 + np.array((-chord[1], chord[0])) / (2 * half) * half / math.tan(turn / 2)
            c, s = np.cos(turn * t), np.sin(turn * t)
            spoke = a - centre
            found.append(centre + np.hstack([c * spoke[0] - s * spoke[1], s * spoke[0] + c * spoke[1]]))
        else:
            found.append(a + (b - a) * t)
    return np.concatenate(found)


def slot_points(shape: dict) -> np.ndarray:
    """(n, 2) points along the wall of a slot."""
    if shape["kind"] == "drawn":
        return loop_points(shape["loop"]["nodes"], 400)
    ends = np.array(shape["nut_end"], float), np.array(shape["tip_end"], float)
    heading = math.atan2(*(ends[1] - ends[0])[::-1]) if np.ptp(ends, axis=0).any() else math.pi / 2
    turn = np.linspace(-math.pi / 2, math.pi / 2, 721)
    return np.concatenate([end + shape["width"] / 2 * np.column_stack([np.cos(turn + facing), np.sin(turn + facing)])
                           for end, facing in ((ends[1], heading), (ends[0], heading + math.pi))])


def walked_edge(points: np.ndarray, side: str, slant: float = 0.0) -> np.ndarray:
    """Points from the nut line, where the outline is outermost on that side, up to its top; `slant` of a nut that ends it, degrees."""
    x, y = points.T
    before = y + x * math.tan(math.radians(slant))
    level = before - 0.002 if slant and before.min() > -0.002 else y  # its ends are rounded to thousandths
    area = np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y)
    if (area > 0) != (side == "treble"):  # so that walking on leads up this side
        points = points[::-1]
        level = level[::-1]
    after, next_level = np.roll(points, -1, axis=0), np.roll(level, -1)
    crosses = np.flatnonzero((level <= 0) & (next_level > 0))
    share = -level[crosses] / (next_level - level)[crosses]
    feet = points[crosses] + share[:, None] * (after - points)[crosses]
    k = int(np.argmax(feet[:, 0] if side == "treble" else -feet[:, 0]))
    way = np.roll(points, -(crosses[k] + 1), axis=0)
    top = int(np.argmax(way[:, 1] >= points[:, 1].max() - 1e-9))
    return np.vstack([feet[k], way[:top + 1]])


class Edge:
    """One side of the outline, by length from the nut line."""

    def __init__(self, points: np.ndarray, side: str, slant: float = 0.0) -> None:
        self.points, self.side = walked_edge(points, side, slant), side
        self.run = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(self.points, axis=0).T))])

    def at(self, along: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """(point, unit tangent to the tip, unit normal out of the wood)."""
        before, here, after = (np.array([np.interp(s, self.run, self.points[:, k]) for k in (0, 1)])
                               for s in (along - REACH, along, along + REACH))
        ahead = (after - before) / np.hypot(*(after - before))
        return here, ahead, np.array((ahead[1], -ahead[0])) * (1 if self.side == "treble" else -1)

    def nearest(self, point: np.ndarray) -> tuple[float, float]:
        """(distance, length along) of the nearest of its points."""
        away = np.hypot(*(self.points - point).T)
        k = int(np.argmin(away))
        return float(away[k]), float(self.run[k])


@dataclass(frozen=True)
class Bored:
    """A drilling of the finished head, mm: from `start` `depth` along the unit vector `way`."""

    id: str
    of: str
    role: str
    radius: float
    start: np.ndarray
    way: np.ndarray
    depth: float
    through: bool
    side: str
    """treble or bass for a drilling into an edge, "" for one into face or back"""
    reamed: float = 0.0
    """how wide it is opened at its start afterwards, 0: not at all"""
    taper: float = 30.0

    @property
    def hole(self) -> str:
        return self.id.rsplit(".", 1)[0]


class FromFile:
    """A layout's file (as json) with its edges and holes."""

    def __init__(self, file: dict) -> None:
        self.file, self.blank = file, file["blank"]
        self.thick = self.blank["thickness"]
        self.patterns, self.rows = ({one["id"]: one for one in file.get(key, ())} for key in ("patterns", "rows"))
        self.outline = loop_points(file["outline"]["nodes"])
        self.edges = {side: Edge(self.outline, side, file.get("nut", {}).get("slant", 0.0)) for side in ("bass", "treble")}
        self.holes = [bored for tuner in file["tuners"] for bored in self._tuner(tuner)]
        self.holes += [self._upright(f"{one['id']}.1", one["id"], "hole", one, one.get("surface", "face"), one["at"], one.get("depth"))
                       for one in file.get("holes", ())]
        self.holes += [self._upright(f"{one['id']}.1", one["id"], "locating", one, "face", one["at"], None) for one in file.get("pins", ())]

    def _tuner(self, tuner: dict) -> list[Bored]:
        pattern = self.patterns[tuner["pattern"]]
        axes = list(dict.fromkeys(tuple(bore.get("at", (0.0, 0.0))) for bore in pattern["bores"]))
        found = []
        for number, at in enumerate(axes, 1):
            stack = sorted((b for b in pattern["bores"] if tuple(b.get("at", (0.0, 0.0))) == at), key=lambda b: -b["diameter"])
            for step, bore in enumerate(stack, 1):
                id = f"{tuner['id']}.{number}.{step}"
                if pattern["mount"] == "side":
                    side, seat, ahead, out, z = self.seat(tuner)
                    start = np.array((*(seat + ahead * at[0]), z + at[1]))
                    found.append(Bored(id, tuner["id"], bore["role"], bore["diameter"] / 2, start, np.array((*-out, 0.0)),
                                       bore["depth"], False, side))
                else:
                    post, out = self._post(tuner)
                    left = np.array((-out[1], out[0]))
                    found.append(self._upright(id, tuner["id"], bore["role"], bore, bore.get("surface", "face"), post + out * at[0] + left * at[1],
                                               bore.get("depth")))
        return found

    def flats(self) -> list[tuple[np.ndarray, np.ndarray, np.ndarray, dict]]:
        """(seat, unit tangent, unit normal outwards, flat) of each side tuner whose edge is cut flat; a seat in space."""
        found = []
        for tuner in self.file["tuners"]:
            if tuner.get("flat") and self.patterns[tuner["pattern"]]["mount"] == "side":
                _, seat, ahead, out, z = self.seat(tuner)
                found.append((np.array((*seat, z)), np.array((*ahead, 0.0)), np.array((*out, 0.0)), {"shape": "flat", **tuner["flat"], "of": tuner["id"]}))
        return found

    def seat(self, tuner: dict) -> tuple[str, np.ndarray, np.ndarray, np.ndarray, float]:
        """(side, seat, unit tangent to the tip, unit normal outwards, depth below the face) of a side tuner."""
        place = tuner["place"]
        if place["kind"] == "row":
            row = self.rows[place["row"]]
            side, along, deep = row["run"]["side"], row["run"]["first"] + place["index"] * row["spacing"], None
        else:
            side, along, deep = place["side"], place["along"], place.get("depth")
        seat, ahead, out = self.edges[side].at(along)
        sunk = (tuner.get("flat") or {"depth": 0.0})["depth"]
        return side, seat - out * sunk, ahead, out, self.thick / 2 if deep is None else deep

    def _post(self, tuner: dict) -> tuple[np.ndarray, np.ndarray]:
        """(post, unit vector to the button) of a face tuner: square to the nearest edge where nothing else is said."""
        place = tuner["place"]
        if place["kind"] == "row":
            row = self.rows[place["row"]]
            run = row["run"]
            if run["kind"] == "edge":
                seat, _, out = self.edges[run["side"]].at(run["first"] + place["index"] * row["spacing"])
                return seat - out * run.get("inset", 0.0), out
            heading, turn = math.radians(run["heading"]), run.get("turn")
            post = np.array(run["start"]) + place["index"] * row["spacing"] * np.array((math.cos(heading), math.sin(heading)))
        else:
            post, turn = np.array(place["at"], float), place.get("turn")
        if turn is not None:
            return post, np.array((math.cos(math.radians(turn)), math.sin(math.radians(turn))))
        _, along, edge = min((*edge.nearest(post), edge) for edge in self.edges.values())
        out = post - edge.at(along)[0]
        return post, -out / np.hypot(*out)

    def _upright(self, id: str, of: str, role: str, bore: dict, surface: str, at, depth: float | None) -> Bored:
        through = depth is None or depth >= self.thick
        down = 1.0 if surface == "face" else -1.0
        start = np.array((at[0], at[1], 0.0 if surface == "face" else self.thick))
        return Bored(id, of, role, bore["diameter"] / 2, start, np.array((0.0, 0.0, down)), self.thick if through else depth, through, "",
                     bore.get("reamed") or 0.0, bore.get("taper", 30.0))
