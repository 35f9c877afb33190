"""The made sheets themselves: every kind can be made, its answer stands on its pages and agrees with itself."""

from __future__ import annotations

import io
import re
from pathlib import Path

import pdfplumber
import pytest

from importer.models import HEADER_KEYS
from tests.sheets import kinds, make_sheet
from tests.sheets.concepts import CONCEPTS
from tests.sheets.kept_wordings import TEXTS
from tests.sheets.make import families_of
from tests.sheets.registry import LAYOUTS
from tests.sheets.targets import targets
from tests.sheets.truth import TruthAnalysis, TruthFigure
from tests.sheets.wording import LANGUAGES, Wording, parse

CONTRACT = Path(__file__).parents[2] / "mappings" / "parameters.toml"
ALL = [(name, kept) for kept in (False, True) for name in kinds(kept)]


def _plain(text: str) -> str:
    return re.sub(r"\s+", "", text).casefold()


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_layout_can_be_made_in_every_language(language: str) -> None:
    for name, kept in ALL:
        layout = LAYOUTS[name]
        if layout.languages and language not in layout.languages:
            continue
        families = sorted(set(families_of(language, layout)))
        family = families[ALL.index((name, kept)) % len(families)]
        made = make_sheet(1, name, language, family, kept=kept)
        assert made.pdf_bytes.startswith(b"%PDF"), name
        assert sum(len(a.figures) for a in made.truth.analyses) >= 4, (name, language, family)


@pytest.mark.parametrize(("name", "kept"), ALL)
def test_every_value_stands_on_the_pages_and_nothing_overlaps(name: str, kept: bool) -> None:
    made = make_sheet(11, name, kept=kept)
    text = ""
    with pdfplumber.open(io.BytesIO(made.pdf_bytes)) as pdf:
        for page in pdf.pages:
            text += _plain("".join(c["text"] for c in page.chars))
            words = [] if page.rotation or name == "sideways" else page.extract_words()
            for word in words:
                assert 0 <= word["x0"] <= word["x1"] <= page.width, word
            assert not _overlaps(words), (name, _overlaps(words))
    for analysis in made.truth.analyses:
        values = [(f.label, f.value) for f in analysis.figures] + [(r.label, r.value) for r in analysis.unrecognised]
        for label, value in values:
            assert _plain(value) in text, (label, value)
        for key, field in analysis.header.items():
            assert _plain(field.text) in text, (key, field.text)


def _overlaps(words: list[dict[str, object]]) -> list[tuple[object, object]]:
    """Pairs of words that are printed over one another."""

    def box(word: dict[str, object]) -> tuple[float, float, float, float]:
        return tuple(float(str(word[k])) for k in ("x0", "top", "x1", "bottom"))  # type: ignore[return-value]

    boxes = [(box(w), w["text"]) for w in words]
    found = []
    for i, (a, text) in enumerate(boxes):
        for b, other in boxes[i + 1 :]:
            wide = min(a[2], b[2]) - max(a[0], b[0])
            high = min(a[3], b[3]) - max(a[1], b[1])
            if wide > 1 and high > 0.35 * min(a[3] - a[1], b[3] - b[1]):
                found.append((text, other))
    return found


def test_the_same_seed_gives_the_same_bytes() -> None:
    for name in ("ruled-grid", "batches-as-rows", "rotated-page"):
        first, second = make_sheet(8, name, "de"), make_sheet(8, name, "de")
        assert first.pdf_bytes == second.pdf_bytes
        assert first.truth.as_json() == second.truth.as_json()
        assert first.pdf_bytes != make_sheet(9, name, "de").pdf_bytes


def test_names_are_those_of_the_contract() -> None:
    contract = set(re.findall(r"^\[parameters\.(\w+)\]", CONTRACT.read_text(encoding="utf-8"), re.M))
    assert {c.parameter for c in CONCEPTS.values() if c.parameter} <= contract
    for number, (name, kept) in enumerate(ALL):
        for analysis in make_sheet(number, name, kept=kept).truth.analyses:
            assert set(analysis.header) <= set(HEADER_KEYS)
            assert {f.parameter for f in analysis.figures} <= contract


def _numbers(analysis: TruthAnalysis) -> dict[tuple[str, str], float]:
    return {(f.parameter, f.unit): f.number for f in analysis.figures if f.number is not None and not f.bound}


