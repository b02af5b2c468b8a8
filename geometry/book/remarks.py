"""What notes of the job book are about."""

from __future__ import annotations

from collections.abc import Collection

from geometry.layout import Book, Remark


def pinned_words(remark: Remark) -> str:
    """What a note is about; nothing when it is pinned nowhere."""
    return remark.on or "" if remark.task is None else remark.task.title or remark.task.operation


def open_remarks(book: Book, features: Collection[str], operations: Collection[str]) -> list[Remark]:
    """Notes not yet seen to that are pinned to one of these features or operations."""
    return [one for one in book.remarks if not one.done
            and (one.on in features if one.task is None else one.task.operation in operations)]
