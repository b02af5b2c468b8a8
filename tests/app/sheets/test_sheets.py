"""The pages as data and the files that are written."""

import csv
import io
import math
import re
from collections import Counter

import msgspec
import pyogrio
import pytest
import shapely

from app.formats.errors import FormatError
from app.formats.letters import text_width
from app.formats.mark_shapes import mark_box
from app.sheets import pages, router_pages, write_sheets
from app.sheets.compensation import compensation
from app.sheets.furniture import window_of
from app.sheets.needs import pieces
from app.sheets.parts import parts
from app.sheets.work import plan_work
from app.sheets.write import full_template
from geometry.checks.said import length
from geometry.checks.snags import Snag
from geometry.curves import Matrix
from geometry.drawing import Label
from geometry.drawing.heights import LEAST
from geometry.layout import EdgePlace, FreePlace, GuideBush, Loop, Node, Template, loop_path
from geometry.layout.generic import RACK
from geometry.routing.grain import grain_risks
from geometry.sequence.plans import OUTLINE
from geometry.solids import holes
from tests.app.sheets.printed import layout, words, work
from tests.app.sheets.printed import made as printed_pages
from tests.app.sheets.specimens import demo, large
from tests.geometry.drawing.specimens import plain_head


def test_the_pages_of_the_demo_on_a4():
    titles = [page.title for page in printed_pages("demo")]
    assert [title for title, before in zip(titles, ["", *titles], strict=False) if title != before] == [
        "Cover", "Cut list and parts + Strings in the nut", "Running order", "Template", "Wrap paper", "Back paper", "Cards",
        "Hole table", "Readings", "Job book"]
    assert len(titles) <= 19


def test_tiles_say_row_and_column():
    titles = [page.title for page in printed_pages("large")]
    assert "Template, row 1 of 2 from the nut, column 1 of 2 from the left" in titles


def test_larger_paper_takes_fewer_pages():
    assert len(printed_pages("large", "A3")) < len(printed_pages("large"))


def test_the_cover_names_every_page_and_the_compensation():
    cover = words(printed_pages("large")[0])
    first, last = (int(number) for number in re.search(r"Template pages (\d+) to (\d+) ", cover).groups())
    titles = [page.title for page in printed_pages("large")]
    assert all(title.startswith("Template, row") for title in titles[first - 1:last]) and last - first == 3
    assert "Join pages row by row" in cover
    assert "openings the same size" in cover and "Invented for demonstration" in cover


def test_the_list_of_contents_and_the_numbered_lines_stand_in_columns_on_the_cover():
    """Titles, pages, purposes, and the lines after a number each begin where those above them do: further lines of an entry hang."""
    said = [mark for mark in printed_pages("large")[0].content[1].drawing if isinstance(mark, Label)]
    first, last = (next(i for i, mark in enumerate(said) if mark.text.startswith(words)) for words in ("Cut list and parts", "Cautions"))
    listed = said[first:last]
    numbered = next(i for i, mark in enumerate(listed) if mark.text == "1.")
    for lines, columns in ((listed[:numbered], 3), (listed[numbered:], 2)):
        starts = Counter(round(mark.at[0], 6) for mark in lines)
        assert len(starts) == columns and starts[max(starts)] > starts[min(starts)], "some of the last column take more than a line"


def test_the_compensation_stands_on_the_template_itself():
    template = next(page for page in printed_pages("demo") if page.title == "Template")
    text = words(template)
    assert "Template for a 12 mm bearing on the shank with a 12 mm cutter" in text
    assert "Stop at the nut line" in text


@pytest.mark.parametrize(("bit", "bush", "offset", "sentence"), [
    ("12 shank bearing", None, 0.0, "openings the same size"),
    ("12 shank bearing", "bush 17", 2.5, "openings 2.5 mm larger all round than the slots, outside 2.5 mm smaller"),
    # (15 - 9) / 2 = 3: a 9 mm bit with a 15 mm bush
    ("9", "bush 15", 3.0, "openings 3 mm larger"),
    ("wide", None, -1.35, "openings 1.35 mm smaller all round than the slots, outside 1.35 mm larger"),
    (None, None, None, "No bit is chosen"),
])
def test_compensation_in_words(bit, bush, offset, sentence):
    layout = demo()
    rack = layout.rack
    nine = msgspec.structs.replace(rack.bits[0], id="9", cutter=9.0)
    wide = msgspec.structs.replace(rack.bits[0], id="wide", cutter=12.7, shank=10.0)
    rack = msgspec.structs.replace(rack, bits=(*rack.bits, nine, wide),
                                   bushes=(*rack.bushes, GuideBush(id="bush 15", outer=15.0, inner=12.0, length=6.0)))
    found = compensation(msgspec.structs.replace(layout, rack=rack, template=Template(bit=bit, bush=bush)))
    assert sentence in found.words
    assert found.offset == (None if offset is None else pytest.approx(offset))


