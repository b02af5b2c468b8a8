"""What keeps a page from being misread: its side named, a set-up named again where it goes on, a blade's dangers told."""

from itertools import cycle
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from app.formats.mark_shapes import mark_box
from app.languages.catalogue import speak
from app.sheets import pages, plan_work
from app.sheets.parts import parts
from app.sheets.write import full_template
from geometry import saying
from geometry.beginning import Numbers, begin
from geometry.beginning.instruments import following
from geometry.drawing import Label
from geometry.layout import loop_path
from tests.app.sheets.printed import layout, made, section, words, work

SAMPLES = sorted(Path("samples").glob("*.headstock.json"))


def labels(drawing) -> dict[str, Label]:
    return {mark.text: mark for mark in drawing if isinstance(mark, Label)}


def test_the_template_says_from_where_it_is_seen():
    """x grows to the treble side, so that lies on the right; the words stand clear above the outline."""
    drawing = labels(full_template(layout("demo"), parts(layout("demo"))[0]))
    x0, _, x1, y1 = loop_path(layout("demo").outline).box
    bass, face, treble = (drawing[text] for text in ("bass side", "seen from the face", "treble side"))
    assert bass.at[0] == pytest.approx(x0) and treble.at[0] == pytest.approx(x1) and bass.at[0] < face.at[0] < treble.at[0]
    assert min(one.at[1] for one in (bass, face, treble)) >= y1 + 4.0 + 0.5
    text = section("demo", "Template")
    assert "Seen from the face, the nut towards you: the bass side is on the left." in text and "treble side" in text


def test_every_template_names_its_sides():
    """Where the words over the head would cost a page they are left out, and the note under it says it."""
    for file, paper in zip(SAMPLES[::2], cycle(("A4", "Letter"))):
        head = read(file)
        found = [page for page in pages(head, paper) if page.title.startswith("Template")]
        assert found and all("the bass side is on the left" in words(page) for page in found), file.name


@pytest.mark.parametrize("name", ["demo", "large"])
def test_a_set_up_is_named_again_where_its_steps_go_on(name):
    """Every page of the running order that begins with a step begins with its set-up first."""
    titles = {op.title for op in work(name).steps}
    run = [page for page in made(name) if page.title == "Running order"]
    assert len(run) > 1
    again = 0
    for page in run[1:]:
        said = [m.text for placed in page.content for m in placed.drawing if isinstance(m, Label)]
        first = next((i for i, text in enumerate(said) if text in titles), None)
        head = next((i for i, text in enumerate(said) if text.endswith("(continued)")), None)
        if head is not None:
            again += 1
            assert first is None or head < first
    assert again or name == "large"


def test_dust_and_blade_are_cautioned_against_and_every_page_reminds_of_it():
    cover, *others = (words(page) for page in made("demo"))
    assert "dust mask" in cover and "line of a blade" in cover and "against the turning of the cutter" in cover
    for said in ("ear protection", "take its key out", "unplug the router", "no bit faster than is marked on it", "small loose piece",
                 "The manuals of your machines, the rules where you work and qualified instruction come first."):
        assert said in cover, said
    assert len(others) > 10 and all("Eye protection, no gloves" in text and "All cautions: on the cover." in text for text in others)
    saw = next(op for op in work("demo").steps if op.setup.machine == "band saw")
    assert any("guard" in text and "fingers" in text for text in saw.cautions)
    assert "keep your fingers out of the line of the blade" in section("demo", "Running order")


def test_the_card_of_the_pins_says_that_the_template_is_on():
    assert "the template clamped on centreline and nut line" in section("demo", "Cards")
    assert "seen from above" in section("demo", "Cards")


def test_hardware_is_told_with_its_unit():
    assert "Hardware by its dimensions, in mm:" in section("demo", "Cut list and parts")


def test_german_outline_steps_are_sentences():
    """`Rout {what}` bends its noun in German."""
    speak("de")
    try:
        titles = [op.title for op in plan_work(layout("demo")).steps if op.kind in ("rout outline", "cut outline")]
        said = [op.words for op in plan_work(layout("demo")).steps if op.kind == "rout outline"]
    finally:
        saying.use(None)
    assert titles == ["Den Umriss sägen", "Den Umriss von der Vorderseite fräsen"]
    assert all("den Umriss mit" in text for text in said)


