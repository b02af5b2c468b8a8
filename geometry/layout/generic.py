"""Generic hardware patterns and a starting rack, all editable.

Dimensions are common practice, no source: the maker measures his own parts.
"""

from __future__ import annotations

from geometry.layout.hardware import Bore, Button, Footprint, Pattern, Post
from geometry.layout.shop import Drill, GuideBush, Rack, RouterBit
from geometry.saying import say


def _screws(surface: str, places: tuple[tuple[float, float], ...], diameter: float, depth: float) -> tuple[Bore, ...]:
    return tuple(Bore(role="screw", diameter=diameter, surface=surface, at=at, depth=depth, drill="twist")
                 for at in places)


def _post(diameter: float, length: float, string_hole: float, winding: float) -> Post:
    """The post of a tuner through the face, measured on the loose part."""
    return Post(diameter=diameter, length=length, string_hole=string_hole, winding=winding, measured="plate")


FACE_BUTTON = Button(reach=34.0, length=12.0, width=18.0, thickness=6.0, stand=7.0)
SIDE_BUTTON = Button(reach=30.0, length=11.0, width=15.0, thickness=6.0, stand=8.0)

PATTERNS: tuple[Pattern, ...] = (
    Pattern(
        id="face 8.8 bushing two screws", mount="face",
        about=say("Post through the face in a pressed bushing, body on the back, a screw to either side along the "
                  "edge."),
        bores=(Bore(role="counterbore", diameter=8.8, surface="face", depth=8.0, drill="forstner"),
               Bore(role="post", diameter=6.5, surface="face"),
               *_screws("back", ((0.0, 9.0), (0.0, -9.0)), 1.6, 9.0)),
        seat=Footprint(before=9.0, behind=5.5, across=22.0),
        post=_post(6.2, 36.0, 28.0, 22.0), button=FACE_BUTTON, least_wood=10.0, most_wood=20.0),
    Pattern(
        id="face 10 bushing one screw", mount="face",
        about=say("Threaded bushing through the face, cast body on the back, one screw at 45 degrees."),
        bores=(Bore(role="post", diameter=10.0, surface="face"),
               *_screws("back", ((-9.0, 9.0),), 1.8, 10.0)),
        seat=Footprint(before=10.0, behind=13.0, across=24.0),
        post=_post(6.2, 36.0, 28.0, 22.0), button=FACE_BUTTON, least_wood=11.0, most_wood=18.0),
    Pattern(
        id="face 10 stepped two pins", mount="face",
        about=say("Stepped bore, 10 from the back and 8.2 at the face; two moulded pins keep the body from turning."),
        bores=(Bore(role="clearance", diameter=10.0, surface="back", depth=10.0, drill="forstner"),
               Bore(role="post", diameter=8.2, surface="face"),
               Bore(role="pin", diameter=2.0, surface="back", at=(-9.0, 4.0), depth=4.0, drill="twist"),
               Bore(role="pin", diameter=2.0, surface="back", at=(-9.0, -4.0), depth=4.0, drill="twist")),
        seat=Footprint(before=9.0, behind=12.0, across=18.0),
        post=_post(6.0, 35.0, 27.0, 22.0), button=FACE_BUTTON, least_wood=12.0, most_wood=18.0),
    Pattern(
        id="face 6.4 plain one screw", mount="face",
        about=say("Plain post bore without a bushing, small open gear, one screw in line with the button."),
        bores=(Bore(role="post", diameter=6.4, surface="face"),
               *_screws("back", ((-11.0, 0.0),), 1.6, 8.0)),
        seat=Footprint(before=7.0, behind=14.0, across=13.0),
        post=_post(6.2, 34.0, 26.0, 21.0), least_wood=8.0, most_wood=20.0,
        button=Button(reach=28.0, length=11.0, width=14.0, thickness=6.0, stand=6.0)),
    Pattern(
        id="side 6.4 post two screws", mount="side",
        about=say("Steel post through the side, short plate on the edge, a screw to either side along the edge."),
        bores=(Bore(role="post", diameter=6.4, surface="seat", depth=30.0),
               *_screws("seat", ((9.0, 0.0), (-9.0, 0.0)), 1.6, 9.0)),
        seat=Footprint(before=12.0, behind=12.0, across=10.0),
        post=Post(diameter=6.2, length=29.0, string_hole=28.0), button=SIDE_BUTTON),
    Pattern(
        id="side 10 roller two screws", mount="side",
        about=say("Roller of 10 through the side as on a slotted head, plate with a screw to either side."),
        bores=(Bore(role="post", diameter=10.0, surface="seat", depth=33.0),
               *_screws("seat", ((11.0, 0.0), (-11.0, 0.0)), 1.8, 9.0)),
        seat=Footprint(before=15.0, behind=15.0, across=13.0),
        post=Post(diameter=9.8, length=32.0, string_hole=27.0), button=SIDE_BUTTON),
    Pattern(
        id="side 8 post four screws", mount="side",
        about=say("Steel post of 8 through the side, square plate with four small screws, for thick heads."),
        bores=(Bore(role="post", diameter=8.0, surface="seat", depth=31.0),
               *_screws("seat", ((8.0, 4.5), (8.0, -4.5), (-8.0, 4.5), (-8.0, -4.5)), 1.5, 8.0)),
        seat=Footprint(before=11.0, behind=11.0, across=14.0),
        post=Post(diameter=7.8, length=30.0, string_hole=26.0), button=SIDE_BUTTON),
    Pattern(
        id="face 14 bushing four screws", mount="face",
        about=say("Wide post in a bushing, as for a bass, large open gear on the back, four screws."),
        bores=(Bore(role="post", diameter=14.0, surface="face", drill="forstner"),
               *_screws("back", ((8.0, 12.0), (8.0, -12.0), (-12.0, 12.0), (-12.0, -12.0)), 2.0, 10.0)),
        seat=Footprint(before=14.0, behind=16.0, across=32.0),
        post=_post(12.0, 38.0, 27.0, 22.0), least_wood=12.0, most_wood=20.0,
        button=Button(reach=42.0, length=15.0, width=28.0, thickness=8.0, stand=9.0)),
    Pattern(
        id="face 6.4 friction peg", mount="face",
        about=say("Friction peg straight through a plain bore, held by washers and a screw in its own button; nothing else is "
                  "drilled. The button lies behind the post."),
        bores=(Bore(role="post", diameter=6.4, surface="back"),),
        seat=Footprint(before=6.0, behind=6.0, across=12.0),
        post=_post(6.0, 31.0, 24.0, 19.0), least_wood=8.0, most_wood=16.0,
        button=Button(reach=10.0, length=20.0, width=8.0, thickness=15.0, stand=14.0)),
    Pattern(
        id="face 10 geared peg", mount="face",
        about=say("Straight peg with its gear inside, in a bore of 10 from the back; a threaded collar on the face clamps it, and no "
                  "screw is drilled for. The button lies behind the post."),
        bores=(Bore(role="post", diameter=10.0, surface="back"),),
        seat=Footprint(before=7.5, behind=7.5, across=15.0),
        post=_post(6.2, 36.0, 28.0, 22.0), least_wood=9.0, most_wood=18.0,
        button=Button(reach=12.0, length=24.0, width=9.0, thickness=17.0, stand=20.0)),
    Pattern(
        id="face 7.5 tapered peg", mount="face",
        about=say("Wooden peg that only its taper holds: drilled narrower and reamed from the back, until the peg sits. The button lies "
                  "behind the post."),
        bores=(Bore(role="post", diameter=6.5, surface="back", reamed=7.5),),
        seat=Footprint(before=4.5, behind=4.5, across=9.0),
        post=_post(6.8, 31.0, 25.0, 20.0), least_wood=8.0, most_wood=20.0,
        button=Button(reach=11.0, length=22.0, width=9.0, thickness=18.0, stand=15.0)),
)
"""Through the face and through the side."""
ROOMY, ONE_SCREW, STEPPED, SLIM, THROUGH_SIDE, ROLLER, FOUR_SCREWS, LARGE, FRICTION, GEARED, TAPERED = (pattern.id for pattern in PATTERNS)