def test_a_follower_that_cannot_be_is_said_instead_of_template_lines():
    layout = msgspec.structs.replace(demo(), template=Template(bit="12 shank bearing", bush="bush 11"))
    found = compensation(layout)
    assert found.offset is None and "does not pass through the guide bush" in found.words
    template = next(page for page in pages(layout, "A4", snags=()) if page.title == "Template")
    assert not any(m.style == "template" for placed in template.content for m in placed.drawing)


def test_what_spoils_the_work_is_said_on_the_cover():
    snag = Snag("string-to-post", "spoils the work", ("one", "two"), (0.0, 0.0, 0.0), -3.81, 0.5,
                f"One runs {length(3.81)} mm into two.", "")
    note = Snag("no-mark", "note", ("one",), (0.0, 0.0, 0.0), None, None, "A remark.", "")
    cover = words(pages(demo(), "A4", snags=(snag, snag, note))[0])
    assert "runs 3.8 mm into" in cover
    assert 'runs 0.15" into' in words(pages(demo(), "A4", snags=(snag,), unit="in")[0])
    assert "Do not cut from these sheets yet" in cover and "(and 1 more)" in cover and "A remark" not in cover
    assert "Do not cut" not in words(pages(demo(), "A4", snags=(note,))[0])


def test_every_drilling_has_a_row_on_paper():
    made = printed_pages("large", "Letter")
    table = " ".join(words(page) for page in made if page.title.startswith("Hole table"))
    for hole in holes(large()):
        for drilling in hole.drillings:
            assert f"{drilling.id} " in table


@pytest.mark.parametrize("paper", ["A4", "A3", "Letter", "Tabloid"])
@pytest.mark.parametrize("layout", ["demo", "large", "plain"])
def test_words_stay_on_the_paper_and_tables_in_their_columns(layout, paper):
    for page in printed_pages(layout, paper):
        for placed in page.content:
            for mark in placed.drawing:
                if isinstance(mark, Label) and placed.clip is None:
                    x0, y0, x1, y1 = mark_box(mark, placed.matrix)
                    assert x0 >= 9.9 and y0 >= 9.4 and x1 <= page.width - 9.9 and y1 <= page.height - 9.9, mark.text


@pytest.mark.parametrize("layout", ["demo", "large"])
def test_no_two_words_of_a_page_lie_on_each_other(layout):
    for page in printed_pages(layout):
        for placed in page.content:
            boxes = [mark_box(m, Matrix()) for m in placed.drawing if isinstance(m, Label)]
            for i, a in enumerate(boxes):
                for b in boxes[i + 1:]:
                    over = min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1])
                    assert min(over) < 0.6, (page.title, a, b)


def test_long_ids_do_not_push_the_table_off_the_page():
    layout = demo()
    tuners = tuple(msgspec.structs.replace(t, id="W" * 50 + str(i)) for i, t in enumerate(layout.tuners))
    page = pages(msgspec.structs.replace(layout, tuners=tuners), "A4", snags=())[-1]
    x1 = window_of(page.width, page.height)[2]
    for mark in page.content[-1].drawing:
        if isinstance(mark, Label) and mark.anchor == "left":
            assert mark.at[0] + text_width(mark.text, mark.height) <= x1 + 0.01


def test_a_layout_without_anything_but_wood_is_printed():
    bare = plain_head(slots=(), tuners=(), pins=(), holes=(), name="")
    assert [page.title for page in pages(bare, "A4", snags=())] == [
        "Cover", "Cut list and parts", "Running order", "Template", "Wrap paper", "Cards", "Job book"]


def test_no_shape_is_refused_in_a_sentence():
    point = Loop(nodes=(Node(at=(1.0, 1.0)), Node(at=(1.0, 1.0))))
    with pytest.raises(FormatError, match="nothing to print yet"):
        pages(plain_head(outline=point), "A4", snags=())


def test_a_tuner_far_away_is_refused_in_a_sentence():
    head = plain_head()
    lost = msgspec.structs.replace(head.tuners[0], place=FreePlace(at=(4000.0, 4000.0)))
    with pytest.raises(FormatError, match="bring in what lies far outside"):
        pages(msgspec.structs.replace(head, tuners=(lost,)), "A4", snags=())


def test_a_bore_that_misses_the_blank_does_not_stretch_the_wrap():
    roof = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 150.0), (0.0, 152.0))))
    head = plain_head(outline=roof, slots=(), holes=())
    tuner = msgspec.structs.replace(head.tuners[1], place=EdgePlace(side="treble", along=170.0))
    made = pages(msgspec.structs.replace(head, tuners=(tuner,)), "A4", snags=())
    assert [page.title for page in made].count("Wrap paper") == 1


