"""What must not matter: where a table stands, how large it is set, the order of its words, how it is ruled."""

from __future__ import annotations

import random
from dataclasses import replace
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from importer.intake.pdf import read_pdf
from importer.meaning.terms import SheetTerms
from importer.reading.sheet import read_analyses
from importer.words import Box, Page, Word
from tests.sheets.make import make_sheet

LAYOUTS = [
    "ruled-grid",
    "unruled",
    "columns-shuffled",
    "wrapped-labels",
    "batches-as-columns",
    "batches-as-rows",
    "sections",
]


@cache
def _pages(layout: str, seed: int) -> tuple[Page, ...]:
    def never(*_: object) -> Page:
        raise AssertionError("the page was taken for a picture")

    return tuple(read_pdf(make_sheet(seed, layout, "en").pdf_bytes, "sheet.pdf", never))


def _figures(pages: tuple[Page, ...]) -> list[list[tuple[str, str, str | None, str, str, str]]]:
    return [
        [(f.label, f.value, f.unit, f.low, f.high, f.spec) for f in analysis.figures]
        for analysis in read_analyses(pages, SheetTerms())
    ]


def _moved(page: Page, scale: float, dx: float, dy: float) -> Page:
    def box(b: Box) -> Box:
        return Box(b.x0 * scale + dx, b.top * scale + dy, b.x1 * scale + dx, b.bottom * scale + dy)

    def word(w: Word) -> Word:
        return w._replace(**box(w.box)._asdict(), size=w.size * scale)

    return replace(
        page,
        width=page.width * scale + dx,
        height=page.height * scale + dy,
        words=tuple(word(w) for w in page.words),
        rules=tuple(box(r) for r in page.rules),
    )


@pytest.mark.parametrize("layout", LAYOUTS)
@pytest.mark.parametrize("seed", [11, 12])
def test_a_sheet_gives_figures_at_all(layout: str, seed: int) -> None:
    assert sum(len(figures) for figures in _figures(_pages(layout, seed))) >= 5


@pytest.mark.parametrize("layout", LAYOUTS)
@settings(deadline=None, max_examples=8)
@given(scale=st.floats(0.6, 1.9), dx=st.floats(0, 90), dy=st.floats(0, 90))
def test_moving_and_scaling_a_page_changes_no_figure(layout: str, scale: float, dx: float, dy: float) -> None:
    pages = _pages(layout, 11)
    assert _figures(tuple(_moved(page, scale, dx, dy) for page in pages)) == _figures(pages)


@pytest.mark.parametrize("layout", LAYOUTS)
@settings(deadline=None, max_examples=6)
@given(seed=st.integers(0, 10_000))
def test_the_order_of_words_in_the_file_does_not_matter(layout: str, seed: int) -> None:
    pages = _pages(layout, 12)
    mixed = []
    for page in pages:
        words = list(page.words)
        random.Random(seed).shuffle(words)
        mixed.append(replace(page, words=tuple(words)))
    assert _figures(tuple(mixed)) == _figures(pages)


@pytest.mark.parametrize("layout", ["ruled-grid", "columns-shuffled"])
def test_figures_do_not_depend_on_drawn_rules(layout: str) -> None:
    pages = _pages(layout, 11)
    bare = tuple(replace(page, rules=()) for page in pages)
    assert _figures(bare) == _figures(pages)
