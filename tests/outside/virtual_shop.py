"""A blank as a cloud of points, worked step by step as the running order says in words.

Every number is read from the printed sentence of a step and its set-up; the drill press is a table, a fence and a spindle,
and nothing of the program's drillings is used. A point of the cloud is wood until a tool passes over it. `trouble` collects
what a maker would find missing at the bench: a mark, a square edge, a face for the fence, a pin hole.
"""

import math
import re

import numpy as np
import pyclipper
import shapely

from tests.outside.from_file import FromFile, slot_points
from tests.outside.volumes import BEYOND, COARSE, area, before_nut, in_cone, in_flat, in_rod, nut_end, offset, whole

N = r"([\d.]+)"


class Shop:
    """`points` (n, 3) in the frame of the layout and which of them are `wood` still."""

    def __init__(self, head: FromFile, points: np.ndarray) -> None:
        self.head, self.points = head, points
        blank = head.blank
        self.wood = ((points[:, 0] >= -blank["bass"]) & (points[:, 0] <= blank["treble"]) & (points[:, 1] <= blank["tip"])
                     & (points[:, 1] >= -blank.get("behind", 0.0)) & (points[:, 2] >= 0) & (points[:, 2] <= head.thick))
        self.square = self.wood.copy()
        self.slots = {slot["id"]: whole(slot_points(slot["shape"])) for slot in head.file["slots"]}
        self.outline = self._with_neck()
        self.trouble: list[str] = []
        self.bored = np.zeros(len(points), bool)
        """what the drill press took through the square edges"""
        self.pared: list[tuple[str, np.ndarray, float]] = []
        """(slot or outline, where, how deep) of what a plan tells to pare by hand"""
        for slot in head.file["slots"]:
            if slot.get("there"):  # the blank came with it
                self.take(self.over(area(self.slots[slot["id"]]), -1, head.thick + 1 if slot.get("depth") is None else slot["depth"]))
        for hole in head.file.get("holes", ()):
            if hole.get("there"):
                (one,) = [one for one in head.holes if one.of == hole["id"]]
                self.drill(one.start, one.way, one.depth + (BEYOND if one.through else 0.0), one.radius)
        self.came = self.square & ~self.wood
        """where the blank is open already"""
        for name in self.to_glue():
            self.wood &= ~self.glued(name)

    def _with_neck(self) -> list:
        """The outline going straight on behind the nut line, where the neck is."""
        feet = [self.head.edges[side].at(0.05) for side in ("bass", "treble")]
        (bass, bass_way, _), (treble, treble_way, _) = feet
        neck = whole(np.array([bass, treble, treble - 40 * treble_way, bass - 40 * bass_way]))
        joined = pyclipper.Pyclipper()
        head = whole(self.head.outline[::COARSE])
        for path in (*head, *neck):
            joined.AddPath(path if pyclipper.Orientation(path) else path[::-1], pyclipper.PT_SUBJECT, True)
        return joined.Execute(pyclipper.CT_UNION, pyclipper.PFT_NONZERO, pyclipper.PFT_NONZERO)

    def before_nut(self, by: float = 0.0) -> np.ndarray:
        """Points more than `by` mm before the nut line, slanted or not."""
        return before_nut(self.head, self.points, by)

    # ---- what a tool takes -------------------------------------------------
    def take(self, gone: np.ndarray) -> None:
        self.wood = self.wood & ~gone

    def over(self, shape: shapely.Geometry, top: float, bottom: float) -> np.ndarray:
        """Points within an area in plan between two depths below the face, mm."""
        z = self.points[:, 2]
        shapely.prepare(shape)
        return shapely.contains_xy(shape, self.points[:, 0], self.points[:, 1]) & (z >= top) & (z <= bottom)

    def drill(self, start: np.ndarray, way: np.ndarray, depth: float, radius: float) -> np.ndarray:
        gone = in_rod(self.points, start, way, -BEYOND, depth, radius)
        self.take(gone)
        return gone

    def share(self, where: np.ndarray) -> float:
        """How much of the wood that the square blank had somewhere is there still, 0 to 1; 1 where no point tells."""
        there = where & self.square
        return float((self.wood & there).sum() / there.sum()) if there.any() else 1.0

    # ---- gluing up ----------------------------------------------------------
    def to_glue(self) -> list[str]:
        blank = self.head.blank
        return [*(ear["id"] for ear in self.head.file.get("ears", ())), *(side for side in ("face", "back") if blank.get(f"{side}_veneer"))]

    def glued(self, name: str) -> np.ndarray:
        """Points of the square blank in an ear or in the veneer of a side."""
        blank, (x, y, z) = self.head.blank, self.points.T
        if name == "face":
            return self.square & (z <= blank["face_veneer"])
        if name == "back":
            return self.square & (z >= self.head.thick - blank["back_veneer"])
        ear = next(ear for ear in self.head.file["ears"] if ear["id"] == name)
        across = x > blank["treble"] - ear["width"] if ear["side"] == "treble" else x < ear["width"] - blank["bass"]
        core = (z > blank.get("face_veneer", 0.0)) & (z < self.head.thick - blank.get("back_veneer", 0.0))
        return self.square & across & core & (y >= ear["start"]) & (y <= ear["end"])

    def glue(self, name: str, words: str) -> None:
        """Onto whole wood, and opened again with a knife over what the words name."""
        new = self.glued(name)
        veneers = [self.glued(side) for side in ("face", "back") if self.head.blank.get(f"{side}_veneer")]
        if name in ("face", "back"):
            if self.share(self.square & ~np.logical_or.reduce(veneers) & ~self.came) < 1.0:
                self.trouble.append(f"glue {name} veneer: what it lies on is cut already, or not all there yet")
        elif any((self.wood & veneer).any() for veneer in veneers):
            self.trouble.append(f"glue {name}: a veneer is on already")
        opened = re.search("open it over (.*) with a knife", words)
        covers = name in ("face", "back") and not opened
        self.wood = self.wood | (new if covers else new & ~self.came)

    def plug(self, words: str) -> None:
        """Wood into the old holes that the words name, flush with what is not veneered yet."""
        for hole in self.head.file["holes"]:
            if re.search(rf"(: |, | and ){re.escape(hole['id'])}\b", words):
                (one,) = [one for one in self.head.holes if one.of == hole["id"]]
                full = in_rod(self.points, one.start, one.way, -BEYOND, one.depth + (BEYOND if one.through else 0.0), one.radius) & self.square
                self.came = self.came & ~full
                self.wood = self.wood | full & ~np.logical_or.reduce([self.glued(name) for name in self.to_glue()] or [~self.square])

    # ---- steps, by their words --------------------------------------------
    def work(self, step, plans: dict) -> None:
        """Do one step of the running order."""
        words, kind = step.words, step.kind
        if step.blocked:
            raise AssertionError(f"no head of this test has {kind}: {step.blocked}")
        if kind in ("pin hole", "counterbore", "bore") or kind == "pilot":
            self.from_above(step.id, words, step.setup.words(), any("plug that first" in caution for caution in step.cautions))
        elif kind in ("side bore", "side counterbore"):
            self.from_the_edge(step.id, words, step.setup.words())
        elif kind == "plug":
            self.plug(words)
        elif kind == "glue ear":
            self.glue(step.features[0], words)
        elif kind in ("glue face veneer", "glue back veneer"):
            self.glue(kind.split()[1], words)
        elif kind == "flat":
            self.flat(step.features[0], words)
        elif kind == "final diameter" and "taper" in words:
            self.ream(step.id.removeprefix("final diameter "), words)
        elif kind == "edge pilot":
            self.through_the_plate(step.id.removeprefix("edge pilot "), words)
        elif kind == "waste holes":
            (wide,) = re.findall(N + r" mm wide", words)
            deep = self.head.thick + 1 if "through" in words else float(re.search(N + " mm deep", words)[1])
            for centre in step.waste_holes.centres:
                self.drill(np.array((*centre, 0.0)), np.array((0.0, 0.0, 1.0)), deep, float(wide) / 2)
        elif kind == "saw":
            inside = float(re.search(r"to within " + N + " mm of its line", words)[1])
            self.take(self.over(area(offset(self.slots[step.features[0]], -inside)), -1, self.head.thick + 1))
        elif kind == "rout":
            self.rout(step.features[0], words, plans[step.features[0]])
        elif kind == "cut outline":
            outside = float(re.search(r"saw " + N + " mm outside", words)[1])
            self.take(~self.over(area(offset(self.outline, outside)), -1, self.head.thick + 1) & self.before_nut())
        elif kind == "rout outline":
            self.round_the_outline(words, plans["outline"])
        elif kind == "ramp":
            self.ramp(step.features[0], words)
        elif kind == "clean up":
            self.pare()
        else:
            assert kind in ("template", "mark", "finish", "final diameter", "glue scarf"), kind

    def from_above(self, id: str, words: str, set_up: str, plugged: bool) -> None:
        """A hole square to face or back, with the table level; `plugged` for what was open on its way."""
        up, = re.findall("(face|back) up", set_up)
        face = up == "face"
        assert "table level" in set_up
        wide = float(re.search(N + " mm wide", words)[1])
        deep = self.head.thick if "through" in words else float(re.search(N + " mm deep", words)[1])
        at = np.array((*self.place(words), 0.0 if face else self.head.thick))
        way = np.array((0.0, 0.0, 1.0 if face else -1.0))
        if not plugged and self.share(in_rod(self.points, at, way, 0.0, self.head.thick if "through" in words else deep + 1.0, 1.2)) == 0.0:
            self.trouble.append(f"{id}: no wood for the drill's point")
        self.drill(at, way, deep + (BEYOND if "through" in words else 0.0), wide / 2)

    @staticmethod
    def place(words: str) -> tuple[float, float]:
        """"31.4 mm to the bass side, 49.2 mm from the nut line" as a point."""
        found = re.search(rf"; (?:on the centreline|{N} mm to the (bass|treble) side), {N} mm (from|behind) the (?:nut|base) line", words)
        x = 0.0 if found[1] is None else float(found[1]) * (1 if found[2] == "treble" else -1)
        return x, float(found[3]) * (1 if found[4] == "from" else -1)

    def from_the_edge(self, id: str, words: str, set_up: str) -> None:
        """In the vice, one square edge up, the other on the table, face or back on the fence; the spindle comes straight down.

        On the table: u along the fence to the tip, v square to the table, w away from the fence.
        """
        up, lies = re.search(r"with the (treble|bass) edge up and the (back|face) against the fence", words).groups()
        assert f"{up} edge up" in set_up
        raised = re.search(rf"table tilted {N}° .*?, (tip|nut) end raised, axis {N} mm from the fence", set_up)
        level = re.search(rf"table level, axis {N} mm from the fence", set_up)
        tilt, fence = (math.radians(float(raised[1])) * (1 if raised[2] == "tip" else -1), float(raised[3])) if raised else (0.0, float(level[1]))
        # With the tip end raised by the tilt, straight up is cos(tilt) along v and sin(tilt) along u.
        outwards = 1.0 if up == "treble" else -1.0
        spindle = -np.array((outwards * math.cos(tilt), math.sin(tilt), 0.0))
        edge = self.head.blank["treble"] if up == "treble" else -self.head.blank["bass"]
        along, below = (float(n) for n in re.search(rf"at its mark {N} mm from the (?:nut|base) line and {N} mm below the face", words).groups())
        depth = fence if lies == "face" else self.head.thick - fence
        if abs(depth - below) > 0.11:
            self.trouble.append(f"{id}: the fence puts the axis {depth:.2f} below the face, its mark is at {below}")
        wide, stop = float(re.search(N + " mm wide", words)[1]), float(re.search(r"stop at " + N + " mm", words)[1])
        x, z = self.points[:, 0], self.points[:, 2]
        blank = self.head.blank
        for name, where in (("its square edge", abs(x - edge) < 0.9),
                            ("the square edge on the table", abs(x - (-blank["bass"] if up == "treble" else blank["treble"])) < 0.9),
                            ("the face on the fence", (z < 0.9) if lies == "face" else (z > self.head.thick - 0.9))):
            if self.share(where & ~self.bored) < (0.99 if "edge" in name else 0.8):
                self.trouble.append(f"{id}: {name} is gone")
        mark = np.array((edge, along, depth))
        if self.share(in_rod(self.points, mark, spindle, 0.0, stop, wide / 2)) < 0.75:
            self.trouble.append(f"{id}: the drill meets too little wood")
        self.bored |= self.drill(mark, spindle, stop, wide / 2)

    def through_the_plate(self, id: str, words: str) -> None:
        """By hand, where the plate on its seat has its hole."""
        (bored,) = [one for one in self.head.holes if one.id == id]
        wide, deep = float(re.search(N + " mm wide", words)[1]), float(re.search(N + " mm deep", words)[1])
        if self.share(in_rod(self.points, bored.start, bored.way, 0.3, deep, wide / 2 + 0.6)) < 0.3:
            self.trouble.append(f"{id}: no wood under the plate")
        self.drill(bored.start, bored.way, deep, wide / 2)

    # ---- the router ------------------------------------------------------
    def passes(self, words: str, plan) -> tuple[float, float, float, float]:
        """(cutter, follower, how much larger the opening is than the work, depth) of a step at the router."""
        deep = float(re.search(rf" to {N} mm ", words)[1])
        rack = self.head.file["rack"]
        bit = next(bit for bit in rack["bits"] if f"with {bit['id']} to" in words or f"with {bit['id']} in " in words)
        bush = next((bush for bush in rack.get("bushes", ()) if f"in {bush['id']} to" in words), None)
        follower = bush["outer"] if bush else bit["shank"] if bit.get("bearing", "none") == "none" else bit["bearing_diameter"]
        if "the wall already cut guides" in words:
            return bit["cutter"], follower, 0.0, deep
        told = re.search(rf"(?:opening|outside template) {N} mm (larger|smaller)", plan.template_words)
        assert told or "the same size" in plan.template_words
        by = 0.0 if told is None else float(told[1]) * (1 if told[2] == "larger" else -1)
        return bit["cutter"], follower, by, deep

    def pins(self, words: str) -> None:
        """Whether both pins of the template have their holes, with some wood on every side of them; a counterbore may be over it."""
        if "template on its pin" not in words:
            return
        held = 0
        for pin in self.head.file.get("pins", ()):
            at, down, radius = np.array((*pin["at"], 0.0)), np.array((0.0, 0.0, 1.0)), pin.get("diameter", 6.0) / 2
            hole = in_rod(self.points, at, down, 0.3, self.head.thick - 0.3, radius - 0.3)
            ring = in_rod(self.points, at, down, 0.3, self.head.thick - 0.3, radius + 2.0) & ~in_rod(
                self.points, at, down, -1.0, self.head.thick + 1, radius + 0.3)
            right, up = self.points[:, 0] > at[0], self.points[:, 1] > at[1]
            round_it = [self.share(ring & (right == a) & (up == b)) * self.head.thick for a in (False, True) for b in (False, True)]
            held += self.share(hole) == 0.0 and min(round_it) > 3.0
        if held < min(2, len(self.head.file.get("pins", ()))):
            self.trouble.append(f"only {held} pins hold the template: {words}")

    def rout(self, slot: str, words: str, plan) -> None:
        self.pins(words)
        cutter, follower, by, deep = self.passes(words, plan)
        deep = self.head.thick + 1 if deep >= self.head.thick - 0.006 else deep
        self.to_pare(slot, plan)
        shape = area(offset(offset(offset(self.slots[slot], by), -follower / 2), cutter / 2))
        face = words.startswith("Face up")
        top, bottom = (-1.0, deep + 1e-6) if face else (self.head.thick - deep - 1e-6, self.head.thick + 1)
        self.take(self.over(shape, top, bottom))

    def round_the_outline(self, words: str, plan) -> None:
        self.pins(words)
        self.to_pare("outline", plan)
        cutter, follower, by, deep = self.passes(words, plan)
        deep = self.head.thick + 1 if deep >= self.head.thick - 0.006 else deep
        kept = area(offset(offset(offset(self.outline, by), follower / 2), -cutter / 2))
        top, bottom = (-1.0, deep + 1e-6) if words.startswith("Face up") else (self.head.thick - deep - 1e-6, self.head.thick + 1)
        z = self.points[:, 2]
        self.take(~self.over(kept, -1, self.head.thick + 1) & self.before_nut() & (z >= top) & (z <= bottom))

    def to_pare(self, of: str, plan) -> None:
        self.pared += [(of, np.array(patch.at), patch.depth) for patch in plan.left]

    def pare(self) -> None:
        """By hand, in the corners that the plans tell and no farther from them than what is left there can reach."""
        whole_head = area(self.outline)
        for of, at, deep in self.pared:
            near = np.hypot(*(self.points[:, :2] - at).T) < 4.0 * deep + 1.0
            if of == "outline":
                self.take(near & ~self.over(whole_head, -1, self.head.thick + 1) & self.before_nut())
            else:
                slot = next(slot for slot in self.head.file["slots"] if slot["id"] == of)
                floor = self.head.thick + 1 if slot.get("depth") is None else slot["depth"]
                self.take(near & self.over(area(self.slots[of]), -1, floor))

    # ---- by hand --------------------------------------------------------------
    def flat(self, tuner: str, words: str) -> None:
        """Square to the bore and about it, as deep as told below the edge."""
        seat, ahead, out, flat = next(one for one in self.head.flats() if one[3]["of"] == tuner)
        size = float(re.search(rf"a (?:flat {N} mm long|round spot {N} mm wide)", words).group(1 if "a flat" in words else 2))
        deep = float(re.search(rf"about it, {N} mm deep", words)[1])
        self.take(in_flat(self.points, seat + out * (flat["depth"] - deep), ahead, out, size, "long" in words))

    def ream(self, id: str, words: str) -> None:
        """In the hole that is there, a cone."""
        (one,) = [one for one in self.head.holes if one.id == id]
        taper, wide = float(re.search(r"taper 1:([\d.]+)", words)[1]), float(re.search(rf"until it is {N} mm wide", words)[1])
        face = "from the face" in words
        start = np.array((*one.start[:2], 0.0 if face else self.head.thick))
        if self.share(in_rod(self.points, start, one.way, 0.0, one.depth, one.radius)) > 0.0:
            self.trouble.append(f"{id}: nothing leads the reamer")
        self.take(in_cone(self.points, start, np.array((0.0, 0.0, 1.0 if face else -1.0)), one.depth, wide, taper))

    def ramp(self, slot: str, words: str) -> None:
        begins, wide, deep, length = (float(n) for n in re.search(
            rf"from (-?{N}) mm above the .*? file a slope {N} mm wide down to .*?, from nothing to {N} mm deep over {N} mm", words).group(1, 3, 4, 5))
        start, way, room, _ = nut_end(next(one["shape"] for one in self.head.file["slots"] if one["id"] == slot), length)
        assert abs(start[1] - begins) < 0.06
        along = (self.points[:, :2] - start) @ way
        across = abs((self.points[:, :2] - start) @ np.array((-way[1], way[0])))
        self.take((along > 0) & (along < length + room) & (across < wide / 2) & (self.points[:, 2] < along * deep / length))
