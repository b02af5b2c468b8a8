"""Lists of numbers in the rack: what a comma means, and what is refused."""

import pytest

from app.panels.router.rack_rows import machine_rows
from geometry.errors import GeometryError
from geometry.layout import Rack


def changed(label, text, unit="mm"):
    row, = [row for row in machine_rows(Rack(), unit) if row.label == label]
    return row.change(text).router


@pytest.mark.parametrize(("text", "unit", "sizes"), [
    ("6, 8", "mm", (6.0, 8.0)), ("8", "mm", (8.0,)), ("", "mm", ()), ("6.35, 12.7", "mm", (6.35, 12.7)),
    ("6,35; 12,7", "mm", (6.35, 12.7)), ('1/4", 1/2"', "mm", (6.35, 12.7)), ("1/4; 1/2", "in64", (6.35, 12.7)), ("8, 8, 6", "mm", (6.0, 8.0))])
def test_shanks_that_the_router_holds(text, unit, sizes):
    assert changed("Collets", text, unit).collets == pytest.approx(sizes)


@pytest.mark.parametrize("text", ["6,35", "6,35, 12,7", "6,8"])
def test_a_shank_that_may_be_one_or_two_is_asked_about(text):
    with pytest.raises(GeometryError, match="one number or two"):
        changed("Collets", text)


def test_speeds():
    assert changed("Speeds, turns a minute", "24000, 8000; ".rstrip("; ")).speeds == (8000.0, 24000.0)
    for text in ("16,000; 24,000", "16.000, 24.000", "16 000; 24\N{NO-BREAK SPACE}000", "24000; 16000"):
        assert changed("Speeds, turns a minute", text).speeds == (16000.0, 24000.0)
    for text in ("16,500", "fast", "nan", "inf", "0", "-5"):
        with pytest.raises(GeometryError) as refused:
            changed("Speeds, turns a minute", text)
        assert str(refused.value).endswith(".")
