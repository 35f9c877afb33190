"""The unseen sheets can be made, their answers stand on the pages, their figures agree, and their words are new."""

from __future__ import annotations

import io
import re

import pdfplumber
import pytest

from tests.sheets.exam_make import EXAM, ExamWording, exam_kinds
from tests.sheets.make import families_of
from tests.sheets.registry import LAYOUTS
from tests.sheets.truth import Made, TruthAnalysis
from tests.sheets.unseen_make import LANGUAGES, UNSEEN, UnseenWording, make_unseen, unseen_kinds
from tests.sheets.wording import Wording

KEYS = ("moisture", "colour", "total_protein", "fan", "friability", "wort_ph", "fine_coarse_difference")


def _plain(text: str) -> str:
    return re.sub(r"\s+", "", text).casefold()


def _text(made: Made, name: str) -> str:
    text = ""
    with pdfplumber.open(io.BytesIO(made.pdf_bytes)) as pdf:
        for page in pdf.pages:
            text += _plain("".join(c["text"] for c in page.chars))
            for word in page.extract_words():
                assert -1 <= word["x0"] <= word["x1"] <= page.width + 1, (name, word["text"])
                assert 0 <= word["top"] <= word["bottom"] <= page.height, (name, word["text"])
    return text


@pytest.mark.parametrize("name", unseen_kinds())
def test_every_value_stands_on_the_pages(name: str) -> None:
    for seed in (len(name), 77):
        made = make_unseen(seed, name)
        text = _text(made, name)
        for analysis in made.truth.analyses:
            assert len(analysis.figures) >= 3, name
            assert all(_plain(figure.value) in text for figure in analysis.figures), name
            assert all(_plain(row.value) in text for row in analysis.unrecognised), name
            assert all(_plain(h.text) in text for h in analysis.header.values()), name


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_layout_can_be_made_in_its_languages_and_families(language: str) -> None:
    for number, name in enumerate(unseen_kinds()):
        layout = UNSEEN[name]
        if language in layout.languages:
            families = sorted(set(families_of(language, layout)))
            made = make_unseen(number, name, language, families[number % len(families)])
            assert made.pdf_bytes.startswith(b"%PDF"), name
            assert all(f.why for a in made.truth.analyses for f in a.figures if f.certainty == "ambiguous"), name


def _values(analysis: TruthAnalysis) -> dict[str, float]:
    return {f.parameter: f.number for f in analysis.figures if f.number is not None and f.bound is None and not f.also}


def test_figures_of_a_sheet_agree() -> None:
    checked = 0
    for seed in range(150):
        for analysis in make_unseen(seed).truth.analyses:
            found = _values(analysis)
            moisture = found.get("moisture")
            for kind in ("fine", "coarse"):
                dry, wet = found.get(f"extract_{kind}_dry"), found.get(f"extract_{kind}_as_is")
                if moisture is not None and dry and wet:
                    assert wet == pytest.approx(dry * (1 - moisture / 100), abs=0.005 * dry)
                    checked += 1
            if (nitrogen := found.get("total_nitrogen")) and (protein := found.get("total_protein")):
                assert protein in (pytest.approx(6.25 * nitrogen, abs=0.09), pytest.approx(nitrogen, abs=0.01))
                checked += 1
    assert checked > 20


def test_layouts_and_words_are_new() -> None:
    assert len(unseen_kinds()) >= 36
    assert not set(unseen_kinds()) & {*LAYOUTS, *exam_kinds()}
    assert EXAM
    for language in LANGUAGES:
        new = 0
        for key in KEYS:
            old = {w for kept in (False, True) for w in Wording(language, kept).all("labels", key)}
            old |= set(ExamWording(language, True).all("labels", key))
            new += len(set(UnseenWording(language, True).all("labels", key)) - old)
        assert new >= (14 if language in ("en", "de", "fr") else 7), language


def test_the_same_seed_gives_the_same_bytes() -> None:
    assert make_unseen(5, "u-classic", "de").pdf_bytes == make_unseen(5, "u-classic", "de").pdf_bytes
    assert make_unseen(5, "u-classic", "de").pdf_bytes != make_unseen(6, "u-classic", "de").pdf_bytes
