"""The picture behind the drawing, as it is unpacked from a layout."""

import io

from PIL import Image

from app.canvas.picture import pixmap


def jpeg(width: int, height: int) -> bytes:
    out = io.BytesIO()
    Image.linear_gradient("L").resize((width, height)).convert("RGB").save(out, "JPEG")
    return out.getvalue()


def test_a_picture_of_the_usual_size_is_shown_as_it_is(qapp):
    made = pixmap(jpeg(240, 160))
    assert (made.width(), made.height()) == (240, 160)
    top, bottom = (made.toImage().pixelColor(120, y).lightness() for y in (2, 157))
    assert top < 20 and bottom > 235


def test_a_few_bytes_that_stand_for_very_many_points_are_not_unpacked(qapp):
    bomb = jpeg(8_000, 8_000)
    assert len(bomb) < 3_000_000
    assert pixmap(bomb).isNull()