@pytest.mark.parametrize("title", ["Template", "Back paper"])
def test_words_over_a_head_cost_no_page(title):
    """A sheet of two pages has to be joined, and is less true: on a tight paper only the names of the sides are left out, and the
    centreline ends where the paper does."""
    part = next(one for one in parts(layout("demo")) if one.title == title)
    gone = {mark.text for mark in part.drawing if isinstance(mark, Label)} - {mark.text for mark in part.tight.drawing if isinstance(mark, Label)}
    assert gone in ({"bass side", "seen from the face", "treble side"}, {"bass side", "seen from the back", "treble side"})
    assert len(part.drawing) - len(part.tight.drawing) == 3 and part.box[3] - part.tight.box[3] > 3.0
    assert part.box[::2] == part.tight.box[::2] and part.note == part.tight.note
    head = loop_path(layout("demo").outline).box
    assert (part.box[1], part.tight.box[1]) == pytest.approx((-5.0, -1.0 + min(head[1], 0.0))) and part.tight.box[3] < head[3] + 3.0


def test_what_to_heed_at_the_router_is_read_before_the_first_step():
    """Speed and direction of feed are set before the cutter turns."""
    text = section("demo", "Cards")
    card = text[text.index("Rout the outline"):]
    assert card.index("Template 6 mm thick") < card.index("Mind: Outside a template feed") < card.index("Saw the waste off")


def test_the_wrap_paper_tells_of_marks_on_the_edges_where_it_has_any():
    heads = {"sides": layout("demo"), "face alone": begin(Numbers())}
    notes = {name: next(part.note for part in parts(head) if part.title == "Wrap paper") for name, head in heads.items()}
    assert "stop from the square edge" in notes["sides"] and notes["face alone"] == ""


def test_on_a_tight_wrap_paper_the_name_of_an_edge_covers_no_name_of_a_bore():
    """The name of the bore next to the tip runs up the strip to its end, where the edge has its own: that stands before the nut line then,
    and not across it."""
    head = layout("demo")
    head = replace(head, tuners=tuple(replace(one, id=f"{one.id} with a name as long as the strip") if "side 3" in one.id else one for one in head.tuners))
    tight = next(part for part in parts(head) if part.title == "Wrap paper").tight
    boxes = {mark: mark_box(mark) for mark in tight.drawing if isinstance(mark, Label)}
    for side in ("bass", "treble"):
        x0, y0, x1, y1 = next(box for mark, box in boxes.items() if mark.text == f"{side} edge")
        assert not [mark.text for mark, (a0, b0, a1, b1) in boxes.items()
                    if mark.text != f"{side} edge" and min(a1, x1) - max(a0, x0) > 0.3 and min(b1, y1) > max(b0, y0)]
        assert y0 > 0.0


def test_on_a_tight_wrap_paper_the_name_of_the_face_lies_across_no_outline():
    """The crown of this head comes within 4 mm of the end of its blank: over it there is no room for a word beside the centreline."""
    head = begin(replace(following(Numbers(bass=6, treble=6, courses=True)), length=222.5))
    crown = loop_path(head.outline).box[3]
    assert head.blank.tip - crown < 4.0
    tight = next(part for part in parts(head) if part.title == "Wrap paper").tight
    (x0, y0, x1, y1), = (mark_box(mark) for mark in tight.drawing if isinstance(mark, Label) and mark.text == "face")
    assert not [at for at in loop_path(head.outline).flatten(0.05) if x0 < at[0] < x1 and y0 < at[1] < y1]


def test_the_wrap_paper_is_as_wide_as_the_names_over_it():
    """German names of the edges are wider than the edge of a thin blank: on a page that the blank fills they would be cut."""
    speak("de")
    try:
        part = next(one for one in parts(layout("demo")) if one.title == "Hüllbogen")
    finally:
        saying.use(None)
    name = next(mark_box(mark) for mark in part.drawing if isinstance(mark, Label) and mark.text == "Diskantkante")
    assert part.box[0] <= name[0] and name[2] <= part.box[2]
