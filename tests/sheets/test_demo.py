"""The demo sheets: drawn again they are the same, their answers stand on them, and they are what the scenario says."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pdfplumber
import pytest

from fixtures.demo_content import SHEETS
from fixtures.make_demo import build, parse, truth_of
from importer.models import HEADER_KEYS

FIXTURES = Path(__file__).parents[2] / "fixtures"
FILES = sorted(p for p in (FIXTURES / "demo").iterdir() if p.suffix != ".md")


def _answer(path: Path) -> dict[str, Any]:
    found: dict[str, Any] = json.loads((FIXTURES / "truth" / f"{path.stem}.json").read_text(encoding="utf-8"))
    return found


def test_every_sheet_has_one_answer() -> None:
    assert len(FILES) >= 16
    assert {p.stem for p in FILES} == set(SHEETS) == {p.stem for p in (FIXTURES / "truth").glob("*.json")}
    assert sum(p.stat().st_size for p in (FIXTURES / "demo").iterdir()) < 3_000_000
    assert (FIXTURES / "demo" / "SCENARIO.md").is_file()


def test_the_set_is_varied() -> None:
    answers = [_answer(p) for p in FILES]
    assert {a["language"] for a in answers} >= {"en", "de", "fr", "nl", "es"}
    assert {f for a in answers for n in a["analyses"] for f in n["families"]} == {"EBC", "IoB", "ASBC"}
    assert sum(a["reading"] == "ocr" for a in answers) >= 3
    assert sum(len(a["analyses"]) > 1 for a in answers) >= 2
    assert any(n["kind"] == "specification" for a in answers for n in a["analyses"])


@pytest.mark.parametrize("name", [p.stem for p in FILES if p.suffix in (".pdf", ".csv") and "scan" not in p.stem])
def test_sheets_are_drawn_the_same_again(name: str) -> None:
    file, data = build(parse(name, SHEETS[name]))
    assert (FIXTURES / "demo" / file).read_bytes() == data


@pytest.mark.parametrize("path", FILES, ids=lambda p: p.stem)
def test_answers_are_those_of_the_script(path: Path) -> None:
    answer = _answer(path)
    assert answer["file"] == path.name
    fresh = json.loads(truth_of(parse(path.stem, SHEETS[path.stem])).as_json())
    assert {k: answer[k] for k in fresh} == fresh
    for analysis in answer["analyses"]:
        assert set(analysis["header"]) <= set(HEADER_KEYS)


@pytest.mark.parametrize(
    "path", [p for p in FILES if p.suffix == ".pdf" and "scan" not in p.stem], ids=lambda p: p.stem
)
def test_values_stand_on_the_pages(path: Path) -> None:
    with pdfplumber.open(path) as pdf:
        text = re.sub(r"\s+", "", "".join(c["text"] for page in pdf.pages for c in page.chars))
    for analysis in _answer(path)["analyses"]:
        for row in (*analysis["figures"], *analysis["unrecognised"]):
            for value in (row["value"], row.get("low", ""), row.get("high", "")):
                assert re.sub(r"\s+", "", value) in text, row


@pytest.mark.parametrize("path", FILES, ids=lambda p: p.stem)
def test_related_figures_agree(path: Path) -> None:
    """Definitions: as is = dry x (1 - M/100), protein = 6.25 N, ratio = 100 S/T, sieves add to 100."""
    for analysis in _answer(path)["analyses"]:
        n = {f["parameter"]: f["number"] for f in analysis["figures"] if f["number"] is not None}
        for grind in ("fine", "coarse"):
            dry, moist = n.get(f"extract_{grind}_dry"), n.get(f"extract_{grind}_as_is")
            if dry and moist:
                assert moist == pytest.approx(dry * (1 - n["moisture"] / 100), abs=0.6 if dry > 100 else 0.06)
        soluble, total = n.get("soluble_nitrogen"), n.get("total_nitrogen")
        if soluble and total and soluble < 2:
            assert n["nitrogen_ratio"] == pytest.approx(100 * soluble / total, abs=0.4)
        if "soluble_protein" in n:
            ratio = 100 * n["soluble_protein"] / n["total_protein"]
            assert n["nitrogen_ratio"] == pytest.approx(ratio, abs=0.4)
        sieves = [n.get(f"sieve_{k}") for k in ("over_2_8", "2_5_to_2_8", "2_2_to_2_5", "under_2_2")]
        if all(s is not None for s in sieves):
            assert sum(s for s in sieves if s is not None) == pytest.approx(100, abs=0.05)
