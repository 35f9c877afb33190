"""The exam's sheets can be made, their answers stand on the pages, and their words are no copies of the others."""

from __future__ import annotations

import io
import re

import pdfplumber
import pytest

from tests.sheets.exam_make import EXAM, ExamWording, exam_kinds, make_exam
from tests.sheets.make import families_of
from tests.sheets.registry import LAYOUTS
from tests.sheets.wording import LANGUAGES, MAIN_LANGUAGES, Wording


def _plain(text: str) -> str:
    return re.sub(r"\s+", "", text).casefold()


@pytest.mark.parametrize("name", exam_kinds())
def test_every_value_stands_on_the_pages(name: str) -> None:
    made = make_exam(len(name), name)
    text = ""
    with pdfplumber.open(io.BytesIO(made.pdf_bytes)) as pdf:
        for page in pdf.pages:
            text += _plain("".join(c["text"] for c in page.chars))
            small = page.filter(lambda o: o.get("size", 0) < 40)  # a watermark may reach the edge
            for word in small.extract_words():
                assert 0 <= word["x0"] <= word["x1"] <= page.width, name
    for analysis in made.truth.analyses:
        assert len(analysis.figures) >= 4
        assert all(_plain(figure.value) in text for figure in analysis.figures), name
        assert all(_plain(row.value) in text for row in analysis.unrecognised), name
        assert all(_plain(h.text) in text for h in analysis.header.values()), name


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_layout_can_be_made_in_every_language(language: str) -> None:
    for number, name in enumerate(exam_kinds()):
        layout = EXAM[name]
        if not layout.languages or language in layout.languages:
            families = sorted(set(families_of(language, layout)))
            made = make_exam(number, name, language, families[number % len(families)])
            assert made.pdf_bytes.startswith(b"%PDF"), name


def test_layouts_and_words_are_new() -> None:
    assert len(exam_kinds()) >= 20
    assert not set(exam_kinds()) & set(LAYOUTS)
    for language in MAIN_LANGUAGES:
        exam = ExamWording(language, True)
        for key in ("moisture", "colour", "total_protein", "fan", "friability", "wort_ph", "fine_coarse_difference"):
            old = {*Wording(language, False).all("labels", key), *Wording(language, True).all("labels", key)}
            found = exam.all("labels", key)
            assert len(found) >= 3, (language, key)
            assert not old & set(found), (language, key)


def test_the_same_seed_gives_the_same_bytes() -> None:
    assert make_exam(5, "typewriter", "de").pdf_bytes == make_exam(5, "typewriter", "de").pdf_bytes
    assert make_exam(5, "typewriter", "de").pdf_bytes != make_exam(6, "typewriter", "de").pdf_bytes
