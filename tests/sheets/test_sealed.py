"""The sealed sheets can be made, their answers stand on the pages, their figures agree, and their words are new."""

from __future__ import annotations

import io
import re

import pdfplumber
import pytest

from tests.accuracy.compare import compare
from tests.accuracy.report import tally
from tests.accuracy.standins import perfect
from tests.sheets.exam_make import ExamWording, exam_kinds
from tests.sheets.registry import LAYOUTS
from tests.sheets.sealed_make import (
    LANGUAGES,
    MAIN,
    SEALED,
    SealedWording,
    make_sealed,
    sealed_families,
    sealed_kinds,
)
from tests.sheets.truth import Made, TruthAnalysis
from tests.sheets.unseen_make import UnseenWording, unseen_kinds
from tests.sheets.wording import Wording

KEYS = ("moisture", "colour", "total_protein", "fan", "friability", "wort_ph", "fine_coarse_difference")
ORDINARY = "s-p"


def _plain(text: str) -> str:
    return re.sub(r"\s+", "", text).casefold()


def _text(made: Made, name: str) -> str:
    """The letters of all pages; none stands outside a page."""
    text = ""
    with pdfplumber.open(io.BytesIO(made.pdf_bytes)) as pdf:
        for page in pdf.pages:
            text += _plain("".join(c["text"] for c in page.chars))
            for word in page.extract_words():
                assert -1 <= word["x0"] <= word["x1"] <= page.width + 1, (name, word["text"])
                assert 0 <= word["top"] <= word["bottom"] <= page.height, (name, word["text"])
    return text


@pytest.mark.parametrize("name", sealed_kinds())
def test_every_value_stands_on_the_pages(name: str) -> None:
    for seed in (len(name), 91):
        made = make_sealed(seed, name)
        text = _text(made, name)
        for analysis in made.truth.analyses:
            assert len(analysis.figures) >= 3, name
            assert all(_plain(figure.value) in text for figure in analysis.figures), name
            assert all(_plain(row.value) in text for row in analysis.unrecognised), name
            assert all(_plain(h.text) in text for h in analysis.header.values()), name


@pytest.mark.parametrize("name", sealed_kinds())
def test_truth_is_well_formed(name: str) -> None:
    truth = make_sealed(17, name).truth
    count = tally([compare(truth, perfect(truth))])["all"]["all"]
    assert (count.accepted_wrong, count.missed, count.ambiguous_accepted, count.limits_wrong) == (0, 0, 0, 0)
    assert (count.header_wrong, count.header_missed, count.unrecognised_lost, count.also_lost) == (0, 0, 0, 0)
    for figure in (f for a in truth.analyses for f in a.figures):
        assert figure.certainty == "sure" or figure.why or figure.text or figure.bound, (name, figure.parameter)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_layout_can_be_made_in_its_languages_and_families(language: str) -> None:
    for number, name in enumerate(sealed_kinds()):
        layout = SEALED[name]
        if language in layout.languages:
            families = sorted(set(sealed_families(language, layout)))
            made = make_sealed(number, name, language, families[number % len(families)])
            assert made.pdf_bytes.startswith(b"%PDF"), name


def _values(analysis: TruthAnalysis) -> dict[str, float]:
    return {f.parameter: f.number for f in analysis.figures if f.number is not None and f.bound is None and not f.also}


def test_figures_of_a_sheet_agree() -> None:
    checked = 0
    for seed in range(120):
        for analysis in make_sealed(seed).truth.analyses:
            found = _values(analysis)
            moisture = found.get("moisture")
            for kind in ("fine", "coarse"):
                dry, wet = found.get(f"extract_{kind}_dry"), found.get(f"extract_{kind}_as_is")
                if moisture is not None and dry and wet:
                    assert wet == pytest.approx(dry * (1 - moisture / 100), abs=0.005 * dry)
                    checked += 1
    assert checked > 20


def test_most_layouts_are_plain_certificates() -> None:
    names = sealed_kinds()
    assert len(names) >= 40
    assert 0.55 <= sum(n.startswith(ORDINARY) for n in names) / len(names) <= 0.65


def _new_words(language: str) -> int:
    """How many labels of the commonest figures no other set has; plain post has plain words, too."""
    found = 0
    for key in KEYS:
        old = {w for kept in (False, True) for w in Wording(language, kept).all("labels", key)}
        old |= {w for kind in (ExamWording, UnseenWording) for w in kind(language, True).all("labels", key)}
        found += len(set(SealedWording(language, True).all("labels", key)) - old)
    return found


def test_layouts_and_words_are_new() -> None:
    assert not set(sealed_kinds()) & {*LAYOUTS, *exam_kinds(), *unseen_kinds()}
    assert _new_words("en") >= 12
    assert sum(_new_words(language) for language in MAIN) >= 45


def test_the_same_seed_gives_the_same_bytes() -> None:
    assert make_sealed(5, "s-p01", "de").pdf_bytes == make_sealed(5, "s-p01", "de").pdf_bytes
    assert make_sealed(5, "s-p01", "de").pdf_bytes != make_sealed(6, "s-p01", "de").pdf_bytes
