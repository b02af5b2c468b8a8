"""What is told at the router: which slots share a card, where the waste holes are pricked, which template."""

import pytest
from msgspec.structs import replace

from app.sheets import pages, plan_work
from app.sheets.router_pages import alike, centres_words, lying_alike
from geometry.edits.slots import moved_slot
from geometry.layout import Nut, Pin, Template
from geometry.layout.generic import RACK
from geometry.routing import Waste
from tests.app.sheets.printed import layout, section, words, work


def test_slots_that_are_cut_alike_share_a_card():
    groups = alike(work("demo").plans)
    assert [[plan.of for plan in group] for group in groups] == [["bass slot", "treble slot"], ["outline"]]
    text = section("demo", "Cards")
    assert "Rout bass slot, then treble slot" in text and "bass slot and treble slot, each: 11 holes" in text
    assert text.count("Boxes from the left: bass slot, treble slot.") == 1 and text.count("Boxes") == 1, "one row of boxes needs no names"


def test_waste_centres_are_told_in_numbers():
    plan = work("demo").plans[1]
    assert isinstance(plan.waste, Waste)
    assert centres_words([plan.waste], Nut()).startswith("Centres of brad 11, all 14.9 to the treble side, from the nut line: 30.5, 43.6, ")
    crooked = replace(plan.waste, centres=((1.0, 30.0), (-2.0, 40.5)))
    assert "30 (1 to the treble side); 40.5 (2 to the bass side)" in centres_words([crooked], Nut())


def test_slots_that_lie_alike_are_drawn_once_on_their_card():
    """One that lies a little farther along with the same holes is another picture."""
    text = section("demo", "Cards")
    assert text.count("from the face, full size") == 1 and "bass slot and treble slot from the face" in text
    assert "all 14.9 to the bass side (bass slot) and 14.9 to the treble side (treble slot), from the nut line: 30.5, 43.6, " in text
    plans, head = alike(work("demo").plans)[0], layout("demo")
    assert [len(group) for group in lying_alike(head, plans)] == [2]
    other = replace(head, slots=tuple(moved_slot(slot, (0.0, 0.5)) if slot.id == plans[0].of else slot for slot in head.slots))
    assert [len(group) for group in lying_alike(other, plans)] == [1, 1]


def test_why_there_are_no_waste_holes_is_said_of_each_slot_of_a_card():
    wide = tuple(drill for drill in RACK.drills if drill.diameter > 14.0)
    head = replace(layout("demo"), rack=replace(RACK, drills=wide))
    planned = plan_work(head)
    assert wide and [[len(lying) for lying in lying_alike(head, group)] for group in alike(planned.plans)[:1]] == [[2]]
    text = " ".join(words(page) for page in pages(head, "A4", (), planned) if page.title == "Cards")
    assert [text.count(f"is slim enough for {slot}: up to") for slot in ("bass slot", "treble slot")] == [1, 1]


def test_of_which_slot_of_a_card_a_step_cannot_be_done_is_said():
    head, said = layout("demo"), "The pin stray stands in the way of the cutter"
    for at, names in (((-14.9, 80.0), "Mind: bass slot: "), ((14.9, 80.0), "Mind: treble slot: ")):
        stray = replace(head, pins=(*head.pins, Pin(id="stray", at=at, diameter=6.0)))
        text = " ".join(words(page) for page in pages(stray, "A4", ()) if page.title == "Cards")
        assert text.count(said) == text.count(f"{names}{said}") == 1


def test_a_plan_that_runs_on_the_printed_template_comes_first():
    head = replace(layout("demo"), template=Template(bit="8 straight", bush="bush 13"))
    made_work = plan_work(head)
    assert made_work.template.offset == pytest.approx(2.5)
    for plan in made_work.plans:
        assert abs(plan.best.offset - 2.5) < 1e-9 or all(abs(one.offset - 2.5) > 1e-9 for one in plan.plans)


def test_a_template_that_fits_no_plan_is_said_on_the_card():
    """A cutter 2 mm long can rout nothing, and nothing else has its offset of 2.3: the card says what to print instead."""
    rack = replace(RACK, bits=(*RACK.bits, replace(RACK.bits[0], id="odd", cutter=3.0, shank=7.6, cutting_length=2.0, stick_out=8.0)))
    head = replace(layout("demo"), rack=rack, template=Template(bit="odd"))
    text = " ".join(words(page) for page in pages(head, "A4", ()) if page.title == "Cards")
    assert "The printed template is another: choose 12 shank bearing for the template and print it again" in text


def test_without_a_bit_the_card_says_that_no_template_is_printed():
    head = replace(layout("demo"), template=Template())
    text = " ".join(words(page) for page in pages(head, "A4", ()) if page.title == "Cards")
    assert "No template lines are printed" in text
