"""Any sequence of pointers on any tool: nothing but a GeometryError ever comes out, and every result is sound."""

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from app.tools import Done, Options, Pointer, Running
from app.tools.draw import draw
from app.tools.hold import hold
from app.tools.measure import measure
from app.tools.place import place
from app.tools.slot import draw_slot
from geometry import edits
from geometry.errors import GeometryError
from geometry.layout import Headstock, feature_ids
from tests.geometry.edits.heads import FACE, SIDE, curved, plain, sound, twelve

HEADS = (plain, curved, twelve)
SPOTS = ((30.0, 60.0), (30.0, 100.0), (58.0, 100.0), (17.0, 40.0), (17.0, 90.0), (40.0, 40.0), (0.0, 180.0),
         (0.0, 25.0), (-28.0, 65.0), (-53.0, 60.0), (10.0, 110.0), (14.0, 80.0), (50.0, 150.0), (22.0, 0.0),
         (0.0, 130.0))

places = st.one_of(st.sampled_from(SPOTS), st.tuples(st.floats(-80, 80), st.floats(-30, 210)))
texts = st.sampled_from(["12; 40", "length 30", "length 30 angle 45", "radius 25", "width 9", "along 70", "40", "1/0",
                         "x", "", "-5", "20 30°", "1e9; 3", "9999; 1"])
keys = st.sampled_from(["enter", "backspace", "s", "a", "t", "c", "q"])
steps = st.tuples(st.floats(-15, 15), st.floats(-15, 15))


class Hands(RuleBasedStateMachine):
    """A maker who tries everything."""

    @initialize(head=st.sampled_from(HEADS), mirrored=st.booleans(), shape=st.booleans())
    def begin(self, head, mirrored, shape):
        self.layout: Headstock = head()
        self.options = Options(mirrored=mirrored, shape=shape, pattern=FACE)
        self.held: tuple[str, ...] = ()
        self.running: Running | None = None
        self.fresh = True

    @rule(tool=st.sampled_from(["hold", "hold", "hold", "outline", "slot", "heart", "straight", "tuner", "pin", "hole",
                                "measure"]), pattern=st.sampled_from([FACE, SIDE]))
    def take(self, tool, pattern):
        before = self.layout
        if self.running is not None:
            assert self.running.cancel() is before
        self.options.pattern = pattern
        made = {"hold": lambda: hold(self.layout, self.held, self.options),
                "straight": lambda: draw_slot(self.layout, self.options),
                "measure": lambda: measure(self.layout, self.options)}
        if tool in ("tuner", "pin", "hole"):
            gesture = place(self.layout, tool, self.options)
        elif tool == "heart" and "heart" not in feature_ids(self.layout):
            return
        else:
            gesture = made.get(tool, lambda: draw(self.layout, tool, self.options))()
        self.running = Running(gesture, self.layout)

    @rule(kind=st.sampled_from(["press", "move", "move", "move", "release", "double"]), at=places, shift=st.booleans(),
          alt=st.booleans(), ctrl=st.booleans())
    def point(self, kind, at, shift, alt, ctrl):
        self._send(Pointer(at, kind, shift, ctrl, alt))

    @rule(text=texts, key=keys, at=places)
    def type(self, text, key, at):
        self._send(Pointer(at, "key", typed=text, key="" if text else key))

    @rule(pick=st.integers(0, 40), by=steps, size=st.floats(-5, 60), mirrored=st.booleans())
    def edit(self, pick, by, size, mirrored):
        """An edit from the panel, between gestures."""
        if self.running is not None:
            self.running.cancel()
            self.running = None
        ids, layout = feature_ids(self.layout), self.layout
        id = ids[pick % len(ids)] if ids else ""
        n = len(layout.outline.nodes)
        node = layout.outline.nodes[pick % n].at
        choices = (
            lambda: edits.move_features(layout, (id,), by), lambda: edits.duplicate(layout, (id,)),
            lambda: edits.remove_features(layout, (id,)), lambda: edits.free_from_row(layout, id),
            lambda: edits.fillet(layout, "outline", pick % n, size, mirrored),
            lambda: edits.remove_node(layout, "outline", pick % n),
            lambda: edits.set_smooth(layout, "outline", pick % n, pick % 2 == 0, mirrored),
            lambda: edits.set_edge(layout, "outline", pick % n, ("straight", "arc", "curve")[pick % 3], mirrored),
            lambda: edits.set_radius(layout, "outline", pick % n, size, mirrored),
            lambda: edits.set_edge_length(layout, "outline", pick % n, size, mirrored),
            lambda: edits.move_node(layout, "outline", pick % n, (node[0] + by[0], node[1] + by[1]), mirrored),
            lambda: edits.make_symmetric(layout), lambda: edits.mirror_layout(layout),
            lambda: edits.copy_side(layout, "treble", "bass"), lambda: edits.set_pattern(layout, id, SIDE),
            lambda: edits.make_row(layout, ids[:3]), lambda: edits.spread(layout, ids[-4:]),
            lambda: edits.set_slot_width(layout, id, size), lambda: edits.mirror_copies(layout, (id,)))
        try:
            self.layout, self.fresh = choices[pick % len(choices)](), True
        except GeometryError as error:
            assert str(error).rstrip(")").endswith((".", "]")), str(error)

    @invariant()
    def whatever_came_of_it_can_be_saved(self):
        if self.fresh:
            sound(self.layout)
            self.fresh = False

    def _send(self, pointer):
        if self.running is None:
            return
        answer = self.running.send(pointer)
        if isinstance(answer, Done):
            assert (answer.name == "") == (answer.layout is self.layout)
            self.layout, self.held, self.fresh = answer.layout, answer.held, True
        if self.running.over:
            self.running = None

    def teardown(self):
        if getattr(self, "running", None) is not None:
            self.running.cancel()


Hands.TestCase.settings = settings(max_examples=40, stateful_step_count=40,
                                   suppress_health_check=[HealthCheck.too_slow])
TestHands = Hands.TestCase
