"""Long plans ask between their parts: the answer is the same, nothing in between is long, and who says stop is heard."""

import math
import re

import pytest

from app.panels.router.rout_sheet import template_notes
from app.sheets import pages
from app.sheets.work import plan_work
from app.window.demo import demo
from geometry.cancellation import Stopped, asking, go_on
from geometry.drawing.router_face import face_groups
from geometry.routing import plan_routing
from geometry.routing.board import STRIDE
from geometry.sequence.pin_plan import plan_pins
from geometry.strings.pairing import propose_pairing

DEMO = demo()
ROUTING = plan_routing(DEMO)


def order(ask):
    work = plan_work(DEMO, None, ask)
    return work.order, work.ops, work.before


PLANS = {
    "routing": lambda ask: plan_routing(DEMO, ask),
    "template": lambda ask: template_notes(DEMO, ROUTING, ask),
    "marks": lambda ask: face_groups(DEMO, ROUTING, ask),
    "order": order,
    "pages": lambda ask: [page.title for page in pages(DEMO, snags=(), ask=ask)],
    "posts": lambda ask: propose_pairing(DEMO, ask),
    "pins": lambda ask: plan_pins(DEMO, ask=ask).pins,
}
WHOLE = {
    "routing": lambda: plan_routing(DEMO),
    "template": lambda: template_notes(DEMO, ROUTING),
    "marks": lambda: face_groups(DEMO, ROUTING),
    "order": lambda: order(go_on),
    "pages": lambda: [page.title for page in pages(DEMO, snags=())],
    "posts": lambda: propose_pairing(DEMO),
    "pins": lambda: plan_pins(DEMO).pins,
}


class Asked:
    """Counts how often it is asked, and stops the work at one of the times."""

    def __init__(self, at: float = math.inf) -> None:
        self.times, self.at = 0, at

    def __call__(self) -> bool:
        self.times += 1
        return self.times >= self.at


@pytest.mark.parametrize("what", PLANS)
def test_the_answer_is_the_one_of_work_that_nobody_asks(what):
    asked = Asked()
    assert PLANS[what](asking(asked)) == WHOLE[what]()
    assert asked.times > 3


@pytest.mark.parametrize("what", PLANS)
def test_it_ends_where_it_is_stopped(what):
    """At the first time it is asked, half-way and at the last."""
    most = Asked()
    PLANS[what](asking(most))
    for at in (1, max(1, most.times // 2), most.times):
        asked = Asked(at)
        with pytest.raises(Stopped):
            PLANS[what](asking(asked))
        assert asked.times == at, "it went on"


@pytest.mark.parametrize("what", sorted(PLANS.keys() - {"posts"}))
def test_it_tells_what_it_is_at(what):
    """In words that can be made later; a count never goes beyond the whole."""
    heard = []
    PLANS[what](asking(lambda: False, heard.append))
    told = list(dict.fromkeys(at() for at in heard))
    assert told and all(told)
    for words in told:
        found = re.search(r"(\d+) of (?:at most )?(\d+)", words)
        assert found is None or int(found[1]) <= int(found[2]), words


def test_every_bit_of_the_rack_is_a_part():
    """Each slot and the outline, on its own and on the template of others, tries each bit: at least the first is certain."""
    asked = Asked()
    plan_routing(DEMO, asking(asked))
    assert asked.times >= (len(DEMO.slots) + 1) * len(DEMO.rack.bits)


def test_every_place_of_the_router_on_the_template_is_a_part():
    """Places are STRIDE apart along both slots and round the outside; the head is longer than its blank is wide."""
    asked = Asked()
    template_notes(DEMO, ROUTING, asking(asked))
    assert asked.times >= 2 * DEMO.blank.tip / STRIDE
