"""Words by chance on a page: whatever stands where, reading ends, invents nothing and does not depend on the order."""

from __future__ import annotations

import random
import re
import time
from datetime import UTC, datetime
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from importer.intake.source import Source
from importer.meaning.build import Options
from importer.meaning.terms import SheetTerms
from importer.models import Analysis
from importer.pipeline import analyse
from importer.printed import PrintedAnalysis
from importer.reading.sheet import read_analyses
from importer.words import Box, Page, Word
from tests.fuzz.tables import cells, grids

FILE = Source(Path("sheet.pdf"), "sheet.pdf", "0" * 64, "pdf", b"", datetime(2024, 11, 18, tzinfo=UTC))
SLOWEST = 20.0
"""Seconds for one small page on a machine with other things to do; a loop that never ends takes longer."""


def _words(text: str, x: float, top: float) -> list[Word]:
    words = []
    for part in text.split():
        words.append(Word(part, x, top, x + 5 * len(part), top + 10, size=9.0))
        x += 5 * len(part) + 2.5
    return words


def _page(words: list[Word], number: int = 1) -> Page:
    return Page(number, 595, 842, tuple(words), "text")


def _grid_page(grid: list[list[str]], shift: list[float], number: int = 1) -> Page:
    words = [
        word
        for i, row in enumerate(grid)
        for j, cell in enumerate(row)
        for word in _words(cell, 40 + 90 * j + shift[j], 60 + 18 * i)
    ]
    return _page(words, number)


shifts = st.lists(st.floats(-20, 20), min_size=6, max_size=6)
scattered = st.lists(st.tuples(cells, st.floats(-20, 590), st.floats(-20, 840)), max_size=40)


def _letters(text: str) -> str:
    return re.sub(r"\s+", "", text)


def _check(pages: list[Page]) -> list[PrintedAnalysis]:
    start = time.monotonic()
    found = read_analyses(pages, SheetTerms())
    assert time.monotonic() - start < SLOWEST
    shown = {letter for page in pages for word in page.words for letter in word.text}
    for analysis in found:
        for figure in analysis.figures:
            assert figure.page in {page.number for page in pages}
            assert set(_letters(figure.value)) <= shown, "a value that is not on the page"
    return found


@settings(deadline=None, max_examples=60)
@given(grids, shifts)
def test_a_table_by_chance_is_read_without_inventing(grid: list[list[str]], shift: list[float]) -> None:
    _check([_grid_page(grid, shift)])


@settings(deadline=None, max_examples=40)
@given(scattered)
def test_words_anywhere_are_read_without_inventing(places: list[tuple[str, float, float]]) -> None:
    _check([_page([word for text, x, top in places for word in _words(text, x, top)])])


@settings(deadline=None, max_examples=30)
@given(grids, shifts, st.integers(0, 9999))
def test_the_order_of_words_does_not_matter(grid: list[list[str]], shift: list[float], seed: int) -> None:
    page = _grid_page(grid, shift)
    mixed = list(page.words)
    random.Random(seed).shuffle(mixed)
    assert _check([_page(mixed)]) == _check([page])


@settings(deadline=None, max_examples=30)
@given(grids, grids, shifts)
def test_analyses_of_two_pages_keep_their_promises(
    first: list[list[str]], second: list[list[str]], shift: list[float]
) -> None:
    pages = [_grid_page(first, shift, 1), _grid_page(second, shift, 2)]
    for analysis in analyse(pages, FILE, Options()).analyses:
        _keeps_its_promises(analysis)


def _keeps_its_promises(analysis: Analysis) -> None:
    for figure in (*analysis.figures, *analysis.derived):
        if figure.state == "review":
            assert figure.reasons or not figure.printed, "in review without a reason"
        if figure.state == "accepted" and figure.value is not None and figure.printed:
            assert any(c.isdigit() for c in figure.printed.value), "a number out of nothing"
    doubtful = any(figure.state == "review" for figure in analysis.figures)
    assert not (doubtful and analysis.state == "accepted")


def test_a_page_of_nothing_and_a_page_of_one_word() -> None:
    assert _check([_page([])]) == []
    assert _check([_page([Word("Moisture", 10, 10, 50, 20)])]) == []
    assert _check([Page(1, 0, 0, (), "text", rules=(Box(0, 0, 0, 0),))]) == []