def _drill(kind: str, diameter: float, length: float) -> Drill:
    return Drill(id=f"{kind} {diameter:g}", kind=kind, diameter=diameter, length=length,
                 point_angle=118.0 if kind == "twist" else None,
                 spur=None if kind == "twist" else (round(0.3 * diameter, 2) if kind == "brad" else 2.0))


RACK = Rack(
    bits=(
        RouterBit(id="6 straight", cutter=6.0, cutting_length=20.0, shank=6.0, stick_out=32.0),
        RouterBit(id="8 straight", cutter=8.0, cutting_length=25.0, shank=8.0, stick_out=40.0),
        RouterBit(id="10 straight", cutter=10.0, cutting_length=25.0, shank=8.0, stick_out=40.0),
        RouterBit(id="12 shank bearing", cutter=12.0, cutting_length=16.0, shank=8.0, stick_out=38.0,
                  bearing="shank", bearing_diameter=12.0, bearing_height=5.0),
        RouterBit(id="9.5 shank bearing", cutter=9.5, cutting_length=12.7, shank=6.35, stick_out=32.0,
                  bearing="shank", bearing_diameter=9.5, bearing_height=5.0),
        RouterBit(id="12.7 tip bearing", cutter=12.7, cutting_length=25.4, shank=6.35, stick_out=45.0,
                  bearing="tip", bearing_diameter=12.7, bearing_height=5.0),
    ),
    bushes=(GuideBush(id="bush 17", outer=17.0, inner=15.0, length=5.5),
            GuideBush(id="bush 13", outer=13.0, inner=11.0, length=5.5),
            GuideBush(id="bush 11", outer=11.0, inner=9.0, length=5.5)),
    drills=(*(_drill("twist", d, 50.0) for d in (1.5, 1.6, 1.8, 2.0)),
            *(_drill("brad", d, 100.0) for d in (6.0, 6.4, 6.5, 8.0, 8.2, 8.8, 10.0, 11.0)),
            *(_drill("forstner", d, 90.0) for d in (8.8, 10.0, 14.0, 16.0))),
)
"""A small rack in mm to begin with."""
