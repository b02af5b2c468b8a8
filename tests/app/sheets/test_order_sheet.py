"""An order of the maker's own on paper: printed as it is, with a frame round the warning when it spoils work."""

import msgspec
import pytest

from app.sheets import pages, plan_work
from app.sheets.order_pages import order_warning, summary
from geometry.drawing import Label
from geometry.sequence import moved
from tests.app.sheets.printed import layout


@pytest.fixture(scope="module")
def spoiled():
    head = layout("demo")
    return msgspec.structs.replace(head, order=moved(plan_work(head).order.steps, "cut outline", 2))


def words(made, title):
    return " ".join(m.text for page in made if page.title == title for placed in page.content for m in placed.drawing
                    if isinstance(m, Label))


def test_the_paper_warns_of_an_order_that_spoils_work(spoiled):
    made = pages(spoiled, "A4", ())
    for title in ("Cover", "Running order"):
        # Six side bores that have lost their square edge, and the saw without its pins.
        assert "Do not work in this order: 7 steps in it are impossible or unsafe." in words(made, title)
    text = words(made, "Running order")
    assert "The order is your own; the best one has 29 changes." in text
    assert text.index("Saw the outline") < text.index("Locating pin hole nut pin")


def test_an_own_order_that_is_sound_is_printed_without_a_warning():
    head = layout("demo")
    own = moved(plan_work(head).order.steps, "counterbore bass face 2.1.1", 10)
    work = plan_work(msgspec.structs.replace(head, order=own))
    assert work.order.steps == own and order_warning(work) == "" and "your own" in summary(work)
    assert order_warning(plan_work(head)) == "" and "your own" not in summary(plan_work(head))