@pytest.fixture(scope="module")
def written(tmp_path_factory):
    out = tmp_path_factory.mktemp("sheets") / "new folder"
    return write_sheets(demo(), out, "A4", "twelve", snags=())


def test_the_files_that_are_written(written):
    assert [path.name for path in written] == ["twelve-template.dxf", "twelve-template.svg", "twelve-wrap.dxf", "twelve-wrap.svg",
                                               "twelve-back.dxf", "twelve-back.svg", "twelve-sheets.pdf", "twelve-holes.csv", "twelve-order.csv", "twelve-parts.csv"]
    assert all(path.stat().st_size > 1000 for path in written)


def test_the_csv_holds_every_drilling_in_numbers(written):
    rows = list(csv.DictReader(io.StringIO(written[7].read_text(encoding="utf-8-sig"), newline="")))
    drillings = [d for hole in holes(demo()) for d in hole.drillings]
    assert len(rows) == len(drillings) == 44
    for row, d in zip(rows, drillings, strict=True):
        assert (row["id"], row["of"], row["operation"], row["surface"]) == (d.id, d.of, d.operation, d.surface)
        assert [float(row[f"start_{axis}_mm"]) for axis in "xyz"] == pytest.approx(d.start, abs=1e-4)
        assert [float(row[f"mark_{axis}_mm"]) for axis in "xyz"] == pytest.approx(d.mark, abs=1e-4)
        assert [float(row[f"direction_{axis}"]) for axis in "xyz"] == pytest.approx(d.direction, abs=1e-4)
        assert float(row["stop_mm"]) == pytest.approx(d.stop, abs=1e-4)
        tilt = math.degrees(math.atan2(-d.direction[1], abs(d.direction[0]))) if not d.upright else 0.0
        assert float(row["tilt_degrees"]) == pytest.approx(tilt, abs=1e-4)


def test_the_dxf_holds_the_work_in_layout_coordinates_for_an_independent_reader(written):
    _, _, shapes, columns = pyogrio.raw.read(written[0], columns=["Layer"])
    found = [(layer, shapely.from_wkb(s)) for layer, s in zip(columns[0], shapes, strict=True)]
    layout = demo()
    outline = loop_path(layout.outline)
    for layer, shape in found:
        if layer == "outline":
            assert max(outline.nearest((x, y)).distance for x, y in shapely.get_coordinates(shape)) < 1e-5
    for style, layer in (("post bore", "post bores"), ("counterbore", "counterbores"), ("screw pilot", "screw pilots")):
        wanted = sorted((round(d.start[0], 4), round(d.start[1], 4), d.radius) for hole in holes(layout)
                        for d in hole.drillings if d.operation == style and d.upright)
        circles = []
        for name, shape in found:
            if name.split(" - ")[0] == layer:
                x0, y0, x1, y1 = shape.bounds
                circles.append((round((x0 + x1) / 2, 4), round((y0 + y1) / 2, 4), (x1 - x0) / 2))
        assert sorted(circles) == [pytest.approx(w, abs=2e-3) for w in wanted]


def test_everything_is_written_twice_with_the_same_bytes(written, tmp_path):
    again = write_sheets(demo(), tmp_path, "A4", "twelve", snags=())
    assert [p.read_bytes() for p in again] == [p.read_bytes() for p in written]


def test_a_file_in_the_way_of_the_folder_is_said_in_a_sentence(tmp_path):
    (tmp_path / "taken").write_text("x")
    with pytest.raises(FormatError, match="cannot be made"):
        write_sheets(demo(), tmp_path / "taken", "A4", snags=())


def test_nothing_is_written_when_a_page_cannot_be_made(tmp_path):
    with pytest.raises(FormatError):
        write_sheets(demo(), tmp_path / "new", "A7", snags=())
    assert not (tmp_path / "new").exists()


def test_the_checks_are_asked_when_no_snags_are_given():
    """A tuner in the middle of a slot spoils the work, and the cover says so."""
    head = plain_head()
    astray = msgspec.structs.replace(head.tuners[0], place=FreePlace(at=(17.0, 60.0)))
    cover = words(pages(msgspec.structs.replace(head, tuners=(astray, head.tuners[1])), "A4")[0])
    assert "Do not cut from these sheets yet" in cover


