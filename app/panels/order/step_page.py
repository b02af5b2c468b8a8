"""The words and the section of one step, beside the picture of the piece."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.section_view import SectionView
from app.look.sizes import keep
from app.look.theme import theme
from app.panels.order.step_words import Reason, StepWords
from geometry.drawing import Drawing
from geometry.saying import say


class StepPage(Scroll):
    """A column of text and a section to scale; it scrolls when there is more to say than room."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(say("The step in words"), parent)
        self._words: StepWords | None = None
        page = QWidget(self, objectName="words")
        self._head, self._why = (paragraph(page, textFormat=Qt.TextFormat.RichText,
                                           textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse) for _ in range(2))
        self._section = SectionView(page, room_below=22)
        self._section.setAccessibleName(say("Section through the piece at this step"))
        filled(QVBoxLayout(page), self._head, self._section, self._why, 1, margins=(16, 12, 14, 12), gap=8)
        self.setWidget(page)
        keep(self, panel_width=180)

    def sizeHint(self) -> QSize:
        return QSize(340, 600)

    def show_step(self, words: StepWords | None, section: Drawing) -> None:
        """Show a step; None shows nothing."""
        self._words = words
        self._section.show_drawing(section)
        self.follow_theme()
        self.verticalScrollBar().setValue(0)

    @property
    def text(self) -> str:
        """Everything that is said, as rich text."""
        return self._head.text() + self._why.text()

    def follow_theme(self) -> None:
        """Write the words, in the colours in use."""
        words = self._words
        if words is None:
            self._head.setText("")
            self._why.setText("")
            return
        t = theme()
        head = [f'<p style="color:{t.spoils}"><b>! {escape(text)}</b></p>' for text in words.warnings]
        head += [f'<p style="color:{t.tight}"><b>{escape(text)}</b></p>' for text in words.unwise]
        head.append(f'<p style="color:{t.dim}">{escape(words.set_up)}</p>')
        if words.do:
            head.append(f"<p>{escape(words.do)}</p>")
        mind = say("Mind:")
        head += [f'<p style="color:{t.tight}"><b>{mind}</b> {escape(text)}</p>' for text in words.cautions]
        head.append(f'<p style="color:{t.dim}">{escape(words.takes)}</p>')
        why = self._reasons(say("Only after"), words.after) + self._reasons(say("Before these"), words.before)
        why.append(f"<p><b>{say('When it is done')}</b></p>")
        why.append(f'<p style="color:{t.dim}">{escape(" ".join(words.state))}</p>')
        self._head.setText("".join(head))
        self._why.setText("".join(why))

    def _reasons(self, title: str, reasons: tuple[Reason, ...]) -> list[str]:
        if not reasons:
            return []
        made = [f"<p><b>{title}</b></p>"]
        for reason in reasons:
            protects = escape(say("Protects {what}.", what=reason.protects))
            made.append(f'<p>{escape(reason.others)}. <span style="color:{theme().dim}">{escape(reason.why)} '
                        f"{protects}</span></p>")
        return made
