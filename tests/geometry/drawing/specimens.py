"""A head so plain that every number on its drawings can be worked out by hand."""

import msgspec

from geometry.layout import (
    Blank,
    Bore,
    Button,
    EdgePlace,
    Footprint,
    FreePlace,
    Headstock,
    Loop,
    Node,
    Pattern,
    Pin,
    Post,
    SingleHole,
    Slot,
    StraightSlot,
    Tuner,
)

BUTTON = Button(reach=30.0, length=10.0, width=14.0, thickness=6.0, stand=8.0)
FACE = Pattern(id="face", mount="face", seat=Footprint(before=8.0, behind=9.0, across=24.0),
               post=Post(diameter=6.2, length=20.0, string_hole=12.0), button=BUTTON,
               bores=(Bore(role="counterbore", diameter=8.8, surface="face", depth=8.0, drill="forstner"),
                      Bore(role="post", diameter=6.5, surface="face"),
                      Bore(role="screw", diameter=1.6, surface="back", at=(0.0, 9.0), depth=9.0, drill="twist")))
SIDE = Pattern(id="side", mount="side", seat=Footprint(before=12.0, behind=12.0, across=10.0),
               post=Post(diameter=6.2, length=29.0, string_hole=28.0), button=BUTTON,
               bores=(Bore(role="post", diameter=6.4, surface="seat", depth=30.0),
                      Bore(role="screw", diameter=1.6, surface="seat", at=(9.0, 0.0), depth=9.0, drill="twist")))


def plain_head(**changes: object) -> Headstock:
    """80 x 180 in a blank of 90 x 200 x 16: one slot 13 wide, a tuner of each mount, a pin, a blind hole."""
    head = Headstock(
        name="Plain head, invented", blank=Blank(bass=45.0, treble=45.0, tip=190.0, behind=10.0, thickness=16.0),
        outline=Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 180.0), (-40.0, 180.0)))),
        slots=(Slot(id="slot", shape=StraightSlot(nut_end=(17.0, 40.0), tip_end=(17.0, 150.0), width=13.0)),),
        patterns=(FACE, SIDE),
        tuners=(Tuner(id="front", pattern="face", place=FreePlace(at=(-28.0, 60.0))),
                Tuner(id="flank", pattern="side", place=EdgePlace(side="treble", along=100.0))),
        pins=(Pin(id="pin", at=(0.0, 25.0), diameter=6.0),),
        holes=(SingleHole(id="peep", at=(0.0, 160.0), diameter=5.0, depth=7.0, surface="back"),))
    return msgspec.structs.replace(head, **changes)


def leaning_head() -> Headstock:
    """The same with treble and bass edges that lean out by 1 in 9: the bores tilt by -atan(1/9)."""
    corners = ((-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0))
    return plain_head(outline=Loop(nodes=tuple(Node(at=at) for at in corners)), slots=(),
                      blank=Blank(bass=50.0, treble=50.0, tip=100.0, behind=10.0, thickness=16.0),
                      tuners=(Tuner(id="flank", pattern="side", place=EdgePlace(side="treble", along=45.0)),
                              Tuner(id="other", pattern="side", place=EdgePlace(side="bass", along=45.0))),
                      holes=())
