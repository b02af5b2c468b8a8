"""Rows for single holes: whether they are there already, and which tuners they are meant for; what becomes of those for pins."""

from __future__ import annotations

from app.panels.forms.rows import FieldRow
from geometry.edits import set_field
from geometry.edits.holes import fitting_hardware, set_retainer, set_there, tuners_for_holes
from geometry.errors import GeometryError
from geometry.layout import Headstock, SingleHole, drilled
from geometry.saying import say


def there_row(layout: Headstock, ids: tuple[str, ...]) -> FieldRow:
    """Whether held holes are to be drilled or in the blank already."""
    known = {"plugged" if hole.plugged else "there" if hole.there else "drill" for hole in layout.holes if hole.id in ids}
    several = (("", say("differs")),) if len(known) > 1 else ()
    return FieldRow(say("The hole"), "choice", "" if len(known) > 1 else known.pop(),
                    lambda word: layout if not word else set_there(layout, ids, word != "drill", word == "plugged"),
                    choices=(*several, ("drill", say("is to be drilled")), ("there", say("is there already")),
                             ("plugged", say("is plugged first"))),
                    help=say("In the blank already: everything keeps clear of it, nothing drills it. One that is plugged first is wood for all "
                             "that comes after, as when old tuners give way to others: a step of the order fills it."))


def retainer_rows(layout: Headstock, hole: SingleHole) -> list[FieldRow]:
    """Whether a hole is for the screw of a string retainer, and how that holds the strings."""
    if hole.plugged:
        return []
    rows = [FieldRow(say("Carries a string retainer"), "flag", hole.retainer is not None,
                     lambda carries: set_retainer(layout, (hole.id,), carries),
                     help=say("A disc, wing or bar on a screw that holds strings down where they bend too little over the nut."))]
    if hole.retainer is not None:
        path = ("holes", hole.id, "retainer")
        rows += [FieldRow(say("Strings under it, above the face"), "length", hole.retainer.height,
                          lambda mm: set_field(layout, (*path, "height"), mm),
                          help=say("How high the strings run that it holds down: the lower, the more they bend over the nut.")),
                 FieldRow(say("Width of the retainer"), "length", hole.retainer.width, lambda mm: set_field(layout, (*path, "width"), mm),
                          help=say("Across the head: strings that pass within half of it of the screw are held. A bar on two screws is two "
                                   "retainers that reach to its middle."))]
    return rows


def tuner_rows(layout: Headstock, ids: tuple[str, ...]) -> list[FieldRow]:
    """A choice of hardware that takes the places of held holes; none where the layout has none for the face."""
    if any(hole.there for hole in layout.holes if hole.id in ids):
        return []  # bores of hardware do not take an old hole away
    widest = max(hole.diameter for hole in layout.holes if hole.id in ids)
    choices = tuple((id, id) for id in fitting_hardware(layout, widest))
    if not choices:
        return []
    return [FieldRow(say("A tuner in its place") if len(ids) == 1 else say("Tuners in their places"), "choice", "",
                     lambda pattern: tuners_for_holes(layout, ids, pattern),
                     choices=(("", say("none")), *choices), asks=True,
                     help=say("The hole is for a tuner: it gives way to the bores of this hardware, about the same centre."))]


def becomes_of(layout: Headstock, pin: str) -> str:
    """What becomes of the hole of a locating pin."""
    from geometry.sequence.shape_ops import pins_to_plug  # a start need not wait for it
    from geometry.solids.pins_along import in_bores

    try:
        if pin not in drilled(layout) and (bore := in_bores(layout).get(pin)) is not None:
            return say("stands in the bore of {part}, and goes where that goes", part=bore.of)
        stays = pin in pins_to_plug(layout)
    except GeometryError:
        return say("nobody knows: the outline has no inside")
    return (say("stays in the finished head, and is plugged at the end") if stays else
            say("goes with the waste, a slot or a later hole"))
