"""Style sheets of an SVG: which rule is about which shape, and no sheet that takes longer to understand than to read."""

import random

import pytest

from app.formats.drawing_in.read import read_drawing
from app.formats.drawing_in.svg_style import Styles, rules_of
from app.formats.drawing_in.svg_tree import Node
from app.formats.errors import FormatError
from tests.spent import within

SHAPE = '<path class="a" d="M0 0H50V90H0Z"/>'
MANY = 200_000


def svg(sheet: str, body: str = SHAPE) -> str:
    return f'<svg xmlns="http://www.w3.org/2000/svg"><style>{sheet}</style>{body}</svg>'


@pytest.mark.parametrize(("sheet", "rules"), [
    ("a{b:c}", [("a", "b:c")]), ("a{b} c , d{e}", [("a", "b"), ("c , d", "e")]), ("/* a{b} */c{d}", [("c", "d")]), ("a{b}/* c{d}", [("a", "b")]),
    ("<!-- a{b} -->", [("a", "b")]), ("@import url(x); a{b}", [("a", "b")]), ("@media print { a{b} c{d} } e{f}", [("e", "f")]),
    ("@font-face{src:url(data:x)} a{b}", [("a", "b")]), ("a{b", []), ("}a{b}", [("a", "b")]), ("", []), ("{a}", [])])
def test_a_sheet_is_taken_apart(sheet, rules):
    assert [(head.strip(), body) for head, body in rules_of(sheet)] == rules


def head(chance: random.Random, depth: int) -> Node:
    """A chain of nodes, the innermost of it."""
    node = None
    for _ in range(depth):
        node = Node(chance.choice("gs"), {"class": " ".join(chance.sample("abc", chance.randrange(3))), "id": chance.choice("xyz")}, node)
    return node


def by_trial(words: list[str], node: Node | None) -> bool:
    """Whether a selector is about a node, by trying every node above for every word (CSS 2.1, 5.5 and 5.6)."""
    def fits(word: str, one: Node) -> bool:
        return (word in (one.tag, "*") or word[0] == "." and word[1:] in one.attributes["class"].split()
                or word[0] == "#" and word[1:] == one.attributes["id"])
    if node is None or not fits(words[-1], node):
        return False
    if len(words) == 1:
        return True
    if words[-2] == ">":
        return by_trial(words[:-2], node.parent)
    above = node.parent
    while above is not None:
        if by_trial(words[:-1], above):
            return True
        above = above.parent
    return False


def test_a_rule_is_about_what_it_is_about_by_trying_everything():
    chance, met = random.Random(5), 0
    for _ in range(3000):
        words = [chance.choice(["g", "s", "*", ".a", ".b", "#x"])]
        for _ in range(chance.randrange(4)):
            words = [chance.choice(["g", "s", "*", ".a", ".c", "#y"]), *([">"] if chance.random() < 0.4 else []), *words]
        node = head(chance, chance.randrange(1, 7))
        found = Styles([f"{' '.join(words)}{{fill:red}}"]).of(node) == {"fill": "red"}
        assert found == by_trial(words, node), (words, node)
        met += found
    assert 300 < met < 2700


def test_later_and_more_specific_rules_win_whatever_they_are_found_by():
    node = Node("path", {"class": "b a", "id": "i", "fill": "none"})
    sheet = "#i{fill:1} .a{fill:2} path{fill:3} *{fill:4;stroke:5!important} .b.a{stroke:6} .b{opacity:7} .a{opacity:8}"
    assert Styles([sheet]).of(node) == {"fill": "1", "stroke": "5", "opacity": "8"}


@pytest.mark.parametrize("text", [
    svg("/*" * MANY), svg("@a " * MANY), svg("@a{b{" * MANY), svg("a" + " " * MANY + "b{fill:none}"), svg("{" * MANY), svg("a," * 50_000 + "a{fill:none}"),
    svg("x " + "g " * 12 + "path{fill:none}", "<g>" * 150 + SHAPE + "</g>" * 150),
    svg("".join(f".a{i}{{fill:none}}" for i in range(10_000)), '<path class="a1 a2 a3" d="M0 0H50V90H0Z"/>' * 2000),
    svg(".a{fill:none}" * 10_000, SHAPE * 2000), svg(".a{fill:none}" * 2000, f'<path class="{"a " * MANY}" d="M0 0H50V90H0Z"/>'),
    svg("a" * 5_000_000), svg("", f'<g transform="{"scale(" * MANY}">{SHAPE}</g>'), svg("", f'<g transform="{"scale(1) " * MANY}">{SHAPE}</g>'),
    f'<svg xmlns="http://www.w3.org/2000/svg" width="{"1" * MANY}!" height="1{" " * MANY}!">{SHAPE}</svg>',
    svg("", "".join(f'<g id="a{i}"><use href="#a{i + 1}"/></g>' for i in range(20_000)) + SHAPE),
    "  0\nSECTION\n  2\nHEADER\n  9\n$ACADVER\n" + " \n" * MANY + "  0\nENDSEC\n  0\nSECTION\n  2\nENTITIES\n  0\nLWPOLYLINE\n  0\nENDSEC\n  0\nEOF\n"],
    ids=["comments", "statements", "blocks", "spaces", "braces", "selectors", "choices", "rules for shapes", "one class", "classes", "letters",
         "transforms", "many transforms", "lengths", "clones in a row", "a DXF of empty lines"])
def test_no_text_takes_longer_to_understand_than_to_read(tmp_path, text):
    """Each took from seconds to ages, the choices of a kilobyte longer than anybody lives."""
    file = tmp_path / "drawing"
    file.write_text(text, encoding="utf-8")
    with within(2):
        try:
            read_drawing(file)
        except FormatError as error:
            assert str(error).endswith(".") and "\n" not in str(error)