def test_related_figures_agree() -> None:
    """Definitions: as is = dry x (1 - M/100); protein = 6.25 N; ratio = 100 S/T; fine - coarse; sieves add to 100."""
    seen = dict.fromkeys(("as is", "protein", "ratio", "difference", "sieves"), 0)
    for number in range(90):
        for analysis in make_sheet(number, "several-pages").truth.analyses:
            n = _numbers(analysis)
            wet = 1 - n["moisture", "%"] / 100
            for grind in ("fine", "coarse"):
                dry, moist = (n.get((f"extract_{grind}_{b}", u)) for b, u in (("dry", "%"), ("as_is", "%")))
                if dry and moist:
                    assert moist == pytest.approx(dry * wet, abs=0.11)
                    seen["as is"] += 1
            total, protein = n.get(("total_nitrogen", "%")), n.get(("total_protein", "%"))
            if total and protein:
                assert protein == pytest.approx(6.25 * total, abs=0.06)
                seen["protein"] += 1
            soluble, ratio = n.get(("soluble_nitrogen", "%")), n.get(("nitrogen_ratio", "%"))
            if total and soluble and ratio:
                assert ratio == pytest.approx(100 * soluble / total, abs=0.9)
                seen["ratio"] += 1
            fine, coarse, gap = (
                n.get((k, "%")) for k in ("extract_fine_dry", "extract_coarse_dry", "fine_coarse_difference")
            )
            if fine and coarse and gap:
                assert gap == pytest.approx(fine - coarse, abs=0.06)
                seen["difference"] += 1
            sieves = [n.get((f"sieve_{k}", "%")) for k in ("over_2_8", "2_5_to_2_8", "2_2_to_2_5", "under_2_2")]
            if all(s is not None for s in sieves):
                assert sum(s for s in sieves if s is not None) == pytest.approx(100, abs=0.05)
                seen["sieves"] += 1
    assert min(seen.values()) >= 5, seen


def test_every_number_has_an_answer_on_the_basis() -> None:
    for number, (name, kept) in enumerate(ALL):
        for analysis in make_sheet(number, name, kept=kept).truth.analyses:
            for figure in analysis.figures:
                if analysis.kind == "batch" and figure.number is not None:
                    assert figure.targets, figure
                    assert float(re.sub(r"[<>≤ ]", "", figure.value).replace(",", ".")) == figure.number


# Outside values: 334 WK = 100 °Lintner and 544 WK = 160 °Lintner (Windisch-Kolbach and Lintner entries of
# encyclopaedias); EBC/SRM = 25/12.7 (Standard Reference Method); 48 lb/bu barley = 61.8 kg/hL, by definition of the
# US bushel; 38.0 % x 1.125 = 42.75 from the joint trial of both mashes.
@pytest.mark.parametrize(
    ("parameter", "unit", "family", "value", "expected"),
    [
        ("diastatic_power", "°Lintner", "ASBC", 100.0, 334.0), ("diastatic_power", "°Lintner", "ASBC", 160.0, 544.0),
        ("colour", "SRM", "ASBC", 12.7, 25.0), ("hectolitre_weight", "lb/bu", "ASBC", 48.0, 61.8),
        ("nitrogen_ratio", "%", "IoB", 38.0, 42.75), ("soluble_nitrogen", "mg/100 g", "EBC", 650.0, 0.65),
        ("deoxynivalenol", "mg/kg", "EBC", 0.35, 350.0),
    ],
)  # fmt: skip
def test_answers_on_the_basis(parameter: str, unit: str, family: str, value: float, expected: float) -> None:
    mash = "isothermal-65" if family == "IoB" else "congress"
    found = targets(parameter, unit, family, mash, value)
    assert any(t.value is not None and abs(t.value - expected) <= max(t.tolerance, 0.02) for t in found), found


def test_a_third_is_kept_aside() -> None:
    kept, used = len(kinds(True)), len(kinds(False))
    assert used >= 24
    assert kept / (kept + used) >= 1 / 3
    for language, text in TEXTS.items():
        aside, plain = parse(text), Wording(language, False)
        words = [(s, k, w) for s in ("labels", "captions", "heads") for k, ws in aside[s].items() for w in ws]
        total = sum(len(plain.all(s, k)) for s, k in {(s, k) for s, k, _ in words})
        assert len(words) / (len(words) + total) > 0.27, language
        assert not [w for s, k, w in words if w in plain.all(s, k)], language


def test_doubtful_figures_are_made() -> None:
    """Missing units and missing moisture bases occur, and the answer says that they cannot be known."""
    figures: list[TruthFigure] = []
    for number in range(120):
        figures += [f for a in make_sheet(number).truth.analyses for f in a.figures]
    unsure = [f for f in figures if f.certainty == "ambiguous"]
    assert 0.003 < len(unsure) / len(figures) < 0.1
    assert {f.why for f in unsure} >= {"no unit", "no moisture basis"}


@pytest.mark.parametrize("name", ["rotated-page", "several-pages"])
def test_nothing_is_drawn_outside_of_the_page(name: str) -> None:
    for seed in range(20):
        with pdfplumber.open(io.BytesIO(make_sheet(seed, name).pdf_bytes)) as pdf:
            for page in pdf.pages:
                assert len(page.chars) > 100
                assert len(page.within_bbox(page.bbox).chars) == len(page.chars), (name, seed)
