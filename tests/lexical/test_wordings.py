"""Shares of wordings that are understood, over the wordings of the made sheets; and what must never be confused.

The wordings are common practice, no source. The floors are a little below what was reached, so that a change that
loses many words is noticed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest

from importer.meaning.labels import LabelQuery, recognise
from importer.models import HEADER_KEYS
from importer.reading.numbers import read_number
from importer.vocabulary.captions import (
    basis_statement,
    column_role,
    column_roles,
    document_title,
    family_statement,
    header_caption,
)
from importer.vocabulary.header_captions import DOUBTFUL
from tests.lexical.test_header_captions import LISTED
from tests.sheets.concepts import CONCEPTS
from tests.sheets.wording import LANGUAGES, MAIN_LANGUAGES, Wording

HEADS = ("label", "result", "unit", "method", "min", "max", "spec", "typical", "previous", "number", "remark")


def wordings(section: str, keys: tuple[str, ...], kept: bool) -> Iterator[tuple[str, str]]:
    """(key, wording) of all languages, from the development part or the part kept aside."""
    for language in MAIN_LANGUAGES if kept else LANGUAGES:
        wording = Wording(language, kept)
        for key in keys:
            yield from ((key, text) for text in wording.all(section, key))


def share(section: str, keys: tuple[str, ...], kept: bool, right: Callable[[str, str], bool]) -> float:
    found = [right(key, text) for key, text in wordings(section, keys, kept)]
    assert len(found) > 20
    return sum(found) / len(found)


def is_caption(key: str, text: str) -> bool:
    found = header_caption(f"{text}:")
    return found is not None and found[0] == key


@pytest.mark.parametrize(("kept", "floor"), [(False, 0.99), (True, 0.98)])
def test_captions_of_header_entries(kept: bool, floor: float) -> None:
    assert share("captions", HEADER_KEYS, kept, is_caption) >= floor


# A few heads mean two things: "Norme" is a limit or a method, "Richtwert" a limit or a usual value.
@pytest.mark.parametrize(("kept", "floor"), [(False, 0.97), (True, 0.95)])
def test_heads_of_columns(kept: bool, floor: float) -> None:
    assert share("heads", HEADS, kept, lambda role, text: column_role(text) == role) >= floor


@pytest.mark.parametrize(("kept", "floor"), [(False, 0.99), (True, 0.99)])
def test_titles(kept: bool, floor: float) -> None:
    kinds = {"batch": ("certificate",), "specification": ("specification", "typical")}
    right = lambda kind, text: document_title(text) in kinds[kind]  # noqa: E731
    assert share("titles", tuple(kinds), kept, right) >= floor


@pytest.mark.parametrize(("kept", "floor"), [(False, 0.99), (True, 0.99)])
def test_words_for_the_moisture_basis(kept: bool, floor: float) -> None:
    bases = {"dry": "dry", "asis": "as-is"}
    right = lambda basis, text: basis_statement(text.strip(", ")) == bases[basis]  # noqa: E731
    assert share("basis", tuple(bases), kept, right) >= floor


@pytest.mark.parametrize(("kept", "floor"), [(False, 0.99), (True, 0.99)])
def test_method_families(kept: bool, floor: float) -> None:
    right = lambda family, text: family_statement(text) == family  # noqa: E731
    assert share("family", ("EBC", "IoB", "ASBC"), kept, right) >= floor


@pytest.mark.parametrize(("kept", "floor"), [(False, 0.97), (True, 0.97)])
def test_results_in_words(kept: bool, floor: float) -> None:
    def right(key: str, text: str) -> bool:
        number = read_number(text, None)
        return number is not None and number.kind == ("not-detected" if key == "nd" else "word")

    assert share("words", ("clarity", "odour", "filtration", "nd", "normal", "yes"), kept, right) >= floor


def labels() -> list[str]:
    keys = tuple(CONCEPTS)
    found = {text for kept in (False, True) for _, text in wordings("labels", keys, kept)}
    return sorted({text.split("~")[0].replace("{b}", "") for text in found})


def test_no_label_of_a_figure_is_a_caption_of_the_header() -> None:
    for label in labels():
        found = header_caption(label)
        assert found is None or found[1] <= DOUBTFUL, (label, found)


def test_no_label_of_a_figure_is_a_head_of_results_or_limits() -> None:
    for label in labels():
        assert not {"result", "unit", "min", "max", "spec", "previous"} & set(column_roles(label)), label


def test_no_label_of_a_figure_states_the_family_of_a_sheet() -> None:
    for label in labels():
        assert family_statement(label) is None, label
        assert family_statement(f"{label} 4.5") is None, label


def test_no_caption_of_the_header_is_the_label_of_a_figure() -> None:
    # "Moisture basis" stands among the captions that lead nowhere, and is one.
    for key, caption in LISTED:
        match = recognise(LabelQuery(caption))
        assert match.state != "sure" or caption == "moisture basis", (key, caption, match.parameter)
