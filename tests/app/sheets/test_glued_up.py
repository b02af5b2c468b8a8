"""Sheets of a head that is glued up: what is cut to which thickness, what the papers lie on, how long glue dries."""

import pytest
from msgspec.structs import replace

from app.sheets import pages, plan_work
from app.sheets.card_face import section
from app.sheets.cards import cards
from app.sheets.needs import pieces
from app.sheets.order_pages import summary
from app.sheets.words import glued_words
from geometry.drawing import Area
from geometry.layout import Ear
from tests.app.sheets.printed import layout, words


def glued(**blank: object):
    """The demo, 16 mm thick and leaning by 13 degrees, with an ear."""
    head = layout("demo")
    ear = Ear(id="ear", side="treble", width=8.0, start=20.0, end=180.0)
    return replace(head, ears=(ear,), blank=replace(head.blank, **(dict(face_veneer=1.5, back_veneer=0.6, scarf=90.0) | blank)))


@pytest.fixture(scope="module")
def work():
    return plan_work(glued())


def test_wood_and_ears_are_cut_to_what_is_planed_before_the_veneers_and_those_are_pieces_of_their_own(work):
    found = {piece.name: piece for piece in pieces(work.layout, work)}
    blank, ear, face, back = (found[name] for name in ("blank, all edges square", "ear ear", "face veneer", "back veneer"))
    assert (blank.thickness, ear.thickness) == (pytest.approx(13.9), pytest.approx(13.9))
    assert (face.length, face.width, face.thickness) == (200.0, 100.0, 1.5) and back.thickness == pytest.approx(0.6)
    assert "planed to this before the veneers, 16 with them" in blank.remark


def test_the_cut_list_tells_the_joint():
    """13.9 / sin 13 = 61.8 long; 13.9 / tan 13 = 60.2 from 90 down to 29.8, which is 170.2 from the tip at 200; 90 sin 13 = 20.2."""
    head = glued()
    blank = next(piece for piece in pieces(head, plan_work(head)) if piece.name.startswith("blank"))
    assert "a scarf joint 61.8 long, sawn at 13.0°: the head piece reaches 170.2 from the tip on the back, and the neck is 20.2 thick" in blank.remark
    behind = glued(scarf=0.0)
    blank = next(piece for piece in pieces(behind, plan_work(behind)) if piece.name.startswith("blank"))
    assert "a scarf joint behind the nut line" in blank.remark


def test_a_head_of_one_piece_is_told_as_one():
    plain = layout("demo")
    (blank, *others) = pieces(plain, plan_work(plain))
    assert blank.thickness == 16.0 and not {"veneer", "scarf"} & set(blank.remark.split())
    assert not any("veneer" in piece.name for piece in others)
    assert glued_words(plain) == "" and "Glue dries" not in summary(plan_work(plain))


def test_cover_and_running_order_say_what_is_glued_up_and_how_long_it_dries(work):
    by_title = {}
    for page in pages(work.layout, "A4", (), work):
        by_title[page.title] = by_title.get(page.title, "") + " " + words(page)
    assert "13.9 mm of wood with a face veneer of 1.5 and a back veneer of 0.6, 16 mm together" in by_title["Cover"]
    assert "Glue dries 3 times beside that, for about 36 hours in all." in by_title["Running order"]
    assert "Glue the face veneer" in by_title["Running order"]


def test_a_joint_alone_is_planed_before_the_papers():
    assert glued_words(glued(face_veneer=0.0, back_veneer=0.0)) == "The scarf joint is glued and the head planed before any paper goes on."


def test_cards_cut_the_head_with_its_veneers(work):
    for card in cards(work.layout, work):
        if card.kind != "rout" and card.drillings:
            drawing, _ = section(work.layout, work, card)
            levels = {mark.outer.box[1::2] for mark in drawing if isinstance(mark, Area) and mark.style == "glued on"}
            assert {(-1.5, 0.0), (-16.0, -15.4)} <= {tuple(round(c, 6) for c in level) for level in levels}, card.title
