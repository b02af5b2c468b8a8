"""Every sentence can be looked up, the catalogues fit them, and what is compiled is what was written."""

import re

import pytest
from PySide6.QtCore import QTranslator

from app.commands.arguments import LANGUAGES
from app.languages.catalogue import CONTEXT, ENGLISH, NAMES, compiled_file, fitting, read, source_file
from tests.languages import collect, source

TRANSLATED = sorted(NAMES.keys() - {ENGLISH})


def test_what_is_said_is_a_literal_and_given_its_fields() -> None:
    wrong = []
    for call in collect.calls():
        if call.messages is None:
            wrong.append(f"{call.where}: the text is no literal")
        elif not call.spread:
            named = set().union(*(collect.fields(message.text) for message in call.messages)) if call.given else set()
            if named - call.given or call.given - named - {"n"}:
                wrong.append(f"{call.where}: fields {sorted(named)}, given {sorted(call.given)}")
    assert wrong == []


@pytest.mark.parametrize("code", TRANSLATED)
def test_the_catalogue_holds_what_is_said_and_nothing_else(code: str) -> None:
    """`python3 -m tests.languages` mends it."""
    assert source_file(code).read_text(encoding="utf-8") == source.text(code, collect.messages(), source.kept(code))


@pytest.mark.parametrize("code", TRANSLATED)
def test_every_sentence_is_translated(code: str) -> None:
    """The German word list in DEVELOPERS.md helps; `python3 -m tests.languages` compiles what was filled in."""
    kept = source.kept(code)
    assert sorted(message.text for message in collect.messages() if not kept.get(message)) == []


@pytest.mark.parametrize("code", TRANSLATED)
def test_a_translation_has_the_fields_of_its_sentence(code: str) -> None:
    wrong = [message for message, said in source.kept(code).items()
             if said and collect.fields(message.text) != collect.fields(said)]
    assert wrong == []


@pytest.mark.parametrize("code", TRANSLATED)
def test_the_compiled_catalogue_says_what_the_source_says(code: str) -> None:
    translator = QTranslator()
    assert translator.load(str(compiled_file(code)))
    known = read(code)
    wrong = [key for key, said in known.items() if translator.translate(CONTEXT, key[0], key[1] or None) != said]
    assert wrong == []
    unknown = [m for m in collect.messages() - known.keys() if translator.translate(CONTEXT, m.text, m.about or None)]
    assert [m for m in unknown if not known.get((m.text, ""))] == []


def test_the_first_language_that_is_spoken_is_taken() -> None:
    assert [fitting(names) for names in (["de-AT", "en"], ["fr-FR", "de_DE"], ["fr"], [])] == ["de", "de", "en", "en"]


def test_every_language_can_be_asked_for_on_the_command_line() -> None:
    assert set(LANGUAGES) == set(NAMES)


def test_what_is_to_be_done_is_told_in_the_infinitive_in_german() -> None:
    """Snags, cures and refusals; the word list in DEVELOPERS.md says so."""
    said = source.kept("de")
    found = {said.get(message, "") for call in collect.calls() if call.where.startswith("geometry/") for message in call.messages or ()}
    assert len(found) > 1000
    assert sorted(words for words in found if re.search(r"(?:^|[.:;] )\w+en Sie\b", words)) == []
