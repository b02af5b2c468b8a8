"""What one edit calls the features, told from the layouts before and after it."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.edits.copying import mirror_layout
from geometry.edits.in_book import Called, exchanged, renamed_in_book
from geometry.edits.parts import FEATURE_GROUPS
from geometry.edits.slots import swapped_sides
from geometry.layout import Headstock
from geometry.layout.names import told_of


def called_after(before: Headstock, after: Headstock) -> Called | None:
    """What one edit calls features, gone ones of which the book tells among them: `rename` gives one another name, and
    `mirror_layout` exchanges bass and treble. None when the edit did something else."""
    changed = []
    for group in FEATURE_GROUPS:
        was, now = getattr(before, group), getattr(after, group)
        if was is now:
            continue
        if len(was) != len(now):
            return None
        changed += [(one, other) for one, other in zip(was, now, strict=True) if one.id != other.id]
    if len(changed) == 1 and replace(changed[0][0], id=changed[0][1].id) == changed[0][1]:
        old, new = changed[0][0].id, changed[0][1].id
        # What the book tells goes along with a renaming; it stays with what was taken out and set anew in the same place.
        return exchanged(old, new) if (old in told_of(after.book)) == (new in told_of(before.book)) else None
    gone = not changed and after.book is not before.book and renamed_in_book(before.book, swapped_sides) == after.book != before.book
    if not gone and not (changed and all(swapped_sides(one.id) == other.id for one, other in changed)):
        return None
    # One side copied to the other may change the same names, and what has them then is something else.
    return swapped_sides if replace(mirror_layout(before), book=after.book) == after else None