@pytest.mark.parametrize("layout", [demo, large, plain_head])
def test_every_mark_of_a_part_lies_in_the_box_that_is_printed(layout):
    for part in parts(layout()):
        for mark in part.drawing:
            x0, y0, x1, y1 = mark_box(mark)
            assert part.box[0] <= x0 and part.box[1] <= y0 and x1 <= part.box[2] and y1 <= part.box[3], mark


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
def test_a_hole_is_as_deep_on_the_papers_as_on_its_card(unit):
    made = pages(demo(), "A4", unit=unit)
    depth = {"mm": "8", "in": '0.314"', "in64": '0.314"'}[unit]
    for title in ("Template", "Wrap paper", "Cards"):
        said = " ".join(words(page) for page in made if page.title.startswith(title))
        assert f" x {depth} deep" in said, title


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
def test_how_far_across_stands_on_one_line(unit):
    for page in pages(demo(), "A4", unit=unit):
        if page.title.startswith("Cards"):
            assert not [m.text for placed in page.content for m in placed.drawing
                        if isinstance(m, Label) and m.text in ("bass", "treble")], "the side stands alone where it had no room"


def test_where_the_grain_is_not_known_the_card_says_so():
    tip_at_the_nut = Loop(nodes=tuple(Node(at=at) for at in ((0.0, 0.0), (40.0, 30.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 30.0))))
    head = msgspec.structs.replace(plain_head(), outline=tip_at_the_nut, slots=(), tuners=(), rows=(), rack=RACK)
    cards = " ".join(words(page) for page in pages(head, "A4") if page.title == "Cards")
    assert "against the grain, face up, is not known: The outline touches the nut line in one point only" in " ".join(cards.split())


@pytest.mark.parametrize(("side", "lower"), [("face", "treble"), ("back", "bass")])
def test_the_head_with_its_grain_lies_as_it_lies_on_the_bench(side, lower):
    """Nut to the left: face up the treble side is nearer to whoever stands before it, turned over the bass side."""
    head = demo()
    work = plan_work(head)
    best = next(plan for plan in work.plans if plan.of == OUTLINE).best
    one = msgspec.structs.replace(best, passes=tuple(msgspec.structs.replace(each, side=side) for each in best.passes[:1]))
    picture = router_pages._grain(head, one, 180.0)[0].placed[0]
    far, near = (picture.matrix(p) for p in ((-30.0, 100.0), (30.0, 100.0)))
    assert (near[1] < far[1]) == (lower == "treble") and picture.matrix((0.0, 190.0))[0] > picture.matrix((0.0, 0.0))[0] >= 0.0
    x0, _, x1, _ = loop_path(head.outline).box
    assert max(picture.matrix((x, 100.0))[1] for x in (x0, x1)) == pytest.approx(-router_pages.NAMED)


def test_each_stretch_of_the_grain_has_the_number_of_its_sentence_beside_it():
    """Of six, five lie within 20 mm of wood at the scooped corners of the tip."""
    head = layout("slotted")
    best = next(plan for plan in work("slotted").plans if plan.of == OUTLINE).best
    picture, said = router_pages._grain(head, best, 180.0)[0].placed
    risks = grain_risks(head)
    numbers = {mark.text: mark.at for mark in said.drawing if isinstance(mark, Label) and mark.text.isdigit()}
    assert len(numbers) == len(risks) == 6
    for i, risk in enumerate(risks, 1):
        assert any(isinstance(mark, Label) and mark.text.startswith(f"{i}: {risk.words[:9]}") for mark in said.drawing)
        x, y = numbers[str(i)]
        foot = picture.matrix(risk.path.point_at(risk.path.length / 2))
        assert math.dist(foot, (x, y + LEAST / 2)) < 6.0


def test_a_board_as_large_as_the_blank_is_not_cut_out_along_the_outline():
    """Its pins may stand in the waste, so the outside line is for a second board: sheet, cut list and step say so."""
    layout = demo()
    one, two = (msgspec.structs.replace(layout, template=msgspec.structs.replace(layout.template, board=board)) for board in ("outline", "blank"))
    for head, boards in ((one, 1), (two, 2)):
        work = plan_work(head)
        named = [piece for piece in pieces(head, work) if piece.name.startswith("template board")]
        assert len(named) == boards
        said = (parts(head)[0].note, parts(head)[0].purpose, next(op.words for op in work.ops if op.kind == "template"),
                " ".join(mark.text for mark in full_template(head, parts(head)[0]) if isinstance(mark, Label)))
        assert all(("as large as the blank" in words) == (boards == 2) for words in said)
    blank = two.blank
    assert (named[0].length, named[0].width) == (blank.tip + blank.behind, blank.bass + blank.treble)
    x0, y0, x1, y1 = loop_path(two.outline).box
    assert (named[1].length, named[1].width) == pytest.approx((y1 - y0 + 20, x1 - x0 + 20))
